/** What comes of a network, part by part and zone by zone. */
import { pipeVelocity } from '../laterals/formulas/head-loss.js';
import { flowVariationWuGitlin1974, lowestAndHighest, lowQuarterUniformityWhole, mean } from '../laterals/formulas/uniformity.js';
import type { NetworkFlow } from './formulas/network.js';
import type { SeenNetwork } from './network-fields.js';
import type { EmitterRun, NetworkPlan } from './network-layout.js';

/** A regulator is wide open where less than this, m, is between what is before it and what it is set to. */
const leastThrottling = 1e-3;

/** Less than this, m³/s, is no flow: 4 mL/h. */
export const leastFlow = 1e-9;

/** What one emitter at each place gives. */
function flowsOf(runs: readonly EmitterRun[], outflows: Float64Array): Float64Array {
  const flows = new Float64Array(runs.reduce((sum, { size }) => sum + size, 0));
  let at = 0;
  for (const { firstNode, size, count } of runs) for (let node = firstNode; node < firstNode + size; node++) flows[at++] = outflows[node]! / count;
  return flows;
}

/** Mean, lowest and highest flow of emitters, and how even they are. */
function evennessOf(runs: readonly EmitterRun[], outflows: Float64Array) {
  const each = flowsOf(runs, outflows);
  const [lowestFlow, highestFlow] = lowestAndHighest(each);
  const number = runs.reduce((total, { size, count }) => total + size * count, 0);
  const shares = new Float64Array(number);
  let [place, emitters, sum] = [0, 0, 0];
  for (const { size, count, nominalFlow } of runs) {
    for (const end = place + size; place < end; place++) {
      sum += count * each[place]!;
      for (const last = emitters + count; emitters < last; emitters++) shares[emitters] = each[place]! / nominalFlow;
    }
  }
  const flowing = sum > 0;
  return {
    meanFlow: sum / number, lowestFlow, highestFlow,
    flowVariation: flowing ? flowVariationWuGitlin1974(shares) : 0,
    lowestShare: flowing ? lowestAndHighest(shares)[0] / mean(shares) : 0,
    lowQuarterUniformity: flowing ? lowQuarterUniformityWhole(shares) : 0,
  };
}

/** What all emitters together give. */
const sumOf = (runs: readonly EmitterRun[], outflows: Float64Array): number =>
  runs.reduce((sum, { firstNode, size }) => sum + outflows.subarray(firstNode, firstNode + size).reduce((all, flow) => all + flow, 0), 0);

/** The emitters of each zone, in the order that they come up in. */
export function byZone(runs: readonly EmitterRun[]): ReadonlyMap<string, readonly EmitterRun[]> {
  const zones = new Map<string, EmitterRun[]>();
  for (const run of runs) {
    if (run.zone === undefined) continue;
    const together = zones.get(run.zone);
    if (together) together.push(run);
    else zones.set(run.zone, [run]);
  }
  return zones;
}

/** What a zone is given, and how evenly. */
export const zoneOf = (name: string, runs: readonly EmitterRun[], outflows: Float64Array) => ({ name, zoneFlow: sumOf(runs, outflows), ...evennessOf(runs, outflows) });

/** The emitter that gets the smallest share of what it is said to give. */
export function worstOf(runs: readonly EmitterRun[], outflows: Float64Array, pressures: Float64Array) {
  let worst: { readonly run: EmitterRun; readonly node: number; readonly nominalShare: number } | undefined;
  for (const run of runs) {
    for (let node = run.firstNode; node < run.firstNode + run.size; node++) {
      const nominalShare = outflows[node]! / run.count / run.nominalFlow;
      if (worst === undefined || nominalShare < worst.nominalShare) worst = { run, node, nominalShare };
    }
  }
  if (!worst) return undefined;
  const { run: { name, firstOutlet, firstNode, count }, node, nominalShare } = worst;
  return { name, outlet: firstOutlet && firstOutlet + node - firstNode, nominalShare, emittedFlow: outflows[node]! / count, pressure: pressures[node]! };
}

/** What every part does that was named, kind by kind. */
export function partsOf(seen: SeenNetwork, { network: { nodes, links }, firstOf, laterals }: NetworkPlan, { heads, flows, outflows }: NetworkFlow, pressures: Float64Array, pascals: number) {
  const flowIn = (link: number): number => (Math.abs(flows[link]!) < leastFlow ? 0 : flows[link]!);
  const dropOf = (link: number): number => pressures[links[link]!.from]! - pressures[links[link]!.to]!;
  const each = <Part extends { readonly name: string }, More>(kind: keyof typeof firstOf, parts: readonly Part[] | undefined, more: (link: number, part: Part) => More) =>
    (parts ?? []).map((part, i) => ({ name: part.name, flow: flowIn(firstOf[kind] + i), pressureDrop: dropOf(firstOf[kind] + i), ...more(firstOf[kind] + i, part) }));
  const nothing = () => ({});
  return {
    pipes: each('pipes', seen.pipes, (link, { diameter }) => ({ velocity: pipeVelocity(Math.abs(flowIn(link)), diameter) })),
    valves: each('valves', seen.valves, nothing),
    filters: each('filters', seen.filters, nothing),
    pumps: each('pumps', seen.pumps, (link) => ({ head: heads[links[link]!.to]! - heads[links[link]!.from]! })),
    regulators: each('regulators', seen.regulators, (link, { setPressure }) => {
      const { from, to } = links[link]!;
      const isOpen = (heads[from]! - nodes[to]!.elevation - leastThrottling) * pascals < setPressure;
      return { outletPressure: pressures[to]!, regulatorState: flowIn(link) === 0 ? 'closed' as const : isOpen ? 'open' as const : 'regulating' as const };
    }),
    nonReturnValves: each('nonReturnValves', seen.nonReturnValves, (link) => ({ isOpen: flowIn(link) > 0 })),
    dripLaterals: (seen.dripLaterals ?? []).map(({ name }, i) => {
      const { inlet, runs } = laterals[i]!;
      const own = flowsOf(runs, outflows);
      const first = runs[0]!.firstNode;
      const along = pressures.slice(first, first + own.length);
      return { name, inletPressure: pressures[inlet]!, endPressure: along.at(-1)!, inletFlow: sumOf(runs, outflows), ...evennessOf(runs, outflows), pressures: along, flows: own };
    }),
  };
}
