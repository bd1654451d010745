import { dissolvedSolidsScales, type DissolvedSolidsScale } from '../dissolved-solids.js';

/** What a meter of a given scale shows as "ppm" of dissolved solids at a conductivity (S/m at 25 °C). */
export function dissolvedSolidsFromConductivity(conductivity: number, scale: DissolvedSolidsScale): number {
  return 10 * conductivity * dissolvedSolidsScales[scale].ppm;
}

/** Conductivity (S/m at 25 °C) behind the "ppm" of dissolved solids that a meter of a given scale shows. */
export function conductivityFromDissolvedSolids(dissolvedSolids: number, scale: DissolvedSolidsScale): number {
  return dissolvedSolids / (10 * dissolvedSolidsScales[scale].ppm);
}
