/** How a file is laid out, from its head: separator, lines before the header, header, row of units, where the data begin. */
import { isMissing } from './number.js';
import type { LoggerOptions } from './options.js';
import { refuse } from './refuse.js';
import { rowReader } from './rows.js';
import { dateParts, isTimeOfDay, spreadOut } from './stamp.js';
import { headerParts, unitCell } from './unit-text.js';

type Separator = NonNullable<LoggerOptions['separator']>;

export interface Line {
  readonly line: number;
  readonly text: string;
}

export interface Layout {
  readonly separator: Separator;
  readonly newline: '\n' | '\r';
  readonly decimal: '.' | ',';
  /** Cells of a row. */
  readonly width: number;
  /** Undefined for a file that begins with its data. */
  readonly header: readonly string[] | undefined;
  readonly headerLine: number | undefined;
  readonly units: readonly string[] | undefined;
  readonly firstDataLine: number;
  readonly preamble: readonly Line[];
  /** The first rows of data. */
  readonly sample: readonly (readonly string[])[];
}

interface HeadRow {
  readonly cells: readonly string[];
  readonly line: number;
}

const number = /^\s*[-+−]?(\d+[.,]?\d*|[.,]\d+)(e[-+]?\d+)?\s*$/i;
const isData = (cell: string): boolean => number.test(cell) || isTimeOfDay(cell) || dateParts(spreadOut(cell)) !== undefined;

/** Whether a row has nothing in it. */
export const isBlank = (cells: readonly string[]): boolean => cells.every((cell) => cell.trim() === '');
/** Whether a row is a remark. */
export const isComment = (cells: readonly string[]): boolean => cells[0]!.trimStart().startsWith('#');

const most = (numbers: readonly number[]): { readonly value: number; readonly times: number } => {
  const counts = new Map<number, number>();
  for (const one of numbers) counts.set(one, (counts.get(one) ?? 0) + 1);
  return [...counts].reduce((best, [value, times]) => (times >= best.times ? { value, times } : best), { value: 0, times: 0 });
};

function rowsOf(head: string, whole: boolean, separator: string, newline: '\n' | '\r'): HeadRow[] {
  const rows: HeadRow[] = [];
  rowReader(separator, newline, (cells, line) => rows.push({ cells, line }))(whole ? head : head.slice(0, head.lastIndexOf(newline) + 1), true);
  return rows.filter(({ cells }) => !isBlank(cells));
}

/**
 * @param head the first characters of a file
 * @param whole whether they are all of it
 * @throws InputError for a text without rows of data
 */
export function findLayout(head: string, whole: boolean, { separator: given, decimal, headerLine }: LoggerOptions<unknown>, names: readonly string[]): Layout {
  const newline = head.includes('\r') && !head.includes('\n') ? '\r' : '\n';
  const tries = (given === undefined ? (['\t', ';', ','] as const) : [given]).map((separator) => {
    const rows = rowsOf(head, whole, separator, newline);
    const table = rows.filter(({ cells }) => !isComment(cells));
    const { value, times } = most(table.map(({ cells }) => cells.length).filter((length) => length > 1));
    return { separator, rows, table, width: Math.max(1, value), times };
  });
  // A comma may be a decimal mark: it is the separator only where it makes more rows of a kind than another.
  const { separator, rows, table, width } = tries.reduce((best, one) => (one.times > best.times ? one : best));

  const filled = table.filter(({ cells }) => cells.length === width && cells.some(isData));
  const dataColumns = Array.from({ length: width }, (_, i) => i).filter((i) => filled.length > 0 && 2 * filled.filter(({ cells }) => isData(cells[i]!)).length >= filled.length);
  const isDataRow = ({ cells }: HeadRow): boolean =>
    cells.length === width && dataColumns.some((i) => isData(cells[i]!)) && dataColumns.every((i) => isData(cells[i]!) || isMissing(cells[i]!));
  const isUnits = ({ cells }: HeadRow): boolean => cells.some((cell) => unitCell(cell) !== undefined) && cells.every((cell, i) => i === 0 || cell.trim() === '' || unitCell(cell) !== undefined || isMissing(cell));

  const first = dataColumns.length === 0 ? undefined : table.find((row) => row.line > (headerLine ?? 0) && isDataRow(row));
  if (!first) return refuse(['source'], 'a header and rows of numbers', rows.length === 0 ? 'no rows' : JSON.stringify(rows.map(({ cells }) => cells.join(separator))[0]!.slice(0, 60)), given !== undefined || headerLine !== undefined ? 'are separator and headerLine right?' : undefined);

  const above = table.filter(({ line }) => line < first.line);
  const header = headerLine === undefined ? headerOf(above) : above.find(({ line }) => line === headerLine);
  if (headerLine !== undefined && !header) refuse(['headerLine'], 'the line of the header, above the data', String(headerLine));
  const next = header && table[table.indexOf(header) + 1];
  const units = next && next.line < first.line && isUnits(next) ? next : undefined;
  const begin = (units ?? header)?.line ?? first.line - 1;
  const data = table.filter(({ line }) => line > begin);
  const firstDataLine = data[0]!.line;

  /** The row that has the columns asked for; else, of the rows of texts above the data, that with most units beside its names, the last of several. */
  function headerOf(above: readonly HeadRow[]): HeadRow | undefined {
    const texts = above.filter(({ cells }) => !cells.some(isData));
    const named = texts.find(({ cells }) => cells.some((cell) => names.includes(cell.trim())));
    const usual = most(texts.map(({ cells }) => cells.length)).value;
    const full = texts.filter(({ cells }) => cells.length >= Math.min(width, usual));
    const withNames = full.filter((row) => !isUnits(row));
    const unitsIn = ({ cells }: HeadRow): number => cells.filter((cell) => headerParts(cell).unit !== undefined).length;
    return named ?? (withNames.length > 0 ? withNames : full).reduce<HeadRow | undefined>((best, row) => (best && unitsIn(best) > unitsIn(row) ? best : row), undefined);
  }

  return {
    separator,
    newline,
    decimal: decimal ?? decimalOf(data.flatMap(({ cells }) => cells), separator),
    width,
    header: header?.cells.map((cell) => cell.trim()),
    headerLine: header?.line,
    units: units?.cells,
    firstDataLine,
    preamble: rows.filter((row) => row.line < firstDataLine && row !== header && row !== units).map(({ cells, line }) => ({ line, text: cells.join(separator).trim() })),
    sample: data.map(({ cells }) => cells),
  };
}

/** The decimal mark of the first numbers. Beside a separating comma, `1,234` is no sign of one: it may be a thousand. */
function decimalOf(cells: readonly string[], separator: Separator): '.' | ',' {
  const comma = separator === ',' ? /^\s*[-+]?\d*,(\d{1,2}|\d{4,})\s*$/ : /^\s*[-+]?\d*,\d+\s*$/;
  const count = (form: RegExp): number => cells.filter((cell) => form.test(cell)).length;
  return count(comma) > count(/^\s*[-+]?\d*\.\d+\s*$/) ? ',' : '.';
}
