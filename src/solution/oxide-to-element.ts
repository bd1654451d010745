import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { share } from '../units/dimensions.js';
import { elementFractionOfOxide } from './formulas/composition.js';
import { atomicWeights } from './atomic-weights.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import { oxides, type Oxide } from './oxides.js';

/**
 * The share of an element in a fertilizer from the share that its label states as an oxide, or the other way round.
 *
 * In: the `oxide`, and one of `oxideShare` (0 to 250 %: pure sulfur is stated as 250 % SO3) and `elementShare` (0 to 100 %).
 * Out: both shares, the `element`, and the `elementFactor` that an oxide figure is multiplied by.
 * An InputError where not exactly one share is given, or an oxide share of more than the pure element.
 *
 * Source: Prohaska et al. 2022, Standard atomic weights of the elements 2021.
 * @example
 * oxideToElement({ oxide: 'K2O', oxideShare: '50 %' }).elementShare.in('%') // => 41.51
 * oxideToElement({ oxide: 'P2O5', elementShare: '10 %' }).oxideShare.in('%') // => 22.913
 */
export const oxideToElement = /* @__PURE__ */ calculation({
  id: 'oxideToElement',
  title: 'Element from oxide, and oxide from element',
  inputs: () => ({
    oxide: field.choice(Object.keys(oxides) as Oxide[]),
    oxideShare: field.optional(field.share({ limits: [0, 2.5] })),
    elementShare: field.optional(field.share()),
  }),
  outputs: () => ({
    oxideShare: output.quantity(share, '%'),
    elementShare: output.quantity(share, '%'),
    element: output.choice(Object.keys(atomicWeights)),
    elementFactor: output.number(),
  }),
  equation: 'element = oxide × atoms × atomic weight / molar mass of the oxide',
  sources: ['prohaska-2022'],
  example: { oxide: 'P2O5', oxideShare: '12 %' },
  check: (seen, problem) => {
    expectExactlyOne(seen, ['oxideShare', 'elementShare'], problem);
    const { oxide, oxideShare = 0 } = seen;
    if (oxideShare * elementFractionOfOxide(oxide) > 1) problem(['oxideShare'], `no more ${oxide} than the pure element stands for`, `${oxideShare * 100} %`);
  },
  solve: ({ oxide, oxideShare, elementShare = 0 }) => {
    const factor = elementFractionOfOxide(oxide);
    return {
      oxideShare: oxideShare ?? elementShare / factor,
      elementShare: oxideShare === undefined ? elementShare : oxideShare * factor,
      element: oxides[oxide].element,
      elementFactor: factor,
    };
  },
});
