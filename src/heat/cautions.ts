/** What can hurt people and roots with heat. */
import type { Solving } from '../calculation/calculation.js';
import type { Note } from '../calculation/note.js';
import { writeNumber } from '../units/write.js';
import { zeroCelsius } from '../water/constants.js';

export const combustion: Note = {
  code: 'combustion', severity: 'caution',
  text: 'A burner needs air and a flue: without them it fills the house with carbon monoxide, which kills unnoticed, and with ethylene and moisture; fit a carbon monoxide alarm, and have gas and flue done by licensed people under the local code.',
};

export const hotWater: Note = {
  code: 'hot-water', severity: 'caution',
  text: 'Water above 50 °C scalds within minutes and above 60 °C within seconds, and softens plastic barrels: pour the hot into the cold, and keep children away.',
};

/** From here on water scalds, K. */
export const scalding = 323.15;

/** From here on feed holds little oxygen, and diseases of the root thrive in it (common practice: 28 to 30 °C), K. */
const tooWarmForRoots = 303.15;

/** A temperature in a sentence. */
export const celsius = (kelvins: number): string => `${writeNumber(kelvins - zeroCelsius)} °C`;

/** What was perhaps meant, where the number of a hot barrel would be a usual temperature in °F. */
function fahrenheitHint(kelvins: number): string {
  const written = kelvins - zeroCelsius;
  return written >= 41 && written <= 86 ? ` Where ${writeNumber(written)} °F was meant, write the unit: it is ${writeNumber(Number(((written - 32) / 1.8).toPrecision(3)))} °C.` : '';
}

/** Says so where water in a barrel is or is to be too warm for roots, or scalds; `stated` are temperatures as someone wrote them. */
export function noteWarmBarrel(highest: number, stated: readonly number[], field: string, { note }: Solving): void {
  if (highest <= tooWarmForRoots) return;
  const hint = fahrenheitHint(Math.max(...stated));
  if (highest > scalding) note('danger', hotWater.code, field, `${celsius(highest)} is wanted or reached. ${hotWater.text}${hint}`);
  else note('caution', 'too-warm-for-roots', field, `${celsius(highest)} is wanted or reached: feed above 28 to 30 °C holds little oxygen and brings disease to the roots, so let it cool before it goes to plants.${hint}`);
}
