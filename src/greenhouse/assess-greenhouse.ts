import { calculation } from '../calculation/calculation.js';
import { backflow } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { runTime } from '../dosing/index.js';
import { lateral } from '../laterals/index.js';
import { pumpCycle } from '../pressure-tank/index.js';
import { weighOut } from '../salts/index.js';
import { pressure, share, temperature, time, volume } from '../units/dimensions.js';
import { atmosphericPressureAtElevation, vapourPressureDeficitColumn } from '../vapour/index.js';
import { airOutputs, assessAir } from './air.js';
import { assessFeed, feedOutputs } from './feed.js';
import { inOrder } from './finding.js';
import { newAssessor } from './attempt.js';
import { assessZone, zoneOutputs } from './zone.js';

/** What the description of a greenhouse holds. Everything but counts and bands is what the calculations behind it take. */
const inputs = () => {
  const { volume: feedVolume, targets, salts, scales, water, waterAlkalinity } = weighOut.inputs;
  const { tankVolume, preCharge, cutIn, cutOut, pumpFlow, motorPower } = pumpCycle.inputs;
  const { waterTemperature, ...lateralFields } = lateral.inputs;
  const { volumePerPlant, drainShare, drippersPerPlant } = runTime.inputs;
  const { airTemperature, relativeHumidity } = vapourPressureDeficitColumn.inputs;
  return {
    name: field.optional(field.text(80)),
    site: field.group({ elevation: field.asWritten(atmosphericPressureAtElevation.inputs.elevation) }),
    sourceWater: field.asWritten(field.group({ water, waterAlkalinity, waterTemperature })),
    barrel: field.group({ volume: feedVolume }),
    targets: field.asWritten(targets),
    salts: field.asWritten(salts),
    scales: field.asWritten(scales),
    pump: field.asWritten(field.group({ pumpFlow, motorPower })),
    tank: field.asWritten(field.group({ tankVolume, preCharge, cutIn, cutOut })),
    zones: field.list(
      field.group({
        name: field.text(80),
        plants: field.count({ limits: [1, 100_000] }),
        ...field.asWritten
      }),
      { limits: [1, 100] },
    ),
  };
};
