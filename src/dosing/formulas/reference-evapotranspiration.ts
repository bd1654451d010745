import { psychrometricConstantFao56 } from '../../water/air-fao56.js';
import { saturationPressureSlopeFao56 } from '../../water/saturation/magnus.js';

/** The air above a crop. */
export interface AirAboveCrop {
  /** Mean temperature, K. */
  readonly temperature: number;
  /** es - ea, Pa. */
  readonly deficit: number;
  /** Of the atmosphere, Pa. */
  readonly pressure: number;
  /** At 2 m, m/s. */
  readonly windSpeed: number;
}

/** The Penman-Monteith equation for grass, in mm per time, with the energy of that time in J/m2. */
function penmanMonteith({ temperature, deficit, pressure, windSpeed }: AirAboveCrop, energy: number, numerator: number): number {
  const slope = saturationPressureSlopeFao56(temperature);
  const constant = psychrometricConstantFao56(pressure);
  const byAir = constant * numerator / (temperature - 0.15) * windSpeed * deficit / 1000;
  return (0.408e-6 * slope * energy + byAir) / (slope + constant * (1 + 0.34 * windSpeed));
}

/**
 * Evapotranspiration of well-watered short grass over a day, in m/s.
 *
 *   ETo = [0.408 Δ (Rn - G) + γ 900/(t + 273) u2 (es - ea)]/[Δ + γ (1 + 0.34 u2)] mm/d,  Rn and G in MJ/m2, pressures in kPa
 *
 * Below zero where more heat is radiated off than the air brings: dew. Source: Allen et al. (1998), FAO-56, equation 6.
 *
 * @param netRadiation Rn, J/m2 in the day
 * @param soilHeat G, J/m2 in the day
 */
export function referenceEvapotranspirationFao56(air: AirAboveCrop, netRadiation: number, soilHeat = 0): number {
  return penmanMonteith(air, netRadiation - soilHeat, 900) / 1000 / 86400;
}

/**
 * The same over an hour, in m/s; the numerator has 37 instead of 900, and the deficit is es(t) - ea.
 *
 * Source: Allen et al. (1998), FAO-56, equation 53.
 *
 * @param netRadiation Rn, J/m2 in the hour
 * @param soilHeat G, J/m2 in the hour
 */
export function hourlyReferenceEvapotranspirationFao56(air: AirAboveCrop, netRadiation: number, soilHeat: number): number {
  return penmanMonteith(air, netRadiation - soilHeat, 37) / 1000 / 3600;
}

/**
 * Evapotranspiration of grass over a day from temperatures and the radiation outside the atmosphere alone, in m/s.
 *
 *   ETo = 0.0023 (t mean + 17.8) √(Tmax - Tmin) 0.408 Ra mm/d
 *
 * Source: Allen et al. (1998), FAO-56, equation 52 (Hargreaves).
 *
 * @param highest Tmax, K
 * @param lowest Tmin, K
 * @param extraterrestrial Ra, J/m2 in the day
 * @example referenceEvapotranspirationHargreaves1985(299.75, 287.95, 40.5547e6) * 86400e3 // => 5.033
 */
export function referenceEvapotranspirationHargreaves1985(highest: number, lowest: number, extraterrestrial: number): number {
  const mean = (highest + lowest) / 2 - 273.15;
  return 0.0023 * (mean + 17.8) * Math.sqrt(highest - lowest) * 0.408e-6 * extraterrestrial / 1000 / 86400;
}

/**
 * Wind speed at 2 m, from that at another height above grass, in the unit of it.
 *
 *   u2 = uz 4.87/ln(67.8 z - 5.42)
 *
 * Source: Allen et al. (1998), FAO-56, equation 47.
 *
 * @param height z, m
 * @example windSpeedAt2mFao56(3.2, 10) // => 2.39344, printed 2.4 m/s
 */
export function windSpeedAt2mFao56(windSpeed: number, height: number): number {
  return windSpeed * 4.87 / Math.log(67.8 * height - 5.42);
}

/**
 * Wind speed at 2 m in m/s that stands for an aerodynamic resistance of grass in s/m: u2 = 208/ra.
 *
 * For houses, where no wind is worth measuring: 150 s/m. Sources: Allen et al. (1998), FAO-56, chapter 2; the resistance Fernández et al. (2010).
 *
 * @example windSpeedFromAerodynamicResistance(150) // => 1.387
 */
export function windSpeedFromAerodynamicResistance(resistance: number): number {
  return 208 / resistance;
}

/** Rise and fall of the share of a day's radiation that evaporates in an unheated plastic house, as lines over the day of the year. */
export interface PlasticHouseCoefficients {
  readonly rising: readonly [atStart: number, perDay: number];
  readonly falling: readonly [atStart: number, perDay: number];
  /** Last day of the rising line. */
  readonly turn: number;
}

/**
 * Evapotranspiration of grass in an unheated plastic house over a day, in m/s, from the radiation outdoors.
 *
 *   ETo = (0.288 + 0.0019 J) Go τ up to day 220, (1.339 - 0.00288 J) Go τ after it,  Go in mm/d at 2.45 MJ/kg
 *
 * Made near 37° N. The first coefficient was seen, the others are from memory: pass your own. South of the equator count J from the first of July.
 * Source: Fernández et al. (2009).
 *
 * @param radiation Go, J/m2 in the day, outdoors
 * @param transmission τ of the house, 0 to 1
 */
export function plasticHouseEvapotranspirationFernandez2009(
  dayOfYear: number, radiation: number, transmission: number,
  { rising, falling, turn }: PlasticHouseCoefficients = { rising: [0.288, 0.0019], falling: [1.339, -0.00288], turn: 220 },
): number {
  const [atStart, perDay] = dayOfYear <= turn ? rising : falling;
  return (atStart + perDay * dayOfYear) * transmission * radiation / 2.45e6 / 1000 / 86400;
}
