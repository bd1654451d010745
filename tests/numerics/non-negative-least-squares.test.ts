import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nonNegativeLeastSquares } from '../../src/numerics/non-negative-least-squares.js';

const length = (values: readonly number[]) => Math.hypot(...values);
const rest = (matrix: readonly (readonly number[])[], x: readonly number[], right: readonly number[]) =>
  right.map((value, i) => value - matrix[i]!.reduce((sum, entry, j) => sum + entry * x[j]!, 0));

const entry = fc.integer({ min: -9, max: 9 });
const problem = fc
  .record({ rows: fc.integer({ min: 1, max: 6 }), columns: fc.integer({ min: 1, max: 6 }) })
  .chain(({ rows, columns }) =>
    fc.record({
      matrix: fc.array(fc.array(entry, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }),
      right: fc.array(entry, { minLength: rows, maxLength: rows }),
    }),
  );

describe('non-negative least squares', () => {
  // Values of the examples of scipy.optimize.nnls, documentation of SciPy 1.11.2.
  test.each([
    [[2, 1, 1], [1.5, 1], 0.7071067811865475],
    [[-1, -1, -1], [0, 0], 1.7320508075688772],
  ])('of a small matrix to %j', (right, values, misfit) => {
    const fit = nonNegativeLeastSquares([[1, 0], [1, 0], [0, 1]], right);
    fit.values.forEach((value, j) => expect(value).toBeCloseTo(values[j]!, 14));
    expect(fit.misfit).toBeCloseTo(misfit, 14);
  });

  test('leaves no way down: slopes are zero inside and point out of reach at zero', () => {
    fc.assert(fc.property(problem, ({ matrix, right }) => {
      const { values, misfit, residual } = nonNegativeLeastSquares(matrix, right);
      const left = rest(matrix, values, right);
      const scale = 1e-9 * (length(right) + 1) * 50;
      expect(Math.abs(length(left) - misfit)).toBeLessThan(scale);
      expect(residual).toBeLessThan(scale);
      values.forEach((value, j) => {
        const slope = matrix.reduce((sum, row, i) => sum + row[j]! * left[i]!, 0);
        expect(value).toBeGreaterThanOrEqual(0);
        expect(slope).toBeLessThan(scale);
        if (value > 0) expect(Math.abs(slope)).toBeLessThan(scale);
      });
    }), { numRuns: 2000 });
  });

  test('finds an exact answer that is there', () => {
    fc.assert(fc.property(problem, fc.array(fc.integer({ min: 0, max: 5 }), { minLength: 6, maxLength: 6 }), ({ matrix }, answer) => {
      const right = matrix.map((row) => row.reduce((sum, value, j) => sum + value * answer[j]!, 0));
      expect(nonNegativeLeastSquares(matrix, right).misfit).toBeLessThan(1e-9 * (length(right) + 1));
    }), { numRuns: 2000 });
  });

  test('takes repeated and empty columns', () => {
    const { values, misfit } = nonNegativeLeastSquares([[1, 1, 0], [2, 2, 0]], [3, 6]);
    expect(values.reduce((sum, value) => sum + value, 0)).toBeCloseTo(3, 12);
    expect(values[2]).toBe(0);
    expect(misfit).toBeLessThan(1e-14);
  });

  test('takes columns of very different size', () => {
    const { values } = nonNegativeLeastSquares([[1e-9, 0], [0, 1e9]], [2, 3]);
    expect(values[0]! / 2e9).toBeCloseTo(1, 14);
    expect(values[1]! / 3e-9).toBeCloseTo(1, 14);
  });

  test('says when it was stopped too early', () => {
    expect(() => nonNegativeLeastSquares([[1, 0], [0, 1]], [1, 1], { steps: 1 })).toThrow('after 1 columns');
  });
});
