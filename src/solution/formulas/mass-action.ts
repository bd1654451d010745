import { newtonSystem } from '../../numerics/newton-system.js';
import { debyeHuckelSlope } from '../../water/permittivity.js';
import type { Component } from '../aqueous-species.js';
import { ions } from '../ions.js';
import { daviesDerivative, daviesFunction, strongestForDavies } from './activity.js';
import { dissolvedSpecies, lnFormationConstants, type DissolvedSpecies } from './formation.js';

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

/** The equilibrium of given totals (mol/kg, in the order of the components) with given natural logarithms of the fixed activities. */
export type MassActionSolver = (totals: readonly number[], lnActivities: readonly number[], start?: readonly number[]) => Equilibrium;

/**
 * A solver for all solutions that the same components make at one temperature (K): free ions, acids, bases and ion pairs from totals above zero.
 *
 * The totals of `components` are to be given, and the activities of those in `fixed`; a species with any other part is left out.
 * Solved by Newton steps on the logarithms of the free components and of the ionic strength, so no molality can turn negative.
 */
export function massActionSolver(components: readonly Component[], fixed: readonly Component[], temperature: number): MassActionSolver {
  const last = components.length; // the ionic strength is the unknown, and its definition the equation, after the components
  const members = membersOf(components, fixed, temperature);
  const slope = debyeHuckelSlope(temperature) * Math.LN10;
  const molalities = new Float64Array(members.length);

  return (totals, lnActivities, start) => {
    if (members.length === 0) return { species: [], ionicStrength: 0, alkalinity: 0, residual: 0, steps: 0, logs: [] };
    const lnConstants = members.map(({ lnConstant, fixedOrders }) => fixedOrders.reduce((ln, order, i) => ln + order * lnActivities[i]!, lnConstant));
    let held: readonly number[] | undefined;
    const { values, residual, steps } = newtonSystem(residuals, start ?? approached(ownStart(components, totals)), { jacobian, tolerance: 1e-12, largestStep: 5 });
    setMolalities(values);
    const ionicStrength = Math.exp(values[last]!);
    const davies = slope * daviesFunction(heldStrength(ionicStrength));
    let alkalinity = 0;
    const species = members.map(({ species: one }, i) => {
      const molality = molalities[i]!;
      alkalinity += one.alkalinity * molality;
      const lnCoefficient = one.charge === 0 ? neutralSlope * heldStrength(ionicStrength) : -(one.charge ** 2) * davies;
      return { species: one, molality, activity: molality * Math.exp(lnCoefficient) };
    });
    return { species, ionicStrength, alkalinity, residual, steps, logs: values };

    function setMolalities(x: readonly number[]): void {
      if (x === held) return;
      held = x;
      const strength = heldStrength(Math.exp(x[last]!));
      const davies = slope * daviesFunction(strength);
      const neutralLn = neutralSlope * strength;
      for (let i = 0; i < members.length; i++) {
        const { terms, charges, neutral } = members[i]!;
        let ln = lnConstants[i]! - charges * davies - neutral * neutralLn;
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
      for (let row = 0; row < last; row++) sums[row] = sums[row]! / totals[row]! - 1;
      sums[last] = sums[last]! / Math.exp(x[last]!) - 1;
      return sums;
    }

    /** A better start: twice, every component is scaled to its total and the ionic strength to its sum. Cheaper than the Newton steps it saves. */
    function approached(x: readonly number[]): readonly number[] {
      for (let round = 0; round < 2; round++) {
        const misses = residuals(x);
        x = x.map((log, row) => log + (row === last ? 1 : -1) * Math.log1p(misses[row]!));
      }
      return x;
    }

    function jacobian(x: readonly number[]): number[][] {
      setMolalities(x);
      const strength = Math.exp(x[last]!);
      const isHeld = heldStrength(strength) < strength;
      const daviesSlope = isHeld ? 0 : slope * daviesDerivative(strength) * strength;
      const neutralChange = isHeld ? 0 : neutralSlope * strength;
      const matrix = Array.from({ length: last + 1 }, () => new Array<number>(last + 1).fill(0));
      for (let i = 0; i < members.length; i++) {
        const { terms, weights, charges, neutral } = members[i]!;
        const byStrength = -charges * daviesSlope - neutral * neutralChange;
        for (let j = 0; j < weights.length; j++) {
          const { row, factor } = weights[j]!;
          const line = matrix[row]!;
          const part = factor * molalities[i]!;
          for (let k = 0; k < terms.length; k++) line[terms[k]!.row]! += part * terms[k]!.factor;
          line[last]! += part * (row === last ? byStrength - 1 : byStrength);
        }
      }
      matrix.forEach((line, row) => {
        const whole = row === last ? strength : totals[row]!;
        for (let k = 0; k <= last; k++) line[k]! /= whole;
      });
      return matrix;
    }
  };
}

/** Natural logarithm of a neutral species' activity coefficient over ionic strength, kg/mol. */
const neutralSlope = 0.1 * Math.LN10;

/** The ionic strength (mol/kg) that activity coefficients are taken at: Davies' equation turns upwards beyond its range, so they stay as they are there. */
const heldStrength = (ionicStrength: number): number => Math.min(ionicStrength, strongestForDavies);

/** As if every component stood alone. */
function ownStart(components: readonly Component[], totals: readonly number[]): number[] {
  const strength = components.reduce((sum, component, i) => sum + 0.5 * totals[i]! * ions[component].charge ** 2, 1e-7);
  return [...totals.map(Math.log), Math.log(strength)];
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
  /** Powers of the fixed activities in its molality. */
  readonly fixedOrders: readonly number[];
  /** Charges squared of the unknowns it is formed from, less its own: how Davies' function enters its molality, with a minus sign. */
  readonly charges: number;
  /** 1 for a neutral species. */
  readonly neutral: number;
  /** What it adds to each balance, and to the ionic strength. */
  readonly weights: readonly Entry[];
}

function membersOf(components: readonly Component[], fixed: readonly Component[], temperature: number): Member[] {
  const lnConstants = lnFormationConstants(temperature);
  const rows = new Map([...components, ...fixed].map((component, row) => [component, row]));
  const members: Member[] = [];
  dissolvedSpecies.forEach((species, i) => {
    let charges = -(species.charge ** 2);
    const terms: Entry[] = [];
    const fixedOrders = fixed.map(() => 0);
    for (const { component, order } of species.parts) {
      const row = rows.get(component);
      if (row === undefined) return;
      if (row >= components.length) {
        fixedOrders[row - components.length] = order;
      } else {
        terms.push({ row, factor: order });
        charges += order * ions[component].charge ** 2;
      }
    }
    const weights = species.charge === 0 ? terms : [...terms, { row: components.length, factor: species.charge ** 2 / 2 }];
    members.push({ species, lnConstant: lnConstants[i]!, terms, fixedOrders, charges, neutral: species.charge === 0 ? 1 : 0, weights });
  });
  return members;
}
