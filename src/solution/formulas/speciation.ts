import { newtonSystem } from '../../numerics/newton-system.js';
import { debyeHuckelSlope } from '../../water/permittivity.js';
import type { AqueousSpecies, Component } from '../aqueous-species.js';
import { ions } from '../ions.js';
import { daviesDerivative, daviesFunction } from './activity.js';
import { dissolvedSpecies, lnFormationConstants, type DissolvedSpecies } from './formation.js';

/** Total amounts, mol per kg of water; what is not named is absent. Phosphate of all kinds counts as H2PO4-, inorganic carbon as HCO3-. */
export type ComponentTotals = { readonly [C in Exclude<Component, 'H+'>]?: number };

/**
 * Temperature, and what fixes acidity: pH, or alkalinity with inorganic carbon (`HCO3-` of the totals), which give the pH; pH with alkalinity
 * gives the carbon. With neither pH nor alkalinity no proton changes hands: every total stays the ion it is named after, or pairs as that ion.
 */
export interface SpeciationConditions {
  /** K. */
  readonly temperature: number;
  readonly pH?: number;
  /** Mol of charge per kg of water, counted from CO2, H2PO4- and NH4+ (end point near pH 4.5). */
  readonly alkalinity?: number;
}

/** Dissolved species at equilibrium. */
export interface Speciation {
  /** Mol per kg of water; absent species are not listed. */
  readonly molalities: { readonly [S in AqueousSpecies]?: number };
  /** Activities on the molal scale; absent species are not listed. */
  readonly activities: { readonly [S in AqueousSpecies]?: number };
  /** Mol/kg, of the free ions and charged pairs. */
  readonly ionicStrength: number;
  /** Mol of charge per kg. */
  readonly alkalinity: number;
  /** Largest miss of a balance, as a fraction of its total. */
  readonly residual: number;
  readonly steps: number;
}

/**
 * Free ions, acids, bases and ion pairs of a solution at equilibrium, from total amounts.
 *
 * m_i g_i = K_i Π (m_j g_j)^n_ij over the components j, with a mass balance for every component (for alkalinity, one in charge); ions take
 * activity coefficients after Davies (1962), neutral species 10^(0.1 I), both at the ionic strength of the free species. All are solved together
 * by Newton steps on the logarithms, so no molality can turn negative. For ionic strengths up to about 0.5 mol/kg and 0 to 50 °C.
 *
 * Throws RangeError for a negative total, or alkalinity without exactly one of pH and carbon; ConvergenceError where there is no solution
 * (such as an alkalinity lower than what the phosphate alone has at that pH), and rarely, given pH with alkalinity, above 0.02 mol/kg of phosphate.
 *
 * Source: Parkhurst and Appelo 2013 for the equations, here with one activity model for all ions; constants in `aqueousSpecies`.
 *
 * @example speciate({ 'Ca2+': 0.005, 'SO4 2-': 0.005 }, { temperature: 298.15 }).molalities.CaSO4 // => 0.0011, a fifth of the calcium
 */
export function speciate(totals: ComponentTotals, conditions: SpeciationConditions): Speciation {
  const { balances, alkalinityRow } = balancesOf(totals, conditions);
  const last = balances.length; // the ionic strength is the unknown, and its definition the equation, after the components
  const members = membersOf(balances, alkalinityRow, conditions);
  if (members.length === 0) return { molalities: {}, activities: {}, ionicStrength: 0, alkalinity: 0, residual: 0, steps: 0 };

  const slope = debyeHuckelSlope(conditions.temperature) * Math.LN10;
  const amounts = new Float64Array(members.length);
  const { values, residual, steps } = newtonSystem(residuals, start(), { jacobian, tolerance: 1e-12, largestStep: 5 });
  setAmounts(values);
  const ionicStrength = Math.exp(values[last]!);
  const molalities: Record<string, number> = {};
  const activities: Record<string, number> = {};
  let alkalinity = 0;
  for (let i = 0; i < members.length; i++) {
    const { name, charge, alkalinity: each } = members[i]!.species;
    const amount = amounts[i]!;
    molalities[name] = amount;
    activities[name] = amount * Math.exp(charge === 0 ? neutralSlope * ionicStrength : -slope * charge ** 2 * daviesFunction(ionicStrength));
    alkalinity += each * amount;
  }
  return { molalities, activities, ionicStrength, alkalinity, residual, steps };

  function setAmounts(x: readonly number[]): void {
    const strength = Math.exp(x[last]!);
    const davies = slope * daviesFunction(strength);
    for (let i = 0; i < members.length; i++) {
      const { lnConstant, terms, charges, neutral } = members[i]!;
      let ln = lnConstant - charges * davies - neutral * neutralSlope * strength;
      for (const { row, factor } of terms) ln += factor * x[row]!;
      amounts[i] = Math.exp(ln);
    }
  }

  function residuals(x: readonly number[]): number[] {
    setAmounts(x);
    const sums = new Array<number>(last + 1).fill(0);
    for (let i = 0; i < members.length; i++) {
      for (const { row, factor } of members[i]!.weights) sums[row]! += factor * amounts[i]!;
    }
    for (let row = 0; row < last; row++) sums[row] = (sums[row]! - balances[row]!.target) / balances[row]!.scale;
    sums[last] = sums[last]! / Math.exp(x[last]!) - 1;
    return sums;
  }

  function jacobian(x: readonly number[]): number[][] {
    setAmounts(x);
    const strength = Math.exp(x[last]!);
    const daviesSlope = slope * daviesDerivative(strength) * strength;
    const matrix = Array.from({ length: last + 1 }, () => new Array<number>(last + 1).fill(0));
    for (let i = 0; i < members.length; i++) {
      const { terms, weights, charges, neutral } = members[i]!;
      const byStrength = -charges * daviesSlope - neutral * neutralSlope * strength;
      for (const { row, factor } of weights) {
        const line = matrix[row]!;
        const share = (factor * amounts[i]!) / (row === last ? strength : balances[row]!.scale);
        for (const term of terms) line[term.row]! += share * term.factor;
        line[last]! += share * (row === last ? byStrength - 1 : byStrength);
      }
    }
    return matrix;
  }

  function start(): number[] {
    let strength = 1e-7;
    const logs = balances.map(({ component, target }, row) => {
      strength += 0.5 * Math.abs(target) * ions[component].charge ** 2;
      if (component === 'H+') return Math.log(1e-7);
      return Math.log(row === alkalinityRow ? Math.max(target, 1e-5) : target);
    });
    return [...logs, Math.log(strength)];
  }
}

/** Natural logarithm of a neutral species' activity coefficient over ionic strength, kg/mol. */
const neutralSlope = 0.1 * Math.LN10;

/** Less than one ion in a kilogram is none, mol/kg. */
const oneIon = 1e-24;

/** What has to add up: the amounts of species with a component to its total, or the charge they add to alkalinity to the alkalinity. */
interface Balance {
  /** The component whose free molality is the unknown. */
  readonly component: Component;
  readonly target: number;
  /** What a miss is measured by. */
  readonly scale: number;
}

function balancesOf(totals: ComponentTotals, { pH, alkalinity }: SpeciationConditions): { balances: Balance[]; alkalinityRow: number } {
  const balances: Balance[] = [];
  for (const [component, target] of Object.entries(totals) as [Component, number][]) {
    if (!(target >= 0)) throw new RangeError(`the total of ${component} is zero or more, not ${target}`);
    if (target > oneIon) balances.push({ component, target, scale: target });
  }
  if (alkalinity === undefined) return { balances, alkalinityRow: -1 };
  if ((pH === undefined) === (totals['HCO3-'] === undefined)) throw new RangeError('with alkalinity, give either pH or inorganic carbon');
  balances.push({ component: pH === undefined ? 'H+' : 'HCO3-', target: alkalinity, scale: Math.max(Math.abs(alkalinity), 1e-6) });
  return { balances, alkalinityRow: balances.length - 1 };
}

/** A place in the system of equations, and what counts there for one mole. */
interface Entry {
  readonly row: number;
  readonly factor: number;
}

/** A species that can be present, as the solver needs it. */
interface Member {
  readonly species: DissolvedSpecies;
  readonly lnConstant: number;
  /** Powers of the unknown molalities in its own. */
  readonly terms: readonly Entry[];
  /** Charges squared of the unknowns it is formed from, less its own: how Davies' function enters its molality, with a minus sign. */
  readonly charges: number;
  /** 1 for a neutral species. */
  readonly neutral: number;
  /** What it adds to each balance, and to the ionic strength. */
  readonly weights: readonly Entry[];
}

function membersOf(balances: readonly Balance[], alkalinityRow: number, { temperature, pH }: SpeciationConditions): Member[] {
  const lnConstants = lnFormationConstants(temperature);
  const unknowns = balances.map(({ component }) => component);
  const members: Member[] = [];
  candidates: for (let i = 0; i < dissolvedSpecies.length; i++) {
    const species = dissolvedSpecies[i]!;
    let lnConstant = lnConstants[i]!;
    let charges = -(species.charge ** 2);
    const terms: Entry[] = [];
    for (const { component, order } of species.parts) {
      const row = unknowns.indexOf(component);
      if (row >= 0) {
        terms.push({ row, factor: order });
        charges += order * ions[component].charge ** 2;
      } else if (component === 'H+' && pH !== undefined) {
        lnConstant -= order * pH * Math.LN10;
      } else {
        continue candidates;
      }
    }
    const weights = terms.filter(({ row }) => row !== alkalinityRow);
    if (alkalinityRow >= 0 && species.alkalinity !== 0) weights.push({ row: alkalinityRow, factor: species.alkalinity });
    if (species.charge !== 0) weights.push({ row: balances.length, factor: species.charge ** 2 / 2 });
    members.push({ species, lnConstant, terms, charges, neutral: species.charge === 0 ? 1 : 0, weights });
  }
  return members;
}
