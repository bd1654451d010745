import { amountFromNutrientMass, chargeBalanceOfIons, nitrogenOfForms } from '../../solution/formulas/concentration.js';
import type { LabelStatement } from './label-analysis.js';
import { contentOfProduct } from './product-content.js';

/**
 * Whether the figures of a label could be those of an acid: nitrate, phosphate, sulfate or chloride with next to no cation beside it, so that
 * anions pass cations by more than 80 % of both together.
 *
 * What a label leaves open counts against it: nitrogen of no stated form as ammonium, iron as an iron(II) salt, and molybdenum not at all.
 * Elemental sulfur and superphosphate look like acid too.
 *
 * @example couldBeAcid({ P2O5: 0.61 }) // => true
 */
export function couldBeAcid(label: LabelStatement): boolean {
  const { forms, ions } = contentOfProduct({ label });
  const { 'FeEDTA-': iron = 0, 'MoO4 2-': _molybdate, 'NH4+': ammonium = 0, ...others } = ions;
  const ofNoForm = (forms.N ?? 0) - nitrogenOfForms(forms);
  const amounts = { ...others, 'Fe2+': iron, 'NH4+': ammonium + amountFromNutrientMass('N-NH4', ofNoForm) };
  return chargeBalanceOfIons(amounts).relativeImbalance < -0.8;
}
