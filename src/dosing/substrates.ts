import type { SourceKey } from '../sources.js';

/** What a substrate holds when it has been watered and has drained, as fractions of its volume. */
export interface Substrate {
  /** All pores: water and air together. */
  readonly pores: number;
  /** Water at container capacity, -1 kPa. */
  readonly water: number;
  /** Of it, what plants take up easily, -1 to -5 kPa; where known. */
  readonly easy?: number;
  /** What the figures are. */
  readonly basis: string;
  readonly source: SourceKey;
}

/** Figures to begin with: middles of wide ranges. A bag's own, by weighing, are better. */
export const substrates = {
  coir: { pores: 0.94, water: 0.65, easy: 0.26, basis: 'the middle of seven samples of coir dust (water 50 to 81 %, easily available 18 to 35 %); coarse coir holds far less', source: 'vargas-tapia-2008' },
  'stone wool': { pores: 0.95, water: 0.8, basis: 'a drained slab by common practice; what is easily available of it is not known here', source: 'common-practice' },
  peat: { pores: 0.93, water: 0.73, easy: 0.27, basis: 'from memory, the middle of sphagnum peats (air 10 to 30 %, easily available 20 to 35 %)', source: 'de-boodt-verdonck-1972' },
  perlite: { pores: 0.9, water: 0.525, easy: 0.125, basis: 'from memory, the middle of grades of 0 to 5 mm (air 25 to 50 %, easily available 5 to 20 %)', source: 'common-practice' },
} as const satisfies Readonly<Record<string, Substrate>>;

/** A substrate of the table. */
export type SubstrateName = keyof typeof substrates;

/** What the table says of a substrate. */
export const substrateOf = (name: SubstrateName): Substrate => substrates[name];
