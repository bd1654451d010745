import { atomicWeights, type Element } from '../../solution/atomic-weights.js';
import type { IonAmounts } from '../../solution/formulas/concentration.js';
import { ions, type Composition, type Ion } from '../../solution/ions.js';

/** Mass of an element in a mole of an ion, kg/mol. */
const massIn = (ion: Ion, element: Element): number => ((((ions[ion].composition as Composition)[element] ?? 0) * Number(atomicWeights[element])) / 1000);

/**
 * Nitrogen that feeds plants and waters, in a mole of an ion or molecule, kg/mol: of nitrate, nitrite, ammonium and urea. That of chelates, which is
 * little, is not counted.
 *
 * @example nitrogenPerMole('NO3-') // => 0.014007
 */
export const nitrogenPerMole = (ion: Ion): number => ('Fe' in ions[ion].composition ? 0 : massIn(ion, 'N'));

/** Phosphorus in a mole of an ion, kg/mol. */
export const phosphorusPerMole = (ion: Ion): number => massIn(ion, 'P');

/** Nitrogen and phosphorus, kg, that go with a volume (m3) in which there are these amounts (mol/m3). */
export function nutrientsWithVolume(volume: number, amounts: IonAmounts): { readonly nitrogenMass: number; readonly phosphorusMass: number } {
  const massOf = (perMole: (ion: Ion) => number): number => volume * (Object.entries(amounts) as [Ion, number][]).reduce((sum, [ion, amount]) => sum + amount * perMole(ion), 0);
  return { nitrogenMass: massOf(nitrogenPerMole), phosphorusMass: massOf(phosphorusPerMole) };
}
