import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { alkalinity, mass, massConcentration, share, volume } from '../units/dimensions.js';
import { unitOf } from '../units/quantity.js';
import { writeNumber } from '../units/write.js';
import { checkNames, nameOf, productsAtHand, scalesAtHand } from './at-hand.js';
import { inDecimals } from './decimal-quantity.js';
import { byForm, feedOutputs, inOrder, tellFeed } from './feed.js';
import { feedIntervalOutputs, noteIntervals, tellFeedInterval } from './feed-interval.js';
import { noteFeed, noteProducts, noteStrength, refuseImpossible } from './feed-notes.js';
import { checkTargets, targetFields } from './feed-targets.js';
import { feedUncertainty } from './formulas/feed-uncertainty.js';
import { scaleForMass } from './formulas/scale.js';
import { massesForTargets } from './formulas/weigh-out.js';
import { weighingScales } from './mass-on-scales.js';
import { noteAlternatives, noteLimits, noteMisses, notePrices } from './miss-notes.js';
import { productOf } from './product.js';
import { checkWater, noteWater, waterFields, waterOf } from './source-water.js';
import { totalMassOf } from './total-mass.js';

/**
 * What to weigh into the barrel for the wanted feed: of all mixes of the products at hand, the one that comes nearest to the targets.
 *
 * In: `volume` of the finished feed; `targets` in mg/L by form (`N` is nitrogen of every form; `HCO3` is the alkalinity to be left, for acids;
 * forms that are not named are let be), and `weights`, how much a miss of a form counts beside the others, 1 where not named; the products
 * at hand as `salts`, each a `salt` of the table or a `label`, with a `name` where that is not the salt's, the `mostMass` that may be used of it,
 * the `division` of the scale for it alone and its `pricePerKilogram` (any currency, one for all); the `water` and its `waterAlkalinity`; `scales`
 * with their `division` and `maximumLoad`.
 * Limits, which go before targets: `bounds` by form, `least` and `most` mg/L; `ammoniumShare`, the most that ammonium may be of N-NO3, N-NH4 and
 * N-urea together (nitrogen of no stated form is not counted); `alkalinityLeft`, what acids leave of the alkalinity, or what the water has where
 * that is less (0.5 meq/L, common practice). Lye and carbonates raise alkalinity by 1 meq/L at most, unless `HCO3` has a target or a bound.
 * Out: `portions`, the mass of every product in the order given, as the finest scale that carries it reads (unrounded without scales) and never
 * more than there is; their `cost`, where all have a price; `misfits` by target; forms `unavailable` from any product, and those
 * `exceededByWater`; `conflicts`, which wishes stand against which: forms `short` and `over` that `products` tie together, and the `limits` that
 * hold them; the feed that comes of the rounded masses, as `dissolve` tells it; `convergence`.
 *
 * Minimises Σ (weight × (reached − target) / target)² over masses of zero or more; a target of zero is divided by the largest target. With a
 * `costTolerance` and a price for every product the cheapest mix is taken that misses no target by more than this share of it, or than the best
 * fit does. Of equally good mixes the one of (nearly) the least sum of squares is taken, each mass in units of what it does to the feed. The
 * order of products and targets does not matter. Where bounds and ammonium cannot all be kept, the mix that comes nearest to them (least squares,
 * as shares of the bounds) is taken, and a note of danger tells. A note tells of every target missed by more than 5 %, and why. An
 * InputError where more would have to be put in than a litre can hold, 2 kg.
 *
 * Source: Goldfarb and Idnani 1983 and Rockafellar 1976, for the method.
 * @example
 * const sheet = weighOut({ volume: '60 L', targets: { Mg: '20 mg/L' }, salts: [{ salt: 'magnesium-sulfate-heptahydrate', purity: '98 %' }], scales: [{ division: '0.1 g' }] });
 * sheet.portions[0].mass // => 12.4 g
 * sheet.misfits.Mg.reached.in('mg/L') // => 19.97
 */
export const weighOut = /* @__PURE__ */ calculation({
  id: 'weighOut',
  title: 'What to weigh into a barrel for a wanted feed',
  inputs: () => ({
    volume: field.quantity(volume, { limits: ['10 mL', '1000 m³'] }),
    ...targetFields(),
    salts: productsAtHand(),
    ...waterFields(),
    scales: field.optional(scalesAtHand()),
    volumeTolerance: field.withDefault(field.share({ limits: [0, 0.2] }), 0),
    ammoniumShare: field.optional(field.share()),
    alkalinityLeft: field.optional(field.quantity(alkalinity, { limits: ['0 meq/L', '50 meq/L'] })),
    costTolerance: field.optional(field.share()),
  }),
  outputs: () => ({
    // Each mass is shown in the unit of the scale that it is read on.
    portions: output.list(output.group({ name: output.text(), ...output.passedOn({ mass: output.quantity(mass, 'g') }) })),
    ...output.passedOn({ totalMass: output.quantity(mass, 'g') }),
    misfits: byForm(output.group({
      target: output.quantity(massConcentration, 'mg/L'),
      reached: output.quantity(massConcentration, 'mg/L'),
      difference: output.quantity(massConcentration, 'mg/L'),
      relativeDifference: output.optional(output.quantity(share, '%')),
    })),
    unavailable: output.list(output.text()),
    exceededByWater: output.list(output.text()),
    conflicts: output.list(output.group({ short: output.list(output.text()), over: output.list(output.text()), products: output.list(output.text()), limits: output.list(output.text()) })),
    cost: output.optional(output.number()),
    ...feedOutputs(),
    ...feedIntervalOutputs(),
    convergence: output.group({ relativeResidual: output.quantity(share, '%'), steps: output.number() }),
  }),
  equation: 'least Σ (weight × (reached − target) / target)² over masses ≥ 0 within the limits',
  sources: ['goldfarb-idnani-1983', 'rockafellar-1976', 'prohaska-2022', 'jcgm-100-2008', 'mccleskey-2012'],
  example: {
    volume: '120 L',
    targets: { 'N-NO3': '105 mg/L', P: '35 mg/L', K: '180 mg/L', Ca: '120 mg/L', Mg: '30 mg/L', Fe: '1.5 mg/L' },
    salts: [
      { salt: 'calcium-ammonium-nitrate-decahydrate', pricePerKilogram: 1.2 },
      { salt: 'potassium-nitrate', pricePerKilogram: 2.1, mostMass: '500 g' },
      { salt: 'monopotassium-phosphate', pricePerKilogram: 3.4 },
      { salt: 'potassium-sulfate', pricePerKilogram: 1.9 },
      { salt: 'magnesium-sulfate-heptahydrate', pricePerKilogram: 0.8 },
      { salt: 'iron-edta-trihydrate', pricePerKilogram: 9, division: '1 mg' },
    ],
    bounds: { S: { most: '80 mg/L' } },
    ammoniumShare: '15 %',
    water: { Ca: '40 mg/L', Mg: '6 mg/L', Na: '12 mg/L', Cl: '18 mg/L', S: '8 mg/L' },
    waterAlkalinity: '2 meq/L',
    scales: [{ division: '0.1 g', maximumLoad: '3 kg' }, { division: '0.01 g', maximumLoad: '100 g' }],
  },
  check: (inputs, problem) => {
    checkWater(inputs, problem);
    checkNames(inputs.salts, problem);
    checkTargets(inputs, problem);
  },
  solve: (inputs, solving) => {
    const products = Object.fromEntries(inputs.salts.map(({ mostMass, division, pricePerKilogram, ...product }) =>
      [nameOf(product), { ...productOf(product), mostMass, pricePerKilogram, scales: division && weighingScales([{ division, maximumLoad: undefined }]) }]));
    const scales = weighingScales(inputs.scales);
    const scaleOf = (name: string) => scaleForMass(sheet.exactMasses[name]!, products[name]!.scales ?? scales);
    const { volume: finished, targets, weights = {}, bounds = {}, ammoniumShare, alkalinityLeft, costTolerance } = inputs;
    const task = { targets, products, volume: finished, water: waterOf(inputs), weights, bounds, ammoniumShare, alkalinityLeft, costTolerance, scales };
    const sheet = massesForTargets(task);

    const strength = Object.values(sheet.masses).reduce((sum, weighed) => sum + weighed, 0) / finished;
    refuseImpossible(strength, 'targets', solving);
    noteLimits(sheet, task, solving);
    noteMisses(sheet, task, solving);
    noteAlternatives(sheet, solving);
    notePrices(task, solving);
    noteWater(inputs, solving);
    noteFeed(sheet.feed, inputs.salts, solving);
    noteStrength(strength, 'targets', solving);
    noteProducts(inputs.salts, 'salts', solving);

    const portions = inputs.salts.map((product, i) => {
      const name = nameOf(product);
      const scale = scaleOf(name);
      const unit = unitOf(mass, scale?.unit ?? 'g');
      if (scale && sheet.masses[name]! > (scale.maximumLoad ?? Infinity)) {
        solving.note('caution', 'scale-overloaded', `salts[${i}]`, `${name} comes to ${writeNumber(sheet.masses[name]! * 1000)} g, more than a scale at hand carries: weigh it in several portions.`);
      }
      return { name, mass: inDecimals(mass, sheet.masses[name]!, unit) };
    });
    // In the order of the names, so that not even the last digit depends on that of the input.
    const weighed = Object.keys(products).sort().map((name) => {
      const division = scaleOf(name)?.division;
      return { ...products[name]!, mass: sheet.masses[name]!, ...(division !== undefined && { division }) };
    });
    const known = feedUncertainty(sheet.feed, weighed, finished, inputs.volumeTolerance);
    noteIntervals(known, solving);
    return {
      portions,
      totalMass: totalMassOf(portions.map((portion) => portion.mass)),
      misfits: inOrder(sheet.misfits),
      unavailable: sheet.unavailable,
      exceededByWater: sheet.exceededByWater,
      conflicts: sheet.conflicts,
      cost: sheet.cost,
      ...tellFeed(sheet.feed),
      ...tellFeedInterval(known),
      convergence: { relativeResidual: sheet.residual, steps: sheet.steps },
    };
  },
});
