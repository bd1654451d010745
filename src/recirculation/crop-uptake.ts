import type { IonAmounts } from '../solution/formulas/concentration.js';
import type { SourceKey } from '../sources.js';

/** Crops of the tables. */
export const recirculatedCrops = ['tomato', 'cucumber', 'pepper', 'lettuce', 'chrysanthemum', 'rose', 'gerbera'] as const;

/** Crop of the tables. */
export type RecirculatedCrop = (typeof recirculatedCrops)[number];

/** Who says what a crop takes up of salt and bears. */
export type CropSaltSource = Extract<SourceKey, 'combrink-2016' | 'sonneveld-voogt-2009'>;

/** What a crop takes up of salt with its water, and what it bears of it in the root zone, mmol/L; undefined where the source says nothing of it. */
export interface CropSalt {
  readonly crop: RecirculatedCrop;
  readonly sodiumUptake: number;
  readonly chlorideUptake?: number;
  readonly sodiumLimit: number;
  readonly chlorideLimit?: number;
  readonly source: CropSaltSource;
  readonly mark: 'seen' | 'from memory';
}

/**
 * Salt by crop, a row each; calculations take the first row of a crop. The sources disagree by up to a third, so measure yours: in steady drain,
 * what a crop takes up is what the supply brings less what the drain carries off.
 *
 * The row of tomato stood displaced in the copy that was read and is inferred from what was left for it. The rows of Sonneveld and Voogt are from memory.
 */
export const cropSalts: readonly CropSalt[] = [
  { crop: 'tomato', sodiumUptake: 1.0, chlorideUptake: 1.2, sodiumLimit: 10, chlorideLimit: 15, source: 'combrink-2016', mark: 'seen' },
  { crop: 'cucumber', sodiumUptake: 1.2, chlorideUptake: 2.0, sodiumLimit: 8, chlorideLimit: 10, source: 'combrink-2016', mark: 'seen' },
  { crop: 'pepper', sodiumUptake: 0.8, chlorideUptake: 1.0, sodiumLimit: 8, chlorideLimit: 12, source: 'combrink-2016', mark: 'seen' },
  { crop: 'lettuce', sodiumUptake: 1.5, chlorideUptake: 2.0, sodiumLimit: 8, chlorideLimit: 15, source: 'combrink-2016', mark: 'seen' },
  { crop: 'chrysanthemum', sodiumUptake: 0.3, chlorideUptake: 0.9, sodiumLimit: 6, chlorideLimit: 8, source: 'combrink-2016', mark: 'seen' },
  { crop: 'rose', sodiumUptake: 0.3, chlorideUptake: 1.0, sodiumLimit: 6, chlorideLimit: 8, source: 'combrink-2016', mark: 'seen' },
  { crop: 'gerbera', sodiumUptake: 0.4, chlorideUptake: 1.5, sodiumLimit: 10, chlorideLimit: 10, source: 'combrink-2016', mark: 'seen' },
  { crop: 'tomato', sodiumUptake: 0.9, sodiumLimit: 8, source: 'sonneveld-voogt-2009', mark: 'from memory' },
  { crop: 'pepper', sodiumUptake: 0.3, sodiumLimit: 6, source: 'sonneveld-voogt-2009', mark: 'from memory' },
  { crop: 'cucumber', sodiumUptake: 0.9, sodiumLimit: 6, source: 'sonneveld-voogt-2009', mark: 'from memory' },
];

/** Nutrients that a crop takes up with its water, mmol/L: make-up solutions of closed systems, all from memory. They change with light, stage and strength of the feed. */
export const cropNutrientUptakes: { readonly [C in RecirculatedCrop]?: IonAmounts } = {
  tomato: { 'NH4+': 1.0, 'K+': 6.5, 'Ca2+': 2.75, 'Mg2+': 1.0, 'NO3-': 10.75, 'SO4 2-': 1.5, 'H2PO4-': 1.25 },
  cucumber: { 'NH4+': 1.0, 'K+': 6.5, 'Ca2+': 2.75, 'Mg2+': 1.0, 'NO3-': 11.75, 'SO4 2-': 1.0, 'H2PO4-': 1.25 },
  pepper: { 'NH4+': 0.5, 'K+': 5.75, 'Ca2+': 3.5, 'Mg2+': 1.125, 'NO3-': 12.5, 'SO4 2-': 1.0, 'H2PO4-': 1.0 },
};

/** What a crop takes up with its water by the tables, mmol/L; its salt by one of the sources, the first where none is named. */
export function cropUptakes(crop: RecirculatedCrop, source?: CropSaltSource): IonAmounts {
  const { sodiumUptake, chlorideUptake } = saltOf(crop, source);
  return { ...cropNutrientUptakes[crop], 'Na+': sodiumUptake, ...(chlorideUptake !== undefined && { 'Cl-': chlorideUptake }) };
}

/** What a crop bears in its root zone by the tables, mmol/L; by one of the sources, the first where none is named. */
export function cropLimits(crop: RecirculatedCrop, source?: CropSaltSource): IonAmounts {
  const { sodiumLimit, chlorideLimit } = saltOf(crop, source);
  return { 'Na+': sodiumLimit, ...(chlorideLimit !== undefined && { 'Cl-': chlorideLimit }) };
}

function saltOf(crop: RecirculatedCrop, source: CropSaltSource | undefined): CropSalt {
  const row = cropSalts.find((one) => one.crop === crop && (source === undefined || one.source === source));
  if (!row) throw new RangeError(`${source} has no row of ${crop}`);
  return row;
}
