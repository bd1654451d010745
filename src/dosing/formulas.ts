/**
 * Time to give every plant a volume: t = V/(n q U).
 *
 * U is the distribution uniformity the time allows for: with U = 1 the average plant gets the volume, with the low-quarter uniformity
 * the driest quarter gets it on average and the others more.
 *
 * @param volumePerPlant V, m3
 * @param drippersPerPlant n
 * @param dripperFlow q, mean flow of one dripper, m3/s
 * @param uniformity U, fraction above 0 up to 1
 * @returns s
 */
export function runTimeForVolume(volumePerPlant: number, drippersPerPlant: number, dripperFlow: number, uniformity = 1): number {
  return volumePerPlant / (drippersPerPlant * dripperFlow * uniformity);
}

/**
 * Volume a plant gets in a run time: V = n q U t, m3; U as for the run time.
 *
 * @param runTime t, s
 */
export function volumeForRunTime(runTime: number, drippersPerPlant: number, dripperFlow: number, uniformity = 1): number {
  return runTime * drippersPerPlant * dripperFlow * uniformity;
}

/** The whole number from a quotient upward; one above a whole number by no more than its rounding counts as that number. */
function wholeUpward(quotient: number): number {
  return Math.ceil(quotient * (1 - 1e-12));
}

/** Least whole number of drippers that give a plant a volume (m3) within a time (s). */
export function drippersForVolume(volumePerPlant: number, longestRunTime: number, dripperFlow: number, uniformity = 1): number {
  return wholeUpward(runTimeForVolume(volumePerPlant, 1, dripperFlow, uniformity) / longestRunTime);
}

/** Drippers to a plant, where so many serve so many plants. */
export function drippersToAPlant(drippers: number, plants: number): number {
  return drippers / plants;
}

/**
 * Time until a store is empty: t = V/V_day days, s; infinite where nothing is taken.
 *
 * @param volume V in store, m3
 * @param dailyVolume V_day taken in a day, m3
 * @example timeUntilEmpty(0.2, 0.05) // => 345600
 */
export function timeUntilEmpty(volume: number, dailyVolume: number): number {
  return (volume / dailyVolume) * 86400;
}

/** Volume of one irrigation shot as a share of the substrate a plant stands in: m3. */
export function shotVolume(substrateVolume: number, share: number): number {
  return substrateVolume * share;
}

/** Least whole number of equal shots, none above a volume (m3), that give a daily volume (m3). */
export function shotsForVolume(dailyVolume: number, largestShot: number): number {
  return wholeUpward(dailyVolume / largestShot);
}

/**
 * Volume to apply so that a share of it drains: V = T/(1 - d).
 *
 * @param uptake T, what the plant takes up and transpires, m3
 * @param drainShare d, drain over applied, from 0 to below 1
 * @returns m3
 * @example appliedVolumeForDrain(0.7, 0.3) // => 1
 */
export function appliedVolumeForDrain(uptake: number, drainShare: number): number {
  return uptake / (1 - drainShare);
}

/**
 * Share of all that is applied that drains, where a share d drains from the plants that a uniformity U below 1 allows for: 1 - (1 - d) U.
 *
 * The others get more and take up no more. With U = 1 it is d.
 *
 * @param drainShare d, from 0 to below 1
 * @param uniformity U, fraction above 0 up to 1
 * @example meanDrainFromUniformity(0.2, 0.9) // => 0.28
 */
export function meanDrainFromUniformity(drainShare: number, uniformity: number): number {
  return 1 - (1 - drainShare) * uniformity;
}

/** Share of the applied volume that drained: d = drained/applied. */
export function drainShareFromVolumes(applied: number, drained: number): number {
  return drained / applied;
}
