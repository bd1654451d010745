/** Numbers in SI units as they stand in a sentence. */
import { writeNumber } from './write.js';

export const litres = (cubicMetres: number): string => `${writeNumber(cubicMetres * 1000)} L`;

export const litresPerMinute = (cubicMetresPerSecond: number): string => `${writeNumber(cubicMetresPerSecond * 60_000)} L/min`;

export const kilopascals = (pascals: number): string => `${writeNumber(pascals / 1000)} kPa`;

export const percent = (fraction: number): string => `${writeNumber(fraction * 100)} %`;

/** A number of three digits: enough for advice. */
export const threeDigits = (x: number): number => Number(x.toPrecision(3));

/** A time in hours, to three digits. */
export const hours = (seconds: number): string => `${writeNumber(threeDigits(seconds / 3600))} h`;

/** A time of day as on a clock: 7:05. */
export function clock(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
}

/** A time since the first midnight in words: 7:05 of day 2. */
export function dayAndClock(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  const day = Math.floor(minutes / 1440);
  return `${clock((minutes - day * 1440) * 60)} of day ${day + 1}`;
}
