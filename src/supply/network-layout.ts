/** A network from what was written of it to plain numbers, and where everything that was named has its place there. */
import { emitterLaw, type CompensatingEmitter, type PlainEmitter } from '../laterals/formulas/emitter.js';
import { standardGravity } from '../laterals/formulas/head-loss.js';
import type { SeenReach } from '../laterals/lateral-fields.js';
import { layoutOf } from '../laterals/lateral-layout.js';
import { chosenLaw } from '../laterals/pipe.js';
import { filterPressureLoss } from './formulas/filter.js';
import { pressureLossAtFlowCoefficient } from './formulas/flow-coefficient.js';
import type { Network, NetworkLink, NetworkNode } from './formulas/network.js';
import { powerLoss, type HeadLossLaw } from './formulas/network-losses.js';
import { unfedNodes } from './formulas/network-unfed.js';
import { wholeLateral, type LinkKind, type SeenNetwork } from './network-fields.js';
import { pumpCurveOf } from './pump-curve-fields.js';

/** Emitters at one node. */
export interface EmitterPlace {
  readonly node: number;
  readonly name: string;
  readonly zone: string | undefined;
  /** Of a lateral: which of its outlets, counted from 1. */
  readonly outlet: number | undefined;
  readonly emitter: PlainEmitter | CompensatingEmitter;
  readonly count: number;
}

/** A network in plain numbers. Nodes and links that were named come first, in the order of their lists; those of laterals follow. */
export interface NetworkPlan {
  readonly network: Network;
  readonly places: readonly EmitterPlace[];
  /** Nodes that closed valves shut off. */
  readonly dry: ReadonlySet<number>;
  /** Name of each pipe, or of the lateral that it belongs to, by its number among the links. */
  readonly pipeNames: ReadonlyMap<number, string>;
  /** Number of the first link of each kind. */
  readonly firstOf: Readonly<Record<LinkKind, number>>;
  /** Of each lateral, the node that it starts from, and its places among all. */
  readonly outletsOf: readonly { readonly inlet: number; readonly from: number; readonly to: number }[];
}

/** Loss of a valve of a flow coefficient. Density does not matter: it counts once in the pressure and once in the head. */
const valveLaw = (flowCoefficient: number): HeadLossLaw => powerLoss(1, pressureLossAtFlowCoefficient(1, flowCoefficient, 1) / standardGravity);

/** The network; `pascals` is the pressure of a metre of its water. */
export function networkPlan(seen: SeenNetwork, pascals: number): NetworkPlan {
  const nodes: NetworkNode[] = [];
  const places: EmitterPlace[] = [];
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
    if (emitter) places.push({ node, name, zone, outlet: undefined, emitter, count: emitters.emitterCount });
  }

  const links: NetworkLink[] = [];
  const pipeNames = new Map<number, string>();
  const firstOf = {} as Record<LinkKind, number>;
  const add = <Part extends { readonly from: string; readonly to: string }>(kind: LinkKind, parts: readonly Part[] | undefined, made: (part: Part) => LinkMade): void => {
    firstOf[kind] = links.length;
    for (const part of parts ?? []) links.push({ from: numberOf.get(part.from)!, to: numberOf.get(part.to)!, ...made(part) });
  };
  add('pipes', seen.pipes, ({ name, length, diameter, lossCoefficient }) => {
    pipeNames.set(links.length, name);
    return { kind: 'pipe', length, diameter, lossCoefficient };
  });
  add('valves', seen.valves, ({ flowCoefficient, isOpen }) => (isOpen ? { kind: 'valve', law: valveLaw(flowCoefficient) } : { kind: 'shut' }));
  add('filters', seen.filters, ({ referenceFlow, referenceLoss, lossExponent, blockedShare }) =>
    ({ kind: 'valve', law: powerLoss(referenceFlow, filterPressureLoss(referenceFlow, referenceFlow, referenceLoss, lossExponent, blockedShare) / pascals, lossExponent) }));
  add('pumps', seen.pumps, (pump) => ({ kind: 'pump', curve: pumpCurveOf(pump) }));
  add('regulators', seen.regulators, ({ setPressure, flowCoefficient }) =>
    ({ kind: 'regulator', setting: setPressure / pascals, ...(flowCoefficient !== undefined && { law: valveLaw(flowCoefficient) }) }));
  add('nonReturnValves', seen.nonReturnValves, ({ flowCoefficient }) => ({ kind: 'non-return', law: valveLaw(flowCoefficient) }));

  const outletsOf = (seen.dripLaterals ?? []).map((lateral) => {
    const from = places.length;
    const layout = layoutOf(wholeLateral(lateral, seen), pascals);
    const inlet = numberOf.get(lateral.from)!;
    let last = inlet;
    for (const { outlets, spacing, firstSpacing = spacing, diameter, slope = 0, emitter, connection = {} } of [layout, ...(layout.furtherReaches ?? [])]) {
      const law = emitterLaw(emitter);
      for (let i = 0; i < outlets; i++) {
        const length = i === 0 ? firstSpacing : spacing;
        const node = nodes.push({ elevation: nodes[last]!.elevation + slope * length, emitter: { law } }) - 1;
        pipeNames.set(links.length, lateral.name);
        links.push({ kind: 'pipe', from: last, to: node, length: length + (connection.equivalentLength ?? 0), diameter, lossCoefficient: connection.lossCoefficient ?? 0 });
        places.push({ node, name: lateral.name, zone: lateral.zone, outlet: places.length - from + 1, emitter, count: 1 });
        last = node;
      }
    }
    return { inlet, from, to: places.length };
  });
  return { network: { nodes, links, friction: chosenLaw(seen) }, places, dry: new Set(unfedNodes({ nodes, links })), pipeNames, firstOf, outletsOf };
}

type WithoutEnds<Link> = Link extends unknown ? Omit<Link, 'from' | 'to'> : never;
type LinkMade = WithoutEnds<NetworkLink>;

/** An emitter in plain numbers. */
function emitterOf({ emitterFlow, emitterPressure, emitterExponent, compensation }: Pick<SeenReach, 'emitterFlow' | 'emitterPressure' | 'emitterExponent' | 'compensation'>, pascals: number): PlainEmitter | CompensatingEmitter {
  const plain = { flow: emitterFlow, head: emitterPressure / pascals, exponent: emitterExponent };
  if (!compensation) return plain;
  const { openingPressure, regulatedUpTo, closingPressure } = compensation;
  return { ...plain, openingHead: openingPressure / pascals, highestHead: regulatedUpTo / pascals, closingHead: closingPressure / pascals };
}
