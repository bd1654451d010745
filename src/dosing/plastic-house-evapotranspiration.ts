import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { dayOfYearField, radiationSumField } from '../light/site-fields.js';
import { evaporationRate } from '../units/dimensions.js';
import { plasticHouseEvapotranspirationFernandez2009 } from './formulas/reference-evapotranspiration.js';

/**
 * Evapotranspiration of well-watered grass in an unheated plastic house over a day, from the radiation outdoors alone: for a tunnel without any meter.
 *
 * Takes the day of the year (1 to 366), the radiation sum outdoors and the share of it that the house lets through (10 to 100 %). Made near 37° N; south of
 * the equator count the days from the first of July. All coefficients but the first are from memory; the formula plasticHouseEvapotranspirationFernandez2009
 * takes others.
 * @throws InputError for input outside these limits.
 * @example
 * plasticHouseEvapotranspiration({ dayOfYear: 100, radiationSum: '20 MJ/m²', coverTransmission: '65 %' }).referenceEvapotranspiration.in('mm/d') // => 2.536
 */
export const plasticHouseEvapotranspiration = /* @__PURE__ */ calculation({
  id: 'plasticHouseEvapotranspiration',
  title: 'Reference evapotranspiration of a day in an unheated plastic house',
  inputs: () => ({
    dayOfYear: dayOfYearField(),
    radiationSum: radiationSumField(),
    coverTransmission: field.share({ limits: [0.1, 1] }),
  }),
  outputs: () => ({ referenceEvapotranspiration: output.quantity(evaporationRate, 'mm/d') }),
  equation: 'ETo = (0.288 + 0.0019 J) Go τ up to day 220, (1.339 − 0.00288 J) Go τ after it, Go in mm/d',
  sources: ['fernandez-2009'],
  example: { dayOfYear: 110, radiationSum: '18 MJ/m²', coverTransmission: '65 %' },
  solve: ({ dayOfYear, radiationSum, coverTransmission }, { note }) => {
    note('caution', 'coefficients-from-memory', 'referenceEvapotranspiration', 'The coefficients are from memory but for the first, and were fitted near 37° N: weigh a bag or measure the drain for a week before relying on them.');
    return { referenceEvapotranspiration: plasticHouseEvapotranspirationFernandez2009(dayOfYear, radiationSum, coverTransmission) };
  },
});
