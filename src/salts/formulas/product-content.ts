import { nutrientMassesOfIons } from '../../solution/formulas/blending.js';
import { molarMassOfComposition } from '../../solution/formulas/composition.js';
import { ionAmountsOfNutrients, nitrogenOfForms, type IonAmounts } from '../../solution/formulas/concentration.js';
import { alkalinityOfIons } from '../../solution/formulas/totals.js';
import type { Ion } from '../../solution/ions.js';
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

/** What becomes of ions that do not last in a feed; of those without an entry nothing stays but the alkalinity that they bring or take. */
const settling: { readonly [I in Ion]?: Ion | undefined } = {
  'H+': undefined, 'OH-': undefined, 'HCO3-': undefined, 'CO3 2-': undefined, 'HSO4-': 'SO4 2-', 'HPO4 2-': 'H2PO4-', 'PO4 3-': 'H2PO4-',
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
  return 'salt' in product ? contentOfSalt(product) : contentOfLabel(product.label);
}

/** Ions of a salt as they come from its crystals, mol per kg of product; in a concentrate they have not settled to what they are in a feed. */
export function ionsFromCrystals({ salt, purity }: Extract<Product, { readonly salt: SaltKey }>): IonAmounts {
  const { formula, ions } = salts[salt];
  const units = purity / molarMassOfComposition(compositionOfFormula(formula));
  return Object.fromEntries(Object.entries(ions).map(([ion, count]) => [ion, count * units]));
}

function contentOfSalt(product: Extract<Product, { readonly salt: SaltKey }>): ProductContent {
  const given = ionsFromCrystals(product);
  const ions: { [I in Ion]?: number } = {};
  for (const [ion, amount] of Object.entries(given) as [Ion, number][]) {
    const settled = ion in settling ? settling[ion] : ion;
    if (settled) ions[settled] = (ions[settled] ?? 0) + amount;
  }
  const alkalinity = alkalinityOfIons(given);
  const nutrients = nutrientMassesOfIons(given);
  const nitrogen = nitrogenOfForms(nutrients);
  return { forms: { ...nutrients, ...(nitrogen > 0 && { N: nitrogen }) }, ions: { ...ions, ...(alkalinity !== 0 && { 'HCO3-': alkalinity }) } };
}

function contentOfLabel(label: LabelStatement): ProductContent {
  const forms = formsOfLabel(label);
  const { N: _ofNoForm, ...carried } = forms;
  return { forms, ions: ionAmountsOfNutrients(carried) };
}
