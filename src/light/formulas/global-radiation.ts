/** Parts of the radiation from outside the atmosphere that reach the ground: under a closed sky, and further with the sun out all day. */
export type AngstromCoefficients = readonly [overcast: number, sunny: number];

/**
 * Solar radiation at the ground from the hours of sunshine, in the unit of Ra.
 *
 *   Rs = (0.25 + 0.50 n/N) Ra
 *
 * Where radiation was measured nearby, fit the two coefficients to it and pass them. Source: Allen et al. (1998), FAO-56, equation 35 (Angström).
 *
 * @param extraterrestrial Ra
 * @param sunshineShare n/N, 0 to 1
 * @example radiationFromSunshineAngstrom(25.1110, 7.09677 / 10.89508) // => 14.4561, printed 14.5 MJ/m2
 */
export function radiationFromSunshineAngstrom(extraterrestrial: number, sunshineShare: number, [overcast, sunny]: AngstromCoefficients = [0.25, 0.5]): number {
  return (overcast + sunny * sunshineShare) * extraterrestrial;
}

/**
 * Solar radiation at the ground under a clear sky, in the unit of Ra: Rso = (0.75 + 2e-5 z) Ra.
 *
 * Source: Allen et al. (1998), FAO-56, equation 37.
 *
 * @param elevation z, m
 */
export function clearSkyRadiationFao56(extraterrestrial: number, elevation: number): number {
  return (0.75 + 2e-5 * elevation) * extraterrestrial;
}

/**
 * Solar radiation at the ground from how far the temperature of the day swings, in the unit of Ra.
 *
 *   Rs = kRs √(Tmax - Tmin) Ra
 *
 * For places without any reading of sun. kRs is 0.16 inland and 0.19 near a coast. More than a clear sky lets through means a swing that the sun has not made.
 * Source: Allen et al. (1998), FAO-56, equation 50 (Hargreaves).
 *
 * @param temperatureRange Tmax - Tmin, K
 */
export function radiationFromTemperatureRangeHargreaves(extraterrestrial: number, temperatureRange: number, coefficient = 0.16): number {
  return coefficient * Math.sqrt(temperatureRange) * extraterrestrial;
}
