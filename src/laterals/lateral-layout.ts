/** A lateral from what was written of it to its heads and flows. */
import type { Solving } from '../calculation/calculation.js';
import { ConvergenceError } from '../numerics/convergence-error.js';
import { writeNumber } from '../units/write.js';
import { barbEquivalentLengthWattersKeller1978 } from './formulas/barb.js';
import { lateralFromEndHead, lateralFromInletHead, lateralFromMeanFlow, type LateralFlow, type LateralLayout } from './formulas/lateral.js';
import { lowestAndHighest } from './formulas/uniformity.js';
import { chosenLaw, type SeenFriction } from './pipe.js';

/** What the calculation sees of a lateral. */
export interface SeenLateral extends SeenFriction {
  readonly outlets: number;
  readonly spacing: number;
  readonly firstSpacing: number | undefined;
  readonly diameter: number;
  readonly slope: number;
  readonly emitterFlow: number;
  readonly emitterPressure: number;
  readonly emitterExponent: number;
  readonly inletPressure: number | undefined;
  readonly meanEmitterFlow: number | undefined;
  readonly connection: { readonly lossCoefficient: number | undefined; readonly equivalentLength: number | undefined; readonly barb: 'large' | 'standard' | 'small' | undefined } | undefined;
}

/** The lateral in plain SI numbers; `pascals` is the pressure of a metre of its water. */
export function layoutOf(seen: SeenLateral, pascals: number): LateralLayout {
  const { outlets, spacing, firstSpacing = spacing, diameter, slope, emitterFlow, emitterPressure, emitterExponent } = seen;
  const { lossCoefficient = 0, equivalentLength, barb } = seen.connection ?? {};
  return {
    outlets, spacing, firstSpacing, diameter, slope,
    emitter: { flow: emitterFlow, head: emitterPressure / pascals, exponent: emitterExponent },
    friction: chosenLaw(seen),
    connection: { lossCoefficient, equivalentLength: barb === undefined ? (equivalentLength ?? 0) : barbEquivalentLengthWattersKeller1978(diameter, barb) },
  };
}

/** Least head at an outlet, as a share of the nominal head, that counts as pressure. */
const leastShare = 1e-3;

/** Highest pressure at an inlet, Pa. */
const highestPressure = 1e6;

/** Heads and flows, or a refusal where pressure does not reach every emitter. */
export function solved(layout: LateralLayout, { inletPressure, meanEmitterFlow }: SeenLateral, pascals: number, { refuse }: Solving): LateralFlow {
  const starved = (): never => {
    const needed = lateralFromEndHead(layout, layout.emitter.head / 2).inletHead * pascals;
    const takes = needed > (inletPressure ?? 0) && needed < highestPressure ? `half the nominal pressure at its end takes ${writeNumber(needed / 1000)} kPa at the inlet; or ` : '';
    const path = inletPressure === undefined ? 'meanEmitterFlow' : 'inletPressure';
    return refuse(path, 'enough pressure to reach every emitter', 'too little: some emitter would have none', `${takes}take a larger pipe, or a shorter or less steep lateral`);
  };
  try {
    const found = inletPressure === undefined ? lateralFromMeanFlow(layout, meanEmitterFlow!) : lateralFromInletHead(layout, inletPressure / pascals);
    if (!(lowestAndHighest(found.heads)[0] >= leastShare * layout.emitter.head)) return starved();
    const reached = found.inletHead * pascals;
    if (reached > 1.001 * highestPressure) return refuse('meanEmitterFlow', `a flow that up to ${highestPressure / 1000} kPa at the inlet gives`, `one that takes ${writeNumber(reached / 1000)} kPa`);
    return found;
  } catch (error) {
    if (error instanceof ConvergenceError) return starved();
    throw error;
  }
}
