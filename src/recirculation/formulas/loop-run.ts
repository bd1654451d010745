import { dust } from '../../numerics/round-outward.js';
import { loopStep, stepCourse, turnoverUntil, type IonExchange, type StepCourse } from './build-up.js';

/** One ion of a loop. */
export interface LoopIon extends Omit<IonExchange, 'bleed'> {
  /** mol/m3. */
  readonly initial: number;
  /** Charge number where the ion counts for the conductivity, zero where it does not. */
  readonly cationCharge: number;
  /** mol/m3 that it is not to pass. */
  readonly limit: number | undefined;
  /** mol/m3 at which the loop is emptied. */
  readonly dumpLimit: number | undefined;
}

/** When a loop is emptied, or in part, in the evening; whatever comes first. */
export interface DischargeRule {
  /** Days after the one before. */
  readonly interval: number | undefined;
  /** Conductivity reached, S/m. */
  readonly conductivity: number | undefined;
  /** Share of the loop that is let out and filled up again. */
  readonly dumpShare: number;
  /** Volume let out all the time, for each volume taken up. */
  readonly bleed: number;
}

/** A loop and its days. */
export interface LoopTask {
  /** m3. */
  readonly volume: number;
  readonly ions: readonly LoopIon[];
  /** Water taken up, day by day, m3. */
  readonly waterUses: ArrayLike<number>;
  /** What the plants take up of every ion, as a share of what they usually do, day by day; 1 where not given. */
  readonly uptakeRatios: ArrayLike<number> | undefined;
  /** S/m for each mol of cation charge in a m3. */
  readonly conductivityPerCharge: number;
  readonly rule: DischargeRule;
}

/** What came of one ion: mol for each m3 of the loop. */
export interface IonBudget {
  supplied: number;
  takenUp: number;
  discharged: number;
  /** Evening of each day before anything is let out, the start first, mol/m3. */
  readonly concentrations: Float64Array;
  /** At the end, after what is let out, mol/m3. */
  final: number;
  /** Days until the limit is passed; infinite where it is not. */
  passedAfter: number;
  /** Days until there is none left; infinite where there always is. */
  shortAfter: number;
}

export interface LoopRun {
  readonly budgets: readonly IonBudget[];
  /** S/m, as the concentrations. */
  readonly conductivities: Float64Array;
  /** Let out on each day, m3. */
  readonly dischargedVolumes: Float64Array;
  /** Days, counted from 1, in whose evening the loop was emptied. */
  readonly dumps: readonly number[];
}

/** Whether a concentration passed a limit; one at the limit did not. */
export const isAbove = (value: number, limit: number): boolean => value > limit * (1 + dust);

/**
 * A loop day by day: within a day by the exact solution, in the evening let out and filled up where the rule says so.
 *
 * What was supplied is what the plants took up, what was let out and what the loop gained, to the rounding of doubles.
 */
export function runLoop({ volume, ions, waterUses, uptakeRatios, conductivityPerCharge, rule }: LoopTask): LoopRun {
  const days = waterUses.length;
  const budgets = ions.map(({ initial, limit }): IonBudget => ({
    supplied: 0, takenUp: 0, discharged: 0, concentrations: new Float64Array(days + 1).fill(initial, 0, 1), final: initial,
    passedAfter: limit !== undefined && isAbove(initial, limit) ? 0 : Infinity, shortAfter: Infinity,
  }));
  const conductivities = new Float64Array(days + 1);
  const dischargedVolumes = new Float64Array(days);
  const dumps: number[] = [];
  const conductivityNow = (): number => conductivityPerCharge * budgets.reduce((sum, { final }, i) => sum + ions[i]!.cationCharge * final, 0);
  const isDue = (day: number): boolean =>
    (rule.interval !== undefined && day - (dumps.at(-1) ?? 0) >= rule.interval)
    || (rule.conductivity !== undefined && conductivities[day]! >= rule.conductivity * (1 - dust))
    || ions.some(({ dumpLimit }, i) => dumpLimit !== undefined && budgets[i]!.final >= dumpLimit * (1 - dust));
  conductivities[0] = conductivityNow();
  let [turnover, ratio] = [NaN, NaN];
  let exchanges: IonExchange[] = [];
  let courses: StepCourse[] = [];
  for (let day = 1; day <= days; day++) {
    const [turnoverNow, ratioNow] = [waterUses[day - 1]! / volume, uptakeRatios ? uptakeRatios[day - 1]! : 1];
    if (turnoverNow !== turnover || ratioNow !== ratio) {
      [turnover, ratio] = [turnoverNow, ratioNow];
      exchanges = ions.map(({ refill, uptake, uptakeFactor }) => ({ refill, uptake: uptake * ratio, uptakeFactor: uptakeFactor * ratio, bleed: rule.bleed }));
      courses = exchanges.map((exchange) => stepCourse(exchange, turnover));
    }
    for (let i = 0; i < ions.length; i++) follow(budgets[i]!, exchanges[i]!, courses[i]!, ions[i]!.limit, turnover, day);
    conductivities[day] = conductivityNow();
    dischargedVolumes[day - 1] = rule.bleed * waterUses[day - 1]!;
    if (!isDue(day)) continue;
    dumps.push(day);
    dischargedVolumes[day - 1]! += rule.dumpShare * volume;
    for (let i = 0; i < ions.length; i++) exchangePart(budgets[i]!, ions[i]!.refill, rule.dumpShare);
  }
  return { budgets, conductivities, dischargedVolumes, dumps };
}

/** One day of one ion. */
function follow(budget: IonBudget, exchange: IonExchange, course: StepCourse, limit: number | undefined, turnover: number, day: number): void {
  const before = budget.final;
  const final = course.kept * before + course.gained;
  budget.concentrations[day] = budget.final = final > 0 ? final : addShortDay(budget, exchange, turnover, day);
  if (final > 0) {
    const passed = course.passedOfInitial * before + course.passedOfGained;
    budget.supplied += exchange.refill * (1 + exchange.bleed) * turnover;
    budget.takenUp += exchange.uptake * turnover + exchange.uptakeFactor * passed;
    budget.discharged += exchange.bleed * passed;
  }
  if (limit !== undefined && budget.passedAfter === Infinity && isAbove(final, limit)) budget.passedAfter = day - 1 + (before >= limit ? 0 : partOfDay(turnoverUntil(exchange, before, limit), turnover));
}

const partOfDay = (some: number, turnover: number): number => Math.min(1, some / turnover);

/** A day in which there may not be enough for the plants. */
function addShortDay(budget: IonBudget, exchange: IonExchange, turnover: number, day: number): number {
  const { final, supplied, takenUp, discharged, shortFrom } = loopStep(exchange, budget.final, turnover);
  budget.supplied += supplied;
  budget.takenUp += takenUp;
  budget.discharged += discharged;
  if (shortFrom < turnover && budget.shortAfter === Infinity) budget.shortAfter = day - 1 + partOfDay(shortFrom, turnover);
  return final;
}

/** Lets out a share of the loop and fills it up. */
function exchangePart(budget: IonBudget, refill: number, share: number): void {
  budget.discharged += share * budget.final;
  budget.supplied += share * refill;
  budget.final += share * (refill - budget.final);
}
