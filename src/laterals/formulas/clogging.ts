/**
 * Uniformity of emitters of which a share is fully clogged, at random along the pipe. Exact for the mean over all such choices of many emitters:
 * the mean falls to (1 - c) of what it was, and a share c of the flows is none. What partly clogged emitters do is not in it.
 */
import { lowestOverMean, mean } from './uniformity.js';

/** Low-quarter uniformity: clogged emitters come first into the lowest quarter, the weakest of the others fill it. 0 from a quarter clogged on. */
export function lowQuarterUniformityClogged(flows: ArrayLike<number>, cloggedShare: number): number {
  const running = 0.25 - cloggedShare;
  if (running <= 0) return 0;
  const shareOfRunning = running / (1 - cloggedShare);
  return (shareOfRunning / 0.25) * lowestOverMean(flows, shareOfRunning * flows.length);
}

/** Christiansen's coefficient: every clogged emitter lies a whole mean below the mean. */
export function christiansenUniformityClogged(flows: ArrayLike<number>, cloggedShare: number): number {
  const middle = (1 - cloggedShare) * mean(flows);
  let away = 0;
  for (let i = 0; i < flows.length; i++) away += Math.abs(flows[i]! - middle);
  return 1 - cloggedShare - ((1 - cloggedShare) * away) / (flows.length * middle);
}

/**
 * Statistical uniformity 1 - V: 1 + V^2 = (1 + V0^2)/(1 - c), V0 the coefficient of variation of those that run. From the moments: the mean square
 * falls in proportion to 1 - c, the square of the mean as its square.
 *
 * @param uniformity 1 - V0
 * @example statisticalUniformityClogged(1, 0.05) // => 0.770584
 */
export function statisticalUniformityClogged(uniformity: number, cloggedShare: number): number {
  return 1 - Math.sqrt((1 + (1 - uniformity) ** 2) / (1 - cloggedShare) - 1);
}
