import * as output from '../calculation/output.js';
import { chargeBalanceOutputs } from '../solution/charge-balance-outputs.js';
import type { Ion } from '../solution/ions.js';
import { nutrientForms, type NutrientFormKey } from '../solution/nutrient-forms.js';
import { alkalinity, amountConcentration, chargeConcentration, massConcentration } from '../units/dimensions.js';
import type { Feed } from './formulas/dissolve.js';
import type { FeedForm } from './formulas/label-analysis.js';

/** Everything that is counted in a feed: nitrogen of every form, and each form by itself. */
export const feedForms = (): readonly FeedForm[] => ['N', ...(Object.keys(nutrientForms) as NutrientFormKey[])];

/** What is known by form, in the order of the table of forms. */
export function inOrder<Entry>(entries: { readonly [F in FeedForm]?: Entry }): { readonly [F in FeedForm]?: Entry } {
  return Object.fromEntries(feedForms().flatMap((form) => (entries[form] === undefined ? [] : [[form, entries[form]]])));
}

/** An output for each form. */
export const byForm = <Given, Got>(item: output.Output<Given, Got>) => output.record<FeedForm, Given, Got>(item);
const byIon = <Given, Got>(item: output.Output<Given, Got>) => output.record<Ion, Given, Got>(item);

/** What a calculation tells of a feed. */
export const feedOutputs = () => ({
  nutrients: byForm(output.quantity(massConcentration, 'mg/L')),
  ions: byIon(output.quantity(amountConcentration, 'mmol/L')),
  charges: byIon(output.quantity(chargeConcentration, 'meq/L')),
  chargeBalance: output.group(chargeBalanceOutputs()),
  alkalinity: output.quantity(alkalinity, 'meq/L'),
});

/** A feed in the shape of these outputs. Its alkalinity ends at zero: acid beyond it stands among the ions as `H+`. */
export function tellFeed(feed: Feed): output.GivenOutputs<ReturnType<typeof feedOutputs>> {
  return {
    nutrients: inOrder(feed.massConcentrations),
    ions: feed.amountConcentrations,
    charges: feed.chargeConcentrations,
    chargeBalance: feed.chargeBalance,
    alkalinity: Math.max(0, feed.alkalinity),
  };
}
