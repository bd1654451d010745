/** Laterals designed backwards: what is found keeps its limit, the next does not, and what cannot be found is refused. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inletPressureForUniformity, lateral, longestLateral, smallestPipe } from '../../src/laterals/index.js';

/** A row of strawberry troughs. */
const row = { spacing: '25 cm', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5 } as const;
const pipe = { ...row, diameter: '13.6 mm' } as const;
const fed = { ...pipe, inletPressure: '1 bar' } as const;
const limit = { mostFlowVariation: 0.1 } as const;
const variation = (input: Parameters<typeof lateral>[0]): number => lateral(input).flowVariation.si;

describe('the longest lateral', () => {
  test('keeps the limit, and one with one outlet more does not', () => {
    fc.assert(fc.property(fc.double({ min: 0.02, max: 0.4, noNaN: true }), fc.integer({ min: -2, max: 4 }), (mostFlowVariation, slope) => {
      const sloping = { ...fed, slope: `${slope} %` } as const;
      const { outlets } = longestLateral({ ...sloping, mostFlowVariation });
      expect(variation({ ...sloping, outlets })).toBeLessThanOrEqual(mostFlowVariation);
      const longer = lateral.try({ ...sloping, outlets: outlets + 1 });
      expect(longer.ok ? longer.value.flowVariation.si : Infinity).toBeGreaterThan(mostFlowVariation);
    }), { numRuns: 40 });
  });

  test('is no longer for a stricter limit, emitters that differ more, or connections that lose', () => {
    const outletsOf = (changes: object) => longestLateral({ ...fed, leastEmissionUniformity: 0.9, ...changes }).outlets;
    expect(outletsOf({ leastEmissionUniformity: 0.95 })).toBeLessThan(outletsOf({}));
    expect(outletsOf({ manufacturingVariation: 0.03 })).toBeLessThan(outletsOf({}));
    expect(outletsOf({ manufacturingVariation: 0.03 })).toBeLessThan(outletsOf({ manufacturingVariation: 0.03, emittersPerPlant: 4 }));
    expect(outletsOf({ connection: { barb: 'standard' } })).toBeLessThan(outletsOf({}));
  });

  test('ends at ten thousand outlets, and says so', () => {
    const { outlets, notes } = longestLateral({ ...fed, ...limit, emitterExponent: 0, diameter: '200 mm' });
    expect(outlets).toBe(10_000);
    expect(notes).toMatchObject([{ code: 'longest-tried', severity: 'info' }]);
  });

  test.each<[string, object, object]>([
    ['no limit', {}, { path: '' }],
    ['two limits', { ...limit, leastEmissionUniformity: 0.9 }, { path: 'leastEmissionUniformity' }],
    ['emitters that differ too much', { leastEmissionUniformity: 0.99, manufacturingVariation: 0.1 }, { path: 'leastEmissionUniformity', received: 'more than a single one keeps' }],
    ['a first emitter above what the pressure lifts', { ...limit, slope: '50 %', firstSpacing: '30 m' }, { path: 'inletPressure', received: 'too little for a single one' }],
    ['a rough wall', { ...limit, roughness: '2 mm' }, { path: 'roughness' }],
    ['a number of outlets, which is what is sought', { ...limit, outlets: 100 }, { path: 'outlets' }],
  ])('%s is refused', (_, input, problem) => {
    expect(longestLateral.try({ ...fed, ...input })).toMatchObject({ ok: false, error: { problems: [problem] } });
  });
});

describe('the smallest pipe', () => {
  const wanted = { ...row, outlets: 200, inletPressure: '1 bar', ...limit } as const;

  test('keeps the limit, and the next smaller one does not', () => {
    const { diameter, outsideDiameter } = smallestPipe(wanted);
    expect([diameter.in('mm'), outsideDiameter!.in('mm')]).toEqual([13.6, 16]);
    const through = (inside: `${number} mm`) => variation({ ...row, outlets: 200, inletPressure: '1 bar', diameter: inside });
    expect(through('13.6 mm')).toBeLessThanOrEqual(0.1);
    expect(through('10.2 mm')).toBeGreaterThan(0.1);
  });

  test('comes out of a list in any order, which tells no outside diameter', () => {
    const found = smallestPipe({ ...wanted, diameters: { unit: 'mm', values: [20.4, 10.2, 13.6, 8] } });
    expect(found.diameter.in('mm')).toBeCloseTo(13.6, 9);
    expect(found).not.toHaveProperty('outsideDiameter');
  });

  test.each<[string, object, object]>([
    ['a series in which none will do', { outlets: 2000 }, { path: 'pipeSeries', received: expect.stringMatching(/^pipes of which the best is [\d.]+ times as uneven as allowed$/) }],
    ['a list in which none will do', { diameters: { unit: 'mm', values: [6, 8] } }, { path: 'diameters' }],
    ['an empty list', { diameters: { unit: 'mm', values: [] } }, { path: 'diameters', expected: '1 to 100 diameters' }],
    ['too little pressure for any', { inletPressure: '2 kPa', slope: '10 %' }, { path: 'pipeSeries', received: 'pipes that water does not reach every emitter through' }],
    ['a barb that fits into none', { connection: { barbArea: '300 mm²' } }, { path: 'connection.barbArea' }],
    ['a wall too rough for any', { roughness: '2 mm' }, { path: 'roughness' }],
  ])('%s is refused', (_, input, problem) => {
    expect(smallestPipe.try({ ...wanted, ...input })).toMatchObject({ ok: false, error: { problems: [problem] } });
  });
});

describe('the inlet pressure', () => {
  const uphill = { ...pipe, outlets: 40, slope: '5 %' } as const;

  test('keeps the limit, and a thousandth less does not', () => {
    const { inletPressure, flowVariation } = inletPressureForUniformity({ ...uphill, ...limit });
    expect(flowVariation.si).toBeLessThanOrEqual(0.1);
    expect(flowVariation.si).toBeGreaterThan(0.0999);
    expect(variation({ ...uphill, inletPressure: `${inletPressure.in('kPa') * 0.999} kPa` })).toBeGreaterThan(0.1);
  });

  test('has an upper end where compensating emitters end', () => {
    const compensating = { ...pipe, outlets: 40, slope: '10 %', emitterExponent: 0, compensation: { openingPressure: '50 kPa', regulatedUpTo: '200 kPa' } } as const;
    const { highestInletPressure } = inletPressureForUniformity({ ...compensating, mostFlowVariation: 0.015 });
    const at = (share: number) => variation({ ...compensating, inletPressure: `${highestInletPressure!.in('kPa') * share} kPa` });
    expect(at(1)).toBeLessThanOrEqual(0.015);
    expect(at(1.001)).toBeGreaterThan(0.015);
    expect(inletPressureForUniformity({ ...uphill, ...limit })).not.toHaveProperty('highestInletPressure');
  });

  test('is looked for from where compensating emitters open, and a narrow range of pressures that is uneven is not passed over', () => {
    const compensating = { ...pipe, outlets: 40, emitterExponent: 0.02, compensation: { openingPressure: '50 kPa', regulatedUpTo: '200 kPa' } } as const;
    expect(inletPressureForUniformity({ ...compensating, mostFlowVariation: 0.02 }).inletPressure.in('kPa')).toBeGreaterThanOrEqual(50);
    const { highestInletPressure } = inletPressureForUniformity({ ...compensating, slope: '10 %', mostFlowVariation: 0.02 });
    expect(highestInletPressure!.in('kPa')).toBeLessThan(212);
    expect(variation({ ...compensating, slope: '10 %', inletPressure: '212 kPa' })).toBeGreaterThan(0.02);
  });

  test('that is the lowest tried is told to be so', () => {
    const laminar = { ...pipe, outlets: 20, emitterExponent: 1, ...limit } as const;
    const { inletPressure, notes } = inletPressureForUniformity(laminar);
    expect(inletPressure.in('kPa')).toBe(1);
    expect(notes).toMatchObject([{ code: 'lowest-tried', severity: 'info' }]);
    expect(inletPressureForUniformity({ ...uphill, ...limit }).notes).toEqual([]);
  });

  test('that no lateral of this kind has is refused', () => {
    expect(inletPressureForUniformity.try({ ...pipe, outlets: 400, mostFlowVariation: 0.01 })).toMatchObject({ ok: false, error: { problems: [{ path: 'mostFlowVariation', received: expect.stringContaining('times as uneven') }] } });
  });
});
