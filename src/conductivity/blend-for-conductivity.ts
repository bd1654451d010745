import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { amountsSeen, checkComposition, compositionFields } from '../solution/composition-field.js';
import { conductivity, share, volume } from '../units/dimensions.js';
import { conductivityOfIons, shareForConductivity } from './formulas/mixing.js';
import { refuseTooStrong } from './strength-seen.js';
import { conductivityConvergence, refuseOutside, targetField, targetTemperature } from './target-conductivity.js';

/**
 * In what shares to blend two feeds, or drain and fresh feed, for a wanted conductivity.
 *
 * In: `firstFeed` and `secondFeed`, each by its `ions` or `nutrients`; the `targetConductivity` at 25 °C (0.01 to 50 mS/cm); perhaps the `finalVolume`
 * of the blend.
 * Out: `firstShare` and `secondShare` of the volume; with a `finalVolume` also `firstVolume` and `secondVolume`; the `firstConductivity` and
 * `secondConductivity` of the two at 25 °C; how well the search closed. What the blend holds of each nutrient is for `blend` to tell.
 * An InputError where a feed does not state exactly one composition, or the target is not between the two.
 *
 * Source: McCleskey, Nordstrom, Ryan and Ball 2012, inverted.
 * @example
 * const shares = blendForConductivity({ firstFeed: { ions: { 'K+': '20 mmol/L', 'NO3-': '20 mmol/L' } }, secondFeed: { ions: { 'K+': '5 mmol/L', 'NO3-': '5 mmol/L' } }, targetConductivity: '1.42 mS/cm', finalVolume: '90 L' });
 * shares.firstVolume.in('L') // => 32
 */
export const blendForConductivity = /* @__PURE__ */ calculation({
  id: 'blendForConductivity',
  title: 'Shares of two feeds for a wanted conductivity',
  inputs: () => ({
    firstFeed: field.group(compositionFields(), checkComposition),
    secondFeed: field.group(compositionFields(), checkComposition),
    targetConductivity: targetField(),
    finalVolume: field.optional(field.quantity(volume, { limits: ['10 mL', '1000 m³'] })),
  }),
  outputs: () => ({
    firstShare: output.quantity(share, '%'),
    secondShare: output.quantity(share, '%'),
    firstVolume: output.optional(output.quantity(volume, 'L')),
    secondVolume: output.optional(output.quantity(volume, 'L')),
    firstConductivity: output.quantity(conductivity, 'mS/cm'),
    secondConductivity: output.quantity(conductivity, 'mS/cm'),
    convergence: conductivityConvergence(),
  }),
  equation: 'κ(x c(first) + (1 − x) c(second)) = κ(target)',
  sources: ['mccleskey-2012', 'parkhurst-appelo-2013'],
  example: {
    firstFeed: { nutrients: { 'N-NO3': '165 mg/L', P: '28 mg/L', K: '210 mg/L', Ca: '190 mg/L', Mg: '52 mg/L', S: '75 mg/L', Na: '48 mg/L', Cl: '62 mg/L' } },
    secondFeed: { nutrients: { 'N-NO3': '70 mg/L', P: '20 mg/L', K: '110 mg/L', Ca: '60 mg/L', Mg: '14 mg/L', S: '22 mg/L', Na: '14 mg/L', Cl: '22 mg/L' } },
    targetConductivity: '1.4 mS/cm',
    finalVolume: '100 L',
  },
  solve: ({ firstFeed, secondFeed, targetConductivity, finalVolume }, solving) => {
    const first = amountsSeen(firstFeed);
    const second = amountsSeen(secondFeed);
    refuseTooStrong(first, 'firstFeed', solving);
    refuseTooStrong(second, 'secondFeed', solving);
    const firstConductivity = conductivityOfIons(first, targetTemperature);
    const secondConductivity = conductivityOfIons(second, targetTemperature);
    refuseOutside(targetConductivity, firstConductivity, secondConductivity, 'a blend lies between the two that it is made of', solving);
    const { value: firstShare, residual, steps } = shareForConductivity(second, first, targetConductivity, targetTemperature);
    return {
      firstShare,
      secondShare: 1 - firstShare,
      firstVolume: finalVolume && firstShare * finalVolume,
      secondVolume: finalVolume && (1 - firstShare) * finalVolume,
      firstConductivity,
      secondConductivity,
      convergence: { conductivityResidual: residual, steps },
    };
  },
});
