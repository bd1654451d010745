import { ConvergenceError } from './convergence-error.js';
import { nearestPoint, type Constraint } from './nearest-point.js';
import { basisOf, dot, factorsOf, partsOf } from './orthogonal-basis.js';

/** The values that serve best, and how well they were found. */
export interface Optimum {
  readonly values: readonly number[];
  /** What a unit more of each bound would cost, in the order of the constraints: zero where it is not in the way. */
  readonly multipliers: readonly number[];
  /** Largest slope that the constraints do not account for, or lack of a constraint, as a share of the terms that it is the sum of. */
  readonly residual: number;
  /** Constraints taken up or let go of. */
  readonly steps: number;
}

/** The residual that is aimed at, and the largest that is let pass where rounding stands in the way. */
const [aimedAt, letPass] = [1e-12, 1e-7];
/** Most proximal steps. */
const rounds = 30;

/**
 * Least squares within constraints: the values that make ½ |rows · x − right|² least with normal · x ≥ bound; undefined where none meet the
 * constraints. Of values that serve equally well those of (nearly) the least sum of squares are taken. Scale the values so that the
 * columns are about of length one.
 *
 * Proximal steps: each adds weight/2 · |x − last x|², which makes the answer one and only, and turns into the nearest point within the constraints
 * once the values are changed so that the objective is a distance. The weight falls, and with it what it bends the answer by. They end
 * when the conditions of Karush, Kuhn and Tucker hold, without the weight, to 1e-12; where rounding does not let them, 1e-7 is let
 * pass, and beyond a ConvergenceError tells.
 *
 * Source: R. T. Rockafellar (1976), Monotone operators and the proximal point algorithm, SIAM Journal on Control and Optimization 14, 877-898.
 *
 * @example leastSquaresWithin([[1, 0], [1, 0], [0, 1]], [2, 1, 1], [{ normal: [-1, 0], bound: -1 }])?.values // => [1, 1]
 */
export function leastSquaresWithin(rows: readonly (readonly number[])[], right: readonly number[], constraints: readonly Constraint[]): Optimum | undefined {
  const size = rows[0]?.length ?? constraints[0]?.normal.length ?? 0;
  let values: readonly number[] = new Array<number>(size).fill(0);
  let best: Optimum | undefined;
  let steps = 0;
  for (let round = 0; round < rounds; round++) {
    const root = Math.sqrt(1e-7 * 10 ** -Math.min(round, 7));
    const factored = basisOf(values.map((_, j) => [...rows.map((row) => row[j]!), ...values.map((_, k) => (k === j ? root : 0))]));
    const aim = [...right, ...values.map((value) => root * value)];
    const nearest = nearestPoint(factored.basis.map((direction) => dot(direction, aim)), constraints.map(({ normal, bound }) => ({ normal: partsOf(factored, normal), bound })));
    if (nearest === undefined) return undefined;
    const { multipliers } = nearest;
    values = factorsOf(factored, nearest.point);
    steps += nearest.steps;
    const residual = breach(rows, right, constraints, values, multipliers);
    if (best === undefined || residual < best.residual) best = { values, multipliers, residual, steps };
    if (residual <= aimedAt) return best;
  }
  if (best !== undefined && best.residual <= letPass) return best;
  throw new ConvergenceError(`no best fit: the conditions are missed by ${best?.residual} after ${steps} steps`, best?.residual ?? NaN, steps);
}

/** How far the conditions are from holding: slopes that the constraints do not account for, and what these lack, as shares of their terms (of a thousandth, where they are less). */
function breach(rows: readonly (readonly number[])[], right: readonly number[], constraints: readonly Constraint[], values: readonly number[], multipliers: readonly number[]): number {
  const slopes = values.map(() => 0);
  const terms = values.map(() => 0);
  const add = (coefficients: readonly number[], factor: number, size: number): void => coefficients.forEach((coefficient, j) => {
    slopes[j]! += coefficient * factor;
    terms[j]! += Math.abs(coefficient) * size;
  });
  const sizeOf = (row: readonly number[]): number => row.reduce((sum, coefficient, j) => sum + Math.abs(coefficient * values[j]!), 0);
  let lacking = 0;
  rows.forEach((row, i) => add(row, dot(row, values) - right[i]!, sizeOf(row) + Math.abs(right[i]!)));
  constraints.forEach(({ normal, bound }, k) => {
    add(normal, -multipliers[k]!, multipliers[k]!);
    const lack = bound - dot(normal, values);
    if (lack > 0) lacking = Math.max(lacking, lack / Math.max(Math.abs(bound) + sizeOf(normal) + Math.sqrt(dot(normal, normal)), 1e-3));
  });
  return Math.max(lacking, Math.max(...slopes.map(Math.abs)) / Math.max(...terms, 1e-3));
}
