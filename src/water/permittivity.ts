import { waterDensityIapws2008 } from './density.js';

/**
 * Relative permittivity (static dielectric constant) of liquid water at 0.1 MPa, from the temperature in K.
 *
 *   ε = Σ ei (T/300 K)^fi
 *
 * Range: 253.15 to 383.15 K.
 * Source: IAPWS SR6-08(2011), equation 9; coefficients as given in the open program iapws.
 */
export function waterPermittivityIapws2008(temperature: number): number {
  const x = temperature / 300;
  return -43.7527 * x ** -0.05 + 299.504 * x ** -1.47 - 399.364 * x ** -2.11 + 221.327 * x ** -2.31;
}

/**
 * Relative permittivity of liquid water from the temperature in K, as water-treatment texts give it.
 *
 *   ε = 78.54 [1 - 0.004579 d + 11.9e-6 d² + 28e-9 d³],  d = T - 298 K
 *
 * For reproducing calculations that use it; 0.1 to 0.2 % above waterPermittivityIapws2008 from 0 to 40 °C.
 * Source: Crittenden et al. (2012), equation 5-45, after Harned and Owen (1958); seen in an open water-treatment program that quotes it.
 */
export function waterPermittivityHarnedOwen1958(temperature: number): number {
  const d = temperature - 298;
  return 78.54 * (1 - 0.004579 * d + 11.9e-6 * d ** 2 + 28e-9 * d ** 3);
}

/**
 * Debye-Hückel slope A of log10 γ in water, in (kg/mol)^½, from the temperature in K: log10 γ = -A z² √I for an ion of charge z as I goes to nothing.
 *
 *   A = √(2 NA ρ) e³/(8 π ln 10 (ε0 ε k T)^1.5)
 *
 * ε relative permittivity, ρ density of water in kg/m³; e, NA, k, ε0 the constants of physics (CODATA 2018).
 * Range: that of the permittivity, 253.15 to 383.15 K.
 *
 * @example debyeHuckelSlope(298.15) // => 0.5101
 */
export function debyeHuckelSlope(
  temperature: number, permittivity = waterPermittivityIapws2008(temperature), density = waterDensityIapws2008(temperature),
): number {
  const charge = 1.602176634e-19;
  const energy = 8.8541878128e-12 * permittivity * 1.380649e-23 * temperature;
  return Math.sqrt(2 * 6.02214076e23 * density) * charge ** 3 / (8 * Math.PI * Math.LN10 * energy ** 1.5);
}

/**
 * Debye-Hückel slope A of log10 γ in water, from the temperature in K, as water-treatment texts give it beside the Davies equation.
 *
 *   A = 1.29e6 √2/(ε T)^1.5,  ε by waterPermittivityHarnedOwen1958
 *
 * For reproducing calculations that use it; within 0.3 % of debyeHuckelSlope from 0 to 40 °C.
 * Source: Crittenden et al. (2012), equation 5-44, after Trussell (1998); seen in an open water-treatment program that quotes it.
 *
 * @example debyeHuckelSlopeTrussell1998(298.15) // => 0.5096
 */
export function debyeHuckelSlopeTrussell1998(temperature: number): number {
  return 1.29e6 * Math.SQRT2 / (waterPermittivityHarnedOwen1958(temperature) * temperature) ** 1.5;
}
