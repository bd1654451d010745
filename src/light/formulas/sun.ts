/** Solar constant as FAO-56 rounds it (0.0820 MJ m-2 min-1), in W/m2: 82 000/60. */
const solarConstant = 1366 + 2 / 3;

const day = 86400;
const turn = 2 * Math.PI;

/**
 * Inverse relative distance from the earth to the sun on a day of the year: above 1 in January, when the sun is near.
 *
 *   dr = 1 + 0.033 cos(2π J/365)
 *
 * Source: Allen et al. (1998), FAO-56, equation 23.
 *
 * @example inverseRelativeDistanceFao56(246) // => 0.98483, printed 0.985
 */
export function inverseRelativeDistanceFao56(dayOfYear: number): number {
  return 1 + 0.033 * Math.cos(turn * dayOfYear / 365);
}

/**
 * Solar declination in rad on a day of the year: the latitude over which the sun stands at noon.
 *
 *   δ = 0.409 sin(2π J/365 - 1.39)
 *
 * Within 0.018 rad (1°) of the almanac. Source: Allen et al. (1998), FAO-56, equation 24.
 *
 * @example solarDeclinationFao56(246) // => 0.119655, printed 0.120
 */
export function solarDeclinationFao56(dayOfYear: number): number {
  return 0.409 * Math.sin(turn * dayOfYear / 365 - 1.39);
}

/**
 * Angle in rad through which the earth turns from solar noon to sunset, from latitude and declination in rad.
 *
 *   ωs = arccos(-tan φ tan δ)
 *
 * π where the sun does not set, 0 where it does not rise. Source: Allen et al. (1998), FAO-56, equation 25.
 *
 * @example sunsetHourAngle(-Math.PI / 9, 0.119655) // => 1.527022, printed 1.527
 */
export function sunsetHourAngle(latitude: number, declination: number): number {
  return Math.acos(Math.min(1, Math.max(-1, -Math.tan(latitude) * Math.tan(declination))));
}

/**
 * Time from sunrise to sunset in s, from the sunset hour angle in rad: N = 24 h ωs/π.
 *
 * Source: Allen et al. (1998), FAO-56, equation 34.
 */
export function daylightFromSunsetAngle(sunsetAngle: number): number {
  return day * sunsetAngle / Math.PI;
}

/**
 * Radiation in J/m2 on a horizontal surface outside the atmosphere, while the earth turns between two hour angles in rad (0 at solar noon,
 * negative before it), at a latitude in rad on a day of the year.
 *
 *   Ra = 86400/(2π) Gsc dr [(ω2 - ω1) sin φ sin δ + cos φ cos δ (sin ω2 - sin ω1)],  Gsc = 0.0820 MJ m-2 min-1
 *
 * Only what lies between sunrise and sunset counts, so that the parts of a day add up to the day; the printed equation is for times with the sun up.
 * Angles may reach into the days before and after, which are taken as equal.
 * Source: Allen et al. (1998), FAO-56, equation 28.
 */
export function extraterrestrialRadiationBetween(latitude: number, dayOfYear: number, firstAngle: number, lastAngle: number): number {
  const declination = solarDeclinationFao56(dayOfYear);
  const sunset = sunsetHourAngle(latitude, declination);
  const steady = Math.sin(latitude) * Math.sin(declination);
  const swinging = Math.cos(latitude) * Math.cos(declination);
  const sinceMidnight = (angle: number): number => {
    const turns = Math.floor((angle + Math.PI) / turn);
    const up = Math.min(sunset, Math.max(-sunset, angle - turn * turns));
    return steady * (up + sunset + 2 * sunset * turns) + swinging * (Math.sin(up) + Math.sin(sunset) * (1 + 2 * turns));
  };
  return Math.max(0, day / turn * solarConstant * inverseRelativeDistanceFao56(dayOfYear) * (sinceMidnight(lastAngle) - sinceMidnight(firstAngle)));
}

/**
 * Radiation in J/m2 on a horizontal surface outside the atmosphere in a day, at a latitude in rad (positive north) on a day of the year (1 to 366).
 *
 *   Ra = (24 × 60/π) 0.0820 dr [ωs sin φ sin δ + cos φ cos δ sin ωs] MJ/m2
 *
 * 0 in the polar night. Up to latitude 50° within 0.9 MJ/m2 of what the almanac's sun gives (1.3 % at 20°, 4.4 % at 50° in winter); near
 * the polar circles 1.2 MJ/m2, a quarter of the little that a day in midwinter has.
 * Source: Allen et al. (1998), FAO-56, equation 21.
 *
 * @example extraterrestrialRadiationFao56(-Math.PI / 9, 246) // => 32.1940e6, printed 32.2 MJ/m2
 */
export function extraterrestrialRadiationFao56(latitude: number, dayOfYear: number): number {
  return extraterrestrialRadiationBetween(latitude, dayOfYear, -Math.PI, Math.PI);
}

/**
 * Correction in s of the clock for the season: how much earlier than on average the sun stands highest.
 *
 *   Sc = 0.1645 sin 2b - 0.1255 cos b - 0.025 sin b h,  b = 2π (J - 81)/364
 *
 * Within 63 s of the almanac. Source: Allen et al. (1998), FAO-56, equations 32 and 33.
 */
export function seasonalCorrectionFao56(dayOfYear: number): number {
  const b = turn * (dayOfYear - 81) / 364;
  return 3600 * (0.1645 * Math.sin(2 * b) - 0.1255 * Math.cos(b) - 0.025 * Math.sin(b));
}

/**
 * Time by the clock, in s since midnight, at which the sun stands highest.
 *
 *   t = 12 h - 0.06667 h/° (L - Lz) - Sc
 *
 * FAO-56 counts longitudes to the west; here they count to the east, as maps and receivers do. No daylight-saving time.
 * Source: Allen et al. (1998), FAO-56, equation 31, solved for the time with a solar angle of 0.
 *
 * @param longitude L of the place, degrees east
 * @param zoneLongitude Lz of the middle of the time zone, degrees east: 15 for each hour ahead of UTC
 */
export function solarNoonFao56(longitude: number, zoneLongitude: number, dayOfYear: number): number {
  return 43200 - 3600 * 0.06667 * (longitude - zoneLongitude) - seasonalCorrectionFao56(dayOfYear);
}

/** Hour angle of the sun in rad at a time by the clock: ω = 2π (t - t noon)/24 h, both in s since midnight. */
export function hourAngle(clockTime: number, solarNoon: number): number {
  return turn * (clockTime - solarNoon) / day;
}
