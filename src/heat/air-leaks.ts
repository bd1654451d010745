import type { SourceKey } from '../sources.js';

/** Air changes of a shut house. */
export interface AirLeaks {
  /** Per hour, in calm weather. */
  readonly low: number;
  readonly high: number;
  readonly source: SourceKey;
}

/** Shut houses by how they are built; from memory (ASABE EP406, ASHRAE). Wind adds to them. */
export const airLeaks = {
  'new double film': { low: 0.6, high: 1, source: 'asabe-ep406' },
  'new single film': { low: 0.9, high: 1.2, source: 'asabe-ep406' },
  'sealed glass': { low: 1, high: 1, source: 'asabe-ep406' },
  'lapped glass': { low: 1.25, high: 1.25, source: 'asabe-ep406' },
  'structured sheet': { low: 1, high: 1, source: 'asabe-ep406' },
  'old glass, well kept': { low: 1.5, high: 1.5, source: 'asabe-ep406' },
  'old glass, poor': { low: 2, high: 4, source: 'asabe-ep406' },
} as const satisfies Readonly<Record<string, AirLeaks>>;

/** Name of a build of the table. */
export type AirLeaksName = keyof typeof airLeaks;
