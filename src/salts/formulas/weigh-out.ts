import { nonNegativeLeastSquares } from '../../numerics/non-negative-least-squares.js';
import { dissolvePortions, type Feed, type WaterAnalysis } from './dissolve.js';
import type { FeedForm } from './label-analysis.js';
import { contentOfProduct, type FormMasses, type Product } from './product-content.js';
import { readOnScales, type WeighingScale } from './scale.js';

/** What is wanted in the barrel, and what there is to make it from. */
export interface WeighingTask {
  /** kg/m3 of every form that matters; forms that are not named are let be. */
  readonly targets: FormMasses;
  /** Products at hand, by any name. */
  readonly products: Readonly<Record<string, Product>>;
  /** m3 of finished feed. */
  readonly volume: number;
  /** kg/m3 of every form in the water before. */
  readonly water?: WaterAnalysis;
  /** How much a miss of each form weighs beside the others: 1 where it is not named. */
  readonly weights?: FormMasses;
  /** Scales at hand; masses are not rounded where there are none. */
  readonly scales?: readonly WeighingScale[];
}

/** How a form came out. */
export interface Misfit {
  /** kg/m3. */
  readonly target: number;
  /** kg/m3, after rounding the masses. */
  readonly reached: number;
  /** Reached minus target, kg/m3. */
  readonly difference: number;
  /** Difference over target; undefined where the target is zero. */
  readonly relativeDifference: number | undefined;
}

/** What to weigh, and what comes of it. */
export interface WeighSheet {
  /** kg of every product, as the scale reads. */
  readonly masses: Readonly<Record<string, number>>;
  /** kg of every product before rounding. */
  readonly exactMasses: Readonly<Record<string, number>>;
  readonly misfits: { readonly [F in FeedForm]?: Misfit };
  /** Forms wanted beyond what the water has, that no product at hand supplies. */
  readonly unavailable: readonly FeedForm[];
  /** Forms of which the water has more than is wanted. */
  readonly exceededByWater: readonly FeedForm[];
  readonly feed: Feed;
  /** How far the fit is from a true minimum, a fraction of the targets. */
  readonly residual: number;
  readonly steps: number;
}

/**
 * Masses of the products at hand that come nearest to the targets.
 *
 * Minimises Σ (weight · (reached - target) / target)² over masses of zero or more (a target of zero is divided by the largest target), so
 * a tenth too little boron counts as much as a tenth too little potassium. An exact recipe is found where there is one. Products and
 * forms are taken in the order of their names, so the answer does not depend on the order they are given in.
 *
 * @example
 * const products = { 'Epsom salt': { salt: 'magnesium-sulfate-heptahydrate', purity: 0.98 } } as const;
 * massesForTargets({ targets: { Mg: 0.02 }, products, volume: 0.06, scales: [{ division: 0.0001 }] }).masses; // => { 'Epsom salt': 0.0124 }
 */
export function massesForTargets(task: WeighingTask): WeighSheet {
  const { targets, products, volume, water = {}, weights = {}, scales = [] } = task;
  const forms = (Object.keys(targets) as FeedForm[]).sort();
  const names = Object.keys(products).sort();
  const contents = names.map((name) => contentOfProduct(products[name]!).forms);
  const before = dissolvePortions([], volume, water).massConcentrations;
  const largest = Math.max(...forms.map((form) => targets[form]!));
  const needs = forms.map((form) => targets[form]! - (before[form] ?? 0));

  const factors = forms.map((form) => (weights[form] ?? 1) / (targets[form]! > 0 ? targets[form]! : largest > 0 ? largest : 1));
  const { values, residual, steps } = nonNegativeLeastSquares(
    forms.map((form, i) => contents.map((content) => (content[form] ?? 0) * factors[i]!)),
    needs.map((need, i) => need * factors[i]!),
  );

  const exactMasses = Object.fromEntries(names.map((name, j) => [name, (values[j] ?? 0) * volume]));
  const masses = Object.fromEntries(names.map((name) => [name, readOnScales(exactMasses[name]!, scales)]));
  const feed = dissolvePortions(names.map((name) => ({ ...products[name]!, mass: masses[name]! })), volume, water);
  const misfits = forms.map((form) => [form, misfit(targets[form]!, feed.massConcentrations[form] ?? 0)] as const);
  return {
    masses,
    exactMasses,
    misfits: Object.fromEntries(misfits),
    unavailable: forms.filter((form, i) => needs[i]! > 0 && contents.every((content) => !((content[form] ?? 0) > 0))),
    exceededByWater: forms.filter((_, i) => needs[i]! < 0),
    feed,
    residual,
    steps,
  };
}

function misfit(target: number, reached: number): Misfit {
  const difference = reached - target;
  return { target, reached, difference, relativeDifference: target > 0 ? difference / target : undefined };
}
