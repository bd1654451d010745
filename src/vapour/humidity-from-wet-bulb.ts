import { calculation } from '../calculation/calculation.js';
import { atmosphericPressureField } from '../calculation/common-fields.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { absolutePressure, pressure, share, temperature } from '../units/dimensions.js';
import { zeroCelsius } from '../water/constants.js';
import { hasIceEquation } from '../water/saturation/over-ice.js';
import { vapourPressureFromHumidityRatio } from './formulas/moist-air.js';
import { psychrometerCoefficientsFao56, vapourPressureFromPsychrometer } from './formulas/psychrometer.js';
import { humidityRatioFromWetBulb } from './formulas/wet-bulb.js';
import { airTemperature, correlation, noteIce, noteSupercooledWick, saturationAt, moistAirSources } from './common.js';

/**
 * Humidity of the air from a dry and a wet thermometer.
 *
 * Takes both temperatures (-40 to 60 °C, the wet one down to -45 °C), the pressure of the atmosphere (50 to 110 kPa; 101.325 kPa unless given)
 * and the kind of psychrometer: thermodynamic (the heat balance of wetBulb), aspirated (about 5 m/s over the wick), naturally ventilated (about 1
 * m/s) or indoor (still air). Below 0 °C the thermodynamic wick is taken as iced, but not by FAO-56; those of the others as liquid, with a note.
 * @throws InputError for input outside these limits, for a wet bulb above the air temperature, and for one below that of perfectly dry air.
 * @example
 * humidityFromWetBulb({
 *   airTemperature: '25.6 °C', wetBulbTemperature: '19.5 °C', atmosphericPressure: '87.9 kPa', psychrometer: 'aspirated', correlation: 'FAO-56',
 * }).vapourPressure.in('kPa') // => 1.91
 */
export const humidityFromWetBulb = /* @__PURE__ */ calculation({
  id: 'humidityFromWetBulb',
  title: 'Humidity from dry and wet bulb',
  inputs: () => ({
    airTemperature: airTemperature(),
    wetBulbTemperature: field.quantity(temperature, { limits: ['-45 °C', '60 °C'] }),
    atmosphericPressure: atmosphericPressureField(),
    psychrometer: field.withDefault(field.choice(['thermodynamic', 'aspirated', 'naturally ventilated', 'indoor']), 'thermodynamic'),
    correlation: correlation(),
  }),
  outputs: () => ({
    relativeHumidity: output.quantity(share, '%'),
    vapourPressure: output.quantity(absolutePressure, 'kPa'),
    vapourPressureDeficit: output.quantity(pressure, 'kPa'),
  }),
  equation: 'e = es(tw) - a P (t - tw), a = 0.000662, 0.000800 or 0.001200 1/K; thermodynamic: as wetBulb',
  sources: moistAirSources,
  example: { airTemperature: '28 °C', wetBulbTemperature: '21 °C', psychrometer: 'naturally ventilated' },
  check: ({ airTemperature, wetBulbTemperature }, problem) => {
    if (wetBulbTemperature > airTemperature) problem(['wetBulbTemperature'], 'at most the air temperature', 'one above it', 'are the two swapped?');
  },
  solve: ({ airTemperature, wetBulbTemperature, atmosphericPressure, psychrometer, correlation }, { note, refuse }) => {
    const saturation = saturationAt('airTemperature', airTemperature, correlation, note);
    const thermodynamic = psychrometer === 'thermodynamic';
    const wick = thermodynamic && wetBulbTemperature < zeroCelsius && hasIceEquation(correlation) ? 'ice' : 'water';
    noteSupercooledWick(wetBulbTemperature, wick, note);
    if (wick === 'ice') noteIce(correlation, 'wetBulbTemperature', wetBulbTemperature, note);
    const found = thermodynamic
      ? vapourPressureFromHumidityRatio(humidityRatioFromWetBulb(airTemperature, wetBulbTemperature, atmosphericPressure, correlation, wick), atmosphericPressure)
      : vapourPressureFromPsychrometer(airTemperature, wetBulbTemperature, atmosphericPressure, psychrometerCoefficientsFao56[psychrometer], correlation);
    if (found < -0.001) refuse('wetBulbTemperature', 'at least the wet bulb of perfectly dry air', `${Number((wetBulbTemperature - zeroCelsius).toFixed(2))} °C`, 'are the two temperatures, and the pressure, of the same air?');
    const vapourPressure = Math.min(saturation, Math.max(0, found));
    return { relativeHumidity: vapourPressure / saturation, vapourPressure, vapourPressureDeficit: saturation - vapourPressure };
  },
});
