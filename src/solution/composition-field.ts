import * as field from '../calculation/field.js';
import { amountConcentration, massConcentration } from '../units/dimensions.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import { ionAmountsOfNutrients, nitrogenOfForms, type IonAmounts, type NutrientMasses } from './formulas/concentration.js';
import { ions, type Ion } from './ions.js';
import { nutrientForms, type NutrientFormKey } from './nutrient-forms.js';

/** What is dissolved in a water or a feed: its ions in mmol/L, or its nutrients in mg/L by form. One of the two. `N`, the sum of its forms, may stand beside them. */
export const compositionFields = () => ({
  ions: field.optional(field.record(Object.keys(ions) as Ion[], field.quantity(amountConcentration, { limits: ['0 mmol/L', '2 mol/L'] }))),
  nutrients: field.optional(field.record(['N', ...(Object.keys(nutrientForms) as NutrientFormKey[])], field.quantity(massConcentration, { limits: ['0 mg/L', '100 g/L'] }))),
});

interface SeenComposition {
  readonly ions: IonAmounts | undefined;
  readonly nutrients: (NutrientMasses & { readonly N?: number }) | undefined;
}

/** Finds a composition that is given twice or not at all, and nitrogen that is not told by its forms. */
export const checkComposition: field.GroupCheck<SeenComposition> = (seen, problem) => {
  expectExactlyOne(seen, ['ions', 'nutrients'], problem);
  const { N: nitrogen, ...forms } = seen.nutrients ?? {};
  if (nitrogen === undefined) return;
  if (Math.abs(nitrogen - nitrogenOfForms(forms)) > 0.01 * nitrogen) problem(['nutrients', 'N'], 'the sum of N-NO3, N-NH4 and N-urea', 'another figure', 'state nitrogen by its forms: each is another ion');
};

/** Amounts of the ions (mol/m3) that were seen, stated as either. */
export function amountsSeen({ ions, nutrients = {} }: SeenComposition): IonAmounts {
  if (ions) return ions;
  const { N: _, ...forms } = nutrients;
  return ionAmountsOfNutrients(forms);
}
