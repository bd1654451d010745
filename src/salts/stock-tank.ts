import { calculation } from '../calculation/calculation.js';
import { backflow } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import { dilution, mass, massConcentration, volume } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { decimalQuantity } from './decimal-quantity.js';
import { refuseImpossible } from './feed-notes.js';
import { massForStock } from './formulas/injector.js';

/** What the common feed salts all dissolve to, kg/m3, potassium sulfate the least. Common practice, no source. */
const surelyDissolves = 100;

/**
 * How much of a product goes into the stock tank of an injector, for a wanted strength of one nutrient in the feed.
 *
 * In: `massConcentration` wanted in the feed; `massFraction` of that nutrient in the product, as an element (a label's K2O is not K: see
 * `labelAnalysis`); `dilution` of the injector, `1:100` being one part of stock in 100 parts of feed (where it is marked by the water that joins
 * one part of stock, write 1:101; `1:1` is a barrel without injector); `stockVolume`.
 * Out: `mass` of the product. An InputError where more is asked for than a litre can hold, 2 kg.
 *
 * The injector needs a backflow preventer between it and drinking water. Where the product is an acid: acid into water, never water into acid,
 * with eye protection and gloves.
 *
 * In US trade units this is the rule of 75: an ounce in 100 US gal makes 74.89 mg/L.
 * @example
 * stockTank({ massConcentration: '200 mg/L', massFraction: '20 %', dilution: '1:100', stockVolume: '10 L' }).mass.in('kg') // => 1
 */
export const stockTank = /* @__PURE__ */ calculation({
  id: 'stockTank',
  title: 'Product in the stock tank of an injector',
  inputs: () => ({
    massConcentration: field.quantity(massConcentration, { limits: ['0 mg/L', '10 g/L'] }),
    massFraction: field.share({ limits: [0.0001, 1] }),
    dilution: field.quantity(dilution, { limits: ['1:2000', '1:1'] }),
    stockVolume: field.quantity(volume, { limits: ['10 mL', '1000 m³'] }),
  }),
  outputs: () => ({ mass: decimalQuantity(mass, 'g') }),
  equation: 'mass = concentration × volume of stock / (dilution × mass fraction)',
  sources: ['argo-2004'],
  cautions: [backflow],
  example: { massConcentration: '150 mg/L', massFraction: '15.5 %', dilution: '1:100', stockVolume: '10 L' },
  solve: (inputs, solving) => {
    const weighed = massForStock(inputs.massConcentration, inputs.massFraction, 1 / inputs.dilution, inputs.stockVolume);
    const strength = weighed / inputs.stockVolume;
    refuseImpossible(strength, 'massConcentration', solving);
    if (strength > surelyDissolves) {
      solving.note('caution', 'solubility', 'mass', `${writeNumber(strength)} g in a litre of stock: look up whether that much dissolves in cold water, and keep calcium apart from sulfate and phosphate.`);
    }
    return { mass: weighed };
  },
});
