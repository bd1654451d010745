import { molarMassOfNutrientForm } from '../../solution/formulas/composition.js';
import { chargeBalanceOfIons, chargesOfIons, ionAmountsOfNutrients, nitrogenOfForms, type ChargeBalance, type IonAmounts, type NutrientMasses } from '../../solution/formulas/concentration.js';
import type { Ion } from '../../solution/ions.js';
import type { FeedForm } from './label-analysis.js';
import { contentOfProduct, type FormMasses, type Product } from './product-content.js';

/** A product and how much of it, kg. */
export type Portion = Product & { readonly mass: number };

/** What stands in the water after dissolving. */
export interface Feed {
  /** kg/m3 of every form. `N` is nitrogen of every form. */
  readonly massConcentrations: FormMasses;
  /** mol/m3 of every ion and molecule as it stands at pH 5 to 6. Acid left over when the alkalinity is used up stands as `H+`. */
  readonly amountConcentrations: IonAmounts;
  /** mol/m3 of charge, with sign. */
  readonly chargeConcentrations: IonAmounts;
  readonly chargeBalance: ChargeBalance;
  /** mol/m3 of charge, titrated to about pH 4.5; below zero where strong acid is left over. */
  readonly alkalinity: number;
}

/**
 * Concentrations after dissolving products in a volume of water: c = c_water + Σ mass · content / volume, for every nutrient form and every ion.
 *
 * `volume` is that of the finished feed; everything is taken to dissolve, and carbon dioxide set free by acid to leave. The charge of salts
 * balances of itself, so a difference in the charge balance comes from the analysis of the water, from labels, or from nitrogen of no stated form.
 *
 * @param volume m3
 * @param water kg/m3 of every form before; `HCO3` is its alkalinity stated as bicarbonate
 * @example dissolvePortions([{ salt: 'potassium-nitrate', purity: 1, mass: 0.1011023 }], 1).amountConcentrations; // => { 'K+': 1.0000, 'NO3-': 1.0000 }
 */
export function dissolvePortions(portions: readonly Portion[], volume: number, water: NutrientMasses = {}): Feed {
  const masses: { [F in FeedForm]?: number } = { ...water };
  const amounts: { [I in Ion]?: number } = { ...ionAmountsOfNutrients(water) };
  const nitrogen = nitrogenOfForms(water);
  if (nitrogen > 0) masses.N = nitrogen;
  for (const portion of portions) {
    const { forms, ions } = contentOfProduct(portion);
    for (const [form, share] of entries(forms)) masses[form] = (masses[form] ?? 0) + (share * portion.mass) / volume;
    for (const [ion, share] of entries(ions)) amounts[ion] = (amounts[ion] ?? 0) + (share * portion.mass) / volume;
  }

  const alkalinity = amounts['HCO3-'] ?? 0;
  if (alkalinity < 0) {
    delete amounts['HCO3-'];
    amounts['H+'] = -alkalinity;
  }
  if ('HCO3' in masses) masses.HCO3 = Math.max(0, alkalinity) * molarMassOfNutrientForm('HCO3');

  return {
    massConcentrations: masses,
    amountConcentrations: amounts,
    chargeConcentrations: chargesOfIons(amounts),
    chargeBalance: chargeBalanceOfIons(amounts),
    alkalinity,
  };
}

function entries<K extends string>(record: { readonly [key in K]?: number }): [K, number][] {
  return Object.entries(record) as [K, number][];
}
