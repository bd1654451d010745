import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bleedFromShareOfSupply, compareLoopStrategies, cropNutrientUptakes, dischargePerUptake, dischargeShareOfSupply, drainBlend, loopConcentration, loopRun, loopStep, refillRecipe, runLoop,
  steadyConcentration, turnoverUntil, type IonExchange, type LoopTask,
} from '../../src/recirculation/index.js';
import { chargeBalanceOfIons } from '../../src/solution/index.js';
import { quantity } from '../../src/units/index.js';

/** Small numbers as often as large ones, and zero; none so small that doubles lose their digits. */
const upTo = (max: number) => fc.oneof(fc.double({ min: 0, max, noNaN: true }), fc.constant(0), fc.double({ min: -9, max: 0, noNaN: true }).map((x) => max * 10 ** x)).map((x) => (x < 1e-15 ? 0 : x));
const exchanges = fc.record({ refill: upTo(50), uptake: upTo(50), uptakeFactor: upTo(4), bleed: upTo(5) });
const turnover = fc.oneof(upTo(1), upTo(300));
const mmol = (value: number) => quantity(`${value} mmol/L`, 'amountConcentration');

/** Runge and Kutta's fourth-order rule, with what is there as the most that can be taken up. */
function byRungeKutta({ refill, uptake, uptakeFactor, bleed }: IonExchange, initial: number, turnover: number, steps: number): number {
  const slope = (c: number): number => refill * (1 + bleed) - uptake - (uptakeFactor + bleed) * c;
  const h = turnover / steps;
  let c = initial;
  for (let i = 0; i < steps; i++) {
    const k1 = slope(c);
    const k2 = slope(c + (h / 2) * k1);
    const k3 = slope(c + (h / 2) * k2);
    c = Math.max(0, c + (h / 6) * (k1 + 2 * k2 + 2 * k3 + slope(c + h * k3)));
  }
  return c;
}

describe('a step of a loop', () => {
  test('loses and makes nothing, however long it is and whether or not the plants get theirs', () => {
    fc.assert(fc.property(exchanges, upTo(200), turnover, (exchange, initial, w) => {
      const { supplied, takenUp, discharged, final } = loopStep(exchange, initial, w);
      expect(Math.abs(initial + supplied - takenUp - discharged - final)).toBeLessThanOrEqual(1e-10 * (initial + supplied));
      for (const one of [supplied, takenUp, discharged, final]) expect(one).toBeGreaterThanOrEqual(0);
    }), { numRuns: 3000 });
  });

  test('is two steps of any length', () => {
    fc.assert(fc.property(exchanges, upTo(200), turnover, turnover, (exchange, initial, one, other) => {
      const first = loopStep(exchange, initial, one);
      const second = loopStep(exchange, first.final, other);
      const whole = loopStep(exchange, initial, one + other);
      const scale = 1e-10 * (initial + whole.supplied + exchange.uptake * (one + other));
      expect(Math.abs(second.final - whole.final)).toBeLessThanOrEqual(scale);
      expect(Math.abs(first.takenUp + second.takenUp - whole.takenUp)).toBeLessThanOrEqual(scale);
      expect(Math.abs(first.discharged + second.discharged - whole.discharged)).toBeLessThanOrEqual(scale);
    }), { numRuns: 2000 });
  });

  test('is what the differential equation gives by another method', () => {
    fc.assert(fc.property(exchanges, upTo(200), upTo(3), (exchange, initial, w) => {
      const scale = initial + (exchange.refill * (1 + exchange.bleed) + exchange.uptake) * w + 1e-9;
      expect(Math.abs(loopConcentration(exchange, initial, w) - byRungeKutta(exchange, initial, w, 2000))).toBeLessThanOrEqual(1e-7 * scale);
    }), { numRuns: 150 });
  });

  test('comes to a limit just when it is said to', () => {
    fc.assert(fc.property(exchanges, upTo(200), upTo(200), (exchange, initial, limit) => {
      const w = turnoverUntil(exchange, initial, limit);
      if (w === Infinity) {
        const later = [0.1, 1, 10, 100, 1000].map((some) => loopConcentration(exchange, initial, some));
        for (const one of later) expect(Math.sign(one - limit) * Math.sign(initial - limit)).not.toBe(-1);
      } else if (w < 1e6) {
        const k = exchange.uptakeFactor + exchange.bleed;
        // Near its ceiling a concentration hardly moves, and what is left of the way is rounded.
        expect(Math.abs(loopConcentration(exchange, initial, w) - limit)).toBeLessThanOrEqual(1e-9 * (limit + initial + (k > 0 ? (exchange.refill * (1 + exchange.bleed) + exchange.uptake) / k : 0)) + 1e-12);
      }
    }), { numRuns: 2000 });
  });

  test('ends, taken again and again, at the steady state', () => {
    fc.assert(fc.property(fc.record({ refill: upTo(50), uptake: upTo(50), uptakeFactor: fc.double({ min: 0.05, max: 4, noNaN: true }), bleed: upTo(5) }), upTo(200), (exchange, initial) => {
      let c = initial;
      for (let day = 0; day < 1500; day++) c = loopStep(exchange, c, 0.5).final;
      const steady = steadyConcentration(exchange, initial);
      expect(Math.abs(c - steady)).toBeLessThanOrEqual(1e-10 * (steady + exchange.uptake + exchange.refill) + 1e-12);
    }));
  });

  test('stays nearer to its refill with more let out', () => {
    fc.assert(fc.property(exchanges, turnover, upTo(5), (exchange, w, more) => {
      const off = (bleed: number) => Math.abs(loopConcentration({ ...exchange, bleed }, exchange.refill, w) - exchange.refill);
      expect(off(exchange.bleed + more)).toBeLessThanOrEqual(off(exchange.bleed) + 1e-9 * (exchange.refill + exchange.uptake) * (1 + w));
    }));
  });

  test('holds an ion at its limit with what is said to be let out for that', () => {
    fc.assert(fc.property(upTo(20), upTo(5), upTo(30), turnover, (refill, uptake, limit, w) => {
      const bleed = dischargePerUptake(refill, uptake, limit);
      if (bleed === 0 || bleed > 1e3) return;
      expect(Math.abs(loopConcentration({ refill, uptake, uptakeFactor: 0, bleed }, limit, w) / limit - 1)).toBeLessThan(1e-9);
      expect(bleedFromShareOfSupply(dischargeShareOfSupply(bleed))).toBeCloseTo(bleed, 6);
    }));
  });
});

const ion = fc.record({ refill: upTo(20), uptake: upTo(20), uptakeFactor: upTo(2), initial: upTo(30), limit: fc.option(upTo(30), { nil: undefined }), dumpLimit: fc.option(upTo(30), { nil: undefined }), cationCharge: fc.constantFrom(0, 1, 2) });
const tasks = fc.record({
  volume: fc.double({ min: 0.01, max: 50, noNaN: true }),
  ions: fc.array(ion, { minLength: 1, maxLength: 5 }),
  turnovers: fc.array(upTo(2), { minLength: 1, maxLength: 60 }),
  ratios: fc.option(fc.array(upTo(3), { minLength: 60, maxLength: 60 }), { nil: undefined }),
  rule: fc.record({ interval: fc.option(fc.integer({ min: 1, max: 30 }), { nil: undefined }), conductivity: fc.option(upTo(0.5), { nil: undefined }), dumpShare: fc.double({ min: 0.01, max: 1, noNaN: true }), bleed: upTo(2) }),
}).map(({ turnovers, ratios, ...task }): LoopTask => ({ ...task, waterUses: turnovers.map((one) => one * task.volume), uptakeRatios: ratios, conductivityPerCharge: 0.01 }));

describe('a run of a loop', () => {
  test('loses and makes nothing under any strategy', () => {
    fc.assert(fc.property(tasks, (task) => {
      for (const { supplied, takenUp, discharged, concentrations, final } of runLoop(task).budgets) {
        expect(Math.abs(concentrations[0]! + supplied - takenUp - discharged - final)).toBeLessThanOrEqual(1e-10 * (concentrations[0]! + supplied));
        for (const one of [supplied, takenUp, discharged, final, ...concentrations]) expect(one).toBeGreaterThanOrEqual(0);
      }
    }), { numRuns: 500 });
  });

  test('is the closed form where nothing is let out in the evening, for days of any length', () => {
    fc.assert(fc.property(tasks, (task) => {
      const { budgets } = runLoop({ ...task, uptakeRatios: undefined, ions: task.ions.map((one) => ({ ...one, dumpLimit: undefined })), rule: { ...task.rule, interval: undefined, conductivity: undefined } });
      const w = Array.from(task.waterUses).reduce((sum, one) => sum + one, 0) / task.volume;
      task.ions.forEach((one, i) => {
        const exchange = { ...one, bleed: task.rule.bleed };
        expect(Math.abs(budgets[i]!.final - loopConcentration(exchange, one.initial, w))).toBeLessThanOrEqual(1e-10 * (one.initial + (one.refill * (1 + exchange.bleed) + one.uptake) * w));
        const until = one.limit === undefined || one.initial >= one.limit ? Infinity : turnoverUntil(exchange, one.initial, one.limit);
        if (until > w * (1 + 1e-6)) expect(budgets[i]!.passedAfter === Infinity || one.initial >= one.limit!).toBe(true);
      });
    }), { numRuns: 500 });
  });

  test('keeps below what it is let out at, but for one day', () => {
    fc.assert(fc.property(tasks, (task) => {
      const { budgets, dumps } = runLoop(task);
      const emptied = new Set(dumps);
      task.ions.forEach(({ dumpLimit }, i) => {
        if (dumpLimit === undefined) return;
        for (let day = 1; day <= task.waterUses.length; day++) if (budgets[i]!.concentrations[day]! > dumpLimit) expect(emptied.has(day)).toBe(true);
      });
    }), { numRuns: 300 });
  });

  test('lets out of volume and ions what the plants did not take', () => {
    fc.assert(fc.property(tasks, (task) => {
      const { dischargedVolumes, dumps } = runLoop(task);
      const taken = Array.from(task.waterUses).reduce((sum, one) => sum + one, 0);
      const out = dischargedVolumes.reduce((sum, one) => sum + one, 0);
      expect(Math.abs(out - task.rule.bleed * taken - dumps.length * task.rule.dumpShare * task.volume)).toBeLessThanOrEqual(1e-10 * (out + taken));
    }), { numRuns: 300 });
  });
});

type Strategy = NonNullable<Parameters<typeof loopRun>[0]['strategy']>;

describe('calculations', () => {
  const loop = { loopVolume: '200 L', freshFeed: { ions: { 'Na+': '2 mmol/L', 'K+': '5 mmol/L', 'NO3-': '6.5 mmol/L' } }, uptakeConcentrations: { 'Na+': '0.6 mmol/L', 'K+': '4.6 mmol/L', 'NO3-': '6 mmol/L' }, days: 40 } as const;

  test('a comparison is the runs that it compares', () => {
    const strategies = [{ name: 'a' }, { name: 'b', dumpInterval: 7, dumpShare: 0.5 }, { name: 'c', dumpConductivity: '1 mS/cm' }, { name: 'd', dischargeShare: '10 %' }] as const;
    const { comparisons } = compareLoopStrategies({ ...loop, dailyWaterUse: '30 L', strategies });
    strategies.forEach(({ name: _, ...strategy }, i) => {
      const run = loopRun({ ...loop, dailyWaterUse: '30 L', strategy });
      const one = comparisons[i]!;
      expect([one.nitrogenMass.si, one.dischargedVolume.si, one.highestSodium!.si, one.discharges]).toEqual([run.nitrogenMass.si, run.dischargedVolume.si, run.highestConcentrations['Na+']!.si, run.dischargeEvents.length]);
      expect(run.balanceResidual.si).toBeLessThan(1e-12);
    });
  });

  test('what the note of a passed limit asks for keeps the limit', () => {
    const upToOf = (max: number) => fc.double({ min: max / 1000, max, noNaN: true });
    const seen = { steadily: 0, wholly: 0, earlier: 0, itself: 0 };
    fc.assert(fc.property(
      fc.record({ refill: upToOf(3), uptake: upToOf(2), factor: fc.oneof(fc.constant(0), upToOf(0.3)), limit: upToOf(8), initial: upToOf(8), caught: fc.constantFrom('100 %', '60 %') }),
      fc.array(fc.double({ min: 0, max: 120, noNaN: true }), { minLength: 60, maxLength: 60 }), fc.option(fc.array(fc.double({ min: 0.5, max: 2, noNaN: true }), { minLength: 60, maxLength: 60 }), { nil: undefined }),
      fc.constantFrom<(limit: number) => Strategy>(() => ({}), () => ({ dischargeShare: '3 %' }), (limit) => ({ dumpLimits: { 'Na+': mmol(limit) } }), (limit) => ({ dumpLimits: { 'Na+': mmol(limit) }, dumpShare: '5 %' })),
      ({ refill, uptake, factor, limit, initial, caught }, uses, ratios, strategyFor) => {
        const strategy = strategyFor(limit);
        const given = {
          loopVolume: '200 L', freshFeed: { ions: { 'Na+': mmol(refill) } }, uptakeConcentrations: { 'Na+': mmol(uptake) }, uptakeFactors: { 'Na+': factor }, ionLimits: { 'Na+': mmol(limit) }, caughtShare: caught,
          dailyWaterUses: { unit: 'L', values: uses }, uptakeRatios: ratios && ({ unit: '%', values: ratios.map((one) => 100 * one) } as const),
        } as const;
        const told = loopRun({ ...given, startingSolution: { ions: { 'Na+': mmol(initial) } }, strategy }).notes.find(({ code }) => code === 'limit-passed')?.text;
        if (told === undefined || told.includes('refill itself')) return;
        const start = /[Bb]egin with less/.test(told) ? Math.min(refill, limit) : initial;
        const daysAbove = (other: Strategy) => loopRun({ ...given, startingSolution: { ions: { 'Na+': mmol(start) } }, strategy: other }).daysAboveLimit;
        const [, share] = /takes (?:up to )?(\S+) % of the supply/.exec(told) ?? [];
        const [, every] = /all of the loop every (day|\d+)/.exec(told) ?? [];
        const [, from, least] = /let the loop out from (\S+) mmol\/L on(?:, at least (\S+) %)?/.exec(told) ?? [];
        if (share !== undefined && Number(share) <= 90) expect([told, daysAbove({ dischargeShare: Number(share) / 100 }), ++seen.steadily]).toEqual([told, 0, seen.steadily]);
        if (every !== undefined) expect([told, daysAbove({ ...strategy, dumpLimits: undefined, dumpShare: 1, dumpInterval: every === 'day' ? 1 : Number(every) }), ++seen.wholly]).toEqual([told, 0, seen.wholly]);
        if (from !== undefined) expect([told, daysAbove({ ...strategy, dumpLimits: { 'Na+': mmol(Number(from)) }, ...(least !== undefined && { dumpShare: Number(least) / 100 }) }), ++seen.earlier]).toEqual([told, 0, seen.earlier]);
        if (told.includes('by itself')) expect([told, daysAbove(strategy), ++seen.itself]).toEqual([told, 0, seen.itself]);
      }), { numRuns: 600 });
    for (const [which, times] of Object.entries(seen)) expect(times, which).toBeGreaterThan(5);
  });

  test('nitrogen of the events and of the day-long bleed make up the whole', () => {
    const run = loopRun({ ...loop, dailyWaterUse: '30 L', strategy: { dumpInterval: 9, dumpShare: '40 %' } });
    expect(run.dischargeEvents.reduce((sum, { nitrogenMass }) => sum + nitrogenMass.si, 0)).toBeCloseTo(run.nitrogenMass.si, 12);
    const bled = loopRun({ ...loop, dailyWaterUse: '30 L', strategy: { dischargeShare: '20 %' } });
    expect(bled.dischargeEvents).toEqual([]);
    expect(bled.ionMasses['NO3-']!.dischargedMass.si * (14.007 / 62.004)).toBeCloseTo(bled.nitrogenMass.si, 12);
  });

  test('drain that is not caught is let out as by a share of the supply', () => {
    // Of 1 L given, 0.3 L drains and half of that is lost: 0.15 L for 0.7 L taken up, 3/17 of the supply.
    const lost = loopRun({ ...loop, dailyWaterUse: '30 L', drainShare: '30 %', caughtShare: '50 %' });
    const bled = loopRun({ ...loop, dailyWaterUse: '30 L', strategy: { dischargeShare: 3 / 17 } });
    expect(lost.dischargedVolume.si).toBeCloseTo(bled.dischargedVolume.si, 12);
    expect(lost.concentrations['Na+']!.si.at(-1)).toBeCloseTo(bled.concentrations['Na+']!.si.at(-1)!, 10);
  });

  test('a refill by the recipe holds the loop', () => {
    const held = { 'Na+': '5 mmol/L', 'K+': '6 mmol/L', 'Ca2+': '3 mmol/L', 'NO3-': '9 mmol/L' } as const;
    const uptakes = { uptakeConcentrations: { 'K+': '3 mmol/L', 'Ca2+': '1.5 mmol/L', 'NO3-': '6 mmol/L' }, uptakeFactors: { 'Na+': 0.3, 'K+': 0.2 } } as const;
    for (const dischargeShare of [0, 0.15]) {
      const { refill, surplusIons } = refillRecipe({ ...uptakes, sourceWater: { ions: { 'Na+': '0.4 mmol/L', 'Ca2+': '0.6 mmol/L' } }, heldSolution: { ions: held }, dischargeShare });
      expect(surplusIons).toEqual([]);
      const run = loopRun({ loopVolume: '150 L', dailyWaterUse: '40 L', freshFeed: { ions: refill }, startingSolution: { ions: held }, ...uptakes, strategy: { dischargeShare }, days: 200 });
      for (const [name, text] of Object.entries(held)) for (const now of run.concentrations[name as 'Na+']!.si) expect(now).toBeCloseTo(Number.parseFloat(text), 10);
    }
  });

  test('a blend with what is to be added is the target, and no more drain than the largest leaves nothing too much', () => {
    const amounts = fc.record({ 'K+': upTo(10), 'Ca2+': upTo(6), 'NO3-': upTo(20) }).map((some) => ({ 'K+': mmol(some['K+']), 'Ca2+': mmol(some['Ca2+']), 'NO3-': mmol(some['NO3-']) }));
    fc.assert(fc.property(amounts, amounts, amounts, fc.double({ min: 0, max: 1, noNaN: true }), (drain, water, target, drainInBlend) => {
      const given = { drain: { ions: drain }, sourceWater: { ions: water }, targetFeed: { ions: target } };
      const { ions, toAdd, largestDrainInBlend } = drainBlend({ ...given, drainInBlend });
      for (const name of ['K+', 'Ca2+', 'NO3-'] as const) expect(ions[name]!.si + toAdd[name]!.si).toBeCloseTo(target[name].si, 10);
      if (largestDrainInBlend === undefined) {
        expect(Object.values(toAdd).some((one) => one.si < 1e-9)).toBe(true);
        return;
      }
      const most = drainBlend({ ...given, drainInBlend: largestDrainInBlend });
      for (const one of Object.values(most.toAdd)) expect(one.si).toBeGreaterThan(-1e-9);
      if (largestDrainInBlend.si > 0.999) return;
      const more = drainBlend({ ...given, drainInBlend: Math.min(1, largestDrainInBlend.si + 1e-3) });
      expect(Object.values(more.toAdd).some((one) => one.si < 0)).toBe(true);
    }));
  });

  test('the make-up solutions of the table balance their charges', () => {
    for (const uptakes of Object.values(cropNutrientUptakes)) expect(Math.abs(chargeBalanceOfIons(uptakes).imbalance)).toBeLessThan(1e-12);
  });

  test('sodium of a tomato trial stays below 20 mmol/L, as was found', () => {
    // Water with 2 mmol/L of sodium chloride, about 130 L/m² taken up: sodium stayed below about 20 mmol/L (a semi-closed trial of 2011-12, read in its abstract).
    for (const litresPerSquareMetre of [8, 12, 20, 40]) {
      const w = 130 / litresPerSquareMetre;
      expect(loopConcentration({ refill: 2, uptake: 0, uptakeFactor: 0.18, bleed: 0 }, 2, w)).toBeLessThan(20);
      expect(loopConcentration({ refill: 2, uptake: 1, uptakeFactor: 0, bleed: 0 }, 2, w)).toBeLessThan(20);
    }
  });
});
