/** How a column of time is written. */
import { refuse } from './refuse.js';
import { dateParts, spreadOut, type DateOrder } from './stamp.js';

const stampOrders = { 'YYYY-MM-DD': 'YMD', 'DD.MM.YYYY': 'DMY', 'DD/MM/YYYY': 'DMY', 'MM/DD/YYYY': 'MDY' } as const satisfies Readonly<Record<string, DateOrder>>;

/** Seconds that one of a number of time stands for. */
const elapsedUnits = { 'elapsed s': 1, 'elapsed min': 60, 'elapsed h': 3600, 'elapsed d': 86_400 } as const;
const instantUnits = { 'Unix s': 1, 'Unix ms': 0.001 } as const;
const spreadsheetDay = 'spreadsheet day';

/**
 * Dates (a time of day, AM or PM and an offset from UTC may follow each of them), a time since the start, seconds or milliseconds since
 * 1970-01-01 UTC, or days of a spreadsheet (since 1899-12-30, by the clock on the wall).
 */
export type TimeFormat = keyof typeof stampOrders | keyof typeof elapsedUnits | keyof typeof instantUnits | typeof spreadsheetDay;

export const timeFormats = (): readonly TimeFormat[] => Object.keys({ ...stampOrders, ...elapsedUnits, ...instantUnits, [spreadsheetDay]: 0 }) as TimeFormat[];

/** What is done with a cell of time. */
export type TimeKind =
  | { readonly kind: 'stamp'; readonly order: DateOrder }
  /** A number: seconds for one of it, and the seconds from 1970-01-01 to its zero. */
  | { readonly kind: 'elapsed' | 'instant' | 'wall'; readonly scale: number; readonly zero: number };

const has = <Table extends object>(table: Table, key: string): key is Extract<keyof Table, string> => Object.hasOwn(table, key);

/** The kind that a format names. */
export function timeKind(format: TimeFormat): TimeKind {
  if (has(stampOrders, format)) return { kind: 'stamp', order: stampOrders[format] };
  if (has(elapsedUnits, format)) return { kind: 'elapsed', scale: elapsedUnits[format], zero: 0 };
  if (has(instantUnits, format)) return { kind: 'instant', scale: instantUnits[format], zero: 0 };
  return { kind: 'wall', scale: 86_400, zero: -25_569 * 86_400 };
}

const keys = ['columns', 'readingTime', 'format'];

/**
 * The format of the first cells of a column of time.
 * @throws InputError where they leave it open.
 */
export function formatOf(cells: readonly string[], unit: string | undefined): TimeFormat {
  const dates = cells.map((cell) => dateParts(spreadOut(cell))).filter((date) => date !== undefined);
  if (dates.length > 0) return dateFormat(dates, cells[0]!);
  const numbers = cells.map((cell) => Number(cell.trim().replace(',', '.'))).filter((number) => Number.isFinite(number));
  if (numbers.length > 0) return numberFormat(numbers, unit);
  return refuse(keys, 'dates or numbers', JSON.stringify(cells[0] ?? ''), `name the column of time, or its format: ${timeFormats().join(', ')}`);
}

function dateFormat(dates: readonly NonNullable<ReturnType<typeof dateParts>>[], example: string): TimeFormat {
  if (dates[0]!.yearFirst) return 'YYYY-MM-DD';
  if (dates[0]!.dotted) return 'DD.MM.YYYY';
  const later = dates.filter((date) => !date.yearFirst);
  const dayFirst = later.some(({ parts }) => parts[0] > 12);
  const monthFirst = later.some(({ parts }) => parts[1] > 12);
  if (dayFirst !== monthFirst) return dayFirst ? 'DD/MM/YYYY' : 'MM/DD/YYYY';
  return refuse(keys, "'DD/MM/YYYY' or 'MM/DD/YYYY'", 'nothing', dayFirst ? 'the dates of the file go by both' : `${JSON.stringify(example.trim())} may be either day or month first: say which`);
}

function numberFormat(numbers: readonly number[], unit: string | undefined): TimeFormat {
  const within = (low: number, high: number): boolean => numbers.every((number) => number >= low && number <= high);
  if (within(1e9, 4.2e9)) return 'Unix s';
  if (within(1e12, 4.2e12)) return 'Unix ms';
  const elapsed = `elapsed ${unit}`;
  if (has(elapsedUnits, elapsed)) return elapsed;
  if (within(29_221, 73_050) && numbers.some((number) => !Number.isInteger(number))) return spreadsheetDay;
  return refuse(keys, 'what the numbers count', String(numbers[0]), "as 'elapsed s', 'elapsed min', 'elapsed h', 'spreadsheet day', 'Unix s'");
}
