import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { absolutePressure, share, temperatureDifference } from '../units/dimensions.js';
import { triplePointPressure, triplePointTemperature } from '../water/constants.js';
import { saturationTemperatureOverIce, saturationTemperatureOverWater } from '../water/saturation/temperature.js';
import { airTemperature, iceSaturationAt, saturationAt } from './common.js';

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
  inputs: () => ({ airTemperature: airTemperature(), relativeHumidity: field.share({ limits: [0.001, 1.02], valid: [0.001, 1] }), surfaceTemperature: airTemperature() }),
  outputs: () => ({
    wet: output.flag(),
    condensationHumidity: output.optional(output.quantity(share, '%')),
    margin: output.quantity(temperatureDifference, 'K'),
    convergence: output.group({ vapourPressureResidual: output.quantity(absolutePressure, 'Pa'), steps: output.number() }),
  }),
  equation: 'wet where φ > es(t surface)/es(t air)',
  sources: ['iapws-if97', 'murphy-koop-2005', 'iapws-r14-08'],
  example: { airTemperature: '16 °C', relativeHumidity: '90 %', surfaceTemperature: '11 °C' },
  solve: ({ airTemperature, relativeHumidity, surfaceTemperature }, { note }) => {
    const saturation = saturationAt('airTemperature', airTemperature, 'IAPWS', note);
    const vapourPressure = relativeHumidity * saturation;
    const frost = surfaceTemperature <= triplePointTemperature;
    const surfaceSaturation = (frost ? iceSaturationAt : saturationAt)('surfaceTemperature', surfaceTemperature, 'IAPWS', note);
    const wet = vapourPressure > surfaceSaturation;
    if (wet && frost) note('caution', 'hoar-frost', 'surfaceTemperature', 'What settles on the surface is hoar frost, or dew that freezes.');
    const condensationHumidity = surfaceSaturation / saturation;
    const { value, residual, steps } = (vapourPressure < triplePointPressure ? saturationTemperatureOverIce : saturationTemperatureOverWater)(vapourPressure);
    return {
      wet,
      condensationHumidity: condensationHumidity > 1 ? undefined : condensationHumidity,
      margin: surfaceTemperature - value,
      convergence: { vapourPressureResidual: residual, steps },
    };
  },
});
