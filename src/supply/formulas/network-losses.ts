/** Head that parts of a network take. */
import { fittingHeadLoss, pipeVelocity } from '../../laterals/formulas/head-loss.js';

/** Head that something in the way takes (m) at a flow (m3/s, not negative), which grows with the flow, and how fast it grows. */
export interface HeadLossLaw {
  readonly loss: (flow: number) => number;
  /** `loss` is what it takes at that flow, where that is known already. */
  readonly slope: (flow: number, loss?: number) => number;
}

/**
 * A loss that goes with a power of the flow: h = head (Q/flow)^exponent, from one point of it.
 *
 * Exponent 2 for valves and fittings; filters 1 to 2.
 */
export function powerLoss(flow: number, head: number, exponent = 2): HeadLossLaw {
  return {
    loss: (at) => head * (at / flow) ** exponent,
    slope: (at) => ((head * exponent) / flow) * (at / flow) ** (exponent - 1),
  };
}

/** By so much of itself a flow is raised to see how fast the loss grows. */
const nudge = 1e-6;

/** Loss of a pipe: friction along its length, by its gradient at a flow, and its fittings as a multiple K of the velocity head. */
export function pipeLoss(gradient: (flow: number) => number, length: number, diameter: number, lossCoefficient = 0, gravity?: number): HeadLossLaw {
  const fittings = lossCoefficient === 0 ? 0 : fittingHeadLoss(lossCoefficient, pipeVelocity(1, diameter), gravity);
  const loss = (flow: number): number => gradient(flow) * length + fittings * flow * flow;
  return { loss, slope: (flow, known = loss(flow)) => (loss(flow * (1 + nudge)) - known) / (flow * nudge) };
}
