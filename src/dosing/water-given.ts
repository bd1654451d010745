import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { time, volume } from '../units/dimensions.js';
import { volumeForRunTime } from './formulas.js';
import { runTime } from './run-time.js';

/**
 * What a plant is given in a run time.
 *
 * Takes the run time (up to a day), the mean flow of one dripper and the drippers to a plant. Gives the volume that a plant is given on average.
 * @throws InputError for input outside these limits.
 * @example
 * waterGiven({ runTime: '5 min', dripperFlow: '4 L/h' }).appliedVolume.in('mL') // => 333.3
 */
export const waterGiven = /* @__PURE__ */ calculation({
  id: 'waterGiven',
  title: 'What a plant is given in a run time',
  inputs: () => {
    const { dripperFlow, drippersPerPlant } = runTime.inputs;
    return { runTime: field.quantity(time, { limits: ['0 s', '1 d'] }), dripperFlow, drippersPerPlant };
  },
  outputs: () => ({ appliedVolume: output.quantity(volume, 'L') }),
  equation: 'V = n q t',
  sources: ['definition'],
  example: { runTime: '5 min', dripperFlow: '4 L/h' },
  solve: ({ runTime: duration, dripperFlow, drippersPerPlant }) => ({ appliedVolume: volumeForRunTime(duration, drippersPerPlant, dripperFlow) }),
});
