/** What is to be said about a network, and what of it cannot be. */
import type { Solving } from '../calculation/calculation.js';
import { pipeVelocity } from '../laterals/formulas/head-loss.js';
import { fastWater, noteFrictionLaw, refuseRacing, reynoldsNumberOf } from '../laterals/pipe.js';
import { uniformityClass } from '../laterals/uniformity-classes.js';
import { kilopascals, litresPerMinute } from '../units/in-words.js';
import { quoted } from '../units/quoted.js';
import { writeNumber } from '../units/write.js';
import type { SeenNetwork } from './network-fields.js';
import { practicalSuctionLift } from './formulas/suction.js';
import type { EmitterRun, NetworkPlan } from './network-layout.js';
import type { ZoneSupply } from './network-shortage.js';
import { pumpCurveOf } from './pump-curve-fields.js';

/** At this pressure, Pa, water boils even in a cool garden at sea level: no water column holds. */
export const emptiness = -98_000;

/** No link of a garden carries more than this, m³/h. */
const impossibleFlow = 10_000;

/** Names in one note. */
const mostNamed = 5;

const listed = (names: readonly string[]): string => {
  const once = [...new Set(names)];
  return once.slice(0, mostNamed).map(quoted).join(', ') + (once.length > mostNamed ? ` and ${once.length - mostNamed} more` : '');
};

/** Speaks of the fastest water in a pipe, and of how wide that pipe would have to be. */
export function noteFastest({ network: { links }, linkNames }: NetworkPlan, flows: Float64Array, seen: SeenNetwork, solving: Solving): void {
  let fastest = { velocity: 0, flow: 0, diameter: 1, name: '' };
  links.forEach((link, i) => {
    if (Math.abs(flows[i]!) * 3600 > impossibleFlow) solving.refuse('nodes', 'a network that carries at most 10 000 m³/h anywhere', `one that would carry ${writeNumber(Math.abs(flows[i]!) * 3600)} m³/h`, 'are units and pressures right?');
    if (link.kind !== 'pipe') return;
    const [flow, { diameter }] = [Math.abs(flows[i]!), link];
    const velocity = pipeVelocity(flow, diameter);
    if (velocity > fastest.velocity) fastest = { velocity, flow, diameter, name: linkNames[i]! };
  });
  const { velocity, flow, diameter, name } = fastest;
  refuseRacing(velocity, solving.refuse);
  noteFrictionLaw(reynoldsNumberOf(flow, diameter, seen.waterTemperature), { ...seen, diameter }, solving);
  if (velocity <= fastWater) return;
  const wide = (Math.floor(10_000 * diameter * Math.sqrt(velocity / fastWater)) + 1) / 10;
  solving.note('caution', 'fast-water', 'velocity', `The water runs at ${writeNumber(velocity)} m/s in ${quoted(name)}, ${writeNumber(diameter * 1000)} mm wide inside; above ${fastWater} m/s small pipes surge and wear: from ${writeNumber(wide)} mm on it stays below at the same flow, and more may flow then.`);
}

/** Speaks of pressures below that of the air, and refuses what no water column holds. Pressures, Pa, of all nodes; `inlets` are those that pumps draw from. */
export function noteSuction(pressures: Float64Array, names: readonly string[], inlets: ReadonlySet<number>, pascals: number, { note, refuse }: Solving): void {
  const sucked: number[] = [];
  for (let node = 0; node < pressures.length; node++) if (pressures[node]! < -1) sucked.push(node);
  if (sucked.length === 0) return;
  const lowest = sucked.reduce((least, node) => (pressures[node]! < pressures[least]! ? node : least));
  const least = `${kilopascals(pressures[lowest]!)} at ${quoted(names[lowest]!)}`;
  if (pressures[lowest]! < emptiness) refuse('nodes', 'a network that can give what is drawn', `one with ${least}, where no water column holds`, 'take wider pipes, more pressure, less demand, or lay it lower');
  const practical = practicalSuctionLift(0);
  for (const node of sucked.filter((one) => inlets.has(one))) {
    const lift = -pressures[node]! / pascals;
    const draws = `At ${quoted(names[node]!)} a pump draws at ${kilopascals(pressures[node]!)}`;
    if (lift > practical) note('caution', 'lift-too-high', 'pressure', `${draws}, a lift of ${writeNumber(lift)} m, losses included; in practice pumps manage ${practical} m of cold water at sea level: set it ${writeNumber(lift - practical)} m lower, and see \`suction\` for its height, water and needs.`);
    else note('info', 'draws', 'pressure', `${draws}: \`suction\` says whether it can.`);
  }
  const others = sucked.filter((one) => !inlets.has(one)).map((node) => names[node]!);
  if (others.length > 0) note('caution', 'negative-pressure', 'pressure', `The pressure is below that of the air at ${listed(others)}, down to ${least}: leaks draw air and dirt in, and outlets give nothing. ${kilopascals(-pressures[lowest]!)} more would end it, by more pressure, wider pipes or a lower course.`);
}

/** A place that water does not reach, by the number of its node, and the pressure that it lacks there, Pa. */
export type Lacks = ReadonlyMap<number, number>;

/** Speaks of places that water does not reach. */
export function noteDry(lacks: Lacks, names: readonly string[], { note }: Solving): void {
  let worst: readonly [number, number] | undefined;
  for (const one of lacks) if (!worst || one[1] > worst[1]) worst = one;
  if (worst) note('danger', 'no-water', 'pressure', `No water reaches ${listed([...lacks.keys()].map((node) => names[node]!))}: at least ${kilopascals(worst[1])} more pressure would have to come to ${quoted(names[worst[0]]!)}.`);
}

/** The lists of what lets water pass one way only. */
const listOf = { 'pump': 'pumps', 'regulator': 'regulators', 'non-return': 'nonReturnValves' } as const;

/** Speaks of what lets water pass one way only, away from places that it would have to come to. */
export function noteTurned({ network: { links }, nodeNames, linkNames, firstOf }: NetworkPlan, unreached: ReadonlySet<number>, { note }: Solving): void {
  if (unreached.size === 0) return;
  links.forEach(({ kind, from, to }, i) => {
    if (!(kind in listOf) || !unreached.has(from) || unreached.has(to)) return;
    const list = listOf[kind as keyof typeof listOf];
    note('caution', 'against-the-way', `${list}[${i - firstOf[list]}].from`, `${quoted(linkNames[i]!)} lets water pass from ${quoted(nodeNames[from]!)} to ${quoted(nodeNames[to]!)} only, and nothing can come to ${quoted(nodeNames[from]!)}: turn it round.`);
  });
}

/** Speaks of emitters that give nothing, or that are outside the pressures that they regulate between. */
export function noteEmitters(runs: readonly EmitterRun[], pressures: Float64Array, outflows: Float64Array, pascals: number, { note }: Solving): void {
  let places = 0;
  let toOpen = 0;
  const idle: string[] = [];
  const below: { name: string; lack: number }[] = [];
  const above: { name: string; excess: number }[] = [];
  for (const { firstNode, size, name, emitter } of runs) {
    places += size;
    for (let node = firstNode; node < firstNode + size; node++) {
      const gives = outflows[node]! > 0;
      if (!gives) idle.push(name);
      if (!('openingHead' in emitter)) continue;
      if (!gives) {
        if (emitter.closingHead) toOpen = Math.max(toOpen, emitter.closingHead * pascals - pressures[node]!);
        continue;
      }
      const lack = emitter.openingHead * pascals - pressures[node]!;
      const excess = pressures[node]! - emitter.highestHead * pascals;
      if (lack > 0) below.push({ name, lack });
      if (excess > 0) above.push({ name, excess });
    }
  }
  const seals = toOpen > 0 ? ` Those that keep the water back need up to ${kilopascals(toOpen)} more before they open, and wider pipes do not help where nothing flows.` : '';
  if (idle.length > 0) note('danger', 'idle-emitters', 'outflow', `${idle.length} of ${places} places with emitters give nothing: ${listed(idle)}.${seals}`);
  if (below.length > 0) note('caution', 'not-compensating', 'compensation', `${below.length} emitters do not regulate, at ${listed(below.map(({ name }) => name))}: they lack up to ${kilopascals(below.reduce((most, { lack }) => Math.max(most, lack), 0))}.`);
  if (above.length > 0) note('caution', 'above-range', 'compensation', `${above.length} emitters have more pressure than they regulate, at ${listed(above.map(({ name }) => name))}: take off up to ${kilopascals(above.reduce((most, { excess }) => Math.max(most, excess), 0))}.`);
}

/** Speaks of pumps outside their curves or that do not reach their system. */
export function notePumps({ pumps = [] }: SeenNetwork, pumped: readonly { readonly flow: number; readonly head: number }[], { note }: Solving): void {
  pumps.forEach(({ name, pumpCurve, curveShape }, i) => {
    const [{ flow, head }, first, last] = [pumped[i]!, pumpCurve[0]!, pumpCurve.at(-1)!];
    const end = pumpCurve.length > 1 ? last.flow : 2 * last.flow;
    if (flow === 0) note('danger', 'pump-too-weak', `pumps[${i}]`, `Nothing flows through ${quoted(name)}: every way from it is shut, or what lies against it is more than the ${writeNumber(pumpCurveOf({ pumpCurve, curveShape }).head(0))} m that it has then. Open a way or take a stronger pump, and do not run this one so: it heats the water in it.`);
    else if (head <= 0) note('caution', 'outside-curve', `pumps[${i}]`, `Water runs through ${quoted(name)} at ${litresPerMinute(flow)}, faster than it can push: more is drawn than it gives, or it is not needed here.`);
    else if (flow > end) note('caution', 'outside-curve', `pumps[${i}]`, `${quoted(name)} gives ${litresPerMinute(flow)}, and its curve ends at ${litresPerMinute(end)}: it may overload its motor. Throttle it by ${litresPerMinute(flow - end)}, open fewer zones, or take a larger one.`);
    else if (pumpCurve.length > 1 && flow < first.flow) note('caution', 'outside-curve', `pumps[${i}]`, `${quoted(name)} gives ${litresPerMinute(flow)}, and its curve starts at ${litresPerMinute(first.flow)}: take the result with care, or open ${litresPerMinute(first.flow - flow)} more.`);
  });
}

/** Less than this share of what they are said to give is next to nothing, and how even that is tells nothing. */
const leastShare = 0.01;

/** Speaks of a zone whose quarter with the least gets too little by customary classes. */
export function noteZone({ name, nominalShare }: ZoneSupply, lowQuarterUniformity: number, i: number, { note }: Solving): void {
  if (nominalShare < leastShare) return;
  const { called } = uniformityClass('low-quarter uniformity', lowQuarterUniformity)!;
  if (called === 'excellent' || called === 'good') return;
  note('caution', 'uneven', `zones[${i}].lowQuarterUniformity`, `In ${quoted(name)} the quarter with the least gets ${writeNumber(lowQuarterUniformity * 100)} % of the mean, ${called} by customary classes: wider or shorter pipes, a regulator a lateral, or compensating emitters even it out.`);
}
