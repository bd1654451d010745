import { saturationPressureMagnus, type MagnusCoefficients } from './magnus.js';

export const magnusBuck1996: MagnusCoefficients = [611.21, 18.678, 257.14, 234.5];
export const magnusBuck1996Ice: MagnusCoefficients = [611.15, 23.036, 279.82, 333.7];

/**
 * Saturation vapour pressure over liquid water, in Pa, from the temperature in K, by Buck's 1996 equation.
 *
 *   p = 611.21 exp((18.678 - t/234.5) t/(257.14 + t)),  t in °C
 *
 * Range: -40 to 50 °C. Within 0.044 % of IAPWS-95 from 0 to 50 °C, within 0.35 % of Murphy and Koop (2005) below.
 * Source: Buck Research (1996), CR-1A hygrometer manual, appendix 1; as given in public programs.
 */
export function saturationPressureBuck1996(temperature: number): number {
  return saturationPressureMagnus(temperature, magnusBuck1996);
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
  return saturationPressureMagnus(temperature, magnusBuck1996Ice);
}
