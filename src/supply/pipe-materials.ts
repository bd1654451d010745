import type { SourceKey } from '../sources.js';

/** What a pipe wall is made of. */
export interface PipeMaterial {
  /** Modulus of elasticity near 20 °C, Pa. */
  readonly elasticModulus: number;
  /** Stress that the wall bears for 50 years at 20 °C, Pa, where its rating follows from its thickness. */
  readonly designStress?: number;
  readonly source: SourceKey;
}

/**
 * Pipe materials by name. Plastics soften in warmth and stiffen under a quick load: their moduli are middles of 30 % either way.
 * The modulus and the stress of PE 80 are from memory, within the sheet's 750 to 1250 MPa and its nominal pressures; soft PE and copper are common practice.
 */
export const pipeMaterials = {
  'PE 100': { elasticModulus: 1e9, designStress: 8e6, source: 'pe-pressure-pipe' },
  'PE 80': { elasticModulus: 0.8e9, designStress: 6.3e6, source: 'pe-pressure-pipe' },
  'soft PE': { elasticModulus: 0.2e9, source: 'common-practice' },
  'PVC': { elasticModulus: 2.6e9, source: 'surge-exercise-pvc' },
  'copper': { elasticModulus: 120e9, source: 'common-practice' },
  'steel': { elasticModulus: 207e9, source: 'subramanya' },
} as const satisfies Readonly<Record<string, PipeMaterial>>;

/** Name of a pipe material of the table. */
export type PipeMaterialName = keyof typeof pipeMaterials;
