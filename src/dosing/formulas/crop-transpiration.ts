/** Latent heat of water as crop formulas round it, J/kg. */
const latentHeat = 2.45e6;

/** Water given off, in m/s, from the latent heat that it takes, in W/m2: 1 L of water is 1 kg, and 2.45 MJ. */
export function evaporationFromLatentHeat(latentHeatFlux: number): number {
  return latentHeatFlux / latentHeat / 1000;
}

/** Share of the radiation that leaves take in, from the leaf area index and an extinction coefficient: 1 - exp(-k LAI). */
export function interceptedShare(leafAreaIndex: number, extinctionCoefficient: number): number {
  return 1 - Math.exp(-extinctionCoefficient * leafAreaIndex);
}

/**
 * Latent heat that a crop under cover takes for the radiation on it, in W/m2: A (1 - exp(-k LAI)) G.
 *
 * The first term of the model; k is 0.64 for tomato (Stanghellini 1987). Source: Baille et al. (1994), as in Katsoulas and Kittas (2011).
 *
 * @param radiation G, solar radiation above the crop, W/m2
 * @param radiationCoefficient A, 0.12 to 0.67 over nine ornamentals
 * @example radiationTermBaille1994(400, 3, 0.6, 0.64) // => 204.814
 */
export function radiationTermBaille1994(radiation: number, leafAreaIndex: number, radiationCoefficient: number, extinctionCoefficient: number): number {
  return radiationCoefficient * interceptedShare(leafAreaIndex, extinctionCoefficient) * radiation;
}

/**
 * Latent heat that a crop under cover takes for the dryness of the air, in W/m2: B LAI D.
 *
 * The second term of the model, the only one at night, then often with another B. Source: Baille et al. (1994), as in Katsoulas and Kittas (2011).
 *
 * @param deficit D, vapour pressure deficit, Pa
 * @param deficitCoefficient B, W m-2 Pa-1; 14e-3 to 37e-3 over nine ornamentals
 * @example deficitTermBaille1994(1200, 3, 14e-3) // => 50.4
 */
export function deficitTermBaille1994(deficit: number, leafAreaIndex: number, deficitCoefficient: number): number {
  return deficitCoefficient * leafAreaIndex * deficit;
}

/** Coefficients a, k and b (m) of tomato without soil, from memory. Source: Carmassi et al. (2007). */
export const tomatoUptakeCarmassi2007 = [0.946, 0.69, 0.188e-3] as const;

/**
 * Water that a fruiting crop under cover takes up in a day, in m (1 mm = 1 L/m2).
 *
 *   WU = a (1 - exp(-k LAI)) RAD/λ + b
 *
 * Fitted to tomato without soil. Form and quality of fit (n = 581, R² 0.853) were seen, the coefficients are from memory: pass your own.
 * Source: Carmassi et al. (2007).
 *
 * @param radiation RAD, inside the house, J/m2 in the day
 * @param coefficients a; k; b in m
 * @example waterUptakeCarmassi2007(10e6, 3) * 1000 // => 3.56199
 */
export function waterUptakeCarmassi2007(radiation: number, leafAreaIndex: number, [a, k, b]: readonly [number, number, number] = tomatoUptakeCarmassi2007): number {
  return a * interceptedShare(leafAreaIndex, k) * radiation / latentHeat / 1000 + b;
}

/**
 * Water that a crop takes up in a day for the radiation of the day, in m: f Rs.
 *
 * @param waterPerRadiation f, m3/J; 1.7 mL for each J/cm2 and m2 is 1.7e-10
 * @param radiation Rs, J/m2
 * @example transpirationFromRadiation(2e-10, 15e6) // => 3e-3
 */
export function transpirationFromRadiation(waterPerRadiation: number, radiation: number): number {
  return waterPerRadiation * radiation;
}

/**
 * Share of the radiation that becomes vapour, where a crop gives off so much water for it: f λ ρ.
 *
 * 1 is 4.08 mL for each J/cm2 and m2: radiation cannot evaporate more.
 *
 * @param waterPerRadiation f, m3/J
 * @example evaporatedShareOfRadiation(2e-10) // => 0.49
 */
export function evaporatedShareOfRadiation(waterPerRadiation: number): number {
  return waterPerRadiation * latentHeat * 1000;
}

/**
 * Evapotranspiration of a crop, in the unit of ETo: ETc = Kc ETo.
 *
 * Source: Allen et al. (1998), FAO-56, equation 58.
 */
export function cropEvapotranspirationFao56(referenceEvapotranspiration: number, cropCoefficient: number): number {
  return cropCoefficient * referenceEvapotranspiration;
}

/** Volume of water for each plant, in m3, from water on the area in m and plants for each m2. */
export function volumePerPlantFromDepth(depth: number, plantsPerSquareMetre: number): number {
  return depth / plantsPerSquareMetre;
}
