/** How liquid water holds and passes heat, at 0.1 MPa. */
import { waterDensityIapws2008 } from '../../water/density.js';
import { waterViscosityIapws2008 } from '../../water/viscosity.js';

/** J/(kg K) */
const gasConstant = 461.51805;

const first = [[4, -1.661470539e5], [5, 2.708781640e6], [7, -1.557191544e8]] as const;
const second = [[2, -8.237426256e-1], [3, 1.908956353], [4, -2.017597384], [5, 8.546361348e-1]] as const;
const firstOfVolume = [[4, 6.74458446e3], [5, -2.22521604e5], [7, 1.00231247e8], [8, -1.63552118e9], [9, 8.32299658e9]] as const;
const secondOfVolume = [[1, 5.78545292e-3], [2, -1.53195665e-2], [3, 3.11337859e-2], [4, -4.23546241e-2], [5, 3.38713507e-2], [6, -1.19946761e-2]] as const;

type Terms = readonly (readonly [exponent: number, coefficient: number])[];
const sum = (terms: Terms, of: (exponent: number) => number): number => terms.reduce((total, [exponent, coefficient]) => total + coefficient * of(exponent), 0);

/**
 * Specific heat of liquid water at 0.1 MPa, in J/(kg K), from the temperature in K.
 *
 *   cp = -R [c3 + τ Σ n (n+1) a αⁿ⁺² + τ Σ m (m+1) b βᵐ⁺²],  τ = T/Tr, α = Tr/(593 K - T), β = Tr/(T - 232 K), Tr = 10 K
 *
 * Range: 253.15 to 383.15 K. Within 0.1 % of measurements (0.01 % of IAPWS-95 from 0 to 100 °C).
 * Source: IAPWS SR6-08(2011); coefficients as given in the open program iapws.
 *
 * @example waterSpecificHeatIapws2008(298.15) // => 4181.4…
 */
export function waterSpecificHeatIapws2008(temperature: number): number {
  const a = 10 / (593 - temperature);
  const b = 10 / (temperature - 232);
  return -gasConstant * (-8.983025854 + (temperature / 10) * (sum(first, (n) => n * (n + 1) * a ** (n + 2)) + sum(second, (m) => m * (m + 1) * b ** (m + 2))));
}

/**
 * Heat content (specific enthalpy) of liquid water at 0.1 MPa, in J/kg above that of the liquid at its triple point, from the temperature in K.
 *
 *   h = R Tr [c1 + Σ a αⁿ + Σ b βᵐ - τ (c3 + Σ n a αⁿ⁺¹ - Σ m b βᵐ⁺¹)],  symbols as in waterSpecificHeatIapws2008
 *
 * What mixed waters share: it counts for the specific heat that changes with temperature. Range: 253.15 to 383.15 K.
 * At one atmosphere it is 1.3 J/kg more. Source: IAPWS SR6-08(2011), from its Gibbs energy and entropy; coefficients as given in the open program iapws.
 *
 * @example waterEnthalpyIapws2008(298.15) // => 104919…
 */
export function waterEnthalpyIapws2008(temperature: number): number {
  const a = 10 / (593 - temperature);
  const b = 10 / (temperature - 232);
  const energy = -245.2093414 + sum(first, (n) => a ** n) + sum(second, (m) => b ** m);
  return gasConstant * 10 * (energy - (temperature / 10) * (-8.983025854 + sum(first, (n) => n * a ** (n + 1)) - sum(second, (m) => m * b ** (m + 1))));
}

/**
 * Thermal expansion of liquid water at 0.1 MPa, in 1/K, from the temperature in K: β = (∂v/∂T)/v. Negative below 4 °C.
 *
 *   ∂v/∂T = (R/p0) (Σ n a αⁿ⁺¹ - Σ m b βᵐ⁺¹),  with the sums of waterDensityIapws2008
 *
 * Range: 253.15 to 383.15 K. Source: IAPWS SR6-08(2011); coefficients as given in the open program iapws.
 *
 * @example waterExpansionIapws2008(298.15) // => 2.5729e-4
 */
export function waterExpansionIapws2008(temperature: number): number {
  const a = 10 / (593 - temperature);
  const b = 10 / (temperature - 232);
  const slope = (gasConstant / 1e5) * (sum(firstOfVolume, (n) => n * a ** (n + 1)) - sum(secondOfVolume, (m) => m * b ** (m + 1)));
  return slope * waterDensityIapws2008(temperature);
}

/**
 * Thermal conductivity of liquid water at 0.1 MPa, in W/(m K), from the temperature in K.
 *
 *   k = Σ ci (T/300 K)^di
 *
 * Range: 273.15 to 383.15 K; within 0.2 % of IAPWS R15-11. Source: IAPWS SR6-08(2011); coefficients as public programs carry them.
 *
 * @example waterThermalConductivityIapws2008(298.15) // => 0.6065
 */
export function waterThermalConductivityIapws2008(temperature: number): number {
  const x = temperature / 300;
  return 1.663 * x ** -1.15 - 1.7781 * x ** -3.4 + 1.1567 * x ** -6 - 0.432115 * x ** -7.6;
}

/**
 * Prandtl number of liquid water at 0.1 MPa, from the temperature in K: Pr = μ cp/k.
 *
 * @example waterPrandtlNumber(298.15) // => 6.136
 */
export const waterPrandtlNumber = (temperature: number): number =>
  (waterViscosityIapws2008(temperature) * waterSpecificHeatIapws2008(temperature)) / waterThermalConductivityIapws2008(temperature);
