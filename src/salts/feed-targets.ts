import type { AddProblem } from '../calculation/problem.js';
import * as field from '../calculation/field.js';
import { massConcentration } from '../units/dimensions.js';
import { feedForms } from './feed.js';
import type { FormMasses } from './formulas/product-content.js';
import type { WeighingTask } from './formulas/weigh-out.js';

/** A target below this, kg/m3, is no target: 0.1 µg/L, far under any need. */
const leastTarget = 1e-7;

const concentration = () => field.quantity(massConcentration, { limits: ['0 mg/L', '10 g/L'] });

/** What is wanted of each form: a concentration to come near to, how much a miss counts, and between which bounds it must stay. */
export const targetFields = () => ({
  targets: field.record(feedForms(), concentration()),
  weights: field.optional(field.record(feedForms(), field.number({ limits: [0.01, 100] }))),
  bounds: field.optional(field.record(feedForms(), field.group({ least: field.optional(concentration()), most: field.optional(concentration()) }, ({ least = 0, most = Infinity }, problem) => {
    if (least > most) problem(['least'], 'no more than most', 'more', 'swap them?');
  }))),
});

interface SeenTargets {
  readonly targets: FormMasses;
  readonly weights: FormMasses | undefined;
  readonly bounds: WeighingTask['bounds'] | undefined;
}

/** Finds targets and bounds of next to nothing, and weights of nothing. */
export function checkTargets({ targets, weights = {}, bounds = {} }: SeenTargets, problem: AddProblem): void {
  if (Object.keys(targets).length === 0) problem(['targets'], 'at least one target', 'none');
  const checkSize = (path: readonly string[], size: number | undefined): void => {
    if (size !== undefined && size > 0 && size < leastTarget) problem(path, 'zero, or 0.1 µg/L and more', 'next to nothing');
  };
  for (const [form, target] of Object.entries(targets)) checkSize(['targets', form], target);
  for (const [form, { least, most }] of Object.entries(bounds)) {
    checkSize(['bounds', form, 'least'], least);
    checkSize(['bounds', form, 'most'], most);
  }
  for (const form of Object.keys(weights)) {
    if (!Object.hasOwn(targets, form)) problem(['weights', form], 'a form with a target', 'no target for it');
  }
}
