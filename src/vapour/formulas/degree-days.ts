/**
 * Degree-days of a day in K·s, from its highest and lowest temperature and the base in K, by their mean alone.
 *
 *   86400 s × max(0, (Tmax + Tmin)/2 - Tbase)
 *
 * A cold night takes away from what a warm day gave. Never more than degreeDaysLimitedMcMasterWilhelm1997 where there is no upper limit; up to 83 %
 * apart from it were found in the field.
 * Source: McMaster and Wilhelm (1997), Agricultural and Forest Meteorology 87, 291-300, method 1.
 *
 * @example degreeDaysMeanMcMasterWilhelm1997(291.15, 279.15, 283.15) / 86400 // => 2
 */
export function degreeDaysMeanMcMasterWilhelm1997(highest: number, lowest: number, base: number): number {
  return 86400 * Math.max(0, (highest + lowest) / 2 - base);
}

/**
 * Degree-days of a day in K·s, from its highest and lowest temperature, the base and where there is one the upper limit in K, each temperature
 * brought between base and upper limit before the mean is taken.
 *
 *   86400 s × [(T'max + T'min)/2 - Tbase],  T' = min(max(T, Tbase), Tupper)
 *
 * Source: McMaster and Wilhelm (1997), Agricultural and Forest Meteorology 87, 291-300, method 2.
 *
 * @example degreeDaysLimitedMcMasterWilhelm1997(291.15, 279.15, 283.15) / 86400 // => 4
 */
export function degreeDaysLimitedMcMasterWilhelm1997(highest: number, lowest: number, base: number, upper = Infinity): number {
  const limited = (temperature: number): number => Math.min(Math.max(temperature, base), upper);
  return 86400 * ((limited(highest) + limited(lowest)) / 2 - base);
}
