import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { evaporationRate } from '../units/dimensions.js';
import { cropCoefficientFao56, cropCoefficientsFao56, cropStages, type CoefficientCrop } from './crop-coefficients.js';
import { cropEvapotranspirationFao56 } from './formulas/crop-transpiration.js';
import { plantShare, plantShareFields, plantShareOutputs } from './plant-share.js';

/**
 * What a crop needs in a day, from the reference evapotranspiration and a crop coefficient.
 *
 * Takes the reference evapotranspiration outdoors or in the house (0 to 20 mm/d), and either the crop coefficient (0.05 to 2) or a crop and its stage by name
 * (FAO-56: initial, mid, mid on stakes, end); plants to a square metre, and the share that drains (0 to 90 %). The coefficients of the table are for crops that
 * fill their ground in the open field, soil included: in bags and troughs they are a start, to be set right by the drain.
 * @throws InputError for input outside these limits, for both coefficient and crop or neither, and for a crop without a coefficient on stakes.
 * @example
 * cropWaterNeed({ referenceEvapotranspiration: '3 mm/d', crop: 'strawberry', cropStage: 'mid', plantDensity: 6, drainShare: '20 %' }).appliedVolume?.in('L') // => 0.53125
 */
export const cropWaterNeed = /* @__PURE__ */ calculation({
  id: 'cropWaterNeed',
  title: 'Water that a crop needs in a day',
  inputs: () => ({
    referenceEvapotranspiration: field.quantity(evaporationRate, { limits: ['0 mm/d', '20 mm/d'] }),
    cropCoefficient: field.optional(field.number({ limits: [0.05, 2] })),
    crop: field.optional(field.choice(Object.keys(cropCoefficientsFao56) as CoefficientCrop[])),
    cropStage: field.optional(field.choice(cropStages)),
    ...plantShareFields(),
  }),
  outputs: () => ({ cropCoefficient: output.number(), cropEvapotranspiration: output.quantity(evaporationRate, 'mm/d'), ...plantShareOutputs() }),
  equation: 'ETc = Kc ETo; V = ETc/n; applied V/(1 − d)',
  sources: ['fao56'],
  example: { referenceEvapotranspiration: '3.2 mm/d', crop: 'aubergine', cropStage: 'mid', plantDensity: 2.5, drainShare: '25 %' },
  check: ({ cropCoefficient, crop, cropStage }, problem) => {
    if ((crop === undefined) !== (cropStage === undefined)) problem([crop === undefined ? 'crop' : 'cropStage'], 'a crop and its stage', 'one of them');
    if ((cropCoefficient === undefined) === (crop === undefined && cropStage === undefined)) problem(['cropCoefficient'], 'either a coefficient or a crop and its stage', cropCoefficient === undefined ? 'neither' : 'both');
    if (crop !== undefined && cropStage !== undefined && cropCoefficientFao56(crop, cropStage) === undefined) problem(['cropStage'], `initial, mid or end for ${crop}`, cropStage);
  },
  solve: ({ referenceEvapotranspiration, cropCoefficient: given, crop, cropStage, ...plants }, { note }) => {
    if (given === undefined) note('info', 'field-coefficient', 'cropCoefficient', 'The coefficient is for the open field with a lowest humidity of 45 % and wind of 2 m/s; in a moist, still house tall crops need less.');
    const cropCoefficient = given ?? cropCoefficientFao56(crop!, cropStage!)!;
    const cropEvapotranspiration = cropEvapotranspirationFao56(referenceEvapotranspiration, cropCoefficient);
    return { cropCoefficient, cropEvapotranspiration, ...plantShare(cropEvapotranspiration * 86400, plants, note) };
  },
});
