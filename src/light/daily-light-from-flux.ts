import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { dailyLight, photonFlux, time } from '../units/dimensions.js';
import { dailyLightFromFluxAndTime } from './formulas/photons.js';

/**
 * Daily light from a constant flux of photons: what lamps bring in the hours that they burn.
 *
 * Takes the flux where the plants are (0 to 5000 µmol/(m²·s); full sun is 2000 to 2300) and how long a day it shines (0 to 24 h).
 * @throws InputError for input outside these limits.
 * @example
 * dailyLightFromFlux({ photonFlux: '200 µmol/(m²·s)', lightTime: '16 h' }).dailyLight.in('mol/(m²·d)') // => 11.52
 */
export const dailyLightFromFlux = /* @__PURE__ */ calculation({
  id: 'dailyLightFromFlux',
  title: 'Daily light from a constant flux',
  inputs: () => ({
    photonFlux: field.quantity(photonFlux, { limits: ['0 µmol/(m²·s)', '5000 µmol/(m²·s)'] }),
    lightTime: field.quantity(time, { limits: ['0 h', '24 h'] }),
  }),
  outputs: () => ({ dailyLight: output.quantity(dailyLight, 'mol/(m²·d)') }),
  equation: 'DLI = PPFD t',
  sources: ['definition'],
  example: { photonFlux: '200 µmol/(m²·s)', lightTime: '16 h' },
  solve: ({ photonFlux, lightTime }) => ({ dailyLight: dailyLightFromFluxAndTime(photonFlux, lightTime) / 86400 }),
});
