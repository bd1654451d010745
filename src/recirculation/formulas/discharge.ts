/**
 * Volume to let out of a loop for each volume taken up, so that an ion stays at its limit: D/W = (Cw − CU)/(Cmax − Cw).
 *
 * Zero where the plants take up as much as the water brings, infinite where the water itself is at the limit or above. From the salt balance at
 * steady state; water and limit in the unit of the uptake.
 *
 * @param refill Cw, what the water (with the fertilizer in it) brings
 * @param uptake CU, what the plants take up with a volume of water while the loop is at its limit
 * @param limit Cmax, in the loop
 * @example dischargePerUptake(1.5, 0.9, 8) // => 0.092308
 */
export function dischargePerUptake(refill: number, uptake: number, limit: number): number {
  if (uptake >= refill) return 0;
  return limit > refill ? (refill - uptake) / (limit - refill) : Infinity;
}

/**
 * Share of the supply that is let out, from the volume let out for each volume taken up: b/(1 + b); 1 where that is infinite.
 *
 * @example dischargeShareOfSupply(0.375) // => 0.272727
 */
export function dischargeShareOfSupply(perUptake: number): number {
  return perUptake === Infinity ? 1 : perUptake / (1 + perUptake);
}

/**
 * Volume let out for each volume taken up, from the share of the supply that is let out: d/(1 − d).
 *
 * @param share d, from 0 to below 1
 */
export function bleedFromShareOfSupply(share: number): number {
  return share / (1 - share);
}

/**
 * Volume lost for each volume taken up where a share of what the plants are given drains and not all of that is caught: (1 − c) d/(1 − d).
 *
 * @param drainShare d, drain over given, from 0 to below 1
 * @param caughtShare c, drain caught over drain
 * @example bleedFromLostDrain(0.3, 0.9) // => 0.042857
 */
export function bleedFromLostDrain(drainShare: number, caughtShare: number): number {
  return ((1 - caughtShare) * drainShare) / (1 - drainShare);
}

/**
 * Volume that a volume has to become, by water that holds less, to come down to a concentration: (C − Cr)/(Cmax − Cr), and 1 where it is there already;
 * infinite where the water holds too much itself.
 *
 * @param receiving Cr, concentration of what it is thinned with
 * @example dilutionToConcentration(0.930073, 0.05) // => 18.60146
 */
export function dilutionToConcentration(concentration: number, limit: number, receiving = 0): number {
  if (concentration <= limit) return 1;
  return receiving < limit ? (concentration - receiving) / (limit - receiving) : Infinity;
}
