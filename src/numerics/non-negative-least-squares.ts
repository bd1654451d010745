import { ConvergenceError } from './convergence-error.js';

/** The non-negative values that fit best, and how well they were found. */
export interface NonNegativeFit {
  readonly values: readonly number[];
  /** Euclidean length of what is left: right - matrix · values. */
  readonly misfit: number;
  /**
   * Largest breach of the conditions of a minimum (slope along a unit column: zero where the value is positive, downhill nowhere),
   * in the unit of the right side.
   */
  readonly residual: number;
  /** Columns tried. */
  readonly steps: number;
}

/**
 * Least squares with every value zero or above: minimises |matrix · x - right| over x >= 0.
 *
 * Columns enter one at a time, the steepest first, and leave when they would turn negative; each subproblem is solved by Householder
 * reflections. A column that depends on those already in (to 1e-12 of its length) stays out, so the answer is finite for any matrix;
 * where several answers fit equally well, earlier columns are preferred on ties. Throws ConvergenceError after `steps` columns.
 *
 * Source: C. L. Lawson, R. J. Hanson (1974), Solving Least Squares Problems, Prentice-Hall, chapter 23, algorithm NNLS.
 *
 * @param matrix rows of equal length
 * @param options.tolerance slope that counts as zero, as a fraction of the length of `right`
 * @example nonNegativeLeastSquares([[1, 0], [1, 0], [0, 1]], [2, 1, 1]).values; // => [1.5, 1]
 */
export function nonNegativeLeastSquares(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
  options: { readonly tolerance?: number; readonly steps?: number } = {},
): NonNegativeFit {
  const width = matrix[0]?.length ?? 0;
  const { tolerance = 1e-12, steps: limit = 10 * (width + 1) } = options;
  const raw = Array.from({ length: width }, (_, j) => matrix.map((row) => row[j]!));
  const lengths = raw.map((column) => Math.hypot(...column));
  const columns = raw.map((column, j) => column.map((entry) => (lengths[j]! > 0 ? entry / lengths[j]! : 0)));
  const threshold = tolerance * Math.hypot(...right);

  const x = new Array<number>(width).fill(0);
  const refused = new Set<number>();
  let inside: number[] = [];
  let left = [...right];
  let slopes = columns.map((column) => dot(column, left));

  for (let steps = 0; ; steps++) {
    let entering = -1;
    for (let j = 0; j < width; j++) {
      if (inside.includes(j) || refused.has(j) || !(slopes[j]! > threshold)) continue;
      if (entering < 0 || slopes[j]! > slopes[entering]!) entering = j;
    }
    const residual = slopes.reduce((worst, slope, j) => Math.max(worst, inside.includes(j) ? Math.abs(slope) : refused.has(j) ? 0 : slope), 0);
    if (entering < 0) {
      return { values: x.map((value, j) => (value > 0 ? value / lengths[j]! : 0)), misfit: Math.hypot(...left), residual, steps };
    }
    if (steps >= limit) throw new ConvergenceError(`no best non-negative fit after ${limit} columns`, residual, steps);

    let trial = leastSquares([...inside, entering].map((j) => columns[j]!), right);
    if (trial === undefined || !(trial[inside.length]! > 0)) {
      refused.add(entering);
      continue;
    }
    refused.clear();
    inside.push(entering);
    while (trial.some((value) => value <= 0)) {
      const shares = inside.map((j, k) => (trial![k]! <= 0 ? x[j]! / (x[j]! - trial![k]!) : Infinity));
      const share = Math.min(...shares);
      inside.forEach((j, k) => {
        x[j] = shares[k]! <= share ? 0 : x[j]! + share * (trial![k]! - x[j]!);
      });
      inside = inside.filter((j) => x[j]! > 0);
      trial = leastSquares(inside.map((j) => columns[j]!), right);
      if (trial === undefined) throw new ConvergenceError('columns are too nearly dependent', residual, steps);
    }
    inside.forEach((j, k) => {
      x[j] = trial[k]!;
    });
    left = right.map((value, i) => inside.reduce((rest, j) => rest - columns[j]![i]! * x[j]!, value));
    slopes = columns.map((column) => dot(column, left));
  }
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * b[i]!, 0);
}

/** Least squares over columns of unit length by Householder reflections; undefined where a column depends on those before it. */
function leastSquares(columns: readonly (readonly number[])[], right: readonly number[]): number[] | undefined {
  const work = [...columns, right].map((column) => [...column]);
  const count = columns.length;
  for (let k = 0; k < count; k++) {
    const mirror = work[k]!.slice(k);
    const length = Math.hypot(...mirror);
    if (!(length > 1e-12)) return undefined;
    const diagonal = mirror[0]! > 0 ? -length : length;
    mirror[0]! -= diagonal;
    const half = dot(mirror, mirror) / 2;
    for (const column of work.slice(k + 1)) {
      const share = dot(mirror, column.slice(k)) / half;
      mirror.forEach((value, i) => {
        column[k + i]! -= share * value;
      });
    }
    work[k]![k] = diagonal;
  }
  const values = new Array<number>(count).fill(0);
  for (let k = count - 1; k >= 0; k--) {
    let sum = work[count]![k]!;
    for (let j = k + 1; j < count; j++) sum -= work[j]![k]! * values[j]!;
    values[k] = sum / work[k]![k]!;
  }
  return values;
}
