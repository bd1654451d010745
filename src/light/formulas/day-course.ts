import { extraterrestrialRadiationBetween, extraterrestrialRadiationFao56, hourAngle } from './sun.js';

/**
 * Share of a day's radiation that arrives between two times by the clock, in s since midnight, where the sky is the same all day.
 *
 *   share = Ra(t1 to t2)/Ra(day)
 *
 * By the radiation outside the atmosphere. The sky takes more of a low sun, so that at the ground mornings and evenings get a little less and
 * noon a little more. 0 where the sun does not rise.
 *
 * @param latitude rad, positive north
 * @param solarNoon time by the clock at which the sun stands highest, s since midnight
 * @example radiationShareBetween(0.9, 110, 43200, 0, 43200) // => 0.5
 */
export function radiationShareBetween(latitude: number, dayOfYear: number, solarNoon: number, from: number, to: number): number {
  const whole = extraterrestrialRadiationFao56(latitude, dayOfYear);
  const part = extraterrestrialRadiationBetween(latitude, dayOfYear, hourAngle(from, solarNoon), hourAngle(to, solarNoon));
  return whole > 0 ? part / whole : 0;
}

/**
 * A day's radiation, in J/m2, spread over equal steps of the day, in W/m2: the mean of each step. Times the length of a step they add up to the day's sum.
 *
 * @param latitude rad, positive north; between the polar circles
 * @param solarNoon time by the clock at which the sun stands highest, s since midnight
 * @param steps how many steps the day has: 24 for hours
 */
export function irradianceThroughDay(latitude: number, dayOfYear: number, solarNoon: number, radiationSum: number, steps: number): Float64Array {
  const length = 86400 / steps;
  return Float64Array.from({ length: steps }, (_, i) => radiationSum / length * radiationShareBetween(latitude, dayOfYear, solarNoon, i * length, (i + 1) * length));
}
