/** Pieces of a text to rows of cells with their line numbers, by the parser of CSV. */
import Papa from 'papaparse';
import { refuse } from './refuse.js';

/** A row: its cells, the line that it begins on, and whether its quotation marks do not pair. */
export type TakeRow = (cells: readonly string[], line: number, quotesOff: boolean) => void;

/** Characters of a row at most; a quoted cell that runs on for longer has lost its closing mark. */
export const longestRow = 65_536;

interface Parsed {
  readonly data: readonly (readonly string[])[];
  readonly errors: readonly { readonly code: string; readonly row: number }[];
  readonly meta: { readonly cursor: number };
}

/**
 * Reads rows from pieces of a text that may end anywhere. Lines may end in LF, CR LF or, where `newline` says so, CR.
 * A quotation mark that is never closed spoils its own line, not the rest of the file; so does one within a cell.
 * @throws InputError for a line longer than any table has.
 */
export function rowReader(separator: string, newline: '\n' | '\r', take: TakeRow): (piece: string, last: boolean) => void {
  const parser = new Papa.Parser({ delimiter: separator, newline });
  const parse = (text: string, last: boolean) => parser.parse(text, 0, !last) as Parsed;
  let [carried, line] = ['', 1];

  /** Hands the rows of a text on, up to one that goes wrong in its first line and on over others. Gives the characters that they take. */
  function hand({ data, errors, meta: { cursor } }: Parsed, text: string, last: boolean): number {
    const off = errors.length > 0 ? new Set(errors.map(({ row }) => row)) : undefined;
    const isOff = (row: number): boolean => off?.has(row) === true;
    const ends = text.includes('"') ? endsIn(text, cursor) : undefined;
    if (!ends || (!last && ends.length === data.length)) {
      for (let i = 0; i < data.length; i++) take(data[i]!, line++, isOff(i));
      return cursor;
    }
    const begin = line;
    for (let i = 0; i < data.length; i++) {
      const breaks = breaksIn(data[i]!);
      const start = line === begin ? 0 : ends[line - begin - 1]! + 1;
      if (breaks > 0 && isOff(i) && isEven(text.slice(start, ends[line - begin]))) return start;
      take(data[i]!, line, isOff(i));
      line += 1 + breaks;
    }
    return cursor;
  }

  const endsIn = (text: string, to: number): number[] => {
    const ends: number[] = [];
    for (let at = text.indexOf(newline); at >= 0 && at < to; at = text.indexOf(newline, at + 1)) ends.push(at);
    return ends;
  };
  const breaksIn = (cells: readonly string[]): number => cells.reduce((sum, cell) => (cell.includes(newline) ? sum + cell.split(newline).length - 1 : sum), 0);

  /** Takes the first line alone: as a row, or as one with a wrong mark. */
  function takeLine(end: number): void {
    const first = end < 0 ? carried : carried.slice(0, end);
    carried = carried.slice(first.length + 1);
    const alone = parse(first + newline, false);
    if (alone.data.length === 1) hand(alone, first, false);
    else take(first.split(separator), line++, true);
  }

  return (piece, last) => {
    carried += piece;
    for (;;) {
      const handed = hand(parse(carried, false), carried, false);
      carried = carried.slice(handed);
      let end = carried.indexOf(newline);
      const isWrong = (): boolean => end >= 0 && isEven(carried.slice(0, end));
      if (!isWrong()) {
        if (last ? carried === '' : carried.length <= longestRow) return;
        const rest = last ? parse(carried, true) : undefined;
        if (rest && !rest.errors.some(({ code }) => code === 'MissingQuotes')) {
          carried = carried.slice(hand(rest, carried, true));
          if (carried === '') return;
          end = carried.indexOf(newline);
        } else if (end < 0 && !last) refuse(['source'], `lines of at most ${longestRow} characters`, `a longer one, line ${line}`, 'is this a text of rows and columns?');
      }
      // Wrong lines come in numbers: one by one, as long as none goes on in the next.
      do {
        takeLine(end);
        end = carried.indexOf(newline);
      } while (isWrong());
    }
  };
}

/** Whether a line has its quotation marks in pairs, so that no cell goes on in the next. */
const isEven = (line: string): boolean => line.split('"').length % 2 === 1;
