import type { SourceKey } from '../sources.js';

/** How much heat a cover lets through. */
export interface Cover {
  /** W/(m² K) */
  readonly heatTransfer: number;
  /** Lowest and highest that is to be expected, by wind, frame, dew and age, W/(m² K). */
  readonly low: number;
  readonly high: number;
  readonly source: SourceKey;
}

/**
 * Covers by name. The ranges of one and of two layers are published; the value of each cover within them is from memory (ASABE EP406, ASHRAE HVAC
 * Applications 2003), that of 10 mm sheet between its neighbours; PVC film and single sheet of polycarbonate lose 4 and 9 % less than single film of
 * polyethylene (Rasheed et al. 2017), and two layers 34 % less, hence the upper end of double film. The range of film over glass is 15 % either way, a
 * judgement.
 */
export const covers = {
  'one layer': { heatTransfer: 6.25, low: 5.7, high: 6.8, source: 'extension-glazing' },
  'two layers': { heatTransfer: 3.7, low: 3.4, high: 4, source: 'extension-glazing' },
  'single glass': { heatTransfer: 6.4, low: 5.7, high: 6.8, source: 'asabe-ep406' },
  'double glass': { heatTransfer: 4, low: 3.4, high: 4, source: 'asabe-ep406' },
  'single film': { heatTransfer: 6.8, low: 5.7, high: 6.8, source: 'asabe-ep406' },
  'PVC film': { heatTransfer: 6.53, low: 5.7, high: 6.8, source: 'rasheed-2017' },
  'polycarbonate sheet': { heatTransfer: 6.19, low: 5.7, high: 6.8, source: 'rasheed-2017' },
  'inflated double film': { heatTransfer: 4, low: 3.4, high: 4.5, source: 'asabe-ep406' },
  'film over glass': { heatTransfer: 4.8, low: 4.1, high: 5.5, source: 'asabe-ep406' },
  '6 mm twin-wall sheet': { heatTransfer: 4.1, low: 3.4, high: 4.1, source: 'asabe-ep406' },
  '8 mm twin-wall sheet': { heatTransfer: 3.7, low: 3.4, high: 4, source: 'asabe-ep406' },
  '10 mm twin-wall sheet': { heatTransfer: 3.6, low: 3.4, high: 4, source: 'asabe-ep406' },
  '16 mm twin-wall sheet': { heatTransfer: 3.3, low: 3.3, high: 4, source: 'asabe-ep406' },
} as const satisfies Readonly<Record<string, Cover>>;

/** Name of a cover of the table. */
export type CoverName = keyof typeof covers;
