import type { Solving } from '../calculation/calculation.js';
import { writeNumber } from '../units/write.js';
import type { FeedForm } from './formulas/label-analysis.js';
import type { FormMasses } from './formulas/product-content.js';
import type { WeighSheet } from './formulas/weigh-out.js';

/** A miss of this share of the target has to be told. */
const tellingMiss = 0.05;

/** Says which targets are missed by more than 5 %, and why. `unrounded` is the feed from the masses before the scale rounded them. */
export function noteMisses({ misfits, unavailable, exceededByWater }: WeighSheet, unrounded: FormMasses, { note }: Solving): void {
  const entries = Object.entries(misfits);
  const largest = Math.max(...entries.map(([, { target }]) => target));
  for (const [name, { target, reached }] of entries) {
    const form = name as FeedForm;
    const isMissed = (concentration: number): boolean => Math.abs(concentration - target) > tellingMiss * (target > 0 ? target : largest);
    if (!isMissed(reached)) continue;
    const tell = (code: string, why: string): void =>
      note('caution', code, `targets.${form}`, `${form} comes to ${writeNumber(reached * 1000)} mg/L where ${writeNumber(target * 1000)} mg/L is wanted: ${why}.`);
    if (unavailable.includes(form)) tell('no-source', 'no product at hand supplies it');
    else if (exceededByWater.includes(form) && reached > target) tell('water-exceeds-target', 'the water alone has more, and no product takes it out');
    else if (!isMissed(unrounded[form] ?? 0)) tell('scale-too-coarse', 'the scale is too coarse for so little; dissolve a larger amount and measure out a part of that');
    else tell('target-unreachable', 'no mix of the products at hand meets all targets at once');
  }
}
