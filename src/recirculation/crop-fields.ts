import type { Solving } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import type { IonAmounts } from '../solution/formulas/concentration.js';
import { cropLimits, cropNutrientUptakes, cropUptakes, recirculatedCrops, type RecirculatedCrop } from './crop-uptake.js';
import { amountsStated, ionHint, ionKeys, ionRecord, type StatedIons } from './ion-record.js';

/** What the plants take up with their water, and what they bear: by crop, by ion, or both, what is stated going first. */
export const cropFields = () => ({
  crop: field.optional(field.choice(recirculatedCrops)),
  uptakeConcentrations: field.optional(ionRecord('200 mmol/L', '20 g/L')),
  uptakeFactors: field.optional(field.withNameHints(field.record(ionKeys(), field.number({ limits: [0, 10] })), ionHint)),
  ionLimits: field.optional(ionRecord()),
});

export interface SeenCrop {
  readonly crop: RecirculatedCrop | undefined;
  readonly uptakeConcentrations: StatedIons | undefined;
  readonly uptakeFactors: IonAmounts | undefined;
  readonly ionLimits: StatedIons | undefined;
}

/** What is taken up of an ion whatever the loop holds, mol/m3: as stated, or by the crop where no factor says otherwise. */
export const uptakesOf = ({ crop, uptakeConcentrations, uptakeFactors = {} }: SeenCrop): IonAmounts => {
  const byCrop = Object.entries(crop ? cropUptakes(crop) : {}).filter(([ion]) => !(ion in uptakeFactors));
  return { ...Object.fromEntries(byCrop), ...amountsStated(uptakeConcentrations) };
};

/** What an ion is not to pass, mol/m3. */
export const limitsOf = ({ crop, ionLimits }: SeenCrop): IonAmounts => ({ ...(crop && cropLimits(crop)), ...amountsStated(ionLimits) });

/** Says what figures of the crop come from tables. */
export function noteCrop({ crop }: SeenCrop, { note }: Solving): void {
  if (!crop) return;
  const nutrients = crop in cropNutrientUptakes ? ', those of nutrients from memory' : '; it has none of nutrients';
  note('info', 'uptake-by-crop', 'crop', `Uptake and limits that are not stated are those of a table for ${crop}${nutrients}: sources differ by a third and more, so put in your own as soon as you have them.`);
}
