/** A network as a search for its heads and flows takes it, and where that starts. */
import type { EmitterLaw } from '../../laterals/formulas/emitter.js';
import type { Network } from './network.js';
import { linkCurves, lossAt, shut, type LinkCurve } from './network-curves.js';
import { emittersTogether, type EmittersLaw } from './network-emitters.js';

/** A network column by column. */
export interface Parts {
  /** Of each link, the nodes at its ends and its curve. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly curves: readonly LinkCurve[];
  /** Of each node its elevation, what is drawn there, its emitters, and whether its head is to be found; where it is kept, that head. */
  readonly elevations: Float64Array;
  readonly demands: Float64Array;
  readonly emitters: readonly (EmittersLaw | undefined)[];
  readonly isFree: Uint8Array;
  readonly keptHeads: Float64Array;
}

export function partsOf(network: Network): Parts {
  const { nodes, links } = network;
  const parts = {
    from: new Int32Array(links.length), to: new Int32Array(links.length),
    elevations: new Float64Array(nodes.length), demands: new Float64Array(nodes.length), isFree: new Uint8Array(nodes.length), keptHeads: new Float64Array(nodes.length),
  };
  links.forEach(({ from, to }, link) => {
    parts.from[link] = from;
    parts.to[link] = to;
  });
  nodes.forEach(({ elevation, demand = 0, head }, node) => {
    parts.elevations[node] = elevation;
    parts.demands[node] = demand;
    parts.isFree[node] = head === undefined ? 1 : 0;
    parts.keptHeads[node] = head ?? 0;
  });
  const emitters = nodeEmitters(network);
  return { ...parts, emitters, curves: linkCurves(network, emitters) };
}

/** The emitters of each node, undefined where there are none. */
function nodeEmitters({ nodes }: Network): readonly (EmittersLaw | undefined)[] {
  const known = new Map<EmitterLaw, Map<number, EmittersLaw>>();
  return nodes.map(({ emitter }) => {
    if (!emitter) return undefined;
    const { law, count = 1 } = emitter;
    const ofLaw = known.get(law) ?? new Map<number, EmittersLaw>();
    known.set(law, ofLaw);
    const together = ofLaw.get(count) ?? emittersTogether(law, count);
    ofLaw.set(count, together);
    return together;
  });
}

/** Where a search stands. */
export interface NetworkState {
  readonly heads: Float64Array;
  readonly flows: Float64Array;
  /** Head that each link takes at its flow, with the sign of the flow. */
  readonly losses: Float64Array;
  /** 1 where a one-way link is closed; its flow is then 0. */
  readonly closed: Uint8Array;
  /** Pressure head and flow of the emitters of each node: a point of their law, which need not be the head of the node yet. */
  readonly emitterHeads: Float64Array;
  readonly emitterFlows: Float64Array;
}

/** A share of the highest head and of the flows to start from, and how much the search is held back at first; 0 is not at all. */
export interface Start {
  readonly head: number;
  readonly flow: number;
  readonly hold: number;
}

/** Every link that is not shut flows, every node has the same share of what the highest head can do: the highest that is kept, and all pumps on top of it. */
export function startingState({ curves, elevations, emitters, isFree, keptHeads }: Parts, share: Start): NetworkState {
  const [size, links] = [elevations.length, curves.length];
  let highest = -Infinity;
  for (let node = 0; node < size; node++) if (!isFree[node]) highest = Math.max(highest, keptHeads[node]!);
  for (const { loss } of new Set(curves)) highest += Math.max(0, -loss(0));
  const state = {
    heads: new Float64Array(size), emitterHeads: new Float64Array(size), emitterFlows: new Float64Array(size),
    flows: new Float64Array(links), losses: new Float64Array(links), closed: new Uint8Array(links),
  };
  for (let node = 0; node < size; node++) {
    const elevation = elevations[node]!;
    state.heads[node] = isFree[node] ? elevation + share.head * Math.max(0, highest - elevation) : keptHeads[node]!;
    const emitter = emitters[node];
    if (!emitter) continue;
    state.emitterHeads[node] = state.heads[node]! - elevation;
    state.emitterFlows[node] = emitter.flow(state.emitterHeads[node]!);
  }
  for (let link = 0; link < links; link++) {
    const curve = curves[link]!;
    state.flows[link] = share.flow * curve.start;
    state.losses[link] = lossAt(curve, state.flows[link]!);
    state.closed[link] = curve === shut ? 1 : 0;
  }
  return state;
}
