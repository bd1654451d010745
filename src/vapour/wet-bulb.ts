import { calculation } from '../calculation/calculation.js';
import { atmosphericPressureField } from '../calculation/common-fields.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { humidityRatio, temperature } from '../units/dimensions.js';
import { humidityRatioFromVapourPressure } from './formulas/moist-air.js';
import { wetBulbFromHumidityRatio } from './formulas/wet-bulb.js';
import { airTemperature, correlation, noteFraction, noteIce, noteSupercooledWick, saturationAt, moistAirSources } from './common.js';

/**
 * Wet bulb temperature of the air: what a wetted, well ventilated thermometer reads, and the lowest that wetting can cool the air to.
 *
 * Takes the temperature (-40 to 60 °C) and relative humidity (0 to 100 %) of the air and the pressure of the atmosphere (50 to 110 kPa; 101.325 kPa
 * unless given). The thermodynamic wet bulb, from the heat balance. Below 0 °C the wick is taken as iced, but as liquid (with a note) in air that is
 * saturated over ice, near 100 %, and by FAO-56, which has no equation over ice.
 * @throws InputError for input outside these limits.
 * @example
 * wetBulb({ airTemperature: '25 °C', relativeHumidity: '60 %' }).wetBulbTemperature.in('°C') // => 19.471
 */
export const wetBulb = /* @__PURE__ */ calculation({
  id: 'wetBulb',
  title: 'Wet bulb temperature',
  inputs: () => ({ airTemperature: airTemperature(), relativeHumidity: field.share(), atmosphericPressure: atmosphericPressureField(), correlation: correlation() }),
  outputs: () => ({
    wetBulbTemperature: output.quantity(temperature, '°C'),
    wick: output.choice(['water', 'ice']),
    convergence: output.group({ humidityRatioResidual: output.quantity(humidityRatio, 'g/kg'), steps: output.number() }),
  }),
  equation: 'W = [(2501 - 2.326 tw) Ws(tw) - 1.006 (t - tw)]/(2501 + 1.86 t - 4.186 tw); iced: W = [(2830 - 0.24 tw) Ws(tw) - 1.006 (t - tw)]/(2830 + 1.86 t - 2.1 tw)',
  sources: moistAirSources,
  example: { airTemperature: '30 °C', relativeHumidity: '45 %' },
  solve: ({ airTemperature, relativeHumidity, atmosphericPressure, correlation }, { note }) => {
    const vapourPressure = relativeHumidity * saturationAt('airTemperature', airTemperature, correlation, note);
    noteFraction('relativeHumidity', relativeHumidity, note);
    const humidityRatio = humidityRatioFromVapourPressure(vapourPressure, atmosphericPressure);
    const { value, wick, residual, steps } = wetBulbFromHumidityRatio(airTemperature, humidityRatio, atmosphericPressure, correlation);
    noteSupercooledWick(value, wick, note);
    if (wick === 'ice') noteIce(correlation, 'wetBulbTemperature', value, note);
    return { wetBulbTemperature: value, wick, convergence: { humidityRatioResidual: residual, steps } };
  },
});
