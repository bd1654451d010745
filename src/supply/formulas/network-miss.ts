/** How far a state of a network is from a solution. */
import type { LinkCurve } from './network-curves.js';
import type { NetworkState, Parts } from './network-parts.js';

/** The head that drives a link. */
export const driveOf = ({ highestInlet }: LinkCurve, from: number, to: number): number => Math.min(from, highestInlet) - to;

/** The head that a link takes at its flow less the one that drives it. */
export function excess({ from, to, curves }: Parts, { heads, losses }: NetworkState, link: number): number {
  return losses[link]! - driveOf(curves[link]!, heads[from[link]!]!, heads[to[link]!]!);
}

/** The same where it counts: for a closed link only where it should be open. */
function headMiss(parts: Parts, state: NetworkState, link: number): number {
  const miss = excess(parts, state, link);
  return state.closed[link] ? Math.min(0, miss) : miss;
}

/** How far a state is from a solution: sum of squares of the heads missed and of the flows, these as shares of what links carry. */
export function amiss(parts: Parts, state: NetworkState): number {
  const { from, to, curves, elevations, demands, emitters, isFree } = parts;
  const { heads, flows, emitterHeads, emitterFlows } = state;
  let sum = 0;
  const surplus = new Float64Array(elevations.length);
  let typical = 0;
  for (let link = 0; link < curves.length; link++) {
    const miss = headMiss(parts, state, link);
    sum += miss * miss;
    surplus[from[link]!]! -= flows[link]!;
    surplus[to[link]!]! += flows[link]!;
    typical = Math.max(typical, curves[link]!.start);
  }
  for (let node = 0; node < elevations.length; node++) {
    if (!isFree[node]) continue;
    const miss = (surplus[node]! - demands[node]! - emitterFlows[node]!) / typical;
    sum += miss * miss;
    if (!emitters[node]) continue;
    const apart = heads[node]! - elevations[node]! - emitterHeads[node]!;
    sum += apart * apart;
  }
  return sum;
}

/** Largest misses of a state, and what leaves each node by it. */
export interface Residuals {
  readonly outflows: Float64Array;
  readonly headResidual: number;
  readonly flowResidual: number;
  readonly largestFlow: number;
}

export function residuals(parts: Parts, state: NetworkState): Residuals {
  const { from, to, curves, elevations, demands, emitters, isFree } = parts;
  const outflows = new Float64Array(elevations.length);
  let [headResidual, flowResidual, largestFlow] = [0, 0, 0];
  for (let link = 0; link < curves.length; link++) {
    const flow = state.flows[link]!;
    outflows[from[link]!]! -= flow;
    outflows[to[link]!]! += flow;
    largestFlow = Math.max(largestFlow, Math.abs(flow));
    headResidual = Math.max(headResidual, Math.abs(headMiss(parts, state, link)));
  }
  for (let node = 0; node < elevations.length; node++) {
    if (!isFree[node]) continue;
    const emitter = emitters[node];
    const leaves = emitter ? demands[node]! + emitter.flow(state.heads[node]! - elevations[node]!) : demands[node]!;
    flowResidual = Math.max(flowResidual, Math.abs(outflows[node]! - leaves));
    outflows[node] = leaves;
  }
  return { outflows, headResidual, flowResidual, largestFlow };
}
