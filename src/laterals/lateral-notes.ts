/** What is to be said about a lateral, and about how even a zone is. */
import type { Solving } from '../calculation/calculation.js';
import { writeNumber } from '../units/write.js';
import { fittingHeadLoss } from './formulas/head-loss.js';
import { uniformityClass } from './uniformity-classes.js';

/** Pressure that compensating emitters usually take before they compensate, Pa. Common practice, no source. */
const compensatingFrom = 50_000;

/** Velocity head, as a share of the inlet head, from which leaving it out shows. */
const tellingShare = 0.05;

const percent = (fraction: number): string => `${writeNumber(fraction * 100)} %`;

/** Says so where compensating emitters lack the pressure to compensate. */
export function noteCompensation(emitterExponent: number, lowestPressure: number, { note }: Solving): void {
  if (emitterExponent >= 0.2 || lowestPressure >= compensatingFrom) return;
  note('caution', 'not-compensating', 'emitterExponent', `The lowest pressure is ${writeNumber(lowestPressure / 1000)} kPa; compensating emitters usually need ${compensatingFrom / 1000} to 100 kPa before they compensate, and give less below.`);
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
