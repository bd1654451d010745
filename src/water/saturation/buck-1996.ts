import { zeroCelsius } from '../constants.js';

/** Coefficients of Buck's 1996 equations p = e0 exp((a - t/d) t/(b + t)), t in °C: e0 the pressure at 0 °C in Pa, a a number, b and d in °C. */
export type Buck1996Coefficients = readonly [e0: number, a: number, b: number, d: number];

export const buck1996Water: Buck1996Coefficients = [611.21, 18.678, 257.14, 234.5];
export const buck1996Ice: Buck1996Coefficients = [611.15, 23.036, 279.82, 333.7];

function buck(temperature: number, c: Buck1996Coefficients): number {
  const t = temperature - zeroCelsius;
  return c[0] * Math.exp((c[1] - t / c[3]) * t / (c[2] + t));
}

/**
 * Saturation vapour pressure over liquid water, in Pa, from the temperature in K, by Buck's 1996 equation.
 *
 *   p = 611.21 exp((18.678 - t/234.5) t/(257.14 + t)),  t in °C
 *
 * Range: -40 to 50 °C. Within 0.044 % of IAPWS-95 from 0 to 50 °C, within 0.35 % of Murphy and Koop (2005) below.
 * Source: Buck Research (1996), CR-1A hygrometer manual, appendix 1; as given in public programs.
 */
export function saturationPressureBuck1996(temperature: number): number {
  return buck(temperature, buck1996Water);
}

/**
 * Saturation vapour pressure over ice, in Pa, from the temperature in K, by Buck's 1996 equation.
 *
 *   p = 611.15 exp((23.036 - t/333.7) t/(279.82 + t)),  t in °C
 *
 * Range: -80 to 0 °C.
 * Source: Buck Research (1996), CR-1A hygrometer manual, appendix 1; as given in public programs.
 */
export function saturationPressureOverIceBuck1996(temperature: number): number {
  return buck(temperature, buck1996Ice);
}

/**
 * Temperature in K at which Buck's 1996 equations give a vapour pressure in Pa: their exact inverse.
 *
 *   t = 2 b L/(q + √(q² - 4 b L/d)),  q = a - L,  L = ln(p/e0)
 */
export function saturationTemperatureBuck1996(pressure: number, [e0, a, b, d]: Buck1996Coefficients = buck1996Water): number {
  const log = Math.log(pressure / e0);
  const q = a - log;
  return zeroCelsius + 2 * b * log / (q + Math.sqrt(q * q - 4 * b * log / d));
}
