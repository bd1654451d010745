import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { coverTransmissionField, radiationSumField } from '../light/site-fields.js';
import { waterPerArea } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { evaporationFromLatentHeat, tomatoUptakeCarmassi2007 as tomato, waterUptakeCarmassi2007 } from './formulas/crop-transpiration.js';
import { isAbove } from './is-above.js';
import { plantShare, plantShareFields, plantShareOutputs } from './plant-share.js';
import { leafAreaIndexField } from './two-term-fields.js';

/** What warm air may make a crop give off in a day beyond what radiation evaporates, m. Common practice, no source. */
const mostFromAir = 0.5e-3;

/**
 * What a fruiting crop under cover takes up in a day, by the radiation that its leaves take in.
 *
 * Takes the radiation sum (0 to 45 MJ/m²) with the share of it that the house lets through (left out, it was measured inside), the leaf area index (0 to 10), plants
 * to a square metre and the share that drains; and the coefficients: share of the radiation taken in that evaporates (0 to 1), extinction of light, and uptake
 * without any radiation (0 to 2 L/m²). Their defaults were fitted to tomato without soil, are from memory, and have to be checked for any crop.
 * @throws InputError for input outside these limits.
 * @example
 * dailyUptakeByRadiation({ radiationSum: '10 MJ/m²', leafAreaIndex: 3 }).transpiration.in('L/m²') // => 3.56199
 */
export const dailyUptakeByRadiation = /* @__PURE__ */ calculation({
  id: 'dailyUptakeByRadiation',
  title: 'Water that a crop takes up in a day by radiation and leaf area',
  inputs: () => ({
    radiationSum: radiationSumField(),
    coverTransmission: coverTransmissionField(),
    leafAreaIndex: leafAreaIndexField(),
    uptakeCoefficient: field.withDefault(field.number({ limits: [0, 1] }), tomato[0]),
    extinctionCoefficient: field.withDefault(field.number({ limits: [0.1, 1.5] }), tomato[1]),
    uptakeInTheDark: field.withDefault(field.quantity(waterPerArea, { limits: ['0 L/m²', '2 L/m²'] }), '0.188 L/m²'),
    ...plantShareFields(),
  }),
  outputs: () => ({ transpiration: output.quantity(waterPerArea, 'L/m²'), ...plantShareOutputs() }),
  equation: 'WU = a (1 − exp(−k LAI)) τ Rs/(2.45 MJ/kg) + b',
  sources: ['carmassi-2007'],
  example: { radiationSum: '18 MJ/m²', coverTransmission: '65 %', leafAreaIndex: 2.5, plantDensity: 2.5, drainShare: '25 %' },
  solve: ({ radiationSum, coverTransmission, leafAreaIndex, uptakeCoefficient, extinctionCoefficient, uptakeInTheDark, ...plants }, { note }) => {
    if (uptakeCoefficient === tomato[0] || extinctionCoefficient === tomato[1] || uptakeInTheDark === tomato[2]) note('caution', 'coefficients-from-memory', 'uptakeCoefficient', 'Coefficients that are not given are those of tomato without soil, from memory: check them by weight or drain before relying on them.');
    const transpiration = waterUptakeCarmassi2007(coverTransmission * radiationSum, leafAreaIndex, [uptakeCoefficient, extinctionCoefficient, uptakeInTheDark]);
    const evaporated = evaporationFromLatentHeat(coverTransmission * radiationSum);
    if (isAbove(transpiration, evaporated + mostFromAir)) note('danger', 'more-than-radiation-evaporates', 'uptakeInTheDark', `The radiation at the plants evaporates ${writeNumber(Number((evaporated * 1000).toPrecision(3)))} L/m², far less than this: the crop cannot take up that much, and the rest drains. Look at uptakeInTheDark and at the radiation.`);
    return { transpiration, ...plantShare(transpiration, plants, note) };
  },
});
