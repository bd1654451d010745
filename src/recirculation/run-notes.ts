import type { Solving } from '../calculation/calculation.js';
import { roundedDown, roundedUp } from '../numerics/round-outward.js';
import type { Ion } from '../solution/ions.js';
import { litres, percent } from '../units/in-words.js';
import { writeNumber } from '../units/write.js';
import { mostDays } from './days.js';
import { stepCourse, turnoverUntil } from './formulas/build-up.js';
import { dischargePerUptake, dischargeShareOfSupply } from './formulas/discharge.js';
import type { LoopIon, LoopRun, LoopTask } from './formulas/loop-run.js';
import { millisiemens, noteRunsOut } from './loop-fields.js';
import { highestOf, type RunTotals } from './run-results.js';

/** What keeps an ion within its limit, on the day with most water taken up and least of the ion with it too. */
function remedyOf({ initial, refill, uptake, uptakeFactor, dumpLimit, limit = Infinity }: LoopIon, { rule, volume, waterUses, uptakeRatios }: LoopTask, isLetOut: boolean): string {
  const turnover = highestOf(waterUses) / volume;
  const ratio = uptakeRatios ? Array.from(uptakeRatios).reduce((least, one) => Math.min(least, one)) : 1;
  const exchange = { refill, uptake: uptake * ratio, uptakeFactor: uptakeFactor * ratio, bleed: rule.bleed };
  const share = dischargeShareOfSupply(dischargePerUptake(refill, exchange.uptake + exchange.uptakeFactor * limit, limit));
  if (refill >= limit && (share > 0 || isLetOut)) return 'The refill itself is at the limit: other water or another feed is needed.';
  if (share === 0) return 'It falls again by itself: begin with less of it.';
  const beginLower = (most: number): string => (initial > most ? 'Begin with less of it. ' : '');
  // From here the loop comes to its limit in a day.
  const { kept, gained } = stepCourse(exchange, turnover);
  const from = roundedDown((limit - gained) / kept);
  if (dumpLimit !== undefined && dumpLimit > from && from > refill) {
    const least = roundedUp((limit - from) / (limit - refill), 3);
    const more = rule.dumpShare < least ? `, at least ${percent(least)} of it at a time` : '';
    return `${beginLower(from)}It rises by up to ${writeNumber(limit - from)} mmol/L in a day: let the loop out from ${writeNumber(from)} mmol/L on${more}.`;
  }
  const days = Math.floor(turnoverUntil(exchange, initial > limit ? refill : Math.max(initial, refill), limit) / turnover);
  const all = days >= 1 && days < mostDays ? `, or all of the loop every ${days === 1 ? 'day' : `${days} days`}` : '';
  const already = rule.bleed > 0 ? ', with what is lost or let out already' : '';
  return `${beginLower(limit)}It takes ${ratio < 1 ? 'up to ' : ''}${percent(roundedUp(share, 3))} of the supply let out all the time${already}${all}.`;
}

/** What is to be said of a run: limits passed all the same, ions that run out, letting out that does not help. */
export function noteRun(names: readonly Ion[], task: LoopTask, { budgets, dumps }: LoopRun, totals: RunTotals, solving: Solving): void {
  const { note } = solving;
  const { waterTaken, waterSupplied, dischargedVolume, nitrogenMass, phosphorusMass } = totals;
  const { ions, rule, volume, conductivityPerCharge } = task;
  for (const [i, ion] of names.entries()) {
    const { limit, refill, dumpLimit } = ions[i]!;
    const { passedAfter, shortAfter } = budgets[i]!;
    if (passedAfter < Infinity) note('caution', 'limit-passed', `concentrations.${ion}`, `${ion} ${passedAfter === 0 ? 'begins above' : 'passes'} its limit of ${writeNumber(limit!)} mmol/L${passedAfter === 0 ? '' : ` after ${writeNumber(passedAfter)} days`}. ${remedyOf(ions[i]!, task, dischargedVolume > 0)}`);
    if (shortAfter < Infinity) noteRunsOut(ion, shortAfter, refill, solving);
    if (dumpLimit !== undefined && refill >= dumpLimit) note('caution', 'dump-does-not-help', 'strategy', `The refill itself holds ${writeNumber(refill)} mmol/L of ${ion}, no less than the ${writeNumber(dumpLimit)} at which the loop is let out: letting it out does not bring it below.`);
  }
  const ofRefill = conductivityPerCharge * ions.reduce((sum, { cationCharge, refill }) => sum + cationCharge * refill, 0);
  if (rule.conductivity !== undefined && ofRefill >= rule.conductivity) note('caution', 'dump-does-not-help', 'strategy', `The refill itself comes to ${millisiemens(ofRefill)}, no less than the ${millisiemens(rule.conductivity)} at which the loop is let out: letting it out does not bring it below.`);
  if (dischargedVolume > 0) {
    const ways = [
      ...(dumps.length > 0 ? [`let out ${dumps.length === 1 ? 'once' : `${dumps.length} times`}, ${litres(rule.dumpShare * volume)} at a time`] : []),
      ...(rule.bleed > 0 ? [`${litres(waterTaken * rule.bleed)} lost with the drain or let out all the time`] : []),
    ].join(', and ');
    note('info', 'discharged', 'dischargedVolume', `${litres(dischargedVolume)}, ${percent(dischargedVolume / waterSupplied)} of the supply, is discharged with ${writeNumber(nitrogenMass * 1000)} g of nitrogen and ${writeNumber(phosphorusMass * 1000)} g of phosphorus: ${ways}.`);
  }
}
