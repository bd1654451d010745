/** Most steps in search of a point, and the share of the wanted sum that it may miss. */
const [searchSteps, precision] = [40, 1e-13];

/**
 * The x at which x + weight y(x) comes to a sum, for a y that is 0 up to an x and does not fall beyond: of all points of such a curve there is one for
 * every sum, however flat or steep it is.
 *
 * @param start where to look first
 * @param zero up to where y is 0
 */
export function pointForSum(y: (x: number) => number, slope: (x: number) => number, weight: number, sum: number, start: number, zero = 0): number {
  if (sum <= zero) return sum;
  let [low, high] = [zero, sum];
  let x = start > low && start < high ? start : (low + high) / 2;
  for (let step = 0; step < searchSteps; step++) {
    const miss = x + weight * y(x) - sum;
    if (Math.abs(miss) <= precision * (sum - zero)) break;
    if (miss > 0) high = x;
    else low = x;
    const next = x - miss / (1 + weight * slope(x));
    x = next > low && next < high ? next : (low + high) / 2;
  }
  return x;
}
