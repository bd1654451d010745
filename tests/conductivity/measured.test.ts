/** What the model claims of itself, held against measurements. */
import { describe, expect, test } from 'vitest';
import { missesOf, saltSeries } from '../support/measured-salts.js';
import { waterMisses } from '../support/measured-waters.js';
import { statisticsOf } from '../support/statistics.js';

describe('natural waters', () => {
  const shareOf = (holds: (one: (typeof waterMisses)[number]) => boolean): number => waterMisses.filter(holds).length / waterMisses.length;

  test('three in four lie within the stated uncertainty', () => {
    expect(waterMisses.length).toBe(78);
    expect(shareOf(({ model, stated }) => Math.abs(model) <= stated)).toBeGreaterThan(0.75);
  });

  test('nine in ten lie within 6.5 %; on average they are met within 3 %, and 1.5 % with sign', () => {
    const { mean, meanSize, nineInTen } = statisticsOf(waterMisses.map(({ model }) => model));
    expect(nineInTen).toBeLessThan(0.065);
    expect(meanSize).toBeLessThan(0.03);
    expect(Math.abs(mean)).toBeLessThan(0.015);
  });

  test('every quick rule does worse', () => {
    const sizeOf = (rule: keyof (typeof waterMisses)[number]): number => statisticsOf(waterMisses.map((one) => one[rule])).meanSize;
    for (const rule of ['limitingSum', 'standardMethods', 'tenthOfCations', 'lineOfCations'] as const) expect(sizeOf(rule)).toBeGreaterThan(2 * sizeOf('model'));
  });
});

describe('single salts', () => {
  test.each(saltSeries)('$name', (series) => {
    const { meanSize, worst } = statisticsOf(missesOf(series));
    if (series.worst < 0.05) expect(meanSize).toBeLessThan(0.015);
    expect(worst).toBeLessThan(series.worst);
  });
});
