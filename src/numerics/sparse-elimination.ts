/** In which order the unknowns of a sparse system are eliminated, and where what arises on the way is kept. */
export interface Elimination {
  /** The unknown at each place of the order. */
  readonly order: Int32Array;
  /** The place of each unknown. */
  readonly place: Int32Array;
  /** Where the slots of each place begin; one more entry says where the last ends. */
  readonly begin: Int32Array;
  /** Of each slot, the later place that an earlier one is joined to; ascending within a place. */
  readonly later: Int32Array;
  /** For each place, and of its slots each with each behind it, the slot that joins those two. */
  readonly filled: Int32Array;
}

/** Degrees from here on are not told apart. */
const mostDegrees = 1024;

/**
 * Plans the elimination of unknowns that are joined in pairs, by minimum degree: always one with the fewest neighbours left. What is a tree
 * costs no more room than it has pairs, ends first; each loop costs a little.
 *
 * Source: Rose 1972, A graph-theoretic study of the numerical solution of sparse positive definite systems of linear equations; Markowitz 1957.
 *
 * @param size how many unknowns
 * @param first of each pair, one unknown; `second` the other. A pair may come twice.
 */
export function planElimination(size: number, first: ArrayLike<number>, second: ArrayLike<number>): Elimination {
  const neighbours: number[][] = Array.from({ length: size }, () => []);
  const degree = new Int32Array(size);
  const join = (a: number, b: number): void => {
    const [few, many] = neighbours[a]!.length < neighbours[b]!.length ? [a, b] : [b, a];
    if (neighbours[few]!.includes(many)) return;
    neighbours[a]!.push(b);
    neighbours[b]!.push(a);
    degree[a]!++;
    degree[b]!++;
  };
  for (let pair = 0; pair < first.length; pair++) join(first[pair]!, second[pair]!);

  const order = new Int32Array(size);
  const place = new Int32Array(size).fill(-1);
  const waiting: number[][] = Array.from({ length: mostDegrees }, () => []);
  const queued = new Int32Array(size).fill(-1);
  const queue = (unknown: number): void => {
    const at = Math.min(degree[unknown]!, mostDegrees - 1);
    if (queued[unknown] === at) return;
    queued[unknown] = at;
    waiting[at]!.push(unknown);
  };
  for (let unknown = size - 1; unknown >= 0; unknown--) queue(unknown);
  let least = 0;
  for (let next = 0; next < size;) {
    const unknown = waiting[least]!.pop();
    if (unknown === undefined) {
      least++;
      continue;
    }
    if (place[unknown] !== -1 || queued[unknown] !== least) continue;
    place[unknown] = next;
    order[next++] = unknown;
    const left = neighbours[unknown]!.filter((one) => place[one] === -1);
    neighbours[unknown] = left;
    for (const one of left) degree[one]!--;
    for (let i = 0; i < left.length; i++) for (let j = i + 1; j < left.length; j++) join(left[i]!, left[j]!);
    for (const one of left) {
      queue(one);
      least = Math.min(least, queued[one]!);
    }
  }
  return { order, place, ...slotsOf(order, place, neighbours) };
}

/** Lays out the neighbours that were left of each unknown when its turn came. */
function slotsOf(order: Int32Array, place: Int32Array, neighbours: readonly number[][]): Pick<Elimination, 'begin' | 'later' | 'filled'> {
  const size = order.length;
  const begin = new Int32Array(size + 1);
  let fills = 0;
  for (let at = 0; at < size; at++) {
    const count = neighbours[order[at]!]!.length;
    begin[at + 1] = begin[at]! + count;
    fills += (count * (count - 1)) / 2;
  }
  const later = new Int32Array(begin[size]!);
  for (let at = 0; at < size; at++) {
    const slots = later.subarray(begin[at], begin[at + 1]);
    slots.set(neighbours[order[at]!]!.map((one) => place[one]!));
    slots.sort();
  }
  const filled = new Int32Array(fills);
  let fill = 0;
  for (let at = 0; at < size; at++) {
    for (let i = begin[at]!; i < begin[at + 1]!; i++) {
      for (let j = i + 1; j < begin[at + 1]!; j++) filled[fill++] = slotOf({ begin, later }, later[i]!, later[j]!);
    }
  }
  return { begin, later, filled };
}

/** The slot that joins a place to a later one. */
export function slotOf({ begin, later }: Pick<Elimination, 'begin' | 'later'>, place: number, laterPlace: number): number {
  let low = begin[place]!;
  let high = begin[place + 1]! - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (later[middle]! < laterPlace) low = middle + 1;
    else high = middle;
  }
  return low;
}
