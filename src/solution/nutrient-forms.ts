import type { Composition, Ion } from './ions.js';

/** What a grower's analysis counts, and what carries it in the water. */
export interface NutrientForm {
  readonly name: string;
  /** What the mass counts, in one mole of the carrier. */
  readonly counted: Composition;
  /** The ion or molecule that carries it at the pH of a feed (5 to 6.5). */
  readonly carrier: Ion;
}

/**
 * The forms in which nutrients are stated, a row each: masses count the element (for bicarbonate, the ion), amounts count the carrier.
 *
 * Iron stands for a chelate with one negative charge, as the sodium salts of EDTA, DTPA, EDDHA and HBED release it. A mole of urea carries two of
 * nitrogen.
 */
export const nutrientForms = {
  'N-NO3': { name: 'nitrogen as nitrate', counted: { N: 1 }, carrier: 'NO3-' },
  'N-NH4': { name: 'nitrogen as ammonium', counted: { N: 1 }, carrier: 'NH4+' },
  'N-urea': { name: 'nitrogen as urea', counted: { N: 2 }, carrier: 'CO(NH2)2' },
  'P': { name: 'phosphorus', counted: { P: 1 }, carrier: 'H2PO4-' },
  'K': { name: 'potassium', counted: { K: 1 }, carrier: 'K+' },
  'Ca': { name: 'calcium', counted: { Ca: 1 }, carrier: 'Ca2+' },
  'Mg': { name: 'magnesium', counted: { Mg: 1 }, carrier: 'Mg2+' },
  'S': { name: 'sulfur', counted: { S: 1 }, carrier: 'SO4 2-' },
  'Cl': { name: 'chlorine', counted: { Cl: 1 }, carrier: 'Cl-' },
  'Na': { name: 'sodium', counted: { Na: 1 }, carrier: 'Na+' },
  'Fe': { name: 'iron', counted: { Fe: 1 }, carrier: 'FeEDTA-' },
  'Mn': { name: 'manganese', counted: { Mn: 1 }, carrier: 'Mn2+' },
  'Zn': { name: 'zinc', counted: { Zn: 1 }, carrier: 'Zn2+' },
  'Cu': { name: 'copper', counted: { Cu: 1 }, carrier: 'Cu2+' },
  'B': { name: 'boron', counted: { B: 1 }, carrier: 'H3BO3' },
  'Mo': { name: 'molybdenum', counted: { Mo: 1 }, carrier: 'MoO4 2-' },
  'Si': { name: 'silicon', counted: { Si: 1 }, carrier: 'H4SiO4' },
  'HCO3': { name: 'bicarbonate', counted: { H: 1, C: 1, O: 3 }, carrier: 'HCO3-' },
} as const satisfies Readonly<Record<string, NutrientForm>>;

/** Key of a nutrient form of the table. */
export type NutrientFormKey = keyof typeof nutrientForms;
