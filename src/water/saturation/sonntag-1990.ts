/** Coefficients of Sonntag's equation: ln p = c0/T + c1 + c2 T + c3 T² + c4 ln T, p in Pa. */
export type SonntagCoefficients = readonly [number, number, number, number, number];

const water: SonntagCoefficients = [-6096.9385, 21.2409642, -2.711193e-2, 1.673952e-5, 2.433502];

/**
 * Saturation vapour pressure over liquid water, in Pa, from the temperature in K, by Sonntag.
 *
 *   ln p = c0/T + c1 + c2 T + c3 T² + c4 ln T
 *
 * Range: 173.15 to 373.15 K, supercooled water included. Within 0.007 % of IAPWS-95 from 0 to 50 °C.
 * The coefficients are from memory, as also carried by several public programs: pass others as the last argument.
 * Source: Sonntag (1990), Z. Meteorol. 70, 340-344.
 */
export function saturationPressureSonntag1990(temperature: number, c = water): number {
  const T = temperature;
  return Math.exp(c[0] / T + c[1] + T * (c[2] + T * c[3]) + c[4] * Math.log(T));
}
