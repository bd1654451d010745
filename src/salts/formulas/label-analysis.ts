import type { Decimal } from 'decimal.js';
import type { NutrientFormKey } from '../../solution/nutrient-forms.js';
import { oxides, type Oxide } from '../../solution/oxides.js';
import { decimalSum, ExactDecimal, writtenDecimal } from '../exact-decimal.js';
import { exactMassFractions } from './molar-mass.js';

/** A nutrient form, or `N`: nitrogen of every form together, stated or not. */
export type FeedForm = NutrientFormKey | 'N';

/** What a label may state: total nitrogen and its forms, elements, oxides. */
export type LabelItem = Exclude<FeedForm, 'HCO3'> | Oxide;

/** Figures of a label, fractions (15.5 % is 0.155). */
export type LabelStatement = { readonly [I in LabelItem]?: number };

/** What stands wrong on a label; `item` is the figure, left out where it is their sum. */
export interface LabelProblem {
  readonly item?: LabelItem;
  readonly message: string;
}

/** Nutrients of a product from its label, or what cannot be right about it. */
export type LabelAnalysis =
  | { readonly ok: true; readonly forms: { readonly [F in FeedForm]?: number } }
  | { readonly ok: false; readonly problems: readonly LabelProblem[] };

/** By how much printed forms of nitrogen may pass the printed total: four figures rounded to 0.1 % each. Common practice, no source. */
const nitrogenRounding = 0.002;

const nitrogenForms = ['N-NO3', 'N-NH4', 'N-urea'] as const;

/**
 * Elements and nitrogen forms in a product, kg/kg, from the figures of its label, added up and divided in decimals and rounded once.
 *
 * An oxide counts the share of the element in it: P = P2O5 · 2 M(P) / (2 M(P) + 5 M(O)), 0.4364. Nitrogen stated only as a total stays `N`;
 * forms without a total make it. A label is refused where one element is stated twice (as oxide and as element), where the forms of
 * nitrogen pass its total by more than rounding, and where the elements, or the figures as printed without chlorine, come to more than the product.
 *
 * @param label fractions of the product's mass, or of its volume (mass per litre of product, 10 % w/v is 100 g/L) where a density is given
 * @param density of the product, kg/m3, only for a label in mass per volume
 * @example analyseLabel({ N: 0.13, K2O: 0.46 }); // => { ok: true, forms: { N: 0.13, K: 0.38186… } }
 */
export function analyseLabel(label: LabelStatement, density?: number): LabelAnalysis {
  const scale = density === undefined ? new ExactDecimal(1) : new ExactDecimal(1000).div(writtenDecimal(density));
  const forms = new Map<FeedForm, Decimal>();
  const statedBy = new Map<FeedForm, LabelItem>();
  const problems: LabelProblem[] = [];
  for (const [key, figure] of Object.entries(label)) {
    const item = key as LabelItem;
    const form = isOxide(item) ? oxides[item].element : item;
    const other = statedBy.get(form);
    if (other !== undefined) problems.push({ item, message: `${other} and ${item} state the same nutrient: give one of them` });
    statedBy.set(form, item);
    forms.set(form, writtenDecimal(figure).times(scale).times(isOxide(item) ? elementShare(item) : 1));
  }

  const stated = decimalSum(nitrogenForms.map((form) => forms.get(form) ?? new ExactDecimal(0)));
  const nitrogen = forms.get('N') ?? stated;
  if (stated.minus(nitrogen).gt(nitrogenRounding)) problems.push({ item: 'N', message: 'the forms of nitrogen come to more than the total' });
  if (nitrogen.gt(0)) forms.set('N', ExactDecimal.max(nitrogen, stated));

  const isForm = (item: string): boolean => (nitrogenForms as readonly string[]).includes(item);
  const elements = decimalSum([...forms].filter(([form]) => !isForm(form)).map(([, share]) => share));
  // As printed, oxides and all: a chloride alone has no room for the oxygen that its oxide counts, so it is left out.
  const printed = decimalSum(Object.entries(label).filter(([item]) => item !== 'Cl' && item !== 'N' && !isForm(item)).map(([, figure]) => writtenDecimal(figure).times(scale))).plus(nitrogen);
  const past = ([['the elements', elements], ['the figures', printed]] as const).find(([, sum]) => sum.gt(1));
  if (past) problems.push({ message: `${past[0]} come to ${past[1].times(100).toSignificantDigits(4).toString()} % of the product's mass` });
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, forms: Object.fromEntries([...forms].map(([form, share]) => [form, share.toNumber()])) };
}

/**
 * The same elements and nitrogen forms, kg/kg, of a label that is known to add up.
 *
 * Throws a RangeError for one that cannot be right.
 */
export function formsOfLabel(label: LabelStatement, density?: number): { readonly [F in FeedForm]?: number } {
  const analysis = analyseLabel(label, density);
  if (!analysis.ok) throw new RangeError(analysis.problems.map(({ message }) => message).join('; '));
  return analysis.forms;
}

function isOxide(item: LabelItem): item is Oxide {
  return Object.hasOwn(oxides, item);
}

function elementShare(oxide: Oxide): Decimal {
  const { element, composition } = oxides[oxide];
  return exactMassFractions(composition).find(([symbol]) => symbol === element)![1];
}
