import type * as recirculation from '../src/recirculation/index.js';
import { agreeWithin, built, type Comparison } from './comparison.js';

const { compareLoopStrategies } = await built<typeof recirculation>('recirculation');

const [days, intervals] = [365, [7, 14, 21, 28, 35, 42, 56, 70, 91, 122]] as const;
/** L, L taken up in a day, then mmol/L of the refill and of what plants take with their water. */
const [loop, water, refill, taken] = [200, 20, 1.5, 0.9];

const strategies = intervals.map((dumpInterval) => ({ name: `every ${dumpInterval} days`, dumpInterval }));
const ours = () => compareLoopStrategies({
  loopVolume: `${loop} L`, dailyWaterUse: `${water} L`, days, strategies,
  freshFeed: { ions: { 'Na+': `${refill} mmol/L`, 'Cl-': '1.6 mmol/L', 'K+': '4.6 mmol/L', 'Ca2+': '3 mmol/L', 'Mg2+': '1.2 mmol/L', 'NO3-': '9.4 mmol/L', 'H2PO4-': '1.1 mmol/L', 'SO4 2-': '1.3 mmol/L' } },
  uptakeConcentrations: { 'Na+': `${taken} mmol/L`, 'Cl-': '1 mmol/L', 'K+': '4.5 mmol/L', 'Ca2+': '2.9 mmol/L', 'Mg2+': '1.1 mmol/L', 'NO3-': '9.3 mmol/L', 'H2PO4-': '1.1 mmol/L', 'SO4 2-': '1.2 mmol/L' },
});

/** Highest sodium of each strategy, of one ion only and without any budget of it. */
function bare(): number[] {
  return intervals.map((interval) => {
    let [concentration, highest] = [refill, refill];
    for (let day = 1; day <= days; day++) {
      concentration += ((refill - taken) * water) / loop;
      if (concentration > highest) highest = concentration;
      if (day % interval === 0) concentration = refill;
    }
    return highest;
  });
}

export const recirculationComparison = (): Comparison => ({
  name: `${intervals.length} strategies of a loop of 8 ions over ${days} days`,
  ours: { name: 'compareLoopStrategies, budgets of all ions', run: ours },
  theirs: { name: 'bare loop of one ion', run: bare },
  median: 50_000,
  agree: () => ours().comparisons.forEach(({ highestSodium }, i) => agreeWithin(1e-9, highestSodium!.in('mmol/L'), bare()[i]!)),
});
