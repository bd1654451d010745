import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { roundedUp } from '../numerics/round-outward.js';
import { time, volume } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { meanDrainFromUniformity, uptakeFromApplied } from './formulas/drain.js';
import { volumeForRunTime } from './formulas/run-time.js';
import { noteRun, runOutputs, runTime } from './run-time.js';

/**
 * What a plant is given in a run time, and what it can take up of it. The way back from `runTime`.
 *
 * Takes the run time of all shots together, filling included (up to a day), the mean flow of one dripper and the drippers to a plant; perhaps the share that
 * drains, the uniformity, the shots (1 to 200), the time in which lines fill before each, and what they lose after it, all as `runTime` does. Gives the
 * volume that a plant is given on average, the one that the plants allowed for take up, what is drawn for a plant, the run time of a shot and the drain of the zone as a whole.
 * @throws InputError for input outside these limits, and for shots that are over before the lines are full.
 * @example
 * waterGiven({ runTime: '5 min', dripperFlow: '4 L/h' }).appliedVolume.in('mL') // => 333.3
 */
export const waterGiven = /* @__PURE__ */ calculation({
  id: 'waterGiven',
  title: 'What a plant is given in a run time',
  inputs: () => {
    const { volumePerPlant: _wanted, ...run } = runTime.inputs;
    return { runTime: field.quantity(time, { limits: ['0 s', '1 d'] }), ...run };
  },
  outputs: () => ({ ...runOutputs(), volumePerPlant: output.quantity(volume, 'L') }),
  equation: 'V = n q (t − N tf)',
  sources: ['definition'],
  example: { runTime: '5 min', dripperFlow: '4 L/h' },
  check: ({ runTime, shotsPerDay, fillTime }, problem) => {
    if (fillTime > 0 && runTime <= shotsPerDay * fillTime) problem(['runTime'], `more than the ${writeNumber(roundedUp((shotsPerDay * fillTime) / 60, 3))} min in which the lines fill`, `${writeNumber(runTime / 60)} min`, 'fewer shots, each of them longer');
  },
  solve: ({ runTime: duration, dripperFlow, drippersPerPlant, drainShare, uniformity, shotsPerDay, fillTime, lostPerShot }, { note }) => {
    const filling = shotsPerDay * fillTime;
    const appliedVolume = volumeForRunTime(duration, drippersPerPlant, dripperFlow, 1, filling);
    const meanDrainShare = meanDrainFromUniformity(drainShare, uniformity);
    noteRun({ runTime: duration, filling, meanDrainShare, drainShare, uniformity }, note);
    return {
      runTimePerShot: duration / shotsPerDay,
      appliedVolume,
      drawnPerPlant: appliedVolume + shotsPerDay * lostPerShot,
      meanDrainShare,
      volumePerPlant: uptakeFromApplied(appliedVolume * uniformity, drainShare),
    };
  },
});
