import type { SourceKey } from '../sources.js';

/** What a wall is made of. */
export interface WallMaterial {
  /** Thermal conductivity, W/(m K). */
  readonly conductivity: number;
  /** kg/m³ */
  readonly density?: number;
  /** J/(kg K) */
  readonly specificHeat?: number;
  readonly source: SourceKey;
}

/** Materials of barrels and covers by name; design values of the standard, as the program ht carries them. */
export const wallMaterials = {
  'HDPE': { conductivity: 0.5, density: 980, specificHeat: 1800, source: 'en-12524' },
  'LDPE': { conductivity: 0.33, source: 'en-12524' },
  'polypropylene': { conductivity: 0.22, source: 'en-12524' },
  'PVC': { conductivity: 0.17, source: 'en-12524' },
  'polycarbonate': { conductivity: 0.2, density: 1200, specificHeat: 1200, source: 'en-12524' },
  'acrylic': { conductivity: 0.18, source: 'en-12524' },
  'glass': { conductivity: 1, density: 2500, specificHeat: 750, source: 'en-12524' },
  'steel': { conductivity: 50, density: 7800, specificHeat: 450, source: 'en-12524' },
  'stainless steel': { conductivity: 17, source: 'en-12524' },
  'aluminium': { conductivity: 160, source: 'en-12524' },
} as const satisfies Readonly<Record<string, WallMaterial>>;

/** Name of a wall material of the table. */
export type WallMaterialName = keyof typeof wallMaterials;
