import type { IonAmounts } from './concentration.js';
import { speciate, type ComponentTotals, type SpeciationConditions } from './speciation.js';
import { alkalinityFromCharge, alkalinityOfIons, componentTotalsOf } from './totals.js';

/** What `speciate` takes, and how far the statement that it is made from contradicts itself. */
export interface SpeciationTask {
  readonly totals: ComponentTotals;
  readonly conditions: SpeciationConditions;
  /** Alkalinity (mol of charge per m3) that cannot be together with the pH; the carbon is then left out. Zero as a rule. */
  readonly contradiction: number;
}

/** pH at which a titration of alkalinity ends: below it there is no bicarbonate to count. */
export const endPoint = 4.5;

/** Ions that exchange protons with water until a feed has settled: their amounts fix an alkalinity, and so the pH. */
const unsettled = ['H+', 'OH-', 'CO3 2-', 'HSO4-', 'HPO4 2-', 'PO4 3-'] as const;

/**
 * The totals and conditions for `speciate` of a water or a feed as an analysis or a recipe states it: amounts of its ions (mol/m3), perhaps a pH.
 *
 * Bicarbonate of an analysis is a titration, so with a pH it stands for alkalinity, and the carbon follows from both. Without a pH it is an
 * ion as it stands, unless ions that exchange protons (carbonate, hydrogen phosphate, acid) are stated too: then they give the pH.
 *
 * @param temperature K
 * @param waterDensity kg/m3
 */
export function speciationTask(amounts: IonAmounts, pH: number | undefined, temperature: number, waterDensity: number): SpeciationTask {
  const totals = componentTotalsOf(amounts, waterDensity);
  const alkalinity = alkalinityOfIons(amounts) / waterDensity;
  const task = (some: ComponentTotals, acidity: Omit<SpeciationConditions, 'temperature'>, miss = 0): SpeciationTask =>
    ({ totals: some, conditions: { temperature, ...acidity }, contradiction: Math.abs(miss) * waterDensity });
  if (pH === undefined) return task(totals, unsettled.some((ion) => (amounts[ion] ?? 0) > 0) ? { alkalinity } : {});

  const { 'HCO3-': carbon, ...others } = totals;
  if (carbon === undefined) return task(others, { pH });
  const withoutCarbon = speciate(others, { temperature, pH }).alkalinity;
  return pH >= endPoint && alkalinity > withoutCarbon ? task(others, { pH, alkalinity }) : task(others, { pH }, alkalinity - withoutCarbon);
}

/**
 * The same where the balance of charges is to give the pH: for salts, acids and bases of known purity, weighed into pure water. An analysis is
 * seldom good enough. Bicarbonate and carbonate count as inorganic carbon, none of which has left.
 */
export function speciationTaskFromCharge(amounts: IonAmounts, temperature: number, waterDensity: number): SpeciationTask {
  const alkalinity = alkalinityFromCharge(amounts) / waterDensity;
  return { totals: componentTotalsOf(amounts, waterDensity), conditions: { temperature, alkalinity }, contradiction: 0 };
}
