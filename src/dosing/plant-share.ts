/** From water on an area to what each plant takes up and is given. */
import { discharge } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import type { AddNote } from '../calculation/note.js';
import * as output from '../calculation/output.js';
import { volume, waterPerArea } from '../units/dimensions.js';
import { volumePerPlantFromDepth } from './formulas/crop-transpiration.js';
import { appliedVolumeForDrain } from './formulas/drain.js';

/** Plants to a square metre. */
export const plantDensityField = () => field.number({ limits: [0.01, 1000] });

/** How many plants stand on the area, and what is to drain. */
export const plantShareFields = () => ({
  plantDensity: field.optional(plantDensityField()),
  drainShare: field.withDefault(field.share({ limits: [0, 0.9] }), 0),
});

/** Water to be given on the area, and to a plant where it is known how many there are. */
export const plantShareOutputs = () => ({
  appliedDepth: output.quantity(waterPerArea, 'L/m²'),
  volumePerPlant: output.optional(output.quantity(volume, 'L')),
  appliedVolume: output.optional(output.quantity(volume, 'L')),
});

/** The same from the water taken up, in m. */
export function plantShare(depth: number, { plantDensity, drainShare }: { readonly plantDensity: number | undefined; readonly drainShare: number }, note: AddNote) {
  if (drainShare > 0) note(discharge.severity, discharge.code, 'drainShare', discharge.text);
  const appliedDepth = appliedVolumeForDrain(depth, drainShare);
  return {
    appliedDepth,
    volumePerPlant: plantDensity === undefined ? undefined : volumePerPlantFromDepth(depth, plantDensity),
    appliedVolume: plantDensity === undefined ? undefined : volumePerPlantFromDepth(appliedDepth, plantDensity),
  };
}
