import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leastCostWithin } from '../../src/numerics/linear-program.js';
import { nearestPoint, type Constraint } from '../../src/numerics/nearest-point.js';
import { leastSquaresWithin } from '../../src/numerics/quadratic-program.js';
import { halfSquares, independentFit } from './independent-fit.js';

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, i) => sum + x * b[i]!, 0);
const unit = (size: number, j: number) => Array.from({ length: size }, (_, k) => (k === j ? 1 : 0));
const notNegative = (size: number): Constraint[] => Array.from({ length: size }, (_, j) => ({ normal: unit(size, j), bound: 0 }));

const entry = fc.integer({ min: -9, max: 9 });
const problem = fc.record({ rows: fc.integer({ min: 1, max: 6 }), columns: fc.integer({ min: 1, max: 6 }), limits: fc.integer({ min: 0, max: 5 }) }).chain(({ rows, columns, limits }) => {
  const row = fc.array(entry, { minLength: columns, maxLength: columns });
  return fc.record({ matrix: fc.array(row, { minLength: rows, maxLength: rows }), right: fc.array(entry, { minLength: rows, maxLength: rows }), normals: fc.array(row, { minLength: limits, maxLength: limits }), bounds: fc.array(entry, { minLength: limits, maxLength: limits }) });
});

describe('least squares within constraints', () => {
  // Values of the examples of scipy.optimize.nnls, documentation of SciPy 1.11.2.
  test.each([[[2, 1, 1], [1.5, 1]], [[-1, -1, -1], [0, 0]]])('of a small matrix to %j', (right, values) => {
    leastSquaresWithin([[1, 0], [1, 0], [0, 1]], right, notNegative(2))!.values.forEach((value, j) => expect(value).toBeCloseTo(values[j]!, 13));
  });

  test('keeps the constraints and leaves no way down, or finds that there is no way to keep them', () => {
    let feasible = 0;
    fc.assert(fc.property(problem, ({ matrix, right, normals, bounds }) => {
      const constraints = [...notNegative(matrix[0]!.length), ...normals.map((normal, k) => ({ normal, bound: bounds[k]! }))];
      const fit = leastSquaresWithin(matrix, right, constraints);
      if (fit === undefined) {
        expect(() => independentFit(matrix, right, constraints)).toThrow('inconsistent');
        return;
      }
      feasible++;
      const { values, multipliers } = fit;
      const left = matrix.map((row, i) => dot(row, values) - right[i]!);
      constraints.forEach(({ normal, bound }, k) => {
        const room = dot(normal, values) - bound;
        expect(room).toBeGreaterThan(-1e-8);
        expect(multipliers[k]! * room).toBeLessThan(1e-6);
      });
      values.forEach((_, j) => expect(matrix.reduce((sum, row, i) => sum + row[j]! * left[i]!, 0)).toBeCloseTo(constraints.reduce((sum, { normal }, k) => sum + normal[j]! * multipliers[k]!, 0), 6));
    }), { numRuns: 2000 });
    expect(feasible).toBeGreaterThan(500);
  });

  test('comes to the same least as quadprog', () => {
    fc.assert(fc.property(problem, ({ matrix, right }) => {
      const constraints = notNegative(matrix[0]!.length);
      const theirs = halfSquares(matrix, right, independentFit(matrix, right, constraints));
      expect(Math.abs(halfSquares(matrix, right, leastSquaresWithin(matrix, right, constraints)!.values) - theirs)).toBeLessThan(1e-9 * theirs + 1e-9);
    }), { numRuns: 500 });
  });

  test('takes the least sum of squares of values that serve equally well', () => {
    expect(leastSquaresWithin([[0.6, 0.8]], [1], [])!.values[0]).toBeCloseTo(0.6, 6);
    leastSquaresWithin([[1, 1, 0]], [3], notNegative(3))!.values.forEach((value, j) => expect(value).toBeCloseTo([1.5, 1.5, 0][j]!, 6));
  });

  test('finds constraints that contradict one another, or ask what no value does', () => {
    expect(leastSquaresWithin([[1]], [0], [{ normal: [1], bound: 2 }, { normal: [-1], bound: -1 }])).toBeUndefined();
    expect(leastSquaresWithin([[1]], [0], [{ normal: [0], bound: 1 }])).toBeUndefined();
    expect(leastSquaresWithin([[1]], [0], [{ normal: [1], bound: 1 }, { normal: [-1], bound: -1 }])!.values[0]).toBeCloseTo(1, 12);
  });
});

test('the nearest point of a corner is the corner, pushed by both its sides', () => {
  const { point, multipliers } = nearestPoint([-1, -2], notNegative(2))!;
  expect(point).toEqual([0, 0]);
  expect(multipliers).toEqual([1, 2]);
});

describe('the linear programme', () => {
  test('finds the cheapest corner', () => {
    // Least -3x - 5y with x <= 4, 2y <= 12, 3x + 2y <= 18: -36 at (2, 6), the textbook example of Hillier and Lieberman (Wyndor Glass). From memory.
    const constraints = [...notNegative(2), { normal: [-1, 0], bound: -4 }, { normal: [0, -2], bound: -12 }, { normal: [-3, -2], bound: -18 }];
    const { values, multipliers } = leastCostWithin([-3, -5], constraints, [1, 1]);
    expect(values[0]).toBeCloseTo(2, 12);
    expect(values[1]).toBeCloseTo(6, 12);
    [0, 0, 0, 1.5, 1].forEach((price, k) => expect(multipliers[k]).toBeCloseTo(price, 12));
  });

  test('gets out of a corner where many constraints meet (Beale 1955)', () => {
    const constraints = [...notNegative(4), { normal: [-0.25, 60, 0.04, -9], bound: 0 }, { normal: [-0.5, 90, 0.02, -3], bound: 0 }, { normal: [0, 0, -1, 0], bound: -1 }];
    expect(dot([-0.75, 150, -0.02, 6], leastCostWithin([-0.75, 150, -0.02, 6], constraints, [0, 0, 0, 0]).values)).toBeCloseTo(-0.05, 12);
  });

  test('says when the cost falls without end', () => {
    expect(() => leastCostWithin([-1], notNegative(1), [0])).toThrow('without end');
  });
});
