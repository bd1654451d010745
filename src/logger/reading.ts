/** The one reader behind every way of reading a logger's file: text goes in piece by piece, blocks of numbers come out. */
import { fileClock } from './clock.js';
import { askedColumns, describeColumns, guessedColumns, type LeftColumn, type ValueColumn } from './columns.js';
import { findLayout, isBlank, isComment, type Layout, type Line } from './layout.js';
import type { ColumnRequests, LoggerOptions } from './options.js';
import { count, mostProblems, problemList, type LoggerProblem } from './problems.js';
import { refuse } from './refuse.js';
import type { LoggerReport } from './report.js';
import { longestRow, rowReader } from './rows.js';
import { timeColumn, type TimeColumn } from './time-column.js';
import { timeKind } from './time-format.js';
import { timeReader } from './time-reader.js';
import { columnReader, type ColumnReader } from './values.js';

/** Rows of a block. */
const blockRows = 65_536;

/** Characters that are read at a time, and from which the layout of a file is found. */
const pieceSize = longestRow;

/** Numbers of a stretch of rows: one array for each column, that of time last. */
export interface RawBlock {
  readonly rows: number;
  readonly values: readonly Float64Array[];
}

/** What the columns of the file are. Known once its head has been read. */
interface Table {
  readonly layout: Layout;
  readonly headers: readonly string[];
  readonly columns: readonly ValueColumn[];
  readonly left: readonly LeftColumn[];
  readonly time: TimeColumn | undefined;
}

export interface Reading {
  /** Takes text in, and gives the blocks that are full. */
  push(text: string): Iterable<RawBlock>;
  /** Gives the last block. @throws InputError for a text that is no table */
  end(): Iterable<RawBlock>;
  table(): Table;
  report(encoding?: string): LoggerReport;
}

const texts = (cells: readonly string[]): string => cells.map((cell) => JSON.stringify(cell)).join(', ');

function findTable(head: string, whole: boolean, options: LoggerOptions): Table {
  const requests: ColumnRequests = options.columns ?? {};
  const names = Object.values(requests).flatMap((one) => (typeof one === 'object' && one !== null ? one.column : one)).filter((one) => typeof one === 'string');
  const layout = findLayout(head, whole, options, names);
  const described = describeColumns(layout);
  const asked = options.columns && askedColumns(requests, described);
  const time = timeColumn(requests.readingTime, described, layout);
  const { taken: columns, left } = asked ? { taken: asked, left: [] } : guessedColumns(described, time?.indices ?? []);
  const headers = described.map(({ header }) => header);
  if (columns.length === 0 && requests.readingTime === undefined) {
    const found = layout.header ? `headers ${texts(headers)}` : `no header; the first row is ${texts(layout.sample[0]!)}`;
    refuse(['columns'], `columns of the file by ${layout.header ? 'name' : 'index'}`, asked ? 'none' : found, "as { airTemperature: { column: 1, unit: '°C' } }, counted from 0");
  }
  return { layout, headers, columns, left, time };
}

export function reading(options: LoggerOptions): Reading {
  const problems = problemList();
  const remarks: Line[] = [];
  let pending = '';
  let rows = 0;
  let opened: (ReturnType<typeof open> & Table) | undefined;

  function open(table: Table) {
    const { layout, columns, time } = table;
    const { width, header, separator, firstDataLine } = layout;
    const mark = layout.decimal.charCodeAt(0);
    const kind = time && timeKind(time.format);
    if (options.timeZone !== undefined && kind?.kind === 'elapsed') refuse(['timeZone'], 'none with an elapsed time', JSON.stringify(options.timeZone));
    const clock = fileClock(options.timeZone, kind?.kind === 'elapsed' && time?.start === undefined, problems);
    const timeOf = time && kind && timeReader(kind, time.indices, mark, time.start, clock, problems);
    const readers: readonly ColumnReader[] = columns.map((column) => columnReader(column, mark, problems));
    const indices = columns.map(({ index }) => index);
    const full: RawBlock[] = [];
    const fresh = () => Array.from({ length: columns.length + (time ? 1 : 0) }, () => new Float64Array(blockRows));
    let values: Float64Array[] = [];
    let filled = 0;
    remarks.push(...layout.preamble.slice(0, mostProblems));

    /** Whether the cells of a row are those of the columns. */
    function fits(cells: readonly string[], line: number, quotesOff: boolean): boolean {
      const bad = (kind: LoggerProblem['kind'], expected: string, found: string): false => {
        problems.add({ kind, line, expected, found });
        return false;
      };
      if (quotesOff) return bad('quotes', 'quotation marks in pairs', JSON.stringify(cells.join(separator).slice(0, 60)));
      if (cells.length < width) return bad('too-few-cells', `${width} cells`, `${cells.length}`);
      return isBlank(cells.slice(width)) || bad('too-many-cells', `${width} cells`, `${cells.length}`);
    }

    function take(cells: readonly string[], line: number, quotesOff: boolean): void {
      if (line < firstDataLine) return;
      const first = cells[0]!;
      if (!(first.charCodeAt(0) > 35)) {
        if (isBlank(cells)) return;
        if (isComment(cells)) {
          if (remarks.length < mostProblems) remarks.push({ line, text: cells.join(separator).trim() });
          return;
        }
      }
      if (header && first === header[0] && header.every((text, i) => text === cells[i]?.trim())) {
        problems.add({ kind: 'repeated-header', line, expected: 'a row of data', found: 'the header again', hint: 'two logs in one file? the line is left out' });
        return;
      }
      if (filled === 0) values = fresh();
      const good = (cells.length === width && !quotesOff) || fits(cells, line, quotesOff);
      if (timeOf) values[indices.length]![filled] = quotesOff ? NaN : timeOf(cells, line, good);
      for (let i = 0; i < indices.length; i++) values[i]![filled] = good ? readers[i]!.read(cells[indices[i]!] ?? '', line) : NaN;
      rows++;
      if (++filled === blockRows) flush();
    }

    function flush(): void {
      if (filled === 0) return;
      const block = values.map((column) => (filled === blockRows ? column : column.slice(0, filled)));
      readers.forEach((reader, i) => reader.keep(block[i]!));
      full.push({ rows: filled, values: block });
      filled = 0;
    }

    return { read: rowReader(separator, layout.newline, take), full, flush, clock, readers };
  }

  /** The file's head is known: finds its layout. */
  function begin(whole: boolean): NonNullable<typeof opened> {
    pending = pending.replace(/^\uFEFF/, '');
    const table = findTable(pending.slice(0, pieceSize), whole, options);
    return (opened = { ...open(table), ...table });
  }

  const table = (): NonNullable<typeof opened> => opened ?? refuse(['source'], 'a header and rows of numbers', 'nothing yet');

  return {
    *push(text) {
      pending += text;
      // One character more, for the mark at the beginning that is taken off.
      while (pending.length > pieceSize + 1) {
        const { read, full } = opened ?? begin(false);
        read(pending.slice(0, pieceSize), false);
        pending = pending.slice(pieceSize);
        yield* full.splice(0);
      }
    },
    *end() {
      const { read, flush, full } = opened ?? begin(true);
      read(pending, true);
      pending = '';
      flush();
      yield* full.splice(0);
    },
    table,
    report(encoding) {
      const { layout, headers, columns, left, time, readers, clock } = table();
      const whole: LoggerProblem[] = readers.flatMap((reader) => reader.judge() ?? []);
      if (clock.stepsBack() * 2 > rows) {
        whole.push({ kind: 'newest-first', column: 'readingTime', expected: 'the oldest row first', found: 'the newest', hint: 'turn the rows round' });
      }
      const problemCounts = { ...problems.counts };
      for (const problem of whole) count(problemCounts, problem);
      return {
        rows,
        firstDay: clock.firstDay(),
        time: time && { columns: time.indices, headers: time.indices.map((i) => headers[i]!), format: time.format, guessed: time.guessed, clock: clock.name() },
        taken: columns.map(({ name, index, definition, unit, unitFrom, guessed }, i) => ({
          name, column: index, header: headers[index]!, dimension: definition.name as LoggerReport['taken'][number]['dimension'], unit: unit.symbol, unitFrom, guessed, missing: readers[i]!.missing(),
        })),
        left,
        separator: layout.separator,
        decimal: layout.decimal,
        encoding,
        headerLine: layout.headerLine,
        remarks,
        problems: [...problems.first, ...whole],
        problemCounts,
      };
    },
  };
}
