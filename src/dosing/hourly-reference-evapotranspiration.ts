import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { clearSkyRadiationFao56 } from '../light/formulas/global-radiation.js';
import { extraterrestrialRadiationBetween, hourAngle, solarDeclinationFao56, solarNoonFao56, sunsetHourAngle } from '../light/formulas/sun.js';
import { dayOfYearField, elevationField, latitudeField, radians, refusePolar } from '../light/site-fields.js';
import { angle, evaporationRate, irradiance, radiationSum, time } from '../units/dimensions.js';
import { percent } from '../units/in-words.js';
import { writeNumber } from '../units/write.js';
import { psychrometricConstantFao56 } from '../water/air-fao56.js';
import { pressureAtAltitudeFao56 } from '../water/altitude.js';
import { saturationPressureFao56, saturationPressureSlopeFao56 } from '../water/saturation/magnus.js';
import { airAboveCropOutputs } from './air-above-crop.js';
import { hourlyNetLongwaveFao56, hourlySoilHeatFao56, netShortwaveFao56 } from './formulas/net-radiation.js';
import { hourlyReferenceEvapotranspirationFao56 } from './formulas/reference-evapotranspiration.js';
import { airTemperatureField, relativeHumidityField } from './humidity-of-day.js';
import { withoutDew } from './without-dew.js';
import { windAt2m, windFields } from './wind.js';

/** Radiation at night or in twilight, in W/m2, that is still taken for a sensor's offset. */
const offset = 20;

/** Share of the clear sky's radiation taken for the night where nothing is said, the upper end for moist climates. */
const relativeAtNight = 0.6;

/**
 * Evapotranspiration of well-watered grass outdoors over an hour (FAO-56 Penman-Monteith), with every step on the way.
 *
 * Takes latitude, day of the year, elevation (0 m unless given) and the middle of the hour by the clock, without daylight-saving time; longitude (positive
 * east) and the hours that the clock is ahead of UTC (left out, the clock shows solar time); mean temperature, humidity, radiation (W/m²) and wind of the
 * hour. At night the sky is taken as clear as the radiation 2 to 3 h before sunset was, over that of a clear sky: 0.4 to 0.6 in moist, 0.7 to 0.8 in dry
 * climates (0.6 unless given).
 * @throws InputError for input outside these limits, longitude without the clock's zone, and more radiation than the hour has.
 * @example
 * hourlyReferenceEvapotranspiration({ latitude: '16.2167 °', dayOfYear: 274, elevation: '8 m', middleOfHour: '2.5 h', airTemperature: '28 °C', relativeHumidity: '90 %', globalRadiation: '0 W/m²', windSpeed: '1.9 m/s', relativeRadiation: 0.8 }).netRadiation.in('MJ/m²') // => -0.1
 */
export const hourlyReferenceEvapotranspiration = /* @__PURE__ */ calculation({
  id: 'hourlyReferenceEvapotranspiration',
  title: 'Reference evapotranspiration of an hour outdoors',
  inputs: () => ({
    latitude: latitudeField(),
    longitude: field.optional(field.quantity(angle, { limits: ['-180 °', '180 °'] })),
    hoursAheadOfUtc: field.optional(field.number({ limits: [-12, 14] })),
    dayOfYear: dayOfYearField(),
    middleOfHour: field.quantity(time, { limits: ['0 h', '24 h'] }),
    elevation: field.withDefault(elevationField(), '0 m'),
    airTemperature: airTemperatureField(),
    relativeHumidity: relativeHumidityField(),
    globalRadiation: field.quantity(irradiance, { limits: ['0 W/m²', '1500 W/m²'] }),
    ...windFields(),
    relativeRadiation: field.optional(field.number({ limits: [0.3, 1] })),
  }),
  outputs: () => ({
    ...airAboveCropOutputs(),
    extraterrestrialRadiation: output.quantity(radiationSum, 'MJ/m²'),
    clearSkyRadiation: output.quantity(radiationSum, 'MJ/m²'),
    netShortwave: output.quantity(radiationSum, 'MJ/m²'),
    netLongwave: output.quantity(radiationSum, 'MJ/m²'),
    netRadiation: output.quantity(radiationSum, 'MJ/m²'),
    soilHeat: output.quantity(radiationSum, 'MJ/m²'),
    referenceEvapotranspiration: output.quantity(evaporationRate, 'mm/h'),
  }),
  equation: 'ETo = [0.408 Δ (Rn − G) + γ 37/(t + 273) u2 (es − ea)]/[Δ + γ (1 + 0.34 u2)] mm/h; G = 0.1 Rn by day, 0.5 Rn by night',
  sources: ['fao56'],
  example: {
    latitude: '48 °', longitude: '11 °', hoursAheadOfUtc: 1, dayOfYear: 172, middleOfHour: '13.5 h', elevation: '300 m', airTemperature: '26 °C', relativeHumidity: '55 %',
    globalRadiation: '720 W/m²', windSpeed: '2.2 m/s',
  },
  check: ({ latitude, longitude, hoursAheadOfUtc }, problem) => {
    refusePolar(latitude, problem);
    if ((longitude === undefined) !== (hoursAheadOfUtc === undefined)) problem([longitude === undefined ? 'longitude' : 'hoursAheadOfUtc'], 'longitude and hoursAheadOfUtc, or neither', 'one of them');
  },
  solve: (seen, { note, refuse }) => {
    const { longitude, hoursAheadOfUtc, dayOfYear, middleOfHour, elevation, airTemperature, globalRadiation } = seen;
    const phi = radians(seen.latitude);
    const noon = longitude === undefined ? 43200 : solarNoonFao56(longitude, 15 * hoursAheadOfUtc!, dayOfYear);
    const extraterrestrialRadiation = extraterrestrialRadiationBetween(phi, dayOfYear, hourAngle(middleOfHour - 1800, noon), hourAngle(middleOfHour + 1800, noon));
    if (globalRadiation > extraterrestrialRadiation / 3600 + offset) {
      refuse('globalRadiation', `at most ${Math.round(extraterrestrialRadiation / 3600)} W/m², what arrives outside the atmosphere in this hour`, `${writeNumber(globalRadiation)} W/m²`,
        'is the clock on daylight-saving time, the hour named by its end, or the longitude counted to the west?');
    }
    const isDay = Math.cos(hourAngle(middleOfHour, noon)) > Math.cos(sunsetHourAngle(phi, solarDeclinationFao56(dayOfYear)));
    const clearSkyRadiation = clearSkyRadiationFao56(extraterrestrialRadiation, elevation);
    const relativeRadiation = (): number => {
      if (seen.relativeRadiation !== undefined) return seen.relativeRadiation;
      if (isDay) return globalRadiation * 3600 / clearSkyRadiation;
      note('info', 'sky-at-night', 'relativeRadiation', `The sky of the night is taken as letting ${percent(relativeAtNight)} through; give relativeRadiation, the radiation 2 to 3 h before sunset over that of a clear sky.`);
      return relativeAtNight;
    };
    const saturationVapourPressure = saturationPressureFao56(airTemperature);
    const vapourPressure = Math.min(1, seen.relativeHumidity) * saturationVapourPressure;
    const vapourPressureDeficit = saturationVapourPressure - vapourPressure;
    const netShortwave = netShortwaveFao56(globalRadiation * 3600);
    const netLongwave = hourlyNetLongwaveFao56(airTemperature, vapourPressure, relativeRadiation());
    const netRadiation = netShortwave - netLongwave;
    const soilHeat = hourlySoilHeatFao56(netRadiation, isDay);
    const windSpeedAt2m = windAt2m(seen, note);
    const atmosphericPressure = pressureAtAltitudeFao56(elevation);
    const air = { temperature: airTemperature, deficit: vapourPressureDeficit, pressure: atmosphericPressure, windSpeed: windSpeedAt2m };
    return {
      windSpeedAt2m,
      atmosphericPressure,
      saturationSlope: saturationPressureSlopeFao56(airTemperature),
      psychrometricConstant: psychrometricConstantFao56(atmosphericPressure),
      saturationVapourPressure,
      vapourPressure,
      vapourPressureDeficit,
      extraterrestrialRadiation,
      clearSkyRadiation,
      netShortwave,
      netLongwave,
      netRadiation,
      soilHeat,
      referenceEvapotranspiration: withoutDew(hourlyReferenceEvapotranspirationFao56(air, netRadiation, soilHeat), note),
    };
  },
});
