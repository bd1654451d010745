import { ions, type Ion } from '../ions.js';
import type { IonAmounts } from './concentration.js';
import { dissolvedSpecies, type DissolvedSpecies } from './formation.js';
import type { ComponentTotals } from './speciation.js';

/**
 * Totals that `speciate` takes (mol per kg of water) from the amounts of the ions of a feed or a water (mol/m3): hydrogen phosphate counts
 * as H2PO4-, carbonate as HCO3-, bisulfate as SO4 2-; the hydrogen ions that this leaves over are in `alkalinityOfIons`.
 *
 * What is no component and holds none is dropped: boric and silicic acid and urea, which carry no charge, and with their charge fluoride,
 * nitrite, molybdate and the iron chelates: -0.04 meq/L for the 2 mg/L of iron in a feed.
 *
 * @param waterDensity kg/m3
 * @example componentTotalsOf({ 'K+': 2, 'HPO4 2-': 1, 'H3BO3': 0.03 }, 1000) // => { 'K+': 0.002, 'H2PO4-': 0.001 }
 */
export function componentTotalsOf(amounts: IonAmounts, waterDensity: number): ComponentTotals {
  const totals: Record<string, number> = {};
  for (const { amount, species } of speciesAmong(amounts)) {
    for (const { component, order } of species.parts) {
      if (component !== 'H+') totals[component] = (totals[component] ?? 0) + (order * amount) / waterDensity;
    }
  }
  return totals;
}

/**
 * Alkalinity of ions (mol of charge per m3) from their amounts (mol/m3), counted from CO2, H2PO4- and NH4+:
 * HCO3- + 2 CO3-- + OH- + HPO4-- + 2 PO4--- - H+ - HSO4-. Below zero where strong acid is left over.
 *
 * @example alkalinityOfIons({ 'Ca2+': 1, 'HCO3-': 1.5, 'CO3 2-': 0.25 }) // => 2
 */
export function alkalinityOfIons(amounts: IonAmounts): number {
  let sum = 0;
  for (const { amount, species } of speciesAmong(amounts)) sum += species.alkalinity * amount;
  return sum;
}

/**
 * Alkalinity (mol of charge per m3) that a solution of these ions (mol/m3) must have for its charges to balance: the charge of everything but
 * carbon, with phosphate as H2PO4-, ammonia as NH4+ and acid as nothing. It gives the pH of a solution of salts, acids and bases.
 *
 * @example alkalinityFromCharge({ 'K+': 3, 'H2PO4-': 1, 'NO3-': 1.5 }) // => 0.5
 */
export function alkalinityFromCharge(amounts: IonAmounts): number {
  let charge = 0;
  for (const [ion, amount] of Object.entries(amounts)) {
    const parts = speciesNamed(ion)?.parts ?? [{ component: ion as Ion, order: 1 }];
    for (const { component, order } of parts) {
      if (component !== 'H+' && component !== 'HCO3-') charge += order * amount * ions[component].charge;
    }
  }
  return charge;
}

/** Charge (mol of charge per m3, both signs counted positive) of ions that `componentTotalsOf` drops, from the amounts of all (mol/m3). */
export function chargeLeftOut(amounts: IonAmounts): number {
  let sum = 0;
  for (const [ion, amount] of Object.entries(amounts)) if (!speciesNamed(ion)) sum += amount * Math.abs(ions[ion as Ion].charge);
  return sum;
}

function speciesAmong(amounts: IonAmounts): { readonly amount: number; readonly species: DissolvedSpecies }[] {
  return Object.entries(amounts).flatMap(([ion, amount]) => {
    const species = speciesNamed(ion);
    return species ? [{ amount, species }] : [];
  });
}

const speciesNamed = (ion: string): DissolvedSpecies | undefined => dissolvedSpecies.find(({ name }) => name === ion);
