import { solveLinear } from '../../numerics/linear-solve.js';
import type { IonAmounts } from '../../solution/formulas/concentration.js';
import { dissolvedSpecies, type DissolvedSpecies } from '../../solution/formulas/formation.js';
import type { ComponentTotals, SpeciationConditions } from '../../solution/formulas/speciation.js';
import { speciationTask } from '../../solution/formulas/stated-solution.js';
import type { Ion } from '../../solution/ions.js';
import { waterDensityIapws2008 } from '../../water/density.js';
import { conductivityOfSolution } from './ionic-model.js';

/** Less salt than this, mol/kg, is too little to read a slope off. */
const leastTrace = 1e-12;

/** Conductivity of a feed, and what each of its ions does to it. */
export interface ConductivitySlopes {
  /** S/m. */
  readonly value: number;
  /** S/m per mol/m3; ions that the model does not know are not named. */
  readonly slopes: { readonly [I in Ion]?: number };
}

/**
 * Conductivity of a feed (S/m) at a temperature (K), and its slope over the amount of each ion (mol/m3), at the cost of two solutions and one linear system.
 *
 * The equilibrium is differentiated where it stands. With d ln m_i = Σ_k n_ik dx_k + (Σ_k n_ik q_k - q_i) dI over the components k, q being d ln g/dI,
 * the balances Σ_i n_ik m_i d ln m_i = dT_k and Σ_i z_i² m_i d ln m_i / 2 = dI are a matrix M; the slopes y of κ = Σ λ_i m_i over the totals T
 * solve Mᵀ y = ∂κ/∂(x, I). How activity coefficients and ionic conductivities answer to I is read off a second solution, with a trace of potassium chloride more.
 *
 * @example conductivitySlopes({ 'K+': 10, 'Cl-': 10 }, 298.15).slopes['K+'] // => 0.0068, where a potassium ion all alone would add 0.00735
 */
export function conductivitySlopes(amounts: IonAmounts, temperature: number): ConductivitySlopes {
  const density = waterDensityIapws2008(temperature);
  const { totals, conditions } = speciationTask(amounts, undefined, temperature, density);
  const here = solved(totals, conditions);
  if (here.species.length === 0) return { value: 0, slopes: {} };
  const trace = Math.max(here.ionicStrength / 1000, leastTrace);
  const stronger = solved({ ...totals, 'K+': (totals['K+'] ?? 0) + trace, 'Cl-': (totals['Cl-'] ?? 0) + trace }, conditions);
  const step = stronger.ionicStrength - here.ionicStrength;
  const answers = new Map(stronger.species.map((one) => [one.of.name, one]));

  const rows = new Map<string, number>();
  for (const { of } of here.species) if (of.formation === undefined) rows.set(of.name, rows.size);
  const last = rows.size; // the ionic strength comes after the components
  const coefficientSlopes = new Map<string, number>(here.species.map(({ of, lnCoefficient }) => [of.name, (answers.get(of.name)!.lnCoefficient - lnCoefficient) / step]));

  const transposed = Array.from({ length: last + 1 }, () => new Array<number>(last + 1).fill(0));
  const ofConductivity = new Array<number>(last + 1).fill(0);
  transposed[last]![last] = -1;
  for (const { of, molality, conductivity } of here.species) {
    const byStrength = of.parts.reduce((sum, { component, order }) => sum + order * coefficientSlopes.get(component)!, -coefficientSlopes.get(of.name)!);
    const weights = weightsOf(of, rows);
    const changes: readonly Entry[] = [...of.parts.map(({ component, order }) => [rows.get(component)!, order] as const), [last, byStrength]];
    for (const [column, change] of changes) {
      for (const [row, weight] of weights) transposed[column]![row]! += weight * molality * change;
      ofConductivity[column]! += conductivity * molality * change;
    }
    ofConductivity[last]! += (molality * (answers.get(of.name)!.conductivity - conductivity)) / step;
  }
  const byTotal = solveLinear(transposed, ofConductivity);

  const slopes = dissolvedSpecies.filter(({ name }) => Object.hasOwn(amounts, name)).map((of) =>
    [of.name, weightsOf(of, rows).reduce((sum, [row, weight]) => (row === last ? sum : sum + weight * byTotal[row]!), 0) / density] as const);
  return { value: here.value, slopes: Object.fromEntries(slopes) };
}

/** A place in the system of equations, and what counts there for one mole. */
type Entry = readonly [row: number, weight: number];

/** What a species adds to each balance: the totals of its components, the alkalinity where that gives the acidity, and the ionic strength. */
function weightsOf({ parts, alkalinity, charge }: DissolvedSpecies, rows: ReadonlyMap<string, number>): Entry[] {
  const weights: Entry[] = [[rows.size, charge ** 2 / 2]];
  for (const { component, order } of parts) if (component !== 'H+' && rows.has(component)) weights.push([rows.get(component)!, order]);
  if (rows.has('H+')) weights.push([rows.get('H+')!, alkalinity]);
  return weights;
}

/** A dissolved species as it stands in a solution. */
interface SolvedSpecies {
  readonly of: DissolvedSpecies;
  readonly molality: number;
  readonly lnCoefficient: number;
  /** S/m per mol/kg. */
  readonly conductivity: number;
}

function solved(totals: ComponentTotals, conditions: SpeciationConditions): { readonly value: number; readonly ionicStrength: number; readonly species: readonly SolvedSpecies[] } {
  const { value, contributions, molalities, activities, ionicStrength } = conductivityOfSolution(totals, conditions);
  const species = dissolvedSpecies.flatMap((of): SolvedSpecies[] => {
    const molality = molalities[of.name];
    if (molality === undefined) return [];
    return [{ of, molality, lnCoefficient: Math.log(activities[of.name]! / molality), conductivity: (contributions[of.name] ?? 0) / molality }];
  });
  return { value, ionicStrength, species };
}
