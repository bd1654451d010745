import { calculation } from '../calculation/calculation.js';
import { acid } from '../calculation/caution.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { alkalinity, amountConcentration, mass, massConcentration, share, volume } from '../units/dimensions.js';
import { standardAtmosphere } from '../water/constants.js';
import { noteTreatedWater } from './acid-notes.js';
import { acidProductFields, acidProductOf, checkAcidProduct, nutrientsOfAcid } from './acid-product.js';
import { doseForAlkalinity, doseForPH } from './acid-target.js';
import { acidWaterFields, acidWaterOf, checkAcidWater } from './acid-water.js';
import { byForm } from './feed.js';
import { airedWater, speciationOfWater, waterWithAcid } from './formulas/acid-titration.js';

/**
 * How much acid brings a water to a pH, or leaves it a wanted alkalinity.
 *
 * In: the `volume` of water, its `alkalinity` (0 to 50 meq/L; or as bicarbonate among `ions` or `nutrients`, which also let ion pairs and ionic
 * strength be counted, and phosphate, ammonium and citrate already in it), its `pH` as it comes (0 to 14), the `waterTemperature` (0 to 50 °C,
 * 20 °C if not given; the constants hold from 5 to 35 °C); the `acid` with its `purity`, the strength by mass; and one of `targetPH` and
 * `targetAlkalinity`. `exposure` is `'closed'` (as not given) for the pH that a meter shows right after stirring in, `'open'` for
 * water that stands in balance with the air before and after, whose `pH` then needs not be known. `carbonDioxide` of the air is a share by
 * volume (0.042 % if not given, 0.01 to 1 %), at the pressure of sea level. Volume of acid comes from its density at the `productTemperature`
 * (0 to 50 °C, 20 °C if not given), or from a `productDensity` read off the container (1 to 1.9 kg/L).
 * Out: `mass` of the product and, of a liquid, its `productVolume`; `acidConcentration`, pure acid in the water; the `pH` reached, worked out
 * anew from the dose, and `pHInAir`, where it ends once the carbon dioxide has left; `alkalinityLeft`, zero where acid is left over;
 * `dissolvedCarbonDioxide`; `nutrientsAdded`; how well the balances closed.
 *
 * Every acid counts by what it gives off at that pH: nitric one proton, sulfuric two, phosphoric one and a part of the second, citric two and
 * parts around. Alkalinity is counted to about pH 4.5: from CO2, H2PO4-, NH4+ and hydrogen citrate. The volume of the acid is not added to
 * that of the water. Within 0.01 in pH, and about 1 % of dose, of the public program PHREEQC 3 with its own constants. An InputError where alkalinity
 * or pH is not told or cannot be of one water, where the target is above what the water has, out of reach of the acid (1 mol/L at most), or the
 * water has more than 0.5 mol/L of ionic strength. Stir, wait, measure, and come to the target in two or three steps.
 *
 * Source: constants after Plummer and Busenberg 1982, Ball and Nordstrom 1991 and Allison et al. 1991, activities after Davies 1962, densities
 * after Laliberté and Cooper 2004.
 * @example
 * const barrel = acidDose({ volume: '120 L', alkalinity: '4 meq/L', pH: 7.4, waterTemperature: '14 °C', acid: 'nitric-acid', purity: '38 %', targetPH: 5.8 });
 * barrel.productVolume!.in('mL') // => 50.5
 * barrel.nutrientsAdded['N-NO3'].in('mg/L') // => 43.8
 */
export const acidDose = /* @__PURE__ */ calculation({
  id: 'acidDose',
  title: 'Acid for a pH or an alkalinity of the water',
  inputs: () => ({
    ...acidWaterFields(),
    ...acidProductFields(),
    targetPH: field.optional(field.number({ limits: [0, 14] })),
    targetAlkalinity: field.optional(field.quantity(alkalinity, { limits: ['0 meq/L', '50 meq/L'] })),
  }),
  outputs: () => ({
    mass: output.quantity(mass, 'g'),
    productVolume: output.optional(output.quantity(volume, 'mL')),
    acidConcentration: output.quantity(amountConcentration, 'mmol/L'),
    pH: output.number(),
    pHInAir: output.number(),
    alkalinityLeft: output.quantity(alkalinity, 'meq/L'),
    dissolvedCarbonDioxide: output.quantity(amountConcentration, 'mmol/L'),
    nutrientsAdded: byForm(output.quantity(massConcentration, 'mg/L')),
    convergence: output.group({ relativeResidual: output.quantity(share, '%'), steps: output.number() }),
  }),
  equation: 'alkalinity at equilibrium(totals + x, pH) = alkalinity - protons × x; mass = x × volume × molar mass / purity',
  sources: ['plummer-busenberg-1982', 'ball-nordstrom-1991', 'allison-1991', 'davies-1962', 'parkhurst-appelo-2013', 'laliberte-cooper-2004', 'laliberte-2009', 'prohaska-2022'],
  cautions: [acid],
  example: {
    volume: '120 L',
    alkalinity: '3.8 meq/L', nutrients: { Ca: '72 mg/L', Mg: '9 mg/L', Na: '14 mg/L', Cl: '22 mg/L', S: '12 mg/L' }, pH: 7.5,
    waterTemperature: '14 °C',
    acid: 'phosphoric-acid', purity: '75 %', targetPH: 5.8,
  },
  check: (seen, problem) => {
    checkAcidWater(seen, problem);
    checkAcidProduct(seen, problem);
    expectExactlyOne(seen, ['targetPH', 'targetAlkalinity'], problem);
  },
  solve: (inputs, solving) => {
    const water = acidWaterOf(inputs, solving);
    const product = acidProductOf(inputs, solving);
    const { value: dose, steps } = inputs.targetPH === undefined
      ? doseForAlkalinity(water, product.acid, inputs.targetAlkalinity ?? 0, solving)
      : doseForPH(water, product.acid, inputs.targetPH, 'targetPH', solving);
    const after = waterWithAcid(water, product.acid, dose);
    const reached = speciationOfWater(after);
    const inAir = speciationOfWater(airedWater(after, inputs.carbonDioxide * standardAtmosphere));
    noteTreatedWater({ acid: product.acid, after, reached, inAir, density: water.density }, solving);

    const acidConcentration = dose * water.density;
    const weighed = acidConcentration * inputs.volume * product.massPerMole;
    return {
      mass: weighed,
      productVolume: product.density && weighed / product.density,
      acidConcentration,
      pH: reached.pH,
      pHInAir: inAir.pH,
      alkalinityLeft: Math.max(0, after.alkalinity * water.density),
      dissolvedCarbonDioxide: (reached.molalities.CO2 ?? 0) * water.density,
      nutrientsAdded: nutrientsOfAcid(inputs.acid, product.purity, weighed / inputs.volume),
      convergence: { relativeResidual: reached.residual, steps: steps + reached.steps },
    };
  },
});
