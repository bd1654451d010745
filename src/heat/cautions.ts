/** What can hurt someone with heat. */
import type { Note } from '../calculation/note.js';

export const combustion: Note = {
  code: 'combustion', severity: 'caution',
  text: 'A burner needs air and a flue: without them it fills the house with carbon monoxide, which kills unnoticed, and with ethylene and moisture; fit a carbon monoxide alarm, and have gas and flue done by licensed people under the local code.',
};

export const hotWater: Note = {
  code: 'hot-water', severity: 'caution',
  text: 'Water above 50 °C scalds within minutes and above 60 °C within seconds, and softens plastic barrels: pour the hot into the cold, and keep children away.',
};
