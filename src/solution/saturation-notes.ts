import type { AddNote } from '../calculation/note.js';
import { writeNumber } from '../units/write.js';
import { strongestForDavies } from './formulas/activity.js';
import type { SaturationIndices } from './formulas/saturation.js';
import { solids, type SolidKey } from './solids.js';

/** Up to this index a solid is close to balance and seldom settles out; it is also as far as constants and activities can be trusted. Common practice, no source. */
export const nearBalance = 0.3;

/** Says what is to be expected of solids with which a solution is supersaturated. `where` begins the sentence: 'The feed', 'Tank A'. */
export function noteSaturation(indices: SaturationIndices, where: string, field: string, note: AddNote): void {
  const above = (Object.entries(indices) as [SolidKey, number][]).filter(([, index]) => index > 0).map(([key, index]) => ({ solid: solids[key], index }));
  for (const { solid: { name, formula }, index } of above.filter(({ solid }) => solid.forms === 'readily')) {
    const holds = `${where} holds more ${name} (${formula}) than stays dissolved, saturation index ${index.toFixed(2)}`;
    if (index > nearBalance) note('caution', 'settles-out', field, `${holds}: expect it to settle out, sooner in warmth, and to block drippers.`);
    else note('info', 'close-to-saturation', field, `${holds}: close to balance, so it may or may not settle out.`);
  }
  const slow = above.filter(({ solid }) => solid.forms === 'slowly').map(({ solid, index }) => `${solid.name} ${index.toFixed(1)}`);
  if (slow.length > 0) note('info', 'slow-solids', field, `${where} is supersaturated with solids that form slowly or not at all (saturation index): ${slow.join(', ')}.`);
}

/** Says so where a solution (ionic strength in mol/kg) is too strong for its saturation indices to be more than rough. */
export function noteStrongSolution(ionicStrength: number, where: string, field: string, note: AddNote): void {
  if (ionicStrength <= strongestForDavies) return;
  note('caution', 'rough-saturation-indices', field, `${where} has an ionic strength of ${writeNumber(ionicStrength)} mol/kg: above ${strongestForDavies} activities are not known well, and saturation indices are rough, off by half a unit or more.`);
}
