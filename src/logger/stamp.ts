/** Dates and times of day as they are written, to seconds by the clock on the wall. */

export const secondsInDay = 86_400;

/** In which order day, month and year stand. */
export type DateOrder = 'YMD' | 'DMY' | 'MDY';

/** Days from 1970-01-01 to a date of the Gregorian calendar; NaN for a date that is none. */
export function daysFromDate(year: number, month: number, day: number): number {
  if (month < 1 || month > 12 || day < 1 || day > daysInMonth(year, month)) return NaN;
  // The year begins in March, so that the leap day is its last; five months from March have 153 days.
  const [y, m] = month > 2 ? [year, month - 3] : [year - 1, month + 9];
  return 365 * y + Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400) + Math.floor((153 * m + 2) / 5) + day - 719_469;
}

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
const daysInMonth = (year: number, month: number): number => (month === 2 ? (isLeap(year) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31);

/** A number of days from 1970-01-01 as `2026-04-12`. */
export const dateText = (days: number): string => new Date(days * 86_400_000).toISOString().slice(0, 10);

const yearFirst = /^\s*(\d{4})([-./])(\d{1,2})\2(\d{1,2})(?:[T\s,]\s*|$)/i;
const yearLast = /^\s*(\d{1,2})([-./])(\d{1,2})\2(\d{4}|\d{2})(?:[T\s,]\s*|$)/i;
const compact = /^\s*(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)?(?!\d)/i;
const timeOfDay = /^(\d{1,2}):(\d\d)(?::(\d\d(?:[.,]\d+)?))?\s*(?:([ap])\.?\s?m\.?)?\s*(Z|UTC|GMT|[+-]\d\d(?::?\d\d)?)?\s*$/i;

/** The numbers of a date in the order in which they stand, and the text that they and what follows up to the time take. */
export function dateParts(text: string): { readonly yearFirst: boolean; readonly dotted: boolean; readonly parts: readonly [number, number, number]; readonly length: number } | undefined {
  const match = yearFirst.exec(text) ?? yearLast.exec(text);
  if (!match) return undefined;
  const [written, a, mark, b, c] = match as unknown as [string, string, string, string, string];
  return { yearFirst: a.length === 4, dotted: mark === '.', parts: [Number(a), Number(b), c.length === 2 && a.length < 4 ? 2000 + Number(c) : Number(c)], length: written.length };
}

/** Whether a cell is a time of day alone. */
export const isTimeOfDay = (text: string): boolean => timeOfDay.test(text.trim());

/** A stamp of ISO 8601 without marks between its numbers, written with them. */
export const spreadOut = (text: string): string => text.replace(compact, (_, y, m, d, h, min, s = '00') => `${y}-${m}-${d}T${h}:${min}:${s}`);

/** Reads stamps one after the other. */
export interface StampReader {
  /** Seconds from 1970-01-01 00:00 by the clock that wrote the stamp; NaN where it is none. */
  read(text: string): number;
  /** Seconds by which that clock is ahead of UTC, as the stamp last read says; NaN where it says nothing. */
  offset(): number;
}

export function stampReader(order: DateOrder): StampReader {
  let [before, day, offset] = ['', NaN, NaN];
  /** What follows the digits of a time of day, AM, PM or an offset from UTC: mostly that of the row before. */
  let [tail, half, tailOffset]: [string, string | undefined, number] = ['', undefined, NaN];

  function dayOf(text: string): number {
    const date = dateParts(text);
    if (!date || date.yearFirst !== (order === 'YMD')) return -1;
    const [a, b, c] = date.parts;
    day = order === 'YMD' ? daysFromDate(a, b, c) : order === 'DMY' ? daysFromDate(c, b, a) : daysFromDate(c, a, b);
    // What comes before the time of day is mostly that of the row before.
    before = date.length < text.length ? text.slice(0, date.length) : '';
    return date.length;
  }

  function secondsAt(text: string, from: number): number {
    if (from === text.length) return 0;
    const digits = text.charCodeAt(from + 1) === colon ? 1 : 2;
    const at = from + digits;
    const left = text.length - tail.length - at;
    if ((left === 3 || left === 6) && text.charCodeAt(at) === colon && (left === 3 || text.charCodeAt(at + 3) === colon) && text.endsWith(tail)) {
      const hours = hourOfDay(digits === 1 ? text.charCodeAt(from) - zero : twoDigits(text, from), half);
      const [minutes, seconds] = [twoDigits(text, at + 1), left === 6 ? twoDigits(text, at + 4) : 0];
      if (hours >= 0 && minutes < 60 && seconds < 60) {
        offset = tailOffset;
        return hours * 3600 + minutes * 60 + seconds;
      }
    }
    return secondsByPattern(text.slice(from));
  }

  function secondsByPattern(text: string): number {
    const match = timeOfDay.exec(text);
    if (!match) return NaN;
    const [, h, m, s, noon, zone] = match;
    const ahead = zone === undefined ? NaN : offsetOf(zone);
    if (ahead === undefined) return NaN;
    half = noon?.toLowerCase();
    tail = text.slice(h!.length + m!.length + (s === undefined ? 1 : s.length + 2));
    offset = tailOffset = ahead;
    const [minutes, seconds] = [Number(m), Number((s ?? '0').replace(',', '.'))];
    const endOfDay = Number(h) === 24 && minutes + seconds === 0 && half === undefined;
    return minutes < 60 && seconds < 60 ? (endOfDay ? 24 : hourOfDay(Number(h), half)) * 3600 + minutes * 60 + seconds : NaN;
  }

  return {
    read(text) {
      offset = NaN;
      let from = before.length;
      if (from === 0 || !text.startsWith(before)) {
        if (compact.test(text)) text = spreadOut(text);
        from = dayOf(text);
        if (from < 0) return NaN;
      }
      return day * secondsInDay + secondsAt(text, from);
    },
    offset: () => offset,
  };
}

const colon = 58;
const zero = 48;

/** The hour from 0 to 23 of what a clock shows, with AM or PM where it does; NaN for none. */
function hourOfDay(shown: number, half: string | undefined): number {
  if (half === undefined) return shown >= 0 && shown < 24 ? shown : NaN;
  return shown >= 1 && shown <= 12 ? (shown % 12) + (half === 'p' ? 12 : 0) : NaN;
}

/** A number of two digits in a text; NaN where there is none. */
function twoDigits(text: string, at: number): number {
  const tens = text.charCodeAt(at) - zero;
  const ones = text.charCodeAt(at + 1) - zero;
  return tens >= 0 && tens <= 9 && ones >= 0 && ones <= 9 ? tens * 10 + ones : NaN;
}

/** Seconds by which an offset from UTC is ahead; undefined for one that no place on Earth has. */
function offsetOf(zone: string): number | undefined {
  const [, sign, hours, minutes = '0'] = /^([+-])(\d\d):?(\d\d)?$/.exec(zone) ?? [];
  if (sign === undefined) return 0;
  const seconds = (sign === '-' ? -1 : 1) * (Number(hours) * 3600 + Number(minutes) * 60);
  return Number(minutes) < 60 && seconds >= -12 * 3600 && seconds <= 14 * 3600 ? seconds : undefined;
}
