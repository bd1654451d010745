import { daySeconds } from './barrel.js';
import { firstNotBelow } from './first-not-below.js';
import { wholeUpward } from './whole-upward.js';

/** How the use of a day is spread over it: the share used up at rising moments after midnight, straight between them. */
export interface DayPattern {
  /** s, from 0 to 86400 */
  readonly times: ArrayLike<number>;
  /** From 0 to 1. */
  readonly shares: ArrayLike<number>;
}

/** y at x where both rise from point to point; where y stays as it is, x is the first that has it. */
function between(xs: ArrayLike<number>, ys: ArrayLike<number>, x: number): number {
  const i = firstNotBelow(xs, x);
  if (i === 0 || i === xs.length) return ys[Math.max(0, i - 1)]!;
  return ys[i - 1]! + ((x - xs[i - 1]!) / (xs[i]! - xs[i - 1]!)) * (ys[i]! - ys[i - 1]!);
}

/** Use of a day, the first being 0: after the last one stated it goes on. */
const useOf = (day: number, dailyVolumes: readonly number[]): number => dailyVolumes[Math.min(day, dailyVolumes.length - 1)]!;

/** Volume used since the first midnight, m3. */
export function usedUntil(time: number, dailyVolumes: readonly number[], { times, shares }: DayPattern): number {
  const day = Math.floor(time / daySeconds);
  const stated = Math.min(day, dailyVolumes.length);
  const whole = dailyVolumes.slice(0, stated).reduce((sum, use) => sum + use, 0) + (day - stated) * dailyVolumes.at(-1)!;
  return whole + useOf(day, dailyVolumes) * between(times, shares, time - day * daySeconds);
}

/** The first moment at which so much (above 0) has been used since the first midnight, s; infinite where it never is. */
export function timeOfUse(volume: number, dailyVolumes: readonly number[], { times, shares }: DayPattern): number {
  let [left, day] = [volume, 0];
  const within = (use: number): number => day * daySeconds + between(shares, times, Math.min(1, left / use));
  for (const use of dailyVolumes.slice(0, -1)) {
    if (wholeUpward(left / use) <= 1) return within(use);
    left -= use;
    day++;
  }
  const use = dailyVolumes.at(-1)!;
  if (use <= 0) return Infinity;
  const whole = wholeUpward(left / use) - 1;
  left -= whole * use;
  day += whole;
  return within(use);
}
