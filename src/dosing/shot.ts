import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import type { AddNote } from '../calculation/note.js';
import * as output from '../calculation/output.js';
import { time, volume } from '../units/dimensions.js';
import { percent } from '../units/in-words.js';
import { runTimeForVolume } from './formulas/run-time.js';
import { shotsForVolume, shotVolume } from './formulas/shot.js';
import { isAbove } from './is-above.js';
import { runTime } from './run-time.js';

/** Shares of the substrate that shots usually are. Common practice, no source. */
const usualShots = [0.02, 0.06] as const;

/** Says so where a shot is an unusual share of the substrate; the field is the input that makes it so. */
export function noteShotShare(share: number, field: string, note: AddNote): void {
  if (isAbove(usualShots[0], share) || isAbove(share, usualShots[1])) note('info', 'unusual-shot', field, `Shots of ${percent(usualShots[0])} to ${percent(usualShots[1])} of the substrate are usual, and these are ${percent(Number(share.toPrecision(2)))}: smaller ones hardly reach the whole bag, larger ones run through it.`);
}

/**
 * One irrigation shot as a share of the substrate that a plant stands in, and how many of them make a day.
 *
 * Takes the volume of substrate to a plant (10 mL to 1 m³), the share of it that a shot is (0.5 to 30 %; 2 to 6 % is common practice), the mean
 * flow of one dripper and the drippers to a plant; and the volume that a plant is given in a day, where shots are to be counted. Gives the shot,
 * its run time, and the least whole number of such shots that give the day's volume.
 * @throws InputError for input outside these limits.
 * @example
 * shot({ substrateVolume: '10 L', shotShare: '3 %', dripperFlow: '2 L/h' }).runTime.in('min') // => 9
 */
export const shot = /* @__PURE__ */ calculation({
  id: 'shot',
  title: 'One irrigation shot by the volume of substrate',
  inputs: () => {
    const { dripperFlow, drippersPerPlant } = runTime.inputs;
    return {
      substrateVolume: field.quantity(volume, { limits: ['10 mL', '1 m³'] }),
      shotShare: field.share({ limits: [0.005, 0.3] }),
      dripperFlow,
      drippersPerPlant,
      dailyVolumePerPlant: field.optional(field.quantity(volume, { limits: ['0 L', '1 m³'] })),
    };
  },
  outputs: () => ({ shotVolume: output.quantity(volume, 'mL'), runTime: output.quantity(time, 'min'), shotsPerDay: output.optional(output.number()) }),
  equation: 'V_shot = s V_substrate; t = V_shot / (n q); shots = ⌈V_day / V_shot⌉',
  sources: ['definition', 'common-practice'],
  example: { substrateVolume: '10 L', shotShare: '3 %', dripperFlow: '2 L/h', dailyVolumePerPlant: '1.8 L' },
  solve: ({ substrateVolume, shotShare, dripperFlow, drippersPerPlant, dailyVolumePerPlant }, { note }) => {
    noteShotShare(shotShare, 'shotShare', note);
    const given = shotVolume(substrateVolume, shotShare);
    return {
      shotVolume: given,
      runTime: runTimeForVolume(given, drippersPerPlant, dripperFlow),
      shotsPerDay: dailyVolumePerPlant === undefined ? undefined : shotsForVolume(dailyVolumePerPlant, given),
    };
  },
});
