/** Which column of a file is its time, and how it is written. */
import { quoted } from '../units/quoted.js';
import { indexOf, type Described } from './columns.js';
import type { Layout } from './layout.js';
import type { ColumnName, TimeRequest } from './options.js';
import { refuse } from './refuse.js';
import { dateParts, isTimeOfDay, spreadOut, stampReader } from './stamp.js';
import { formatOf, timeFormats, timeKind, type TimeFormat } from './time-format.js';
import { unitMeanings } from './unit-text.js';

export interface TimeColumn {
  /** Of the column, or of date and time of day. */
  readonly indices: readonly number[];
  readonly format: TimeFormat;
  readonly guessed: boolean;
  /** Of an elapsed time, seconds from 1970-01-01 by the wall. */
  readonly start: number | undefined;
}

const keys = ['columns', 'readingTime'];
const timeWords = /^(date|time|timestamp|elapsed|clock|unix|epoch|seconds?|minutes?|hours?)\b/i;

/**
 * @returns undefined for a file without a column of time
 * @throws InputError for a column that is not there and for a format that is left open
 */
export function timeColumn(request: TimeRequest | undefined, columns: readonly Described[], { sample }: Layout): TimeColumn | undefined {
  const asked = request === undefined || (typeof request === 'object' && request !== null) ? request : { column: request };
  const indices = asked === undefined ? guess(columns, sample) : [asked.column].flat().map((name) => find(name, columns));
  if (indices.length === 0) return undefined;
  if (indices.length > 2) refuse([...keys, 'column'], 'a column, or two: of the date and of the time of day', `${indices.length}`);
  if (asked?.format !== undefined && !timeFormats().includes(asked.format)) refuse([...keys, 'format'], `one of ${timeFormats().map((one) => `'${one}'`).join(', ')}`, quoted(asked.format));
  const cells = sample.map((row) => indices.map((i) => row[i] ?? '').join(' ')).filter((cell) => cell.trim() !== '');
  const unit = columns[indices[0]!]?.unit;
  const format = asked?.format ?? formatOf(cells, unit === undefined ? undefined : unitMeanings(unit).find(({ dimension }) => dimension === 'time')?.unit.symbol);
  return { indices, format, guessed: asked === undefined, start: startOf(asked?.start, format) };
}

function find(name: ColumnName, columns: readonly Described[]): number {
  if (typeof name !== 'string' && typeof name !== 'number') refuse(keys, 'a header, an index or { column, format }', quoted(name));
  const index = indexOf(name, columns);
  return typeof index === 'number' ? index : refuse(keys, index.expected, quoted(name), index.hint);
}

/** The first column of dates, with that of times of day where the dates stand alone; else a column of numbers that is named as one of time. */
function guess(columns: readonly Described[], sample: Layout['sample']): readonly number[] {
  const mostly = (index: number, is: (cell: string) => boolean): boolean => 2 * sample.filter((row) => is(row[index] ?? '')).length > sample.length;
  const indices = columns.map((_, i) => i);
  const date = indices.find((i) => mostly(i, (cell) => dateParts(spreadOut(cell)) !== undefined));
  if (date === undefined) return indices.filter((i) => timeWords.test(columns[i]!.header)).slice(0, 1);
  const alone = mostly(date, (cell) => dateParts(cell)?.length === cell.length);
  const ofDay = alone ? indices.find((i) => mostly(i, isTimeOfDay)) : undefined;
  return ofDay === undefined ? [date] : [date, ofDay];
}

function startOf(start: string | undefined, format: TimeFormat): number | undefined {
  if (start === undefined) return undefined;
  if (timeKind(format).kind !== 'elapsed') refuse([...keys, 'start'], 'none with stamps', quoted(start), 'it goes with an elapsed time only');
  const seconds = typeof start === 'string' ? stampReader('YMD').read(start) : NaN;
  return Number.isNaN(seconds) ? refuse([...keys, 'start'], "a date with a time of day, as '2026-04-12 08:00'", quoted(start)) : seconds;
}
