import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { mass, massConcentration, share, volume } from '../units/dimensions.js';
import { unitOf } from '../units/quantity.js';
import { writeNumber } from '../units/write.js';
import { checkNames, nameOf, productsAtHand, scalesAtHand } from './at-hand.js';
import { inDecimals } from './decimal-quantity.js';
import { byForm, feedForms, feedOutputs, inOrder, tellFeed } from './feed.js';
import { noteFeed, noteProducts, noteStrength, refuseImpossible } from './feed-notes.js';
import { dissolvePortions } from './formulas/dissolve.js';
import type { FormMasses } from './formulas/product-content.js';
import { scaleForMass } from './formulas/scale.js';
import { massesForTargets } from './formulas/weigh-out.js';
import { noteMisses } from './miss-notes.js';
import { productOf, type AddProblem } from './product.js';
import { checkWater, waterFields, waterOf } from './source-water.js';

/** A target below this, kg/m3, is no target: 0.1 µg/L, far under any need. */
const leastTarget = 1e-7;

/**
 * What to weigh into the barrel for the wanted feed: of all mixes of the products at hand, the one that comes nearest to the targets.
 *
 * In: `volume` of the finished feed; `targets` in mg/L by form (`N` is nitrogen of every form; `HCO3` is the alkalinity to be left, for acids;
 * forms that are not named are let be); the products at hand as `salts`, each a `salt` of the table or a `label`, with a `name` where that is
 * not the salt's; the `water` and its `waterAlkalinity`; `scales` with their `division` and `maximumLoad`; `weights`, how much a miss of a form
 * counts beside the others, 1 where not named.
 * Out: `portions`, the mass of every product in the order given, as the finest scale that carries it reads (unrounded without scales);
 * `misfits` by target; forms `unavailable` from any product, and those `exceededByWater`; the feed that comes of the rounded masses, as `dissolve`
 * tells it; `convergence`.
 *
 * Minimises Σ (weight × (reached − target) / target)² over masses of zero or more; a target of zero is divided by the largest target. The order of
 * products and targets does not matter. A note tells of every target missed by more than 5 %, and why. An InputError where more
 * would have to be put in than a litre can hold, 2 kg.
 *
 * Source: Lawson and Hanson 1974, Solving Least Squares Problems, chapter 23, for the method.
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
    targets: field.record(feedForms(), field.quantity(massConcentration, { limits: ['0 mg/L', '10 g/L'] })),
    salts: productsAtHand(),
    ...waterFields(),
    scales: field.optional(scalesAtHand()),
    weights: field.optional(field.record(feedForms(), field.number({ limits: [0.01, 100] }))),
  }),
  outputs: () => ({
    // Each mass is shown in the unit of the scale that it is read on.
    portions: output.list(output.group({ name: output.text(), ...output.passedOn({ mass: output.quantity(mass, 'g') }) })),
    misfits: byForm(output.group({
      target: output.quantity(massConcentration, 'mg/L'),
      reached: output.quantity(massConcentration, 'mg/L'),
      difference: output.quantity(massConcentration, 'mg/L'),
      relativeDifference: output.optional(output.quantity(share, '%')),
    })),
    unavailable: output.list(output.text()),
    exceededByWater: output.list(output.text()),
    ...feedOutputs(),
    convergence: output.group({ relativeResidual: output.quantity(share, '%'), steps: output.number() }),
  }),
  equation: 'least Σ (weight × (reached − target) / target)² over masses ≥ 0',
  sources: ['lawson-hanson-1974', 'prohaska-2022'],
  example: {
    volume: '120 L',
    targets: { 'N-NO3': '105 mg/L', P: '35 mg/L', K: '180 mg/L', Ca: '120 mg/L', Mg: '30 mg/L', Fe: '1.5 mg/L' },
    salts: [
      { salt: 'calcium-ammonium-nitrate-decahydrate' },
      { salt: 'potassium-nitrate' },
      { salt: 'monopotassium-phosphate' },
      { salt: 'potassium-sulfate' },
      { salt: 'magnesium-sulfate-heptahydrate' },
      { salt: 'iron-edta-trihydrate' },
    ],
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
    const products = Object.fromEntries(inputs.salts.map((product) => [nameOf(product), productOf(product)]));
    const scales = (inputs.scales ?? []).map(({ division, maximumLoad = Infinity }) => ({ division: division.si, capacity: maximumLoad, unit: division.unit }));
    const water = waterOf(inputs);
    const sheet = massesForTargets({ targets: inputs.targets, products, volume: inputs.volume, water, weights: inputs.weights ?? {}, scales });

    const strength = Object.values(sheet.masses).reduce((sum, weighed) => sum + weighed, 0) / inputs.volume;
    refuseImpossible(strength, 'targets', solving);
    const unrounded = dissolvePortions(Object.entries(products).map(([name, product]) => ({ ...product, mass: sheet.exactMasses[name]! })), inputs.volume, water);
    noteMisses(sheet, unrounded.massConcentrations, solving);
    noteFeed(sheet.feed, inputs.salts, solving);
    noteStrength(strength, 'targets', solving);
    noteProducts(inputs.salts, 'salts', solving);

    const portions = inputs.salts.map((product, i) => {
      const name = nameOf(product);
      const scale = scaleForMass(sheet.exactMasses[name]!, scales);
      const unit = unitOf(mass, scale?.unit ?? 'g');
      if (scale && sheet.masses[name]! > scale.capacity) {
        solving.note('caution', 'scale-overloaded', `salts[${i}]`, `${name} comes to ${writeNumber(sheet.masses[name]! * 1000)} g, more than a scale at hand carries: weigh it in several portions.`);
      }
      return { name, mass: inDecimals(mass, sheet.masses[name]!, unit) };
    });
    return {
      portions,
      misfits: inOrder(sheet.misfits),
      unavailable: sheet.unavailable,
      exceededByWater: sheet.exceededByWater,
      ...tellFeed(sheet.feed),
      convergence: { relativeResidual: sheet.residual, steps: sheet.steps },
    };
  },
});

function checkTargets({ targets, weights = {} }: { readonly targets: FormMasses; readonly weights: FormMasses | undefined }, problem: AddProblem): void {
  if (Object.keys(targets).length === 0) problem(['targets'], 'at least one target', 'none');
  for (const [form, target] of Object.entries(targets)) {
    if (target > 0 && target < leastTarget) problem(['targets', form], 'zero, or 0.1 µg/L and more', 'next to nothing');
  }
  for (const form of Object.keys(weights)) {
    if (!Object.hasOwn(targets, form)) problem(['weights', form], 'a form with a target', 'no target for it');
  }
}
