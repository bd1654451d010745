import { writeNumber } from '../units/write.js';

/** A volume (m3) in a sentence. */
export const litres = (volume: number): string => `${writeNumber(volume * 1000)} L`;

/** A share in a sentence. */
export const percent = (share: number): string => `${writeNumber(share * 100)} %`;
