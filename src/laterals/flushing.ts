/** What it takes to flush a lateral, and what its pressure makes of it. */
import type { Solving } from '../calculation/calculation.js';
import * as output from '../calculation/output.js';
import { flow, pressure, velocity } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { lastDiameter, lateralFlushedAt, lateralFlushedWith } from './formulas/flushing.js';
import { pipeVelocity } from './formulas/head-loss.js';
import type { LateralLayout } from './formulas/stretch.js';
import { highestPressure } from './lateral-layout.js';

/** The flow and pressure that flushing takes, and the velocity that the inlet pressure reaches if it is kept at that flow; pressures above 1 MPa are left out. */
export const flushingOutputs = () => output.group({
  flushingFlow: output.quantity(flow, 'L/h'),
  flushingInletFlow: output.optional(output.quantity(flow, 'L/h')),
  flushingInletPressure: output.optional(output.quantity(pressure, 'kPa')),
  reachedVelocity: output.quantity(velocity, 'm/s'),
});

/** The same from what was solved; says so where the inlet pressure does not flush. */
export function flushingOf(layout: LateralLayout, wanted: number, inletHead: number, pascals: number, { note }: Solving) {
  const diameter = lastDiameter(layout);
  const flushingFlow = wanted / pipeVelocity(1, diameter);
  const needed = lateralFlushedWith(layout, flushingFlow);
  const flushingInletPressure = Math.max(0, needed.inletHead * pascals);
  const reachedVelocity = pipeVelocity(lateralFlushedAt(layout, inletHead).endFlow, diameter);
  const isPossible = flushingInletPressure <= highestPressure;
  if (reachedVelocity < wanted) {
    const remedy = isPossible ? `it takes ${writeNumber(flushingInletPressure / 1000)} kPa at the inlet` : 'no pressure that pipes bear would do';
    note('caution', 'weak-flush', 'reachedVelocity', `With its end open this lateral is flushed at ${writeNumber(reachedVelocity)} m/s, and ${writeNumber(wanted)} m/s are wanted: ${remedy}; open fewer ends at a time, or shorten the lateral.`);
  }
  return { flushingFlow, flushingInletFlow: isPossible ? needed.inletFlow : undefined, flushingInletPressure: isPossible ? flushingInletPressure : undefined, reachedVelocity };
}
