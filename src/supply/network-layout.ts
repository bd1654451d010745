/** A network from what was written of it to plain numbers, and where everything that was named has its place there. */
import { emitterLaw, type CompensatingEmitter, type EmitterLaw, type PlainEmitter } from '../laterals/formulas/emitter.js';
import { standardGravity } from '../laterals/formulas/head-loss.js';
import { reachesOf } from '../laterals/lateral-fields.js';
import { emitterOf, layoutOf } from '../laterals/lateral-layout.js';
import { chosenLaw } from '../laterals/pipe.js';
import { totalLossCoefficient } from './fittings.js';
import { filterPressureLoss } from './formulas/filter.js';
import { pressureLossAtFlowCoefficient } from './formulas/flow-coefficient.js';
import type { Network, NetworkLink, NetworkNode } from './formulas/network.js';
import { powerLoss, type HeadLossLaw } from './formulas/network-losses.js';
import { unfedNodes } from './formulas/network-unfed.js';
import { wholeLateral, type LinkKind, type SeenNetwork } from './network-fields.js';
import { pumpCurveOf } from './pump-curve-fields.js';

/** Equal emitters at nodes that follow one another: the outlets of a reach, or one place. */
export interface EmitterRun {
  readonly firstNode: number;
  /** How many nodes, and emitters at each. */
  readonly size: number;
  readonly count: number;
  readonly name: string;
  readonly zone: string | undefined;
  /** Of a lateral: the number of the first of these outlets, counted from 1. */
  readonly firstOutlet: number | undefined;
  readonly emitter: PlainEmitter | CompensatingEmitter;
  /** What the emitter is said to give, in water of whatever temperature. */
  readonly nominalFlow: number;
}

/** A network in plain numbers. Nodes and links that were named come first, in the order of their lists; those of laterals follow. */
export interface NetworkPlan {
  readonly network: Network;
  readonly runs: readonly EmitterRun[];
  /** Nodes that closed valves shut off. */
  readonly dry: ReadonlySet<number>;
  /** Name of each node and of each link, or of the lateral that it belongs to. */
  readonly nodeNames: readonly string[];
  readonly linkNames: readonly string[];
  /** How many links were named. */
  readonly namedLinks: number;
  /** Number of the first link of each kind. */
  readonly firstOf: Readonly<Record<LinkKind, number>>;
  /** Of each lateral, the node that it starts from, and its emitters. */
  readonly laterals: readonly { readonly inlet: number; readonly runs: readonly EmitterRun[] }[];
}

/** Loss of a valve of a flow coefficient. Density does not matter: it counts once in the pressure and once in the head. */
const valveLaw = (flowCoefficient: number): HeadLossLaw => powerLoss(1, pressureLossAtFlowCoefficient(1, flowCoefficient, 1) / standardGravity);

/** The network; `pascals` is the pressure of a metre of its water. */
export function networkPlan(seen: SeenNetwork, pascals: number): NetworkPlan {
  const nodes: NetworkNode[] = [];
  const nodeNames: string[] = [];
  const runs: EmitterRun[] = [];
  const numberOf = new Map<string, number>();
  for (const { name, height, keptPressure, demand, emitters, zone } of seen.nodes) {
    const node = nodes.length;
    numberOf.set(name, node);
    const emitter = emitters && emitterOf(emitters, pascals);
    nodes.push({
      elevation: height, demand,
      ...(keptPressure !== undefined && { head: height + keptPressure / pascals }),
      ...(emitter && { emitter: { law: emitterLaw(emitter), count: emitters.emitterCount } }),
    });
    nodeNames.push(name);
    if (emitter) runs.push({ firstNode: node, size: 1, count: emitters.emitterCount, name, zone, firstOutlet: undefined, emitter, nominalFlow: emitter.flow });
  }

  const laws = new Map<string, EmitterLaw>();
  /** Emitters that are alike have one law. */
  const lawOf = (emitter: PlainEmitter | CompensatingEmitter): EmitterLaw => {
    const key = Object.values(emitter).join();
    const law = laws.get(key) ?? emitterLaw(emitter);
    laws.set(key, law);
    return law;
  };
  const links: NetworkLink[] = [];
  const linkNames: string[] = [];
  const firstOf = {} as Record<LinkKind, number>;
  const add = <Part extends { readonly name: string; readonly from: string; readonly to: string }>(kind: LinkKind, parts: readonly Part[] | undefined, made: (part: Part) => LinkMade): void => {
    firstOf[kind] = links.length;
    for (const part of parts ?? []) {
      links.push({ from: numberOf.get(part.from)!, to: numberOf.get(part.to)!, ...made(part) });
      linkNames.push(part.name);
    }
  };
  add('pipes', seen.pipes, ({ length, diameter, ...fittings }) => ({ kind: 'pipe', length, diameter, lossCoefficient: totalLossCoefficient(fittings) }));
  add('valves', seen.valves, ({ flowCoefficient, isOpen }) => (isOpen ? { kind: 'valve', law: valveLaw(flowCoefficient) } : { kind: 'shut' }));
  add('filters', seen.filters, ({ referenceFlow, referenceLoss, lossExponent, blockedShare }) =>
    ({ kind: 'valve', law: powerLoss(referenceFlow, filterPressureLoss(referenceFlow, referenceFlow, referenceLoss, lossExponent, blockedShare) / pascals, lossExponent) }));
  add('pumps', seen.pumps, (pump) => ({ kind: 'pump', curve: pumpCurveOf(pump) }));
  add('regulators', seen.regulators, ({ setPressure, flowCoefficient }) =>
    ({ kind: 'regulator', setting: setPressure / pascals, ...(flowCoefficient !== undefined && { law: valveLaw(flowCoefficient) }) }));
  add('nonReturnValves', seen.nonReturnValves, ({ flowCoefficient }) => ({ kind: 'non-return', law: valveLaw(flowCoefficient) }));

  const namedLinks = links.length;
  const laterals = (seen.dripLaterals ?? []).map((lateral) => {
    const layout = layoutOf(wholeLateral(lateral, seen), pascals);
    const stated = reachesOf(lateral);
    const { name, zone } = lateral;
    const inlet = numberOf.get(lateral.from)!;
    const own: EmitterRun[] = [];
    let last = inlet;
    let firstOutlet = 1;
    for (const [reach, { outlets, spacing, firstSpacing = spacing, diameter, slope = 0, emitter, connection = {} }] of [layout, ...(layout.furtherReaches ?? [])].entries()) {
      own.push({ firstNode: nodes.length, size: outlets, count: 1, name, zone, firstOutlet, emitter, nominalFlow: stated[reach]!.emitterFlow });
      firstOutlet += outlets;
      const here = { law: lawOf(emitter) };
      const { equivalentLength = 0, lossCoefficient = 0 } = connection;
      for (let i = 0; i < outlets; i++) {
        const length = i === 0 ? firstSpacing : spacing;
        const node = nodes.push({ elevation: nodes[last]!.elevation + slope * length, emitter: here }) - 1;
        links.push({ kind: 'pipe', from: last, to: node, length: length + equivalentLength, diameter, lossCoefficient });
        nodeNames.push(name);
        linkNames.push(name);
        last = node;
      }
    }
    runs.push(...own);
    return { inlet, runs: own };
  });
  return { network: { nodes, links, friction: chosenLaw(seen) }, runs, dry: new Set(unfedNodes({ nodes, links })), nodeNames, linkNames, namedLinks, firstOf, laterals };
}

type WithoutEnds<Link> = Link extends unknown ? Omit<Link, 'from' | 'to'> : never;
type LinkMade = WithoutEnds<NetworkLink>;
