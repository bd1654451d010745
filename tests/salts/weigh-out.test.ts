import { describe, expect, test } from 'vitest';
import { isInputError } from '../../src/calculation/index.js';
import { massesForTargets, weighOut, type Product } from '../../src/salts/index.js';

const pure = (salt: 'potassium-nitrate' | 'magnesium-sulfate-heptahydrate' | 'nitric-acid' | 'potassium-sulfate'): Product => ({ salt, purity: 1 });

test('names what no product supplies and what the water has too much of', () => {
  const sheet = massesForTargets({
    targets: { 'N-NO3': 0.1, K: 0.15, B: 0.0003, Ca: 0.05, Na: 0 },
    products: { saltpetre: pure('potassium-nitrate') },
    volume: 0.1,
    water: { Ca: 0.08, Na: 0.01 },
  });
  expect(sheet.unavailable).toEqual(['B']);
  expect(sheet.exceededByWater).toEqual(['Ca', 'Na']);
  expect(sheet.misfits.B).toEqual({ target: 0.0003, reached: 0, difference: -0.0003, relativeDifference: -1 });
  expect(sheet.misfits.Ca!.relativeDifference).toBeCloseTo(0.6, 12);
  expect(sheet.misfits.Na).toEqual({ target: 0, reached: 0.01, difference: 0.01 });
});

test('a miss counts as a share of its target, and more where it weighs more', () => {
  const task = { targets: { K: 0.2, 'N-NO3': 0.2 }, products: { saltpetre: pure('potassium-nitrate') }, volume: 1 };
  const even = massesForTargets(task).misfits;
  const heavy = massesForTargets({ ...task, weights: { 'N-NO3': 10 } }).misfits;
  expect(even.K!.relativeDifference).toBeGreaterThan(0);
  expect(even['N-NO3']!.relativeDifference).toBeLessThan(0);
  expect(Math.abs(heavy['N-NO3']!.difference)).toBeLessThan(Math.abs(even['N-NO3']!.difference) / 10);
});

test('an acid is weighed out for a wanted rest of alkalinity', () => {
  const { feed, misfits } = massesForTargets({ targets: { HCO3: 0.03 }, products: { acid: pure('nitric-acid') }, volume: 0.2, water: { HCO3: 0.183 } });
  expect(misfits.HCO3!.reached).toBeCloseTo(0.03, 12);
  expect(feed.alkalinity).toBeCloseTo(0.03 / 0.061016, 3);
});

test('without targets or without products there is nothing to weigh', () => {
  expect(massesForTargets({ targets: {}, products: { saltpetre: pure('potassium-nitrate') }, volume: 1 }).masses).toEqual({ saltpetre: 0 });
  expect(massesForTargets({ targets: { K: 0.1 }, products: {}, volume: 1 })).toMatchObject({ masses: {}, unavailable: ['K'] });
});

test('products of one content share the work, the same in any order', () => {
  const sheet = (names: readonly string[]) =>
    massesForTargets({ targets: { K: 0.1 }, products: Object.fromEntries(names.map((name) => [name, pure('potassium-sulfate')])), volume: 1 }).masses;
  expect(sheet(['a', 'b'])).toEqual(sheet(['b', 'a']));
  expect(sheet(['a', 'b'])['a']).toBeCloseTo(sheet(['a', 'b'])['b']!, 9);
});

describe('a weigh sheet', () => {
  const saltpetre = { salt: 'potassium-nitrate', purity: 1 } as const;
  const codes = (input: Parameters<typeof weighOut>[0]) => weighOut(input).notes.map(({ code, field }) => [code, field]);
  const problems = (input: object) => {
    const attempt = weighOut.try({ volume: '120 L', targets: { K: '100 mg/L' }, salts: [saltpetre], ...input });
    if (attempt.ok || !isInputError(attempt.error)) throw new Error('was taken');
    return attempt.error.problems.map(({ path }) => path);
  };

  test('reads as the scale does, in its unit', () => {
    const epsom = (scales: Parameters<typeof weighOut>[0]['scales']) =>
      weighOut({ volume: '60 L', targets: { Mg: '20 mg/L' }, salts: [{ salt: 'magnesium-sulfate-heptahydrate', purity: '98 %' }], scales }).portions[0]!.mass.toJSON();
    expect(epsom([{ division: '0.1 g' }])).toBe('12.4 g');
    expect(epsom([{ division: '0.01 kg' }])).toBe('0.01 kg');
    expect(epsom([{ division: '0.1 oz' }])).toBe('0.4 oz');
    expect(epsom([{ division: '1 g', maximumLoad: '5 kg' }, { division: '10 mg', maximumLoad: '10 g' }])).toBe('12 g');
  });

  test('says why a target is missed', () => {
    expect(codes({ volume: '120 L', targets: { K: '100 mg/L', B: '0.3 mg/L' }, salts: [saltpetre] })).toEqual([['no-source', 'targets.B']]);
    expect(codes({ volume: '120 L', targets: { K: '100 mg/L', Ca: '50 mg/L' }, salts: [saltpetre], water: { Ca: '80 mg/L', S: '64 mg/L' } })).toEqual([['water-exceeds-target', 'targets.Ca']]);
    expect(codes({ volume: '120 L', targets: { K: '100 mg/L', 'N-NO3': '100 mg/L' }, salts: [saltpetre] }).map(([code]) => code)).toEqual(['target-unreachable', 'target-unreachable']);
    const trace = { volume: '120 L', targets: { Mo: '0.05 mg/L' }, salts: [{ salt: 'sodium-molybdate-dihydrate', purity: 1 }] } as const;
    expect(codes({ ...trace, scales: [{ division: '0.1 g' }] })).toEqual([['scale-too-coarse', 'targets.Mo']]);
    expect(codes({ ...trace, scales: [{ division: '0.1 mg' }] })).toEqual([]);
  });

  test('tells a nutrient that is not wanted and comes along', () => {
    expect(codes({ volume: '1 L', targets: { K: '200 mg/L', 'N-NO3': '0 mg/L' }, salts: [saltpetre] }).map(([, place]) => place)).toEqual(['targets.K', 'targets.N-NO3']);
  });

  test('of an acid says so, and that water is short of alkalinity', () => {
    const sheet = { volume: '200 L', targets: { P: '31 mg/L' }, salts: [{ salt: 'phosphoric-acid', purity: '75 %' }] } as const;
    expect(codes({ ...sheet, water: { Ca: '40.08 mg/L' }, waterAlkalinity: '2 meq/L' }).map(([code]) => code)).toEqual(['acid']);
    expect(codes(sheet)).toEqual([['target-unreachable', 'targets.P'], ['acid', 'salts']]);
  });

  test.each([
    [{ targets: {} }, ['targets']],
    [{ targets: { K: '1e-300 mg/L' } }, ['targets.K']],
    [{ targets: { K: '0.09 µg/L' } }, ['targets.K']],
    [{ targets: { K: '1 mg/L', Kalium: '1 mg/L' } }, ['targets.Kalium']],
    [{ salts: [] }, ['salts']],
    [{ salts: [saltpetre, saltpetre] }, ['salts[1].name']],
    [{ salts: [saltpetre, { name: 'potassium-nitrate', label: { K: 0.3 } }] }, ['salts[1].name']],
    [{ salts: [{ label: { K: 0.3 } }] }, ['salts[0].name']],
    [{ salts: [{ salt: 'phosphoric-acid' }] }, ['salts[0].purity']],
    [{ weights: { N: 2 } }, ['weights.N']],
    [{ scales: [{ division: '1 kg', maximumLoad: '1 g' }] }, ['scales[0].maximumLoad']],
    [{ targets: { K: '9 g/L' }, salts: [{ name: 'dust', label: { K: 0.00001 } }] }, ['targets']],
    [{ targets: { K: '9 g/L' }, salts: [{ name: 'dust', label: { K: 1e-310 } }] }, ['targets']],
  ])('is refused for %j', (input, paths) => {
    expect(problems(input)).toEqual(paths);
  });

  test('takes any name, and open entries for none', () => {
    const sheet = weighOut({ volume: '120 L', targets: { K: '100 mg/L', Ca: undefined }, salts: [{ name: '__proto__', ...saltpetre }, { name: 'constructor', label: { P: 0.2 } }] });
    expect(sheet.portions.map(({ name }) => name)).toEqual(['__proto__', 'constructor']);
    expect(sheet.misfits.K!.relativeDifference!.in('%')).toBeCloseTo(0, 10);
  });
});
