import { sumUntil, type RunningSum } from './running-sum.js';

/** A shot on its way to a plant: when drippers begin and end to give, s. */
export interface Delivery {
  readonly from: number;
  readonly until: number;
}

/** What is above the capacity by no more than this share of it is the rounding of doubles, and no drain. */
const rounding = 1e-12;

/** The water of one plant moment by moment: sums since the first row, and what is in the substrate, m3. */
export interface WaterCourse {
  readonly times: Float64Array;
  readonly given: Float64Array;
  readonly taken: Float64Array;
  readonly drained: Float64Array;
  readonly held: Float64Array;
  /** What drained with each shot, m3. */
  readonly drains: readonly number[];
}

/**
 * The water of one plant through a day: given = taken up + drained + what the substrate has more than at first.
 *
 * A row for each reading and for each begin and end of a shot. What would bring the substrate above its container capacity drains at once; what
 * plants ask for beyond the water that is there they do not get. Exact wherever drippers give more than plants take up.
 *
 * @param asked what plants ask for, m3
 * @param deliveries in order, none before the one ahead of it has ended
 * @param shot volume of each, m3
 * @param capacity of the substrate, m3
 * @param first water in it at the first reading, up to the capacity, m3
 */
export function waterThroughDay(asked: RunningSum, deliveries: readonly Delivery[], shot: number, capacity: number, first: number): WaterCourse {
  const times = Float64Array.from(new Set([...asked.times, ...deliveries.flatMap(({ from, until }) => [from, until])])).sort();
  const [given, taken, drained, held] = [new Float64Array(times.length), new Float64Array(times.length), new Float64Array(times.length), new Float64Array(times.length)];
  const drains = deliveries.map(() => 0);
  held[0] = first;
  let done = 0;
  for (let i = 1; i < times.length; i++) {
    const now = times[i]!;
    const giving = done;
    while (done < deliveries.length && now >= deliveries[done]!.until) done++;
    const current = deliveries[done];
    given[i] = shot * (done + (current && now > current.from ? (now - current.from) / (current.until - current.from) : 0));
    const present = held[i - 1]! + given[i]! - given[i - 1]!;
    const uptake = Math.min(present, Math.max(0, sumUntil(asked, now) - sumUntil(asked, times[i - 1]!)));
    const above = present - uptake - capacity;
    const excess = above > rounding * capacity ? above : 0;
    taken[i] = taken[i - 1]! + uptake;
    drained[i] = drained[i - 1]! + excess;
    if (excess > 0) drains[giving]! += excess;
    held[i] = Math.min(capacity, present - uptake);
  }
  return { times, given, taken, drained, held, drains };
}
