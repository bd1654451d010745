import { triplePointTemperature } from '../constants.js';
import { saturationPressureBuck1996 } from './buck-1996.js';
import { saturationPressureHylandWexler1983 } from './hyland-wexler-1983.js';
import { saturationPressureIapws1997 } from './iapws-1997.js';
import { saturationPressureFao56, saturationPressureWmo } from './magnus.js';
import { saturationPressureMurphyKoop2005 } from './murphy-koop-2005.js';

/** One published equation for the saturation vapour pressure. */
export interface SaturationEquation {
  /** Vapour pressure in Pa from the temperature in K. */
  readonly pressure: (temperature: number) => number;
  /** Lowest and highest temperature that the equation is for, in K. */
  readonly range: readonly [low: number, high: number];
  /** Author and year, or the publication it is known by, in words. */
  readonly name: string;
}

/** The equations over liquid water that a calculation can be asked for by name; the others stand for themselves. `IAPWS` is the default everywhere. */
export const saturationEquationsOverWater = {
  'IAPWS': { pressure: saturationPressureIapws1997, range: [273.15, 647.096], name: 'IAPWS-IF97' },
  'FAO-56': { pressure: saturationPressureFao56, range: [273.15, 323.15], name: 'FAO-56' },
  'ASHRAE': { pressure: saturationPressureHylandWexler1983, range: [273.15, 473.15], name: 'Hyland-Wexler 1983' },
  'WMO': { pressure: saturationPressureWmo, range: [228.15, 333.15], name: 'WMO' },
  'Buck 1996': { pressure: saturationPressureBuck1996, range: [233.15, 323.15], name: 'Buck 1996' },
} as const satisfies Readonly<Record<string, SaturationEquation>>;

/** What `IAPWS` hands over to below the triple point, where IF97 ends. */
export const supercooledSaturationEquation: SaturationEquation = { pressure: saturationPressureMurphyKoop2005, range: [123, 273.16], name: 'Murphy-Koop 2005' };

/** Name of a correlation for the saturation vapour pressure over liquid water. */
export type SaturationCorrelation = keyof typeof saturationEquationsOverWater;

/**
 * The equation a correlation uses over liquid water at a temperature in K.
 *
 * Only `IAPWS` has two: IF97 from the triple point up and Murphy and Koop (2005) for supercooled water below it. There the second is
 * 0.00004 Pa the higher, which is a millionth of a kelvin. The others carry their one equation on below their range.
 */
export function saturationEquationOverWater(temperature: number, correlation: SaturationCorrelation = 'IAPWS'): SaturationEquation {
  return correlation === 'IAPWS' && temperature < triplePointTemperature ? supercooledSaturationEquation : saturationEquationsOverWater[correlation];
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
