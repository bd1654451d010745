/** What a network of pipes is made of, in SI: lengths, heights and heads of water in m, flows in m3/s. */
import type { EmitterLaw } from '../../laterals/formulas/emitter.js';
import type { FrictionChoice, FrictionLaw } from '../../laterals/formulas/friction-law.js';
import type { HeadLossLaw } from './network-losses.js';
import type { PumpCurve } from './pump-curve.js';

/** What joins two nodes, which are counted from 0. Flow is positive from `from` to `to`. */
export type NetworkLink = { readonly from: number; readonly to: number } & (
  /** `lossCoefficient`: fittings of the pipe together, as a multiple of its velocity head. */
  | { readonly kind: 'pipe'; readonly length: number; readonly diameter: number; readonly lossCoefficient?: number }
  /** Anything with a loss of its own, the same both ways: a filter, an open valve, a fitting. */
  | { readonly kind: 'valve'; readonly law: HeadLossLaw }
  /** The same, but nothing flows back. */
  | { readonly kind: 'non-return'; readonly law: HeadLossLaw }
  /** Nothing flows back through a pump, and above its shut-off head nothing flows. */
  | { readonly kind: 'pump'; readonly curve: PumpCurve }
  /** The pressure head behind it is at most `setting`, less what it loses to the flow where `law` says so; nothing flows back. */
  | { readonly kind: 'regulator'; readonly setting: number; readonly law?: HeadLossLaw }
  /** Nothing passes: a closed valve. */
  | { readonly kind: 'shut' }
);

/** Where links meet. */
export interface NetworkNode {
  /** Height above a level that is the same for all. */
  readonly elevation: number;
  /** Head above that level that is kept here whatever flows: the level of a barrel, the pressure of a main. */
  readonly head?: number;
  /** Emitters here, which give by their pressure head. */
  readonly emitter?: { readonly law: EmitterLaw; readonly count?: number };
  /** Flow drawn here whatever the pressure. */
  readonly demand?: number;
}

export interface Network {
  readonly nodes: readonly NetworkNode[];
  readonly links: readonly NetworkLink[];
  readonly friction: FrictionLaw | FrictionChoice;
  readonly gravity?: number;
}

/** Heads and flows of a network, and how well they were found. */
export interface NetworkFlow {
  /** Head at each node above the common level: less its elevation it is the pressure head there. */
  readonly heads: Float64Array;
  /** Flow of each link, negative where it runs from `to` to `from`. */
  readonly flows: Float64Array;
  /** What leaves the network at each node: emitters and demand; where the head is kept, what flows into there (negative where it feeds). */
  readonly outflows: Float64Array;
  /** Largest difference between the head that a link takes at its flow and the one between its ends, m. */
  readonly headResidual: number;
  /** Largest difference between what flows to a node and what leaves it, m3/s. */
  readonly flowResidual: number;
  readonly steps: number;
}
