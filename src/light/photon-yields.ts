import type { SourceKey } from '../sources.js';

/** How many photons that plants use, in µmol, a joule brings: of all its radiation, or of that from 400 to 700 nm (`of: 'light'`). */
export interface PhotonYield {
  readonly photonYield: number;
  readonly of: 'radiation' | 'light';
  readonly source: SourceKey;
  readonly mark: 'second-hand' | 'calculated' | 'from memory';
}

/** Photons for energy, by kind of light. Sunlight at the ground varies from 1.9 to 2.3 µmol/J with sky and season. */
export const photonYields = {
  'sunlight': { photonYield: 2.06, of: 'radiation', source: 'mccree-1972', mark: 'calculated' },
  'light of the sun': { photonYield: 4.57, of: 'light', source: 'mccree-1972', mark: 'second-hand' },
  'metal halide': { photonYield: 4.59, of: 'light', source: 'thimijan-heins-1983', mark: 'from memory' },
  'high-pressure sodium': { photonYield: 4.98, of: 'light', source: 'thimijan-heins-1983', mark: 'from memory' },
  'low-pressure sodium': { photonYield: 4.92, of: 'light', source: 'thimijan-heins-1983', mark: 'from memory' },
  'incandescent': { photonYield: 5.00, of: 'light', source: 'thimijan-heins-1983', mark: 'from memory' },
  'cool white fluorescent': { photonYield: 4.59, of: 'light', source: 'thimijan-heins-1983', mark: 'from memory' },
} as const satisfies Readonly<Record<string, PhotonYield>>;

/** Photons for energy of a kind of light of the table, in µmol/J. */
export const photonYieldOf = (light: keyof typeof photonYields): number => photonYields[light].photonYield;
