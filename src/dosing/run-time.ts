import { calculation } from '../calculation/calculation.js';
import { discharge } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { flow, share, time, volume } from '../units/dimensions.js';
import { appliedVolumeForDrain, meanDrainFromUniformity, runTimeForVolume, volumeForRunTime } from './formulas.js';

/**
 * How long a zone has to run so that every plant takes up its volume and the wanted share drains.
 *
 * Takes the volume that a plant takes up (0.1 mL to 1 m³), the mean flow of one dripper (1 mL/h to 1 m³/h) and the drippers to a plant, the share
 * of what is given that drains (0 to 90 %), and the uniformity to allow for: with the low-quarter uniformity of the lateral the driest quarter of
 * the plants gets the volume on average, with that drain, and the others get more and drain more; left out, the average plant does. Gives the run
 * time, the volume that a plant is given on average, and the share of it that drains from the zone as a whole: the drain that is wanted and the
 * surplus of the wetter plants together.
 * @throws InputError for input outside these limits.
 * @example
 * runTime({ volumePerPlant: '0.25 L', dripperFlow: '2 L/h', drainShare: '20 %' }).runTime.in('min') // => 9.375
 */
export const runTime = /* @__PURE__ */ calculation({
  id: 'runTime',
  title: 'How long a zone runs to give each plant its volume',
  inputs: () => ({
    volumePerPlant: field.quantity(volume, { limits: ['0.1 mL', '1 m³'] }),
    dripperFlow: field.quantity(flow, { limits: ['0.001 L/h', '1000 L/h'] }),
    drippersPerPlant: field.withDefault(field.number({ limits: [0.01, 100] }), 1),
    drainShare: field.withDefault(field.share({ limits: [0, 0.9] }), 0),
    uniformity: field.withDefault(field.share({ limits: [0.05, 1] }), 1),
  }),
  outputs: () => ({ runTime: output.quantity(time, 'min'), appliedVolume: output.quantity(volume, 'L'), meanDrainShare: output.quantity(share, '%') }),
  equation: 't = V / ((1 − d) n q U); mean drain 1 − (1 − d) U',
  sources: ['definition'],
  example: { volumePerPlant: '0.25 L', dripperFlow: '2 L/h', drainShare: '20 %', uniformity: '94 %' },
  solve: ({ volumePerPlant, dripperFlow, drippersPerPlant, drainShare, uniformity }, { note }) => {
    const runTime = runTimeForVolume(appliedVolumeForDrain(volumePerPlant, drainShare), drippersPerPlant, dripperFlow, uniformity);
    const meanDrainShare = meanDrainFromUniformity(drainShare, uniformity);
    if (meanDrainShare > 0) note(discharge.severity, discharge.code, 'meanDrainShare', discharge.text);
    return { runTime, appliedVolume: volumeForRunTime(runTime, drippersPerPlant, dripperFlow), meanDrainShare };
  },
});
