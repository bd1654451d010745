import { triplePointPressure, triplePointTemperature } from '../constants.js';

/**
 * Saturation vapour pressure over ice, in Pa, from the temperature in K. The default over ice.
 *
 *   ln(p/pt) = (1/θ) Σ ai θ^bi,  θ = T/273.16 K,  pt = 611.657 Pa
 *
 * Range: 50 to 273.16 K; there is no ice above it, though the equation still gives a number.
 * Source: IAPWS R14-08(2011), the equation for the sublimation curve.
 *
 * @example saturationPressureOverIceIapws2011(230) // => 8.94735
 */
export function saturationPressureOverIceIapws2011(temperature: number): number {
  const x = temperature / triplePointTemperature;
  // The powers by their one logarithm, which is faster than three powers.
  const log = Math.log(x);
  const sum = -0.212144006e2 * Math.exp(0.333333333e-2 * log) + 0.273203819e2 * Math.exp(1.20666667 * log) - 0.61059813e1 * Math.exp(1.70333333 * log);
  return triplePointPressure * Math.exp(sum / x);
}
