import type { WrittenFields } from '../calculation/field-types.js';
import * as output from '../calculation/output.js';
import { drippersToAPlant, runTime } from '../dosing/index.js';
import { lateral } from '../laterals/index.js';
import { pumpCycle } from '../pressure-tank/index.js';
import { quantity } from '../units/by-name.js';
import { flow, share, time, volume } from '../units/dimensions.js';
import { quantityFromSI, unitOf, type QuantityInput } from '../units/quantity.js';
import type { Assessor } from './attempt.js';
import { finding } from './finding.js';

/** A zone as it is described. */
export interface Zone {
  readonly name: string;
  readonly plants: number;
  readonly shotsPerDay: number;
  readonly laterals: number;
  readonly volumePerPlant: WrittenFields<typeof runTime.inputs>['volumePerPlant'];
  readonly drainShare: WrittenFields<typeof runTime.inputs>['drainShare'];
  readonly lateral: Omit<WrittenFields<typeof lateral.inputs>, 'waterTemperature' | 'emittersPerPlant'>;
}

/** What the zones have in common: the pump with its tank, and the water. */
export interface Supply {
  readonly cycle: Omit<WrittenFields<typeof pumpCycle.inputs>, 'demand'>;
  readonly cutIn: number;
  readonly waterTemperature: QuantityInput<'temperature'> | undefined;
}

/** How long a zone runs, what its plants get, what its laterals do, and how the pump goes meanwhile. */
export function zoneOutputs() {
  const { inletPressure, endPressure, meanFlow, flowVariation, lowQuarterUniformity } = lateral.outputs;
  const { startsPerHour, runTime: pumpRunTime, restTime: pumpRestTime } = pumpCycle.outputs;
  return output.group({
    name: output.text(),
    ...output.passedOn({ volumePerPlant: output.quantity(volume, 'L'), appliedVolume: runTime.outputs.appliedVolume, runTime: runTime.outputs.runTime }),
    runTimePerShot: output.quantity(time, 'min'),
    dailyVolume: output.quantity(volume, 'L'),
    zoneFlow: output.quantity(flow, 'L/min'),
    ...output.passedOn({ inletPressure, endPressure, meanFlow, flowVariation, lowQuarterUniformity, uniformity: output.quantity(share, '%') }),
    pump: output.optional(output.group(output.passedOn({ startsPerHour, pumpRunTime, pumpRestTime }))),
  });
}

/**
 * A zone by its laterals, its dose and its pump. Run time allows for the design emission uniformity where the variation of the emitters is known, and
 * for the evenness of the pipe alone where it is not.
 */
export function assessZone(zone: Zone, where: string, { cycle, cutIn, waterTemperature }: Supply, { run, add }: Assessor) {
  const { name, plants, shotsPerDay, laterals, volumePerPlant, drainShare } = zone;
  const drippersPerPlant = drippersToAPlant(laterals * zone.lateral.outlets, plants);
  const pipe = run(lateral, `${where}.lateral`, { ...zone.lateral, waterTemperature, emittersPerPlant: Math.max(1, drippersPerPlant) });
  if (!pipe) return undefined;
  const { inletPressure, endPressure, meanFlow, flowVariation, lowQuarterUniformity, emissionUniformity } = pipe;
  const uniformity = emissionUniformity ?? lowQuarterUniformity;
  const dose = run(runTime, where, { volumePerPlant, drainShare, dripperFlow: meanFlow, drippersPerPlant, uniformity });
  if (!dose) return undefined;

  const zoneFlow = laterals * pipe.inletFlow.si;
  const pump = run(pumpCycle, `${where}.pump`, { ...cycle, demand: quantityFromSI(flow, zoneFlow, unitOf(flow, 'L/min')) });
  if (inletPressure.si > cutIn) {
    add(finding({ id: 'assessGreenhouse', sources: ['definition'] }, where, 'danger', 'inlet-above-cut-in', `The laterals of ${name} are to get ${String(inletPressure)}, which is more than the cut-in of the pump: the pressure will not be there. Regulate it lower, or move the switch.`));
  }
  return {
    name,
    volumePerPlant: quantity(volumePerPlant, 'volume'),
    appliedVolume: dose.appliedVolume,
    runTime: dose.runTime,
    runTimePerShot: dose.runTime.si / shotsPerDay,
    dailyVolume: plants * dose.appliedVolume.si,
    zoneFlow,
    inletPressure, endPressure, meanFlow, flowVariation, lowQuarterUniformity, uniformity,
    pump: pump && { startsPerHour: pump.startsPerHour, pumpRunTime: pump.runTime, pumpRestTime: pump.restTime },
  };
}
