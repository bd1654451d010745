import { ions as table, type Ion } from '../../solution/ions.js';
import { nutrientForms, type NutrientFormKey } from '../../solution/nutrient-forms.js';
import { molarMassOfComposition, molarMassOfNutrientForm } from '../../solution/formulas/composition.js';
import { ionAmountsOfNutrients, type IonAmounts } from '../../solution/formulas/concentration.js';
import { compositionOfFormula } from '../chemical-formula.js';
import { salts, type SaltKey } from '../salt-table.js';
import { formsOfLabel, type FeedForm, type LabelStatement } from './label-analysis.js';

/** Something to weigh out: a salt of the table with its purity (a fraction), or a product known by its label (fractions of its mass). */
export type Product = { readonly salt: SaltKey; readonly purity: number } | { readonly label: LabelStatement };

/** Masses that forms count. `N` is nitrogen of every form; `HCO3` is alkalinity as bicarbonate, below zero where an acid takes it away. */
export type FormMasses = { readonly [F in FeedForm]?: number };

/** What a product gives to the water. */
export interface ProductContent {
  /** kg per kg of product. */
  readonly forms: FormMasses;
  /** mol per kg of product, as they stand at pH 5 to 6. `HCO3-` is alkalinity, below zero where an acid takes it away. */
  readonly ions: IonAmounts;
}

/**
 * Ions that do not last in a feed: what becomes of them, and the alkalinity that they bring (mol of charge a mole), counted from
 * carbonic acid, dihydrogen phosphate and ammonium: a titration to about pH 4.5.
 */
const settling: { readonly [I in Ion]?: { readonly becomes?: Ion; readonly alkalinity: number } } = {
  'H+': { alkalinity: -1 },
  'OH-': { alkalinity: 1 },
  'HCO3-': { alkalinity: 1 },
  'CO3 2-': { alkalinity: 2 },
  'HSO4-': { becomes: 'SO4 2-', alkalinity: -1 },
  'HPO4 2-': { becomes: 'H2PO4-', alkalinity: 1 },
  'PO4 3-': { becomes: 'H2PO4-', alkalinity: 2 },
};

/**
 * What a product gives to the water, per kg.
 *
 * A salt gives amount = ions · purity / molar mass; what its purity leaves is taken to be inert. Strong acids, bases and carbonates change
 * alkalinity: nitric acid by -1 a mole, potassium carbonate by +2, dipotassium phosphate by +1. A label gives every form as the ion that
 * carries it in a feed; it says nothing of alkalinity, its rounded figures do not balance in charge, and nitrogen of no stated form
 * has no ion.
 *
 * Throws a RangeError for a label that cannot be right.
 */
export function contentOfProduct(product: Product): ProductContent {
  return 'salt' in product ? contentOfSalt(product.salt, product.purity) : contentOfLabel(product.label);
}

function contentOfSalt(key: SaltKey, purity: number): ProductContent {
  const units = purity / molarMassOfComposition(compositionOfFormula(salts[key].formula));
  const ions: { [I in Ion]?: number } = {};
  const give = (ion: Ion, amount: number) => {
    ions[ion] = (ions[ion] ?? 0) + amount;
  };
  for (const [name, count] of Object.entries(salts[key].ions)) {
    const ion = name as Ion;
    const { becomes, alkalinity } = settling[ion] ?? { becomes: ion, alkalinity: 0 };
    if (becomes !== undefined) give(becomes, count * units);
    if (alkalinity !== 0) give('HCO3-', alkalinity * count * units);
  }
  return { forms: formsOfIons(ions), ions };
}

function contentOfLabel(label: LabelStatement): ProductContent {
  const forms = formsOfLabel(label);
  const { N: _ofNoForm, ...carried } = forms;
  return { forms, ions: ionAmountsOfNutrients(carried) };
}

function formsOfIons(amounts: IonAmounts): FormMasses {
  const forms: { [F in FeedForm]?: number } = {};
  for (const [ion, amount] of Object.entries(amounts)) {
    const form = formOfIon(ion as Ion);
    if (form === undefined) continue;
    const mass = amount * molarMassOfNutrientForm(form);
    forms[form] = mass;
    if (form.startsWith('N-')) forms.N = (forms.N ?? 0) + mass;
  }
  return forms;
}

function formOfIon(ion: Ion): NutrientFormKey | undefined {
  if ('Fe' in table[ion].composition) return 'Fe';
  return (Object.keys(nutrientForms) as NutrientFormKey[]).find((form) => nutrientForms[form].carrier === ion);
}
