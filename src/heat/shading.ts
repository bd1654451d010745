import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { flow, irradiance, power, share, temperatureDifference } from '../units/dimensions.js';
import { percent } from '../units/in-words.js';
import { airSpecificHeat } from './formulas/air-heat.js';
import { solarGain } from './formulas/ventilation.js';
import { airDensity, airOutside, checkAreas, checkCover, coverOf, sunlitHouseFields } from './house-fields.js';

/** What shade cloths and washes take away at most. */
const densestShade = 0.9;

/**
 * Share of the sun that must be shaded off so that a house gets no warmer than wanted.
 *
 * Takes the sun on level ground (0 to 1400 W/m²), what of it comes in (0.7 by default), the share that the crop turns into vapour (0.5 by default), the
 * areas of floor and cover (0.5 m² and up), the cover by name or its heat transfer, the air that goes through (0 to 10 000 m³/s) with its density, the
 * temperature outside (-40 to 60 °C) and the highest wanted inside. Gives the share to shade off, the sun left on the crop, and the rise without shade.
 * Shade outside the cover: inside it, half of what it takes up stays in the house.
 * @throws InputError for input outside these limits, for a house without a cover, for a cover smaller than the floor, and for a wanted temperature
 * that is not above that outside, which shade alone never gives.
 * @example
 * shading({ globalRadiation: '800 W/m²', evaporativeShare: 0, floorArea: '18 m²', coverArea: '58.8 m²', coverHeatTransfer: '3.7 W/(m²·K)', ventilationFlow: '0.7448805 m³/s', outsideTemperature: '25 °C', wantedTemperature: '30 °C' }).shadingShare.in('%') // => 44.6
 */
export const shading = /* @__PURE__ */ calculation({
  id: 'shading',
  title: 'Shade that holds a temperature',
  inputs: () => ({
    ...sunlitHouseFields(),
    ventilationFlow: field.quantity(flow, { limits: ['0 m³/s', '10000 m³/s'] }),
    outsideTemperature: airOutside(),
    wantedTemperature: airOutside(),
    airDensity: airDensity(),
  }),
  outputs: () => ({
    shadingShare: output.quantity(share, '%'),
    radiationInside: output.quantity(irradiance, 'W/m²'),
    unshadedRise: output.quantity(temperatureDifference, 'K'),
    solarGain: output.quantity(power, 'W'),
  }),
  equation: 's = 1 − (U Ac + ρcp q)(T − To)/[τ I A (1 − E)]',
  sources: ['asabe-ep406'],
  example: { globalRadiation: '750 W/m²', floorArea: '40 m²', coverArea: '82.5 m²', cover: 'single film', ventilationFlow: '0.6 m³/s', outsideTemperature: '26 °C', wantedTemperature: '31 °C' },
  check: (seen, problem) => {
    checkCover(seen, problem);
    checkAreas(seen, problem);
    if (seen.wantedTemperature <= seen.outsideTemperature) problem(['wantedTemperature'], 'one above the temperature outside', 'one not above it', 'shade and air come no lower than outside; evaporation does');
  },
  solve: ({ globalRadiation, coverTransmission, evaporativeShare, floorArea, coverArea, ventilationFlow, outsideTemperature, wantedTemperature, airDensity, ...cover }, { note }) => {
    const gain = solarGain(globalRadiation, floorArea, coverTransmission, evaporativeShare);
    const carried = coverOf(cover).heatTransfer * coverArea + ventilationFlow * airDensity * airSpecificHeat;
    const allowed = carried * (wantedTemperature - outsideTemperature);
    const shadingShare = gain > allowed ? 1 - allowed / gain : 0;
    if (shadingShare > densestShade) note('caution', 'too-much-shade', 'shadingShare', `${percent(shadingShare)} is more than shade cloth or wash takes away and leaves no light to grow in: open more vents first.`);
    return { shadingShare, radiationInside: (1 - shadingShare) * coverTransmission * globalRadiation, unshadedRise: gain / carried, solarGain: gain };
  },
});
