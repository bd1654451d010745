import { describe, expect, test } from 'vitest';
import { emptyingTime, gravityFeed } from '../../src/supply/index.js';

const noted = ({ notes }: { readonly notes: readonly { readonly code: string; readonly text: string }[] }, code: string) => notes.find((note) => note.code === code)?.text;

describe('emptyingTime', () => {
  const barrel = { tankArea: '0.26 m²', startLevel: '80 cm', diameter: '20.4 mm' } as const;

  test('a hose of no length is a hole, and a short one nearly', () => {
    const hole = emptyingTime({ ...barrel, endLevel: '10 cm' }).emptyingTime.si;
    expect(Math.abs(emptyingTime({ ...barrel, endLevel: '10 cm', length: '0.1 mm' }).emptyingTime.si / hole - 1)).toBeLessThan(1e-3);
    expect(emptyingTime({ ...barrel, endLevel: '10 cm', length: '20 m' }).emptyingTime.si).toBeGreaterThan(2 * hole);
  });

  test('an end further down drains faster', () => {
    const time = (outletDrop: '0 m' | '1 m') => emptyingTime({ ...barrel, endLevel: '10 cm', length: '5 m', outletDrop }).emptyingTime.si;
    expect(time('1 m')).toBeLessThan(time('0 m'));
  });

  test('a hose is not followed down to the last drop', () => {
    expect(() => emptyingTime({ ...barrel, length: '5 m' })).toThrow(/endLevel: a level at least 5 mm above/);
  });

  test('levels the wrong way round', () => {
    expect(() => emptyingTime({ ...barrel, endLevel: '90 cm' })).toThrow(/endLevel: a level below the first.*swap/);
  });
});

describe('gravityFeed', () => {
  const barrel = { tankArea: '0.26 m²', startLevel: '80 cm', endLevel: '10 cm', outletDrop: '50 cm', zoneFlow: '80 L/h', emitterPressure: '100 kPa', diameter: '13.6 mm', length: '6 m' } as const;

  test('a hundredfold drippers’ zone starves through the same hose', () => {
    expect(gravityFeed({ ...barrel, zoneFlow: '8 m³/h' }).startFlow.in('L/h')).toBeLessThan(100 * gravityFeed(barrel).startFlow.in('L/h') / 2);
  });

  test('says by how much the flow falls, and how far it is below the rated one', () => {
    const run = gravityFeed(barrel);
    expect(noted(run, 'flow-falls')).toMatch(/falls by 32\.1\d % .*1\.47\d times as long/);
    expect(noted(run, 'low-pressure')).toMatch(/12\.67 kPa at most, of the 100 kPa/);
    expect(noted(gravityFeed({ ...barrel, outletDrop: '5 m' }), 'flow-falls')).toBeUndefined();
  });

  test('gives over the time what leaves the barrel, between its first and its last flow', () => {
    const { drainedVolume, emptyingTime: time, startFlow, endFlow } = gravityFeed(barrel);
    const mean = drainedVolume.si / time.si;
    expect(mean).toBeLessThan(startFlow.si);
    expect(mean).toBeGreaterThan(endFlow.si);
  });
});
