import { dissolvedSolidsScales, type DissolvedSolidsScale } from '../dissolved-solids.js';

/** What a meter of a given scale shows as dissolved solids (kg/m3) at a conductivity (S/m at 25 °C). */
export function dissolvedSolidsFromConductivity(conductivity: number, scale: DissolvedSolidsScale): number {
  return (conductivity * dissolvedSolidsScales[scale].milligramsPerLitre) / 100;
}

/** Conductivity (S/m at 25 °C) behind a meter's dissolved solids (kg/m3) on a given scale. */
export function conductivityFromDissolvedSolids(dissolvedSolids: number, scale: DissolvedSolidsScale): number {
  return (dissolvedSolids * 100) / dissolvedSolidsScales[scale].milligramsPerLitre;
}
