/**
 * Share of a blend that is drain, for a wanted conductivity before any fertilizer: x = (κ − κf)/(κd − κf), from 0 to 1.
 *
 * Conductivity is taken to add up, which is good to a few per cent between waters this thin. The drain has to be above the fresh water.
 *
 * @param target κ, wanted of the blend
 * @param fresh κf, of the fresh water
 * @param drain κd, of the drain
 * @example drainShareForConductivity(1.6, 0.5, 4) // => 0.314286
 */
export function drainShareForConductivity(target: number, fresh: number, drain: number): number {
  return Math.min(1, Math.max(0, (target - fresh) / (drain - fresh)));
}

/** Concentration of a blend: x cd + (1 − x) cf. */
export function blendedConcentration(drainInBlend: number, drain: number, fresh: number): number {
  return drainInBlend * drain + (1 - drainInBlend) * fresh;
}

/** What is to be added to a blend for a target: c − x cd − (1 − x) cf; below zero where the blend holds too much already. */
export function additionToBlend(target: number, drainInBlend: number, drain: number, fresh: number): number {
  return target - blendedConcentration(drainInBlend, drain, fresh);
}

/**
 * Shares of drain, least and most, at which a blend does not pass a concentration; undefined where it does at every share.
 *
 * @example drainSharesWithin(3, 8, 0.5) // => [0, 0.33333]
 */
export function drainSharesWithin(limit: number, drain: number, fresh: number): readonly [least: number, most: number] | undefined {
  if (Math.min(drain, fresh) > limit) return undefined;
  const crossing = (limit - fresh) / (drain - fresh);
  return [fresh > limit ? crossing : 0, drain > limit ? crossing : 1];
}
