import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { mass, volume } from '../units/dimensions.js';
import { scalesAtHand } from './at-hand.js';
import { feedIntervalOutputs, noteIntervals, tellFeedInterval } from './feed-interval.js';
import { noteProducts, noteStrength, refuseImpossible } from './feed-notes.js';
import { dissolvePortions } from './formulas/dissolve.js';
import { feedUncertainty } from './formulas/feed-uncertainty.js';
import { scaleForMass } from './formulas/scale.js';
import { weighingScales } from './mass-on-scales.js';
import { checkProduct, productFields, productOf } from './product.js';
import { checkWater, waterFields, waterOf } from './source-water.js';
import { totalMassOf } from './total-mass.js';

/**
 * How well a weigh sheet fixes the feed: the interval that the scale, the bags and the barrel leave on every nutrient and on the meter.
 *
 * In: `volume` of the finished feed and its `volumeTolerance` (0 to 20 %, either way); `portions`, each a `mass` of a `salt`, with its `purity` or
 * `purityRange` (least and most), or of a product known by its `label`, perhaps with its `labelTolerance` (0 to 50 % of every figure, as the law
 * or the maker states it; of the purity, for a salt), and the `division` of its scale; or the `scales` for all, of which the finest that carries a
 * portion reads it; the `water` before and its `waterAlkalinity`. What is not given is taken to be exact: what a label may be off by is for the
 * law of the country to say.
 * Out: the `totalMass`, added up as written; for every nutrient in mg/L the value, its `standardUncertainty`, low and high (two standard
 * uncertainties, about 95 %), least and most (everything off to one side at once), and the `mainSource`; the same for the conductivity at 25 °C
 * in mS/cm, with the uncertainty of its model beside it, not in it. A feed above 1 mol/L of ionic strength has no conductivity.
 *
 * To first order, each source anywhere within its bounds and independent of the others, the figures of one label too. An InputError where
 * more is put in than a litre can hold, 2 kg, or a purity lies outside its range.
 *
 * Source: JCGM 100:2008, from memory; for the conductivity as `solutionConductivity`.
 * @example
 * const sheet = weighSheetInterval({ volume: '100 L', portions: [{ salt: 'potassium-chloride', purity: 1, mass: '50 g' }], scales: [{ division: '1 g' }] });
 * sheet.nutrientIntervals.K.standardUncertainty.in('mg/L') // => 1.514
 */
export const weighSheetInterval = /* @__PURE__ */ calculation({
  id: 'weighSheetInterval',
  title: 'How well a weigh sheet fixes the feed',
  inputs: () => ({
    volume: field.quantity(volume, { limits: ['10 mL', '1000 m³'] }),
    volumeTolerance: field.withDefault(field.share({ limits: [0, 0.2] }), 0),
    portions: field.list(field.group({
      ...productFields(),
      mass: field.writtenQuantity(mass, { limits: ['0 g', '1 t'] }),
      division: field.optional(field.quantity(mass, { limits: ['0.01 mg', '1 kg'] })),
    }, checkProduct), { limits: [0, 50] }),
    scales: field.optional(scalesAtHand()),
    ...waterFields(),
  }),
  outputs: () => ({ ...output.passedOn({ totalMass: output.quantity(mass, 'g') }), ...feedIntervalOutputs() }),
  equation: 'u² = Σ (∂c/∂x × width of x)² / 12 over scale, purity, figures of labels and volume; interval c ± 2 u',
  sources: ['jcgm-100-2008', 'prohaska-2022', 'mccleskey-2012'],
  example: {
    volume: '120 L',
    volumeTolerance: '2 %',
    portions: [
      { salt: 'calcium-ammonium-nitrate-decahydrate', purityRange: ['98 %', '100 %'], mass: '64 g' },
      { salt: 'potassium-nitrate', mass: '38 g' },
      { salt: 'monopotassium-phosphate', mass: '20 g' },
      { salt: 'magnesium-sulfate-heptahydrate', mass: '30 g' },
      { label: { Fe: '6 %' }, labelTolerance: '5 %', mass: '3.12 g', division: '0.01 g' },
    ],
    scales: [{ division: '0.1 g' }],
    water: { Ca: '40 mg/L', Mg: '6 mg/L', Na: '12 mg/L', Cl: '18 mg/L', S: '8 mg/L' },
    waterAlkalinity: '2 meq/L',
  },
  check: checkWater,
  solve: (inputs, solving) => {
    const scales = weighingScales(inputs.scales);
    const portions = inputs.portions.map((portion) => {
      const division = portion.division ?? scaleForMass(portion.mass.si, scales)?.division;
      return { ...productOf(portion), mass: portion.mass.si, ...(division !== undefined && { division }) };
    });
    const strength = portions.reduce((sum, portion) => sum + portion.mass, 0) / inputs.volume;
    refuseImpossible(strength, 'volume', solving);
    const feed = dissolvePortions(portions, inputs.volume, waterOf(inputs));
    const known = feedUncertainty(feed, portions, inputs.volume, inputs.volumeTolerance);
    noteIntervals(known, solving);
    noteStrength(strength, 'portions', solving);
    noteProducts(inputs.portions, 'portions', solving);
    return { totalMass: totalMassOf(inputs.portions.map((portion) => portion.mass)), ...tellFeedInterval(known) };
  },
});
