/** What is to be said about a lateral, and about how even a zone is. */
import type { Solving } from '../calculation/calculation.js';
import { kilopascals, percent } from '../units/in-words.js';
import { writeNumber } from '../units/write.js';
import { fittingHeadLoss, pipeVelocity } from './formulas/head-loss.js';
import { lowestAndHighest } from './formulas/uniformity.js';
import { mostOfCompensating, type SeenReach } from './lateral-fields.js';
import { noteFlow, reynoldsNumberOf, type SeenFriction } from './pipe.js';
import { uniformityClass } from './uniformity-classes.js';

/** Pressure that compensating emitters usually take before they compensate, Pa. Common practice, no source. */
const usuallyFrom = 50_000;

/** Velocity head, as a share of the inlet head, from which leaving it out shows. */
const tellingShare = 0.05;

/** Says so where compensating emitters are outside the pressures that they regulate between, or are none; of several reaches, of the one that is furthest off. */
export function noteCompensation(pressures: Float64Array, reaches: readonly SeenReach[], { note }: Pick<Solving, 'note'>): void {
  let from = 0;
  let [missing, excess, mostExponent] = [0, 0, mostOfCompensating];
  let [tooLow, tooHigh, unregulated] = ['', '', ''];
  for (const { outlets, emitterExponent, compensation } of reaches) {
    const [lowest, highest] = lowestAndHighest(pressures.subarray(from, from += outlets));
    if (emitterExponent > mostOfCompensating && !compensation) continue;
    const { openingPressure = usuallyFrom, regulatedUpTo = Infinity } = compensation ?? {};
    if (openingPressure - lowest > missing) {
      missing = openingPressure - lowest;
      const need = compensation ? `these need ${kilopascals(openingPressure)}` : `compensating emitters usually need ${usuallyFrom / 1000} to 100 kPa`;
      tooLow = `The lowest pressure is ${kilopascals(lowest)}; ${need} before they compensate, and give less below: raise the inlet pressure by some ${kilopascals(missing)}.`;
    }
    if (highest - regulatedUpTo > excess) {
      excess = highest - regulatedUpTo;
      tooHigh = `The highest pressure is ${kilopascals(highest)}, and the emitters regulate up to ${kilopascals(regulatedUpTo)}: lower the inlet pressure by some ${kilopascals(excess)}.`;
    }
    if (emitterExponent > mostExponent) {
      mostExponent = emitterExponent;
      unregulated = `Between ${kilopascals(openingPressure)} and ${kilopascals(regulatedUpTo)} an exponent of ${writeNumber(emitterExponent)} regulates nothing: compensating emitters have 0 to ${mostOfCompensating}.`;
    }
  }
  if (tooLow) note('caution', 'not-compensating', 'emitterExponent', tooLow);
  if (tooHigh) note('caution', 'above-range', 'compensation', tooHigh);
  if (unregulated) note('caution', 'does-not-compensate', 'emitterExponent', unregulated);
}

/** Looks at the water at the beginning of every reach, and speaks of the fastest. The flows are those of emitters that run. */
export function notePipes(inletFlow: number, flows: Float64Array, reaches: readonly SeenReach[], seen: SeenFriction & { readonly cloggedShare: number }, solving: Solving): void {
  let flow = inletFlow;
  let outlet = 0;
  let fastest = { velocity: 0, flow: 0, diameter: 1 };
  for (const { outlets, diameter } of reaches) {
    const velocity = pipeVelocity(flow, diameter);
    if (velocity > fastest.velocity) fastest = { velocity, flow, diameter };
    const end = outlet + outlets;
    if (end < flows.length) for (; outlet < end; outlet++) flow -= (1 - seen.cloggedShare) * flows[outlet]!;
  }
  noteFlow('inletVelocity', fastest.velocity, reynoldsNumberOf(fastest.flow, fastest.diameter, seen.waterTemperature), { friction: seen.friction, diameter: fastest.diameter }, solving);
}

/** Says so where emitters are clogged. */
export function noteClogged(cloggedShare: number, { note }: Pick<Solving, 'note'>): void {
  if (cloggedShare > 0) note(cloggedShare > 0.05 ? 'caution' : 'info', 'clogged', 'cloggedShare', `${percent(cloggedShare)} of the emitters give nothing, and a plant that has but one of them nothing either: flush, filter finer, or give each plant two.`);
}

/** Says so where the velocity head, which is left out, is no longer small beside the pressure. */
export function noteVelocityHead(inletVelocity: number, inletHead: number, { note }: Solving): void {
  const share = fittingHeadLoss(1, inletVelocity) / inletHead;
  if (share > tellingShare) note('caution', 'velocity-head', 'inletVelocity', `The water's motion carries ${percent(share)} of the inlet pressure, which is left out here: pressures further on come out somewhat higher.`);
}

/** Says so where the quarter with the least gets too little by customary classes, and what to do about it. */
export function noteUneven(lowQuarterUniformity: number, remedy: string, { note }: Pick<Solving, 'note'>): void {
  const { called } = uniformityClass('low-quarter uniformity', lowQuarterUniformity)!;
  if (called === 'excellent' || called === 'good') return;
  note('caution', 'uneven', 'lowQuarterUniformity', `The quarter with the least gets ${percent(lowQuarterUniformity)} of the mean, ${called} by customary classes: ${remedy}.`);
}

/** Says so where the flow varies along a lateral more than is good by customary classes. */
export function noteFlowVariation(flowVariation: number, { note }: Pick<Solving, 'note'>): void {
  const { called, from } = uniformityClass('flow variation', flowVariation)!;
  if (called === 'good') return;
  note(called === 'acceptable' ? 'info' : 'caution', 'flow-variation', 'flowVariation', `Flow varies by ${percent(flowVariation)} along the lateral: from ${percent(from)} on that is ${called} by customary classes.`);
}
