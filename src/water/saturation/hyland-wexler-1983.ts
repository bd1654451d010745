/**
 * Saturation vapour pressure over liquid water, in Pa, from the temperature in K, by Hyland and Wexler: the equation of the ASHRAE Handbook.
 *
 *   ln p = c1/T + c2 + c3 T + c4 T² + c5 T³ + c6 ln T
 *
 * Range: 273.15 to 473.15 K. Within 0.023 % of IAPWS-95 from 0 to 100 °C (always low below 90 °C); the Handbook claims 300 ppm.
 * Source: Hyland and Wexler (1983), ASHRAE Trans. 89(2A), 500-519; ASHRAE Handbook Fundamentals (2017), chapter 1, equation 6.
 *
 * @example saturationPressureHylandWexler1983(298.15) // => 3169.22; the Handbook's Table 3 has 3169.7
 */
export function saturationPressureHylandWexler1983(temperature: number): number {
  const T = temperature;
  return Math.exp(-5.8002206e3 / T + 1.3914993 + T * (-4.8640239e-2 + T * (4.1764768e-5 - T * 1.4452093e-8)) + 6.5459673 * Math.log(T));
}

/**
 * Saturation vapour pressure over ice, in Pa, from the temperature in K, by Hyland and Wexler: the equation of the ASHRAE Handbook.
 *
 *   ln p = c1/T + c2 + c3 T + c4 T² + c5 T³ + c6 T⁴ + c7 ln T
 *
 * Range: 173.15 to 273.16 K. It meets the equation over water at the triple point, not at 0 °C.
 * Source: Hyland and Wexler (1983); ASHRAE Handbook Fundamentals (2017), chapter 1, equation 5.
 */
export function saturationPressureOverIceHylandWexler1983(temperature: number): number {
  const T = temperature;
  return Math.exp(-5.6745359e3 / T + 6.3925247
    + T * (-9.677843e-3 + T * (6.2215701e-7 + T * (2.0747825e-9 - T * 9.484024e-13))) + 4.1635019 * Math.log(T));
}
