/** Numbers in SI units as they stand in a sentence. */
import { writeNumber } from './write.js';

export const litres = (cubicMetres: number): string => `${writeNumber(cubicMetres * 1000)} L`;

export const litresPerMinute = (cubicMetresPerSecond: number): string => `${writeNumber(cubicMetresPerSecond * 60_000)} L/min`;

export const kilopascals = (pascals: number): string => `${writeNumber(pascals / 1000)} kPa`;

export const percent = (fraction: number): string => `${writeNumber(fraction * 100)} %`;
