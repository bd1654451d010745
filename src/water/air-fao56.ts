import { zeroCelsius } from './constants.js';
import { saturationPressureFao56 } from './saturation/magnus.js';

/**
 * Mean saturation vapour pressure of a day in Pa, from its highest and lowest temperature in K.
 *
 *   es = [e(Tmax) + e(Tmin)]/2
 *
 * The mean of the two pressures, not the pressure at the mean temperature, which is lower (2.30 against 2.39 kPa for 15 and 24.5 °C).
 * Source: Allen et al. (1998), FAO-56, equation 12.
 *
 * @example dailySaturationPressureFao56(297.65, 288.15) // => 2390.00
 */
export function dailySaturationPressureFao56(highest: number, lowest: number): number {
  return (saturationPressureFao56(highest) + saturationPressureFao56(lowest)) / 2;
}

/**
 * Mean actual vapour pressure of a day in Pa, from highest and lowest temperature in K and highest and lowest relative humidity (0 to 1).
 *
 *   ea = [e(Tmin) RHmax + e(Tmax) RHmin]/2
 *
 * Source: Allen et al. (1998), FAO-56, equation 17.
 */
export function dailyVapourPressureFao56(
  highest: number, lowest: number, highestRelativeHumidity: number, lowestRelativeHumidity: number,
): number {
  return (saturationPressureFao56(lowest) * highestRelativeHumidity + saturationPressureFao56(highest) * lowestRelativeHumidity) / 2;
}

/**
 * Mean actual vapour pressure of a day in Pa, from the lowest temperature in K and the highest relative humidity (0 to 1).
 *
 *   ea = e(Tmin) RHmax
 *
 * For sensors that read low humidities badly. Source: Allen et al. (1998), FAO-56, equation 18.
 */
export function dailyVapourPressureFromHighestHumidityFao56(lowest: number, highestRelativeHumidity: number): number {
  return saturationPressureFao56(lowest) * highestRelativeHumidity;
}

/**
 * Mean actual vapour pressure of a day in Pa, from highest and lowest temperature in K and the mean relative humidity (0 to 1).
 *
 *   ea = RHmean [e(Tmax) + e(Tmin)]/2
 *
 * The least good of the three. Source: Allen et al. (1998), FAO-56, equation 19.
 */
export function dailyVapourPressureFromMeanHumidityFao56(highest: number, lowest: number, meanRelativeHumidity: number): number {
  return meanRelativeHumidity * dailySaturationPressureFao56(highest, lowest);
}

/** What may be known of the humidity of a day: temperatures in K, relative humidities from 0 to 1, a dew point in K. */
export interface AirOfDay {
  readonly highestAirTemperature: number;
  readonly lowestAirTemperature: number;
  readonly dewPoint?: number | undefined;
  readonly highestRelativeHumidity?: number | undefined;
  readonly lowestRelativeHumidity?: number | undefined;
  readonly meanRelativeHumidity?: number | undefined;
}

/**
 * Mean actual vapour pressure of a day in Pa by the best that is known, and the number of the equation: from the dew point (14), highest and lowest
 * humidity (17), the highest alone (18), the mean (19); and where nothing is known, as saturated at the lowest temperature (48).
 *
 * Source: Allen et al. (1998), FAO-56, chapter 3.
 *
 * @example vapourPressureOfDayFao56({ highestAirTemperature: 298.15, lowestAirTemperature: 291.15, highestRelativeHumidity: 0.82, lowestRelativeHumidity: 0.54 }).equation // => 17
 */
export function vapourPressureOfDayFao56(
  { highestAirTemperature: highest, lowestAirTemperature: lowest, dewPoint, highestRelativeHumidity, lowestRelativeHumidity, meanRelativeHumidity }: AirOfDay,
): { readonly equation: 14 | 17 | 18 | 19 | 48; readonly pressure: number } {
  if (dewPoint !== undefined) return { equation: 14, pressure: saturationPressureFao56(dewPoint) };
  if (highestRelativeHumidity !== undefined && lowestRelativeHumidity !== undefined) {
    return { equation: 17, pressure: dailyVapourPressureFao56(highest, lowest, highestRelativeHumidity, lowestRelativeHumidity) };
  }
  if (highestRelativeHumidity !== undefined) return { equation: 18, pressure: dailyVapourPressureFromHighestHumidityFao56(lowest, highestRelativeHumidity) };
  if (meanRelativeHumidity !== undefined) return { equation: 19, pressure: dailyVapourPressureFromMeanHumidityFao56(highest, lowest, meanRelativeHumidity) };
  return { equation: 48, pressure: dailyVapourPressureFromHighestHumidityFao56(lowest, 1) };
}

/**
 * Dew point in K, from the vapour pressure in Pa, with the constants printed in FAO-56.
 *
 *   t = (116.91 + 237.3 ln e)/(16.78 - ln e),  e in kPa, t in °C
 *
 * Rounded from the inverse of equation 11 with 611 Pa: 0.04 K lower than the exact inverse, saturationTemperatureOverWater(e, 'FAO-56').
 * Source: Allen et al. (1998), FAO-56, Annex 3, equation 3-11.
 */
export function dewPointFao56(vapourPressure: number): number {
  const log = Math.log(vapourPressure / 1000);
  return zeroCelsius + (116.91 + 237.3 * log) / (16.78 - log);
}

/**
 * Psychrometric constant in Pa/K, from the air pressure in Pa, as irrigation work takes it.
 *
 *   γ = 0.665e-3 P
 *
 * Source: Allen et al. (1998), FAO-56, equation 8.
 *
 * @example psychrometricConstantFao56(81.7558e3) // => 54.37, printed 0.054 kPa/°C
 */
export function psychrometricConstantFao56(pressure: number): number {
  return 0.665e-3 * pressure;
}
