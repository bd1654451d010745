import { calculation } from '../calculation/calculation.js';
import { atmosphericPressureField } from '../calculation/common-fields.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { absoluteHumidity, absolutePressure, density, humidityRatio, pressure, specificEnthalpy, specificVolume, temperature } from '../units/dimensions.js';
import { saturationTemperatureOverWater } from '../water/saturation/temperature.js';
import { airTemperature, correlation, noteFraction, noteIce, noteSupercooledWick, saturationAt, moistAirSources } from './common.js';
import {
  absoluteHumidityFromVapourPressure, humidityRatioFromVapourPressure, moistAirDensity, moistAirEnthalpy, moistAirSpecificVolume, specificHumidityFromHumidityRatio,
} from './formulas/moist-air.js';
import { wetBulbFromHumidityRatio } from './formulas/wet-bulb.js';

/**
 * Everything about the state of the air at once: deficit, dew point, wet bulb, the water it holds and could hold, heat content, density.
 *
 * Takes the temperature (-40 to 60 °C) and relative humidity (0.1 to 100 %) of the air and the pressure of the atmosphere (50 to 110 kPa;
 * 101.325 kPa unless given). Enthalpy and specific volume are per kg of dry air. Air as an ideal gas without enhancement factor: humidity ratios
 * come out 0.3 to 0.6 % and densities up to 0.06 % below those of the real gas. The dew point is over liquid water, in frost too; the
 * wick of the wet bulb as in wetBulb.
 * @throws InputError for input outside these limits.
 * @example
 * airState({ airTemperature: '25 °C', relativeHumidity: '60 %' }).absoluteHumidity.in('g/m³') // => 13.821
 */
export const airState = /* @__PURE__ */ calculation({
  id: 'airState',
  title: 'State of the air',
  inputs: () => ({ airTemperature: airTemperature(), relativeHumidity: field.share({ limits: [0.001, 1] }), atmosphericPressure: atmosphericPressureField(), correlation: correlation() }),
  outputs: () => ({
    vapourPressure: output.quantity(absolutePressure, 'kPa'),
    vapourPressureDeficit: output.quantity(pressure, 'kPa'),
    dewPoint: output.quantity(temperature, '°C'),
    wetBulbTemperature: output.quantity(temperature, '°C'),
    absoluteHumidity: output.quantity(absoluteHumidity, 'g/m³'),
    humidityDeficit: output.quantity(absoluteHumidity, 'g/m³'),
    humidityRatio: output.quantity(humidityRatio, 'g/kg'),
    specificHumidity: output.quantity(humidityRatio, 'g/kg'),
    enthalpy: output.quantity(specificEnthalpy, 'kJ/kg'),
    specificVolume: output.quantity(specificVolume, 'm³/kg'),
    airDensity: output.quantity(density, 'kg/m³'),
    convergence: output.group({
      vapourPressureResidual: output.quantity(absolutePressure, 'Pa'),
      humidityRatioResidual: output.quantity(humidityRatio, 'g/kg'),
      steps: output.number(),
    }),
  }),
  equation: 'e = φ es(t), W = 0.621945 e/(P - e), h = 1.006 t + W (2501 + 1.86 t), v = 287.042 T (1 + 1.607858 W)/P, ρ = (1 + W)/v, AH = e/(461.523 T)',
  sources: moistAirSources,
  example: { airTemperature: '26 °C', relativeHumidity: '65 %', atmosphericPressure: '95 kPa' },
  solve: ({ airTemperature: t, relativeHumidity, atmosphericPressure: P, correlation }, { note }) => {
    const saturation = saturationAt('airTemperature', t, correlation, note);
    const vapourPressure = relativeHumidity * saturation;
    noteFraction('relativeHumidity', relativeHumidity, note);
    const vapourPressureDeficit = saturation - vapourPressure;
    const ratio = humidityRatioFromVapourPressure(vapourPressure, P);
    const dew = saturationTemperatureOverWater(vapourPressure, correlation);
    const wetBulb = wetBulbFromHumidityRatio(t, ratio, P, correlation);
    noteSupercooledWick(wetBulb.value, wetBulb.wick, note);
    if (wetBulb.wick === 'ice') noteIce(correlation, 'wetBulbTemperature', wetBulb.value, note);
    note('info', 'ideal-gas', 'humidityRatio', 'The air is taken as an ideal gas: real air holds 0.3 to 0.6 % more vapour at saturation and by humidity ratio, and is up to 0.06 % denser.');
    return {
      vapourPressure,
      vapourPressureDeficit,
      dewPoint: dew.value,
      wetBulbTemperature: wetBulb.value,
      absoluteHumidity: absoluteHumidityFromVapourPressure(t, vapourPressure),
      humidityDeficit: absoluteHumidityFromVapourPressure(t, vapourPressureDeficit),
      humidityRatio: ratio,
      specificHumidity: specificHumidityFromHumidityRatio(ratio),
      enthalpy: moistAirEnthalpy(t, ratio),
      specificVolume: moistAirSpecificVolume(t, ratio, P),
      airDensity: moistAirDensity(t, ratio, P),
      convergence: { vapourPressureResidual: dew.residual, humidityRatioResidual: wetBulb.residual, steps: dew.steps + wetBulb.steps },
    };
  },
});
