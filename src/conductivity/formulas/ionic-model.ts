import { speciate, type ComponentTotals, type SpeciationConditions } from '../../solution/formulas/speciation.js';
import { zeroCelsius } from '../../water/constants.js';
import {
  ionicConductivitiesMcCleskey2012, ionicConductivitiesOwn, type IonicConductivityRow, type IonicConductivityTable,
} from '../ionic-conductivities.js';

/**
 * Molal conductivity of an ion, S kg/(m mol), at a temperature (K) and ionic strength (mol/kg). Ten times this is S cm2/mol in dilute water.
 *
 * lambda = lambda0 - A sqrt(I)/(1 + B sqrt(I)), with lambda0 and A quadratic in the temperature in °C.
 * For 0 to 95 °C and ionic strengths of 0.0004 to 0.7 mol/kg.
 *
 * Source: McCleskey, Nordstrom, Ryan and Ball 2012, coefficients as two public transcriptions give them.
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

/** Conductivity of a solution, ion by ion. */
export interface SolutionConductivity {
  /** S/m. */
  readonly value: number;
  /** What each dissolved species adds, S/m. */
  readonly contributions: Readonly<Record<string, number>>;
  /** Mol/kg. */
  readonly ionicStrength: number;
  /** Largest miss of a mass balance in the speciation, as a fraction. */
  readonly residual: number;
  readonly steps: number;
}

/**
 * Conductivity of a solution (S/m) from its total composition (mol per kg of water): speciation, then the sum over ions of molality times
 * molal conductivity.
 *
 * Expect 3 % for waters and feeds of 0.05 to 0.5 S/m, 5 % with more than 3 mmol/kg of sulfate. Single salts: potassium chloride reads 0.5 to 1.7 % high,
 * magnesium chloride up to 5 % high, magnesium sulfate low by 1 % at 0.5 mmol/kg and 5 % at 3 mmol/kg.
 *
 * Rows in `overrides` come before `ionicConductivitiesOwn`, and those before the published set; a species in none of them adds nothing.
 *
 * Source: McCleskey, Nordstrom, Ryan and Ball 2012; speciation as in `speciate`.
 *
 * @example conductivityOfSolution({ 'K+': 0.01, 'Cl-': 0.01 }, { temperature: 298.15 }).value // => 0.1423, where 0.14082 is measured
 */
export function conductivityOfSolution(
  totals: ComponentTotals, conditions: SpeciationConditions, overrides: IonicConductivityTable = {},
): SolutionConductivity {
  const { molalities, ionicStrength, residual, steps } = speciate(totals, conditions);
  const published: IonicConductivityTable = ionicConductivitiesMcCleskey2012;
  const own: IonicConductivityTable = ionicConductivitiesOwn;
  const contributions: Record<string, number> = {};
  let value = 0;
  for (const [species, molality] of Object.entries(molalities)) {
    const row = overrides[species] ?? own[species] ?? published[species];
    if (!row) continue;
    const contribution = molality * molalConductivityMcCleskey2012(row, conditions.temperature, ionicStrength);
    contributions[species] = contribution;
    value += contribution;
  }
  return { value, contributions, ionicStrength, residual, steps };
}

/**
 * Factor that brings a reading of this solution at its temperature to a reference temperature (K; 25 °C where not given): the model's
 * conductivity at the reference over that at the temperature, for the same composition.
 *
 * @example temperatureFactorOfSolution({ 'K+': 0.01, 'Cl-': 0.01 }, { temperature: 288.15 }) // => 1.231, where 1.234 is measured
 */
export function temperatureFactorOfSolution(totals: ComponentTotals, conditions: SpeciationConditions, referenceTemperature = 298.15): number {
  const reference = conductivityOfSolution(totals, { ...conditions, temperature: referenceTemperature });
  return reference.value / conductivityOfSolution(totals, conditions).value;
}
