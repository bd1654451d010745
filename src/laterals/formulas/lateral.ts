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

/** Where the wanted value is met to this share of itself, the search ends. */
const precision = 1e-8;

/** How near to 0 a head at the last outlet is told from none, m. */
const leastEndHead = 1e-30;

/** Two heads are alike where they differ by less than this share of themselves, or of the wanted head. */
const alike = { ofThemselves: 1e-6, ofWanted: 1e-15 } as const;

/**
 * Heads and flows along a lateral for a head at its inlet.
 *
 * From a guessed head at the last outlet the lateral is computed upstream, outlet by outlet: the emitter's flow joins the pipe, and the pipe up to the next
 * outlet adds friction, the connection's loss and the rise. The head so found at the inlet grows at least as fast as the guess, so one computation
 * already brackets the answer, and the wanted inlet head is met to a hundred-millionth of itself. Velocity head is left out, as is usual in laterals.
 * An outlet without positive head gives no flow, and one that stands just at none, by a hair, the part of its flow that the others leave.
 */
export function lateralFromInletHead(layout: LateralLayout, inletHead: number): LateralFlow {
  const level = inletHead - rise(layout);
  const guess = level > 0 ? level ** 2 / (level + roughLoss(layout, (level + inletHead) / 2)) : level;
  const other = guess - (lateralFromEndHead(layout, guess).inletHead - inletHead);
  return search(layout, inletHead, (state) => state.inletHead, [guess, Math.min(level, Math.max(dryEndHead(layout), other))]);
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
  return search(layout, headFor(meanFlow), (state) => headFor(state.inletFlow / outlets), [dryEndHead(layout), highest]);
}

/** The same for a head at the last outlet, which needs no search. */
export function lateralFromEndHead(layout: LateralLayout, endHead: number): LateralFlow {
  const heads = new Float64Array(layout.outlets);
  const flows = new Float64Array(layout.outlets);
  return { heads, flows, ...marcher(layout, heads, flows)(fromEnd(layout, heads, flows), endHead), residual: 0, steps: 1 };
}

/** Height of the last outlet above the inlet. */
function rise({ outlets, spacing, firstSpacing = spacing, slope = 0 }: LateralLayout): number {
  return slope * (firstSpacing + (outlets - 1) * spacing);
}

/** A head at the last outlet, m, with which no emitter flows. */
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

/** The end of a lateral as one number sets it: `fill` writes heads and flows of an outlet and all below it. */
interface End { readonly outlet: number; readonly fill: (x: number) => void }

/** The last outlet alone, by its head. */
function fromEnd({ outlets, emitter }: LateralLayout, heads: Float64Array, flows: Float64Array): End {
  const outlet = outlets - 1;
  const coefficient = emitterCoefficient(emitter.flow, emitter.head, emitter.exponent);
  return {
    outlet,
    fill: (head) => {
      heads[outlet] = head;
      flows[outlet] = emitterFlow(head, coefficient, emitter.exponent);
    },
  };
}

/**
 * Seeks the state of a lateral of which a reading is the wanted one, between two heads at the last outlet.
 *
 * Where a long lateral runs downhill, or its last emitters stand just at no head, the reading may leap between two heads that no number comes
 * between. The states of those two enclose the answer and are alike from some outlet to the end: that part is then taken between the two,
 * and the search goes on from there.
 */
function search(layout: LateralLayout, wanted: number, reading: (state: State) => number, bracket: readonly [number, number]): LateralFlow {
  const heads = new Float64Array(layout.outlets);
  const flows = new Float64Array(layout.outlets);
  const march = marcher(layout, heads, flows);
  const tolerance = precision * Math.abs(wanted);
  let end = fromEnd(layout, heads, flows);
  let [low, high] = bracket;
  let steps = 0;
  for (let part = 0; part <= 100; part++) {
    let at = NaN;
    let state: State = { inletHead: NaN, inletFlow: NaN };
    const miss = (x: number): number => {
      if (x !== at) {
        state = march(end, at = x);
        steps++;
      }
      const found = reading(state) - wanted;
      if (Math.abs(found) <= tolerance) return 0;
      if (found < 0) low = x;
      else high = x;
      return found;
    };
    const { value } = bracketedRoot(miss, low, high, { tolerance: leastEndHead });
    if (miss(value) === 0) return { heads, flows, ...state, residual: Math.abs(reading(state) - wanted), steps };
    const profile = (x: number) => {
      march(end, x);
      return { heads: heads.slice(), flows: flows.slice() };
    };
    end = between(profile(low), profile(high), wanted, heads, flows);
    [low, high] = [0, 1];
  }
  throw new ConvergenceError(`no flow along the lateral meets a head of ${wanted} m`, NaN, steps);
}

/** The part of two states that is alike, taken at a share of the way from the one to the other. */
function between(low: Profile, high: Profile, wanted: number, heads: Float64Array, flows: Float64Array): End {
  const isAlike = (a: number, b: number): boolean => Math.abs(a - b) <= Math.max(alike.ofThemselves * Math.abs(a), alike.ofWanted * wanted);
  let outlet = heads.length - 1;
  while (outlet > 0 && isAlike(low.heads[outlet - 1]!, high.heads[outlet - 1]!)) outlet--;
  return {
    outlet,
    fill: (share) => {
      for (let i = outlet; i < heads.length; i++) {
        heads[i] = (1 - share) * low.heads[i]! + share * high.heads[i]!;
        flows[i] = (1 - share) * low.flows[i]! + share * high.flows[i]!;
      }
    },
  };
}

interface Profile { readonly heads: Float64Array; readonly flows: Float64Array }

/** Computes a lateral upstream from its end, into the two arrays. */
function marcher(layout: LateralLayout, heads: Float64Array, flows: Float64Array): (end: End, x: number) => State {
  const { spacing, firstSpacing = spacing, diameter, slope = 0, emitter, connection = {} } = layout;
  const gradient = lawOf(layout.friction)(diameter);
  const { exponent } = emitter;
  const coefficient = emitterCoefficient(emitter.flow, emitter.head, exponent);
  const lossAtUnitFlow = fittingHeadLoss(connection.lossCoefficient ?? 0, pipeVelocity(1, diameter), layout.gravity);
  const extraLength = connection.equivalentLength ?? 0;
  return ({ outlet, fill }, x) => {
    fill(x);
    let flow = 0;
    for (let i = flows.length - 1; i >= outlet; i--) flow += flows[i]!;
    let head = heads[outlet]!;
    for (;;) {
      const length = outlet === 0 ? firstSpacing : spacing;
      head += gradient(flow) * (length + extraLength) + lossAtUnitFlow * flow * flow + slope * length;
      if (outlet === 0) return head < Infinity ? { inletHead: head, inletFlow: flow } : { inletHead: Infinity, inletFlow: Infinity };
      outlet--;
      const q = emitterFlow(head, coefficient, exponent);
      heads[outlet] = head;
      flows[outlet] = q;
      flow += q;
    }
  };
}
