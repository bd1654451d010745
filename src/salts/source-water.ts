import type { AddProblem } from '../calculation/problem.js';
import type { Solving } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import { nutrientMassesOfIons } from '../solution/formulas/blending.js';
import { molarMassOfComposition } from '../solution/formulas/composition.js';
import type { IonAmounts, NutrientMasses } from '../solution/formulas/concentration.js';
import { ions, type Ion } from '../solution/ions.js';
import { nutrientForms } from '../solution/nutrient-forms.js';
import { waterItem, waterItemKeys, type WaterItemKey } from '../solution/water-items.js';
import { alkalinity, amountConcentration, chargeConcentration, massConcentration } from '../units/dimensions.js';
import type { Quantity } from '../units/quantity.js';
import { nearestHint } from './nearest.js';
import { checkWaterBalance, noteWaterBalance } from './water-balance.js';

/** A concentration as an analysis states it. */
type Stated = Quantity<'massConcentration'> | Quantity<'amountConcentration'> | Quantity<'chargeConcentration'>;

/** An analysis of a water as calculations see it. */
export interface SeenWater {
  readonly water: { readonly [K in WaterItemKey]?: Stated } | undefined;
  readonly waterAlkalinity: number | undefined;
}

const statedConcentration = () =>
  field.either(
    field.writtenQuantity(massConcentration, { limits: ['0 mg/L', '20 g/L'] }),
    field.writtenQuantity(amountConcentration, { limits: ['0 mmol/L', '600 mmol/L'] }),
    field.writtenQuantity(chargeConcentration, { limits: ['0 meq/L', '600 meq/L'] }),
  );

/** For a name that is none, the nearest: by key, by the key turned round (NO3-N), by the ion and its name. */
function hintFor(written: string): string | undefined {
  return nearestHint(written, waterItemKeys(), (key) => {
    const { carrier } = waterItem(key);
    return [key, key.split('-').reverse().join('-'), carrier, ions[carrier].name];
  });
}

/**
 * Analysis of the water that a feed is made with: by key of `waterItems` or `nutrientForms`, each in mg/L, mmol/L or meq/L, and its alkalinity, here or as
 * `HCO3` and `CO3`. Left out: nothing in it. Nitrite and fluoride count in the balance of charges only, since no feed counts them.
 */
export const waterFields = () => ({
  water: field.optional(field.withNameHints(field.record(waterItemKeys(), statedConcentration()), hintFor)),
  waterAlkalinity: field.optional(field.quantity(alkalinity, { limits: ['0 meq/L', '50 meq/L'] })),
});

const itemsOf = ({ water = {} }: SeenWater) => Object.entries(water) as [WaterItemKey, Stated][];

/** Whether phosphate or what carries no charge is stated by its charge, which tells no amount. */
const tellsNoAmount = (carrier: Ion, { dimension }: Stated): boolean => dimension === 'chargeConcentration' && (ions[carrier].charge === 0 || carrier === 'H2PO4-');

/** What is wrong with an analysis: a thing stated twice, or in a way that tells no amount. */
export function problemsOfItems(seen: SeenWater): readonly Parameters<AddProblem>[] {
  const problems: Parameters<AddProblem>[] = [];
  const keys = new Map<Ion, WaterItemKey>();
  for (const [key, stated] of itemsOf(seen)) {
    const { carrier } = waterItem(key);
    const { name, charge } = ions[carrier];
    const other = keys.get(carrier);
    if (other !== undefined) problems.push([['water', key], `${name} stated once`, `${key} beside ${other}`, 'leave one of them out']);
    keys.set(carrier, key);
    if (tellsNoAmount(carrier, stated)) {
      problems.push([['water', key], 'a concentration in mg/L or mmol/L', String(stated), charge === 0 ? `${name} carries no charge` : 'phosphate carries one to three charges, by pH']);
    }
  }
  const counted = keys.get('HCO3-') ?? keys.get('CO3 2-');
  if (counted !== undefined && seen.waterAlkalinity !== undefined) {
    problems.push([['waterAlkalinity'], 'the alkalinity once', 'a second statement', `water.${counted} states it too: leave one of them out`]);
  }
  return problems;
}

/** Finds what cannot be right about the water of a feed: statements that contradict each other, charges that are far apart. */
export const checkWater: field.GroupCheck<SeenWater> = (seen, problem) => {
  const problems = problemsOfItems(seen);
  for (const one of problems) problem(...one);
  if (problems.length === 0) checkWaterBalance(amountsInWater(seen), problem);
};

/** Says so where the analysis of the water is only a part of one, or does not balance. */
export const noteWater = (seen: SeenWater, { note }: Solving): void => noteWaterBalance(amountsInWater(seen), note);

/** Mol of the carrier in a unit of what is stated. */
function amountOf(key: WaterItemKey, { dimension, si }: Stated): number {
  const { counted, carrier } = waterItem(key);
  if (dimension === 'massConcentration') return si / molarMassOfComposition(counted);
  return dimension === 'chargeConcentration' ? si / Math.abs(ions[carrier].charge) : si;
}

/** Amounts (mol/m3) of the ions and molecules in a water, its alkalinity as bicarbonate. */
export const amountsInWater = (seen: SeenWater): IonAmounts => ({
  ...Object.fromEntries(itemsOf(seen).map(([key, stated]) => [waterItem(key).carrier, amountOf(key, stated)])),
  ...(seen.waterAlkalinity !== undefined && { 'HCO3-': seen.waterAlkalinity }),
});

/** The same by nutrient form (kg/m3), with all alkalinity as bicarbonate: the water that a feed is made with. What was written as such a mass stays that number. */
export const waterOf = (seen: SeenWater): NutrientMasses => ({
  ...nutrientMassesOfIons(amountsInWater(seen)),
  ...Object.fromEntries(itemsOf(seen).flatMap(([key, { dimension, si }]) => (dimension === 'massConcentration' && isForm(key) ? [[key, si]] : []))),
});

/** Whether what an analysis states by a key is a nutrient form; bicarbonate is, but carbonate may add to it. */
const isForm = (key: WaterItemKey): boolean => Object.hasOwn(nutrientForms, key) && key !== 'HCO3';
