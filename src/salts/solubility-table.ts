import type { SourceKey } from '../sources.js';
import type { SaltKey } from './salt-table.js';

/** Temperatures of `saturatedMassPercents`, °C. */
export const solubilityTemperatures = [0, 10, 20, 25, 30, 40] as const;

/**
 * Anhydrous salt in its saturated solution, per cent of the mass of the solution, a row each over `solubilityTemperatures`. What lies at the bottom
 * is a hydrate for some, another one at the two ends of the row.
 *
 * Source: CRC Handbook of Chemistry and Physics, 98th edition, Aqueous solubility of inorganic compounds at various temperatures.
 */
export const saturatedMassPercents = {
  'Ca(NO3)2': [50.1, 53.1, 56.7, 59, 60.9, 65.4],
  'KNO3': [12, 17.6, 24.2, 27.7, 31.3, 38.6],
  'KH2PO4': [11.74, 14.91, 18.25, 19.97, 21.77, 25.28],
  'K2HPO4': [57, 59.1, 61.5, 62.7, 64.1, 67.7],
  'K2SO4': [7.11, 8.46, 9.95, 10.7, 11.4, 12.9],
  'KCl': [21.74, 23.61, 25.39, 26.22, 27.04, 28.59],
  'MgSO4': [18.2, 21.7, 25.1, 26.3, 28.2, 30.9],
  'Mg(NO3)2': [38.4, 39.5, 40.8, 41.6, 42.4, 44.1],
  'NH4NO3': [54, 60.1, 65.5, 68, 70.3, 74.3],
  'NH4H2PO4': [17.8, 22, 26.4, 28.8, 31.2, 36.2],
  '(NH4)2HPO4': [36.4, 38.2, 40, 41, 42, 44.1],
  '(NH4)2SO4': [41.3, 42.1, 42.9, 43.3, 43.8, 44.7],
  'CaCl2': [36.7, 39.19, 42.13, 44.83, 49.12, 52.85],
  'NaCl': [26.28, 26.32, 26.41, 26.45, 26.52, 26.67],
  'NaNO3': [42.2, 44.4, 46.6, 47.7, 48.8, 51],
  'NaH2PO4': [36.54, 41.07, 46, 48.68, 51.54, 57.89],
  'KOH': [48.7, 50.8, 53.2, 54.7, 56.1, 57.9],
  'KHCO3': [18.62, 21.73, 24.92, 26.6, 28.13, 31.32],
  'K2CO3': [51.3, 51.7, 52.3, 52.7, 53.1, 54],
  'FeSO4': [13.5, 17, 20.8, 22.8, 24.8, 28.8],
  'MnSO4': [34.6, 37.3, 38.6, 38.9, 38.9, 37.7],
  'ZnSO4': [29.1, 32, 35, 36.6, 38.2, 41.3],
  'CuSO4': [12.4, 14.4, 16.7, 18, 19.3, 22.2],
  'H3BO3': [2.61, 3.57, 4.77, 5.48, 6.27, 8.1],
  'Na2B4O7': [1.23, 1.71, 2.5, 3.07, 3.82, 6.02],
  'Na2MoO4': [30.6, 38.8, 39.4, 39.4, 39.8, 40.3],
} as const satisfies Readonly<Record<string, readonly number[]>>;

/** A salt whose solubility is known less well than a handbook's. */
export interface RoughSolubility {
  /** °C, and kg of the product as it stands that a kilogram of water dissolves; held at the ends. */
  readonly points: readonly (readonly [temperature: number, solubility: number])[];
  readonly source: SourceKey;
  readonly fromMemory?: true;
}

/**
 * Solubilities from a trade table, from memory or of common practice, a row each: to be overridden by what a product's data sheet says.
 * Those from memory are printed per 100 mL of solution or of water, which the memory does not tell; they are taken as of water.
 */
export const roughSolubilities = {
  'urea': { points: [[5, 0.78], [10, 0.85], [20, 1.06], [25, 1.2]], source: 'common-practice' },
  'calcium-ammonium-nitrate-decahydrate': { points: [[20, 1]], source: 'common-practice' },
  'citric-acid-anhydrous': { points: [[10, 1.17], [20, 1.48], [30, 1.81]], source: 'common-practice', fromMemory: true },
  'citric-acid-monohydrate': { points: [[10, 1.17], [20, 1.48], [30, 1.81]], source: 'common-practice', fromMemory: true },
  'ammonium-heptamolybdate-tetrahydrate': { points: [[20, 0.43]], source: 'common-practice', fromMemory: true },
} as const satisfies { readonly [S in SaltKey]?: RoughSolubility };

/** Acids, which come as liquids and mix with water, and silicate, which is sold as a solution only. */
export const soldAsLiquids: readonly SaltKey[] = ['phosphoric-acid', 'nitric-acid', 'sulfuric-acid', 'potassium-metasilicate'];
