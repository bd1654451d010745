import type { SourceKey } from '../../sources.js';
import { triplePointTemperature } from '../constants.js';
import { saturationPressureOverIceBuck1996, saturationPressureBuck1996 } from './buck-1996.js';
import { saturationPressureHylandWexler1983, saturationPressureOverIceHylandWexler1983 } from './hyland-wexler-1983.js';
import { saturationPressureIapws1997 } from './iapws-1997.js';
import { saturationPressureOverIceIapws2011 } from './iapws-2011-ice.js';
import {
  saturationPressureAlduchovEskridge1996, saturationPressureBolton1980, saturationPressureBuck1981, saturationPressureFao56,
  saturationPressureOverIceWmo, saturationPressureWmo,
} from './magnus.js';
import { saturationPressureMurphyKoop2005, saturationPressureOverIceMurphyKoop2005 } from './murphy-koop-2005.js';
import { saturationPressureSonntag1990 } from './sonntag-1990.js';
import { saturationPressureOverIceWagner1994, saturationPressureWagnerPruss1993 } from './wagner-1993.js';

/** What the vapour is in balance with. */
export type Surface = 'water' | 'ice';

/** One published equation for the vapour pressure over one surface. */
export interface SaturationEquation {
  /** Vapour pressure in Pa from the temperature in K. */
  readonly pressure: (temperature: number) => number;
  /** Lowest and highest temperature the equation is for, in K. */
  readonly range: readonly [low: number, high: number];
  readonly source: SourceKey;
}

/** The equations that go by one name. */
export interface SaturationEquations {
  readonly water: SaturationEquation;
  /** Over liquid water below the triple point, where `water` hands over to another equation. */
  readonly supercooled?: SaturationEquation;
  readonly ice?: SaturationEquation;
}

/** Every correlation by name. `IAPWS` is the default everywhere. */
export const saturationCorrelations = {
  'IAPWS': {
    water: { pressure: saturationPressureIapws1997, range: [273.15, 647.096], source: 'iapws-if97' },
    supercooled: { pressure: saturationPressureMurphyKoop2005, range: [123, 273.16], source: 'murphy-koop-2005' },
    ice: { pressure: saturationPressureOverIceIapws2011, range: [50, 273.16], source: 'iapws-r14-08' },
  },
  'FAO-56': {
    water: { pressure: saturationPressureFao56, range: [273.15, 323.15], source: 'fao56' },
  },
  'ASHRAE': {
    water: { pressure: saturationPressureHylandWexler1983, range: [273.15, 473.15], source: 'hyland-wexler-1983' },
    ice: { pressure: saturationPressureOverIceHylandWexler1983, range: [173.15, 273.16], source: 'hyland-wexler-1983' },
  },
  'WMO': {
    water: { pressure: saturationPressureWmo, range: [228.15, 333.15], source: 'wmo-8' },
    ice: { pressure: saturationPressureOverIceWmo, range: [208.15, 273.16], source: 'wmo-8' },
  },
  'Buck 1996': {
    water: { pressure: saturationPressureBuck1996, range: [233.15, 323.15], source: 'buck-1996' },
    ice: { pressure: saturationPressureOverIceBuck1996, range: [193.15, 273.16], source: 'buck-1996' },
  },
  'Buck 1981': {
    water: { pressure: saturationPressureBuck1981, range: [253.15, 323.15], source: 'buck-1981' },
  },
  'Wagner-Pruss 1993': {
    water: { pressure: saturationPressureWagnerPruss1993, range: [273.16, 647.096], source: 'wagner-pruss-1993' },
    ice: { pressure: saturationPressureOverIceWagner1994, range: [190, 273.16], source: 'wagner-1994' },
  },
  'Murphy-Koop 2005': {
    water: { pressure: saturationPressureMurphyKoop2005, range: [123, 332], source: 'murphy-koop-2005' },
    ice: { pressure: saturationPressureOverIceMurphyKoop2005, range: [110, 273.16], source: 'murphy-koop-2005' },
  },
  'Alduchov-Eskridge 1996': {
    water: { pressure: saturationPressureAlduchovEskridge1996, range: [233.15, 323.15], source: 'alduchov-eskridge-1996' },
  },
  'Bolton 1980': {
    water: { pressure: saturationPressureBolton1980, range: [238.15, 308.15], source: 'bolton-1980' },
  },
  'Sonntag 1990': {
    water: { pressure: saturationPressureSonntag1990, range: [173.15, 373.15], source: 'sonntag-1990' },
  },
} as const satisfies Readonly<Record<string, SaturationEquations>>;

type Table = typeof saturationCorrelations;

/** Name of a correlation for the saturation vapour pressure over water. */
export type SaturationCorrelation = keyof Table;

/** Name of a correlation that also has an equation over ice. */
export type IceSaturationCorrelation = { [Name in SaturationCorrelation]: Table[Name] extends { ice: unknown } ? Name : never }[SaturationCorrelation];

/** Whether a correlation has an equation over ice. */
export function hasIceEquation(correlation: SaturationCorrelation): correlation is IceSaturationCorrelation {
  return 'ice' in saturationCorrelations[correlation];
}

/**
 * The equation a correlation uses over liquid water at a temperature in K.
 *
 * Only `IAPWS` has two: IF97 from the triple point up and Murphy and Koop (2005) for supercooled water below it. There the second is
 * 0.00004 Pa the higher, which is a millionth of a kelvin. The others carry their one equation on below their range.
 */
export function saturationEquationOverWater(temperature: number, correlation: SaturationCorrelation = 'IAPWS'): SaturationEquation {
  const equations: SaturationEquations = saturationCorrelations[correlation];
  return (temperature < triplePointTemperature && equations.supercooled) || equations.water;
}

/**
 * Saturation vapour pressure over liquid water, in Pa, from the temperature in K.
 *
 * Over water at every temperature, supercooled below 0.01 °C: relative humidity is by convention counted so even in frost.
 * For ice ask saturationPressureOverIce.
 *
 * @example saturationPressureOverWater(297.15) // => 2985.63
 * @example saturationPressureOverWater(297.15, 'FAO-56') // => 2983.92
 */
export function saturationPressureOverWater(temperature: number, correlation: SaturationCorrelation = 'IAPWS'): number {
  return saturationEquationOverWater(temperature, correlation).pressure(temperature);
}

/**
 * Saturation vapour pressure over ice, in Pa, from the temperature in K: lower than over water, by 10 % at -10 °C.
 *
 * There is no ice above 273.16 K, though the equations still give a number.
 *
 * @example saturationPressureOverIce(263.15) // => 259.874
 */
export function saturationPressureOverIce(temperature: number, correlation: IceSaturationCorrelation = 'IAPWS'): number {
  return saturationCorrelations[correlation].ice.pressure(temperature);
}
