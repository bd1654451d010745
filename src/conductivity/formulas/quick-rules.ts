import { logActivityCoefficientDavies1962 } from '../../solution/formulas/activity.js';
import { ionicStrengthOfIons, type IonAmounts } from '../../solution/formulas/concentration.js';
import type { Ion } from '../../solution/ions.js';
import {
  limitingConductivities25, limitingConductivitiesStandardMethods2510, type LimitingConductivityTable,
} from '../limiting-conductivities.js';

/**
 * Conductivity at 25 °C (S/m) as if every ion moved alone: the sum of amount (mol/m3) times limiting molar conductivity.
 *
 * Always high: by 2 % in soft water of 0.002 S/m, 5 % at 0.01, 10 to 15 % at 0.05 and 20 to 30 % in a feed of 0.2 S/m. Ions without a row add
 * nothing.
 */
export function conductivityLimitingSum(amounts: IonAmounts, limiting: LimitingConductivityTable = limitingConductivities25): number {
  let sum = 0;
  for (const [ion, amount] of Object.entries(amounts)) sum += amount * (limiting[ion as Ion] ?? 0) * 1e-4;
  return sum;
}

/**
 * Conductivity at 25 °C (S/m) by the hand calculation of Standard Methods, from the amounts of ions (mol/m3).
 *
 * k = k0 y^2, k0 the sum at infinite dilution, log10 y = -0.5 [sqrt(I)/(1 + sqrt(I)) - 0.3 I], I in mol/L without ion pairs.
 * Meant for dilute waters; above 0.15 S/m low by 5 % on average, though high for waters rich in calcium sulfate.
 *
 * Source: Standard Methods for the Examination of Water and Wastewater, method 2510; conductivities from memory.
 */
export function conductivityStandardMethods2510(
  amounts: IonAmounts, limiting: LimitingConductivityTable = limitingConductivitiesStandardMethods2510,
): number {
  const y = 10 ** logActivityCoefficientDavies1962(1, ionicStrengthOfIons(amounts) / 1000, 0.5);
  return conductivityLimitingSum(amounts, limiting) * y ** 2;
}

/**
 * Conductivity of a feed at 25 °C (S/m) from the charge of its cations (mol of charge per m3, which is meq/L): slope × cations + intercept.
 *
 * 0.095 mS/cm per meq/L and 0.19 mS/cm, for feeds of about 1 to 4 mS/cm.
 * Source: Sonneveld, Voogt and Spaans 1999; both coefficients from memory, hence arguments.
 *
 * @example conductivitySonneveld1999(20) // => 0.209, for 2.09 mS/cm
 */
export function conductivitySonneveld1999(cationCharge: number, slope = 0.0095, intercept = 0.019): number {
  return slope * cationCharge + intercept;
}

/** Conductivity at 25 °C (S/m) as a tenth of the cations' charge in mS/cm per meq/L: common practice, 5 to 15 % low for feeds of nitrate and potassium. */
export function conductivityTenthOfCharge(cationCharge: number): number {
  return cationCharge / 100;
}
