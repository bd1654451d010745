import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import { mass, volume } from '../units/dimensions.js';
import { feedOutputs, tellFeed } from './feed.js';
import { noteFeed, noteProducts, noteStrength, refuseImpossible } from './feed-notes.js';
import { dissolvePortions } from './formulas/dissolve.js';
import { checkProduct, productFields, productOf } from './product.js';
import { checkWater, noteWater, waterFields, waterOf } from './source-water.js';

/**
 * What is in the barrel after the products are dissolved in it: every nutrient, every ion, the balance of charges, the alkalinity that is left.
 *
 * In: `volume` of the finished feed; `portions`, each a `mass` of a `salt` of the table (with its `purity`, where it is not the usual one) or of
 * a product known by its `label`; the `water` before, by what its analysis states (as in `waterAnalysis`), and its `waterAlkalinity`.
 * Out: `nutrients` in mg/L by form (`N` is nitrogen of every form); `ions` in mmol/L and their `charges` in meq/L, as they stand at pH 5 to 6;
 * `chargeBalance`; `alkalinity`, titrated to about pH 4.5.
 *
 * Everything is taken to dissolve, and carbon dioxide set free by acid to leave. Salts balance in charge of themselves; a water analysis or the
 * rounded figures of a label may not. Acid beyond the alkalinity is `H+` among the ions and a note of danger. An acid
 * counts as one only as a `salt`: a label says nothing of acidity, and a note tells where one looks like an acid's.
 * An InputError where more is put in than a litre can hold, 2 kg, or where cations and anions of the water are more than 50 % of their sum apart.
 *
 * Source: Prohaska et al. 2022, Standard atomic weights of the elements 2021, for the masses.
 * @example
 * const basil = dissolve({ volume: '10 L', portions: [{ salt: 'potassium-nitrate', purity: 1, mass: '5 g' }] });
 * basil.nutrients.K.in('mg/L') // => 193.36
 * basil.nutrients['N-NO3'].in('mg/L') // => 69.27
 * basil.ions['K+'].in('mmol/L') // => 4.9455
 * basil.charges['NO3-'].in('meq/L') // => -4.9455
 */
export const dissolve = /* @__PURE__ */ calculation({
  id: 'dissolve',
  title: 'What is in a feed after dissolving products in water',
  inputs: () => ({
    volume: field.quantity(volume, { limits: ['10 mL', '1000 m³'] }),
    portions: field.list(field.group({ ...productFields(), mass: field.quantity(mass, { limits: ['0 g', '1 t'] }) }, checkProduct), { limits: [0, 50] }),
    ...waterFields(),
  }),
  outputs: feedOutputs,
  equation: 'c = c(water) + Σ mass × content / volume, for every nutrient form and every ion',
  sources: ['prohaska-2022'],
  example: {
    volume: '120 L',
    portions: [
      { salt: 'calcium-ammonium-nitrate-decahydrate', mass: '64 g' },
      { salt: 'potassium-nitrate', mass: '38 g' },
      { salt: 'monopotassium-phosphate', mass: '20 g' },
      { salt: 'magnesium-sulfate-heptahydrate', mass: '30 g' },
      { label: { Fe: '6 %' }, mass: '3 g' },
    ],
    water: { Ca: '40 mg/L', Mg: '6 mg/L', Na: '12 mg/L', Cl: '18 mg/L', S: '8 mg/L' },
    waterAlkalinity: '2 meq/L',
  },
  check: checkWater,
  solve: (inputs, solving) => {
    const strength = inputs.portions.reduce((sum, portion) => sum + portion.mass, 0) / inputs.volume;
    refuseImpossible(strength, 'volume', solving);
    const feed = dissolvePortions(inputs.portions.map((portion) => ({ ...productOf(portion), mass: portion.mass })), inputs.volume, waterOf(inputs));
    noteWater(inputs, solving);
    noteFeed(feed, inputs.portions, solving);
    noteStrength(strength, 'portions', solving);
    noteProducts(inputs.portions, 'portions', solving);
    return tellFeed(feed);
  },
});
