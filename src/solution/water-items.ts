import { nutrientForms, type NutrientForm, type NutrientFormKey } from './nutrient-forms.js';

/**
 * What an analysis of raw water states beside the forms that nutrients are stated in, a row each: whole ions, ions that no feed counts, and iron, which is
 * dissolved in a well as iron(II) and not as a chelate. Phosphate stands as it does in a feed, as dihydrogen phosphate.
 */
export const waterItems = {
  'NO3': { name: 'nitrate', counted: { N: 1, O: 3 }, carrier: 'NO3-' },
  'NH4': { name: 'ammonium', counted: { N: 1, H: 4 }, carrier: 'NH4+' },
  'NO2': { name: 'nitrite', counted: { N: 1, O: 2 }, carrier: 'NO2-' },
  'N-NO2': { name: 'nitrogen as nitrite', counted: { N: 1 }, carrier: 'NO2-' },
  'SO4': { name: 'sulfate', counted: { S: 1, O: 4 }, carrier: 'SO4 2-' },
  'PO4': { name: 'phosphate', counted: { P: 1, O: 4 }, carrier: 'H2PO4-' },
  'CO3': { name: 'carbonate', counted: { C: 1, O: 3 }, carrier: 'CO3 2-' },
  'SiO2': { name: 'silica', counted: { Si: 1, O: 2 }, carrier: 'H4SiO4' },
  'F': { name: 'fluoride', counted: { F: 1 }, carrier: 'F-' },
  'Fe': { name: 'iron', counted: { Fe: 1 }, carrier: 'Fe2+' },
} as const satisfies Readonly<Record<string, NutrientForm>>;

/** Key of what an analysis of raw water may state: `NO3` counts the whole ion, `N-NO3` its nitrogen. */
export type WaterItemKey = keyof typeof waterItems | NutrientFormKey;

/** Every key, the nutrient forms first. */
export const waterItemKeys = (): readonly WaterItemKey[] => [...new Set([...Object.keys(nutrientForms), ...Object.keys(waterItems)])] as WaterItemKey[];

/**
 * What the mass counts that an analysis of raw water states by a key, and what carries it there.
 *
 * @example waterItem('SO4') // => { name: 'sulfate', counted: { S: 1, O: 4 }, carrier: 'SO4 2-' }
 */
export function waterItem(key: WaterItemKey): NutrientForm {
  const raw: { readonly [K in WaterItemKey]?: NutrientForm } = waterItems;
  return raw[key] ?? nutrientForms[key as NutrientFormKey];
}
