import { saturationPressureOverWater, type SaturationCorrelation } from '../../water/saturation/over-water.js';

/**
 * Vapour pressure deficit of the air in Pa, from its temperature in K and relative humidity (0 to 1).
 *
 *   D = es(T) (1 - RH)
 *
 * What pulls water out of a leaf at air temperature. Negative only for a relative humidity above 1.
 *
 * @example deficitFromRelativeHumidity(298.15, 0.6) // => 1267.90
 */
export function deficitFromRelativeHumidity(temperature: number, relativeHumidity: number, correlation?: SaturationCorrelation): number {
  return saturationPressureOverWater(temperature, correlation) * (1 - relativeHumidity);
}

/**
 * Leaf-to-air vapour pressure deficit in Pa, from leaf and air temperature in K and the relative humidity of the air (0 to 1).
 *
 *   D = es(T leaf) - RH es(T air)
 *
 * Negative when the leaf is below the dew point: it is getting wet.
 *
 * @example leafDeficitFromRelativeHumidity(293.65, 295.15, 0.8) // => 296.48: leaf 20.5 °C in air of 22 °C
 */
export function leafDeficitFromRelativeHumidity(
  leafTemperature: number, airTemperature: number, relativeHumidity: number, correlation?: SaturationCorrelation,
): number {
  return saturationPressureOverWater(leafTemperature, correlation) - relativeHumidity * saturationPressureOverWater(airTemperature, correlation);
}

/**
 * Relative humidity at which a leaf meets a wanted deficit, from leaf and air temperature in K and the deficit in Pa.
 *
 *   RH = (es(T leaf) - D)/es(T air)
 *
 * With leaf and air alike this is the humidity for an air deficit. Below 0 where no air is dry enough, above 1 where none is moist enough.
 */
export function relativeHumidityFromLeafDeficit(
  leafTemperature: number, airTemperature: number, deficit: number, correlation?: SaturationCorrelation,
): number {
  return (saturationPressureOverWater(leafTemperature, correlation) - deficit) / saturationPressureOverWater(airTemperature, correlation);
}
