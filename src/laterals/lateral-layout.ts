/** A lateral from what was written of it to its heads and flows. */
import type { Solving } from '../calculation/calculation.js';
import { ConvergenceError } from '../numerics/convergence-error.js';
import { writeNumber } from '../units/write.js';
import { waterKinematicViscosity } from '../water/viscosity.js';
import {
  barbEquivalentLengthWattersKeller1978, barbLossCoefficientBagarello1997, barbLossCoefficientUnesp, inLineLossCoefficientProvenzanoPumo2004, obstructionIndex,
} from './formulas/barb.js';
import { emitterViscosityFactor, type CompensatingEmitter, type PlainEmitter } from './formulas/emitter.js';
import { lateralFromEndHead, lateralFromInletHead, lateralFromMeanFlow, type LateralFlow } from './formulas/lateral.js';
import type { LateralLayout, LateralReach } from './formulas/stretch.js';
import { lowestAndHighest } from './formulas/uniformity.js';
import { reachesOf, type SeenEmitter, type SeenLateral, type SeenReach } from './lateral-fields.js';
import { chosenLaw } from './pipe.js';

/** What beside the pipe and its emitters tells a lateral. */
interface Surroundings {
  readonly velocityHeadCounts?: boolean | undefined;
  readonly cloggedShare?: number | undefined;
}

/** The lateral in plain SI numbers; `pascals` is the pressure of a metre of its water. */
export function layoutOf(seen: SeenLateral & Surroundings, pascals: number): LateralLayout {
  const { waterTemperature, emitterTemperature, velocityHeadCounts = false, cloggedShare = 0 } = seen;
  const warmth = (exponent: number): number =>
    emitterTemperature === undefined ? 1 : emitterViscosityFactor(exponent, waterKinematicViscosity(waterTemperature), waterKinematicViscosity(emitterTemperature));
  const reaches = reachesOf(seen).map((reach) => reachOf(reach, (1 - cloggedShare) * warmth(reach.emitterExponent), pascals));
  return { furtherReaches: reaches.slice(1), friction: chosenLaw(seen), velocityHead: velocityHeadCounts, ...reaches[0]! };
}

/** A reach in plain SI numbers, its emitters giving a share of what they are said to give. */
function reachOf(reach: SeenReach, share: number, pascals: number): LateralReach {
  const { outlets, spacing, firstSpacing = spacing, diameter, slope, connection } = reach;
  return {
    outlets, spacing, firstSpacing, diameter, slope,
    emitter: emitterOf(reach, pascals, share),
    connection: connectionOf(connection, diameter),
  };
}

/** An emitter in plain SI numbers, giving a share of what it is said to give; `pascals` is the pressure of a metre of its water. */
export function emitterOf({ emitterFlow, emitterPressure, emitterExponent, compensation }: SeenEmitter, pascals: number, share = 1): PlainEmitter | CompensatingEmitter {
  const plain = { flow: share * emitterFlow, head: emitterPressure / pascals, exponent: emitterExponent };
  if (!compensation) return plain;
  const { openingPressure, regulatedUpTo, closingPressure } = compensation;
  return { ...plain, openingHead: openingPressure / pascals, highestHead: regulatedUpTo / pascals, closingHead: closingPressure / pascals };
}

function connectionOf(seen: SeenReach['connection'], diameter: number): NonNullable<LateralReach['connection']> {
  if (seen === undefined) return {};
  const { lossCoefficient, equivalentLength, barb, barbArea, barbFormula, passageDiameter } = seen;
  if (lossCoefficient !== undefined) return { lossCoefficient };
  if (equivalentLength !== undefined) return { equivalentLength };
  if (barb !== undefined) return { equivalentLength: barbEquivalentLengthWattersKeller1978(diameter, barb) };
  if (passageDiameter !== undefined) return { lossCoefficient: inLineLossCoefficientProvenzanoPumo2004(diameter, passageDiameter) };
  return { lossCoefficient: (barbFormula === 'UNESP' ? barbLossCoefficientUnesp : barbLossCoefficientBagarello1997)(obstructionIndex(diameter, barbArea!)) };
}

/** Least head at an outlet, as a share of the nominal head, that counts as pressure. */
const leastShare = 1e-3;

/** Highest pressure at an inlet, Pa. */
export const highestPressure = 1e6;

/** Heads and flows for a pressure at the inlet, or undefined where it does not reach every emitter. */
export function flowAt(layout: LateralLayout, inletHead: number): LateralFlow | undefined {
  return reachingAll(layout, () => lateralFromInletHead(layout, inletHead));
}

function reachingAll(layout: LateralLayout, solve: () => LateralFlow): LateralFlow | undefined {
  try {
    const found = solve();
    const isReached = lowestAndHighest(found.heads)[0] >= leastShare * layout.emitter.head && lowestAndHighest(found.flows)[0] > 0;
    return isReached ? found : undefined;
  } catch (error) {
    if (error instanceof ConvergenceError) return undefined;
    throw error;
  }
}

/** Pressures of some heads. */
export function pressuresOf(heads: Float64Array, pascals: number): Float64Array {
  const pressures = new Float64Array(heads.length);
  for (let i = 0; i < heads.length; i++) pressures[i] = heads[i]! * pascals;
  return pressures;
}

/** Heads and flows, or a refusal where pressure does not reach every emitter. */
export function solved(
  layout: LateralLayout, { inletPressure, meanEmitterFlow }: { readonly inletPressure: number | undefined; readonly meanEmitterFlow?: number | undefined }, pascals: number, { refuse }: Solving,
): LateralFlow {
  const found = inletPressure === undefined ? reachingAll(layout, () => lateralFromMeanFlow(layout, meanEmitterFlow!)) : flowAt(layout, inletPressure / pascals);
  if (!found) {
    const { emitter } = layout.furtherReaches?.at(-1) ?? layout;
    const opening = 'openingHead' in emitter ? emitter.openingHead : 0;
    const { inletHead } = lateralFromEndHead(layout, Math.max(emitter.head / 2, opening));
    const needed = inletHead * pascals;
    const isEnough = needed > (inletPressure ?? 0) && needed < highestPressure && flowAt(layout, inletHead) !== undefined;
    const atEnd = opening > emitter.head / 2 ? 'the pressure that its last emitters open at' : 'half the nominal pressure at its end';
    const takes = isEnough ? `${atEnd} takes ${writeNumber(needed / 1000)} kPa at the inlet; or ` : '';
    const path = inletPressure === undefined ? 'meanEmitterFlow' : 'inletPressure';
    return refuse(path, 'enough pressure to reach every emitter', 'too little: some emitter would have none', `${takes}take a larger pipe, or a shorter or less steep lateral`);
  }
  const reached = found.inletHead * pascals;
  if (reached > 1.001 * highestPressure) return refuse('meanEmitterFlow', `a flow that up to ${highestPressure / 1000} kPa at the inlet gives`, `one that takes ${writeNumber(reached / 1000)} kPa`);
  return found;
}
