import { calculation } from '../calculation/calculation.js';
import { discharge } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { nutrientMassesOfIons } from '../solution/formulas/blending.js';
import { molarMassOfIon } from '../solution/formulas/composition.js';
import type { Ion } from '../solution/ions.js';
import type { NutrientFormKey } from '../solution/nutrient-forms.js';
import type { Column } from '../units/column.js';
import { amountConcentration, conductivity, mass, massConcentration, share, time, volume, waterPerArea } from '../units/dimensions.js';
import type { Quantity } from '../units/quantity.js';
import { checkDays, dayFields, daysTask, secondsInDay } from './days.js';
import { floorAreaField, nutrientOutputs, nutrientsByFloor } from './discharged-nutrients.js';
import { runLoop, type IonBudget, type LoopRun, type LoopTask } from './formulas/loop-run.js';
import { nutrientsWithVolume } from './formulas/nutrient-mass.js';
import { ionKeys } from './ion-record.js';
import { inStrawberryLoop } from './loop-example.js';
import { loopFields, loopOf, noteLoop } from './loop-fields.js';
import { noteRun } from './run-notes.js';
import { byIon, highestOf, refuseRunCrystals, totalsOf } from './run-results.js';
import { noteStrategy, strategyFields, taskOf } from './strategy.js';

/**
 * A closed loop day by day: how its ions go, when it is let out, what goes with that.
 *
 * In: the loop as `ionBuildUp` takes it; the water that the plants take up, `dailyWaterUse` or `dailyWaterUses` day by day (up to ten years), and the
 * `days` (365, or as many as the column has); `uptakeRatios`, where the plants take up more or less than usual of every ion, day by day (0 to 300 %);
 * the `strategy`, by which the loop is let out in the evening: `dumpInterval` in days, from a `dumpConductivity` on, from `dumpLimits` of ions on,
 * any of them, each time a `dumpShare` of the loop (1 to 100 %), and a `dischargeShare` of the supply all the time; the `floorArea`.
 * Out: `times`, `concentrations` and `conductivities`, in the evening of each day before anything is let out; `dischargedVolumes` of each day;
 * `dischargeEvents` with day, volume, grams of nitrogen (without that of chelates) and phosphorus, and `nutrients`; the same in all, with the water taken up and
 * supplied, and by floor area; `highestConcentrations`; `limitTimes`, the first time each limit is passed, and `daysAboveLimit`; `ionMasses`, what
 * came in of each ion, what the plants took, what was let out, what is in the loop at first and at last; the `balanceResidual` of that.
 * Where plants would take more than there is they get what comes in, with a note.
 * An InputError outside the limits, for gaps in a column, and where the loop would come to more than 10 mol/L of an ion.
 *
 * Source: Carmassi et al. 2003 and 2005 for the two models of uptake; the rest is a balance.
 * @example
 * const year = loopRun({ loopVolume: '200 L', dailyWaterUse: '20 L', freshFeed: { ions: { 'Na+': '1.5 mmol/L', 'NO3-': '1.5 mmol/L' } }, uptakeConcentrations: { 'Na+': '0.9 mmol/L', 'NO3-': '1.5 mmol/L' }, strategy: { dumpLimits: { 'Na+': '6 mmol/L' } } });
 * year.dischargeEvents.length // => 4
 * year.dischargeEvents[0].day // => 75
 * year.dischargeEvents[0].nitrogenMass.in('g') // => 4.2021
 */
export const loopRun = /* @__PURE__ */ calculation({
  id: 'loopRun',
  title: 'A closed loop day by day',
  inputs: () => ({ ...loopFields(), ...dayFields(), strategy: field.optional(field.group(strategyFields())), floorArea: floorAreaField() }),
  outputs: () => ({
    times: output.column(time, 'd'),
    concentrations: output.record<Ion, Float64Array, Column<'amountConcentration'>>(output.column(amountConcentration, 'mmol/L')),
    conductivities: output.column(conductivity, 'mS/cm'),
    dischargedVolumes: output.column(volume, 'L'),
    dischargeEvents: output.list(output.group({
      day: output.number(),
      dischargedVolume: output.quantity(volume, 'L'),
      nitrogenMass: output.quantity(mass, 'g'),
      phosphorusMass: output.quantity(mass, 'g'),
      nutrients: output.record<NutrientFormKey, number, Quantity<'massConcentration'>>(output.quantity(massConcentration, 'mg/L')),
    })),
    waterTaken: output.quantity(volume, 'L'),
    waterSupplied: output.quantity(volume, 'L'),
    dischargedVolume: output.quantity(volume, 'L'),
    dischargePerArea: output.optional(output.quantity(waterPerArea, 'L/m²')),
    ...nutrientOutputs(),
    highestConductivity: output.quantity(conductivity, 'mS/cm'),
    highestConcentrations: output.record<Ion, number, Quantity<'amountConcentration'>>(output.quantity(amountConcentration, 'mmol/L')),
    limitTimes: output.list(output.group({
      ion: output.choice(ionKeys()),
      ionLimit: output.quantity(amountConcentration, 'mmol/L'),
      timeUntilLimit: output.optional(output.quantity(time, 'd')),
    })),
    daysAboveLimit: output.number(),
    ionMasses: output.record<Ion, output.GivenOutputs<IonMasses>, output.GotOutputs<IonMasses>>(output.group(ionMassOutputs())),
    balanceResidual: output.quantity(share, '%'),
  }),
  equation: 'V dC/dW = CI (1 + b) − CU − (p + b) C within a day; C → C + f (CI − C) where a share f is let out',
  sources: ['carmassi-2003', 'carmassi-2005', 'combrink-2016'],
  cautions: [discharge],
  example: /* @__PURE__ */ inStrawberryLoop({
    days: 120,
    strategy: { dumpLimits: { 'Na+': '5.5 mmol/L', 'Cl-': '8 mmol/L' }, dumpConductivity: '3.2 mS/cm', dumpShare: '60 %' },
    floorArea: '18 m²',
  }),
  check: checkDays,
  solve: (seen, solving) => {
    const loop = loopOf(seen);
    const { names } = loop;
    noteLoop(seen, loop, solving);
    const strategy = seen.strategy ?? noStrategy;
    noteStrategy(strategy, loop, 'strategy', solving);
    const task = taskOf(loop, strategy, daysTask(seen));
    const run = runLoop(task);
    refuseRunCrystals(run, names, solving);
    const totals = totalsOf(task, run, names);
    noteRun(names, task, run, totals, solving);
    return {
      times: Float64Array.from({ length: task.waterUses.length + 1 }, (_, day) => day * secondsInDay),
      concentrations: byIon(names, (i) => run.budgets[i]!.concentrations),
      conductivities: run.conductivities,
      dischargedVolumes: run.dischargedVolumes,
      dischargeEvents: run.dumps.map((day) => eventOn(day, names, task, run)),
      ...totals,
      dischargePerArea: seen.floorArea && totals.dischargedVolume / seen.floorArea,
      ...nutrientsByFloor(totals, seen.floorArea),
      highestConcentrations: byIon(names, (i) => highestOf(run.budgets[i]!.concentrations)),
      limitTimes: names.flatMap((ion, i) => {
        const { limit } = task.ions[i]!;
        const { passedAfter } = run.budgets[i]!;
        return limit === undefined ? [] : [{ ion, ionLimit: limit, timeUntilLimit: passedAfter < Infinity ? passedAfter * secondsInDay : undefined }];
      }),
      ionMasses: byIon(names, (i) => massesOf(run.budgets[i]!, names[i]!, task.volume)),
      balanceResidual: Math.max(0, ...run.budgets.map(residualOf)),
    };
  },
});

const noStrategy = { dumpInterval: undefined, dumpConductivity: undefined, dumpLimits: undefined, dumpShare: 1, dischargeShare: 0 } as const;

const ionMassOutputs = () => ({
  startMass: output.quantity(mass, 'g'),
  suppliedMass: output.quantity(mass, 'g'),
  takenUpMass: output.quantity(mass, 'g'),
  dischargedMass: output.quantity(mass, 'g'),
  endMass: output.quantity(mass, 'g'),
});

type IonMasses = ReturnType<typeof ionMassOutputs>;

/** What the loop and its budget hold of an ion, kg. */
function massesOf({ concentrations, supplied, takenUp, discharged, final }: IonBudget, ion: Ion, volume: number) {
  const perConcentration = volume * molarMassOfIon(ion);
  return {
    startMass: concentrations[0]! * perConcentration, suppliedMass: supplied * perConcentration, takenUpMass: takenUp * perConcentration,
    dischargedMass: discharged * perConcentration, endMass: final * perConcentration,
  };
}

/** What a budget misses, as a share of what there was and came in. */
function residualOf({ concentrations, supplied, takenUp, discharged, final }: IonBudget): number {
  const there = concentrations[0]! + supplied;
  return there === 0 ? 0 : Math.abs(there - takenUp - discharged - final) / there;
}

/** What was let out in the evening of a day. */
function eventOn(day: number, names: readonly Ion[], { volume, rule }: LoopTask, { budgets }: LoopRun) {
  const amounts = byIon(names, (i) => budgets[i]!.concentrations[day]!);
  const dischargedVolume = rule.dumpShare * volume;
  const { HCO3: _, ...nutrients } = nutrientMassesOfIons(amounts);
  return { day, dischargedVolume, ...nutrientsWithVolume(dischargedVolume, amounts), nutrients };
}
