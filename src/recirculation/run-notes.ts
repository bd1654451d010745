import type { Solving } from '../calculation/calculation.js';
import type { Ion } from '../solution/ions.js';
import { litres, percent } from '../units/in-words.js';
import { writeNumber } from '../units/write.js';
import { mostDays } from './days.js';
import { loopConcentration, turnoverUntil } from './formulas/build-up.js';
import { dischargePerUptake, dischargeShareOfSupply } from './formulas/discharge.js';
import type { LoopIon, LoopRun, LoopTask } from './formulas/loop-run.js';
import { highestOf, type RunTotals } from './run-results.js';

/** What to change where an ion passes its limit; `turnover` is that of the day with most water taken up. */
function remedyOf({ dumpLimit, limit = Infinity, ...ion }: LoopIon, bleed: number, turnover: number): string {
  const exchange = { ...ion, bleed };
  const share = dischargeShareOfSupply(dischargePerUptake(ion.refill, ion.uptake + ion.uptakeFactor * limit, limit));
  const days = Math.floor(turnoverUntil(exchange, ion.refill, limit) / turnover);
  if (ion.refill >= limit) return 'The refill itself is at the limit: other water or another feed is needed.';
  if (share === 0) return 'It falls again by itself: begin with less of it.';
  // A loop that is let out in the evening needs a day's rise to spare.
  const rise = loopConcentration(exchange, limit, turnover) - limit;
  if (dumpLimit !== undefined && dumpLimit > limit - rise && rise < limit) return `It rises by up to ${writeNumber(rise)} in a day: let the loop out from ${writeNumber(limit - rise)} mmol/L on.`;
  const all = days >= 1 && days < mostDays ? `, or all of the loop every ${days === 1 ? 'day' : `${days} days`}` : '';
  return `It takes ${percent(share)} of the supply let out all the time${all}.`;
}

/** What is to be said of a run: limits passed all the same, ions that run out, letting out that does not help. */
export function noteRun(
  names: readonly Ion[], { ions, rule, volume, waterUses, conductivityPerCharge }: LoopTask, { budgets, dumps }: LoopRun, { waterTaken, dischargedVolume }: RunTotals, { note }: Solving,
): void {
  for (const [i, ion] of names.entries()) {
    const { limit, refill, dumpLimit } = ions[i]!;
    const { passedAfter, shortAfter } = budgets[i]!;
    if (passedAfter < Infinity) {
      const remedy = remedyOf(ions[i]!, rule.bleed, highestOf(waterUses) / volume);
      note('caution', 'limit-passed', `concentrations.${ion}`, `${ion} passes its limit of ${writeNumber(limit!)} mmol/L after ${writeNumber(passedAfter)} days. ${remedy}`);
    }
    if (shortAfter < Infinity) note('caution', 'ion-runs-out', `concentrations.${ion}`, `${ion} runs out after ${writeNumber(shortAfter)} days: plants would take up more than the refill of ${writeNumber(refill)} mmol/L brings. Raise it in the feed.`);
    if (dumpLimit !== undefined && refill >= dumpLimit) note('caution', 'dump-does-not-help', 'strategy', `The refill itself holds ${writeNumber(refill)} mmol/L of ${ion}, no less than the ${writeNumber(dumpLimit)} at which the loop is let out: letting it out does not bring it below.`);
  }
  const ofRefill = conductivityPerCharge * ions.reduce((sum, { cationCharge, refill }) => sum + cationCharge * refill, 0);
  if (rule.conductivity !== undefined && ofRefill >= rule.conductivity) note('caution', 'dump-does-not-help', 'strategy', `The refill itself comes to ${writeNumber(ofRefill * 10)} mS/cm, no less than the ${writeNumber(rule.conductivity * 10)} at which the loop is let out: letting it out does not bring it below.`);
  if (dumps.length > 0) note('info', 'discharged', 'dischargeEvents', `Let out ${dumps.length === 1 ? 'once' : `${dumps.length} times`}, ${litres(rule.dumpShare * volume)} at a time: ${percent(dischargedVolume / (dischargedVolume + waterTaken))} of the supply is discharged.`);
}
