/** What is to be said about a lateral. */
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

/** Says how even the flows are, by customary classes. */
export function noteEvenness(lowQuarterUniformity: number, flowVariation: number, { note }: Solving): void {
  const called = uniformityClass('low-quarter uniformity', lowQuarterUniformity)?.called;
  if (lowQuarterUniformity < 0.9) note('caution', 'uneven', 'lowQuarterUniformity', `The quarter with the least gets ${percent(lowQuarterUniformity)} of the mean, ${called} by the customary classes: a larger pipe, shorter laterals or compensating emitters even it out.`);
  if (flowVariation > 0.1) note(flowVariation > 0.2 ? 'caution' : 'info', 'flow-variation', 'flowVariation', `Flow varies by ${percent(flowVariation)} along the lateral; up to 10 % counts as good, above 20 % as not acceptable.`);
}
