import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  acceptanceFactor, demandFromRunAndRest, drawdownForTimeBetweenStarts, drawdownFromRunAndRest, fastDrainAcceptanceFactor, plainTankAcceptanceFactor,
  preChargeFromAcceptance, pumpRestTime, pumpRunTime, pumpStartRate, waterShareOfTank, worstDemandForStarts,
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
