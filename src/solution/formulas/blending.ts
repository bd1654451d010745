import { molarMassOfNutrientForm } from './composition.js';
import type { IonAmounts, NutrientMasses } from './concentration.js';
import type { Ion } from '../ions.js';
import { nutrientForms, type NutrientFormKey } from '../nutrient-forms.js';
import { alkalinityOfIons } from './totals.js';

/** A water or a feed and how much of it there is. */
export interface BlendPart {
  /** m3. */
  readonly volume: number;
  /** mol/m3. */
  readonly amounts: IonAmounts;
}

/**
 * Amounts of ions (mol/m3) where several waters or feeds are poured together: Σ V c / Σ V, for every ion.
 *
 * Volumes are taken to add up (feeds and waters do within 0.1 %), and every ion to stay what it is: what acid and bicarbonate do to each other
 * shows in the alkalinity, and what settles out is not looked at.
 *
 * @example blendAmounts([{ volume: 1, amounts: { 'K+': 4 } }, { volume: 3, amounts: { 'Ca2+': 2 } }]) // => { 'K+': 1, 'Ca2+': 1.5 }
 */
export function blendAmounts(parts: readonly BlendPart[]): IonAmounts {
  const volume = parts.reduce((sum, part) => sum + part.volume, 0);
  const blended: { [I in Ion]?: number } = {};
  for (const part of parts) {
    for (const [ion, amount] of Object.entries(part.amounts) as [Ion, number][]) blended[ion] = (blended[ion] ?? 0) + (part.volume * amount) / volume;
  }
  return blended;
}

/** Temperature (K) where waters are poured together, from their volumes (m3) and temperatures (K): Σ V T / Σ V. No heat to or from the vessel. */
export function blendTemperature(parts: readonly { readonly volume: number; readonly temperature: number }[]): number {
  const volume = parts.reduce((sum, part) => sum + part.volume, 0);
  return parts.reduce((sum, part) => sum + (part.volume * part.temperature) / volume, 0);
}

/** Ions that count as a form without being its carrier. */
const countedAs: { readonly [I in Ion]?: NutrientFormKey } = {
  'HPO4 2-': 'P', 'PO4 3-': 'P', 'HSO4-': 'S', 'Fe2+': 'Fe', 'FeHDTPA-': 'Fe', 'FeEDDHA-': 'Fe', 'FeHBED-': 'Fe',
};

/** The nutrient form that an ion or molecule counts as; undefined for those that none stands for, and for those that only make alkalinity. */
export function nutrientFormOfIon(ion: Ion): NutrientFormKey | undefined {
  if (ion === 'HCO3-') return undefined;
  return countedAs[ion] ?? (Object.keys(nutrientForms) as NutrientFormKey[]).find((form) => nutrientForms[form].carrier === ion);
}

/**
 * Masses that nutrient forms count (kg/m3), from the amounts of ions and molecules (mol/m3): phosphate of all kinds is `P`, every iron `Fe`, and
 * `HCO3` the alkalinity stated as bicarbonate, below zero where acid is left over. Fluoride, nitrite and citrate have no form and are not counted.
 *
 * @example nutrientMassesOfIons({ 'K+': 2, 'HPO4 2-': 1 }) // => { K: 0.0781966, P: 0.030973762, HCO3: 0.061016 }
 */
export function nutrientMassesOfIons(amounts: IonAmounts): NutrientMasses {
  const masses: { [F in NutrientFormKey]?: number } = {};
  for (const [ion, amount] of Object.entries(amounts) as [Ion, number][]) {
    const form = nutrientFormOfIon(ion);
    if (form) masses[form] = (masses[form] ?? 0) + amount * molarMassOfNutrientForm(form);
  }
  const alkalinity = alkalinityOfIons(amounts);
  return alkalinity === 0 ? masses : { ...masses, HCO3: alkalinity * molarMassOfNutrientForm('HCO3') };
}
