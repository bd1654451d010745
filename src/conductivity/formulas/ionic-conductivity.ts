import { zeroCelsius } from '../../water/constants.js';
import { ionicConductivitiesMcCleskey2012, type IonicConductivityRow } from '../ionic-conductivities.js';

/**
 * Molal conductivity of an ion, S kg/(m mol), at a temperature (K) and ionic strength (mol/kg). Ten times this is S cm2/mol in dilute water.
 *
 * lambda = lambda0 - A sqrt(I)/(1 + B sqrt(I)), with lambda0 and A quadratic in the temperature in °C.
 * For 0 to 95 °C and ionic strengths of 0.0004 to 0.7 mol/kg.
 *
 * Source: McCleskey, Nordstrom, Ryan and Ball 2012, coefficients as two public copies give them.
 *
 * @example molalConductivityMcCleskey2012([0.003046, 1.261, 40.70, 0.00535, 0.9316, 22.59, 1.5], 298.15, 0) // => 7.41, for potassium
 */
export function molalConductivityMcCleskey2012(row: IonicConductivityRow, temperature: number, ionicStrength: number): number {
  const [a2, a1, a0, b2, b1, b0, B] = row;
  const t = temperature - zeroCelsius;
  const root = Math.sqrt(ionicStrength);
  return 0.1 * ((a2 * t + a1) * t + a0 - (((b2 * t + b1) * t + b0) * root) / (1 + B * root));
}

/** Limiting molal conductivity of an ion of the published set, S kg/(m mol), at a temperature (K). */
export function limitingMolalConductivityMcCleskey2012(ion: keyof typeof ionicConductivitiesMcCleskey2012, temperature: number): number {
  return molalConductivityMcCleskey2012(ionicConductivitiesMcCleskey2012[ion], temperature, 0);
}
