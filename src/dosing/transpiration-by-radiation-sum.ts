import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { radiationSumField } from '../light/site-fields.js';
import { share, waterPerArea, waterPerRadiation } from '../units/dimensions.js';
import { evaporatedShareOfRadiation, transpirationFromRadiation } from './formulas/crop-transpiration.js';
import { plantShare, plantShareFields, plantShareOutputs } from './plant-share.js';

/**
 * What a crop takes up in a day by the radiation rule: so many millilitres for each J/cm² of radiation outdoors and square metre of floor.
 *
 * Takes the radiation sum outdoors (0 to 45 MJ/m²; 1 MJ/m² is 100 J/cm²), the millilitres (0.1 to 10; 1.7 unless given, for a full-grown fruiting crop, 1.5 to 3
 * in use, less while plants are small), plants to a square metre, and the share that drains (0 to 90 %). Radiation cannot evaporate more than 4.08 mL: the
 * share of it that becomes vapour is told, and a factor above that is a danger to the crop's roots and to your water.
 * @throws InputError for input outside these limits.
 * @example
 * transpirationByRadiationSum({ radiationSum: '1500 J/cm²', waterPerRadiation: '2 mL·cm²/(J·m²)', plantDensity: 2.5, drainShare: '30 %' }).appliedVolume?.in('L') // => 1.7143
 */
export const transpirationByRadiationSum = /* @__PURE__ */ calculation({
  id: 'transpirationByRadiationSum',
  title: 'Water that a crop takes up by the radiation rule',
  inputs: () => ({
    radiationSum: radiationSumField(),
    waterPerRadiation: field.withDefault(field.quantity(waterPerRadiation, { limits: ['0.1 mL·cm²/(J·m²)', '10 mL·cm²/(J·m²)'] }), '1.7 mL·cm²/(J·m²)'),
    ...plantShareFields(),
  }),
  outputs: () => ({ transpiration: output.quantity(waterPerArea, 'L/m²'), evaporatedShare: output.quantity(share, '%'), ...plantShareOutputs() }),
  equation: 'T = f Rs; V = T/n; applied V/(1 − d); share evaporated f · 2.45 MJ/kg · 1 kg/L',
  sources: ['common-practice', 'definition'],
  example: { radiationSum: '1800 J/cm²', plantDensity: 2.5, drainShare: '25 %' },
  solve: ({ radiationSum, waterPerRadiation, ...plants }, { note }) => {
    const transpiration = transpirationFromRadiation(waterPerRadiation, radiationSum);
    const evaporatedShare = evaporatedShareOfRadiation(waterPerRadiation);
    if (evaporatedShare > 1) {
      note('danger', 'more-than-radiation-evaporates', 'waterPerRadiation', 'Radiation evaporates at most 4.08 mL for each J/cm² and m²: the crop cannot take up that much, and the rest drains. Look for a factor per plant, or a sum in other units.');
    } else if (waterPerRadiation > 3e-10) {
      note('caution', 'unusual-factor', 'waterPerRadiation', 'More than 3 mL for each J/cm² and m² is unusual, even for a full-grown crop: check it by the drain.');
    }
    return { transpiration, evaporatedShare, ...plantShare(transpiration, plants, note) };
  },
});
