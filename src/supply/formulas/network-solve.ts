/** The search for the heads and flows of a network. */
import { ConvergenceError } from '../../numerics/convergence-error.js';
import type { Network, NetworkFlow } from './network.js';
import { condensed } from './network-condensed.js';
import { residuals, type Residuals } from './network-miss.js';
import { partsOf, startingState, type NetworkState, type Parts, type Start } from './network-parts.js';
import { RowError } from './network-row.js';
import { stepper } from './network-step.js';
import { lowerStill } from './network-still.js';
import { unfedNodes } from './network-unfed.js';

/** A network that was not solved: by how much heads (m) and flows (m3/s) were still off. */
export class NetworkConvergenceError extends ConvergenceError {
  constructor(readonly headResidual: number, readonly flowResidual: number, steps: number, /** Where the heads stood, m. */ readonly heads: Float64Array) {
    super(`the network is not solved: heads miss by up to ${Number(headResidual.toPrecision(3))} m and flows by up to ${Number(flowResidual.toPrecision(3))} m3/s after ${steps} steps`, headResidual, steps);
  }
}

/** Where the search starts, and where else while it finds nothing. */
const starts: readonly Start[] = [{ head: 0.5, flow: 1, hold: 0 }, { head: 0.5, flow: 0.05, hold: 0 }, { head: 0.5, flow: 0.05, hold: 0.01 }, { head: 0.5, flow: 0.05, hold: 1 }];

/** So many steps are held, so many not, and so on, in a search that holds. */
const phase = 40;

/** Flows are not told apart more finely than as a share of this, m3/s, even where nothing flows. */
const leastFlow = 1e-6;

/** How nearly a network has to be solved, and how long that may take. */
export interface NetworkOptions {
  /** Largest head residual, m; a millionth of a metre where it is not given. */
  readonly headTolerance?: number;
  /** Largest flow residual as a share of the largest flow, or of 3.6 L/h where nothing flows faster; a hundred-millionth where it is not given. */
  readonly flowTolerance?: number;
  /** Most steps from each of two starts, and four times as many from each of two further ones; 60 where it is not given. */
  readonly steps?: number;
}

/**
 * Heads and flows everywhere in a network of pipes with emitters, pumps, regulators and non-return valves; loops are welcome.
 *
 * Newton's method on the heads of the nodes and the flows of the links together (the global gradient of Todini and Pilati): each step takes every
 * link and emitter by the tangent to its curve, which leaves a sparse system of as many equations as there are nodes; it is eliminated by minimum
 * degree, at a cost in proportion to the nodes where there are few loops. Then links move along their curves to the new flow, emitters to the point with the
 * new sum of head and weighted flow, so that laws of any steepness do. A step that makes things worse is halved. One-way links are open, or
 * closed with a leak of nothing in the flow. Where one search finds nothing, others start elsewhere, two of them with steps that are held back.
 *
 * First the laterals are taken as one emitter each, whose law is found by going along them from their ends, so that what is left is small. What comes of
 * that is looked at like any state of the whole network, and where it is not yet near enough the search goes on from there.
 * Not solved is a ConvergenceError with both residuals, never a result.
 *
 * What no link joins to a node whose head is kept lies dry: its heads are its elevations and nothing flows, demand included; see `unfedNodes`.
 *
 * Source: Todini and Pilati (1988), A gradient algorithm for the analysis of pipe networks.
 */
export function solveNetwork(network: Network, options: NetworkOptions = {}): NetworkFlow {
  const parts = partsOf(withoutDry(network));
  const guess = condensedState(parts, options);
  let end = guess && search(parts, guess.state, 0, options);
  let steps = (guess?.steps ?? 0) + (end?.steps ?? 0);
  for (const start of starts) {
    if (end?.isFound) break;
    end = search(parts, startingState(parts, start), start.hold, options);
    steps += end.steps;
  }
  const { state, isFound } = end!;
  const { heads, flows } = state;
  const { outflows, headResidual, flowResidual } = isFound && lowerStill(parts, state) ? residuals(parts, state) : end!;
  if (!isFound) throw new NetworkConvergenceError(headResidual, flowResidual, steps, heads);
  return { heads, flows, outflows, headResidual, flowResidual, steps };
}

/** The state that the network comes to with its laterals as one emitter each, or undefined where it has none or that leads nowhere. */
function condensedState(parts: Parts, options: NetworkOptions): { readonly state: NetworkState; readonly steps: number } | undefined {
  const small = condensed(parts);
  if (!small) return undefined;
  try {
    const { state, steps, isFound } = search(small.parts, startingState(small.parts, starts[0]!), 0, options);
    return isFound ? { state: small.expand(state), steps } : undefined;
  } catch (error) {
    if (error instanceof RowError) return undefined;
    throw error;
  }
}

/** Where a search ended. */
interface Search extends Residuals {
  readonly state: NetworkState;
  readonly steps: number;
  readonly isFound: boolean;
}

/** Steps from a state on until the network is solved, or far enough. */
function search(parts: Parts, state: NetworkState, hold: number, { headTolerance = 1e-6, flowTolerance = 1e-8, steps: most = 60 }: NetworkOptions): Search {
  const isHeld = (steps: number): boolean => hold > 0 && Math.floor(steps / phase) % 2 === 0;
  let step: ReturnType<typeof stepper> | undefined;
  for (let [steps, isRestless] = [0, false]; ; steps++) {
    const found = residuals(parts, state);
    const isFound = !isRestless && found.headResidual <= headTolerance && found.flowResidual <= flowTolerance * Math.max(leastFlow, found.largestFlow);
    if (isFound || steps === (hold > 0 ? 4 : 1) * most || Number.isNaN(found.headResidual)) return { ...found, state, steps, isFound };
    step ??= stepper(parts, state, hold);
    isRestless = step(isHeld(steps));
  }
}

/** The same network in which what is not fed stands still. */
function withoutDry(network: Network): Network {
  const dry = new Set(unfedNodes(network));
  if (dry.size === 0) return network;
  return {
    ...network,
    nodes: network.nodes.map((node, i) => (dry.has(i) ? { elevation: node.elevation, head: node.elevation } : node)),
    links: network.links.map((link) => (dry.has(link.from) || dry.has(link.to) ? { kind: 'shut', from: link.from, to: link.to } : link)),
  };
}
