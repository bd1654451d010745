import { calculation, type Solving } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import type { Ion } from '../solution/ions.js';
import { amountConcentration, conductivity, time, volume } from '../units/dimensions.js';
import type { Column } from '../units/column.js';
import type { Quantity } from '../units/quantity.js';
import { writeNumber } from '../units/write.js';
import { dailyWaterUseField, mostDays, secondsInDay } from './days.js';
import { loopConcentration, loopStep, steadyConcentration, turnoverUntil, type IonExchange } from './formulas/build-up.js';
import { bleedFromShareOfSupply } from './formulas/discharge.js';
import { ionKeys } from './ion-record.js';
import { strawberryLoop } from './loop-example.js';
import { loopFields, loopOf, noteLoop, noteRunsOut, refuseCrystals } from './loop-fields.js';
import { byIon } from './run-results.js';

/** What is not passed in so many days, a hundred years, is never passed. */
const never = 36_500;

/**
 * How the ions of a closed loop build up or run out, which of them comes to its limit first, and when.
 *
 * In: the `loopVolume`, all the water that goes round, that in the substrate too (0.1 L to 10 000 m³); the `dailyWaterUse`, what all plants take up in a day;
 * the `freshFeed` that the loop is refilled with, and the `sourceWater` for what the feed does not name, such as sodium and chloride; the
 * `startingSolution` where it is not the fresh feed; what the plants take up with each litre: `uptakeConcentrations` that stay the same and
 * `uptakeFactors` for what is taken up in proportion to what the loop holds (0.18 is told of sodium by tomato, from memory), by `crop` for what is
 * not stated; `ionLimits`; these in mmol/L, or in mg/L of the whole ion; the share of drain and how much of it is caught; the `dischargeShare` of the supply that is let out all the time (0 to 90 %);
 * the `days` to show (60); the `conductivityPerCharge` in mS/cm per meq/L of cations (0.1, common practice).
 * Out: day by day the `times`, `concentrations` and `conductivities`; `steadyStates`, what each ion comes to in the end, left out where it rises for
 * ever; `limitTimes`, for each limit the time and the water taken up until it is passed, both left out where it never is (within a hundred years); the
 * `firstIon` and the `firstLimitTime`.
 * The loop counts as one well mixed volume that is refilled at once; the water around the roots is stronger than its mean. What acid and air make and take, bicarbonate with them, is not followed.
 * An InputError outside the limits and where the loop would come to more than 10 mol/L of an ion.
 *
 * Source: Carmassi et al. 2003 and 2005 for the two models of uptake; the rest is a balance.
 * @example
 * const loop = ionBuildUp({ loopVolume: '200 L', dailyWaterUse: '20 L', freshFeed: { ions: { 'Na+': '1.5 mmol/L' } }, uptakeConcentrations: { 'Na+': '0.9 mmol/L' }, ionLimits: { 'Na+': '6 mmol/L' }, days: 100 });
 * loop.concentrations['Na+'].at(-1).in('mmol/L') // => 7.5
 * loop.firstLimitTime.in('d') // => 75
 */
export const ionBuildUp = /* @__PURE__ */ calculation({
  id: 'ionBuildUp',
  title: 'How the ions of a closed loop build up',
  inputs: () => ({
    ...loopFields(),
    dailyWaterUse: dailyWaterUseField(),
    dischargeShare: field.withDefault(field.share({ limits: [0, 0.9] }), 0),
    days: field.withDefault(field.count({ limits: [1, mostDays] }), 60),
  }),
  outputs: () => ({
    times: output.column(time, 'd'),
    concentrations: output.record<Ion, Float64Array, Column<'amountConcentration'>>(output.column(amountConcentration, 'mmol/L')),
    conductivities: output.column(conductivity, 'mS/cm'),
    steadyStates: output.record<Ion, number, Quantity<'amountConcentration'>>(output.quantity(amountConcentration, 'mmol/L')),
    limitTimes: output.list(output.group({
      ion: output.choice(ionKeys()),
      ionLimit: output.quantity(amountConcentration, 'mmol/L'),
      timeUntilLimit: output.optional(output.quantity(time, 'd')),
      waterUntilLimit: output.optional(output.quantity(volume, 'L')),
    })),
    firstIon: output.optional(output.choice(ionKeys())),
    firstLimitTime: output.optional(output.quantity(time, 'd')),
  }),
  equation: 'V dC/dW = CI (1 + b) − CU − (p + b) C',
  sources: ['carmassi-2003', 'carmassi-2005', 'combrink-2016'],
  example: strawberryLoop,
  solve: (seen, solving) => {
    const loop = loopOf(seen);
    const { volume, names, conductivityPerCharge } = loop;
    noteLoop(seen, loop, solving);
    const bleed = loop.lost + bleedFromShareOfSupply(seen.dischargeShare);
    const turnover = seen.dailyWaterUse / volume;
    const exchanges = loop.ions.map((ion): IonExchange => ({ ...ion, bleed }));
    const times = Float64Array.from({ length: seen.days + 1 }, (_, day) => day * secondsInDay);
    const columns = exchanges.map((exchange, i) => times.map((_, day) => loopConcentration(exchange, loop.ions[i]!.initial, day * turnover)));
    names.forEach((ion, i) => refuseCrystals(ion, Math.max(columns[i]![0]!, columns[i]!.at(-1)!), solving));
    const steady = exchanges.map((exchange, i) => steadyConcentration(exchange, loop.ions[i]!.initial));
    const limitTimes = names.flatMap((ion, i) => {
      const { limit, initial } = loop.ions[i]!;
      if (limit === undefined) return [];
      const volumes = initial > limit ? 0 : steady[i]! > limit ? turnoverUntil(exchanges[i]!, initial, limit) : Infinity;
      const reached = volumes / turnover <= never;
      return [{ ion, ionLimit: limit, timeUntilLimit: reached ? (volumes / turnover) * secondsInDay : undefined, waterUntilLimit: reached ? volumes * volume : undefined }];
    });
    const [first] = limitTimes.filter(({ timeUntilLimit }) => timeUntilLimit !== undefined).sort((one, other) => one.timeUntilLimit! - other.timeUntilLimit!);
    noteShort(names, exchanges, loop.ions.map(({ initial }) => initial), turnover, seen.days, solving);
    if (first) {
      const ceiling = steady[names.indexOf(first.ion)]!;
      const inTheEnd = ceiling === Infinity ? 'it rises for ever' : `it comes to ${writeNumber(ceiling)} mmol/L in the end`;
      const [limit, days] = [writeNumber(first.ionLimit), first.timeUntilLimit! / secondsInDay];
      const passes = days > 0 ? `is the first to pass its limit of ${limit} mmol/L, after ${writeNumber(days)} days` : `begins at its limit of ${limit} mmol/L or above`;
      const remedy = ceiling > first.ionLimit ? 'Let some of the loop out before that, or bring less of it with water and feed' : 'Begin with less of it';
      solving.note('caution', 'limit-passed', 'firstIon', `${first.ion} ${passes}; left alone ${inTheEnd}. ${remedy}.`);
    }
    return {
      times,
      concentrations: byIon(names, (i) => columns[i]!),
      conductivities: times.map((_, day) => conductivityPerCharge * columns.reduce((sum, column, i) => sum + loop.ions[i]!.cationCharge * column[day]!, 0)),
      steadyStates: Object.fromEntries(names.flatMap((ion, i) => (steady[i]! < Infinity ? [[ion, steady[i]!]] : []))),
      limitTimes,
      firstIon: first?.ion,
      firstLimitTime: first?.timeUntilLimit,
    };
  },
});

/** Names the ions that run out. */
function noteShort(names: readonly Ion[], exchanges: readonly IonExchange[], initial: readonly number[], turnover: number, days: number, solving: Solving): void {
  for (const [i, ion] of names.entries()) {
    const exchange = exchanges[i]!;
    const after = loopStep(exchange, initial[i]!, days * turnover).shortFrom / turnover;
    if (after >= days) continue;
    noteRunsOut(ion, after, exchange.refill, solving);
  }
}
