import type { AirBlock, AirRowOptions, AirRows } from './air-rows.js';
import type { ReadingCheck, ReadingCounts } from './reading-check.js';

/** How a record of the air is taken and summed, in SI units. */
export interface AirRecordOptions extends AirRowOptions {
  /** Longest time between two readings that the air is taken to go straight in between, in s (5400). */
  readonly longestGap?: number;
  /** When day and night begin, in s after midnight (21600 and 64800). */
  readonly dayBegins?: number;
  readonly nightBegins?: number;
  /** Light at the plants above which it is day, in mol/(m² s), instead of the two times. */
  readonly dayLight?: number | undefined;
  /** Deficits that cut the scale into bands, increasing, in Pa. */
  readonly deficitBands?: readonly number[];
  /** Base of degree-days in K; none without it. The upper limit; and whether every reading counts, or the highest and lowest of a day by a method. */
  readonly baseTemperature?: number | undefined;
  readonly upperTemperature?: number | undefined;
  readonly degreeDayMethod?: 'readings' | 'limited' | 'mean';
}

/** Time in s that readings cover, and means over it in Pa and K. */
export interface AirMeans {
  readonly coveredTime: number;
  readonly deficit: number;
  readonly temperature: number;
}

/** A calendar day of a record. Means of a part that no readings cover are undefined. */
export interface AirDay {
  /** The midnight that it begins at, in s. */
  readonly dayStart: number;
  readonly whole: AirMeans;
  readonly daytime: AirMeans | undefined;
  readonly night: AirMeans | undefined;
  readonly highest: number;
  readonly lowest: number;
  /** Time in s that leaf and cover are below the dew or frost point. */
  readonly leafWetTime: number;
  readonly coverWetTime: number;
  /** In K s. */
  readonly degreeDays: number;
  /** Time in s that readings of light cover, the photons in it in mol/m², and the global radiation in J/m². */
  readonly lightTime: number;
  readonly photons: number;
  readonly radiation: number;
}

/** All that a record says about the air. */
export interface AirTotals extends ReadingCounts {
  /** The days that readings cover at all. */
  readonly days: readonly AirDay[];
  readonly whole: AirMeans | undefined;
  readonly daytime: AirMeans | undefined;
  readonly night: AirMeans | undefined;
  /** Time in s in each band of deficit, from the driest air's lower edge on: one more than there are edges. */
  readonly bandTimes: readonly number[];
  /** Time in s between the first and the last reading that no readings cover, in how many pauses, and the longest of these. */
  readonly uncoveredTime: number;
  readonly pauses: number;
  readonly longestPause: number;
  /** Rows with a time that lack the temperature or humidity of the air. */
  readonly missing: number;
}

/** A record of the air that grows by blocks of readings. */
export interface AirRecord extends Pick<ReadingCheck, 'faults'> {
  /** Takes the next rows in; gives what follows from each. */
  add(block: AirBlock): AirRows;
  /** What the record says so far. @throws RangeError that lists what is wrong with the readings, if anything is. */
  result(): AirTotals;
}
