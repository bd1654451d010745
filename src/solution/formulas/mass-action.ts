import { newtonSystem } from '../../numerics/newton-system.js';
import { debyeHuckelSlope } from '../../water/permittivity.js';
import type { Component } from '../aqueous-species.js';
import { ions } from '../ions.js';
import { daviesDerivative, daviesFunction } from './activity.js';
import { dissolvedSpecies, lnFormationConstants, type DissolvedSpecies } from './formation.js';

/** Total of a component, mol per kg of water. */
export interface Total {
  readonly component: Exclude<Component, 'H+'>;
  readonly amount: number;
}

/** A solution in which every reaction is at equilibrium. */
export interface Equilibrium {
  /** Every species that can be present, with its molality (mol/kg) and activity. */
  readonly species: readonly { readonly species: DissolvedSpecies; readonly molality: number; readonly activity: number }[];
  /** Mol/kg. */
  readonly ionicStrength: number;
  /** Mol of charge per kg. */
  readonly alkalinity: number;
  /** Largest miss of a balance, as a fraction of its total. */
  readonly residual: number;
  readonly steps: number;
  /** Logarithms of the unknowns: where to start for a solution nearby. */
  readonly logs: readonly number[];
}

/**
 * Free ions, acids, bases and ion pairs from totals above zero, at a temperature (K) and, where proton exchange is wanted, a pH.
 *
 * Solved by Newton steps on the logarithms of the free components and of the ionic strength, so no molality can turn negative.
 */
export function equilibriumOf(totals: readonly Total[], temperature: number, pH: number | undefined, start: readonly number[] = ownStart(totals)): Equilibrium {
  const last = totals.length; // the ionic strength is the unknown, and its definition the equation, after the components
  const members = membersOf(totals, temperature, pH);
  if (members.length === 0) return { species: [], ionicStrength: 0, alkalinity: 0, residual: 0, steps: 0, logs: start };

  const slope = debyeHuckelSlope(temperature) * Math.LN10;
  const molalities = new Float64Array(members.length);
  const { values, residual, steps } = newtonSystem(residuals, start, { jacobian, tolerance: 1e-12, largestStep: 5 });
  setMolalities(values);
  const ionicStrength = Math.exp(values[last]!);
  let alkalinity = 0;
  const species = members.map(({ species: one }, i) => {
    const molality = molalities[i]!;
    alkalinity += one.alkalinity * molality;
    const lnCoefficient = one.charge === 0 ? neutralSlope * ionicStrength : -slope * one.charge ** 2 * daviesFunction(ionicStrength);
    return { species: one, molality, activity: molality * Math.exp(lnCoefficient) };
  });
  return { species, ionicStrength, alkalinity, residual, steps, logs: values };

  function setMolalities(x: readonly number[]): void {
    const strength = Math.exp(x[last]!);
    const davies = slope * daviesFunction(strength);
    for (let i = 0; i < members.length; i++) {
      const { lnConstant, terms, charges, neutral } = members[i]!;
      let ln = lnConstant - charges * davies - neutral * neutralSlope * strength;
      for (const { row, factor } of terms) ln += factor * x[row]!;
      molalities[i] = Math.exp(ln);
    }
  }

  function residuals(x: readonly number[]): number[] {
    setMolalities(x);
    const sums = new Array<number>(last + 1).fill(0);
    for (let i = 0; i < members.length; i++) {
      for (const { row, factor } of members[i]!.weights) sums[row]! += factor * molalities[i]!;
    }
    return sums.map((sum, row) => sum / (row === last ? Math.exp(x[last]!) : totals[row]!.amount) - 1);
  }

  function jacobian(x: readonly number[]): number[][] {
    setMolalities(x);
    const strength = Math.exp(x[last]!);
    const daviesSlope = slope * daviesDerivative(strength) * strength;
    const matrix = Array.from({ length: last + 1 }, () => new Array<number>(last + 1).fill(0));
    for (let i = 0; i < members.length; i++) {
      const { terms, weights, charges, neutral } = members[i]!;
      const byStrength = -charges * daviesSlope - neutral * neutralSlope * strength;
      for (const { row, factor } of weights) {
        const line = matrix[row]!;
        const share = (factor * molalities[i]!) / (row === last ? strength : totals[row]!.amount);
        for (const term of terms) line[term.row]! += share * term.factor;
        line[last]! += share * (row === last ? byStrength - 1 : byStrength);
      }
    }
    return matrix;
  }
}

/** Natural logarithm of a neutral species' activity coefficient over ionic strength, kg/mol. */
const neutralSlope = 0.1 * Math.LN10;

/** As if every component stood alone. */
function ownStart(totals: readonly Total[]): number[] {
  const strength = totals.reduce((sum, { component, amount }) => sum + 0.5 * amount * ions[component].charge ** 2, 1e-7);
  return [...totals.map(({ amount }) => Math.log(amount)), Math.log(strength)];
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

function membersOf(totals: readonly Total[], temperature: number, pH: number | undefined): Member[] {
  const lnConstants = lnFormationConstants(temperature);
  const members: Member[] = [];
  candidates: for (let i = 0; i < dissolvedSpecies.length; i++) {
    const species = dissolvedSpecies[i]!;
    let lnConstant = lnConstants[i]!;
    let charges = -(species.charge ** 2);
    const terms: Entry[] = [];
    for (const { component, order } of species.parts) {
      const row = totals.findIndex((total) => total.component === component);
      if (row >= 0) {
        terms.push({ row, factor: order });
        charges += order * ions[component].charge ** 2;
      } else if (component === 'H+' && pH !== undefined) {
        lnConstant -= order * pH * Math.LN10;
      } else {
        continue candidates;
      }
    }
    const weights = species.charge === 0 ? terms : [...terms, { row: totals.length, factor: species.charge ** 2 / 2 }];
    members.push({ species, lnConstant, terms, charges, neutral: species.charge === 0 ? 1 : 0, weights });
  }
  return members;
}
