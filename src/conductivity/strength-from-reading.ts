import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import { amountsSeen, checkComposition, compositionFields } from '../solution/composition-field.js';
import { readingFields, strengthOutputs, strengthSeen } from './strength-seen.js';

/**
 * How strong a feed is, as a share of its recipe, from what the meter reads.
 *
 * In: the `reading` (0.1 µS/cm to 200 mS/cm) and the `meterAccuracy` (0 to 30 %, 2 % where not given); the `waterTemperature` (0 to 50 °C, 25 °C
 * where not given) and the meter's `temperatureCompensation`, as `meterCheck` takes them; the `recipe` at full strength, by `ions` or
 * `nutrients` of the finished feed, and the `sourceWater` in it (pure where not given).
 * Out: the `strength`, and between `lowStrength` and `highStrength` what meter and model leave open; the `expectedReading` at full strength; the
 * `waterReading` of the water alone; how well the search closed.
 *
 * The conductivity of water + strength × (recipe − water) is worked out with its ion pairs, as `solutionConductivity` does without a pH, and is taken
 * to be uncertain by 5 %. It is one number for all salts: of a feed that plants have drawn on, it says how much is left but not of what.
 * An InputError where not exactly one composition is given, the recipe conducts no more than its water, the reading is clearly below that of the
 * water, or no feed of the recipe (up to 1 mol/L of ionic strength) reads so much.
 *
 * Source: McCleskey, Nordstrom, Ryan and Ball 2012, inverted.
 * @example
 * const feed = strengthFromReading({ reading: '1.1 mS/cm', recipe: { ions: { 'K+': '6 mmol/L', 'Ca2+': '4 mmol/L', 'Mg2+': '2 mmol/L', 'NO3-': '14 mmol/L', 'SO4 2-': '2 mmol/L' } } });
 * feed.strength.in('%') // => 52
 * feed.lowStrength.in('%') // => 49
 * feed.highStrength.in('%') // => 55
 */
export const strengthFromReading = /* @__PURE__ */ calculation({
  id: 'strengthFromReading',
  title: 'Strength of a feed from the reading of the meter',
  inputs: () => ({
    ...readingFields(),
    recipe: field.group(compositionFields(), checkComposition),
    sourceWater: field.optional(field.group(compositionFields(), checkComposition)),
  }),
  outputs: strengthOutputs,
  equation: 'κ(water + s (recipe − water)) = reading',
  sources: ['mccleskey-2012', 'parkhurst-appelo-2013'],
  example: {
    reading: '1.42 mS/cm',
    waterTemperature: '17 °C',
    recipe: { nutrients: { 'N-NO3': '140 mg/L', 'N-NH4': '8 mg/L', P: '40 mg/L', K: '220 mg/L', Ca: '120 mg/L', Mg: '28 mg/L', S: '45 mg/L', Na: '12 mg/L', Cl: '18 mg/L', HCO3: '30 mg/L' } },
    sourceWater: { nutrients: { Ca: '40 mg/L', Mg: '6 mg/L', Na: '12 mg/L', Cl: '18 mg/L', S: '8 mg/L', HCO3: '120 mg/L' } },
  },
  solve: ({ recipe, sourceWater, ...reading }, solving) => strengthSeen(reading, sourceWater ? amountsSeen(sourceWater) : {}, amountsSeen(recipe), solving),
});
