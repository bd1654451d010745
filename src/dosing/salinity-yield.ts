import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { conductivity, share } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { relativeYieldFao56, salinityStressFao56 } from './formulas/salinity.js';
import { isAbove } from './is-above.js';
import { salinityToleranceOf, salinityTolerances, type SalinityCrop } from './salinity-tolerances.js';

/** 1 dS/m in S/m. */
const decisiemens = 0.1;

/**
 * What salt in a soil costs of the yield.
 *
 * Takes the conductivity of the saturation extract of the soil (0 to 50 dS/m; not of drain or press water, which are stronger), and what the crop stands of it: a crop
 * of the table (FAO 56, Table 23), or the threshold (0 to 20 dS/m) and the loss of yield for each dS/m above it (0.1 to 100 %), which go before
 * the table's. With the yield response factor Ky of the crop (0.1 to 3) also what is left of its evapotranspiration. Gives the yield as a share of that without salt, by
 * the least and the most tolerant figures published, and the figures. The straight line holds down to half the yield; below, a note says so.
 * @throws InputError for input outside these limits, and where neither a crop nor both figures are given.
 * @example
 * salinityYield({ crop: 'strawberry', soilConductivity: '1.5 dS/m' }).lowestYieldShare.in('%') // => 83.5
 */
export const salinityYield = /* @__PURE__ */ calculation({
  id: 'salinityYield',
  title: 'Yield in a saline soil',
  inputs: () => ({
    soilConductivity: field.quantity(conductivity, { limits: ['0 dS/m', '50 dS/m'] }),
    crop: field.optional(field.choice(Object.keys(salinityTolerances) as SalinityCrop[])),
    salinityThreshold: field.optional(field.quantity(conductivity, { limits: ['0 dS/m', '20 dS/m'] })),
    salinityLoss: field.optional(field.number({ limits: [0.1, 100] })),
    yieldResponse: field.optional(field.number({ limits: [0.1, 3] })),
  }),
  outputs: () => ({
    lowestYieldShare: output.quantity(share, '%'),
    highestYieldShare: output.quantity(share, '%'),
    lowestThreshold: output.quantity(conductivity, 'dS/m'),
    highestThreshold: output.quantity(conductivity, 'dS/m'),
    lowestSalinityLoss: output.number(),
    highestSalinityLoss: output.number(),
    stressCoefficient: output.optional(output.quantity(share, 'fraction')),
  }),
  equation: 'Ya/Ym = 1 − b (ECe − threshold); Ks = 1 − b/Ky (ECe − threshold)',
  sources: ['fao56'],
  example: { crop: 'strawberry', soilConductivity: '1.8 dS/m' },
  check: ({ crop, salinityThreshold, salinityLoss }, problem) => {
    if (crop !== undefined) return;
    if (salinityThreshold === undefined) problem(['salinityThreshold'], 'a threshold, or a crop of the table', 'none');
    if (salinityLoss === undefined) problem(['salinityLoss'], 'the yield lost for each dS/m, or a crop of the table', 'none');
  },
  solve: ({ soilConductivity, crop, salinityThreshold, salinityLoss, yieldResponse }, { note }) => {
    const extract = soilConductivity / decisiemens;
    const table = crop && salinityToleranceOf(crop);
    const own = salinityThreshold === undefined ? undefined : salinityThreshold / decisiemens;
    const [lowThreshold, highThreshold] = own === undefined ? table!.threshold : [own, own];
    const [lowLoss, highLoss] = salinityLoss === undefined ? table!.loss : [salinityLoss, salinityLoss];
    const half = lowThreshold + 50 / highLoss;
    if (isAbove(extract, half)) note('caution', 'outside-range', 'soilConductivity', `The line holds down to half the yield, here ${writeNumber(half)} dS/m: beyond it is a guess.`);
    return {
      lowestYieldShare: relativeYieldFao56(extract, lowThreshold, highLoss / 100),
      highestYieldShare: relativeYieldFao56(extract, highThreshold, lowLoss / 100),
      lowestThreshold: lowThreshold * decisiemens,
      highestThreshold: highThreshold * decisiemens,
      lowestSalinityLoss: lowLoss,
      highestSalinityLoss: highLoss,
      stressCoefficient: yieldResponse === undefined ? undefined : salinityStressFao56(extract, lowThreshold, highLoss / 100, yieldResponse),
    };
  },
});
