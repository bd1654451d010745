import { zeroCelsius } from '../../water/constants.js';

/**
 * Wet bulb temperature in K at sea level, from the temperature in K and the relative humidity (0 to 1), in one line.
 *
 *   tw = t atan(0.151977 √(H + 8.313659)) + atan(t + H) - atan(H - 1.676331) + 0.00391838 H^1.5 atan(0.023101 H) - 4.686035
 *
 * with t in °C, H in %. For a spreadsheet; wetBulbFromHumidityRatio is exact and knows the pressure.
 * Range: -20 to 50 °C, 5 to 99 %, 101.325 kPa. Stull claims errors from -1 to +0.65 K, mean 0.3 K; in hot dry air
 * (27 °C at 5 %, 50 °C at 26 %) it is 1.2 K from wetBulbFromHumidityRatio.
 * Source: Stull (2011), equation 1.
 *
 * @example wetBulbStull2011(293.15, 0.5) - 273.15 // => 13.6993
 */
export function wetBulbStull2011(temperature: number, relativeHumidity: number): number {
  const t = temperature - zeroCelsius;
  const h = relativeHumidity * 100;
  return zeroCelsius + t * Math.atan(0.151977 * Math.sqrt(h + 8.313659)) + Math.atan(t + h) - Math.atan(h - 1.676331)
    + 0.00391838 * h ** 1.5 * Math.atan(0.023101 * h) - 4.686035;
}
