import { timeOfUse, usedUntil, type DayPattern } from './barrel-use.js';

/** How barrels take turns. Times in s since the first midnight, volumes in m3. */
export interface BarrelTurns {
  /** From when the first barrel is used. */
  readonly start: number;
  /** What can be used of it, and of each full one after it. */
  readonly first: number;
  readonly full: number;
  /** From mixing until the feed may be used. */
  readonly preparation: number;
  /** Two barrels take turns, one is mixed anew when it is empty. */
  readonly barrels: number;
  readonly dailyVolumes: readonly number[];
  readonly pattern: DayPattern;
}

/** A barrel that follows another one. */
export interface BarrelTurn {
  /** When the one before is used up. */
  readonly empty: number;
  /** From when its vessel is free. */
  readonly free: number;
  /** When this one would have to be mixed to be ready then. */
  readonly mixBy: number;
  /** When it can be used: later, where its vessel is free too late. */
  readonly ready: number;
}

/** The barrels that follow the first one, up to a moment; a barrel that is never used up ends the list. */
export function barrelTurns({ start, first, full, preparation, barrels, dailyVolumes, pattern }: BarrelTurns, end: number, most: number): readonly BarrelTurn[] {
  const turns: BarrelTurn[] = [];
  let [ready, usable, free] = [start, first, start];
  while (turns.length <= most) {
    const empty = Math.max(ready, timeOfUse(usedUntil(ready, dailyVolumes, pattern) + usable, dailyVolumes, pattern));
    if (!(empty <= end)) break;
    const mixBy = empty - preparation;
    if (barrels === 1) free = empty;
    ready = Math.max(empty, free + preparation);
    turns.push({ empty, free, mixBy, ready });
    [usable, free] = [full, empty];
  }
  return turns;
}
