import { calculation } from '../calculation/calculation.js';
import { discharge } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import type { AddNote } from '../calculation/note.js';
import * as output from '../calculation/output.js';
import { roundedUp } from '../numerics/round-outward.js';
import { flow, share, time, volume } from '../units/dimensions.js';
import { hours, percent } from '../units/in-words.js';
import { daySeconds } from './formulas/barrel.js';
import { appliedVolumeForDrain, meanDrainFromUniformity } from './formulas/drain.js';
import { runTimeForVolume, volumeForRunTime } from './formulas/run-time.js';
import { isAbove } from './is-above.js';

/** Filling takes more than this share of a run before it is worth a word. Common practice, no source. */
const tellingFilling = 0.1;

/** More drain of a zone than this is worth a warning where unevenness makes it. Common practice, no source. */
const muchDrain = 0.5;

/** What a run gives beside its time or its volume, as `runTime` and `waterGiven` show it. */
export const runOutputs = () => ({
  runTimePerShot: output.quantity(time, 'min'),
  appliedVolume: output.quantity(volume, 'L'),
  drawnPerPlant: output.quantity(volume, 'L'),
  meanDrainShare: output.quantity(share, '%'),
});

/** Says what is to be said of a run, whichever way it was worked out. */
export function noteRun({ runTime, filling, meanDrainShare, drainShare, uniformity }: { readonly runTime: number; readonly filling: number; readonly meanDrainShare: number; readonly drainShare: number; readonly uniformity: number }, note: AddNote): void {
  if (isAbove(runTime, daySeconds)) note('danger', 'longer-than-a-day', 'runTime', `Drippers give for ${hours(runTime - filling)} and lines fill for ${hours(filling)}, more than a day has: larger or more drippers, or fewer shots.`);
  if (uniformity < 1 && isAbove(meanDrainShare, muchDrain)) {
    const enough = (1 - muchDrain) / (1 - drainShare);
    const remedy = enough < 1 ? `it takes a uniformity of ${percent(roundedUp(enough, 3))} for no more than ${percent(muchDrain)}` : 'ask for less drain too';
    note('caution', 'uneven', 'uniformity', `${percent(Number(meanDrainShare.toPrecision(3)))} of what the zone is given drains, since the wetter plants are given so much more than the driest: even out the drippers first; ${remedy}.`);
  }
  if (filling > tellingFilling * runTime) note('info', 'filling', 'fillTime', `Lines fill for ${percent(filling / runTime)} of the time that the zone runs: fewer and longer shots, or drippers that hold the water in the line, give more of it to the plants.`);
  if (meanDrainShare > 0) note(discharge.severity, discharge.code, 'meanDrainShare', discharge.text);
}

/**
 * How long a zone has to run so that every plant takes up its volume and the wanted share drains.
 *
 * Takes the volume that a plant takes up (0.1 mL to 1 m³), the mean flow of one dripper (1 mL/h to 1 m³/h) and the drippers to a plant, the share
 * of what is given that drains (0 to 90 %), and the uniformity to allow for: with the low-quarter uniformity of the lateral the driest quarter of
 * the plants gets the volume on average, with that drain, and the others get more and drain more; left out, the average plant does. Where the
 * volume comes in several shots (1 to 200), where lines that have run empty fill first (0 to 1 h), or where they lose water after each shot that
 * reaches no plant (to a plant, up to 1 L), that too. Gives the run time, filling included, in all and for each shot, the volume that a plant is given
 * on average, what is drawn for it with what the lines lose, and the share of what it is given that drains from the zone as a whole: the drain that is wanted and
 * the surplus of the wetter plants together. `waterGiven` is the way back.
 * @throws InputError for input outside these limits.
 * @example
 * runTime({ volumePerPlant: '0.25 L', dripperFlow: '2 L/h', drainShare: '20 %' }).runTime.in('min') // => 9.375
 * runTime({ volumePerPlant: '0.25 L', dripperFlow: '2 L/h', drainShare: '20 %', shotsPerDay: 5, fillTime: '15 s' }).runTimePerShot.in('min') // => 2.125
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
    shotsPerDay: field.withDefault(field.count({ limits: [1, 200] }), 1),
    fillTime: field.withDefault(field.quantity(time, { limits: ['0 s', '1 h'] }), '0 s'),
    lostPerShot: field.withDefault(field.quantity(volume, { limits: ['0 L', '1 L'] }), '0 L'),
  }),
  outputs: () => ({ runTime: output.quantity(time, 'min'), ...runOutputs() }),
  equation: 't = V / ((1 − d) n q U) + N tf; mean drain 1 − (1 − d) U',
  sources: ['definition'],
  example: { volumePerPlant: '0.25 L', dripperFlow: '2 L/h', drainShare: '20 %', uniformity: '94 %' },
  solve: ({ volumePerPlant, dripperFlow, drippersPerPlant, drainShare, uniformity, shotsPerDay, fillTime, lostPerShot }, { note }) => {
    const filling = shotsPerDay * fillTime;
    const runTime = runTimeForVolume(appliedVolumeForDrain(volumePerPlant, drainShare), drippersPerPlant, dripperFlow, uniformity, filling);
    const appliedVolume = volumeForRunTime(runTime, drippersPerPlant, dripperFlow, 1, filling);
    const meanDrainShare = meanDrainFromUniformity(drainShare, uniformity);
    noteRun({ runTime, filling, meanDrainShare, drainShare, uniformity }, note);
    return { runTime, runTimePerShot: runTime / shotsPerDay, appliedVolume, drawnPerPlant: appliedVolume + shotsPerDay * lostPerShot, meanDrainShare };
  },
});
