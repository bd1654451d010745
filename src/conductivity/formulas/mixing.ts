import { bracketedRoot, type Root } from '../../numerics/roots.js';
import type { IonAmounts } from '../../solution/formulas/concentration.js';
import { speciationTask } from '../../solution/formulas/stated-solution.js';
import type { Ion } from '../../solution/ions.js';
import { waterDensityIapws2008 } from '../../water/density.js';
import { conductivityOfSolution } from './ionic-model.js';

/** Conductivity (S/m) at a temperature (K) of a water or a feed as stated, from the amounts of its ions (mol/m3), by `conductivityOfSolution`. */
export function conductivityOfIons(amounts: IonAmounts, temperature: number): number {
  const { totals, conditions } = speciationTask(amounts, undefined, temperature, waterDensityIapws2008(temperature));
  return conductivityOfSolution(totals, conditions).value;
}

/**
 * Amounts of ions on the way from one solution to another: (1 - s) a + s b, for every ion, and nothing below zero.
 *
 * With s from 0 to 1 it is a blend with the share s of the second. Beyond 1 it is a feed made s times as strong as recipe b in water a.
 */
export function amountsBetween(a: IonAmounts, b: IonAmounts, share: number): IonAmounts {
  const names = [...new Set([...Object.keys(a), ...Object.keys(b)])] as Ion[];
  return Object.fromEntries(names.map((ion) => [ion, Math.max(0, (1 - share) * (a[ion] ?? 0) + share * (b[ion] ?? 0))]));
}

/**
 * Share of the second of two solutions at which their blend has a conductivity (S/m) at a temperature (K), from 0 to `most`.
 *
 * Throws ConvergenceError where the conductivity is not between those of the two ends.
 */
export function shareForConductivity(a: IonAmounts, b: IonAmounts, conductivity: number, temperature: number, most = 1): Root {
  return bracketedRoot((share) => conductivityOfIons(amountsBetween(a, b, share), temperature) - conductivity, 0, most, { tolerance: 1e-12 });
}

/**
 * Water to add (m3) to a volume of feed (m3) to bring its conductivity down to a target, as if conductivity were shared out with the ions:
 * V (κ - κ_target)/(κ_target - κ_water), all in one unit at one temperature.
 *
 * Common practice. A feed conducts more per ion the thinner it is, so the result is too little: halving 2.5 mS/cm this way leaves it 3 % high.
 *
 * @example waterForConductivityProportional(0.06, 0.24, 0.16, 0.04) // => 0.04
 */
export function waterForConductivityProportional(volume: number, conductivity: number, target: number, waterConductivity = 0): number {
  return (volume * (conductivity - target)) / (target - waterConductivity);
}
