import { calculation } from '../calculation/calculation.js';
import { discharge } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { conductivity, share, waterPerArea } from '../units/dimensions.js';
import { percent } from '../units/in-words.js';
import { appliedVolumeForDrain } from './formulas/drain.js';
import { leachingRequirementRhoades1974 } from './formulas/leaching.js';
import { isAbove } from './is-above.js';

/** A water that asks for more leaching than this serves badly, and more than this not at all. As extension bulletins have it. */
const [muchLeaching, tooMuchLeaching] = [0.3, 0.4];

/** Beyond this next to nothing of the water would serve the crop, and no number is given. */
const mostLeaching = 0.9;

/**
 * How much water has to pass below the roots of a soil that its salt does not rise above what the crop stands.
 *
 * For beds in soil, by the conductivity of the irrigation water (0.01 to 20 dS/m) and of the saturation extract of the soil that the crop stands (0.1 to
 * 30 dS/m; `salinityYield` has thresholds): for bags and troughs that are fed use `substrateLeaching`. With the water that crop and soil give off in a
 * day or a season (up to 5 m) it gives what to apply in the same time.
 * @throws InputError for input outside these limits, and for water too salty for the crop: where it would need more than 90 % leaching, or the form has no answer.
 * @example
 * soilLeaching({ waterConductivity: '2 dS/m', soilConductivity: '8 dS/m', transpiration: '5 mm' }).appliedDepth?.in('mm') // => 5.27778
 */
export const soilLeaching = /* @__PURE__ */ calculation({
  id: 'soilLeaching',
  title: 'Leaching that a soil needs',
  inputs: () => ({
    waterConductivity: field.quantity(conductivity, { limits: ['0.01 dS/m', '20 dS/m'] }),
    soilConductivity: field.quantity(conductivity, { limits: ['0.1 dS/m', '30 dS/m'] }),
    transpiration: field.optional(field.quantity(waterPerArea, { limits: ['0 mm', '5000 mm'] })),
  }),
  outputs: () => ({ leachingRequirement: output.quantity(share, '%'), appliedDepth: output.optional(output.quantity(waterPerArea, 'mm')) }),
  equation: 'LR = ECw / (5 ECe − ECw); applied = ET / (1 − LR)',
  sources: ['rhoades-1974', 'definition'],
  cautions: [discharge],
  example: { waterConductivity: '0.8 dS/m', soilConductivity: '1.1 dS/m', transpiration: '3.2 mm' },
  solve: ({ waterConductivity, soilConductivity, transpiration }, { note, refuse }) => {
    const leachingRequirement = leachingRequirementRhoades1974(waterConductivity, soilConductivity);
    if (5 * soilConductivity <= waterConductivity || isAbove(leachingRequirement, mostLeaching)) refuse('waterConductivity', `water that needs at most ${percent(mostLeaching)} leaching`, 'a saltier one', 'no leaching makes this water fit for this crop: find other water, or blend it');
    if (isAbove(leachingRequirement, muchLeaching)) {
      note(isAbove(leachingRequirement, tooMuchLeaching) ? 'danger' : 'caution', 'unsuitable-water', 'waterConductivity', `A leaching of more than ${percent(muchLeaching)} to ${percent(tooMuchLeaching)} means that the water is unsuitable for the crop: blend it with rain or other water, or grow what stands more salt.`);
    }
    return { leachingRequirement, appliedDepth: transpiration === undefined ? undefined : appliedVolumeForDrain(transpiration, leachingRequirement) };
  },
});
