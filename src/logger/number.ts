/** Numbers and missing readings as loggers write them. */
import { numberForm } from '../units/read.js';

const missing = /^\s*(?:-{1,3}|nan|null|n\/?a|none)?\s*$/i;

/** Whether a cell says that there is no reading: empty, `NaN`, `null`, `-`, `--`. */
export const isMissing = (cell: string): boolean => missing.test(cell);

/** Powers of ten that a double holds exactly, as far as 15 digits need them. */
const powers = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15];

/**
 * The number in a cell, NaN where there is none. `mark` is the character code of the decimal mark.
 * Up to 15 digits are an exact integer over an exact power of ten, whose quotient is the correctly rounded number.
 */
export function readNumber(cell: string, mark: number): number {
  let [from, to] = [0, cell.length];
  while (cell.charCodeAt(from) === 32) from++;
  while (to > from && (cell.charCodeAt(to - 1) === 32 || cell.charCodeAt(to - 1) === 13)) to--;
  const negative = cell.charCodeAt(from) === 45;
  let digits = 0;
  let value = 0;
  let pointAt = -1;
  for (let i = negative ? from + 1 : from; i < to; i++) {
    const code = cell.charCodeAt(i);
    if (code >= 48 && code <= 57) {
      value = value * 10 + code - 48;
      digits++;
    } else if (code === mark && pointAt < 0) pointAt = digits;
    else return readSlowly(cell, mark);
  }
  if (digits === 0 || digits > 15) return readSlowly(cell, mark);
  if (pointAt >= 0) value /= powers[digits - pointAt]!;
  return negative ? -value : value;
}

function readSlowly(cell: string, mark: number): number {
  const text = cell.trim().replace('\u2212', '-');
  if (mark === 44 && text.includes('.')) return NaN;
  const number = mark === 44 ? text.replace(',', '.') : text;
  const value = numberForm.test(number) ? Number(number) : NaN;
  return Number.isFinite(value) ? value : NaN;
}
