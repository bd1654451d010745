import { ConvergenceError } from './convergence-error.js';
import { combined, dot, extend, basisOf, factorsOf, partsOf, split } from './orthogonal-basis.js';

/** What must hold: normal · x ≥ bound. */
export interface Constraint {
  readonly normal: readonly number[];
  readonly bound: number;
}

/** Constraints brought to normals of length one, and the lengths that they had. */
export function withUnitNormals(constraints: readonly Constraint[]) {
  const lengths = constraints.map(({ normal }) => Math.sqrt(dot(normal, normal)) || 1);
  const normals = constraints.map(({ normal }, k) => normal.map((x) => x / lengths[k]!));
  return { lengths, normals, bounds: constraints.map(({ bound }, k) => bound / lengths[k]!) };
}

/** The nearest point: start + Σ multipliers · normals. */
export interface NearestPoint {
  readonly point: readonly number[];
  /** How hard each constraint pushes, in their order: zero where it does not. */
  readonly multipliers: readonly number[];
  /** Constraints taken up or let go of. */
  readonly steps: number;
}

/** Length of a unit normal outside the span of others that counts as none. */
const dependent = 1e-11;
/** What a constraint may lack, as shares of the terms that it is the sum of: so as to be met, and so as not to be called impossible. */
const [met, possible] = [1e-14, 1e-10];

/**
 * The point nearest to a start that meets every constraint; undefined where no point does.
 *
 * Takes up the constraint that is furthest from being met, moves to the nearest point that meets it with those taken up before, lets go of those
 * that then would pull instead of push, and goes on until all are met. The distance grows at every step, so no set of constraints comes
 * twice. A constraint counts as met within 1e-14 of its terms, and within 1e-10 where those taken up leave no way to meet it better.
 *
 * Source: D. Goldfarb, A. Idnani (1983), A numerically stable dual method for solving strictly convex quadratic programs, Mathematical
 * Programming 27, 1-33, with the identity for its matrix.
 *
 * @example nearestPoint([0, 0], [{ normal: [1, 1], bound: 2 }])?.point // => [1, 1]
 */
export function nearestPoint(start: readonly number[], constraints: readonly Constraint[]): NearestPoint | undefined {
  const { lengths, normals, bounds } = withUnitNormals(constraints);
  const limit = 20 * (start.length + constraints.length + 1);

  let taken: number[] = [];
  let pushes: number[] = [];
  let held = basisOf([]);
  let point = [...start];
  let steps = 0;

  /** Constraints that are met as well as can be. */
  const aside: number[] = [];
  const lackOf = (k: number): number => bounds[k]! - dot(normals[k]!, point);
  const size = (k: number): number => normals[k]!.reduce((sum, x, i) => sum + Math.abs(x) * (Math.abs(start[i]!) + Math.abs(point[i]!)), Math.abs(bounds[k]!));
  /** Rounding of the point itself. */
  const blur = (): number => Number.EPSILON * (Math.sqrt(dot(start, start)) + Math.sqrt(dot(point, point)));
  const furthest = (): number => {
    let worst = -1;
    let most = 0;
    for (let k = 0; k < normals.length; k++) {
      const lack = lackOf(k);
      if (lack > most && lack > met * size(k) + blur() && !taken.includes(k) && !aside.includes(k)) [worst, most] = [k, lack];
    }
    return worst;
  };

  for (let entering = furthest(); entering >= 0; entering = furthest()) {
    const normal = normals[entering]!;
    for (;;) {
      if (++steps > limit) throw new ConvergenceError(`no nearest point after ${limit} constraints`, lackOf(entering), limit);
      const rests = split(normal, held.basis);
      const free = dot(rests.rest, rests.rest);
      const relief = factorsOf(held, rests.parts);
      const full = free > dependent ** 2 ? Math.max(0, lackOf(entering)) / free : Infinity;
      let first = -1;
      let step = full;
      relief.forEach((ease, i) => {
        if (ease > 1e-14 && pushes[i]! / ease < step) [first, step] = [i, pushes[i]! / ease];
      });
      if (step === Infinity) {
        if (lackOf(entering) > possible * (size(entering) + Math.sqrt(dot(start, start)))) return undefined;
        aside.push(entering);
        break;
      }
      if (full < Infinity) point = combined(point, [rests.rest], [step]);
      pushes = pushes.map((value, i) => Math.max(0, value - step * relief[i]!));
      if (first < 0) {
        taken = [...taken, entering];
        extend(held, rests);
        // From the start anew, so that errors do not add up.
        const shift = partsOf(held, taken.map((k) => bounds[k]! - dot(normals[k]!, start)));
        point = combined(start, held.basis, shift);
        pushes = factorsOf(held, shift);
        break;
      }
      taken = taken.filter((_, i) => i !== first);
      pushes = pushes.filter((_, i) => i !== first);
      held = basisOf(taken.map((k) => normals[k]!));
    }
  }
  const multipliers = new Array<number>(constraints.length).fill(0);
  taken.forEach((k, i) => {
    multipliers[k] = Math.max(0, pushes[i]!) / lengths[k]!;
  });
  return { point, multipliers, steps };
}
