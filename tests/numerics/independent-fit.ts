/** Least squares within constraints by a solver that is not ours. */
import { solveQP } from 'quadprog';
import type { Constraint } from '../../src/numerics/nearest-point.js';

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, i) => sum + x * b[i]!, 0);
const from1 = <T>(list: readonly T[], zeroth: T): T[] => [zeroth, ...list];

/** ½ |rows · x − right|². */
export const halfSquares = (rows: readonly (readonly number[])[], right: readonly number[], x: readonly number[]): number =>
  rows.reduce((sum, row, i) => sum + (dot(row, x) - right[i]!) ** 2, 0) / 2;

/**
 * The solver wants a matrix that is positive definite: 1e-6 · ½ |x − last x|² is added, and the answer taken for the next x until it stays. The
 * columns are brought to length one before. Constraints are moved by 1e-12 of their length, because it takes opposite ones that meet in a point for
 * a contradiction when rounding parts them by 1e-15.
 */
export function independentFit(rows: readonly (readonly number[])[], right: readonly number[], constraints: readonly Constraint[]): readonly number[] {
  const units = constraints[0]!.normal.map((_, j) => 1 / (Math.hypot(...rows.map((row) => row[j]!)) || 1));
  const columns = units.map((unit, j) => rows.map((row) => row[j]! * unit));
  const D = columns.map((a, j) => from1(columns.map((b, k) => dot(a, b) + (j === k ? 1e-6 : 0)), 0));
  const scaled = constraints.map(({ normal, bound }) => {
    const row = normal.map((x, j) => x * units[j]!);
    const length = Math.hypot(...row) || 1;
    return { row: row.map((x) => x / length), bound: bound / length - 1e-12 };
  });
  const A = units.map((_, j) => from1(scaled.map(({ row }) => row[j]!), 0));
  let x = units.map(() => 0);
  for (let round = 0; round < 40; round++) {
    const d = columns.map((column, j) => dot(column, right) + 1e-6 * x[j]!);
    // It writes into what it is given.
    const { solution, message } = solveQP(from1(D.map((row) => [...row]), []), from1(d, 0), from1(A, []), from1(scaled.map(({ bound }) => bound), 0));
    if (message !== '') throw new Error(message);
    const next = solution.slice(1);
    const moved = Math.max(...next.map((value, j) => Math.abs(value - x[j]!)));
    x = next;
    if (moved < 1e-13) break;
  }
  return x.map((value, j) => value * units[j]!);
}
