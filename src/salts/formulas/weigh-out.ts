import type { NutrientMasses } from '../../solution/formulas/concentration.js';
import { bestMix, cheapestMix } from './best-mix.js';
import { dissolvePortions, type Feed } from './dissolve.js';
import type { FeedForm } from './label-analysis.js';
import { conflictsOf, interchangeableProducts, type Conflict } from './mix-conflicts.js';
import { mixProblem } from './mix-problem.js';
import type { FormMasses, Product } from './product-content.js';
import { readWithin, type WeighingScale } from './scale.js';

/** A product at hand, and how much of it there is. */
export type ProductAtHand = Product & {
  /** kg that may be used; without limit where it is left out. */
  readonly mostMass?: number | undefined;
  /** In any currency, one for all. */
  readonly pricePerKilogram?: number | undefined;
  /** Scales for this product alone, before those for all. */
  readonly scales?: readonly WeighingScale[] | undefined;
};

/** Between which concentrations a form must stay, kg/m3. */
export interface FormBounds {
  readonly least?: number | undefined;
  readonly most?: number | undefined;
}

/** What is wanted in the barrel, and what there is to make it from. */
export interface WeighingTask {
  /** kg/m3 of every form that matters; forms that are not named are let be. */
  readonly targets: FormMasses;
  /** Products at hand, by any name. */
  readonly products: Readonly<Record<string, ProductAtHand>>;
  /** m3 of finished feed. */
  readonly volume: number;
  /** kg/m3 of every form in the water before; `HCO3` is its alkalinity stated as bicarbonate. */
  readonly water?: NutrientMasses;
  /** How much a miss of each form weighs beside the others: 1 where it is not named. */
  readonly weights?: FormMasses;
  /** Limits that go before any target. */
  readonly bounds?: { readonly [F in FeedForm]?: FormBounds };
  /** Most ammonium, as a share of nitrogen as nitrate, ammonium and urea. */
  readonly ammoniumShare?: number | undefined;
  /** Alkalinity (mol/m3 of charge) that acids among the products leave, or what the water has where that is less; 0.5 where it is not given. */
  readonly alkalinityLeft?: number | undefined;
  /** By what share each target may be missed for a cheaper mix; the best fit is taken where it is not given or a product has no price. */
  readonly costTolerance?: number | undefined;
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
  /** kg/m3 of every form with a target or a bound, before rounding. */
  readonly exactConcentrations: FormMasses;
  readonly misfits: { readonly [F in FeedForm]?: Misfit };
  /** Forms wanted beyond what the water has, that no product at hand supplies. */
  readonly unavailable: readonly FeedForm[];
  /** Forms of which the water has more than is wanted. */
  readonly exceededByWater: readonly FeedForm[];
  /** Wishes that the best fit cannot meet together. */
  readonly conflicts: readonly Conflict[];
  /** Limits, by the inputs that they come from, that no mix keeps: the sheet comes as near to them as can be. */
  readonly missedLimits: readonly string[];
  /** Products that could stand in for one another without a change in the fit, where no prices decide. */
  readonly interchangeable: readonly string[];
  /** What the products weighed cost, where all have a price. */
  readonly cost: number | undefined;
  readonly feed: Feed;
  /** How far the answer is from an optimum: what is left of the slopes, a share of the terms that they are made of. */
  readonly residual: number;
  readonly steps: number;
}

/** A value below this is none: the product would bring less than a billionth of any target. */
const leastValue = 1e-9;

/**
 * Masses of the products at hand that come nearest to the targets.
 *
 * Minimises Σ (weight · (reached - target) / target)² over masses of zero or more (a target of zero is divided by the largest target), so
 * a tenth too little boron counts as much as a tenth too little potassium. An exact recipe is found where there is one. Limits (stock,
 * bounds, ammonium, alkalinity) come first; where not all can be kept, the sum of the squares by which bounds and ammonium are missed, as shares
 * of the bounds, is made least before the targets are fitted. With prices and a tolerance the cheapest mix within it is taken. Of equally
 * good mixes the one of (nearly) the least sum of squares is taken, each mass in units of what it does to the feed. Products and forms
 * are taken in the order of their names, so the answer does not depend on the order they are given in.
 *
 * @example
 * const products = { 'Epsom salt': { salt: 'magnesium-sulfate-heptahydrate', purity: 0.98 } } as const;
 * massesForTargets({ targets: { Mg: 0.02 }, products, volume: 0.06, scales: [{ division: 0.0001 }] }).masses; // => { 'Epsom salt': 0.0124 }
 */
export function massesForTargets(task: WeighingTask): WeighSheet {
  const { targets, products, volume, water = {}, costTolerance, scales = [] } = task;
  const problem = mixProblem(task);
  const { names, forms, contents, before } = problem;
  const mix = bestMix(problem);
  const prices = names.flatMap((name) => products[name]!.pricePerKilogram ?? []);
  const arePriced = prices.length === names.length;
  const cheapest = costTolerance !== undefined && arePriced ? cheapestMix(problem, mix, prices, costTolerance) : undefined;
  const { values, residual, steps } = cheapest ?? mix.fit;

  const strengths = values.map((value, j) => (value > leastValue ? value * problem.units[j]! : 0));
  const exactMasses = Object.fromEntries(names.map((name, j) => [name, strengths[j]! * volume]));
  const masses = Object.fromEntries(names.map((name) => {
    const { mostMass = Infinity, scales: own = scales } = products[name]!;
    return [name, readWithin(mostMass, exactMasses[name]!, own)];
  }));
  const feed = dissolvePortions(names.map((name) => ({ ...products[name]!, mass: masses[name]! })), volume, water);
  const counted = [...new Set([...forms, ...(Object.keys(task.bounds ?? {}) as FeedForm[])])];
  return {
    masses,
    exactMasses,
    exactConcentrations: Object.fromEntries(counted.map((form) => [form, contents.reduce((sum, content, j) => sum + (content[form] ?? 0) * strengths[j]!, before[form] ?? 0)])),
    misfits: Object.fromEntries(forms.map((form) => [form, misfit(targets[form]!, feed.massConcentrations[form] ?? 0)])),
    unavailable: forms.filter((form) => targets[form]! > (before[form] ?? 0) && contents.every((content) => !((content[form] ?? 0) > 0))),
    exceededByWater: forms.filter((form) => targets[form]! < (before[form] ?? 0)),
    conflicts: conflictsOf(problem, mix),
    missedLimits: mix.missed.map(({ name }) => name),
    interchangeable: cheapest ? [] : interchangeableProducts(problem, mix),
    cost: arePriced ? names.reduce((sum, name, j) => sum + prices[j]! * masses[name]!, 0) : undefined,
    feed,
    residual,
    steps,
  };
}

function misfit(target: number, reached: number): Misfit {
  const difference = reached - target;
  return { target, reached, difference, relativeDifference: target > 0 ? difference / target : undefined };
}
