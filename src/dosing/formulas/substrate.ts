/**
 * Pore space of a substrate from its dry bulk density: 96.72 % - 0.038 % for each g/L.
 *
 * From 238 substrates; not for those with closed pores, such as perlite and pumice.
 * Source: Acta Horticulturae 294, abstract.
 *
 * @param dryDensity dry mass in the volume of the drained substrate, kg/m3
 * @returns fraction of the volume
 * @example poreSpaceFromDryDensity(100) // => 0.9292
 */
export function poreSpaceFromDryDensity(dryDensity: number): number {
  return 0.9672 - 0.00038 * dryDensity;
}

/**
 * Air of a drained substrate from its dry and its wet bulk density: 96.72 % + 0.062 % for each g/L dry - 100 % for each g/mL wet.
 *
 * What the pore space leaves beside the water, which is counted at 1 g/mL. Range and source as for the pore space; below zero where the
 * substrate would hold more than its pores.
 *
 * @param dryDensity kg/m3
 * @param wetDensity drained, kg/m3
 * @returns fraction of the volume
 * @example airSpaceFromDensities(100, 750) // => 0.2792
 */
export function airSpaceFromDensities(dryDensity: number, wetDensity: number): number {
  return 0.9672 + 0.00062 * dryDensity - 0.001 * wetDensity;
}
