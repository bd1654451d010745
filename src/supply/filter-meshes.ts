import type { SourceKey } from '../sources.js';

/** Opening of a mesh, m, by its number of wires to the inch. */
export interface FilterMesh {
  readonly opening: number;
  readonly source: SourceKey;
}

/** Meshes of the standard for test sieves. Makers weave with other wires: a mesh of 40 may let through 307 or 435 µm, so go by the opening where it is stated. */
export const filterMeshes = {
  '40': { opening: 425e-6, source: 'astm-e11' },
  '45': { opening: 355e-6, source: 'astm-e11' },
  '50': { opening: 300e-6, source: 'astm-e11' },
  '60': { opening: 250e-6, source: 'astm-e11' },
  '70': { opening: 212e-6, source: 'astm-e11' },
  '80': { opening: 180e-6, source: 'astm-e11' },
  '100': { opening: 150e-6, source: 'astm-e11' },
  '120': { opening: 125e-6, source: 'astm-e11' },
  '140': { opening: 106e-6, source: 'astm-e11' },
  '170': { opening: 90e-6, source: 'astm-e11' },
  '200': { opening: 75e-6, source: 'astm-e11' },
  '230': { opening: 63e-6, source: 'astm-e11' },
  '270': { opening: 53e-6, source: 'astm-e11' },
  '325': { opening: 45e-6, source: 'astm-e11' },
  '400': { opening: 38e-6, source: 'astm-e11' },
} as const satisfies Readonly<Record<string, FilterMesh>>;

/** Number of a mesh of the table. */
export type MeshNumber = keyof typeof filterMeshes;
