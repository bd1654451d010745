import { zeroCelsius } from '../constants.js';

/** Coefficients of Buck's 1996 equations: p = `pressure` × exp((`factor` - t/`bend`) t/(`offset` + t)), t in °C. */
export interface Buck1996Coefficients {
  /** Vapour pressure at 0 °C, in Pa. */
  readonly pressure: number;
  readonly factor: number;
  /** In °C. */
  readonly bend: number;
  /** In °C. */
  readonly offset: number;
}

export const buck1996Water: Buck1996Coefficients = { pressure: 611.21, factor: 18.678, bend: 234.5, offset: 257.14 };
export const buck1996Ice: Buck1996Coefficients = { pressure: 611.15, factor: 23.036, bend: 333.7, offset: 279.82 };

function buck(temperature: number, { pressure, factor, bend, offset }: Buck1996Coefficients): number {
  const t = temperature - zeroCelsius;
  return pressure * Math.exp((factor - t / bend) * t / (offset + t));
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
 *   t = 2 L offset/(q + √(q² - 4 L offset/bend)),  q = factor - L,  L = ln(p/pressure)
 */
export function saturationTemperatureBuck1996(pressure: number, coefficients: Buck1996Coefficients = buck1996Water): number {
  const log = Math.log(pressure / coefficients.pressure);
  const product = log * coefficients.offset;
  const q = coefficients.factor - log;
  return zeroCelsius + 2 * product / (q + Math.sqrt(q * q - 4 * product / coefficients.bend));
}
