import * as field from '../calculation/field.js';
import { nutrientForms, type NutrientFormKey } from '../solution/nutrient-forms.js';
import { bicarbonateFromAlkalinity } from '../solution/formulas/concentration.js';
import { alkalinity, massConcentration } from '../units/dimensions.js';
import type { WaterAnalysis } from './formulas/dissolve.js';

interface SeenWater {
  readonly water: WaterAnalysis | undefined;
  readonly waterAlkalinity: number | undefined;
}

/** Analysis of the water that a feed is made with: mg/L by form, and its alkalinity, here or as `HCO3`. Left out: nothing in it. */
export const waterFields = () => ({
  water: field.optional(field.record(Object.keys(nutrientForms) as NutrientFormKey[], field.quantity(massConcentration, { limits: ['0 mg/L', '20 g/L'] }))),
  waterAlkalinity: field.optional(field.quantity(alkalinity, { limits: ['0 meq/L', '50 meq/L'] })),
});

/** Finds alkalinity that is stated twice. */
export const checkWater: field.GroupCheck<SeenWater> = ({ water, waterAlkalinity }, problem) => {
  if (water?.HCO3 !== undefined && waterAlkalinity !== undefined) problem(['waterAlkalinity'], 'the alkalinity once', 'a second statement', 'water.HCO3 states it too: leave one of them out');
};

/** The analysis that was seen, with its alkalinity as bicarbonate. */
export const waterOf = ({ water = {}, waterAlkalinity }: SeenWater): WaterAnalysis => ({
  ...water,
  ...(waterAlkalinity !== undefined && { HCO3: bicarbonateFromAlkalinity(waterAlkalinity) }),
});
