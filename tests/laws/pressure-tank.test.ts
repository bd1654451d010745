import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  acceptanceFactor, demandFromRunAndRest, drawdownForTimeBetweenStarts, drawdownFromRunAndRest, fastDrainAcceptanceFactor, plainTankAcceptanceFactor,
  preChargeElsewhere, preChargeFromAcceptance, preChargeFromAirShare, irrigationCycle, pumpCycle, pumpFlowFromPoints, pumpRestTime, pumpRunTime, pumpStartRate, waterShareOfTank, worstDemandForStarts,
} from '../../src/pressure-tank/index.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const atmosphere = between(6e4, 1.05e5);
/** Cut-in, what cut-out is above it, and where the pre-charge lies between none and cut-out. */
const tank = fc.record({ cutIn: between(5e4, 5e5), gap: between(5e4, 3e5), place: between(0, 1), atmosphere });
const read = ({ cutIn, gap, place, atmosphere: air }: { cutIn: number; gap: number; place: number; atmosphere: number }) =>
  ({ cutIn, cutOut: cutIn + gap, preCharge: place * (cutIn + gap), air });

describe('the tank', () => {
  test('keeps to Boyle: absolute pressure times air volume to the n stays as it was', () => {
    fc.assert(fc.property(between(0, 6e5), between(0, 6e5), atmosphere, between(1, 1.4), (a, b, air, n) => {
      const [preCharge, pressure] = [Math.min(a, b), Math.max(a, b)];
      const airShare = 1 - waterShareOfTank(pressure, preCharge, air, n);
      expect(Math.abs(((pressure + air) * airShare ** n) / (preCharge + air) - 1)).toBeLessThan(1e-12);
    }));
  });

  test('gives a share between nothing and all, most with the pre-charge at cut-in', () => {
    fc.assert(fc.property(tank, (drawn) => {
      const { cutIn, cutOut, preCharge, air } = read(drawn);
      const factor = acceptanceFactor(preCharge, cutIn, cutOut, air);
      expect(factor).toBeGreaterThanOrEqual(0);
      expect(factor).toBeLessThan(1);
      expect(factor).toBeLessThanOrEqual(acceptanceFactor(cutIn, cutIn, cutOut, air));
      expect(acceptanceFactor(preCharge, cutIn, cutOut + 1e4, air)).toBeGreaterThan(factor);
    }));
  });

  test('without bladder is a tank with no pre-charge, and less than one with', () => {
    fc.assert(fc.property(tank, (drawn) => {
      const { cutIn, cutOut, air } = read(drawn);
      expect(plainTankAcceptanceFactor(cutIn, cutOut, air)).toBe(acceptanceFactor(0, cutIn, cutOut, air));
      expect(plainTankAcceptanceFactor(cutIn, cutOut, air)).toBeLessThan(acceptanceFactor(cutIn - 1.4e4, cutIn, cutOut, air));
    }));
  });

  test('drained fast gives less than drained slowly, and the same without cooling', () => {
    fc.assert(fc.property(tank, between(1.01, 1.4), (drawn, n) => {
      const { cutIn, cutOut, air, preCharge } = read(drawn);
      const slow = acceptanceFactor(preCharge, cutIn, cutOut, air);
      expect(fastDrainAcceptanceFactor(preCharge, cutIn, cutOut, air, n)).toBeLessThanOrEqual(slow + 1e-15);
      expect(Math.abs(fastDrainAcceptanceFactor(preCharge, cutIn, cutOut, air, 1) - slow)).toBeLessThan(1e-12);
    }));
  });

  test('the pre-charge is found again from what it gave, on its own side of cut-in', () => {
    fc.assert(fc.property(tank, (drawn) => {
      const { cutIn, cutOut, preCharge, air } = read(drawn);
      const found = preChargeFromAcceptance(acceptanceFactor(preCharge, cutIn, cutOut, air), cutIn, cutOut, air);
      expect(Math.abs((preCharge < cutIn ? found.belowCutIn : found.aboveCutIn)! - preCharge)).toBeLessThan(1e-3);
    }));
  });

  test('the pre-charge is found again with any exponent, and from the share of air', () => {
    fc.assert(fc.property(tank, between(1, 1.4), (drawn, n) => {
      const { cutIn, cutOut, preCharge, air } = read(drawn);
      const found = preChargeFromAcceptance(acceptanceFactor(preCharge, cutIn, cutOut, air, n), cutIn, cutOut, air, n);
      expect(Math.abs((preCharge < cutIn ? found.belowCutIn : found.aboveCutIn)! - preCharge)).toBeLessThan(1e-3);
      expect(Math.abs(preChargeFromAirShare(1 - waterShareOfTank(cutOut, preCharge, air, n), cutOut, air, n) - preCharge)).toBeLessThan(1e-6);
    }));
  });

  test('carried elsewhere and back again has the pre-charge it had', () => {
    fc.assert(fc.property(between(0, 6e5), atmosphere, atmosphere, between(263, 333), between(263, 333), (preCharge, here, there, cold, warm) => {
      expect(Math.abs(preChargeElsewhere(preChargeElsewhere(preCharge, here, cold, there, warm), there, warm, here, cold) - preCharge)).toBeLessThan(1e-6);
    }));
  });

  test('more water than any pre-charge gives is explained by none', () => {
    fc.assert(fc.property(tank, (drawn) => {
      const { cutIn, cutOut, air } = read(drawn);
      const most = acceptanceFactor(cutIn, cutIn, cutOut, air);
      expect(preChargeFromAcceptance(most * 1.001, cutIn, cutOut, air)).toEqual({ belowCutIn: undefined, aboveCutIn: undefined });
    }));
  });
});

describe('the pump', () => {
  const cycle = fc.record({ drawdown: between(1e-4, 1), pumpFlow: between(1e-5, 1e-2), share: between(0.01, 0.99) });

  test('delivers over a cycle what the demand takes', () => {
    fc.assert(fc.property(cycle, ({ drawdown, pumpFlow, share }) => {
      const demand = share * pumpFlow;
      const [run, rest] = [pumpRunTime(drawdown, pumpFlow, demand), pumpRestTime(drawdown, demand)];
      expect(Math.abs((pumpFlow * run) / (demand * (run + rest)) - 1)).toBeLessThan(1e-12);
    }));
  });

  test('starts most often at half its flow, four drawdowns over the flow apart', () => {
    fc.assert(fc.property(cycle, ({ drawdown, pumpFlow, share }) => {
      const most = pumpStartRate(drawdown, pumpFlow, worstDemandForStarts(pumpFlow));
      expect(pumpStartRate(drawdown, pumpFlow, share * pumpFlow)).toBeLessThanOrEqual(most * (1 + 1e-12));
      expect(Math.abs(drawdownForTimeBetweenStarts(pumpFlow, 1 / most) / drawdown - 1)).toBeLessThan(1e-12);
    }));
  });

  test('run and rest tell the demand and the drawdown', () => {
    fc.assert(fc.property(cycle, ({ drawdown, pumpFlow, share }) => {
      const times = [pumpRunTime(drawdown, pumpFlow, share * pumpFlow), pumpRestTime(drawdown, share * pumpFlow)] as const;
      expect(Math.abs(demandFromRunAndRest(pumpFlow, ...times) / (share * pumpFlow) - 1)).toBeLessThan(1e-12);
      expect(Math.abs(drawdownFromRunAndRest(pumpFlow, ...times) / drawdown - 1)).toBeLessThan(1e-12);
    }));
  });

  test('never rests under a demand it cannot exceed, never starts without one', () => {
    expect(pumpRunTime(0.01, 1e-3, 1e-3)).toBe(Infinity);
    expect(pumpRunTime(0.01, 1e-3, 2e-3)).toBe(Infinity);
    expect(pumpRestTime(0.01, 0)).toBe(Infinity);
    expect(pumpStartRate(0.01, 1e-3, 0)).toBe(0);
    expect(pumpStartRate(0.01, 1e-3, 1e-3)).toBe(0);
  });
});

describe('an irrigation event', () => {
  const pascals = (si: number) => `${si} Pa` as const;
  const flow = (litresPerMinute: number) => `${litresPerMinute} L/min` as const;
  const event = fc.record({ drawn: tank, volume: between(5, 500), top: between(8, 60), bottom: between(0.2, 1), drawnShare: between(0.05, 0.9), x: between(0, 1), n: between(1, 1.4), minutes: between(5, 300), full: fc.boolean() });
  const written = ({ drawn, volume, top, bottom, drawnShare, x, n, minutes, full }: typeof event extends fc.Arbitrary<infer T> ? T : never) => {
    const { cutIn, cutOut, preCharge, air } = read(drawn);
    return {
      tankVolume: `${volume} L`, preCharge: pascals(Math.min(preCharge, 0.97 * cutOut)), cutIn: pascals(cutIn), cutOut: pascals(cutOut), atmosphericPressure: pascals(air), polytropicExponent: n,
      pumpPoints: [{ pumpPressure: pascals(cutIn), pumpFlow: flow(top) }, { pumpPressure: pascals(cutOut), pumpFlow: flow(top * bottom) }],
      demand: flow(top * bottom * drawnShare), demandPressure: pascals(cutOut), demandExponent: x, duration: `${minutes} min`, tankAtStart: full ? 'cut-out' : 'cut-in', points: 200,
    } as const;
  };

  test('does not depend on the points of its columns', () => {
    fc.assert(fc.property(event, fc.integer({ min: 2, max: 60 }), (drawn, points) => {
      const [many, few] = [irrigationCycle(written(drawn)), irrigationCycle({ ...written(drawn), points })];
      for (const name of ['meanPressure', 'volumeDrawn', 'volumePumped', 'lowestTankPressure', 'highestTankPressure'] as const) expect(Math.abs(few[name].si - many[name].si)).toBeLessThanOrEqual(1e-9 * many[name].si);
      expect(few.starts).toBe(many.starts);
    }), { numRuns: 40 });
  });

  test('keeps its pressure between its lowest and highest, and its mean as its columns show it', () => {
    fc.assert(fc.property(event, (drawn) => {
      const { tankPressures, lowestTankPressure, highestTankPressure, meanPressure } = irrigationCycle({ ...written(drawn), points: 20_001 });
      const slack = 1e-6 * highestTankPressure.si;
      for (const p of tankPressures.si) expect(p >= lowestTankPressure.si - slack && p <= highestTankPressure.si + slack).toBe(true);
      expect(Math.abs(tankPressures.si.reduce((sum, p) => sum + p, 0) / 20_001 / meanPressure.si - 1)).toBeLessThan(0.01);
    }), { numRuns: 20 });
  });

  test('has pumped, by its columns, what is drawn and what the tank holds more than at the start', () => {
    fc.assert(fc.property(event, (drawn) => {
      const input = { ...written(drawn), duration: '30 min', points: 20_001 } as const;
      const { pumpFlows, demandFlows, volumePumped, volumeDrawn } = irrigationCycle(input);
      const volume = ({ si }: { readonly si: Float64Array }) => si.reduce((sum, q) => sum + q, 0) * (1800 / 20_001);
      const step = (drawn.top / 60_000) * (1800 / 20_000);
      // Each switching of the pump may fall anywhere between two points.
      const { starts } = irrigationCycle(input);
      expect(Math.abs(volume(pumpFlows) - volumePumped.si)).toBeLessThan((2 * starts + 2) * step);
      expect(Math.abs(volume(demandFlows) / volumeDrawn.si - 1)).toBeLessThan(0.01);
    }), { numRuns: 20 });
  });

  test('of a constant pump and demand runs and rests as the cycle of constant flows does', () => {
    fc.assert(fc.property(event, (drawn) => {
      const { pumpPoints: _curve, demand, demandPressure: _p, demandExponent: _x, polytropicExponent: _n, duration, points, tankAtStart, ...same } = written(drawn);
      const pumpFlow = flow(drawn.top);
      const varying = irrigationCycle({ ...same, pumpPoints: [{ pumpPressure: '1 bar', pumpFlow }], demand, duration, points, tankAtStart });
      const constant = pumpCycle({ ...same, pumpFlow, demand });
      expect(Math.abs(varying.runTime!.si / constant.runTime!.si - 1)).toBeLessThan(1e-7);
      expect(Math.abs(varying.restTime!.si / constant.restTime!.si - 1)).toBeLessThan(1e-7);
    }), { numRuns: 40 });
  });

  test('with a tank twice as large has half the starts an hour at the same pressures', () => {
    fc.assert(fc.property(event, (drawn) => {
      const [one, two] = [irrigationCycle(written(drawn)), irrigationCycle(written({ ...drawn, volume: 2 * drawn.volume }))];
      expect(Math.abs(one.startsPerHour.si / (2 * two.startsPerHour.si) - 1)).toBeLessThan(1e-12);
    }), { numRuns: 40 });
  });

  test('its pump never gives more at a higher pressure, and what its points say at them', () => {
    const points = fc.array(fc.tuple(between(2000, 2e5), between(0, 1e-3)), { minLength: 1, maxLength: 8 }).map((steps) => {
      const flows = steps.map(([, q]) => q).sort((a, b) => b - a);
      let pressure = 0;
      return steps.map(([rise], i) => ({ pressure: (pressure += rise), flow: flows[i]! }));
    });
    fc.assert(fc.property(points, between(0, 2e6), between(0, 2e5), (curve, p, more) => {
      expect(pumpFlowFromPoints(curve, p + more)).toBeLessThanOrEqual(pumpFlowFromPoints(curve, p) * (1 + 1e-12));
      for (const { pressure, flow: stated } of curve) expect(Math.abs(pumpFlowFromPoints(curve, pressure) - stated)).toBeLessThanOrEqual(1e-10);
    }));
  });
});
