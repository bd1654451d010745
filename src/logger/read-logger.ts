import { columnIn, type Column } from '../units/column.js';
import { dimensionNamed } from '../units/by-name.js';
import type { Dimension } from '../units/quantity.js';
import { quoted } from '../units/quoted.js';
import { unitOf } from '../units/quantity.js';
import { checkOptions } from './check-options.js';
import type { knownColumns, KnownColumn } from './known-columns.js';
import type { ColumnRequests, LoggerOptions } from './options.js';
import { problemsError } from './problems.js';
import { reading, type RawBlock, type Reading } from './reading.js';
import { refuse } from './refuse.js';
import type { LoggerReport } from './report.js';
import { textOf, type LoggerSource } from './source.js';

type DimensionRead<Name, Request> = Name extends 'readingTime' ? 'time'
  : Request extends { readonly dimension: infer D extends Dimension } ? D
    : Name extends KnownColumn ? (typeof knownColumns)[Name]['dimension']
      : Dimension;

/** Columns by the names that they were asked by; without any, what was found in the file. */
export type ColumnsRead<Requests> = [keyof Requests] extends [never]
  ? { readonly [Name in KnownColumn | 'readingTime']?: Column<DimensionRead<Name, unknown>> }
  : { readonly [Name in keyof Requests]: Column<DimensionRead<Name, Requests[Name]>> } & { readonly readingTime?: Column<'time'> };

/** No column is asked for by name. */
type Nothing = Readonly<Record<never, never>>;

/** A whole file: its columns, as long as it has rows, and the report. */
export interface LoggerReading<Requests = Nothing> extends LoggerReport {
  readonly columns: ColumnsRead<Requests>;
}

/** Some rows of a file. */
export interface LoggerBlock<Requests = Nothing> {
  readonly rows: number;
  readonly columns: ColumnsRead<Requests>;
}

/** The blocks of a file, once, in its order. */
export interface LoggerBlocks<Requests = Nothing> extends AsyncIterable<LoggerBlock<Requests>> {
  /** What has been found so far: after the last block, in the whole file. */
  report(): LoggerReport;
}

function columnsFrom<Requests>(report: LoggerReport, values: readonly Float64Array[]): ColumnsRead<Requests> {
  const named = report.taken.map(({ name, dimension, unit }, i) => {
    const definition = dimensionNamed(dimension);
    return [name, columnIn(definition, values[i]!, unitOf(definition, unit))] as const;
  });
  const time = dimensionNamed('time');
  const ofTime = report.time ? [['readingTime', columnIn(time, values.at(-1)!, unitOf(time, 's'))] as const] : [];
  return Object.fromEntries<unknown>([...ofTime, ...named]) as ColumnsRead<Requests>;
}

function joined(blocks: readonly RawBlock[], rows: number): Float64Array[] {
  const columns = (blocks[0]?.values ?? []).map(() => new Float64Array(rows));
  let from = 0;
  for (const block of blocks) {
    block.values.forEach((values, i) => columns[i]!.set(values, from));
    from += block.rows;
  }
  return columns;
}

function whole<Requests>(blocks: readonly RawBlock[], made: Reading, strict: boolean | undefined, encoding?: string): LoggerReading<Requests> {
  const report = made.report(encoding);
  if (strict && report.problems.length > 0) throw problemsError(report.problems);
  return { ...report, columns: columnsFrom(report, joined(blocks, report.rows)) };
}

/**
 * The columns of a logger's file that is at hand as one text.
 *
 * Takes a text of rows and columns (CSV) with comma, semicolon or tab between the cells, point or comma in the numbers, any lines before the header, units
 * in the header or in a row of their own. Times are ISO 8601 and other dates, with or without an offset from UTC, in one column or two, AM and PM, a time since the
 * start, spreadsheet days or Unix time. Gives the columns, ready for the calculations of guttation/vapour; readingTime in seconds since the
 * midnight that begins the first day, in standard time where the stamps or `timeZone` allow it. What was taken for what, what was left and what was wrong
 * stands in the result by line: empty cells, bad rows and placeholders are missing readings (NaN), never left out.
 * @throws InputError for a text that is no table, columns that are not there, units or formats that the file leaves open; with `strict` for anything wrong in a row.
 * @example
 * const log = readLoggerText('time;Temp (°C);RH [%]\n12.04.2026 08:00;18,5;82\n12.04.2026 08:10;19,0;\n');
 * log.firstDay // => '2026-04-12'
 * log.columns.readingTime!.in('h')[0] // => 8
 * log.columns.airTemperature!.in('°C')[1] // => 19
 * log.taken[1]!.missing // => 1
 */
export function readLoggerText<const Requests extends ColumnRequests = Nothing>(text: string, options: LoggerOptions<Requests> = {}): LoggerReading<Requests> {
  checkOptions(options);
  if (typeof text !== 'string') refuse(['source'], 'a text', quoted(text), 'readLogger takes bytes and streams');
  const made = reading(options);
  const blocks = [...made.push(text), ...made.end()];
  return whole(blocks, made, options.strict);
}

/**
 * The columns of a logger's file from a text, bytes, a stream or chunks. As readLoggerText, which says what is understood; bytes are UTF-8, UTF-16 with its mark, or
 * else Windows-1252, unless `encoding` says otherwise.
 * @throws InputError as readLoggerText does.
 * @example
 * const { columns, problems } = await readLogger(['time,°F\n2026-04-12 08:0', '0,68\n2026-04-12 08:10,x\n'], {
 *   columns: { airTemperature: { column: 1 } },
 * });
 * columns.airTemperature.in('°C')[0] // => 20
 * problems[0]!.line // => 3
 */
export async function readLogger<const Requests extends ColumnRequests = Nothing>(source: LoggerSource, options: LoggerOptions<Requests> = {}): Promise<LoggerReading<Requests>> {
  checkOptions(options);
  const made = reading(options);
  const { text, encoding } = textOf(source, options.encoding);
  const blocks: RawBlock[] = [];
  for await (const piece of text) blocks.push(...made.push(piece));
  blocks.push(...made.end());
  return whole(blocks, made, options.strict, encoding());
}

/**
 * A logger's file of any length in blocks of 65,536 rows, of which one is in memory at a time. As readLogger otherwise; `strict` throws at the
 * first block with something wrong in it.
 * @throws InputError as readLoggerText does, while it is read.
 * @example
 * const blocks = loggerBlocks(['time,RH (%)\n2026-04-12 08:00,71\n', '2026-04-12 08:10,69\n']);
 * let rows = 0;
 * for await (const block of blocks) rows += block.columns.relativeHumidity!.length;
 * rows // => 2
 * blocks.report().firstDay // => '2026-04-12'
 */
export function loggerBlocks<const Requests extends ColumnRequests = Nothing>(source: LoggerSource, options: LoggerOptions<Requests> = {}): LoggerBlocks<Requests> {
  checkOptions(options);
  const made = reading(options);
  const { text, encoding } = textOf(source, options.encoding);

  function give({ rows, values }: RawBlock): LoggerBlock<Requests> {
    const report = made.report();
    if (options.strict && report.problems.length > 0) throw problemsError(report.problems);
    return { rows, columns: columnsFrom(report, values) };
  }
  async function* blocks(): AsyncGenerator<LoggerBlock<Requests>> {
    for await (const piece of text) for (const block of made.push(piece)) yield give(block);
    for (const block of made.end()) yield give(block);
  }
  const once = blocks();
  return { [Symbol.asyncIterator]: () => once, report: () => made.report(encoding()) };
}
