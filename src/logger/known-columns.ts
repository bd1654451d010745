/**
 * What the columns of a greenhouse's logger are: what they measure, the words that headers use for them, and what is possible.
 * The first row whose words and dimension fit a header wins. The limits are common practice: beyond what such a sensor can see in a house.
 */
import type { Dimension } from '../units/quantity.js';

interface KnownRow {
  readonly dimension: Dimension;
  /** Words of a header, in lower case and without its unit. */
  readonly words: RegExp;
  /** Least and most, in a unit of the dimension. */
  readonly limits: readonly [low: number, high: number, unit: string];
}

export const knownColumns = {
  leafTemperature: { dimension: 'temperature', words: /leaf|canopy/, limits: [-39.9, 60, '°C'] },
  coverTemperature: { dimension: 'temperature', words: /cover|glass|foil|film/, limits: [-39.9, 60, '°C'] },
  dewPoint: { dimension: 'temperature', words: /dew/, limits: [-80, 60, '°C'] },
  wetBulbTemperature: { dimension: 'temperature', words: /wet/, limits: [-45, 60, '°C'] },
  outsideTemperature: { dimension: 'temperature', words: /\bout|weather/, limits: [-60, 60, '°C'] },
  waterTemperature: { dimension: 'temperature', words: /water|barrel|feed|irrigation/, limits: [-10, 100, '°C'] },
  airTemperature: { dimension: 'temperature', words: /^(?!.*(soil|substrate|root|pipe|drain|set|target|case|board|logger)).*(temp|air)|^t?$/, limits: [-39.9, 60, '°C'] },
  relativeHumidity: { dimension: 'share', words: /^(?!.*(soil|substrate|set|target)).*(humid|\brh\b|\br\.h\.)|^$/, limits: [0.1, 102, '%'] },
  vapourPressureDeficit: { dimension: 'pressure', words: /deficit|vpd/, limits: [-1, 20, 'kPa'] },
  atmosphericPressure: { dimension: 'absolutePressure', words: /atmos|baro|air press/, limits: [50, 110, 'kPa'] },
  photonFlux: { dimension: 'photonFlux', words: /^(?!.*(set|target))/, limits: [-50, 5000, 'µmol/(m²·s)'] },
  globalRadiation: { dimension: 'irradiance', words: /^(?!.*(set|target|net|long))/, limits: [-50, 2000, 'W/m²'] },
} as const satisfies Readonly<Record<string, KnownRow>>;

export type KnownColumn = keyof typeof knownColumns;

export const isKnownColumn = (name: string): name is KnownColumn => Object.hasOwn(knownColumns, name);
