import { atomicWeights, type Element } from '../atomic-weights.js';
import { ions, type Composition, type Ion } from '../ions.js';
import { nutrientForms, type NutrientFormKey } from '../nutrient-forms.js';
import { oxides, type Oxide } from '../oxides.js';

/**
 * Molar mass of a composition, kg/mol: the sum of atoms times standard atomic weight.
 *
 * Trusted to about five digits; the weights of S, Ca, Zn and Mo limit it.
 *
 * Source: Prohaska et al. 2022, Standard atomic weights of the elements 2021.
 *
 * @example molarMassOfComposition({ N: 1, O: 3 }) // => 0.062004
 */
export function molarMassOfComposition(composition: Composition): number {
  let sum = 0;
  for (const [element, atoms] of Object.entries(composition)) sum += atoms * Number(atomicWeights[element as Element]);
  return sum / 1000;
}

/** Molar mass of an ion or molecule of the table, kg/mol. */
export function molarMassOfIon(ion: Ion): number {
  return molarMassOfComposition(ions[ion].composition);
}

/** Mass that one mole of the carrier counts in a nutrient form, kg/mol: 0.014007 for nitrate nitrogen, 0.028014 for urea nitrogen. */
export function molarMassOfNutrientForm(form: NutrientFormKey): number {
  return molarMassOfComposition(nutrientForms[form].counted);
}

/**
 * Mass of the element in a unit mass of its oxide, a fraction: what a label figure is multiplied by.
 *
 * @example elementFractionOfOxide('P2O5') // => 0.43642…
 */
export function elementFractionOfOxide(oxide: Oxide): number {
  const { element, composition } = oxides[oxide];
  return massFractionOfElement(element, composition);
}

/**
 * Mass fraction of an element in a composition: atoms times atomic weight over molar mass.
 *
 * @example massFractionOfElement('N', { N: 1, O: 3 }) // => 0.22590
 */
export function massFractionOfElement(element: Element, composition: Composition): number {
  return molarMassOfComposition({ [element]: composition[element] ?? 0 }) / molarMassOfComposition(composition);
}
