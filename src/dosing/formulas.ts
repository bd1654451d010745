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

/** Share of the applied volume that drained: d = drained/applied. */
export function drainShareFromVolumes(applied: number, drained: number): number {
  return drained / applied;
}
