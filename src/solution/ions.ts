import type { Element } from './atomic-weights.js';

/** How many atoms of each element a formula holds. */
export type Composition = { readonly [E in Element]?: number };

/** A dissolved ion or molecule. */
export interface DissolvedParticle {
  readonly name: string;
  /** Charge number, with sign. */
  readonly charge: number;
  readonly composition: Composition;
}

/**
 * The ions and neutral molecules that carry nutrients and salt in water, a row each.
 *
 * A key is the formula as printed, the charge last; a space parts a charge number from the digit of a formula (`SO4 2-`).
 * Chelates and citrate stand as they are at pH 5 to 6.5; their structures are from memory.
 */
export const ions = {
  'H+': { name: 'hydrogen ion', charge: 1, composition: { H: 1 } },
  'Na+': { name: 'sodium', charge: 1, composition: { Na: 1 } },
  'K+': { name: 'potassium', charge: 1, composition: { K: 1 } },
  'NH4+': { name: 'ammonium', charge: 1, composition: { N: 1, H: 4 } },
  'Ca2+': { name: 'calcium', charge: 2, composition: { Ca: 1 } },
  'Mg2+': { name: 'magnesium', charge: 2, composition: { Mg: 1 } },
  'Fe2+': { name: 'iron(II)', charge: 2, composition: { Fe: 1 } },
  'Mn2+': { name: 'manganese(II)', charge: 2, composition: { Mn: 1 } },
  'Zn2+': { name: 'zinc', charge: 2, composition: { Zn: 1 } },
  'Cu2+': { name: 'copper(II)', charge: 2, composition: { Cu: 1 } },
  'OH-': { name: 'hydroxide', charge: -1, composition: { O: 1, H: 1 } },
  'F-': { name: 'fluoride', charge: -1, composition: { F: 1 } },
  'Cl-': { name: 'chloride', charge: -1, composition: { Cl: 1 } },
  'NO2-': { name: 'nitrite', charge: -1, composition: { N: 1, O: 2 } },
  'NO3-': { name: 'nitrate', charge: -1, composition: { N: 1, O: 3 } },
  'HCO3-': { name: 'bicarbonate', charge: -1, composition: { H: 1, C: 1, O: 3 } },
  'CO3 2-': { name: 'carbonate', charge: -2, composition: { C: 1, O: 3 } },
  'HSO4-': { name: 'bisulfate', charge: -1, composition: { H: 1, S: 1, O: 4 } },
  'SO4 2-': { name: 'sulfate', charge: -2, composition: { S: 1, O: 4 } },
  'H2PO4-': { name: 'dihydrogen phosphate', charge: -1, composition: { H: 2, P: 1, O: 4 } },
  'HPO4 2-': { name: 'hydrogen phosphate', charge: -2, composition: { H: 1, P: 1, O: 4 } },
  'PO4 3-': { name: 'phosphate', charge: -3, composition: { P: 1, O: 4 } },
  'MoO4 2-': { name: 'molybdate', charge: -2, composition: { Mo: 1, O: 4 } },
  'FeEDTA-': { name: 'iron(III) chelate of EDTA', charge: -1, composition: { Fe: 1, C: 10, H: 12, N: 2, O: 8 } },
  'FeHDTPA-': { name: 'iron(III) chelate of DTPA', charge: -1, composition: { Fe: 1, C: 14, H: 19, N: 3, O: 10 } },
  'FeEDDHA-': { name: 'iron(III) chelate of EDDHA', charge: -1, composition: { Fe: 1, C: 18, H: 16, N: 2, O: 6 } },
  'FeHBED-': { name: 'iron(III) chelate of HBED', charge: -1, composition: { Fe: 1, C: 20, H: 20, N: 2, O: 6 } },
  'C6H6O7 2-': { name: 'hydrogen citrate', charge: -2, composition: { C: 6, H: 6, O: 7 } },
  'H3BO3': { name: 'boric acid', charge: 0, composition: { H: 3, B: 1, O: 3 } },
  'H4SiO4': { name: 'silicic acid', charge: 0, composition: { H: 4, Si: 1, O: 4 } },
  'CO(NH2)2': { name: 'urea', charge: 0, composition: { C: 1, O: 1, N: 2, H: 4 } },
} as const satisfies Readonly<Record<string, DissolvedParticle>>;

/** Key of an ion or molecule of the table. */
export type Ion = keyof typeof ions;
