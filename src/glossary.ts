import type { Dimension } from './units/quantity.js';

/** What a name of an input or output stands for. */
export interface Term {
  readonly meaning: string;
  /** The symbol that formulas use for it. */
  readonly symbol?: string;
  /** Its dimension, or the kind of value where it has none. */
  readonly dimension: Dimension | 'number' | 'count' | 'choice' | 'flag' | 'text' | 'list' | 'group' | 'record';
}

/** Every name of an input or output once: one name, one meaning, one dimension. Alphabetical. */
export const glossary = {
  airTemperature: { meaning: 'Temperature of the air (dry bulb)', symbol: 't', dimension: 'temperature' },
  atmosphericPressure: { meaning: 'Pressure of the atmosphere at the site', symbol: 'P', dimension: 'absolutePressure' },
  convergence: { meaning: 'How well an iteration closed', dimension: 'group' },
  elevation: { meaning: 'Height of the site above sea level', symbol: 'z', dimension: 'length' },
  relativeHumidity: { meaning: 'Vapour pressure of the air over that of saturation at the same temperature', symbol: 'φ', dimension: 'share' },
  steps: { meaning: 'Steps that an iteration took', dimension: 'number' },
} as const satisfies Readonly<Record<string, Term>>;

/** A name in the glossary. */
export type TermName = keyof typeof glossary;
