import { zeroCelsius } from '../constants.js';

/** Coefficients of a Magnus equation, t in °C: e0 the pressure at 0 °C in Pa, a a number, b in °C; and d in °C where it has a quadratic term. */
export type MagnusCoefficients = readonly [e0: number, a: number, b: number, d?: number];

export const magnusFao56: MagnusCoefficients = [610.8, 17.27, 237.3];
export const magnusWmo: MagnusCoefficients = [611.2, 17.62, 243.12];
export const magnusWmoIce: MagnusCoefficients = [611.2, 22.46, 272.62];
export const magnusBuck1981: MagnusCoefficients = [611.21, 17.502, 240.97];
export const magnusAlduchovEskridge1996: MagnusCoefficients = [610.94, 17.625, 243.04];
export const magnusBolton1980: MagnusCoefficients = [611.2, 17.67, 243.5];

/**
 * Saturation vapour pressure in Pa by a Magnus equation, from the temperature in K.
 *
 *   p = e0 exp((a - t/d) t/(b + t)),  t in °C, without the term t/d where there is no d
 */
export function saturationPressureMagnus(temperature: number, c: MagnusCoefficients): number {
  const t = temperature - zeroCelsius;
  return c[0] * Math.exp((c[1] - t / (c[3] ?? Infinity)) * t / (c[2] + t));
}

/**
 * Temperature in K at which a Magnus equation gives a vapour pressure in Pa: its exact inverse.
 *
 *   t = 2 b L/(q + √(q² - 4 b L/d)),  q = a - L,  L = ln(p/e0); b L/(a - L) where there is no d
 */
export function saturationTemperatureMagnus(pressure: number, [e0, a, b, d = Infinity]: MagnusCoefficients): number {
  const log = Math.log(pressure / e0);
  const q = a - log;
  return zeroCelsius + 2 * b * log / (q + Math.sqrt(q * q - 4 * b * log / d));
}

/**
 * Saturation vapour pressure in Pa, from the temperature in K, as irrigation work takes it.
 *
 *   p = 610.8 exp(17.27 t/(t + 237.3)),  t in °C
 *
 * Use it where results must match FAO-56. Range: 0 to 50 °C, where it is within 0.13 % of IAPWS-95 (low, 15 Pa at most).
 * Source: Allen et al. (1998), FAO-56, equation 11 (after Tetens 1930 and Murray 1967). Its Annex 3 and equation 48 have 611 for 610.8.
 *
 * @example saturationPressureFao56(297.65) // => 3074.65, printed 3.075 kPa at 24.5 °C
 */
export function saturationPressureFao56(temperature: number): number {
  return saturationPressureMagnus(temperature, magnusFao56);
}

/**
 * Slope of the saturation vapour pressure with temperature, in Pa/K, from the temperature in K.
 *
 *   Δ = 4098 p/(t + 237.3)²,  p by saturationPressureFao56, t in °C
 *
 * 4098 is 17.27 × 237.3 rounded, so this is the derivative of equation 11 to 0.005 %.
 * Source: Allen et al. (1998), FAO-56, equation 13.
 *
 * @example saturationPressureSlopeFao56(297.15) // => 179 Pa/K at 24 °C
 */
export function saturationPressureSlopeFao56(temperature: number): number {
  return 4098 * saturationPressureFao56(temperature) / (temperature - zeroCelsius + 237.3) ** 2;
}

/**
 * Saturation vapour pressure over liquid water, in Pa, from the temperature in K, as weather services take it.
 *
 *   p = 611.2 exp(17.62 t/(243.12 + t)),  t in °C
 *
 * Range: -45 to 60 °C. Up to 0.31 % below IAPWS-95, worst near 30 °C: it was fitted for a wide range.
 * Source: WMO-No. 8, Guide to instruments and methods of observation, Annex 4.B; constants as quoted in an instrument manual.
 */
export function saturationPressureWmo(temperature: number): number {
  return saturationPressureMagnus(temperature, magnusWmo);
}

/**
 * Saturation vapour pressure over ice, in Pa, from the temperature in K, as weather services take it.
 *
 *   p = 611.2 exp(22.46 t/(272.62 + t)),  t in °C
 *
 * Range: -65 to 0 °C. The coefficients are from memory: pass others as the last argument.
 * Source: WMO-No. 8, Annex 4.B.
 */
export function saturationPressureOverIceWmo(temperature: number, coefficients = magnusWmoIce): number {
  return saturationPressureMagnus(temperature, coefficients);
}

/**
 * Saturation vapour pressure over liquid water, in Pa, from the temperature in K, by Buck's 1981 equation.
 *
 *   p = 611.21 exp(17.502 t/(240.97 + t)),  t in °C
 *
 * Range: -20 to 50 °C; within 0.09 % of IAPWS-95 from 0 to 40 °C, 0.14 % high at 50 °C.
 * The coefficients are from memory: pass others as the last argument.
 * Source: Buck (1981), J. Appl. Meteorol. 20, 1527-1532.
 */
export function saturationPressureBuck1981(temperature: number, coefficients = magnusBuck1981): number {
  return saturationPressureMagnus(temperature, coefficients);
}

/**
 * Saturation vapour pressure over liquid water, in Pa, from the temperature in K, by the improved Magnus form (AERK).
 *
 *   p = 610.94 exp(17.625 t/(243.04 + t)),  t in °C
 *
 * Range: -40 to 50 °C. Up to 0.26 % below IAPWS-95, worst near 20 to 25 °C.
 * The coefficients are from memory: pass others as the last argument.
 * Source: Alduchov and Eskridge (1996), J. Appl. Meteorol. 35, 601-609.
 */
export function saturationPressureAlduchovEskridge1996(temperature: number, coefficients = magnusAlduchovEskridge1996): number {
  return saturationPressureMagnus(temperature, coefficients);
}

/**
 * Saturation vapour pressure over liquid water, in Pa, from the temperature in K, by Bolton.
 *
 *   p = 611.2 exp(17.67 t/(t + 243.5)),  t in °C
 *
 * Range: -35 to 35 °C; within 0.1 % of IAPWS-95 from 0 to 30 °C, 0.4 % high at 50 °C.
 * The coefficients are from memory, and give the values a meteorology library tests against: pass others as the last argument.
 * Source: Bolton (1980), Mon. Weather Rev. 108, 1046-1053.
 */
export function saturationPressureBolton1980(temperature: number, coefficients = magnusBolton1980): number {
  return saturationPressureMagnus(temperature, coefficients);
}
