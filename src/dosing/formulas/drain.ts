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

/**
 * What of a given volume is taken up where a share of it drains: T = V (1 - d), m3. The inverse of the volume to apply.
 *
 * @param applied V, m3
 * @param drainShare d, from 0 to 1
 */
export function uptakeFromApplied(applied: number, drainShare: number): number {
  return applied * (1 - drainShare);
}
