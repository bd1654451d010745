import { calculation } from '../calculation/calculation.js';
import * as output from '../calculation/output.js';
import { absolutePressure, temperature } from '../units/dimensions.js';
import { triplePointPressure } from '../water/constants.js';
import { hasIceEquation } from '../water/saturation/over-ice.js';
import { saturationTemperatureOverIce, saturationTemperatureOverWater } from '../water/saturation/temperature.js';
import { airTemperature, correlation, noteFraction, noteIce, saturationAt, surfaceSources } from './common.js';
import { dewyHumidity } from './surface-wetness.js';

/**
 * Dew point of the air: the temperature below which a surface in it gets wet; and the frost point, below which hoar frost settles.
 *
 * Takes the temperature (-40 to 60 °C) and relative humidity (0.1 to 102 %) of the air; perfectly dry air has no dew point. The dew point is over
 * liquid water. A dew point below 0.01 °C comes with a frost point, which lies above it; FAO-56 has no equation for that one. The equation that
 * made the vapour pressure is the one inverted.
 * @throws InputError for input outside these limits.
 * @example
 * dewPoint({ airTemperature: '25 °C', relativeHumidity: '60 %' }).dewPoint.in('°C') // => 16.701
 */
export const dewPoint = /* @__PURE__ */ calculation({
  id: 'dewPoint',
  title: 'Dew point and frost point',
  inputs: () => ({ airTemperature: airTemperature(), relativeHumidity: dewyHumidity(), correlation: correlation() }),
  outputs: () => ({
    dewPoint: output.quantity(temperature, '°C'),
    frostPoint: output.optional(output.quantity(temperature, '°C')),
    convergence: output.group({ vapourPressureResidual: output.quantity(absolutePressure, 'Pa'), steps: output.number() }),
  }),
  equation: 'es(t dew) = φ es(t)',
  sources: surfaceSources,
  example: { airTemperature: '18 °C', relativeHumidity: '88 %' },
  solve: ({ airTemperature, relativeHumidity, correlation }, { note }) => {
    const vapourPressure = relativeHumidity * saturationAt('airTemperature', airTemperature, correlation, note);
    noteFraction('relativeHumidity', relativeHumidity, note);
    const dew = saturationTemperatureOverWater(vapourPressure, correlation);
    const frost = vapourPressure < triplePointPressure && hasIceEquation(correlation) ? saturationTemperatureOverIce(vapourPressure, correlation) : undefined;
    if (frost) noteIce(correlation, 'frostPoint', frost.value, note);
    return {
      dewPoint: dew.value,
      frostPoint: frost?.value,
      convergence: { vapourPressureResidual: Math.max(dew.residual, frost?.residual ?? 0), steps: dew.steps + (frost?.steps ?? 0) },
    };
  },
});
