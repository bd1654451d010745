import type { AddNote } from '../calculation/note.js';
import { writeNumber } from '../units/write.js';

/** Alkalinity, mol/m³, by which it need not fit the pH. Common practice, no source. */
export const smallAlkalinity = 0.1;

/** Strong acid, mol/m³, that water holds at pH 4.5, where a titration of alkalinity ends. */
const acidOfEndPoint = 0.03;

/** Says so where the stated alkalinity and the stated pH cannot be those of one water; `contradiction` (mol of charge per m³) is by how much. */
export function noteContradiction(contradiction: number, note: AddNote): void {
  if (contradiction <= smallAlkalinity) return;
  note('caution', 'acidity-does-not-fit', 'pH', `The alkalinity is ${writeNumber(contradiction)} meq/L off what this pH allows, so bicarbonate is left out: one of the two is not of this water.`);
}

/** Says so where an alkalinity (mol of charge per m³) is below zero: strong acid is left. */
export function noteAcidLeft(alkalinity: number, note: AddNote): void {
  if (alkalinity >= -acidOfEndPoint) return;
  note('danger', 'acid-left', 'alkalinity', `${writeNumber(-alkalinity)} meq/L of strong acid is left when all alkalinity is used up: pH falls below 4.5, which burns roots and eats metal. Use less acid.`);
}
