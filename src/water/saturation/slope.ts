import type { SaturationEquation } from './over-water.js';

/**
 * Slope of the saturation vapour pressure with temperature, in Pa/K, at a temperature in K, by any of the equations.
 *
 *   dp/dT = [p(T + 0.01 K) - p(T - 0.01 K)]/0.02 K
 *
 * The difference is within 1e-6 of the derivative. For FAO-56 saturationPressureSlopeFao56 is the printed equation.
 *
 * @example saturationPressureSlope(373.1243, saturationEquationsOverWater.IAPWS) // => 3616
 */
export function saturationPressureSlope(temperature: number, { pressure }: Pick<SaturationEquation, 'pressure'>): number {
  return (pressure(temperature + 0.01) - pressure(temperature - 0.01)) / 0.02;
}
