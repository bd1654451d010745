import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ConvergenceError } from '../../src/numerics/convergence-error.js';
import { solveLinear } from '../../src/numerics/linear-solve.js';
import { newtonSystem } from '../../src/numerics/newton-system.js';

describe('solveLinear', () => {
  const entry = fc.double({ min: -10, max: 10, noNaN: true });
  const system = fc.integer({ min: 1, max: 8 }).chain((n) =>
    fc.tuple(fc.array(fc.array(entry, { minLength: n, maxLength: n }), { minLength: n, maxLength: n }), fc.array(entry, { minLength: n, maxLength: n })));

  test('the solution fits where the diagonal is strong, in any order of rows', () => {
    fc.assert(fc.property(system, (([some, solution]) => {
      const matrix = some.map((row, i) => row.map((value, j) => (i === j ? value + 100 : value))).reverse();
      const right = matrix.map((row) => row.reduce((sum, value, j) => sum + value * solution[j]!, 0));
      solveLinear(matrix, right).forEach((value, i) => expect(value).toBeCloseTo(solution[i]!, 9));
    })));
  });

  test('arguments are left as they are', () => {
    const matrix = [[0, 1], [2, 0]];
    expect(solveLinear(matrix, [3, 4])).toEqual([2, 3]);
    expect(matrix).toEqual([[0, 1], [2, 0]]);
  });

  test.each([[[[1, 2], [2, 4]]], [[[0]]], [[[NaN]]]])('%j is singular', (matrix) => {
    expect(() => solveLinear(matrix, matrix.map(() => 1))).toThrow(RangeError);
  });
});

describe('newtonSystem', () => {
  test('the circle and the line', () => {
    const { values, residual, steps } = newtonSystem(([x, y]) => [x! ** 2 + y! ** 2 - 4, x! - y!], [1, 2]);
    expect(values[0]).toBeCloseTo(Math.SQRT2, 9);
    expect(residual).toBeLessThan(1e-10);
    expect(steps).toBeLessThan(10);
  });

  // Rosenbrock (1960), An automatic method for finding the greatest or least value of a function, Computer Journal 3, 175: zero at (1, 1) from (-1.2, 1).
  test.each([undefined, ([x]: readonly number[]) => [[-20 * x!, 10], [-1, 0]]])('a bent valley, derivatives %o', (jacobian) => {
    const { values } = newtonSystem(([x, y]) => [10 * (y! - x! ** 2), 1 - x!], [-1.2, 1], jacobian ? { jacobian } : {});
    expect(values[0]).toBeCloseTo(1, 10);
    expect(values[1]).toBeCloseTo(1, 10);
  });

  test('damping finds what full steps run away from', () => {
    expect(newtonSystem(([x]) => [Math.atan(x!)], [10]).values[0]).toBeCloseTo(0, 9);
  });

  test('no unknown moves further than the largest step', () => {
    const seen: number[] = [];
    newtonSystem(([x]) => (seen.push(x!), [x! - 10]), [0], { largestStep: 1, jacobian: () => [[1]] });
    seen.slice(1).forEach((x, i) => expect(Math.abs(x - seen[i]!)).toBeLessThanOrEqual(1 + 1e-12));
    expect(seen.at(-1)).toBeCloseTo(10, 12);
  });

  test.each([
    ['no zero', ([x]: readonly number[]) => [x! ** 2 + 1], [1]],
    ['flat', () => [1], [1]],
    ['not a number', ([x]: readonly number[]) => [Math.sqrt(x!) + 1], [-1]],
  ])('%s: an error, never an answer', (_, residuals, start) => {
    expect(() => newtonSystem(residuals, start)).toThrow(ConvergenceError);
  });

  test('too few steps: an error that says how far it came', () => {
    expect(() => newtonSystem(([x]) => [x! ** 3], [1], { steps: 3 })).toThrow(/not solved: largest residual .* after 3 steps/);
  });
});
