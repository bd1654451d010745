import { saturationPressureOverWater, type SaturationCorrelation } from '../../water/saturation/over-water.js';
import { zeroCelsius } from '../../water/constants.js';

/** Molar mass of water over that of dry air (ASHRAE Handbook Fundamentals 2017, chapter 1). */
export const molarMassRatio = 0.621945;

/** Specific gas constant of dry air, in J/(kg K) (ASHRAE Handbook Fundamentals 2017, chapter 1, equation 1). */
export const dryAirGasConstant = 287.042;

/** Specific gas constant of water vapour, in J/(kg K): the molar gas constant over 18.015268 g/mol (461.523). */
export const waterVapourGasConstant = 8.31446261815324 / 18.015268e-3;

/**
 * Absolute humidity in kg/m³, from the temperature in K and the vapour pressure in Pa.
 *
 *   AH = e/(Rv T),  Rv = 461.523 J/(kg K)
 *
 * Given a vapour pressure deficit instead it is the humidity deficit: the water the same air could still take up. Ideal gas law.
 *
 * @example absoluteHumidityFromVapourPressure(298.15, 1901.85) // => 0.013821
 */
export function absoluteHumidityFromVapourPressure(temperature: number, vapourPressure: number): number {
  return vapourPressure / (waterVapourGasConstant * temperature);
}

/** Vapour pressure in Pa, from the temperature in K and the absolute humidity in kg/m³: the inverse of absoluteHumidityFromVapourPressure. */
export function vapourPressureFromAbsoluteHumidity(temperature: number, absoluteHumidity: number): number {
  return absoluteHumidity * waterVapourGasConstant * temperature;
}

/**
 * Humidity ratio in kg water vapour per kg dry air, from vapour pressure and total pressure in Pa.
 *
 *   W = 0.621945 e/(P - e)
 *
 * Multiply e by an enhancement factor for real moist air (W then rises by 0.4 to 0.5 %); the plain form is that of the Handbook.
 * Infinite at e = P and meaningless above: water boils there.
 * Source: ASHRAE Handbook Fundamentals (2017), chapter 1, equation 20.
 *
 * @example humidityRatioFromVapourPressure(3169.7, 95461) // => 0.0213604
 */
export function humidityRatioFromVapourPressure(vapourPressure: number, pressure: number): number {
  return molarMassRatio * vapourPressure / (pressure - vapourPressure);
}

/** Vapour pressure in Pa, from the humidity ratio in kg/kg and the total pressure in Pa: P W/(0.621945 + W). */
export function vapourPressureFromHumidityRatio(humidityRatio: number, pressure: number): number {
  return pressure * humidityRatio / (molarMassRatio + humidityRatio);
}

/** Specific humidity in kg water vapour per kg moist air, from the humidity ratio in kg/kg: W/(1 + W). */
export function specificHumidityFromHumidityRatio(humidityRatio: number): number {
  return humidityRatio / (1 + humidityRatio);
}

/**
 * Saturation deficit in kg water per kg dry air: what the air lacks to saturation over water, from temperature in K, humidity ratio and pressure
 * in Pa.
 *
 *   Ws(T) - W
 */
export function saturationDeficitFromHumidityRatio(
  temperature: number, humidityRatio: number, pressure: number, correlation?: SaturationCorrelation,
): number {
  return humidityRatioFromVapourPressure(saturationPressureOverWater(temperature, correlation), pressure) - humidityRatio;
}

/**
 * Enthalpy of moist air in J per kg dry air, from the temperature in K and the humidity ratio in kg/kg.
 *
 *   h = 1000 [1.006 t + W (2501 + 1.86 t)],  t in °C; zero for dry air at 0 °C
 *
 * Source: ASHRAE Handbook Fundamentals (2017), chapter 1, equation 30.
 *
 * @example moistAirEnthalpy(298.15, 0.0118971) // => 55458
 */
export function moistAirEnthalpy(temperature: number, humidityRatio: number): number {
  const t = temperature - zeroCelsius;
  return 1006 * t + humidityRatio * (2501e3 + 1860 * t);
}

/**
 * Volume of moist air in m³ per kg DRY air, from the temperature in K, the humidity ratio in kg/kg and the pressure in Pa.
 *
 *   v = 287.042 T (1 + 1.607858 W)/P
 *
 * Ideal gas: within 0.1 % near atmospheric pressure.
 * Source: ASHRAE Handbook Fundamentals (2017), chapter 1, equation 26.
 *
 * @example moistAirSpecificVolume(303.15, 0.02, 95461) // => 0.9408554
 */
export function moistAirSpecificVolume(temperature: number, humidityRatio: number, pressure: number): number {
  return dryAirGasConstant * temperature * (1 + 1.607858 * humidityRatio) / pressure;
}

/**
 * Density of moist air in kg/m³, from the temperature in K, the humidity ratio in kg/kg and the pressure in Pa: (1 + W)/v.
 *
 * About 0.04 % below a real-gas equation. Source: ASHRAE Handbook Fundamentals (2017), chapter 1, equation 11.
 *
 * @example moistAirDensity(303.15, 0.02, 95461) // => 1.0841199
 */
export function moistAirDensity(temperature: number, humidityRatio: number, pressure: number): number {
  return (1 + humidityRatio) / moistAirSpecificVolume(temperature, humidityRatio, pressure);
}
