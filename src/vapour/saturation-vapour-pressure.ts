import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { absolutePressure, pressurePerTemperature, temperature } from '../units/dimensions.js';
import { triplePointTemperature } from '../water/constants.js';
import { saturationPressureSlopeFao56 } from '../water/saturation/magnus.js';
import { hasIceEquation, saturationEquationsOverIce } from '../water/saturation/over-ice.js';
import { saturationEquationOverWater } from '../water/saturation/over-water.js';
import { saturationPressureSlope } from '../water/saturation/slope.js';
import { correlation, iceSaturationAt, saturationAt, surfaceSources } from './common.js';

/**
 * Saturation vapour pressure: the most vapour that air of a temperature can hold over liquid water, or over ice, and how fast it rises with
 * temperature.
 *
 * Takes a temperature (-100 to 200 °C), the surface and by name an equation. Over ice only up to 0.01 °C, and not by FAO-56, which has no
 * equation for it; the coefficients of WMO over ice are from memory. Over water below 0.01 °C the water is supercooled.
 * @throws InputError for input outside these limits.
 * @example
 * saturationVapourPressure({ temperature: '24 °C' }).saturationVapourPressure.in('kPa') // => 2.98563
 */
export const saturationVapourPressure = /* @__PURE__ */ calculation({
  id: 'saturationVapourPressure',
  title: 'Saturation vapour pressure',
  inputs: () => ({
    temperature: field.quantity(temperature, { limits: ['-100 °C', '200 °C'] }),
    surface: field.withDefault(field.choice(['water', 'ice']), 'water'),
    correlation: correlation(),
  }),
  outputs: () => ({
    saturationVapourPressure: output.quantity(absolutePressure, 'kPa'),
    saturationSlope: output.quantity(pressurePerTemperature, 'kPa/K'),
  }),
  equation: 'es(t), Δ = des/dt, by the equation chosen',
  sources: surfaceSources,
  example: { temperature: '24 °C' },
  check: ({ temperature, surface, correlation }, problem) => {
    if (surface === 'water') return;
    if (temperature > triplePointTemperature) problem(['temperature'], 'at most 0.01 °C over ice', 'a temperature at which there is none');
    if (!hasIceEquation(correlation)) problem(['correlation'], `one that has an equation over ice: ${Object.keys(saturationEquationsOverIce).join(', ')}`, correlation);
  },
  solve: ({ temperature, surface, correlation }, { note }) => {
    if (surface === 'ice' && hasIceEquation(correlation)) {
      return {
        saturationVapourPressure: iceSaturationAt('temperature', temperature, correlation, note),
        saturationSlope: saturationPressureSlope(temperature, saturationEquationsOverIce[correlation]),
      };
    }
    return {
      saturationVapourPressure: saturationAt('temperature', temperature, correlation, note),
      saturationSlope: correlation === 'FAO-56' ? saturationPressureSlopeFao56(temperature) : saturationPressureSlope(temperature, saturationEquationOverWater(temperature, correlation)),
    };
  },
});
