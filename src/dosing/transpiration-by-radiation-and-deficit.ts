import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { evaporationRate, irradiance, pressure } from '../units/dimensions.js';
import { deficitTermBaille1994, evaporationFromLatentHeat, radiationTermBaille1994 } from './formulas/crop-transpiration.js';
import { noteExcess, noteUncalibrated, twoTermFields } from './two-term-fields.js';

/**
 * What a crop under cover transpires at a moment, by radiation and the dryness of the air.
 *
 * Takes solar radiation (0 to 1500 W/m²) with the share of it that the house lets through (left out, it was measured above the crop), the vapour pressure deficit
 * (0 to 6 kPa), the leaf area index (0 to 10), and the coefficients of the crop: for radiation (0 to 1), for the deficit (0 to 60 W/(m²·kPa) for each unit of leaf area
 * index) and for the extinction of light (0.64 unless given). The first two have defaults that belong to no crop, and a note says so.
 * @throws InputError for input outside these limits, and for a crop that would take more than 1000 W/m² from the air.
 * @example
 * transpirationByRadiationAndDeficit({ globalRadiation: '400 W/m²', vapourPressureDeficit: '1.2 kPa', leafAreaIndex: 3 }).latentHeatFlux.in('W/m²') // => 255.214
 */
export const transpirationByRadiationAndDeficit = /* @__PURE__ */ calculation({
  id: 'transpirationByRadiationAndDeficit',
  title: 'Transpiration by radiation and deficit',
  inputs: () => ({
    globalRadiation: field.quantity(irradiance, { limits: ['0 W/m²', '1500 W/m²'] }),
    vapourPressureDeficit: field.quantity(pressure, { limits: ['0 kPa', '6 kPa'] }),
    ...twoTermFields(),
  }),
  outputs: () => ({
    radiationTerm: output.quantity(irradiance, 'W/m²'),
    deficitTerm: output.quantity(irradiance, 'W/m²'),
    latentHeatFlux: output.quantity(irradiance, 'W/m²'),
    transpirationRate: output.quantity(evaporationRate, 'L/(m²·h)'),
  }),
  equation: 'λE = A (1 − exp(−k LAI)) τ G + B LAI D; E = λE/2.45 MJ/kg',
  sources: ['baille-1994', 'katsoulas-kittas-2011'],
  example: { globalRadiation: '600 W/m²', coverTransmission: '65 %', vapourPressureDeficit: '1.1 kPa', leafAreaIndex: 2.5, radiationCoefficient: 0.5, deficitCoefficient: '20 W/(m²·kPa)' },
  solve: (seen, { note, refuse }) => {
    const { globalRadiation, coverTransmission, vapourPressureDeficit, leafAreaIndex, radiationCoefficient, deficitCoefficient, extinctionCoefficient } = seen;
    noteUncalibrated(seen, note);
    const inside = coverTransmission * globalRadiation;
    const radiationTerm = radiationTermBaille1994(inside, leafAreaIndex, radiationCoefficient, extinctionCoefficient);
    const deficitTerm = deficitTermBaille1994(vapourPressureDeficit, leafAreaIndex, deficitCoefficient);
    const latentHeatFlux = radiationTerm + deficitTerm;
    noteExcess(latentHeatFlux - inside, note, refuse);
    return { radiationTerm, deficitTerm, latentHeatFlux, transpirationRate: evaporationFromLatentHeat(latentHeatFlux) };
  },
});
