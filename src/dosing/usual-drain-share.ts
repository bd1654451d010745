import { calculation } from '../calculation/calculation.js';
import * as output from '../calculation/output.js';
import { radiationSumField } from '../light/site-fields.js';
import { share } from '../units/dimensions.js';
import { usualDrainFor } from './usual-drain.js';

/**
 * Share that usually drains on a day with so much light, from a fertilised substrate.
 *
 * Takes the radiation sum of the day outside (up to 45 MJ/m²). Gives the least and the greatest usual share. Common practice: it was stated for a feed of 3.0 and a drain
 * of 4.5 mS/cm, mild water; `substrateLeaching` tells what your own conductivities ask for.
 * @throws InputError for input outside these limits.
 * @example
 * usualDrainShare({ radiationSum: '1200 J/cm²' }).highestDrainShare.in('%') // => 30
 */
export const usualDrainShare = /* @__PURE__ */ calculation({
  id: 'usualDrainShare',
  title: 'Usual drain by the light of the day',
  inputs: () => ({ radiationSum: radiationSumField() }),
  outputs: () => ({ lowestDrainShare: output.quantity(share, '%'), highestDrainShare: output.quantity(share, '%') }),
  equation: 'a table by the radiation sum of the day',
  sources: ['common-practice'],
  example: { radiationSum: '1200 J/cm²' },
  solve: ({ radiationSum }) => {
    const { lowest, highest } = usualDrainFor(radiationSum);
    return { lowestDrainShare: lowest, highestDrainShare: highest };
  },
});
