import { calculation } from '../calculation/calculation.js';
import * as output from '../calculation/output.js';
import { absolutePressure, pressure } from '../units/dimensions.js';
import { airTemperature, correlation, relativeHumidity, saturationAt, saturationSources } from './common.js';

/**
 * Vapour pressure deficit of the air: how much more vapour it could hold, the pull that it has on water in leaves as warm as the air.
 *
 * Takes the temperature (-40 to 60 °C) and relative humidity (0 to 102 %, above 100 % with a note and a deficit below zero) of the air,
 * and by name another equation for saturation than that of IAPWS. Gives the deficit and its two parts in kPa. Relative humidity counts
 * over liquid water, in frost too. For leaves warmer or cooler than the air take leafVapourPressureDeficit.
 * @throws InputError for input outside these limits.
 * @example
 * vapourPressureDeficit({ airTemperature: '24 °C', relativeHumidity: '65 %' }).vapourPressureDeficit.in('kPa') // => 1.04497
 */
export const vapourPressureDeficit = /* @__PURE__ */ calculation({
  id: 'vapourPressureDeficit',
  title: 'Vapour pressure deficit of the air',
  inputs: () => ({ airTemperature: airTemperature(), relativeHumidity: relativeHumidity(), correlation: correlation() }),
  outputs: () => ({
    vapourPressureDeficit: output.quantity(pressure, 'kPa'),
    vapourPressure: output.quantity(absolutePressure, 'kPa'),
    saturationVapourPressure: output.quantity(absolutePressure, 'kPa'),
  }),
  equation: 'D = es(t) (1 - φ)',
  sources: saturationSources,
  example: { airTemperature: '24 °C', relativeHumidity: '65 %' },
  solve: ({ airTemperature, relativeHumidity, correlation }, { note }) => {
    const saturationVapourPressure = saturationAt('airTemperature', airTemperature, correlation, note);
    const vapourPressure = relativeHumidity * saturationVapourPressure;
    return { vapourPressureDeficit: saturationVapourPressure - vapourPressure, vapourPressure, saturationVapourPressure };
  },
});
