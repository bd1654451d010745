import { sumUntil, timeOfSum, type RunningSum } from './running-sum.js';

/** When a shot may start, and how far starts lie apart, s. */
export interface ShotLimits {
  readonly earliest: number;
  readonly latest: number;
  readonly shortestPause: number;
  /** From start to start; a shot comes then whatever the sum. Counts from the earliest start on. */
  readonly longestPause: number;
}

/**
 * When shots start that each follow a sum: of light, of water taken up.
 *
 * A shot comes as soon as the sum since the last start, at first since the first reading, has come to the step, but within the limits; what is
 * above the step where a shot had to wait is not carried on.
 * @param most shots; one more ends the list
 */
export function shotStartsBySum(signal: RunningSum, step: number, { earliest, latest, shortestPause, longestPause }: ShotLimits, most: number): readonly number[] {
  const starts: number[] = [];
  let [last, counted] = [-Infinity, 0];
  for (;;) {
    const bySum = timeOfSum(signal, counted + step);
    const byPause = Math.max(last, earliest) + longestPause;
    const next = Math.max(Math.min(bySum, byPause), earliest, last + shortestPause);
    if (!(next <= latest) || starts.length > most) return starts;
    starts.push(next);
    counted = next === bySum ? counted + step : sumUntil(signal, next);
    last = next;
  }
}

/** When shots start that are set to fixed times (rising): at their times, or as soon after as the pause since the one before is over. */
export function shotStartsAt(times: Float64Array, shortestPause: number): readonly number[] {
  const starts: number[] = [];
  for (const time of times) starts.push(Math.max(time, (starts.at(-1) ?? -Infinity) + shortestPause));
  return starts;
}
