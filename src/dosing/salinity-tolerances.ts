import type { SourceKey } from '../sources.js';

/** What a crop stands of salt in the saturation extract of a soil: ranges over the publications that the table brings together. */
export interface SalinityTolerance {
  /** Conductivity up to which nothing is lost, dS/m. */
  readonly threshold: readonly [lowest: number, highest: number];
  /** Yield lost for each dS/m above it, %. */
  readonly loss: readonly [lowest: number, highest: number];
  /** Moderately sensitive or sensitive. */
  readonly rating: 'MS' | 'S';
  readonly source: SourceKey;
}

/** Salt tolerance by crop: FAO 56, Table 23. */
export const salinityTolerances = {
  lettuce: { threshold: [1.3, 1.7], loss: [12, 12], rating: 'MS', source: 'fao56' },
  peppers: { threshold: [1.5, 1.7], loss: [12, 14], rating: 'MS', source: 'fao56' },
  tomato: { threshold: [0.9, 2.5], loss: [9, 9], rating: 'MS', source: 'fao56' },
  cucumber: { threshold: [1.1, 2.5], loss: [7, 13], rating: 'MS', source: 'fao56' },
  strawberry: { threshold: [1, 1.5], loss: [11, 33], rating: 'S', source: 'fao56' },
  spinach: { threshold: [2, 3.2], loss: [7.7, 16], rating: 'MS', source: 'fao56' },
  bean: { threshold: [1, 1], loss: [19, 19], rating: 'S', source: 'fao56' },
  celery: { threshold: [1.8, 2.5], loss: [6.2, 13], rating: 'MS', source: 'fao56' },
  broccoli: { threshold: [2.8, 2.8], loss: [9.2, 9.2], rating: 'MS', source: 'fao56' },
  cabbage: { threshold: [1, 1.8], loss: [9.8, 14], rating: 'MS', source: 'fao56' },
} as const satisfies Readonly<Record<string, SalinityTolerance>>;

/** A crop of the table of salt tolerances. */
export type SalinityCrop = keyof typeof salinityTolerances;

/** What a crop stands of salt. */
export const salinityToleranceOf = (crop: SalinityCrop): SalinityTolerance => salinityTolerances[crop];
