import type { AddProblem } from '../calculation/problem.js';
/** Problems with the times of readings: not as many as the readings of a column, one missing, or not rising. Rows count from 1. */
export function refuseBadTimes(
  times: Float64Array, column: string, readings: number, problem: AddProblem,
): void {
  if (times.length !== readings) problem([column], `${times.length} values, as many as in readingTime`, `${readings}`);
  const missing = times.findIndex((t) => Number.isNaN(t));
  if (missing >= 0) problem(['readingTime'], 'a time for every row', `none in row ${missing + 1}`);
  const back = times.findIndex((t, i) => i > 0 && t <= times[i - 1]!);
  if (back > 0) problem(['readingTime'], 'times that rise', `row ${back + 1} is not after the one before it`, 'sort the rows, drop doubles, and keep the clock off daylight-saving time');
}
