import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solveLinear } from '../../src/numerics/linear-solve.js';
import { planElimination } from '../../src/numerics/sparse-elimination.js';
import { sparseSystem } from '../../src/numerics/sparse-system.js';

/** Unknowns joined as a tree with a few loops, some pairs twice: each but the first to one before it. */
const joined = fc.integer({ min: 1, max: 25 }).chain((size) => fc.record({
  size: fc.constant(size),
  tree: fc.tuple(...Array.from({ length: size - 1 }, (_, i) => fc.integer({ min: 0, max: i }).map((before) => [before, i + 1] as const))),
  loops: size < 2 ? fc.constant([]) : fc.array(fc.tuple(fc.nat(size - 1), fc.nat(size - 1)).filter(([a, b]) => a !== b), { maxLength: 4 }),
}));
const amount = fc.double({ min: 1e-3, max: 1e3, noNaN: true });

describe('sparseSystem', () => {
  test('gives what dense elimination gives, time after time', () => {
    fc.assert(fc.property(joined, fc.infiniteStream(amount), ({ size, tree, loops }, amounts) => {
      const next = () => amounts.next().value;
      const pairs = [...tree, ...loops];
      const system = sparseSystem(size, pairs.map(([first]) => first), pairs.map(([, second]) => second));
      for (let time = 0; time < 2; time++) {
        system.clear();
        const matrix = Array.from({ length: size }, () => new Float64Array(size));
        const right = Array.from({ length: size }, () => next() - 500);
        const leaks = Array.from({ length: size }, next);
        right.forEach((value, i) => system.right(i, value));
        leaks.forEach((value, i) => { system.leak(i, value); matrix[i]![i]! += value; });
        pairs.forEach(([first, second], pair) => {
          const [ofFirst, ofSecond] = [next(), next()];
          system.join(pair, ofFirst, ofSecond);
          matrix[first]![second]! -= ofFirst;
          matrix[second]![second]! += ofFirst;
          matrix[second]![first]! -= ofSecond;
          matrix[first]![first]! += ofSecond;
        });
        const dense = solveLinear(matrix.map((row) => [...row]), right);
        const largest = Math.max(...dense.map(Math.abs));
        system.solve().forEach((value, i) => expect(Math.abs(value - dense[i]!)).toBeLessThanOrEqual(1e-8 * largest));
      }
    }));
  });

  test('leaks that are nothing beside the pairs are not lost', () => {
    // A chain of four, joined by 1e9: 1 comes in at one end and leaks out of the other, 1e-12 a unit.
    const system = sparseSystem(4, [0, 1, 2], [1, 2, 3]);
    for (let pair = 0; pair < 3; pair++) system.join(pair, 1e9, 1e9);
    system.leak(0, 1e-12);
    system.right(3, 1);
    for (const value of system.solve()) expect(Math.abs(value / 1e12 - 1)).toBeLessThan(1e-12);
  });

  test('what hangs together without a leak has no finite answer', () => {
    const system = sparseSystem(2, [0], [1]);
    system.join(0, 1, 1);
    system.right(0, 1);
    expect([...system.solve()].every(Number.isFinite)).toBe(false);
  });
});

describe('planElimination', () => {
  test('takes no more room than a tree has pairs, and goes through every unknown once', () => {
    fc.assert(fc.property(joined, ({ size, tree }) => {
      const { order, place, later, filled } = planElimination(size, tree.map(([first]) => first), tree.map(([, second]) => second));
      expect(later.length).toBe(size - 1);
      expect(filled.length).toBe(0);
      expect([...order].sort((a, b) => a - b)).toEqual([...order.keys()]);
      order.forEach((unknown, at) => expect(place[unknown]).toBe(at));
    }));
  });

  test('takes little more for a large ring with branches', () => {
    const size = 20_000;
    // A ring of 200 with a chain of 99 at each.
    const first = Array.from({ length: size }, (_, i) => (i < 200 ? i : i - 200));
    const second = first.map((one, i) => (i < 200 ? (i + 1) % 200 : one + 200));
    const { later, filled } = planElimination(size, first, second);
    expect(later.length).toBeLessThan(size + 200);
    expect(filled.length).toBeLessThan(400);
  });
});
