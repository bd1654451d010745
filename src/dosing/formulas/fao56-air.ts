import { saturationPressureFao56 } from '../../water/saturation/magnus.js';

/** Mean saturation vapour pressure of a day in Pa, from its highest and lowest temperature in K: FAO-56, equation 12. */
export const saturationOfDay = (highest: number, lowest: number): number => (saturationPressureFao56(highest) + saturationPressureFao56(lowest)) / 2;

/** Air pressure in Pa at an elevation in m: FAO-56, equation 7. */
export const airPressureAt = (elevation: number): number => 101300 * ((293 - 0.0065 * elevation) / 293) ** 5.26;

/** Psychrometric constant in Pa/K, from the air pressure in Pa: FAO-56, equation 8. */
export const psychrometricConstantAt = (pressure: number): number => 0.665e-3 * pressure;
