import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { absolutePressure, pressure } from '../units/dimensions.js';
import { dailySaturationPressureFao56, vapourPressureOfDayFao56 } from '../water/air-fao56.js';
import { saturationEquationsOverWater } from '../water/saturation/over-water.js';
import { airTemperature, noteEquation, noteFraction, relativeHumidity } from './common.js';

/**
 * Mean vapour pressure and deficit of a day from its extremes, as FAO-56 reckons them for evapotranspiration.
 *
 * Takes the highest and lowest air temperature (-40 to 60 °C) and the humidities that are known (0 to 102 %): highest and lowest, or the highest
 * alone, or the mean. The best that they allow is taken, and a note says which equation it was. Without any, the air is taken as
 * saturated at the lowest temperature.
 * @throws InputError for input outside these limits, a lowest above the highest, and a lowest humidity alone.
 * @example
 * dailyVapourPressure({ highestAirTemperature: '25 °C', lowestAirTemperature: '18 °C', highestRelativeHumidity: '82 %', lowestRelativeHumidity: '54 %' }).vapourPressureDeficit.in('kPa') // => 0.91
 */
export const dailyVapourPressure = /* @__PURE__ */ calculation({
  id: 'dailyVapourPressure',
  title: 'Mean vapour pressure of a day',
  inputs: () => ({
    highestAirTemperature: airTemperature(),
    lowestAirTemperature: airTemperature(),
    highestRelativeHumidity: field.optional(relativeHumidity()),
    lowestRelativeHumidity: field.optional(relativeHumidity()),
    meanRelativeHumidity: field.optional(relativeHumidity()),
  }),
  outputs: () => ({
    saturationVapourPressure: output.quantity(absolutePressure, 'kPa'),
    vapourPressure: output.quantity(absolutePressure, 'kPa'),
    vapourPressureDeficit: output.quantity(pressure, 'kPa'),
  }),
  equation: 'es = [e(tmax) + e(tmin)]/2; ea = [e(tmin) φmax + e(tmax) φmin]/2, or e(tmin) φmax, or φmean es, or e(tmin); D = es - ea',
  sources: ['fao56'],
  example: { highestAirTemperature: '27 °C', lowestAirTemperature: '14 °C', highestRelativeHumidity: '92 %', lowestRelativeHumidity: '48 %' },
  check: ({ highestAirTemperature, lowestAirTemperature, highestRelativeHumidity, lowestRelativeHumidity, meanRelativeHumidity }, problem) => {
    if (lowestAirTemperature > highestAirTemperature) problem(['lowestAirTemperature'], 'at most the highest', 'one above it', 'are the two swapped?');
    if (lowestRelativeHumidity === undefined) return;
    if (highestRelativeHumidity === undefined) {
      if (meanRelativeHumidity === undefined) problem(['highestRelativeHumidity'], 'a share, to go with the lowest', 'nothing');
    } else if (lowestRelativeHumidity > highestRelativeHumidity) problem(['lowestRelativeHumidity'], 'at most the highest', 'one above it', 'are the two swapped?');
  },
  solve: (seen, { note }) => {
    const { highestAirTemperature: highest, lowestAirTemperature: lowest } = seen;
    const fao56 = saturationEquationsOverWater['FAO-56'];
    noteEquation(fao56, 'liquid water', 'highestAirTemperature', highest, highest, note);
    noteEquation(fao56, 'liquid water', 'lowestAirTemperature', lowest, lowest, note);
    for (const name of ['highestRelativeHumidity', 'lowestRelativeHumidity', 'meanRelativeHumidity'] as const) noteFraction(name, seen[name] ?? NaN, note);
    const { equation, pressure: vapourPressure } = vapourPressureOfDayFao56(seen);
    if (equation === 48) note('caution', 'no-humidity', 'vapourPressure', 'No humidity is given: the air is taken as saturated at the lowest temperature, which is too moist for dry places.');
    note('info', 'vapour-pressure-equation', 'vapourPressure', `Vapour pressure by equation ${equation} of FAO-56.`);
    const saturationVapourPressure = dailySaturationPressureFao56(highest, lowest);
    return { saturationVapourPressure, vapourPressure, vapourPressureDeficit: saturationVapourPressure - vapourPressure };
  },
});
