import { ConvergenceError } from '../../numerics/convergence-error.js';
import { bracketedRoot } from '../../numerics/roots.js';
import { emitterCoefficient, emitterFlow } from './emitter.js';
import type { FrictionChoice, FrictionLaw } from './friction-law.js';
import { frictionLaw } from './friction-law.js';
import { fittingHeadLoss, pipeVelocity } from './head-loss.js';
import { multipleOutletFactorChristiansen1942 } from './multiple-outlets.js';

/** One pipe with emitters, plugged at its end. Lengths, diameters and heads in m, flows in m3/s. */
export interface LateralLayout {
  readonly outlets: number;
  readonly spacing: number;
  /** From the inlet to the first outlet; the spacing where not given. */
  readonly firstSpacing?: number;
  readonly diameter: number;
  /** Rise per length of pipe in the direction of flow: positive uphill. */
  readonly slope?: number;
  /** q = flow x (h/head)^exponent. */
  readonly emitter: { readonly flow: number; readonly head: number; readonly exponent: number };
  readonly friction: FrictionLaw | FrictionChoice;
  /** Loss at each outlet in the flow that passes it: K of the velocity head, or a length of pipe. */
  readonly connection?: { readonly lossCoefficient?: number; readonly equivalentLength?: number };
  readonly gravity?: number;
}

/** Heads and flows along a lateral, and how well they were found. */
export interface LateralFlow {
  /** Pressure head at each outlet from the inlet on, m. */
  readonly heads: Float64Array;
  /** Flow of each emitter, m3/s. */
  readonly flows: Float64Array;
  readonly inletHead: number;
  readonly inletFlow: number;
  /** By how much the wanted head was missed, m: at the inlet, or for a wanted mean flow that of an emitter with that flow. */
  readonly residual: number;
  /** Times the lateral was computed from its end. */
  readonly steps: number;
}

/** Where the wanted head is met to this share of itself, or of the head at the end of a downhill lateral at rest, the search ends. */
const precision = 1e-8;

/** How near to 0 the head at the last outlet is told from none, m. Only emitters of small exponent that starve come that low. */
const leastEndHead = 1e-30;

/**
 * Heads and flows along a lateral for a head at its inlet.
 *
 * From a guessed head at the last outlet the lateral is computed upstream, outlet by outlet: the emitter's flow joins the pipe, and the pipe up
 * to the next outlet adds friction, the connection's loss and the rise. The head so found at the inlet grows at least as fast as the guess, so
 * one computation already brackets the answer, and the wanted inlet head is met to a hundred-millionth of itself. Velocity head is left out, as
 * is usual in laterals. An outlet without positive head gives no flow. Throws ConvergenceError where no state is found: when the head cannot feed
 * pressure-compensating emitters to the end, or when a long thin lateral falls so steeply that its middle hangs between flow and none.
 */
export function lateralFromInletHead(layout: LateralLayout, inletHead: number): LateralFlow {
  const level = inletHead - rise(layout);
  const guess = level > 0 ? level ** 2 / (level + roughLoss(layout, (level + inletHead) / 2)) : level;
  return search(layout, inletHead, (state) => state.inletHead, (miss) => [Math.min(level, Math.max(dryEndHead(layout), guess - miss(guess))), guess]);
}

/**
 * The same for a wanted mean flow of the emitters: the inlet head it takes is part of the answer.
 *
 * The mean flow is sought as the head at which one emitter gives it, which follows the end head almost in proportion.
 * Pressure-compensating emitters (exponent 0) give one flow at every head, so no inlet head follows from it: ConvergenceError.
 */
export function lateralFromMeanFlow(layout: LateralLayout, meanFlow: number): LateralFlow {
  const { outlets, emitter } = layout;
  if (emitter.exponent === 0) throw new ConvergenceError('emitters with exponent 0 give one flow at every head: no inlet head follows from a mean flow', NaN, 0);
  const headFor = (flow: number): number => emitter.head * (flow / emitter.flow) ** (1 / emitter.exponent);
  const highest = headFor(meanFlow) + Math.max(0, -rise(layout));
  return search(layout, headFor(meanFlow), (state) => headFor(state.inletFlow / outlets), () => [dryEndHead(layout), highest]);
}

/** The same for a head at the last outlet, which needs no search: how much a lateral takes at least to reach its end. */
export function lateralFromEndHead(layout: LateralLayout, endHead: number): LateralFlow {
  const heads = new Float64Array(layout.outlets);
  const flows = new Float64Array(layout.outlets);
  return { heads, flows, ...marcher(layout, heads, flows)(endHead), residual: 0, steps: 1 };
}

/** Height of the last outlet above the inlet. */
function rise({ outlets, spacing, firstSpacing = spacing, slope = 0 }: LateralLayout): number {
  return slope * (firstSpacing + (outlets - 1) * spacing);
}

/** A head at the last outlet with which no emitter flows. */
function dryEndHead(layout: LateralLayout): number {
  return Math.min(0, -rise(layout)) - 1e-6;
}

/** Head lost along the lateral if every outlet had this head: a start for the search, no more. */
function roughLoss({ outlets, spacing, diameter, emitter, friction, connection }: LateralLayout, head: number): number {
  const flow = outlets * emitterFlow(head / emitter.head, emitter.flow, emitter.exponent);
  return lawOf(friction)(diameter)(flow) * outlets * (spacing + (connection?.equivalentLength ?? 0)) * multipleOutletFactorChristiansen1942(outlets, 1.75);
}

function lawOf(friction: FrictionLaw | FrictionChoice): FrictionLaw {
  return typeof friction === 'function' ? friction : frictionLaw(friction);
}

interface State { readonly inletHead: number; readonly inletFlow: number }

/** Seeks the head at the last outlet for which a reading of the whole lateral is the wanted one. */
function search(
  layout: LateralLayout, wanted: number, reading: (state: State) => number, bracket: (miss: (endHead: number) => number) => [number, number],
): LateralFlow {
  const heads = new Float64Array(layout.outlets);
  const flows = new Float64Array(layout.outlets);
  const march = marcher(layout, heads, flows);
  const tolerance = precision * Math.max(wanted, wanted - rise(layout));
  let at = NaN;
  let state: State = { inletHead: NaN, inletFlow: NaN };
  let steps = 0;
  const difference = (endHead: number): number => {
    if (endHead !== at) {
      state = march(endHead);
      at = endHead;
      steps++;
    }
    return reading(state) - wanted;
  };
  const miss = (endHead: number): number => {
    const found = difference(endHead);
    return Math.abs(found) <= tolerance ? 0 : found;
  };
  const residual = Math.abs(difference(bracketedRoot(miss, ...bracket(miss), { tolerance: leastEndHead }).value));
  if (!(residual <= tolerance)) {
    throw new ConvergenceError(`no flow along the lateral meets a head of ${wanted} m: the nearest misses by ${residual} m`, residual, steps);
  }
  return { heads, flows, inletHead: state.inletHead, inletFlow: state.inletFlow, residual, steps };
}

/** Computes a lateral upstream from the head at its last outlet, into the two arrays. */
function marcher(layout: LateralLayout, heads: Float64Array, flows: Float64Array): (endHead: number) => State {
  const { outlets, spacing, firstSpacing = spacing, diameter, slope = 0, emitter, connection = {} } = layout;
  const gradient = lawOf(layout.friction)(diameter);
  const { exponent } = emitter;
  const coefficient = emitterCoefficient(emitter.flow, emitter.head, exponent);
  const lossAtUnitFlow = fittingHeadLoss(connection.lossCoefficient ?? 0, pipeVelocity(1, diameter), layout.gravity);
  const extraLength = connection.equivalentLength ?? 0;
  return (endHead) => {
    let head = endHead;
    let flow = 0;
    for (let outlet = outlets - 1; outlet >= 0; outlet--) {
      const q = emitterFlow(head, coefficient, exponent);
      heads[outlet] = head;
      flows[outlet] = q;
      flow += q;
      const length = outlet === 0 ? firstSpacing : spacing;
      head += gradient(flow) * (length + extraLength) + lossAtUnitFlow * flow * flow + slope * length;
    }
    return head < Infinity ? { inletHead: head, inletFlow: flow } : { inletHead: Infinity, inletFlow: Infinity };
  };
}
