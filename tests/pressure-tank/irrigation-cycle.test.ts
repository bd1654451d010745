/** What an irrigation event from a pressure tank says beside its numbers, and what it refuses. */
import { describe, expect, test } from 'vitest';
import { irrigationCycle } from '../../src/pressure-tank/index.js';

const garden = { ...irrigationCycle.example, lowestWantedPressure: undefined, motorPower: undefined };
const cautions = ['pressure-vessel', 'mains-electricity', 'backflow'];
const codes = ({ notes }: { readonly notes: readonly { readonly code: string }[] }): string[] => notes.map(({ code }) => code).filter((code) => !cautions.includes(code));
const textOf = ({ notes }: { readonly notes: readonly { readonly code: string; readonly text: string }[] }, code: string): string => notes.find((note) => note.code === code)!.text;
const constantPump = [{ pumpPressure: '2 bar', pumpFlow: '13 L/min' }] as const;

test('carries the cautions that belong to it', () => {
  expect(irrigationCycle(garden).notes.map(({ code }) => code)).toEqual(expect.arrayContaining(cautions));
});

describe('a pump that never stops', () => {
  test('because it gives what is drawn below its cut-out: where the pressure settles', () => {
    const through = irrigationCycle({ ...garden, demand: '12 L/min' });
    expect(codes(through)).toEqual(['pump-runs-through']);
    expect(textOf(through, 'pump-runs-through')).toContain('The pressure settles at 350 kPa (50.8 psi), below the cut-out of 414 kPa (60 psi)');
    for (const absent of ['runTime', 'cycleTime', 'tankForLeastRun', 'halfTheStarts']) expect(through).not.toHaveProperty(absent);
    expect(through.starts).toBe(1);
    // Flows that differ by less than 4 mL/h are one.
    expect(Math.abs(through.demandFlows.at(-1)!.in('mL/min') - through.pumpFlows.at(-1)!.in('mL/min'))).toBeLessThan(0.0601);
  });

  test('because more is drawn than it gives: where the pressure sinks to, and how much may run at a time', () => {
    const sinking = irrigationCycle({ ...garden, demand: '30 L/min', lowestWantedPressure: '2.5 bar' });
    expect(codes(sinking)).toEqual(['demand-above-pump', 'pressure-below-wanted', 'outside-pump-curve']);
    expect(textOf(sinking, 'demand-above-pump')).toContain('sinks to 133 kPa (19.3 psi)');
    expect(textOf(sinking, 'demand-above-pump')).toContain('no more than 58.5 %');
    expect(textOf(sinking, 'pressure-below-wanted')).toContain('cannot hold it');
  });

  test('and whose demand does not give way: to nothing', () => {
    const collapsed = irrigationCycle({ ...garden, demand: '30 L/min', demandPressure: undefined });
    expect(collapsed.settledPressure!.si).toBe(0);
    // Below the lowest point of the curve the flow there is kept.
    expect(collapsed.demandFlows.at(-1)!.in('L/min')).toBe(20);
  });

  test('because it does not reach its cut-out at all', () => {
    const against = irrigationCycle({ ...garden, demand: '0 L/min', tankAtStart: 'cut-in', cutOut: '80 psi' });
    expect(codes(against)).toEqual(['cut-out-not-reached', 'outside-pump-curve']);
  });

  test('because its constant flow is just what is drawn: it stays where it is', () => {
    const still = irrigationCycle({ ...garden, pumpPoints: constantPump, demand: '13 L/min', demandPressure: undefined });
    expect(codes(still)).toEqual(['pump-runs-through']);
    expect(still.settledPressure!.in('psi')).toBeCloseTo(40, 9);
  });
});

describe('a pump that gives nothing at its cut-out', () => {
  // Nothing from 335 kPa on: 95 % of it is 318 kPa, 20 psi (138 kPa) below that 180 kPa, and 2 psi (13.8 kPa) below that 167 kPa.
  const weak = { ...garden, pumpPoints: [{ pumpPressure: '200 kPa', pumpFlow: '18 L/min' }, { pumpPressure: '335 kPa', pumpFlow: '0 L/min' }] } as const;
  const set = { cutOut: '318 kPa', cutIn: '180 kPa', preCharge: '167 kPa' } as const;

  test.each(['0 L/min', '0.1 L/min', '2.4 L/min'] as const)('is a danger whatever is drawn, here %s, and whether or not it starts', (demand) => {
    for (const duration of ['1 s', '36 min'] as const) {
      const dead = irrigationCycle({ ...weak, demand, duration });
      expect(dead.notes.find(({ code }) => code === 'cut-out-not-reached')).toMatchObject({ severity: 'danger', field: 'cutOut' });
      expect(textOf(dead, 'cut-out-not-reached')).toMatch(/nothing from 335 kPa .* Set the cut-out to 318 kPa \(.*\) and the cut-in to 180 kPa \(.*\) with a pre-charge of 167 kPa /);
      expect(codes(irrigationCycle({ ...weak, ...set, demand, duration }))).not.toContain('cut-out-not-reached');
    }
  });

  test('keeps its cut-in where that is low enough, and is too weak for any switch where none is', () => {
    expect(textOf(irrigationCycle({ ...weak, cutIn: '150 kPa', preCharge: '136 kPa' }), 'cut-out-not-reached')).toMatch(/Set the cut-out to 318 kPa \([\d.]+ psi\), or take/);
    const feeble = [{ pumpPressure: '50 kPa', pumpFlow: '18 L/min' }, { pumpPressure: '150 kPa', pumpFlow: '0 L/min' }] as const;
    expect(textOf(irrigationCycle({ ...weak, pumpPoints: feeble }), 'cut-out-not-reached')).toMatch(/No usual switch is that low: take a pump that still gives water at 414 kPa/);
  });

  test('nor at its cut-in: no share of nothing is advised', () => {
    const none = irrigationCycle({ ...weak, cutIn: '340 kPa', preCharge: '326 kPa' });
    expect(textOf(none, 'cut-out-not-reached')).toContain('not even at its cut-in of 340 kPa');
    expect(textOf(none, 'demand-above-pump')).toMatch(/the pump gives nothing: .* Take a pump that gives/);
  });
});

test('nothing drawn from a full tank is no start and no water', () => {
  const still = irrigationCycle({ ...garden, demand: '0 L/min' });
  expect([still.starts, still.volumeDrawn.si, still.volumePumped.si, still.startsPerHour.si]).toEqual([0, 0, 0, 0]);
  expect(still.lowestTankPressure.in('psi')).toBeCloseTo(60, 9);
});

test('an event shorter than the first rest has no start', () => {
  const shot = irrigationCycle({ ...garden, duration: '60 s' });
  expect(shot.starts).toBe(0);
  expect(shot.volumePumped.si).toBe(0);
  expect(shot.pumpRunning).not.toContain(true);
});

describe('short cycles', () => {
  test('are told of with the tank that would mend them', () => {
    const busy = irrigationCycle({ ...garden, motorPower: '450 W' });
    expect(codes(busy)).toEqual(['short-run', 'too-many-starts', 'half-the-starts']);
    expect(codes(irrigationCycle({ ...garden, motorPower: '450 W', tankVolume: busy.tankForLeastRun! }))).toEqual([]);
    expect(irrigationCycle({ ...garden, tankVolume: busy.tankForLeastRun! }).runTime!.in('s')).toBeCloseTo(60, 6);
  });

  test('start half as often with each setting that is said to halve them', () => {
    const busy = irrigationCycle({ ...garden, pumpPoints: constantPump });
    const { tankVolume, cutOut, cutIn, preCharge } = busy.halfTheStarts!;
    for (const setting of [{ tankVolume }, { cutOut: cutOut! }, { cutIn: cutIn!, preCharge: preCharge! }]) {
      expect(irrigationCycle({ ...garden, pumpPoints: constantPump, ...setting }).startsPerHour.si / busy.startsPerHour.si).toBeCloseTo(0.5, 6);
    }
  });

  test('of a narrow band are told of with what the usual one does', () => {
    const narrow = irrigationCycle({ ...garden, pumpPoints: constantPump, cutOut: '48 psi' });
    const usual = irrigationCycle({ ...garden, pumpPoints: constantPump });
    expect(textOf(narrow, 'narrow-band')).toContain(`runs ${usual.runTime!.in('s').toPrecision(4)} s`);
  });

  test('too many to count are refused', () => {
    expect(irrigationCycle.try({ ...garden, tankVolume: '0.1 L', preCharge: '58 psi', demand: '5 L/min', duration: '1 d' })).toMatchObject({ ok: false, error: { problems: [{ path: 'duration' }] } });
  });
});

describe('with a wrong pre-charge the advice is for the right one', () => {
  test.each(['5 psi', '26 psi', '46 psi'] as const)('%s', (preCharge) => {
    const wrong = irrigationCycle({ ...garden, preCharge, motorPower: '450 W' });
    // The usual pre-charge, 13.79 kPa below the cut-in of 40 psi.
    const right = { ...garden, preCharge: '262 kPa', motorPower: '450 W' } as const;
    for (const code of ['short-run', 'too-many-starts']) {
      const litres = /with the pre-charge set right, a tank of (\d+) L/.exec(textOf(wrong, code))![1]!;
      expect(codes(irrigationCycle({ ...right, tankVolume: `${Number(litres)} L` }))).not.toContain(code);
      expect(codes(irrigationCycle({ ...right, tankVolume: `${Number(litres) - 1} L` }))).toContain(code);
    }
    expect(wrong.tankForLeastRun!.in('L')).toBeCloseTo(irrigationCycle(right).tankForLeastRun!.in('L'), 1);
    expect(textOf(wrong, 'half-the-starts')).toContain('Once the pre-charge is set right');
    // Set with its cut-in, 2 psi below it.
    const { cutIn, preCharge: advised } = wrong.halfTheStarts!;
    if (cutIn) expect(cutIn.in('psi') - advised!.in('psi')).toBeCloseTo(2, 3);
  });
});

test('a pre-charge above the cut-in lets the pressure drop to it', () => {
  const dropping = irrigationCycle({ ...garden, preCharge: '46 psi' });
  expect(codes(dropping)).toContain('pre-charge-above-cut-in');
  expect(dropping.lowestTankPressure.in('psi')).toBeCloseTo(40, 9);
  expect(Math.min(...dropping.tankPressures.in('psi'))).toBeGreaterThanOrEqual(46 - 1e-9);
});

test('the pressure that is wanted: how long it is missed, and what to set', () => {
  const wanting = irrigationCycle({ ...garden, lowestWantedPressure: '3 bar', highestWantedPressure: '4 bar' });
  expect(codes(wanting)).toEqual(expect.arrayContaining(['pressure-below-wanted', 'pressure-above-wanted']));
  expect(textOf(wanting, 'pressure-below-wanted')).toContain('raise the cut-in to 300 kPa (43.5 psi)');
  expect(codes(irrigationCycle({ ...garden, cutIn: '3 bar', preCharge: '2.86 bar', lowestWantedPressure: '3 bar' }))).not.toContain('pressure-below-wanted');
});

test('columns too coarse to show the cycles are told of', () => {
  expect(codes(irrigationCycle({ ...garden, points: 50 }))).toContain('few-points');
});

describe('refused are', () => {
  const problems = (changes: object) => {
    const attempt = irrigationCycle.try({ ...garden, ...changes });
    return attempt.ok ? [] : (attempt.error as unknown as { readonly problems: readonly { readonly path: string }[] }).problems.map(({ path }) => path);
  };

  test.each([
    ['a switch the wrong way round', { cutIn: '60 psi', cutOut: '40 psi', preCharge: '20 psi' }, 'cutIn'],
    ['a pre-charge that lets no water in', { preCharge: '60 psi' }, 'preCharge'],
    ['a flow that rises with the pressure', { pumpPoints: [{ pumpPressure: '2 bar', pumpFlow: '10 L/min' }, { pumpPressure: '3 bar', pumpFlow: '12 L/min' }] }, 'pumpPoints'],
    ['two flows at one pressure', { pumpPoints: [{ pumpPressure: '2 bar', pumpFlow: '10 L/min' }, { pumpPressure: '2 bar', pumpFlow: '9 L/min' }] }, 'pumpPoints'],
    ['a pump that gives nothing', { pumpPoints: [{ pumpPressure: '2 bar', pumpFlow: '0 L/min' }] }, 'pumpPoints'],
    ['an exponent without a pressure', { demandPressure: undefined, demandExponent: 0.5 }, 'demandExponent'],
    ['wishes the wrong way round', { lowestWantedPressure: '4 bar', highestWantedPressure: '3 bar' }, 'lowestWantedPressure'],
  ])('%s', (_, changes, path) => {
    expect(problems(changes)).toEqual([path]);
  });
});
