/** What a shot leaves the emitters, and what is said of it. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lateral, lineFilling } from '../../src/laterals/index.js';

/** A row of aubergines in bags. */
const row = { outlets: 28, spacing: '25 cm', diameter: '13.6 mm', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5, inletPressure: '1 bar' } as const;
const usual = { ...row, supplyFlow: '4 L/min', runTime: '2 min' } as const;
const shot = (changes: object) => {
  const attempt = lineFilling.try({ ...usual, ...changes });
  if (!attempt.ok) throw attempt.error;
  return attempt.value;
};
const sum = (values: ArrayLike<number>) => Array.from(values).reduce((a, b) => a + b, 0);
const slopes = fc.integer({ min: -5, max: 5 }).map((slope) => ({ slope: `${slope} %` as const }));

describe('water', () => {
  test('goes into the line, and out of its emitters: as much as the supply gives until it is full', () => {
    fc.assert(fc.property(slopes, fc.double({ min: 2, max: 4, noNaN: true }), (changes, flow) => {
      const { fillTime, lineVolume, shotVolumes } = shot({ ...changes, inletPressure: '3 bar', supplyFlow: `${flow} L/min`, runTime: '1 d' });
      const steady = lateral({ ...row, ...changes, inletPressure: '3 bar' });
      const whileFilling = sum(shotVolumes.in('L')) - steady.inletFlow.in('L/h') * (24 - fillTime.in('h'));
      expect(lineVolume.in('L') + whileFilling).toBeCloseTo((flow / 60) * fillTime.in('s'), 2);
    }), { numRuns: 15 });
  });

  test('comes to the emitters in their order, and to the last when the line is full', () => {
    fc.assert(fc.property(slopes, (changes) => {
      const { arrivalTimes, fillTime, lineVolume } = shot(changes);
      const times = arrivalTimes.in('s');
      times.forEach((time, i) => expect(time).toBeGreaterThan(times[i - 1] ?? 0));
      expect(times.at(-1)).toBeCloseTo(fillTime.in('s'), 9);
      // No supply fills a line sooner than by its whole flow.
      expect(fillTime.in('s')).toBeGreaterThan((lineVolume.in('L') / 4) * 60 * (1 - 1e-9));
    }), { numRuns: 15 });
  });

  const reaches = fc.array(fc.record({ outlets: fc.integer({ min: 1, max: 12 }), diameter: fc.integer({ min: 8, max: 20 }), firstSpacing: fc.integer({ min: 0, max: 20 }), slope: fc.integer({ min: 1, max: 5 }) }), { minLength: 1, maxLength: 4 });
  const lineOf = (uphill: 1 | -1, [first, ...further]: { outlets: number; diameter: number; firstSpacing: number; slope: number }[]) => {
    const written = ({ outlets, diameter, firstSpacing, slope }: typeof first & object) => ({ outlets, diameter: `${diameter} mm`, firstSpacing: `${firstSpacing + 0.1} m`, slope: `${uphill * slope} %` });
    return { ...written(first!), furtherReaches: further.map(written), inletPressure: '3 bar', runTime: '1 d' };
  };

  test('in a climbing line of several pipes drains but for the pipe before the first outlet', () => {
    fc.assert(fc.property(reaches, (pipes) => {
      const { drainVolumes, keptVolume, lineVolume } = shot(lineOf(1, pipes));
      const area = (Math.PI / 4) * pipes[0]!.diameter ** 2 / 1000;
      const below = area * (pipes[0]!.firstSpacing + 0.1);
      expect(keptVolume!.in('L')).toBeCloseTo(below, 9);
      expect(sum(drainVolumes!.in('L'))).toBeCloseTo(lineVolume.in('L') - below, 9);
    }), { numRuns: 40 });
  });

  test('in a falling line of several pipes drains, and no more than it holds', () => {
    fc.assert(fc.property(reaches, (pipes) => {
      const { drainVolumes, keptVolume } = shot(lineOf(-1, pipes));
      const held = pipes.reduce((all, { diameter, firstSpacing, outlets }) => all + (Math.PI / 4) * diameter ** 2 / 1000 * (firstSpacing + 0.1 + 0.25 * (outlets - 1)), 0);
      expect(sum(drainVolumes!.in('L'))).toBeCloseTo(held, 9);
      expect(keptVolume!.si).toBe(0);
    }), { numRuns: 40 });
  });

  test('on a level low end is left to each emitter by its length of pipe, at least', () => {
    const { drainVolumes } = shot({ outlets: 10, diameter: '20 mm', slope: '-1 %', runTime: '30 min', furtherReaches: [{ outlets: 40, slope: '0 %' }] });
    const own = (Math.PI / 4) * 20 ** 2 * 0.25;
    drainVolumes!.in('mL').subarray(10).forEach((volume) => expect(volume).toBeGreaterThan(own));
  });

  test('of a longer shot is that of the steady flow more', () => {
    const steady = lateral(row).flows.in('mL/min');
    const [short, long] = [shot({ runTime: '2 min' }), shot({ runTime: '12 min' })].map(({ shotVolumes }) => shotVolumes.in('mL')) as [Float64Array, Float64Array];
    long.forEach((volume, i) => expect(volume - short[i]!).toBeCloseTo(10 * steady[i]!, 6));
  });
});

test('downhill the last emitter is left the most, uphill the first, and a long shot evens it out', () => {
  const [down, up] = [shot({ slope: '-3 %' }), shot({ slope: '3 %' })];
  expect(down.lastEmitterVolume.si).toBeGreaterThan(down.firstEmitterVolume.si);
  expect(up.firstEmitterVolume.si).toBeGreaterThan(up.lastEmitterVolume.si);
  expect(shot({ slope: '-3 %', runTime: '30 min' }).uniformityTaken!.si).toBeLessThan(down.uniformityTaken!.si);
});

test('a line that is full from the start takes no time, and gives the steady flow at once', () => {
  const seals = { emitterExponent: 0, compensation: { openingPressure: '50 kPa', closingPressure: '10 kPa' } };
  const { fillTime, shotVolumes, keptVolume, lineVolume, shotUniformity } = shot({ ...seals, startsFull: true });
  expect(fillTime.si).toBe(0);
  shotVolumes.in('mL').forEach((volume) => expect(volume).toBeCloseTo(2000 / 30, 9));
  expect(keptVolume!.si).toBe(lineVolume.si);
  expect(shotUniformity!.si).toBeCloseTo(1, 12);
});

describe('notes', () => {
  test('a shot that ends before the line is full is a danger, and names the first emitter that stays dry', () => {
    const { notes, shotVolumes, ...rest } = shot({ outlets: 100, runTime: '20 s' });
    const dry = shotVolumes.in('mL').indexOf(0);
    expect(notes).toMatchObject([{ code: 'never-full', severity: 'danger', text: expect.stringContaining(`from emitter ${dry + 1} on nothing comes`) }]);
    for (const name of ['drainVolumes', 'drainTime', 'keptVolume']) expect(rest).not.toHaveProperty(name);
  });

  test('a shot made uneven by draining is told, with the shot that is not', () => {
    const { notes } = shot({ slope: '-3 %' });
    expect(notes).toMatchObject([{ code: 'short-shot', severity: 'caution' }]);
    const [, minutes] = /run shots of ([\d.]+) min/.exec(notes[0]!.text)!;
    expect(shot({ slope: '-3 %', runTime: `${Number(minutes) * 1.01} min` }).notes).toEqual([]);
    expect(shot({ slope: '-3 %', runTime: `${Number(minutes) * 0.97} min` }).notes).toMatchObject([{ code: 'short-shot' }]);
  });

  test('a line that climbs and falls keeps pockets', () => {
    const { notes, ...rest } = shot({ outlets: 14, slope: '3 %', runTime: '1 h', furtherReaches: [{ outlets: 14, slope: '-3 %' }] });
    expect(notes).toMatchObject([{ code: 'pockets', severity: 'info' }]);
    expect(rest).not.toHaveProperty('drainVolumes');
  });
});

test.each<[string, object, object]>([
  ['a supply that gives less than the emitters take', { outlets: 200 }, { path: 'supplyFlow' }],
  ['more outlets than are filled', { outlets: 10_001 }, { path: 'outlets', expected: 'at most 10000 outlets to be filled' }],
  ['a line that climbs above what the pressure lifts', { slope: '50 %', inletPressure: '20 kPa' }, { path: 'inletPressure' }],
  ['a shot of no time', { runTime: '0 s' }, { path: 'runTime' }],
])('%s is refused', (_, changes, problem) => {
  expect(lineFilling.try({ ...usual, ...changes })).toMatchObject({ ok: false, error: { problems: [problem] } });
});
