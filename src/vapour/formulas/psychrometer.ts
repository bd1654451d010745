import type { Root } from '../../numerics/roots.js';
import { bracketedRoot } from '../../numerics/roots.js';
import { saturationPressureOverWater, type SaturationCorrelation } from '../../water/saturation/over-water.js';

/** Psychrometer coefficients in 1/K by ventilation of the wet bulb (Allen et al. 1998, FAO-56, equation 16). */
export const psychrometerCoefficientsFao56 = {
  /** Forced, about 5 m/s. */
  'aspirated': 0.000662,
  /** Natural, about 1 m/s. */
  'naturally ventilated': 0.000800,
  /** Indoors, still air. */
  'indoor': 0.001200,
} as const;

/**
 * Actual vapour pressure in Pa, from a psychrometer: dry and wet bulb in K, air pressure in Pa, coefficient in 1/K.
 *
 *   e = es(Twet) - a P (Tdry - Twet)
 *
 * The wick is taken as wet, not iced; for ice put saturationPressureOverIce for es. Negative where the readings cannot belong together.
 * Source: Allen et al. (1998), FAO-56, equations 15 and 16.
 *
 * @example vapourPressureFromPsychrometer(298.75, 292.65, 87896.6, 0.000662, 'FAO-56') // => 1911.94, printed 1.91 kPa
 */
export function vapourPressureFromPsychrometer(
  dryBulb: number, wetBulb: number, pressure: number, coefficient: number, correlation?: SaturationCorrelation,
): number {
  return saturationPressureOverWater(wetBulb, correlation) - coefficient * pressure * (dryBulb - wetBulb);
}

/**
 * What the wet bulb of a psychrometer reads, in K, from the dry bulb in K, the vapour pressure and air pressure in Pa and the coefficient in 1/K.
 *
 * The inverse of vapourPressureFromPsychrometer; `residual` is in Pa. Throws ConvergenceError for air moister than saturated.
 */
export function wetBulbOfPsychrometer(
  dryBulb: number, vapourPressure: number, pressure: number, coefficient: number, correlation?: SaturationCorrelation,
): Root {
  return bracketedRoot(
    (wetBulb) => vapourPressureFromPsychrometer(dryBulb, wetBulb, pressure, coefficient, correlation) - vapourPressure, 173.15, dryBulb);
}
