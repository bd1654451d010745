import { waterDensityIapws2008 } from './density.js';

/**
 * Dynamic viscosity of liquid water at 0.1 MPa, in Pa s, from the temperature in K.
 *
 *   μ = 10⁻⁶ Σ ai (T/300 K)^bi
 *
 * Range: 253.15 to 383.15 K. Within 0.01 % of the full equation IAPWS R12-08 from 4 to 50 °C.
 * Source: IAPWS SR6-08(2011), equation 7.
 *
 * @example waterViscosityIapws2008(298.15) // => 889.996774e-6
 */
export function waterViscosityIapws2008(temperature: number): number {
  const x = temperature / 300;
  return 1e-6 * (280.68 * x ** -1.9 + 511.45 * x ** -7.7 + 61.131 * x ** -19.6 + 0.45903 * x ** -40);
}

/**
 * Kinematic viscosity of liquid water at 0.1 MPa, in m²/s, from the temperature in K: ν = μ/ρ.
 *
 * Both parts are those of IAPWS SR6-08(2011); range and accuracy as for the viscosity.
 *
 * @example waterKinematicViscosity(293.15) // => 1.0034e-6
 */
export function waterKinematicViscosity(temperature: number): number {
  return waterViscosityIapws2008(temperature) / waterDensityIapws2008(temperature);
}
