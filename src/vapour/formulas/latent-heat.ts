import { zeroCelsius } from '../../water/constants.js';

/**
 * Latent heat of vaporization of water in J/kg, from the temperature in K.
 *
 *   λ = 2.501e6 - 2361 t,  t in °C
 *
 * Within 0.015 % of IAPWS-95 from 10 to 30 °C. FAO-56 takes 2.45e6 throughout (20 °C).
 * The coefficients are from memory: pass others as the last argument.
 * Source: Harrison (1963), as in FAO-56, Annex 3, equation 3-1.
 *
 * @example latentHeatHarrison1963(293.15) // => 2.45378e6
 */
export function latentHeatHarrison1963(temperature: number, [atZero, slope] = [2.501e6, 2361] as const): number {
  return atZero - slope * (temperature - zeroCelsius);
}

/**
 * Psychrometric constant in Pa/K, from the pressure in Pa and the latent heat in J/kg.
 *
 *   γ = cp P/(0.622 λ),  cp = 1013 J/(kg K)
 *
 * Source: Allen et al. (1998), FAO-56, equation 8 and Annex 3, equation 3-10.
 */
export function psychrometricConstantFromLatentHeat(pressure: number, latentHeat: number): number {
  return 1013 * pressure / (0.622 * latentHeat);
}
