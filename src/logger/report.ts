/** What has been read, what was taken for what, and what was wrong. */
import type { Dimension } from '../units/quantity.js';
import type { LeftColumn, ValueColumn } from './columns.js';
import type { Line } from './layout.js';
import type { LoggerProblem, ProblemKind } from './problems.js';
import type { TimeFormat } from './time-format.js';

export interface TakenColumn {
  readonly name: string;
  /** Index in the file, counted from 0. */
  readonly column: number;
  readonly header: string;
  readonly dimension: Dimension;
  readonly unit: string;
  readonly unitFrom: ValueColumn['unitFrom'];
  /** Whether it was taken by its header and unit, not named by the caller. */
  readonly guessed: boolean;
  /** Rows without a reading in it: cells that are empty or say so. Bad ones are counted among the problems. */
  readonly missing: number;
}

export interface TakenTime {
  /** Indices of the column, or of date and time of day. */
  readonly columns: readonly number[];
  readonly headers: readonly string[];
  readonly format: TimeFormat;
  readonly guessed: boolean;
  /** What the times are counted by: the clock of the logger, an offset from UTC, or the standard time of a zone. */
  readonly clock: string;
}

export interface LoggerReport {
  /** Rows of data, bad ones included: these are kept, with missing readings. */
  readonly rows: number;
  /** The day whose beginning is 0 s of reading time, as `2026-04-12`; undefined without dates. */
  readonly firstDay: string | undefined;
  readonly time: TakenTime | undefined;
  readonly taken: readonly TakenColumn[];
  /** Columns that are not read, and why. */
  readonly left: readonly LeftColumn[];
  readonly separator: ',' | ';' | '\t';
  readonly decimal: '.' | ',';
  /** Of bytes; undefined for text. */
  readonly encoding: string | undefined;
  readonly headerLine: number | undefined;
  /** Lines before the header, and remarks (lines that begin with #): the first hundred. */
  readonly remarks: readonly Line[];
  /** The first hundred problems, in the order of the file; those of a whole column come last, and always. */
  readonly problems: readonly LoggerProblem[];
  readonly problemCounts: Readonly<Partial<Record<ProblemKind, number>>>;
}
