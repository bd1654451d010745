import { calculation } from '../calculation/calculation.js';
import * as output from '../calculation/output.js';
import { absolutePressure, pressure } from '../units/dimensions.js';
import { airTemperature, correlation, noteFraction, relativeHumidity, saturationAt, saturationSources } from './common.js';

/**
 * Vapour pressure deficit from leaf to air: what drives water out of leaves that are warmer or cooler than the air.
 *
 * Takes temperature and relative humidity of the air and the temperature of the leaf (both -40 to 60 °C). Below zero where the leaf is
 * colder than the dew point: it gets wet, and a note says so.
 * @throws InputError for input outside these limits.
 * @example
 * leafVapourPressureDeficit({ airTemperature: '22 °C', relativeHumidity: '80 %', leafTemperature: '20.5 °C' }).leafVapourPressureDeficit.in('kPa') // => 0.29648
 */
export const leafVapourPressureDeficit = /* @__PURE__ */ calculation({
  id: 'leafVapourPressureDeficit',
  title: 'Vapour pressure deficit from leaf to air',
  inputs: () => ({ airTemperature: airTemperature(), relativeHumidity: relativeHumidity(), leafTemperature: airTemperature(), correlation: correlation() }),
  outputs: () => ({
    leafVapourPressureDeficit: output.quantity(pressure, 'kPa'),
    vapourPressureDeficit: output.quantity(pressure, 'kPa'),
    vapourPressure: output.quantity(absolutePressure, 'kPa'),
  }),
  equation: 'D = es(t leaf) - φ es(t air)',
  sources: saturationSources,
  example: { airTemperature: '26 °C', relativeHumidity: '70 %', leafTemperature: '24.5 °C' },
  solve: ({ airTemperature, relativeHumidity, leafTemperature, correlation }, { note }) => {
    const saturation = saturationAt('airTemperature', airTemperature, correlation, note);
    const vapourPressure = relativeHumidity * saturation;
    noteFraction('relativeHumidity', relativeHumidity, note);
    const leafVapourPressureDeficit = saturationAt('leafTemperature', leafTemperature, correlation, note) - vapourPressure;
    if (leafVapourPressureDeficit < 0) note('caution', 'dew-on-leaf', 'leafTemperature', 'The leaf is colder than the dew point of the air: it gets wet.');
    return { leafVapourPressureDeficit, vapourPressureDeficit: saturation - vapourPressure, vapourPressure };
  },
});
