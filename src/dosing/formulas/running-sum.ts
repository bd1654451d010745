import { firstNotBelow } from './first-not-below.js';

/** A rate that goes straight from reading to reading, with its sum since the first: radiation and its daily sum, uptake and its volume. */
export interface RunningSum {
  /** Moments of the readings, rising, s. */
  readonly times: Float64Array;
  /** What comes in a second at each of them, not below zero. */
  readonly rates: Float64Array;
  /** What has come since the first of them. */
  readonly sums: Float64Array;
}

/** The running sum of a rate by its readings: the trapezoid between each two, which is exact for straight lines. */
export function runningSum(times: Float64Array, rates: Float64Array): RunningSum {
  const sums = new Float64Array(times.length);
  for (let i = 1; i < sums.length; i++) sums[i] = sums[i - 1]! + ((rates[i - 1]! + rates[i]!) / 2) * (times[i]! - times[i - 1]!);
  return { times, rates, sums };
}

/** The sum at a moment. Before the first reading it is 0, after the last it stays as it is. */
export function sumUntil({ times, rates, sums }: RunningSum, time: number): number {
  const next = firstNotBelow(times, time);
  if (next === 0) return 0;
  if (next === times.length || times[next] === time) return sums[Math.min(next, times.length - 1)]!;
  const i = next - 1;
  const passed = time - times[i]!;
  const slope = (rates[next]! - rates[i]!) / (times[next]! - times[i]!);
  return Math.min(sums[next]!, Math.max(sums[i]!, sums[i]! + passed * (rates[i]! + (slope * passed) / 2)));
}

/** A sum that at last falls short by no more than this share of itself, its rounding, is reached. */
const rounding = 1e-12;

/** The first moment at which the sum has reached a value, between readings too; infinite where it never does. */
export function timeOfSum({ times, rates, sums }: RunningSum, sum: number): number {
  const wanted = Math.min(sum, sums.at(-1)!);
  if (!(wanted >= sum * (1 - rounding))) return Infinity;
  // The first reading that has it: the stretch before is the one in which it is reached.
  const high = firstNotBelow(sums, wanted);
  if (high === 0) return times[0]!;
  const low = high - 1;
  const length = times[high]! - times[low]!;
  const rate = rates[low]!;
  const slope = (rates[high]! - rate) / length;
  const lacking = wanted - sums[low]!;
  // rate x + slope x²/2 = lacking, in the form that does not cancel.
  const x = (2 * lacking) / (rate + Math.sqrt(Math.max(0, rate * rate + 2 * slope * lacking)));
  return times[low]! + Math.min(length, x);
}
