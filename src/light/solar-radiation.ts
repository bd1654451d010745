import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { radiationSum, temperature, time } from '../units/dimensions.js';
import { clearSkyRadiationFao56 } from './formulas/global-radiation.js';
import { daylightFromSunsetAngle, extraterrestrialRadiationFao56, inverseRelativeDistanceFao56, solarDeclinationFao56, sunsetHourAngle } from './formulas/sun.js';
import { radiationBySunshine, radiationBySwing } from './radiation-at-ground.js';
import { dayOfYearField, elevationField, latitudeField, radians, refusePolar } from './site-fields.js';

/**
 * What the sun can bring to a place on a day, and what it brought, from hours of sunshine or from the swing of the temperature.
 *
 * Takes latitude (positive north, between the polar circles), day of the year (1 to 366) and elevation (0 m unless given); and, where radiation at
 * the ground is wanted, either the hours of sunshine, or the highest and lowest temperature of the day with the coefficient of the place (0.16 inland,
 * 0.19 near a coast). Gives radiation outside the atmosphere and under a clear sky, length of day, and radiation at the ground where it can be told,
 * each for a day on a horizontal surface outdoors; the cover of a house takes 30 to 45 % of it. The angles are in radians.
 * @throws InputError for input outside these limits, a site beyond a polar circle, more sunshine than day, and two ways to tell the radiation.
 * @example
 * solarRadiation({ latitude: '-22.9 °', dayOfYear: 135, sunshine: '7.09677 h' }).radiationSum.in('MJ/m²') // => 14.4561
 */
export const solarRadiation = /* @__PURE__ */ calculation({
  id: 'solarRadiation',
  title: 'Solar radiation of a day',
  inputs: () => ({
    latitude: latitudeField(),
    dayOfYear: dayOfYearField(),
    elevation: field.withDefault(elevationField(), '0 m'),
    sunshine: field.optional(field.quantity(time, { limits: ['0 h', '24 h'] })),
    highestAirTemperature: field.optional(field.quantity(temperature, { limits: ['-40 °C', '60 °C'] })),
    lowestAirTemperature: field.optional(field.quantity(temperature, { limits: ['-40 °C', '60 °C'] })),
    rangeCoefficient: field.withDefault(field.number({ limits: [0.1, 0.25] }), 0.16),
  }),
  outputs: () => ({
    relativeDistance: output.number(),
    solarDeclination: output.number(),
    sunsetAngle: output.number(),
    daylight: output.quantity(time, 'h'),
    extraterrestrialRadiation: output.quantity(radiationSum, 'MJ/m²'),
    clearSkyRadiation: output.quantity(radiationSum, 'MJ/m²'),
    radiationSum: output.optional(output.quantity(radiationSum, 'MJ/m²')),
  }),
  equation: 'Ra = (24·60/π) 0.0820 dr [ωs sin φ sin δ + cos φ cos δ sin ωs] MJ/m²; N = 24 h ωs/π; Rso = (0.75 + 2e-5 z) Ra; Rs = (0.25 + 0.50 n/N) Ra or kRs √(tmax − tmin) Ra',
  sources: ['fao56'],
  example: { latitude: '48 °', dayOfYear: 110, elevation: '300 m', sunshine: '7.5 h' },
  check: ({ latitude, sunshine, highestAirTemperature, lowestAirTemperature }, problem) => {
    refusePolar(latitude, problem);
    if ((highestAirTemperature === undefined) !== (lowestAirTemperature === undefined)) {
      problem([highestAirTemperature === undefined ? 'highestAirTemperature' : 'lowestAirTemperature'], 'both the highest and the lowest temperature', 'one of them');
    } else if (lowestAirTemperature! > highestAirTemperature!) problem(['lowestAirTemperature'], 'at most the highest', 'one above it', 'are the two swapped?');
    if (sunshine !== undefined && highestAirTemperature !== undefined) problem(['sunshine'], 'either hours of sunshine or temperatures', 'both');
  },
  solve: ({ latitude, dayOfYear, elevation, sunshine, highestAirTemperature, lowestAirTemperature, rangeCoefficient }, { note, refuse }) => {
    const solarDeclination = solarDeclinationFao56(dayOfYear);
    const sunsetAngle = sunsetHourAngle(radians(latitude), solarDeclination);
    const daylight = daylightFromSunsetAngle(sunsetAngle);
    const extraterrestrialRadiation = extraterrestrialRadiationFao56(radians(latitude), dayOfYear);
    const clearSkyRadiation = clearSkyRadiationFao56(extraterrestrialRadiation, elevation);
    const atGround = (): number | undefined => {
      if (sunshine !== undefined) return radiationBySunshine(extraterrestrialRadiation, sunshine, daylight, refuse);
      if (highestAirTemperature === undefined) return undefined;
      return radiationBySwing(extraterrestrialRadiation, clearSkyRadiation, highestAirTemperature - lowestAirTemperature!, rangeCoefficient, note);
    };
    return {
      relativeDistance: inverseRelativeDistanceFao56(dayOfYear), solarDeclination, sunsetAngle, daylight, extraterrestrialRadiation, clearSkyRadiation, radiationSum: atGround(),
    };
  },
});
