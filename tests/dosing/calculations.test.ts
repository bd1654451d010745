import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runTime, shot, waterGiven } from '../../src/dosing/index.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test('a run time gives back what it was asked for: uptake and drain, to the driest quarter', () => {
  fc.assert(fc.property(between(0.01, 5), between(0, 0.6), between(0.5, 1), between(0.5, 8), (litres, drainShare, uniformity, flow) => {
    const dripper = { dripperFlow: `${flow} L/h`, drippersPerPlant: 2 } as const;
    const run = runTime({ volumePerPlant: `${litres} L`, drainShare, uniformity, ...dripper });
    expect(run.appliedVolume.in('L') * uniformity * (1 - drainShare)).toBeCloseTo(litres, 9);
    expect(run.appliedVolume.in('L') * (1 - run.meanDrainShare.si)).toBeCloseTo(litres, 9);
    fc.pre(run.runTime.in('d') <= 1);
    expect(waterGiven({ runTime: run.runTime, ...dripper }).appliedVolume.in('L')).toBeCloseTo(run.appliedVolume.in('L'), 9);
  }));
});

test('drain is feed that has to go somewhere', () => {
  const input = { volumePerPlant: '0.25 L', dripperFlow: '2 L/h' } as const;
  expect(runTime(input).notes).toEqual([]);
  expect(runTime({ ...input, uniformity: '94 %' }).notes).toMatchObject([{ code: 'discharge' }]);
  expect(runTime({ ...input, drainShare: '20 %' }).notes).toMatchObject([{ code: 'discharge', field: 'meanDrainShare' }]);
});

test('lines that fill for more than a tenth of the time are worth a word', () => {
  const filling = (seconds: number) => runTime({ volumePerPlant: '0.25 L', dripperFlow: '2 L/h', fillTime: `${seconds} s` }).notes.map(({ code }) => code);
  // The drippers give for 450 s.
  expect([filling(49), filling(51)]).toEqual([[], ['filling']]);
});

test('a run longer than a day is a danger', () => {
  const codes = (volumePerPlant: '2.4 L' | '2.5 L') => runTime({ volumePerPlant, dripperFlow: '0.1 L/h' }).notes.map(({ code, severity }) => `${severity} ${code}`);
  expect([codes('2.4 L'), codes('2.5 L')]).toEqual([[], ['danger longer-than-a-day']]);
  expect(runTime({ volumePerPlant: '2 L', dripperFlow: '0.1 L/h', shotsPerDay: 200, fillTime: '30 min' }).notes.find(({ code }) => code === 'longer-than-a-day')!.text).toContain('give for 20 h and lines fill for 100 h');
});

test('unevenness that drains more than half is told, with the uniformity that is enough', () => {
  const uneven = (uniformity: number) => runTime({ volumePerPlant: '0.25 L', dripperFlow: '2 L/h', drainShare: '40 %', uniformity }).notes.find(({ code }) => code === 'uneven');
  const [, enough] = /takes a uniformity of ([\d.]+) %/.exec(uneven(0.3)!.text)!;
  expect(uneven(0.3)!.text).toContain('82 %');
  expect(uneven(Number(enough) / 100)).toBeUndefined();
  expect(uneven(Number(enough) / 100 - 0.002)).toBeDefined();
  expect(runTime({ volumePerPlant: '0.25 L', dripperFlow: '2 L/h', drainShare: '60 %' }).notes.map(({ code }) => code)).toEqual(['discharge']);
});

describe('shots', () => {
  const bag = { substrateVolume: '10 L', shotShare: '3 %', dripperFlow: '2 L/h' } as const;

  test('are counted only for a daily volume, and none for none', () => {
    expect(shot(bag)).not.toHaveProperty('shotsPerDay');
    expect(shot({ ...bag, dailyVolumePerPlant: '0 L' }).shotsPerDay).toBe(0);
  });

  test('of whole numbers are not one more for the rounding of doubles', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 5, max: 300 }), (shots, permille) => {
      expect(shot({ ...bag, shotShare: permille / 1000, dailyVolumePerPlant: `${(permille * shots) / 100} L` }).shotsPerDay).toBe(shots);
    }));
  });

  test('out of the usual size are noted', () => {
    expect(shot(bag).notes).toEqual([]);
    expect(shot({ ...bag, shotShare: '10 %' }).notes).toMatchObject([{ code: 'unusual-shot', severity: 'info' }]);
  });
});

test.each<[string, object, string]>([
  ['a drain of everything', { drainShare: 1 }, 'drainShare'],
  ['a percentage as a number', { drainShare: 20 }, 'drainShare'],
  ['no uniformity at all', { uniformity: 0 }, 'uniformity'],
  ['no dripper', { drippersPerPlant: 0 }, 'drippersPerPlant'],
])('%s is refused', (_, changes, path) => {
  expect(runTime.try({ ...runTime.example, ...changes })).toMatchObject({ ok: false, error: { problems: [{ path }] } });
});
