import { saturationPressureOverIceBuck1996 } from './buck-1996.js';
import { saturationPressureOverIceHylandWexler1983 } from './hyland-wexler-1983.js';
import { saturationPressureOverIceIapws2011 } from './iapws-2011-ice.js';
import { saturationPressureOverIceWmo } from './magnus.js';
import type { SaturationEquation } from './over-water.js';

/** What the vapour is in balance with. */
export type Surface = 'water' | 'ice';

/** The equations over ice of the correlations that have one. */
export const saturationEquationsOverIce = {
  'IAPWS': { pressure: saturationPressureOverIceIapws2011, range: [50, 273.16], name: 'IAPWS R14-08' },
  'ASHRAE': { pressure: saturationPressureOverIceHylandWexler1983, range: [173.15, 273.16], name: 'Hyland-Wexler 1983' },
  'WMO': { pressure: saturationPressureOverIceWmo, range: [208.15, 273.16], name: 'WMO' },
  'Buck 1996': { pressure: saturationPressureOverIceBuck1996, range: [193.15, 273.16], name: 'Buck 1996' },
} as const satisfies Readonly<Record<string, SaturationEquation>>;

/** Name of a correlation that also has an equation over ice. */
export type IceSaturationCorrelation = keyof typeof saturationEquationsOverIce;

/** Whether a correlation has an equation over ice. */
export function hasIceEquation(correlation: string): correlation is IceSaturationCorrelation {
  return Object.hasOwn(saturationEquationsOverIce, correlation);
}

/**
 * Saturation vapour pressure over ice, in Pa, from the temperature in K: lower than over water, by 10 % at -10 °C.
 *
 * There is no ice above 273.16 K, though the equations still give a number.
 *
 * @example saturationPressureOverIce(263.15) // => 259.874
 */
export function saturationPressureOverIce(temperature: number, correlation: IceSaturationCorrelation = 'IAPWS'): number {
  return saturationEquationsOverIce[correlation].pressure(temperature);
}
