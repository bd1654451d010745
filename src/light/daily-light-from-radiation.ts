import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { dailyLight, photonYield } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { photonFluxFromRadiation } from './formulas/photons.js';
import { coverTransmissionField, radiationSumField } from './site-fields.js';

/** Share of the sun's radiation that is light from 400 to 700 nm, and the photons for a joule above which it can only be of such light, mol/J. */
const [lightInRadiation, leastOfLight] = [0.45, 3e-6];

/**
 * Daily light where the plants are, from the sun's radiation of a day.
 *
 * Takes the radiation sum (0 to 45 MJ/m²), the share of it that the house lets through (1 to 100 %; 55 to 70 % for a whole house; left out, the
 * radiation was measured at the plants) and the photons for each joule (1.5 to 5.1 µmol; 2.06 unless given, which is 4.57 µmol/J of light from 400 to 700 nm and
 * 45 % such light in the sun's radiation; 2.19 and 2.30 are in use too).
 * @throws InputError for input outside these limits.
 * @example
 * dailyLightFromRadiation({ radiationSum: '20 MJ/m²', coverTransmission: '70 %', photonYield: '2.0565 µmol/J' }).dailyLight.in('mol/(m²·d)') // => 28.791
 */
export const dailyLightFromRadiation = /* @__PURE__ */ calculation({
  id: 'dailyLightFromRadiation',
  title: 'Daily light from solar radiation',
  inputs: () => ({
    radiationSum: radiationSumField(),
    coverTransmission: coverTransmissionField(),
    photonYield: field.withDefault(field.quantity(photonYield, { limits: ['1.5 µmol/J', '5.1 µmol/J'], valid: ['1.9 µmol/J', '2.3 µmol/J'] }), '2.06 µmol/J'),
  }),
  outputs: () => ({ dailyLight: output.quantity(dailyLight, 'mol/(m²·d)') }),
  equation: 'DLI = τ Y Rs',
  sources: ['mccree-1972'],
  example: { radiationSum: '18 MJ/m²', coverTransmission: '65 %' },
  solve: ({ radiationSum, coverTransmission, photonYield }, { note }) => {
    if (photonYield > leastOfLight) note('caution', 'yield-of-light', 'photonYield', `${writeNumber(photonYield * 1e6)} µmol/J are of light from 400 to 700 nm (PAR) alone: where radiationSum counts all of the sun's radiation, it is ${writeNumber(Number((lightInRadiation * photonYield * 1e6).toPrecision(3)))} µmol/J, and the daily light comes out ${writeNumber(Number((1 / lightInRadiation).toPrecision(2)))} times too high.`);
    else note('info', 'photon-yield', 'photonYield', `Reckoned with ${writeNumber(photonYield * 1e6)} µmol of photons for each joule of solar radiation; it goes from 1.9 to 2.3 with sky and season.`);
    if (coverTransmission === 1) note('info', 'no-cover', 'coverTransmission', 'No cover is taken off: this is the light where the radiation was measured. A house lets 55 to 70 % through.');
    return { dailyLight: photonFluxFromRadiation(radiationSum * coverTransmission, photonYield) / 86400 };
  },
});
