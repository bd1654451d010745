import { ConvergenceError } from './convergence-error.js';

/** An answer found by iteration, and how well it was found. */
export interface Root {
  readonly value: number;
  /** |f(value)|, in the unit of f. */
  readonly residual: number;
  /** Times f was asked for after the two ends of the bracket. */
  readonly steps: number;
}

/**
 * A root of a continuous function between two points where it has opposite signs.
 *
 * The bracket always holds the root and shrinks at every step: first the straight line between the ends, then inverse quadratic interpolation
 * where the last three points allow it, halving where they do not. It stops when the bracket is narrower than `tolerance` (in the unit of x)
 * beside the spacing of doubles, or when f is exactly zero. Throws ConvergenceError when the ends have the same sign, when f is not a number, or
 * after `steps`.
 *
 * Source: T. R. Chandrupatla (1997), A new hybrid quadratic/bisection algorithm for finding the zero of a nonlinear function
 * without using derivatives, Advances in Engineering Software 28(3), 145-149.
 *
 * @example bracketedRoot((x) => x * x - 2, 0, 2).value // => 1.414213562373095
 */
export function bracketedRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  options: { readonly tolerance?: number; readonly steps?: number } = {},
): Root {
  const { tolerance = 0, steps: limit = 200 } = options;
  let a = high;
  let b = low;
  let fa = f(a);
  let fb = f(b);
  if (fb === 0) return { value: b, residual: 0, steps: 0 };
  if (fa === 0) return { value: a, residual: 0, steps: 0 };
  if (!(fa < 0 ? fb > 0 : fa > 0 && fb < 0)) {
    throw new ConvergenceError(
      `no sign change between ${low} (where it is ${fb}) and ${high} (where it is ${fa})`, Math.min(Math.abs(fa), Math.abs(fb)), 0);
  }
  let share = fa / (fa - fb);
  for (let step = 1; step <= limit; step++) {
    const x = a + (share > 0 && share < 1 ? share : 0.5) * (b - a);
    const fx = f(x);
    if (Number.isNaN(fx)) throw new ConvergenceError(`not a number at ${x}`, NaN, step);
    let c = a;
    let fc = fa;
    if (fx > 0 !== fa > 0) {
      c = b;
      fc = fb;
      b = a;
      fb = fa;
    }
    a = x;
    fa = fx;
    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    const residual = Math.min(Math.abs(fa), Math.abs(fb));
    const least = (2 * Number.EPSILON * Math.abs(best) + tolerance / 2) / Math.abs(b - a);
    if (residual === 0 || least >= 0.5) return { value: best, residual, steps: step };
    const xi = (a - b) / (c - b);
    const phi = (fa - fb) / (fc - fb);
    share = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi
      ? (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
      : 0.5;
    share = Math.min(1 - least, Math.max(least, share));
  }
  throw new ConvergenceError(
    `no root to within ${tolerance} after ${limit} steps: still between ${Math.min(a, b)} and ${Math.max(a, b)}`,
    Math.min(Math.abs(fa), Math.abs(fb)), limit);
}
