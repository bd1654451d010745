/** The pressures and flows of a network, and where no water comes. */
import type { Solving } from '../calculation/calculation.js';
import { quoted } from '../units/quoted.js';
import { writeNumber } from '../units/write.js';
import type { Network, NetworkFlow } from './formulas/network.js';
import { NetworkConvergenceError, solveNetwork } from './formulas/network-solve.js';
import { isTwoWay, losslessRing, regulatorRing, unfedNodes, unreachedNodes } from './formulas/network-unfed.js';
import type { SeenNetwork } from './network-fields.js';
import type { NetworkPlan } from './network-layout.js';
import { emptiness, noteDry, noteSuction } from './network-notes.js';
import { leastFlow } from './network-results.js';

/** Refuses what has no solution, by name. */
export function refuseUnsolvable({ nodes, pipes, regulators }: SeenNetwork, { network, dry }: NetworkPlan, { refuse }: Solving): void {
  const unfed = (dry.size === 0 ? [] : unfedNodes(network, () => true)).flatMap((node) => nodes[node]?.name ?? []);
  if (unfed.length > 0) refuse('nodes', 'every node joined by some way to one with a kept pressure', `${unfed.slice(0, 5).map(quoted).join(', ')}${unfed.length > 5 ? ' and others' : ''} without`, 'is a pipe missing, or a name another?');
  const drawn = nodes.find(({ demand }, node) => demand > 0 && dry.has(node));
  if (drawn) refuse('valves', 'open valves on a way to all that is drawn', `none open on any way to ${quoted(drawn.name)}`, 'open one, or leave out what is drawn there');
  const lossless = losslessRing(network);
  if (lossless !== undefined) refuse(`pipes[${lossless}].length`, 'a length or a loss coefficient somewhere on every ring of pipes, and on every way between kept pressures', `none on a way through ${quoted(pipes![lossless]!.name)}`, 'what flows there could be anything');
  const ring = regulatorRing(network);
  if (ring.length > 0) {
    const first = network.links.findIndex(({ kind }) => kind === 'regulator');
    refuse('regulators', 'no regulators that feed one another in a ring', ring.map((link) => quoted(regulators![link - first]!.name)).join(', '));
  }
}

/** A search that came to a pressure head below this, m, was after more water than can come. */
const hopelessHead = -20;

/** Places where the water column breaks, with the pressure that it lacks there, Pa. */
type Broken = Map<number, number>;

/** Most places where the water column is let break. */
const mostBroken = 100;

/** Heads and flows. Where pipes run higher than any water column holds, and nothing is drawn, nothing flows. */
export function solved(plan: NetworkPlan, pascals: number, solving: Solving): { readonly found: NetworkFlow; readonly broken: Broken } {
  const { network } = plan;
  const broken: Broken = new Map();
  const inlets = new Set(network.links.flatMap(({ kind, from }) => (kind === 'pump' ? [from] : [])));
  for (let whole = network; ; ) {
    const found = searched(whole, solving);
    const lowest = found.heads.reduce((least, head, node) => (head - network.nodes[node]!.elevation < found.heads[least]! - network.nodes[least]!.elevation ? node : least), 0);
    const pressure = (found.heads[lowest]! - network.nodes[lowest]!.elevation) * pascals;
    const { head, demand = 0 } = network.nodes[lowest]!;
    if (pressure > emptiness || head !== undefined || demand > 0 || inlets.has(lowest) || broken.size === mostBroken || !isPassed(whole, found, lowest)) return { found, broken };
    const without: Network = { ...whole, links: whole.links.map((link) => (link.from === lowest || link.to === lowest ? { kind: 'shut', from: link.from, to: link.to } : link)) };
    // What is drawn behind it holds it.
    const unfed = unfedNodes(without);
    if (unfed.some((node) => network.nodes[node]!.demand! > 0 && !plan.dry.has(node))) return { found, broken };
    broken.set(lowest, -pressure);
    whole = without;
  }
}

const isPassed = ({ links }: Network, { flows }: NetworkFlow, node: number): boolean => links.some(({ from, to }, link) => (from === node || to === node) && Math.abs(flows[link]!) > leastFlow);

/** Places that nothing can come to, as all that leads there is turned the other way: then nothing flows through it. */
export function unreachedBy({ network }: NetworkPlan, { flows }: NetworkFlow): ReadonlySet<number> {
  const isTurned = network.links.some((link, i) => !isTwoWay(link) && link.kind !== 'shut' && flows[i]! <= leastFlow);
  return isTurned ? unreachedNodes(network) : new Set();
}

/** Heads and flows, or a refusal where the search for them ran off below what a water column holds. */
function searched(network: Network, { refuse }: Solving): NetworkFlow {
  try {
    return solveNetwork(network);
  } catch (error) {
    if (!(error instanceof NetworkConvergenceError)) throw error;
    const lowest = error.heads.reduce((least, head, node) => Math.min(least, head - network.nodes[node]!.elevation), 0);
    if (!(lowest < hopelessHead)) throw error;
    return refuse('nodes', 'a network that can give what is drawn', `one in which a search for the pressures came to ${writeNumber(lowest)} m of water, where no water column holds`, 'take wider pipes, more pressure, less demand, or lay it lower');
  }
}

/** Pressures of all nodes, Pa, 0 where no water comes; and what these lack. */
export function pressuresOf({ network, nodeNames }: NetworkPlan, { heads, flows }: NetworkFlow, broken: Broken, unreached: ReadonlySet<number>, pascals: number, solving: Solving) {
  const flowing = new Uint8Array(network.nodes.length);
  network.links.forEach(({ from, to }, link) => {
    if (Math.abs(flows[link]!) > leastFlow) flowing[from] = flowing[to] = 1;
  });
  const pressures = new Float64Array(network.nodes.length);
  const lacks = new Map(broken);
  network.nodes.forEach(({ elevation, head }, node) => {
    const pressure = (heads[node]! - elevation) * pascals;
    const isDry = !flowing[node] && head === undefined && (pressure < 0 || unreached.has(node));
    if (isDry && pressure < -1 && !unreached.has(node)) lacks.set(node, -pressure);
    pressures[node] = isDry ? 0 : pressure;
  });
  noteDry(lacks, nodeNames, solving);
  noteSuction(pressures, nodeNames, new Set(network.links.filter(({ kind }) => kind === 'pump').map(({ from }) => from)), pascals, solving);
  return { pressures, lacks };
}
