import { wholeUpward } from './whole-upward.js';

/**
 * Time to give every plant a volume: t = V/(n q U) + N tf.
 *
 * U is the distribution uniformity the time allows for: with U = 1 the average plant gets the volume, with the low-quarter uniformity
 * the driest quarter gets it on average and the others more. Lines that run empty between shots take tf to fill before the drippers give.
 *
 * @param volumePerPlant V, m3
 * @param drippersPerPlant n
 * @param dripperFlow q, mean flow of one dripper, m3/s
 * @param uniformity U, fraction above 0 up to 1
 * @param filling N tf, time in which lines fill, all shots together, s
 * @returns s
 */
export function runTimeForVolume(volumePerPlant: number, drippersPerPlant: number, dripperFlow: number, uniformity = 1, filling = 0): number {
  return volumePerPlant / (drippersPerPlant * dripperFlow * uniformity) + filling;
}

/**
 * Volume a plant gets in a run time: V = n q U (t - N tf), m3, and nothing where the lines only fill; U and N tf as for the run time.
 *
 * @param runTime t, s
 */
export function volumeForRunTime(runTime: number, drippersPerPlant: number, dripperFlow: number, uniformity = 1, filling = 0): number {
  return Math.max(0, runTime - filling) * drippersPerPlant * dripperFlow * uniformity;
}

/** Least whole number of drippers that give a plant a volume (m3) within a time (s). */
export function drippersForVolume(volumePerPlant: number, longestRunTime: number, dripperFlow: number, uniformity = 1): number {
  return wholeUpward(runTimeForVolume(volumePerPlant, 1, dripperFlow, uniformity) / longestRunTime);
}

/** Drippers to a plant, where so many serve so many plants. */
export function drippersToAPlant(drippers: number, plants: number): number {
  return drippers / plants;
}
