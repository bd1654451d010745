import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import { conductivity, dissolvedSolidsReading } from '../units/dimensions.js';
import { dissolvedSolidsScales, type DissolvedSolidsScale } from './dissolved-solids.js';
import { conductivityFromDissolvedSolids, dissolvedSolidsFromConductivity } from './formulas/dissolved-solids.js';

/**
 * The conductivity behind the "ppm" that a meter shows, or the ppm that it shows at a conductivity.
 *
 * In: the `dissolvedSolidsScale` of the meter, '500', '640' or '700', which stands in its manual, and one of `conductivity` (at 25 °C, 0 to
 * 200 mS/cm) and `dissolvedSolidsReading` (0 to 140 000 ppm). Out: both.
 * The ppm are no measurement of solids: only the conductivity can be compared between meters. The scales are common practice; Standard Methods,
 * method 2510, finds from 0.55 to 0.9 mg/L of solids for each µS/cm of a natural water.
 * An InputError where not exactly one of the two is given.
 * @example
 * dissolvedSolidsMeter({ dissolvedSolidsReading: '1050 ppm', dissolvedSolidsScale: '500' }).conductivity.in('mS/cm') // => 2.1
 * dissolvedSolidsMeter({ conductivity: '2.1 mS/cm', dissolvedSolidsScale: '700' }).dissolvedSolidsReading.in('ppm') // => 1470
 */
export const dissolvedSolidsMeter = /* @__PURE__ */ calculation({
  id: 'dissolvedSolidsMeter',
  title: 'Conductivity and the ppm of a meter',
  inputs: () => ({
    conductivity: field.optional(field.quantity(conductivity, { limits: ['0 mS/cm', '200 mS/cm'] })),
    dissolvedSolidsReading: field.optional(field.quantity(dissolvedSolidsReading, { limits: ['0 ppm', '140000 ppm'] })),
    dissolvedSolidsScale: field.choice(Object.keys(dissolvedSolidsScales) as DissolvedSolidsScale[]),
  }),
  outputs: () => ({
    conductivity: output.quantity(conductivity, 'mS/cm'),
    dissolvedSolidsReading: output.quantity(dissolvedSolidsReading, 'ppm'),
  }),
  equation: 'ppm = 500, 640 or 700 × conductivity in mS/cm at 25 °C',
  sources: ['standard-methods-2510'],
  example: { dissolvedSolidsReading: '980 ppm', dissolvedSolidsScale: '700' },
  check: (seen, problem) => expectExactlyOne(seen, ['conductivity', 'dissolvedSolidsReading'], problem),
  solve: ({ conductivity, dissolvedSolidsReading = 0, dissolvedSolidsScale }) => ({
    conductivity: conductivity ?? conductivityFromDissolvedSolids(dissolvedSolidsReading, dissolvedSolidsScale),
    dissolvedSolidsReading: conductivity === undefined ? dissolvedSolidsReading : dissolvedSolidsFromConductivity(conductivity, dissolvedSolidsScale),
  }),
});
