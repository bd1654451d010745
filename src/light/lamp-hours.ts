import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import type { Note } from '../calculation/note.js';
import * as output from '../calculation/output.js';
import { dailyLight, photonFlux, time } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { dailyLightFromFluxAndTime, lampTimeForDailyLight } from './formulas/photons.js';

/** Lamps burning longer than this, in s, leave less than six hours of dark. Common practice, no source. */
const longest = 18 * 3600;

/** What the rounding of doubles may add, as a share. */
const rounding = 1e-12;

const lampElectricity: Note = {
  code: 'mains-electricity', severity: 'caution',
  text: 'Mains electricity near water kills: lamps, their ballasts and wiring in a wet house have to be made for it, behind a residual-current device, hung so that they cannot fall, and put in by a licensed electrician under the local code.',
};

/**
 * How long lamps have to burn to bring the daily light that the sun leaves wanting.
 *
 * Takes the daily light aimed at and that from the sun, both where the plants are (0 to 80 mol/(m²·d)), and what the lamps give there (1 to 3000 µmol/(m²·s)).
 * Notes where the plants are left with less than six hours of dark. Where the sun brings enough, the time is nothing.
 * @throws InputError for input outside these limits, and where the lamps are too weak to reach the aim in a day.
 * @example
 * lampHours({ targetDailyLight: '17 mol/(m²·d)', naturalLight: '9 mol/(m²·d)', lampFlux: '120 µmol/(m²·s)' }).lampTime.in('h') // => 18.519
 */
export const lampHours = /* @__PURE__ */ calculation({
  id: 'lampHours',
  title: 'Hours of lamplight for a daily light',
  inputs: () => ({
    targetDailyLight: field.quantity(dailyLight, { limits: ['0 mol/(m²·d)', '80 mol/(m²·d)'] }),
    naturalLight: field.quantity(dailyLight, { limits: ['0 mol/(m²·d)', '80 mol/(m²·d)'] }),
    lampFlux: field.quantity(photonFlux, { limits: ['1 µmol/(m²·s)', '3000 µmol/(m²·s)'] }),
  }),
  outputs: () => ({ lampTime: output.quantity(time, 'h'), lampLight: output.quantity(dailyLight, 'mol/(m²·d)') }),
  equation: 't = (DLI wanted − DLI sun)/PPFD',
  sources: ['definition', 'common-practice'],
  cautions: [lampElectricity],
  example: { targetDailyLight: '12 mol/(m²·d)', naturalLight: '7.5 mol/(m²·d)', lampFlux: '120 µmol/(m²·s)' },
  solve: ({ targetDailyLight, naturalLight, lampFlux }, { note, refuse }) => {
    const wanted = lampTimeForDailyLight(targetDailyLight * 86400, naturalLight * 86400, lampFlux);
    if (wanted > 86400 * (1 + rounding)) {
      const needed = Math.ceil((targetDailyLight - naturalLight) * 1e6 * (1 - rounding));
      refuse('lampFlux', `at least ${needed} µmol/(m²·s), which reach the aim in 24 h`, `${writeNumber(lampFlux * 1e6)} µmol/(m²·s)`, 'more lamps, or a lower aim');
    }
    const lampTime = Math.min(86400, wanted);
    if (lampTime > longest * (1 + rounding)) note('caution', 'short-night', 'lampTime', 'Less than six hours of dark are left: many fruiting crops suffer without them, and day length decides when strawberries flower. Stronger lamps for a shorter time bring the same light.');
    return { lampTime, lampLight: dailyLightFromFluxAndTime(lampFlux, lampTime) / 86400 };
  },
});
