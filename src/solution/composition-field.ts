import * as field from '../calculation/field.js';
import { amountConcentration, massConcentration } from '../units/dimensions.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import { ionAmountsOfNutrients, type IonAmounts, type NutrientMasses } from './formulas/concentration.js';
import { ions, type Ion } from './ions.js';
import { nutrientForms, type NutrientFormKey } from './nutrient-forms.js';

/** What is dissolved in a water or a feed: its ions in mmol/L, or its nutrients in mg/L by form. One of the two. */
export const compositionFields = () => ({
  ions: field.optional(field.record(Object.keys(ions) as Ion[], field.quantity(amountConcentration, { limits: ['0 mmol/L', '2 mol/L'] }))),
  nutrients: field.optional(field.record(Object.keys(nutrientForms) as NutrientFormKey[], field.quantity(massConcentration, { limits: ['0 mg/L', '100 g/L'] }))),
});

interface SeenComposition {
  readonly ions: IonAmounts | undefined;
  readonly nutrients: NutrientMasses | undefined;
}

/** Finds a composition that is given twice or not at all. */
export const checkComposition: field.GroupCheck<SeenComposition> = (seen, problem) => expectExactlyOne(seen, ['ions', 'nutrients'], problem);

/** Amounts of the ions (mol/m3) that were seen, stated as either. */
export function amountsSeen({ ions, nutrients = {} }: SeenComposition): IonAmounts {
  const amounts = ions ?? ionAmountsOfNutrients(nutrients);
  return Object.fromEntries(Object.entries(amounts).filter(([, amount]) => amount !== undefined));
}
