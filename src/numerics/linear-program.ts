import { ConvergenceError } from './convergence-error.js';
import { withUnitNormals, type Constraint } from './nearest-point.js';
import { basisOf, combined, dot, extend, factorsOf, partsOf, split } from './orthogonal-basis.js';
import type { Optimum } from './quadratic-program.js';

/** What is less than this, beside the largest price, is rounding. */
const rounding = 1e-11;

/**
 * The linear programme: the values of least cost · x that meet the constraints normal · x ≥ bound, from values that meet them.
 *
 * Goes downhill along the constraints that it leans on until another is in the way, which it then leans on too; where that leaves no way
 * down, it lets go of the first one that would pull, until none does. Of several optima it takes the one that it comes to. Throws
 * ConvergenceError where the cost falls without end. Scale the values so that they are about one.
 *
 * Source: R. Fletcher (1987), Practical Methods of Optimization, 2nd edition, chapter 8, with the rule of Bland 1977 against going in circles.
 *
 * @example leastCostWithin([1, 2], [{ normal: [1, 1], bound: 3 }, { normal: [1, 0], bound: 0 }, { normal: [0, 1], bound: 0 }], [1, 2]).values // => [3, 0]
 */
export function leastCostWithin(cost: readonly number[], constraints: readonly Constraint[], start: readonly number[]): Optimum {
  const { lengths, normals, bounds } = withUnitNormals(constraints);
  const largest = Math.max(...cost.map(Math.abs)) || 1;
  const prices = cost.map((price) => price / largest);
  const limit = 50 * (cost.length + constraints.length);
  let values = [...start];
  let taken: number[] = [];
  let held = basisOf([]);

  for (let steps = 0; steps < limit; steps++) {
    const { parts, rest } = split(prices, held.basis);
    const slope = Math.sqrt(dot(rest, rest));
    if (slope > rounding) {
      let blocking = -1;
      let stride = Infinity;
      normals.forEach((normal, k) => {
        const approach = dot(normal, rest);
        if (approach <= rounding * slope || taken.includes(k)) return;
        const way = Math.max(0, dot(normal, values) - bounds[k]!) / approach;
        if (way < stride) [blocking, stride] = [k, way];
      });
      if (blocking < 0) throw new ConvergenceError('the cost falls without end', slope, steps);
      values = combined(values, [rest], [-stride]);
      taken = [...taken, blocking];
      extend(held, split(normals[blocking]!, held.basis));
      continue;
    }
    const pushes = factorsOf(held, parts);
    const leaving = Math.min(...taken.filter((_, i) => pushes[i]! < -rounding));
    if (leaving === Infinity) {
      const multipliers = new Array<number>(constraints.length).fill(0);
      taken.forEach((k, i) => {
        multipliers[k] = (Math.max(0, pushes[i]!) * largest) / lengths[k]!;
      });
      // On the constraints that it leans on to the last digit, so that errors of the way do not count.
      const shift = partsOf(held, taken.map((k) => bounds[k]! - dot(normals[k]!, values)));
      return { values: combined(values, held.basis, shift), multipliers, residual: slope, steps };
    }
    taken = taken.filter((k) => k !== leaving);
    held = basisOf(taken.map((k) => normals[k]!));
  }
  throw new ConvergenceError(`no least cost after ${limit} steps`, NaN, limit);
}
