import { planElimination, slotOf } from './sparse-elimination.js';

/**
 * A sparse system of linear equations in which every unknown pulls at its neighbours no harder than at itself: flows between points and
 * out of them. Of equation i, x_i has the coefficient d_i and each neighbour x_j the coefficient -a_ij; a_ij is not negative, and
 * d_j = leak_j + the sum of all a_ij of the same j, so the columns add up to the leaks.
 */
export interface SparseSystem {
  /** Sets everything to nought. */
  clear(): void;
  /** Joins the unknowns of a pair: how much the second adds to the equation of the first, and the first to that of the second. Adds to what is there. */
  join(pair: number, ofFirst: number, ofSecond: number): void;
  leak(unknown: number, amount: number): void;
  right(unknown: number, amount: number): void;
  /** Solves it and leaves it spent: clear it before the next. Not finite where unknowns without a leak hang together. */
  solve(): Float64Array;
}

/**
 * A system of so many unknowns that are joined in these pairs. Which of them are joined is gone through once, the numbers as often as wanted; both
 * cost in proportion to the unknowns where the pairs make up a tree with few loops.
 *
 * Unknowns are eliminated as the centre of a star is turned into a mesh of its neighbours: diagonals come from the leaks and the pairs, so nothing
 * is ever subtracted and small leaks are not lost beside large pairs, and no pivots are sought.
 *
 * Source: Grassmann, Taksar and Heyman 1985, Regenerative analysis and steady state distributions for Markov chains, Operations Research 33, 1107-1116.
 */
export function sparseSystem(size: number, first: ArrayLike<number>, second: ArrayLike<number>): SparseSystem {
  const plan = planElimination(size, first, second);
  const { order, place, begin, later, filled } = plan;
  const pairs = first.length;
  const slot = new Int32Array(pairs);
  const isForward = new Uint8Array(pairs);
  for (let pair = 0; pair < pairs; pair++) {
    const [a, b] = [place[first[pair]!]!, place[second[pair]!]!];
    isForward[pair] = a < b ? 1 : 0;
    slot[pair] = slotOf(plan, Math.min(a, b), Math.max(a, b));
  }
  /** What the later unknown of a slot adds to the equation of the earlier one. */
  const up = new Float64Array(later.length);
  /** What the earlier one adds to the equation of the later. */
  const down = new Float64Array(later.length);
  const leaks = new Float64Array(size);
  const rights = new Float64Array(size);
  const pivots = new Float64Array(size);

  const eliminate = (): void => {
    let fill = 0;
    for (let at = 0; at < size; at++) {
      const [from, to] = [begin[at]!, begin[at + 1]!];
      let pivot = leaks[at]!;
      for (let i = from; i < to; i++) pivot += down[i]!;
      pivots[at] = pivot;
      const [leak, right] = [leaks[at]! / pivot, rights[at]! / pivot];
      for (let i = from; i < to; i++) {
        const [upShare, downShare] = [up[i]! / pivot, down[i]! / pivot];
        leaks[later[i]!]! += up[i]! * leak;
        rights[later[i]!]! += down[i]! * right;
        for (let j = i + 1; j < to; j++) {
          const between = filled[fill++]!;
          up[between]! += downShare * up[j]!;
          down[between]! += down[j]! * upShare;
        }
      }
    }
  };

  return {
    clear: () => {
      for (const numbers of [up, down, leaks, rights]) numbers.fill(0);
    },
    join: (pair, ofFirst, ofSecond) => {
      up[slot[pair]!]! += isForward[pair] ? ofFirst : ofSecond;
      down[slot[pair]!]! += isForward[pair] ? ofSecond : ofFirst;
    },
    leak: (unknown, amount) => {
      leaks[place[unknown]!]! += amount;
    },
    right: (unknown, amount) => {
      rights[place[unknown]!]! += amount;
    },
    solve: () => {
      eliminate();
      const values = new Float64Array(size);
      for (let at = size - 1; at >= 0; at--) {
        let sum = rights[at]!;
        for (let i = begin[at]!; i < begin[at + 1]!; i++) sum += up[i]! * values[order[later[i]!]!]!;
        values[order[at]!] = sum / pivots[at]!;
      }
      return values;
    },
  };
}
