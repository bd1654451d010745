/**
 * Share of what is given that has to drain so that the drain is no stronger than wanted, from the balance of salt in a fertilised substrate:
 * LF = (c_in - c_up)/(c_drain - c_up).
 *
 * The plant takes up salt with its water, so far less has to drain than where only water leaves. With c_up = 0, plants that take up pure water,
 * it is the plain ratio c_in/c_drain. At steady state; conductivity stands for salt, which it does within some per cent.
 *
 * @param feed c_in, conductivity at 25 °C of what is given, any unit (the same for all three)
 * @param drain c_drain, of the drain, above c_in
 * @param uptake c_up, of the salts in the water that plants take up, below c_in
 * @returns fraction
 * @example leachingFractionFromConductivity(3, 4.5, 2.4) // => 0.285714
 */
export function leachingFractionFromConductivity(feed: number, drain: number, uptake = 0): number {
  return (feed - uptake) / (drain - uptake);
}

/**
 * Conductivity of the drain where a share of what is given drains: c_drain = (c_in - (1 - LF) c_up)/LF. Symbols as for the fraction; below zero
 * where the plants would have to take up more salt than they are given.
 *
 * @param leachingFraction LF, above 0 up to 1
 */
export function drainConductivityFromLeaching(feed: number, leachingFraction: number, uptake = 0): number {
  return (feed - (1 - leachingFraction) * uptake) / leachingFraction;
}

/**
 * Conductivity that the salts have in the water that plants take up: c_up = (c_in - d c_drain)/(1 - d). Symbols as above; below zero where
 * more salt drains than is given.
 *
 * @param drainShare d, from 0 to below 1
 */
export function uptakeConductivityFromDrain(feed: number, drain: number, drainShare: number): number {
  return (feed - drainShare * drain) / (1 - drainShare);
}

/**
 * Leaching requirement of a soil under frequent irrigation: LR = EC_w/(5 EC_e - EC_w).
 *
 * The share of the water that has to pass below the roots to hold the saturation extract of the soil at what the crop stands.
 * It has no meaning where 5 EC_e is not above EC_w. As given in extension bulletins and FAO 29 (second-hand).
 * Source: Rhoades (1974).
 *
 * @param water EC_w, of the irrigation water, any unit
 * @param extract EC_e, of the saturation extract of the soil, in the same unit
 * @example leachingRequirementRhoades1974(2, 8) // => 0.0526316
 */
export function leachingRequirementRhoades1974(water: number, extract: number): number {
  return water / (5 * extract - water);
}
