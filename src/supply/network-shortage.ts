/** What zones are given beside what their emitters are said to give, what stands in the way, and what to do about it. */
import type { Solving } from '../calculation/calculation.js';
import { frictionLaw } from '../laterals/formulas/friction-law.js';
import { kilopascals } from '../units/in-words.js';
import { quoted } from '../units/quoted.js';
import { writeNumber } from '../units/write.js';
import type { NetworkFlow } from './formulas/network.js';
import { pipeLoss } from './formulas/network-losses.js';
import { groupsOf, isTwoWay } from './formulas/network-unfed.js';
import type { SeenNetwork } from './network-fields.js';
import type { EmitterRun, NetworkPlan } from './network-layout.js';
import type { Lacks } from './network-notes.js';
import { leastFlow } from './network-results.js';

/** Outside these shares of what they are said to give, a zone's emitters are far from what they are made for. Common practice, no source. */
const [leastNominal, mostNominal] = [0.7, 1.4];

/** A part is named where it takes at least this share of the pressure, and a pipe is wide enough where it takes less than a tenth. */
const [telling, wideEnough] = [0.25, 0.1];

/** Widest pipe, mm. */
const widest = 1000;

/** A zone beside what its emitters are said to give. */
export interface ZoneSupply {
  readonly name: string;
  /** Mean of what they give, as a share of it. */
  readonly nominalShare: number;
  /** Mean of the pressure that they would have to be given more to give it, or less where it is negative, Pa. */
  readonly wanted: number;
  readonly runs: readonly EmitterRun[];
}

/** Head at which an emitter of this run would give what it is said to, from below or from above. */
function nominalHead({ emitter, nominalFlow }: EmitterRun, isShort: boolean): number {
  if ('openingHead' in emitter) return isShort ? emitter.openingHead : emitter.highestHead;
  return nominalFlow === emitter.flow ? emitter.head : emitter.head * (nominalFlow / emitter.flow) ** (1 / emitter.exponent);
}

/** What the emitters of a zone are given. */
export function zoneSupply(name: string, runs: readonly EmitterRun[], pressures: Float64Array, outflows: Float64Array, pascals: number): ZoneSupply {
  let [number, shares, given] = [0, 0, 0];
  for (const { firstNode, size, count, nominalFlow } of runs) {
    number += size * count;
    for (let node = firstNode; node < firstNode + size; node++) {
      shares += outflows[node]! / nominalFlow;
      given += count * pressures[node]!;
    }
  }
  const nominalShare = shares / number;
  const nominal = runs.reduce((sum, run) => sum + run.size * run.count * nominalHead(run, nominalShare < 1), 0) * pascals;
  return { name, nominalShare, wanted: (nominal - given) / number, runs };
}

/** Speaks of a zone whose emitters give far less or more than they are said to. */
export function noteNominal({ name, nominalShare, wanted }: ZoneSupply, i: number, { note }: Solving): void {
  const gives = `The emitters of ${quoted(name)} give ${writeNumber(nominalShare * 100)} % of what they are said to give`;
  if (nominalShare > 0 && nominalShare < leastNominal) note('caution', 'below-nominal', `zones[${i}].meanFlow`, `${gives}${wanted > 0 ? `: raise the pressure before them by ${kilopascals(wanted)}, or water longer` : ''}.`);
  if (nominalShare > mostNominal) note('caution', 'above-nominal', `zones[${i}].meanFlow`, `${gives}${wanted < 0 ? `: lower the pressure before them by ${kilopascals(-wanted)}, or water shorter` : ''}.`);
}

/** Names the part that takes most of the pressure on the way to zones that get too little, once for all of them. */
export function noteLargestLoss(zones: readonly ZoneSupply[], plan: NetworkPlan, { heads, flows }: NetworkFlow, pascals: number, { note }: Solving): void {
  const short = zones.filter(({ nominalShare }) => nominalShare < leastNominal);
  if (short.length === 0) return;
  const { network: { nodes, links, friction }, linkNames, namedLinks } = plan;
  // By each node, the link that brings it most.
  const bringing = new Int32Array(nodes.length).fill(-1);
  const still = groupsOf(nodes.length);
  links.forEach(({ kind, from, to }, link) => {
    const flow = flows[link]!;
    if (Math.abs(flow) <= leastFlow) {
      if (kind !== 'shut') still.join(from, to);
      return;
    }
    const end = flow > 0 ? to : from;
    const other = bringing[end]!;
    if (other < 0 || Math.abs(flow) > Math.abs(flows[other]!)) bringing[end] = link;
  });
  const lossOf = (link: number): number => Math.abs(heads[links[link]!.from]! - heads[links[link]!.to]!) * pascals;
  const pressureAt = (node: number): number => (heads[node]! - nodes[node]!.elevation) * pascals;

  const told = new Set<number>();
  for (const { name, runs, nominalShare } of short) {
    const first = runs.reduce((least, { firstNode }) => (pressureAt(firstNode) < pressureAt(least) ? firstNode : least), runs[0]!.firstNode);
    let node = first;
    if (bringing[node]! < 0) node = nodes.findIndex((_, one) => bringing[one]! >= 0 && still.leaderOf(one) === still.leaderOf(first));
    if (node < 0) continue;
    let [most, lost] = [-1, 0];
    for (let steps = 0; steps < links.length; steps++) {
      const link = bringing[node]!;
      if (link < 0 || nodes[node]!.head !== undefined) break;
      const { kind, from, to } = links[link]!;
      // A regulator takes off what is to be taken off.
      if (kind === 'regulator') break;
      if (kind !== 'pump') {
        lost += lossOf(link);
        if (link < namedLinks && kind !== 'non-return' && (most < 0 || lossOf(link) > lossOf(most))) most = link;
      }
      node = flows[link]! > 0 ? from : to;
    }
    if (most < 0 || told.has(most)) continue;
    const all = lost + pressureAt(first);
    const takes = lossOf(most);
    if (takes < telling * all || takes < telling * lost) continue;
    told.add(most);
    const link = links[most]!;
    const wide = link.kind === 'pipe' && nominalShare > 0 ? widthFor(Math.abs(flows[most]!) / nominalShare, (wideEnough * all) / pascals, link) : undefined;
    const remedy = wide !== undefined ? `: from ${wide} mm on it takes less than a tenth, even at what they are said to give` : link.kind === 'pipe' ? '' : ': take a larger one, or clean it';
    note('caution', 'largest-loss', 'pressureDrop', `On the way to ${quoted(name)}, ${quoted(linkNames[most]!)} takes ${kilopascals(takes)}${takes < all ? ` of ${kilopascals(all)}` : ''}${remedy}.`);
  }

  /** Width, in whole mm, from which on a pipe takes less than so much head at a flow. */
  function widthFor(flow: number, head: number, { diameter, length, lossCoefficient }: { readonly diameter: number; readonly length: number; readonly lossCoefficient?: number }): number | undefined {
    const law = typeof friction === 'function' ? friction : frictionLaw(friction);
    for (let wide = Math.floor(diameter * 1000) + 1; wide <= widest; wide++) {
      if (pipeLoss(law(wide / 1000), length, wide / 1000, lossCoefficient).loss(flow) < head) return wide;
    }
    return undefined;
  }
}

/** Speaks of regulators that have nothing to regulate. */
export function noteRegulators({ regulators = [] }: SeenNetwork, { network: { nodes, links }, firstOf }: NetworkPlan, { heads }: NetworkFlow, lacks: Lacks, unreached: ReadonlySet<number>, regulated: readonly { readonly regulatorState: string; readonly outletPressure: number }[], pascals: number, { note }: Solving): void {
  regulators.forEach(({ name, setPressure }, i) => {
    const { regulatorState, outletPressure } = regulated[i]!;
    const field = `regulators[${i}]`;
    if (regulatorState === 'open') note('caution', 'regulator-starved', field, `${quoted(name)} is wide open and has ${kilopascals(outletPressure)} behind it, ${kilopascals(setPressure - outletPressure)} below what it is set to: it needs as much more before it.`);
    const { from, to } = links[firstOf.regulators + i]!;
    if (regulatorState !== 'closed' || unreached.has(from)) return;
    const behind = (heads[to]! - nodes[to]!.elevation) * pascals;
    const before = (heads[from]! - nodes[to]!.elevation) * pascals;
    if (behind > Math.min(before, setPressure) + 10) {
      note('info', 'regulator-closed', field, `${quoted(name)} is shut: the pressure behind it comes from elsewhere.`);
      return;
    }
    const needed = behind + lackBehind(to);
    if (needed <= behind) note('info', 'regulator-closed', field, `Nothing flows through ${quoted(name)}, as nothing is drawn behind it.`);
    else note('caution', 'regulator-too-low', `${field}.setPressure`, `Nothing flows through ${quoted(name)}, as what lies behind it is too high${needed > setPressure ? `: set it to at least ${kilopascals(needed)}` : ''}${needed > before ? `${needed > setPressure ? ', and' : ':'} bring at least ${kilopascals(needed - before)} more before it` : ''}.`);
  });

  /** What places lack, at most, that pipes and valves join to a node. */
  function lackBehind(node: number): number {
    const { join, leaderOf } = groupsOf(nodes.length);
    for (const link of links) if (isTwoWay(link)) join(link.from, link.to);
    let most = 0;
    for (const [one, lack] of lacks) if (leaderOf(one) === leaderOf(node)) most = Math.max(most, lack);
    return most;
  }
}
