import { calculation } from '../calculation/calculation.js';
import { acid } from '../calculation/caution.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { amountConcentration, chargeConcentration, density, massConcentration, share } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { acidStrengthFields, noteDensity, nutrientsOfAcid } from './acid-product.js';
import { molarMassOfAcid, titratingAcid } from './acids.js';
import { byForm } from './feed.js';
import { liquidProductDensity, strengthFromDensity, strongestByDensity } from './formulas/acid-density.js';

/**
 * What is in a bottle of acid: its density from the strength on the label, or its strength from a density measured with a hydrometer, and what
 * every millilitre brings to the water.
 *
 * In: the `acid`, one of `purity` (its strength by mass, 1 to 100 %) and `productDensity` (1 to 1.9 kg/L), and the `productTemperature` (0 to
 * 50 °C, 20 °C if not given).
 * Out: both of them; `acidConcentration` in mol/L; `alkalinityTaken`, what a litre of it takes away, 1 eq/L being 1 meq for each mL;
 * `nutrientsInProduct`, 1 g/L being 1 mg for each mL.
 *
 * Densities are met within 0.3 % as far as they were fitted (nitric acid 70 %, phosphoric 85 %, sulfuric 78 %); stronger acid takes handbook
 * values from memory, and a note says so. An InputError where not exactly one of the two is given, or a density that no strength has; above 97 %
 * density does not tell the strength any more.
 *
 * Source: Laliberté and Cooper 2004, with coefficients of Laliberté 2009.
 * @example
 * const bottle = acidStrength({ acid: 'nitric-acid', purity: '38 %' });
 * bottle.productDensity.in('kg/L') // => 1.233
 * bottle.acidConcentration.in('mol/L') // => 7.435
 * bottle.nutrientsInProduct['N-NO3']!.in('g/L') // => 104
 */
export const acidStrength = /* @__PURE__ */ calculation({
  id: 'acidStrength',
  title: 'Strength and density of a bottle of acid',
  inputs: () => ({ acid: field.choice(['nitric-acid', 'phosphoric-acid', 'sulfuric-acid']), ...acidStrengthFields() }),
  outputs: () => ({
    purity: output.quantity(share, '%'),
    productDensity: output.quantity(density, 'kg/L'),
    acidConcentration: output.quantity(amountConcentration, 'mol/L'),
    alkalinityTaken: output.quantity(chargeConcentration, 'eq/L'),
    nutrientsInProduct: byForm(output.quantity(massConcentration, 'g/L')),
  }),
  equation: 'c = w ρ/M; 1/ρ = (1 - w)/ρ of water + w/apparent density',
  sources: ['laliberte-cooper-2004', 'laliberte-2009', 'prohaska-2022'],
  cautions: [acid],
  example: { acid: 'phosphoric-acid', purity: '75 %' },
  check: (seen, problem) => expectExactlyOne(seen, ['purity', 'productDensity'], problem),
  solve: (inputs, { note, refuse }) => {
    const { acid: key, productTemperature } = inputs;
    const densityOf = (massFraction: number) => liquidProductDensity(key, massFraction, productTemperature);
    const strengthOf = (measured: number) => {
      const [least, most] = [densityOf(0), densityOf(strongestByDensity)];
      if (measured < least || measured > most) refuse('productDensity', `a density from ${writeNumber(least / 1000)} to ${writeNumber(most / 1000)} kg/L`, `${writeNumber(measured / 1000)} kg/L`, 'of water, and of acid of 97 %');
      return strengthFromDensity(key, measured, productTemperature).value;
    };
    const purity = inputs.purity ?? strengthOf(inputs.productDensity ?? 0);
    noteDensity(key, purity, productTemperature, note);
    const productDensity = inputs.productDensity ?? densityOf(purity);
    const acidConcentration = (purity * productDensity) / molarMassOfAcid(key);
    return {
      purity,
      productDensity,
      acidConcentration,
      alkalinityTaken: titratingAcid(key).protons * acidConcentration,
      nutrientsInProduct: nutrientsOfAcid(key, purity, productDensity),
    };
  },
});
