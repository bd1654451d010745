import { calculation } from '../calculation/calculation.js';
import { acid } from '../calculation/caution.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { alkalinity, amountConcentration, mass, share, volume } from '../units/dimensions.js';
import { acidProductFields, acidProductOf, checkAcidProduct } from './acid-product.js';
import { doseForPH } from './acid-target.js';
import { acidWaterFields, acidWaterOf, checkAcidWater } from './acid-water.js';
import { speciationOfWater, waterWithAcid } from './formulas/acid-titration.js';

/**
 * What acid does to a water, dose by dose: the curve that a titration draws, as columns of equal length.
 *
 * In: the water and the acid as for `acidDose`; one of `mostAcidConcentration` (1 µmol/L to 1 mol/L) and `lowestPH` (0 to 14), where the curve
 * ends; the number of `points` (2 to 200, 25 if not given), in equal steps of acid from none on.
 * Out: `acidConcentrations` in mmol/L with the `productMasses` and, of a liquid, `productVolumes` for the whole `volume` of water; the
 * `pHValues`; `alkalinitiesLeft`, zero where acid is left over; `dissolvedCarbonDioxide`, which grows in a closed water and stays in an open one.
 *
 * An InputError as for `acidDose`. Source: as for `acidDose`.
 * @example
 * const curve = titrationCurve({ volume: '1 L', alkalinity: '3 meq/L', pH: 7.5, acid: 'sulfuric-acid', purity: '37 %', mostAcidConcentration: '1.4 mmol/L', points: 8 });
 * curve.pHValues.map((pH) => Number(pH.toFixed(1))) // => [7.5, 7, 6.7, 6.5, 6.2, 6, 5.7, 5.2]
 */
export const titrationCurve = /* @__PURE__ */ calculation({
  id: 'titrationCurve',
  title: 'Curve of a titration of water with acid',
  inputs: () => ({
    ...acidWaterFields(),
    ...acidProductFields(),
    mostAcidConcentration: field.optional(field.quantity(amountConcentration, { limits: ['1 µmol/L', '1 mol/L'] })),
    lowestPH: field.optional(field.number({ limits: [0, 14] })),
    points: field.withDefault(field.count({ limits: [2, 200] }), 25),
  }),
  outputs: () => ({
    acidConcentrations: output.column(amountConcentration, 'mmol/L'),
    productMasses: output.column(mass, 'g'),
    productVolumes: output.optional(output.column(volume, 'mL')),
    pHValues: output.list(output.number()),
    alkalinitiesLeft: output.column(alkalinity, 'meq/L'),
    dissolvedCarbonDioxide: output.column(amountConcentration, 'mmol/L'),
    convergence: output.group({ relativeResidual: output.quantity(share, '%'), steps: output.number() }),
  }),
  equation: 'pH of equilibrium(totals + x, alkalinity - protons × x) for x from none to the most',
  sources: ['plummer-busenberg-1982', 'ball-nordstrom-1991', 'allison-1991', 'davies-1962', 'parkhurst-appelo-2013', 'laliberte-cooper-2004', 'laliberte-2009', 'prohaska-2022'],
  cautions: [acid],
  example: { volume: '10 L', alkalinity: '4 meq/L', pH: 7.4, waterTemperature: '14 °C', acid: 'nitric-acid', purity: '38 %', lowestPH: 4.5 },
  check: (seen, problem) => {
    checkAcidWater(seen, problem);
    checkAcidProduct(seen, problem);
    expectExactlyOne(seen, ['mostAcidConcentration', 'lowestPH'], problem);
  },
  solve: (inputs, solving) => {
    const water = acidWaterOf(inputs, solving);
    const product = acidProductOf(inputs, solving);
    const { value: most, steps } = inputs.lowestPH === undefined
      ? { value: (inputs.mostAcidConcentration ?? 0) / water.density, steps: 0 }
      : doseForPH(water, product.acid, inputs.lowestPH, 'lowestPH', solving);
    const doses = Float64Array.from({ length: inputs.points }, (_, i) => (most * i) / (inputs.points - 1));
    const waters = Array.from(doses, (dose) => waterWithAcid(water, product.acid, dose));
    const found = waters.map(speciationOfWater);

    const acidConcentrations = doses.map((dose) => dose * water.density);
    const productMasses = acidConcentrations.map((amount) => amount * inputs.volume * product.massPerMole);
    const { density } = product;
    return {
      acidConcentrations,
      productMasses,
      productVolumes: density === undefined ? undefined : productMasses.map((weighed) => weighed / density),
      pHValues: found.map(({ pH }) => pH),
      alkalinitiesLeft: Float64Array.from(waters, (one) => Math.max(0, one.alkalinity * water.density)),
      dissolvedCarbonDioxide: Float64Array.from(found, ({ molalities }) => (molalities.CO2 ?? 0) * water.density),
      convergence: { relativeResidual: Math.max(...found.map(({ residual }) => residual)), steps: found.reduce((sum, one) => sum + one.steps, steps) },
    };
  },
});
