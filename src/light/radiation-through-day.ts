import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { irradiance, radiationSum, time } from '../units/dimensions.js';
import { irradianceThroughDay } from './formulas/day-course.js';
import { daylightFromSunsetAngle, extraterrestrialRadiationFao56, solarDeclinationFao56, sunsetHourAngle } from './formulas/sun.js';
import { refuseMoreThanSun } from './radiation-at-ground.js';
import { dayOfYearField, latitudeField, radians, radiationSumField, refusePolar, solarNoonField } from './site-fields.js';

/**
 * How the radiation of a day is spread over its hours, where only the day's sum is known: for irrigation by radiation, barrels in the sun, plots.
 *
 * Takes latitude, day of the year, the day's sum outdoors (0 to 45 MJ/m²), the time by the clock at which the sun stands highest (12 h unless given)
 * and the length of the steps (1 h unless given; 1 min to 6 h, a whole number of them in a day). Gives for each step its middle, the mean radiation
 * in it and the sum from midnight to its end, which reaches the day's sum exactly, and the times of sunrise and sunset by the clock: where the sun
 * is up at its midnight, sunset comes before sunrise. For an evenly clouded or clear sky: clouds of the afternoon do not show.
 * @throws InputError for input outside these limits, a site beyond a polar circle, and more radiation than arrives outside the atmosphere.
 * @example
 * radiationThroughDay({ latitude: '48 °', dayOfYear: 110, radiationSum: '18 MJ/m²' }).globalRadiation.in('W/m²')[12] // => 576.874
 */
export const radiationThroughDay = /* @__PURE__ */ calculation({
  id: 'radiationThroughDay',
  title: 'Radiation through a day',
  inputs: () => ({
    latitude: latitudeField(),
    dayOfYear: dayOfYearField(),
    radiationSum: radiationSumField(),
    solarNoon: solarNoonField(),
    stepLength: field.withDefault(field.quantity(time, { limits: ['1 min', '6 h'] }), '1 h'),
  }),
  outputs: () => ({
    readingTime: output.column(time, 'h'),
    globalRadiation: output.column(irradiance, 'W/m²'),
    radiationSoFar: output.column(radiationSum, 'MJ/m²'),
    sunrise: output.quantity(time, 'h'),
    sunset: output.quantity(time, 'h'),
  }),
  equation: 'G(t) = Rs Ra(t)/Ra, Ra(t) by the part of the day that a step is',
  sources: ['fao56'],
  example: { latitude: '48 °', dayOfYear: 110, radiationSum: '18 MJ/m²', solarNoon: '12.2 h' },
  check: ({ latitude, stepLength }, problem) => {
    refusePolar(latitude, problem);
    const steps = 86400 / stepLength;
    if (Math.abs(steps - Math.round(steps)) > 1e-9 * steps) problem(['stepLength'], 'a part of a day that goes into it a whole number of times', `${stepLength / 60} min`, "such as '15 min' or '1 h'");
  },
  solve: ({ latitude, dayOfYear, radiationSum, solarNoon, stepLength }, { refuse }) => {
    const phi = radians(latitude);
    refuseMoreThanSun(radiationSum, extraterrestrialRadiationFao56(phi, dayOfYear), refuse);
    const steps = Math.round(86400 / stepLength);
    const globalRadiation = irradianceThroughDay(phi, dayOfYear, solarNoon, radiationSum, steps);
    let sum = 0;
    const radiationSoFar = globalRadiation.map((mean) => Math.min(radiationSum, (sum += mean * 86400 / steps)));
    radiationSoFar[steps - 1] = radiationSum;
    const half = daylightFromSunsetAngle(sunsetHourAngle(phi, solarDeclinationFao56(dayOfYear))) / 2;
    return {
      readingTime: Float64Array.from({ length: steps }, (_, i) => (i + 0.5) * 86400 / steps),
      globalRadiation,
      radiationSoFar,
      sunrise: (solarNoon - half + 86400) % 86400,
      sunset: (solarNoon + half) % 86400,
    };
  },
});
