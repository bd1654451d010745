/** The column of time, row by row. */
import type { Clock } from './clock.js';
import { isMissing, readNumber } from './number.js';
import { shown, type Problems } from './problems.js';
import { stampReader } from './stamp.js';
import type { TimeKind } from './time-format.js';

/** Reads the time of a row: seconds, NaN where it has none, which is no news of a row that is known to be bad. */
export type TimeReader = (cells: readonly string[], line: number, good: boolean) => number;

/**
 * @param indices of the column, or of those of date and time of day
 * @param start of an elapsed time, seconds from 1970-01-01 by the wall
 */
export function timeReader(kind: TimeKind, indices: readonly number[], mark: number, start: number | undefined, clock: Clock, problems: Problems): TimeReader {
  const [first, second] = indices as readonly [number, number | undefined];
  const stamps = kind.kind === 'stamp' ? stampReader(kind.order) : undefined;

  function read(text: string, line: number): number {
    if (stamps) {
      const wall = stamps.read(text);
      return Number.isNaN(wall) ? NaN : clock.time(wall, stamps.offset(), text, line);
    }
    const { scale, zero, kind: counted } = kind as Exclude<TimeKind, { kind: 'stamp' }>;
    const number = readNumber(text, mark);
    // The digits of a spreadsheet's day are those of a double: thousandths of a second are meant.
    const seconds = (scale > 1000 ? Math.round(number * scale * 1000) / 1000 : number * scale) + zero + (start ?? 0);
    return Number.isNaN(seconds) ? NaN : clock.time(seconds, counted === 'instant' ? 0 : NaN, text, line);
  }

  return (cells, line, good) => {
    const text = second === undefined ? cells[first] : joined(cells[first], cells[second]);
    if (text === undefined) return NaN;
    const before = problems.counts['bad-time'];
    const time = read(text, line);
    if (good && Number.isNaN(time) && problems.counts['bad-time'] === before) {
      problems.add({ kind: 'bad-time', line, column: 'readingTime', expected: 'a time', found: isMissing(text) ? 'nothing' : shown(text) });
    }
    return time;
  };
}

const joined = (date: string | undefined, time: string | undefined): string | undefined => (date === undefined || time === undefined ? undefined : `${date.trim()} ${time.trim()}`);
