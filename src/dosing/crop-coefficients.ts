/** How much a crop evaporates, as a multiple of short grass: while it is small, when it covers the ground, and at its end; on stakes where that is another; and its height, m. */
export interface CropCoefficients {
  readonly initial: number;
  readonly mid: number;
  readonly midOnStakes?: number;
  /** The middle of `endRange` where the source has a range. */
  readonly end: number;
  readonly endRange?: readonly [number, number];
  readonly height?: number;
}

/**
 * Single crop coefficients for the open field in a moist climate (lowest humidity 45 %, wind 2 m/s), from Table 12 of FAO-56 (pages 110 and 111).
 * Where it has no value of the crop for the start, that of its family is taken, as the source says.
 */
export const cropCoefficientsFao56 = {
  'small vegetables': { initial: 0.7, mid: 1.05, end: 0.95 },
  'lettuce': { initial: 0.7, mid: 1, end: 0.95, height: 0.3 },
  'green onion': { initial: 0.7, mid: 1, end: 1, height: 0.3 },
  'radish': { initial: 0.7, mid: 0.9, end: 0.85, height: 0.3 },
  'solanum family': { initial: 0.6, mid: 1.15, end: 0.8 },
  'aubergine': { initial: 0.6, mid: 1.05, end: 0.9, height: 0.8 },
  'sweet pepper': { initial: 0.6, mid: 1.05, midOnStakes: 1.15, end: 0.9, height: 0.7 },
  'tomato': { initial: 0.6, mid: 1.15, midOnStakes: 1.2, end: 0.8, endRange: [0.7, 0.9], height: 0.6 },
  'cucumber family': { initial: 0.5, mid: 1, end: 0.8 },
  'cucumber': { initial: 0.6, mid: 1, midOnStakes: 1.15, end: 0.75, height: 0.3 },
  'courgette': { initial: 0.5, mid: 0.95, end: 0.75, height: 0.3 },
  'sweet melon': { initial: 0.5, mid: 1.05, end: 0.75, height: 0.4 },
  'watermelon': { initial: 0.4, mid: 1, end: 0.75, height: 0.4 },
  'green bean': { initial: 0.5, mid: 1.05, midOnStakes: 1.15, end: 0.9, height: 0.4 },
  'strawberry': { initial: 0.4, mid: 0.85, end: 0.75, height: 0.2 },
} as const satisfies Readonly<Record<string, CropCoefficients>>;

/** Name of a crop of the table. */
export type CoefficientCrop = keyof typeof cropCoefficientsFao56;

/** Where a crop stands: small, covering the ground, the same on stakes, or at its end. */
export const cropStages = ['initial', 'mid', 'mid on stakes', 'end'] as const;

/**
 * Crop coefficient of the table by crop and stage; undefined on stakes where the table has no value for it.
 *
 * @example cropCoefficientFao56('strawberry', 'mid') // => 0.85
 */
export function cropCoefficientFao56(crop: CoefficientCrop, stage: (typeof cropStages)[number]): number | undefined {
  const row: CropCoefficients = cropCoefficientsFao56[crop];
  return row[stage === 'mid on stakes' ? 'midOnStakes' : stage];
}
