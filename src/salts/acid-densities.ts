import type { SaltKey } from './salt-table.js';

/** How dense a liquid is over its strength. */
export interface LiquidDensities {
  /** c0 to c4 of the equation of Laliberté and Cooper. */
  readonly coefficients: readonly [c0: number, c1: number, c2: number, c3: number, c4: number];
  /** Mass fraction up to which it was fitted. */
  readonly strongest: number;
  /** Temperatures, K, over which it was fitted. */
  readonly temperatures: readonly [lowest: number, highest: number];
  /** Stronger than that at 20 °C: mass fraction and kg/m3. */
  readonly stronger: readonly (readonly [massFraction: number, density: number])[];
}

/**
 * Acids and lye that are sold as liquids, a row each. Coefficients: Laliberté 2009, as a public program carries them. What is stronger than
 * those were fitted for is from memory, of handbooks of chemical engineering; only pure sulfuric acid (1830.5) was seen.
 */
export const liquidDensities = {
  'nitric-acid': {
    coefficients: [0.272070788161643, -0.399605969016834, -2.33691977745914, 0.00662112384275969, -3089.01794099058], strongest: 0.7, temperatures: [263.15, 368.15],
    stronger: [[0.75, 1433.7], [0.8, 1452.1], [0.85, 1468.6], [0.9, 1482.6], [0.95, 1493.2], [1, 1512.9]],
  },
  'phosphoric-acid': {
    coefficients: [1288.25499332174, -4126.67487464815, -4.64682626086799, 0.00466168016728373, -944.459685828192], strongest: 0.85, temperatures: [289, 354.55],
    stronger: [[0.9, 1746], [0.94, 1794], [0.98, 1844], [1, 1870]],
  },
  'sulfuric-acid': {
    coefficients: [70.8395152347122, 142.352693909248, 0.68779459618793, 0.00649299683206703, 1667.23864629522], strongest: 0.78, temperatures: [262, 348.15],
    stronger: [[0.8, 1727.2], [0.85, 1778.6], [0.9, 1814.4], [0.93, 1827.9], [0.95, 1833.7], [0.96, 1835.5], [0.98, 1836.1], [1, 1830.5]],
  },
  'potassium-hydroxide': {
    coefficients: [821.119043254761, 1043.20173374381, 0.112873330222752, 0.00124023636407386, 539.630388368877], strongest: 0.51, temperatures: [277.15, 368.15],
    stronger: [],
  },
} as const satisfies { readonly [S in SaltKey]?: LiquidDensities };

/** Key of a liquid whose density is known. */
export type LiquidKey = keyof typeof liquidDensities;
