/**
 * Yield in a saline soil as a share of the one without salt: Ya/Ym = 1 - b (EC_e - threshold), and 1 up to the threshold, 0 where the line has come down to it.
 *
 * Range: to threshold + 0.5/b, half the yield; beyond, the straight line is a guess. For the saturation extract of a soil, not for drain water.
 * Source: Allen et al. (1998), FAO 56, eq. 89.
 *
 * @param extract EC_e, conductivity of the saturation extract
 * @param threshold of the crop, in the same unit
 * @param loss b, share of the yield lost for each unit above the threshold
 * @example relativeYieldFao56(2.5, 1.3, 0.12) // => 0.856
 */
export function relativeYieldFao56(extract: number, threshold: number, loss: number): number {
  return Math.min(1, Math.max(0, 1 - loss * (extract - threshold)));
}

/**
 * What salt leaves of the evapotranspiration: Ks = 1 - b/Ky (EC_e - threshold), 1 up to the threshold and never below 0.
 *
 * Range: as for the yield, in soil that is otherwise moist enough. Source: Allen et al. (1998), FAO 56, eq. 91.
 *
 * @param yieldResponse Ky, how much of the yield goes with a share of the evapotranspiration
 */
export function salinityStressFao56(extract: number, threshold: number, loss: number, yieldResponse: number): number {
  return relativeYieldFao56(extract, threshold, loss / yieldResponse);
}
