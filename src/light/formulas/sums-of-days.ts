const day = 86400;

/** What the readings of one day add up to. */
export interface SumOfDay {
  /** Day, counted from 0. */
  readonly day: number;
  /** Reading × s over the time covered. */
  readonly sum: number;
  /** Time of the day that readings cover, s. */
  readonly covered: number;
}

/**
 * Sums of a reading over time for each day, by trapezoids between readings at whatever times, with gaps left out.
 *
 * Between two readings further apart than the longest gap nothing is added, and the time does not count as covered. A reading of NaN is as if it
 * were not there. What spans midnight is shared out between the days. Days without any covered time are left out.
 *
 * @param times s since the midnight that begins day 0, rising
 * @param longestGap s
 * @example sumsOfDays([0, 3600, 7200], [1, 1, 1], 3600)[0].sum // => 7200
 */
export function sumsOfDays(times: ArrayLike<number>, readings: ArrayLike<number>, longestGap: number): readonly SumOfDay[] {
  const days: SumOfDay[] = [];
  let [number, sum, covered] = [-1, 0, 0];
  const close = (): void => {
    if (covered > 0) days.push({ day: number, sum, covered });
  };
  let [start, first] = [NaN, NaN];
  for (let i = 0; i < times.length; i++) {
    const last = readings[i]!;
    if (Number.isNaN(last)) continue;
    const end = times[i]!;
    const length = end - start;
    const slope = (last - first) / length;
    // No step where there is no reading before: a comparison with NaN is false.
    let from = length <= longestGap ? start : end;
    while (from < end) {
      if (from >= (number + 1) * day) {
        close();
        [number, sum, covered] = [Math.floor(from / day), 0, 0];
      }
      const to = Math.min(end, (number + 1) * day);
      sum += (first + slope * ((from + to) / 2 - start)) * (to - from);
      covered += to - from;
      from = to;
    }
    start = end;
    first = last;
  }
  close();
  return days;
}
