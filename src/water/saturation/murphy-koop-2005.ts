/** Coefficients of the ice equation of Murphy and Koop: ln p = c0 + c1/T + c2 ln T + c3 T. */
export type MurphyKoopIceCoefficients = readonly [number, number, number, number];

const ice: MurphyKoopIceCoefficients = [9.550426, -5723.265, 3.53068, -0.00728332];

/**
 * Vapour pressure over liquid water, supercooled water included, in Pa, from the temperature in K, by Murphy and Koop.
 *
 * The one to use over water below 0 °C: a wet leaf, a fog droplet or a humidity sensor calibrated over water in frost.
 *
 *   ln p = 54.842763 - 6763.22/T - 4.210 ln T + 0.000367 T
 *        + tanh(0.0415 (T - 218.8)) (53.878 - 1331.22/T - 9.44523 ln T + 0.014025 T)
 *
 * Range: 123 to 332 K. Within 0.009 % of IAPWS-95 from 0 to 50 °C, 0.2 % off at 80 °C.
 * Source: Murphy and Koop (2005), Q. J. R. Meteorol. Soc. 131, 1539-1565, equation 10.
 */
export function saturationPressureMurphyKoop2005(temperature: number): number {
  const T = temperature;
  const logT = Math.log(T);
  return Math.exp(54.842763 - 6763.22 / T - 4.21 * logT + 0.000367 * T
    + Math.tanh(0.0415 * (T - 218.8)) * (53.878 - 1331.22 / T - 9.44523 * logT + 0.014025 * T));
}

/**
 * Vapour pressure over ice, in Pa, from the temperature in K, by Murphy and Koop.
 *
 *   ln p = 9.550426 - 5723.265/T + 3.53068 ln T - 0.00728332 T
 *
 * Range: 110 to 273.16 K.
 * The coefficients are from memory, as also carried by several public programs: pass others as the last argument.
 * Source: Murphy and Koop (2005), equation 7.
 */
export function saturationPressureOverIceMurphyKoop2005(temperature: number, c = ice): number {
  return Math.exp(c[0] + c[1] / temperature + c[2] * Math.log(temperature) + c[3] * temperature);
}
