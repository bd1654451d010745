import type { Solving } from '../calculation/calculation.js';
import type { Ion } from '../solution/ions.js';
import { isAbove, type LoopRun, type LoopTask } from './formulas/loop-run.js';
import { nutrientsWithVolume } from './formulas/nutrient-mass.js';
import { refuseCrystals } from './loop-fields.js';

/** What a run comes to as a whole. */
export interface RunTotals {
  readonly waterTaken: number;
  readonly waterSupplied: number;
  readonly dischargedVolume: number;
  /** kg. */
  readonly nitrogenMass: number;
  readonly phosphorusMass: number;
  readonly highestConductivity: number;
  /** Days in whose evening an ion was above its limit. */
  readonly daysAboveLimit: number;
}

const sum = (numbers: ArrayLike<number>): number => {
  let total = 0;
  for (let i = 0; i < numbers.length; i++) total += numbers[i]!;
  return total;
};

/** Something of each ion, by its key. */
export const byIon = <T>(names: readonly Ion[], of: (i: number) => T): { readonly [I in Ion]?: T } => Object.fromEntries(names.map((ion, i) => [ion, of(i)]));

/** The greatest of many numbers. */
export function highestOf(numbers: ArrayLike<number>): number {
  let most = 0;
  for (let i = 0; i < numbers.length; i++) most = Math.max(most, numbers[i]!);
  return most;
}

/** Adds up a run. */
export function totalsOf({ volume, ions, waterUses }: LoopTask, { budgets, conductivities, dischargedVolumes }: LoopRun, names: readonly Ion[]): RunTotals {
  const watched = ions.flatMap(({ limit }, i) => (limit === undefined ? [] : [{ limit, concentrations: budgets[i]!.concentrations }]));
  let daysAboveLimit = 0;
  for (let day = 1; day <= waterUses.length; day++) if (watched.some(({ limit, concentrations }) => isAbove(concentrations[day]!, limit))) daysAboveLimit++;
  const [waterTaken, dischargedVolume] = [sum(waterUses), sum(dischargedVolumes)];
  return {
    waterTaken, dischargedVolume, waterSupplied: waterTaken + dischargedVolume,
    ...nutrientsWithVolume(volume, byIon(names, (i) => budgets[i]!.discharged)),
    highestConductivity: highestOf(conductivities), daysAboveLimit,
  };
}

/** Refuses a run that comes to more of an ion than dissolves. */
export const refuseRunCrystals = ({ budgets }: LoopRun, names: readonly Ion[], solving: Solving): void =>
  budgets.forEach(({ concentrations }, i) => refuseCrystals(names[i]!, highestOf(concentrations), solving));
