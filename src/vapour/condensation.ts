import { calculation } from '../calculation/calculation.js';
import { airTemperature } from './common.js';
import { dewyHumidity, wetnessOf, wetnessOutputs } from './surface-wetness.js';

/**
 * Whether a surface in the air gets wet: the cover, a pipe, a cold fruit.
 *
 * Takes temperature (-40 to 60 °C) and relative humidity (0.1 to 102 %) of the air and the temperature of the surface (-40 to 60 °C). Gives whether
 * it gets wet, the humidity of this air above which it does, and how far the surface is above the dew point (negative when wet). At 0.01 °C and
 * below what settles is hoar frost, and the frost point counts. There is no humidity limit where only fog would wet the surface.
 * @throws InputError for input outside these limits.
 * @example
 * condensation({ airTemperature: '20 °C', relativeHumidity: '85 %', surfaceTemperature: '10 °C' }).condensationHumidity?.in('%') // => 52.504
 */
export const condensation = /* @__PURE__ */ calculation({
  id: 'condensation',
  title: 'Condensation on a surface',
  inputs: () => ({ airTemperature: airTemperature(), relativeHumidity: dewyHumidity(), surfaceTemperature: airTemperature() }),
  outputs: wetnessOutputs,
  equation: 'wet where φ > es(t surface)/es(t air)',
  sources: ['iapws-if97', 'murphy-koop-2005', 'iapws-r14-08'],
  example: { airTemperature: '16 °C', relativeHumidity: '90 %', surfaceTemperature: '11 °C' },
  solve: ({ airTemperature, relativeHumidity, surfaceTemperature }, { note }) =>
    wetnessOf('surfaceTemperature', surfaceTemperature, airTemperature, relativeHumidity, note).outputs,
});
