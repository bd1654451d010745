/** Seconds of a day. */
export const daySeconds = 86_400;

/**
 * Time until a store is empty: t = V/V_day days, s; infinite where nothing is taken.
 *
 * @param volume V in store, m3
 * @param dailyVolume V_day taken in a day, m3
 * @example timeUntilEmpty(0.2, 0.05) // => 345600
 */
export function timeUntilEmpty(volume: number, dailyVolume: number): number {
  return (volume / dailyVolume) * daySeconds;
}
