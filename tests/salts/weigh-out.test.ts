import { expect, test } from 'vitest';
import { massesForTargets, type Product } from '../../src/salts/index.js';

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

test('products of one content share nothing: one of them is taken, the same in any order', () => {
  const sheet = (names: readonly string[]) =>
    massesForTargets({ targets: { K: 0.1 }, products: Object.fromEntries(names.map((name) => [name, pure('potassium-sulfate')])), volume: 1 }).masses;
  expect(sheet(['a', 'b'])).toEqual(sheet(['b', 'a']));
});
