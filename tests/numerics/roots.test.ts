import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ConvergenceError } from '../../src/numerics/convergence-error.js';
import { bracketedRoot } from '../../src/numerics/roots.js';

describe('bracketedRoot', () => {
  test('finds roots known in closed form to the last digits', () => {
    expect(Math.abs(bracketedRoot((x) => x * x - 2, 0, 2).value - Math.SQRT2)).toBeLessThan(1e-15);
    expect(Math.abs(bracketedRoot(Math.sin, 3, 4).value - Math.PI)).toBeLessThan(1e-15);
    expect(Math.abs(bracketedRoot((x) => Math.exp(x) - 1, -1, 3).value)).toBeLessThan(1e-15);
  });

  test('takes ends in either order, falling functions, and a root at an end', () => {
    expect(Math.abs(bracketedRoot((x) => 3 - x, 10, -10).value - 3)).toBeLessThan(1e-14);
    expect(bracketedRoot((x) => x - 1, 1, 5)).toEqual({ value: 1, residual: 0, steps: 0 });
    expect(bracketedRoot((x) => x - 5, 1, 5)).toEqual({ value: 5, residual: 0, steps: 0 });
  });

  test('is quick on a smooth function and safe on a flat or jumping one', () => {
    expect(bracketedRoot((x) => Math.cos(x) - x, 0, 1).steps).toBeLessThan(12);
    expect(Math.abs(bracketedRoot((x) => (x - 1) ** 9, 0, 3, { tolerance: 1e-6 }).value - 1)).toBeLessThan(1e-6);
    expect(Math.abs(bracketedRoot((x) => (x < 0.3 ? -1 : 1), 0, 1).value - 0.3)).toBeLessThan(1e-15);
    expect(Math.abs(bracketedRoot((x) => (x < 0.3 ? -Infinity : 1), 0, 1).value - 0.3)).toBeLessThan(1e-15);
  });

  test('says so when it cannot answer', () => {
    expect(() => bracketedRoot((x) => x * x + 1, -1, 1)).toThrow(ConvergenceError);
    expect(() => bracketedRoot((x) => x, 1, 2)).toThrow('no sign change between 1 (where it is 1) and 2 (where it is 2)');
    expect(() => bracketedRoot((x) => (x === 0 ? -1 : x === 1 ? 1 : NaN), 0, 1)).toThrow('not a number at 0.5');
    expect(() => bracketedRoot((x) => (x < 0.3 ? -1 : 1), 0, 1, { steps: 5 })).toThrow('after 5 steps');
    try {
      bracketedRoot((x) => x ** 3 - 2, 0, 2, { steps: 2 });
      expect.unreachable();
    } catch (error) {
      expect(error).toMatchObject({ name: 'ConvergenceError', steps: 2 });
      expect((error as ConvergenceError).residual).toBeGreaterThan(0);
    }
  });

  test('any root of any cubic with one sign change is found within tolerance', () => {
    const size = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
    fc.assert(fc.property(fc.double({ min: -1e3, max: 1e3, noNaN: true }), size, size, (root, slope, curve) => {
      const found = bracketedRoot((x) => (x - root) * (slope + curve * (x - root) ** 2), -2e3, 3e3, { tolerance: 1e-9 });
      expect(Math.abs(found.value - root)).toBeLessThanOrEqual(1e-9 + 1e-12);
    }));
  });
});
