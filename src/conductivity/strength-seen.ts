import type { Solving } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { ionicStrengthOfIons, type IonAmounts } from '../solution/formulas/concentration.js';
import { conductivity, share } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { strongestIonicStrength } from './formulas/ionic-model.js';
import { conductivityOfIons } from './formulas/mixing.js';
import { strengthFromConductivity } from './formulas/strength.js';
import { meterFields, shownOverTrue, type SeenMeter } from './meter.js';
import { conductivityConvergence, conductivityText } from './target-conductivity.js';

/** A reading in a feed, and how far the meter may be trusted. */
export const readingFields = () => ({
  reading: field.quantity(conductivity, { limits: ['0.1 µS/cm', '200 mS/cm'] }),
  meterAccuracy: field.withDefault(field.share({ limits: [0, 0.3] }), 0.02),
  ...meterFields(),
});

interface SeenReading extends SeenMeter {
  readonly reading: number;
  readonly meterAccuracy: number;
}

/** What a reading says of the strength of a feed. */
export const strengthOutputs = () => ({
  strength: output.quantity(share, '%'),
  lowStrength: output.quantity(share, '%'),
  highStrength: output.quantity(share, '%'),
  expectedReading: output.quantity(conductivity, 'mS/cm'),
  waterReading: output.quantity(conductivity, 'mS/cm'),
  convergence: conductivityConvergence(),
});

/** Ends the calculation where a composition is too strong for the model. */
export function refuseTooStrong(amounts: IonAmounts, path: string, { refuse }: Solving): void {
  const strength = ionicStrengthOfIons(amounts);
  if (strength > strongestIonicStrength) refuse(path, 'a solution of at most 1 mol/L of ionic strength', `one of ${writeNumber(strength / 1000)} mol/L`, 'for a stock, take the feed that it makes');
}

/** Less than this more than the water does, as a share, a recipe cannot be told from it. */
const telling = 0.01;

/** Strength of a feed of a recipe (mol/m3 at full strength, made with the water) from a reading, or an end of the calculation with the reason why there is none. */
export function strengthSeen(seen: SeenReading, water: IonAmounts, recipe: IonAmounts, solving: Solving, waterPath = 'sourceWater'): output.GivenOutputs<ReturnType<typeof strengthOutputs>> {
  const { reading, meterAccuracy, waterTemperature } = seen;
  refuseTooStrong(water, waterPath, solving);
  refuseTooStrong(recipe, 'recipe', solving);
  const shown = shownOverTrue(seen);
  const expectedReading = conductivityOfIons(recipe, waterTemperature) * shown;
  const waterReading = conductivityOfIons(water, waterTemperature) * shown;
  if (!(expectedReading > (1 + telling) * waterReading)) {
    solving.refuse('recipe', 'a recipe that conducts more than its water', `one that reads ${conductivityText(expectedReading)} where the water reads ${conductivityText(waterReading)}`, 'the recipe is the finished feed, what the water brings included');
  }
  const found = strengthFromConductivity(water, recipe, reading / shown, waterTemperature, meterAccuracy);
  if (!found) return solving.refuse('reading', 'a reading that a feed of this recipe can give', conductivityText(reading), 'is the unit right?');
  if (found.high === 0) {
    solving.refuse('reading', `at least what the water alone reads, ${conductivityText(waterReading)}`, conductivityText(reading), 'the analysis is of another water, the meter is off, or the unit is not right');
  }
  if (found.strength === 0) solving.note('caution', 'no-recipe-seen', 'reading', `The reading is no more than the water alone gives, ${conductivityText(waterReading)}: within what meter and model leave open, there is no recipe in it.`);
  return {
    strength: found.strength,
    lowStrength: found.low,
    highStrength: found.high,
    expectedReading,
    waterReading,
    convergence: { conductivityResidual: found.residual, steps: found.steps },
  };
}
