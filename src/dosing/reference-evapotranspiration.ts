import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { clearSkyRadiationFao56 } from '../light/formulas/global-radiation.js';
import { daylightFromSunsetAngle, extraterrestrialRadiationFao56, solarDeclinationFao56, sunsetHourAngle } from '../light/formulas/sun.js';
import { radiationBySunshine, radiationBySwing, refuseMoreThanSun } from '../light/radiation-at-ground.js';
import { dayOfYearField, elevationField, latitudeField, radians, radiationSumField, refusePolar } from '../light/site-fields.js';
import { evaporationRate, radiationSum, time } from '../units/dimensions.js';
import { kilopascals } from '../units/in-words.js';
import { dailySaturationPressureFao56, psychrometricConstantFao56 } from '../water/air-fao56.js';
import { pressureAtAltitudeFao56 } from '../water/altitude.js';
import { saturationPressureSlopeFao56 } from '../water/saturation/magnus.js';
import { airAboveCropOutputs } from './air-above-crop.js';
import { netLongwaveFao56, netShortwaveFao56 } from './formulas/net-radiation.js';
import { referenceEvapotranspirationFao56, referenceEvapotranspirationHargreaves1985 } from './formulas/reference-evapotranspiration.js';
import { airOfDayFields, refuseOddAir, vapourPressureOfDay } from './humidity-of-day.js';
import { withoutDew } from './without-dew.js';
import { windAt2m, windFields } from './wind.js';

/**
 * Evapotranspiration of well-watered grass outdoors over a day (FAO-56 Penman-Monteith), with every step on the way: what crops outdoors are reckoned from.
 *
 * Takes latitude (positive north, between the polar circles), day of the year, elevation (0 m unless given), highest and lowest temperature; the
 * humidity as highest and lowest, highest alone, mean, dew point or vapour pressure; radiation at the ground or hours of sunshine; wind, with the
 * height of its meter (2 m unless given); heat that goes into the soil (none unless given; 0.07 MJ/m² for each kelvin from the month before to the month
 * after) and the reflected part of the radiation (23 %). What is not known of humidity, sun and wind is taken as FAO-56 does without, and notes say how.
 * The result by temperatures alone (Hargreaves) stands beside it.
 * @throws InputError for input outside these limits, extremes that are swapped, humidity above saturation, more sunshine or radiation than the day has.
 * @example
 * referenceEvapotranspiration({ latitude: '45.7166667 °', dayOfYear: 196, elevation: '200 m', highestAirTemperature: '26.6 °C', lowestAirTemperature: '14.8 °C' }).referenceEvapotranspiration.in('mm/d') // => 4.56
 */
export const referenceEvapotranspiration = /* @__PURE__ */ calculation({
  id: 'referenceEvapotranspiration',
  title: 'Reference evapotranspiration of a day outdoors',
  inputs: () => ({
    latitude: latitudeField(),
    dayOfYear: dayOfYearField(),
    elevation: field.withDefault(elevationField(), '0 m'),
    ...airOfDayFields(),
    radiationSum: field.optional(radiationSumField()),
    sunshine: field.optional(field.quantity(time, { limits: ['0 h', '24 h'] })),
    rangeCoefficient: field.withDefault(field.number({ limits: [0.1, 0.25] }), 0.16),
    ...windFields(),
    soilHeat: field.withDefault(field.quantity(radiationSum, { limits: ['-5 MJ/m²', '5 MJ/m²'] }), '0 MJ/m²'),
    albedo: field.withDefault(field.share({ limits: [0.05, 0.9] }), 0.23),
  }),
  outputs: () => ({
    ...airAboveCropOutputs(),
    extraterrestrialRadiation: output.quantity(radiationSum, 'MJ/m²'),
    daylight: output.quantity(time, 'h'),
    radiationSum: output.quantity(radiationSum, 'MJ/m²'),
    clearSkyRadiation: output.quantity(radiationSum, 'MJ/m²'),
    netShortwave: output.quantity(radiationSum, 'MJ/m²'),
    netLongwave: output.quantity(radiationSum, 'MJ/m²'),
    netRadiation: output.quantity(radiationSum, 'MJ/m²'),
    referenceEvapotranspiration: output.quantity(evaporationRate, 'mm/d'),
    hargreavesEvapotranspiration: output.quantity(evaporationRate, 'mm/d'),
  }),
  equation: 'ETo = [0.408 Δ (Rn − G) + γ 900/(t + 273) u2 (es − ea)]/[Δ + γ (1 + 0.34 u2)] mm/d',
  sources: ['fao56'],
  example: {
    latitude: '48 °', dayOfYear: 172, elevation: '300 m', highestAirTemperature: '27 °C', lowestAirTemperature: '14 °C', highestRelativeHumidity: '92 %', lowestRelativeHumidity: '48 %',
    sunshine: '9.5 h', windSpeed: '2.6 m/s', windHeight: '10 m',
  },
  check: (seen, problem) => {
    refusePolar(seen.latitude, problem);
    refuseOddAir(seen, problem);
    if (seen.radiationSum !== undefined && seen.sunshine !== undefined) problem(['sunshine'], 'either the radiation or the hours of sunshine', 'both');
  },
  solve: (seen, { note, refuse }) => {
    const { dayOfYear, elevation, highestAirTemperature: highest, lowestAirTemperature: lowest, sunshine, rangeCoefficient, soilHeat, albedo } = seen;
    const phi = radians(seen.latitude);
    const extraterrestrialRadiation = extraterrestrialRadiationFao56(phi, dayOfYear);
    const clearSkyRadiation = clearSkyRadiationFao56(extraterrestrialRadiation, elevation);
    const daylight = daylightFromSunsetAngle(sunsetHourAngle(phi, solarDeclinationFao56(dayOfYear)));
    const radiationAtGround = (): number => {
      if (sunshine !== undefined) return radiationBySunshine(extraterrestrialRadiation, sunshine, daylight, refuse);
      if (seen.radiationSum === undefined) {
        note('caution', 'no-radiation', 'radiationSum', 'No sun is given: the radiation is guessed from the swing of the temperature, which is a guess for weeks rather than days.');
        return radiationBySwing(extraterrestrialRadiation, clearSkyRadiation, highest - lowest, rangeCoefficient, note);
      }
      refuseMoreThanSun(seen.radiationSum, extraterrestrialRadiation, refuse);
      if (seen.radiationSum > 1.05 * clearSkyRadiation) note('caution', 'above-clear-sky', 'radiationSum', 'More radiation than a clear sky lets through: the sensor reads high, or day or place are not these.');
      return seen.radiationSum;
    };
    const saturationVapourPressure = dailySaturationPressureFao56(highest, lowest);
    const stated = vapourPressureOfDay(seen, note);
    if (stated > saturationVapourPressure && (seen.dewPoint !== undefined || seen.vapourPressure !== undefined)) {
      refuse(seen.dewPoint === undefined ? 'vapourPressure' : 'dewPoint', `a humidity up to saturation, ${Math.floor(saturationVapourPressure) / 1000} kPa`, kilopascals(stated), 'are temperatures and humidity of the same day?');
    }
    const vapourPressure = Math.min(stated, saturationVapourPressure);
    const vapourPressureDeficit = saturationVapourPressure - vapourPressure;
    const radiation = radiationAtGround();
    const netShortwave = netShortwaveFao56(radiation, albedo);
    const netLongwave = netLongwaveFao56(highest, lowest, vapourPressure, radiation / clearSkyRadiation);
    const netRadiation = netShortwave - netLongwave;
    const windSpeedAt2m = windAt2m(seen, note);
    const atmosphericPressure = pressureAtAltitudeFao56(elevation);
    const temperature = (highest + lowest) / 2;
    const air = { temperature, deficit: vapourPressureDeficit, pressure: atmosphericPressure, windSpeed: windSpeedAt2m };
    return {
      windSpeedAt2m,
      atmosphericPressure,
      saturationSlope: saturationPressureSlopeFao56(temperature),
      psychrometricConstant: psychrometricConstantFao56(atmosphericPressure),
      saturationVapourPressure,
      vapourPressure,
      vapourPressureDeficit,
      extraterrestrialRadiation,
      daylight,
      radiationSum: radiation,
      clearSkyRadiation,
      netShortwave,
      netLongwave,
      netRadiation,
      referenceEvapotranspiration: withoutDew(referenceEvapotranspirationFao56(air, netRadiation, soilHeat), note),
      hargreavesEvapotranspiration: Math.max(0, referenceEvapotranspirationHargreaves1985(highest, lowest, extraterrestrialRadiation)),
    };
  },
});
