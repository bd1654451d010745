import type { Root } from '../../numerics/roots.js';
import type { IceSaturationCorrelation } from '../../water/saturation/over-ice.js';
import { saturationPressureOverWater, type SaturationCorrelation } from '../../water/saturation/over-water.js';
import { saturationTemperatureOverIce, saturationTemperatureOverWater } from '../../water/saturation/temperature.js';

/**
 * Actual vapour pressure in Pa, from the air temperature in K and the relative humidity (0 to 1).
 *
 *   e = RH × es(T)
 *
 * es is over liquid water also in frost, as humidity sensors and weather services count it.
 * Source: Allen et al. (1998), FAO-56, equations 10 and 54.
 *
 * @example vapourPressureFromRelativeHumidity(298.15, 0.6) // => 1901.85
 */
export function vapourPressureFromRelativeHumidity(
  temperature: number, relativeHumidity: number, correlation?: SaturationCorrelation,
): number {
  return relativeHumidity * saturationPressureOverWater(temperature, correlation);
}

/** Relative humidity (0 to 1, above 1 when supersaturated), from the air temperature in K and the vapour pressure in Pa: e/es(T). */
export function relativeHumidityFromVapourPressure(temperature: number, vapourPressure: number, correlation?: SaturationCorrelation): number {
  return vapourPressure / saturationPressureOverWater(temperature, correlation);
}

/**
 * Dew point in K, over liquid water, from the air temperature in K and the relative humidity (0 to 1).
 *
 * The temperature to which the air must cool before water condenses; below 0.01 °C hoar frost forms sooner, at the frost point.
 * The same equation makes the vapour pressure and is inverted: two different ones would give a dew point above the air at 100 %.
 * From a vapour pressure take saturationTemperatureOverWater. Dry air (0) has no dew point.
 *
 * @example dewPointFromRelativeHumidity(298.15, 0.6).value - 273.15 // => 16.701
 */
export function dewPointFromRelativeHumidity(temperature: number, relativeHumidity: number, correlation?: SaturationCorrelation): Root {
  return saturationTemperatureOverWater(vapourPressureFromRelativeHumidity(temperature, relativeHumidity, correlation), correlation);
}

/**
 * Frost point in K, from the air temperature in K and the relative humidity over liquid water (0 to 1).
 *
 * The temperature at which hoar frost forms. It lies above the dew point of the same air, and exists only below 0.01 °C.
 * From a vapour pressure take saturationTemperatureOverIce.
 */
export function frostPointFromRelativeHumidity(temperature: number, relativeHumidity: number, correlation?: IceSaturationCorrelation): Root {
  return saturationTemperatureOverIce(vapourPressureFromRelativeHumidity(temperature, relativeHumidity, correlation), correlation);
}

/**
 * Relative humidity of the air above which a surface gets wet, from the temperatures of air and surface in K.
 *
 *   RH = es(T surface)/es(T air)
 *
 * For a cover, a pipe or a cold fruit. Above 1 where the surface is the warmer: it stays dry.
 *
 * @example condensationHumidity(293.15, 283.15) // => 0.52504: air at 20 °C, cover at 10 °C
 */
export function condensationHumidity(airTemperature: number, surfaceTemperature: number, correlation?: SaturationCorrelation): number {
  return relativeHumidityFromVapourPressure(airTemperature, saturationPressureOverWater(surfaceTemperature, correlation), correlation);
}
