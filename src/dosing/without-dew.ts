import type { AddNote } from '../calculation/note.js';

/** Evapotranspiration, none where the equation gives less: then dew falls, and a note says so. */
export function withoutDew(evapotranspiration: number, note: AddNote): number {
  if (evapotranspiration >= 0) return evapotranspiration;
  note('info', 'dew', 'referenceEvapotranspiration', 'More heat is radiated off than the air brings: nothing evaporates, and dew or hoar frost may settle.');
  return 0;
}
