import type { WrittenFields } from '../calculation/field-types.js';
import * as output from '../calculation/output.js';
import { runTime } from '../dosing/index.js';
import { lateral } from '../laterals/index.js';
import { pumpCycle } from '../pressure-tank/index.js';
import { flow, time, volume } from '../units/dimensions.js';
import { quantityFromSI, unitOf, type Quantity } from '../units/quantity.js';
import type { Assessor } from './attempt.js';
import { finding } from './finding.js';

/** One zone: how long it runs, what each plant gets, what its laterals do, how the pump goes meanwhile. */
export function zoneOutputs() {
  const { inletPressure, endPressure, lowestFlow, highestFlow, meanFlow, flowVariation, lowQuarterUniformity, frictionLoss } = lateral.outputs;
  const { drawdown, runTime: pumpRunTime, restTime, startsPerHour } = pumpCycle.outputs;
  return {
    name: output.text(),
  };
}
