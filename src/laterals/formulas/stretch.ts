/** A lateral reach by reach, and its computation from its end. */
import { emitterLaw, type CompensatingEmitter, type EmitterLaw, type PlainEmitter } from './emitter.js';
import type { FrictionChoice, FrictionLaw } from './friction-law.js';
import { frictionLaw } from './friction-law.js';
import { fittingHeadLoss, pipeVelocity } from './head-loss.js';

/** A run of pipe with equal emitters at equal distances. Lengths, diameters and heads in m, flows in m3/s. */
export interface LateralReach {
  readonly outlets: number;
  readonly spacing: number;
  /** From the inlet, or from the last outlet of the reach before, to the first outlet; the spacing where not given. */
  readonly firstSpacing?: number;
  readonly diameter: number;
  /** Rise per length of pipe in the direction of flow: positive uphill. */
  readonly slope?: number;
  readonly emitter: PlainEmitter | CompensatingEmitter;
  /** Loss at each outlet in the flow that passes it: K of the velocity head, or a length of pipe. */
  readonly connection?: { readonly lossCoefficient?: number; readonly equivalentLength?: number };
}

/** One pipe with emitters, plugged at its end: one reach, and what follows it. */
export interface LateralLayout extends LateralReach {
  readonly furtherReaches?: readonly LateralReach[];
  readonly friction: FrictionLaw | FrictionChoice;
  /** Whether the head that moves the water counts; as is usual in laterals it is left out unless told. */
  readonly velocityHead?: boolean;
  readonly gravity?: number;
}

/** A reach made ready to be computed. */
export interface Stretch {
  /** Cross-section of the pipe, m2. */
  readonly area: number;
  readonly outlets: number;
  readonly spacing: number;
  readonly firstSpacing: number;
  readonly slope: number;
  readonly emitter: PlainEmitter | CompensatingEmitter;
  readonly law: EmitterLaw;
  readonly gradient: (flow: number, logFlow?: number) => number;
  readonly equivalentLength: number;
  /** Head lost at a connection, and velocity head, each at a flow of 1 m3/s. */
  readonly connectionLoss: number;
  readonly velocityHead: number;
}

/** The reaches of a lateral, from the inlet on. */
export function stretchesOf(layout: LateralLayout): readonly Stretch[] {
  const friction = typeof layout.friction === 'function' ? layout.friction : frictionLaw(layout.friction);
  const { furtherReaches = [], velocityHead = false, gravity } = layout;
  return [layout, ...furtherReaches].map(({ outlets, spacing, firstSpacing = spacing, diameter, slope = 0, emitter, connection = {} }) => {
    const atUnitFlow = fittingHeadLoss(1, pipeVelocity(1, diameter), gravity);
    return {
      area: 1 / pipeVelocity(1, diameter),
      outlets, spacing, firstSpacing, slope, emitter,
      law: emitterLaw(emitter),
      gradient: friction(diameter),
      equivalentLength: connection.equivalentLength ?? 0,
      connectionLoss: (connection.lossCoefficient ?? 0) * atUnitFlow,
      velocityHead: velocityHead ? atUnitFlow : 0,
    };
  });
}

/** Outlets of all reaches together. */
export const countOutlets = (stretches: readonly Pick<LateralReach, 'outlets'>[]): number => stretches.reduce((sum, { outlets }) => sum + outlets, 0);

/** Height of the last outlet above the inlet. */
export const riseOf = (stretches: readonly Stretch[]): number =>
  stretches.reduce((sum, { outlets, spacing, firstSpacing, slope }) => sum + slope * (firstSpacing + (outlets - 1) * spacing), 0);

/** What a lateral takes at its inlet. */
export interface InletState {
  readonly inletHead: number;
  readonly inletFlow: number;
}

/** Share of a flow by which another may differ for its logarithm to follow, to the last digits, from three terms. */
const nearby = 1e-4;

/**
 * Computes a lateral upstream from the head at its last outlet, into the two arrays: an emitter's flow joins the pipe, and the pipe up to the next
 * outlet adds friction, the connection's loss and the rise. Where velocity head counts, the water slows down at each outlet and gains that head.
 * A lateral that is open at its end has a flow there; its velocity head does not count then.
 *
 * Friction laws ask for the logarithm of the flow. That of the next flow, were its emitter to give as much as this one, is worked out while other
 * things wait for each other: a good part of the time that a long lateral takes.
 */
export function march(stretches: readonly Stretch[], heads: Float64Array, flows: Float64Array, endHead: number, endFlow = 0): InletState {
  let head = endHead;
  let flow = endFlow;
  let moving = 0;
  let outlet = heads.length;
  let likely = NaN;
  let inverse = NaN;
  let logLikely = NaN;
  for (let reach = stretches.length - 1; reach >= 0; reach--) {
    const { outlets, spacing, firstSpacing, slope, law, gradient, equivalentLength, connectionLoss, velocityHead } = stretches[reach]!;
    for (let i = outlets - 1; i >= 0; i--) {
      const q = law.flow(head);
      outlet--;
      heads[outlet] = head;
      flows[outlet] = q;
      flow += q;
      const off = (flow - likely) * inverse;
      const logFlow = Math.abs(off) < nearby ? logLikely + off * (1 - off * (0.5 - off / 3)) : Math.log(flow);
      likely = flow + q;
      inverse = 1 / likely;
      logLikely = Math.log(likely);
      const length = i === 0 ? firstSpacing : spacing;
      const square = flow * flow;
      const faster = velocityHead * square;
      head += gradient(flow, logFlow) * (length + equivalentLength) + (connectionLoss * square + slope * length + (moving - faster));
      moving = faster;
    }
  }
  return head < Infinity ? { inletHead: head, inletFlow: flow } : { inletHead: Infinity, inletFlow: Infinity };
}
