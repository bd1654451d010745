import { zeroCelsius } from '../../water/constants.js';

/**
 * Enhancement factor of moist air: how much more vapour saturated air holds than pure vapour has pressure, from temperature in K and pressure in Pa.
 *
 *   f = 1.00062 + 3.14e-8 P + 5.6e-7 t²,  t in °C
 *
 * Range: 60 to 110 kPa, 15 to 27 °C. Within 0.0003 of the IAPWS equation for humid air from 5 to 40 °C and 80 to 101 kPa.
 * The coefficients are from memory: pass others as the last argument.
 * Source: Picard et al. (2008), CIPM-2007.
 */
export function enhancementFactorCipm2007(temperature: number, pressure: number, [c0, c1, c2] = [1.00062, 3.14e-8, 5.6e-7] as const): number {
  return c0 + c1 * pressure + c2 * (temperature - zeroCelsius) ** 2;
}

/**
 * Enhancement factor of moist air over water, from the pressure in Pa, by Buck.
 *
 *   f = 1.0007 + 3.46e-8 P
 *
 * The coefficients are from memory: pass others as the last argument. Source: Buck (1981).
 */
export function enhancementFactorBuck1981(pressure: number, [c0, c1] = [1.0007, 3.46e-8] as const): number {
  return c0 + c1 * pressure;
}

/**
 * Enhancement factor of moist air, from the pressure in Pa, as weather services take it.
 *
 *   f = 1.0016 + 3.15e-8 P - 7.4/P
 *
 * The coefficients are from memory: pass others as the last argument. Source: WMO-No. 8, Annex 4.B.
 */
export function enhancementFactorWmo(pressure: number, [c0, c1, c2] = [1.0016, 3.15e-8, -7.4] as const): number {
  return c0 + c1 * pressure + c2 / pressure;
}
