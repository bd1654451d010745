/** A network without its laterals: each stands as one emitter on the node that it hangs on. */
import { chainsOf, type Chain, type Row } from './network-chains.js';
import { allTogether, type EmittersLaw } from './network-emitters.js';
import type { NetworkState, Parts } from './network-parts.js';
import { rowLaw, type RowLaw } from './network-row.js';

export interface Condensed {
  readonly parts: Parts;
  /** The state of the whole network for one of these parts. */
  readonly expand: (state: NetworkState) => NetworkState;
}

/** Takes the rows of pipes out of a network, or undefined where there are none. */
export function condensed(parts: Parts): Condensed | undefined {
  const chains = chainsOf(parts);
  if (chains.length === 0) return undefined;
  const laws = new Map<Row, RowLaw>();
  for (const { row } of chains) if (!laws.has(row)) laws.set(row, rowLaw(row));

  const size = parts.elevations.length;
  const isLeft = new Uint8Array(size).fill(1);
  const isLinkLeft = new Uint8Array(parts.curves.length).fill(1);
  const hanging = new Map<number, EmittersLaw[]>();
  for (const { root, nodes, links, row } of chains) {
    for (const node of nodes) isLeft[node] = 0;
    for (const link of links) isLinkLeft[link] = 0;
    const law = laws.get(row)!;
    if (law.usualFlow === 0 || !parts.isFree[root]) continue;
    const own = parts.emitters[root];
    if (!hanging.has(root)) hanging.set(root, own ? [own] : []);
    hanging.get(root)!.push(law);
  }
  const nodes = numbersOf(isLeft);
  const links = numbersOf(isLinkLeft);
  const numberIn = new Int32Array(size).fill(-1);
  nodes.forEach((node, i) => { numberIn[node] = i; });
  const left: Parts = {
    from: links.map((link) => numberIn[parts.from[link]!]!),
    to: links.map((link) => numberIn[parts.to[link]!]!),
    curves: Array.from(links, (link) => parts.curves[link]!),
    elevations: pick(parts.elevations, nodes), demands: pick(parts.demands, nodes), keptHeads: pick(parts.keptHeads, nodes),
    isFree: Uint8Array.from(nodes, (node) => parts.isFree[node]!),
    emitters: Array.from(nodes, (node) => (hanging.has(node) ? allTogether(hanging.get(node)!) : parts.emitters[node])),
  };

  const expand = (state: NetworkState): NetworkState => {
    const whole: NetworkState = {
      heads: new Float64Array(size), emitterHeads: new Float64Array(size), emitterFlows: new Float64Array(size),
      flows: new Float64Array(parts.curves.length), losses: new Float64Array(parts.curves.length), closed: new Uint8Array(parts.curves.length),
    };
    nodes.forEach((node, i) => {
      whole.heads[node] = state.heads[i]!;
      const emitter = parts.emitters[node];
      if (!emitter) return;
      whole.emitterHeads[node] = state.heads[i]! - parts.elevations[node]!;
      whole.emitterFlows[node] = emitter.flow(whole.emitterHeads[node]);
    });
    links.forEach((link, i) => {
      whole.flows[link] = state.flows[i]!;
      whole.losses[link] = state.losses[i]!;
      whole.closed[link] = state.closed[i]!;
    });
    for (const chain of chains) unroll(chain, laws.get(chain.row)!, parts, whole);
    return whole;
  };
  return { parts: left, expand };
}

/** Sets heads and flows along a row for the head of the node that it hangs on. */
function unroll({ root, nodes, links }: Chain, law: RowLaw, { from, elevations }: Parts, { heads, flows, losses, emitterHeads, emitterFlows }: NetworkState): void {
  law.along(heads[root]! - elevations[root]!, (place, head, emitted, flow, loss) => {
    const [node, link] = [nodes[place]!, links[place]!];
    heads[node] = elevations[node]! + head;
    emitterHeads[node] = head;
    emitterFlows[node] = emitted;
    const way = from[link] === node ? -1 : 1;
    flows[link] = way * flow;
    losses[link] = way * loss;
  });
}

/** The numbers of the places that hold a 1. */
function numbersOf(isThere: Uint8Array): Int32Array {
  const numbers = new Int32Array(isThere.length);
  let count = 0;
  for (let i = 0; i < isThere.length; i++) if (isThere[i]) numbers[count++] = i;
  return numbers.slice(0, count);
}

const pick = (all: Float64Array, numbers: Int32Array): Float64Array => Float64Array.from(numbers, (number) => all[number]!);
