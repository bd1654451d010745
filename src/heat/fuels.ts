import type { SourceKey } from '../sources.js';

/** What a heater burns. */
export interface Fuel {
  /** Heat of a kilogram, J (lower calorific value); one of the two, or neither for electricity. */
  readonly heatPerMass?: number;
  /** Heat of a cubic metre, J. */
  readonly heatPerVolume?: number;
  /** Share of it that a usual heater with a flue brings into the house. */
  readonly efficiency: number;
  readonly source: SourceKey;
}

/** Fuels by name; rounded figures of the trade, from memory: the supplier's and the heater's own go before them. */
export const fuels = {
  'electricity': { efficiency: 1, source: 'common-practice' },
  'propane': { heatPerMass: 46.4e6, efficiency: 0.85, source: 'common-practice' },
  'natural gas': { heatPerVolume: 36e6, efficiency: 0.85, source: 'common-practice' },
  'heating oil': { heatPerVolume: 36e9, efficiency: 0.85, source: 'common-practice' },
  'paraffin': { heatPerVolume: 34.5e9, efficiency: 0.85, source: 'common-practice' },
  'wood pellets': { heatPerMass: 17.3e6, efficiency: 0.85, source: 'common-practice' },
  'dry wood': { heatPerMass: 14.8e6, efficiency: 0.65, source: 'common-practice' },
} as const satisfies Readonly<Record<string, Fuel>>;

/** Name of a fuel of the table. */
export type FuelName = keyof typeof fuels;
