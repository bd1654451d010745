import type { SourceKey } from '../sources.js';

/** Least time from one start of a pump motor to the next, by its rated power. */
export interface MinimumCycleTime {
  /** Rated power above this, W. */
  readonly above: number;
  /** Rated power up to this, W. */
  readonly upTo: number;
  /** Range of the least time, s. */
  readonly least: readonly [low: number, high: number];
  readonly source: SourceKey;
}

/** Published for pumping stations; a motor's own data sheet goes before them. */
export const minimumCycleTimes: readonly MinimumCycleTime[] = [
  { above: 0, upTo: 15e3, least: [600, 900], source: 'usace-ei-11c201' },
  { above: 15e3, upTo: 75e3, least: [900, 1200], source: 'usace-ei-11c201' },
  { above: 75e3, upTo: 185e3, least: [1200, 1800], source: 'usace-ei-11c201' },
];
