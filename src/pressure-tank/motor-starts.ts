import type { SourceKey } from '../sources.js';

/** How often a pump motor may start, by its rated power. */
export interface MotorStartLimit {
  /** Rated power above this, W. */
  readonly above: number;
  /** Rated power up to this, W. */
  readonly upTo: number;
  readonly startsPerHour?: number;
  readonly startsPerDay?: number;
  readonly source: SourceKey;
}

/** Published limits; 1 hp is 745.7 W. A motor's own data sheet goes before any of them. */
export const motorStartLimits: readonly MotorStartLimit[] = [
  { above: 0, upTo: 559.3, startsPerHour: 15, startsPerDay: 300, source: 'wsc-tank-standard' },
  { above: 559.3, upTo: Infinity, startsPerHour: 7.5, startsPerDay: 300, source: 'wsc-tank-standard' },
  { above: 0, upTo: 745.7, startsPerDay: 300, source: 'kill-tank-selection' },
  { above: 3728.5, upTo: Infinity, startsPerDay: 50, source: 'kill-tank-selection' },
];
