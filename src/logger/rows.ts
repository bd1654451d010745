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
 * A quotation mark that is never closed spoils its own line, not the rest of the file.
 * @throws InputError for a line longer than any table has.
 */
export function rowReader(separator: string, newline: '\n' | '\r', take: TakeRow): (piece: string, last: boolean) => void {
  const parser = new Papa.Parser({ delimiter: separator, newline });
  const parse = (text: string, last: boolean) => parser.parse(text, 0, !last) as Parsed;
  let [carried, line] = ['', 1];

  function hand({ data, errors }: Parsed, quoted: boolean): void {
    const off = errors.length > 0 ? new Set(errors.map(({ row }) => row)) : undefined;
    for (let i = 0; i < data.length; i++) {
      const cells = data[i]!;
      take(cells, line, off?.has(i) === true);
      line += quoted ? 1 + breaksIn(cells, newline) : 1;
    }
  }

  return (piece, last) => {
    carried += piece;
    for (;;) {
      const whole = parse(carried, false);
      hand(whole, carried.includes('"'));
      carried = carried.slice(whole.meta.cursor);
      if (last ? carried === '' : carried.length <= longestRow) return;
      const rest = last ? parse(carried, true) : undefined;
      if (rest && !rest.errors.some(({ code }) => code === 'MissingQuotes')) {
        hand(rest, true);
        carried = '';
        return;
      }
      const end = carried.indexOf(newline);
      if (end < 0 && !last) refuse(['source'], `lines of at most ${longestRow} characters`, `a longer one, line ${line}`, 'is this a text of rows and columns?');
      const first = end < 0 ? carried : carried.slice(0, end);
      carried = carried.slice(first.length + 1);
      take(first.split(separator), line++, true);
    }
  };
}

const breaksIn = (cells: readonly string[], newline: string): number => cells.reduce((sum, cell) => (cell.includes(newline) ? sum + cell.split(newline).length - 1 : sum), 0);
