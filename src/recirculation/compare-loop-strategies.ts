import { calculation } from '../calculation/calculation.js';
import { discharge } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { amountConcentration, conductivity, volume } from '../units/dimensions.js';
import { checkDays, dayFields, daysTask } from './days.js';
import { floorAreaField, nutrientOutputs, nutrientsByFloor } from './discharged-nutrients.js';
import { runLoop } from './formulas/loop-run.js';
import { inStrawberryLoop } from './loop-example.js';
import { loopFields, loopOf, noteLoop } from './loop-fields.js';
import { highestOf, refuseRunCrystals, totalsOf } from './run-results.js';
import { noteStrategy, strategyFields, taskOf } from './strategy.js';

/**
 * Strategies for letting out a loop, side by side: never, every so many days, at a conductivity, at a concentration of sodium.
 *
 * In: the loop and its days as `loopRun` takes them; `strategies`, 1 to 50, each a `name` and the conditions that `loopRun` takes as `strategy`.
 * Out: `comparisons`, in the same order: the `dischargedVolume`, how many `discharges`, grams of nitrogen and phosphorus, by floor area where that is given, the
 * water supplied, the `highestSodium` where there is sodium, the `highestConductivity`, the `daysAboveLimit`; the `leastNitrogenStrategy`, which of
 * those with the fewest days above a limit lets out the least nitrogen.
 * An InputError outside the limits, for two strategies of one name, and where a loop would come to more than 10 mol/L of an ion.
 *
 * Source: as `loopRun`.
 * @example
 * const side = compareLoopStrategies({
 *   loopVolume: '200 L', dailyWaterUse: '20 L', freshFeed: { ions: { 'Na+': '1.5 mmol/L', 'NO3-': '1.5 mmol/L' } }, uptakeConcentrations: { 'Na+': '0.9 mmol/L', 'NO3-': '1.5 mmol/L' }, ionLimits: { 'Na+': '6 mmol/L' },
 *   strategies: [{ name: 'never' }, { name: 'every month', dumpInterval: 30 }, { name: 'at sodium', dumpLimits: { 'Na+': '6 mmol/L' } }],
 * });
 * side.comparisons.map(({ dischargedVolume }) => dischargedVolume.in('L')) // => [0, 2400, 800]
 * side.leastNitrogenStrategy // => 'at sodium'
 */
export const compareLoopStrategies = /* @__PURE__ */ calculation({
  id: 'compareLoopStrategies',
  title: 'Strategies for letting out a loop, side by side',
  inputs: () => ({
    ...loopFields(),
    ...dayFields(),
    floorArea: floorAreaField(),
    strategies: field.list(field.group({ name: field.text(60), ...strategyFields() }), { limits: [1, 50] }),
  }),
  outputs: () => ({
    comparisons: output.list(output.group({
      name: output.text(),
      dischargedVolume: output.quantity(volume, 'L'),
      discharges: output.number(),
      ...nutrientOutputs(),
      waterSupplied: output.quantity(volume, 'L'),
      highestSodium: output.optional(output.quantity(amountConcentration, 'mmol/L')),
      highestConductivity: output.quantity(conductivity, 'mS/cm'),
      daysAboveLimit: output.number(),
    })),
    leastNitrogenStrategy: output.text(),
  }),
  equation: 'as `loopRun`, for each strategy',
  sources: ['carmassi-2003', 'carmassi-2005', 'combrink-2016'],
  cautions: [discharge],
  example: /* @__PURE__ */ inStrawberryLoop({
    days: 120,
    floorArea: '18 m²',
    strategies: [
      { name: 'never' },
      { name: 'every two weeks', dumpInterval: 14 },
      { name: 'at conductivity', dumpConductivity: '3 mS/cm' },
      { name: 'at sodium', dumpLimits: { 'Na+': '6 mmol/L', 'Cl-': '8 mmol/L' }, dumpShare: '60 %' },
      { name: 'a little always', dischargeShare: '20 %' },
    ],
  }),
  check: (seen, problem) => {
    checkDays(seen, problem);
    const names = seen.strategies.map(({ name }) => name);
    names.forEach((name, i) => {
      if (names.indexOf(name) < i) problem(['strategies', i, 'name'], 'a name of its own', `'${name}' again`);
    });
  },
  solve: (seen, solving) => {
    const loop = loopOf(seen);
    noteLoop(seen, loop, solving);
    const sodium = loop.names.indexOf('Na+');
    const comparisons = seen.strategies.map(({ name, ...strategy }, i) => {
      noteStrategy(strategy, loop, `strategies[${i}].dumpLimits`, solving);
      const task = taskOf(loop, strategy, daysTask(seen));
      const run = runLoop(task);
      refuseRunCrystals(run, loop.names, solving);
      const totals = totalsOf(task, run, loop.names);
      return {
        ...totals, ...nutrientsByFloor(totals, seen.floorArea), name, discharges: run.dumps.length,
        highestSodium: sodium < 0 ? undefined : highestOf(run.budgets[sodium]!.concentrations),
      };
    });
    const best = comparisons.reduce((one, other) => (other.daysAboveLimit < one.daysAboveLimit || (other.daysAboveLimit === one.daysAboveLimit && other.nitrogenMass < one.nitrogenMass) ? other : one));
    if (loop.ions.every(({ limit }) => limit === undefined)) solving.note('caution', 'no-limits', 'ionLimits', `No ion of the loop has a limit, so nothing judges what builds up: '${best.name}' is named because it lets out least nitrogen, not because plants bear it. State ionLimits, or a crop of the table.`);
    if (best.daysAboveLimit > 0) solving.note('caution', 'limit-passed', 'comparisons', `None of these keeps every ion within its limit: the best, '${best.name}', is above one on ${best.daysAboveLimit} of ${daysTask(seen).waterUses.length} days. Let the loop out sooner, or find other water.`);
    return { comparisons, leastNitrogenStrategy: best.name };
  },
});
