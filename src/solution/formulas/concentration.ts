import { ions, type Ion } from '../ions.js';
import { nutrientForms, type NutrientFormKey } from '../nutrient-forms.js';
import { molarMassOfComposition, molarMassOfIon, molarMassOfNutrientForm } from './composition.js';

/** Amounts of ions, in one unit throughout (mol/m3 or mol/kg); what is not named is absent. */
export type IonAmounts = { readonly [I in Ion]?: number };

/** Amount of the carrier (mol/m3) from the mass a nutrient form counts (kg/m3): c = mass / molar mass. */
export function amountFromNutrientMass(form: NutrientFormKey, massConcentration: number): number {
  return massConcentration / molarMassOfNutrientForm(form);
}

/** Mass a nutrient form counts (kg/m3) from the amount of its carrier (mol/m3). */
export function nutrientMassFromAmount(form: NutrientFormKey, amountConcentration: number): number {
  return amountConcentration * molarMassOfNutrientForm(form);
}

/** Nitrogen of every form together, in the unit of the masses. */
export function nitrogenOfForms({ 'N-NO3': nitrate = 0, 'N-NH4': ammonium = 0, 'N-urea': urea = 0 }: NutrientMasses): number {
  return nitrate + ammonium + urea;
}

/** Masses that nutrient forms count, in one unit throughout; what is not named is absent. */
export type NutrientMasses = { readonly [F in NutrientFormKey]?: number };

/**
 * Amounts of the ions and molecules (mol/m3) that carry nutrients, from the masses that the forms count (kg/m3).
 *
 * @example ionAmountsOfNutrients({ K: 0.0390983, 'N-NO3': 0.028014 }) // => { 'K+': 1, 'NO3-': 2 }
 */
export function ionAmountsOfNutrients(masses: NutrientMasses): IonAmounts {
  const amounts: { [I in Ion]?: number } = {};
  for (const [form, mass] of Object.entries(masses) as [NutrientFormKey, number | undefined][]) {
    if (mass !== undefined) amounts[nutrientForms[form].carrier] = amountFromNutrientMass(form, mass);
  }
  return amounts;
}

/** Amount (mol/m3) from the mass of a whole ion or molecule (kg/m3), as a water analysis states nitrate or sulfate. */
export function amountFromIonMass(ion: Ion, massConcentration: number): number {
  return massConcentration / molarMassOfIon(ion);
}

/** Mass of a whole ion or molecule (kg/m3) from its amount (mol/m3). */
export function ionMassFromAmount(ion: Ion, amountConcentration: number): number {
  return amountConcentration * molarMassOfIon(ion);
}

/** Charge (mol of charge per m3, which is meq/L), with sign, from the amount of an ion (mol/m3). */
export function chargeFromIonAmount(ion: Ion, amountConcentration: number): number {
  return amountConcentration * ions[ion].charge;
}

/** Charges (mol of charge per m3), with sign, from the amounts of ions (mol/m3); what carries none is not named. */
export function chargesOfIons(amounts: IonAmounts): IonAmounts {
  const charges = Object.entries(amounts).map(([ion, amount]) => [ion, chargeFromIonAmount(ion as Ion, amount)] as const);
  return Object.fromEntries(charges.filter(([, charge]) => charge !== 0));
}

/** Amount of an ion (mol/m3) from its charge with sign (mol of charge per m3). A neutral molecule has no answer: NaN. */
export function ionAmountFromCharge(ion: Ion, chargeConcentration: number): number {
  const { charge } = ions[ion];
  return charge === 0 ? NaN : chargeConcentration / charge;
}

/** Sums of positive and negative charge in a solution, and how far they miss each other. */
export interface ChargeBalance {
  /** Charge of the cations, in the unit of the amounts times the charge number (meq/L for mol/m3). */
  readonly cations: number;
  /** Charge of the anions, counted positive. */
  readonly anions: number;
  /** Cations minus anions. */
  readonly imbalance: number;
  /** Imbalance over the sum of both, a fraction; zero where there are no ions. A complete analysis is within 0.05. */
  readonly relativeImbalance: number;
}

/** Charge balance of a solution from the amounts of its ions. */
export function chargeBalanceOfIons(amounts: IonAmounts): ChargeBalance {
  let cations = 0;
  let anions = 0;
  for (const [ion, amount] of Object.entries(amounts)) {
    const charge = amount * ions[ion as Ion].charge;
    if (charge > 0) cations += charge;
    else anions -= charge;
  }
  const imbalance = cations - anions;
  return { cations, anions, imbalance, relativeImbalance: cations + anions === 0 ? 0 : imbalance / (cations + anions) };
}

/** Ionic strength, half the sum of amount times charge squared, in the unit of the amounts. Ion pairs are not looked for. */
export function ionicStrengthOfIons(amounts: IonAmounts): number {
  let sum = 0;
  for (const [ion, amount] of Object.entries(amounts)) sum += amount * ions[ion as Ion].charge ** 2;
  return sum / 2;
}

/** Alkalinity (mol of charge per m3, which is meq/L) from its statement as calcium carbonate (kg/m3): two charges a mole. */
export function alkalinityFromCalciumCarbonate(massConcentration: number): number {
  return (2 * massConcentration) / molarMassOfComposition({ Ca: 1, C: 1, O: 3 });
}

/** Alkalinity stated as calcium carbonate (kg/m3) from mol of charge per m3. */
export function calciumCarbonateFromAlkalinity(alkalinity: number): number {
  return (alkalinity / 2) * molarMassOfComposition({ Ca: 1, C: 1, O: 3 });
}

/** Alkalinity stated as bicarbonate (kg/m3) from mol of charge per m3: one charge a mole. Below pH 8.3 this is very nearly the bicarbonate itself. */
export function bicarbonateFromAlkalinity(alkalinity: number): number {
  return ionMassFromAmount('HCO3-', alkalinity);
}

/** Alkalinity (mol of charge per m3) from its statement as bicarbonate (kg/m3). */
export function alkalinityFromBicarbonate(massConcentration: number): number {
  return amountFromIonMass('HCO3-', massConcentration);
}
