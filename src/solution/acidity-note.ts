import type { AddNote } from '../calculation/note.js';
import { writeNumber } from '../units/write.js';

/** Alkalinity, mol/m³, within which it need not fit the pH. */
const smallAlkalinity = 0.1;

/** Says so where the stated alkalinity and the stated pH cannot be those of one water; `contradiction` (mol of charge per m³) is by how much. */
export function noteContradiction(contradiction: number, note: AddNote): void {
  if (contradiction <= smallAlkalinity) return;
  note('caution', 'acidity-does-not-fit', 'pH', `The alkalinity is ${writeNumber(contradiction)} meq/L off what this pH allows, so bicarbonate is left out: one of the two is not of this water.`);
}
