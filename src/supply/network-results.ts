/** What comes of a network, part by part and zone by zone. */
import { pipeVelocity } from '../laterals/formulas/head-loss.js';
import { lowestAndHighest, lowQuarterUniformityWhole } from '../laterals/formulas/uniformity.js';
import type { NetworkFlow } from './formulas/network.js';
import type { SeenNetwork } from './network-fields.js';
import type { EmitterPlace, NetworkPlan } from './network-layout.js';

/** A regulator is wide open where less than this, m, is between what is before it and what it is set to. */
const leastThrottling = 1e-3;

/** Mean, lowest and highest flow of emitters, and how even they are. */
function evennessOf(places: readonly EmitterPlace[], outflows: Float64Array) {
  const each = Float64Array.from(places, ({ node, count }) => outflows[node]! / count);
  const number = places.reduce((sum, { count }) => sum + count, 0);
  const [lowestFlow, highestFlow] = lowestAndHighest(each);
  const shares = new Float64Array(number);
  let at = 0;
  places.forEach(({ count, emitter }, i) => {
    shares.fill(each[i]! / emitter.flow, at, at + count);
    at += count;
  });
  const sum = places.reduce((total, { node }) => total + outflows[node]!, 0);
  return { meanFlow: sum / number, lowestFlow, highestFlow, lowQuarterUniformity: sum > 0 ? lowQuarterUniformityWhole(shares) : 0 };
}

/** Zone by zone, in the order that they come up in. */
export function zonesOf(places: readonly EmitterPlace[], outflows: Float64Array) {
  const byZone = new Map<string, EmitterPlace[]>();
  for (const place of places) {
    if (place.zone === undefined) continue;
    const together = byZone.get(place.zone);
    if (together) together.push(place);
    else byZone.set(place.zone, [place]);
  }
  return [...byZone].map(([name, own]) => ({ name, zoneFlow: own.reduce((sum, { node }) => sum + outflows[node]!, 0), ...evennessOf(own, outflows) }));
}

/** The emitter that gets the smallest share of what it is said to give. */
export function worstOf(places: readonly EmitterPlace[], outflows: Float64Array, pressures: Float64Array) {
  let worst: { readonly place: EmitterPlace; readonly nominalShare: number } | undefined;
  for (const place of places) {
    const nominalShare = outflows[place.node]! / place.count / place.emitter.flow;
    if (worst === undefined || nominalShare < worst.nominalShare) worst = { place, nominalShare };
  }
  if (!worst) return undefined;
  const { place: { name, outlet, node, count }, nominalShare } = worst;
  return { name, outlet, nominalShare, emittedFlow: outflows[node]! / count, pressure: pressures[node]! };
}

/** What every part does that was named, kind by kind. */
export function partsOf(seen: SeenNetwork, { network: { nodes, links }, firstOf, places, outletsOf }: NetworkPlan, { heads, flows, outflows }: NetworkFlow, pressures: Float64Array, pascals: number) {
  const dropOf = (link: number): number => pressures[links[link]!.from]! - pressures[links[link]!.to]!;
  const each = <Part extends { readonly name: string }, More>(kind: keyof typeof firstOf, parts: readonly Part[] | undefined, more: (link: number, part: Part) => More) =>
    (parts ?? []).map((part, i) => ({ name: part.name, flow: flows[firstOf[kind] + i]!, pressureDrop: dropOf(firstOf[kind] + i), ...more(firstOf[kind] + i, part) }));
  const nothing = () => ({});
  return {
    pipes: each('pipes', seen.pipes, (link, { diameter }) => ({ velocity: pipeVelocity(Math.abs(flows[link]!), diameter) })),
    valves: each('valves', seen.valves, nothing),
    filters: each('filters', seen.filters, nothing),
    pumps: each('pumps', seen.pumps, (link) => ({ head: heads[links[link]!.to]! - heads[links[link]!.from]! })),
    regulators: each('regulators', seen.regulators, (link, { setPressure }) => {
      const { from, to } = links[link]!;
      const isOpen = (heads[from]! - nodes[to]!.elevation - leastThrottling) * pascals < setPressure;
      return { outletPressure: pressures[to]!, regulatorState: flows[link] === 0 ? 'closed' as const : isOpen ? 'open' as const : 'regulating' as const };
    }),
    nonReturnValves: each('nonReturnValves', seen.nonReturnValves, (link) => ({ isOpen: flows[link]! > 0 })),
    dripLaterals: (seen.dripLaterals ?? []).map(({ name }, i) => {
      const own = places.slice(outletsOf[i]!.from, outletsOf[i]!.to);
      const { inlet } = outletsOf[i]!;
      const flowsOf = Float64Array.from(own, ({ node }) => outflows[node]!);
      return {
        name, inletPressure: pressures[inlet]!, endPressure: pressures[own.at(-1)!.node]!, inletFlow: flowsOf.reduce((sum, q) => sum + q, 0), ...evennessOf(own, outflows),
        pressures: Float64Array.from(own, ({ node }) => pressures[node]!), flows: flowsOf,
      };
    }),
  };
}
