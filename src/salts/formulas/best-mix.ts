import { ConvergenceError } from '../../numerics/convergence-error.js';
import { leastCostWithin } from '../../numerics/linear-program.js';
import { dot } from '../../numerics/orthogonal-basis.js';
import { leastSquaresWithin, type Optimum } from '../../numerics/quadratic-program.js';
import type { MixLimit, MixProblem } from './mix-problem.js';

/** Room that a limit gets when it is moved to where it can be kept, a share of it. */
const room = 1e-7;
/** A lack, or a push of a limit, below this does not matter. */
const noticeable = 1e-6;

/** The mix that fits best, and what stood in its way. */
export interface BestMix {
  readonly fit: Optimum;
  /** The limits that the fit keeps, moved to where they can be kept. */
  readonly limits: readonly MixLimit[];
  /** Limits that no mix keeps. */
  readonly missed: readonly MixLimit[];
  /** Limits that keep the mix from them. */
  readonly holding: readonly MixLimit[];
}

/** Limits that push at an optimum: without them it would be elsewhere. */
export const pushing = (limits: readonly MixLimit[], { multipliers }: Optimum): MixLimit[] => limits.filter((_, k) => multipliers[k]! > noticeable);

/** No value below zero. */
const notNegative = (size: number) => Array.from({ length: size }, (_, j) => ({ normal: Array.from({ length: size }, (_, k) => (k === j ? 1 : 0)), bound: 0 }));

/**
 * The mix that keeps the limits and fits the targets best. Where the limits cannot all be kept, those that yield are moved by the least sum
 * of squares that lets them be kept, and the fit is made within what is left.
 */
export function bestMix({ names, rows, right, limits }: MixProblem): BestMix {
  const within = (kept: readonly MixLimit[]): Optimum | undefined => leastSquaresWithin(rows, right, [...kept, ...notNegative(names.length)]);
  const fit = within(limits);
  if (fit) return { fit, limits, missed: [], holding: [] };
  const { optimum, lacks } = nearestToLimits(names.length, limits);
  const missed = limits.filter((_, k) => lacks[k]! > noticeable);
  const moved = limits.map((limit, k) => (limit.yields ? { ...limit, bound: limit.bound - lacks[k]! - room * (1 + Math.abs(limit.bound)) } : limit));
  return { fit: found(within(moved)), limits: moved, missed, holding: pushing(limits, optimum).filter((limit) => !missed.includes(limit)) };
}

/** The least squares of what is lacking to the limits that yield: each gets a value of its own, behind those of the products, that fills it up. */
function nearestToLimits(size: number, limits: readonly MixLimit[]): { optimum: Optimum; lacks: number[] } {
  const yielding = limits.filter((limit) => limit.yields);
  const fillers = (of: MixLimit | undefined): number[] => yielding.map((limit) => (limit === of ? 1 : 0));
  const none = new Array<number>(size).fill(0);
  const optimum = found(leastSquaresWithin(
    yielding.map((limit) => [...none, ...fillers(limit)]),
    yielding.map(() => 0),
    [
      ...limits.map((limit) => ({ normal: [...limit.normal, ...fillers(limit)], bound: limit.bound })),
      ...notNegative(size).map(({ normal, bound }) => ({ normal: [...normal, ...fillers(undefined)], bound })),
    ],
  ));
  return { optimum, lacks: limits.map((limit) => (limit.yields ? Math.max(0, optimum.values[size + yielding.indexOf(limit)]!) : 0)) };
}

/**
 * The cheapest mix that keeps the limits and misses no target by more than the tolerance (a share of the target) or, where that is more, than
 * the best fit does.
 *
 * @param prices of a kilogram of each product, in the order of the problem
 */
export function cheapestMix({ names, rows, right, units, targets, weights }: MixProblem, { fit, limits }: BestMix, prices: readonly number[], tolerance: number): Optimum {
  const corridor = rows.flatMap((row, i) => {
    const tolerated = targets[i]! > 0 ? tolerance * weights[i]! : 0;
    const allowed = Math.max(tolerated, Math.abs(dot(row, fit.values) - right[i]!));
    return [{ normal: row, bound: right[i]! - allowed }, { normal: row.map((x) => -x), bound: -right[i]! - allowed }];
  });
  return leastCostWithin(prices.map((price, j) => price * units[j]!), [...limits, ...corridor, ...notNegative(names.length)], fit.values);
}

function found(optimum: Optimum | undefined): Optimum {
  if (optimum === undefined) throw new ConvergenceError('no mix within limits that can be kept', NaN, 0);
  return optimum;
}
