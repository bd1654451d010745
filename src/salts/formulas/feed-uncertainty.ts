import { conductivitySlopes } from '../../conductivity/formulas/conductivity-slopes.js';
import { strongestIonicStrength } from '../../conductivity/formulas/ionic-model.js';
import { molarMassOfNutrientForm } from '../../solution/formulas/composition.js';
import { ionicStrengthOfIons } from '../../solution/formulas/concentration.js';
import type { Ion } from '../../solution/ions.js';
import type { Feed } from './dissolve.js';
import type { FeedForm } from './label-analysis.js';
import { uncertainValue, type UncertainShift, type UncertainValue } from './uncertain-value.js';
import { uncertainInputs, type UncertainInput, type UncertainPortion } from './weighing-uncertainty.js';

/** What weighing, purity, labels and the volume leave open about a feed. */
export interface FeedUncertainty {
  /** kg/m3. */
  readonly nutrients: { readonly [F in FeedForm]?: UncertainValue };
  /** mol/m3. */
  readonly ions: { readonly [I in Ion]?: UncertainValue };
  /** S/m at 25 °C, for a model without error; undefined where the feed is too strong for it. */
  readonly conductivity: UncertainValue | undefined;
}

/**
 * Uncertainty of every concentration in a feed, and of its conductivity, from that of the portions that it is made of.
 *
 * To first order (`uncertainValue`); the conductivity by its slopes over the amount of each ion (`conductivitySlopes`). `feed` is
 * what `dissolvePortions` makes of the same portions and volume.
 *
 * @param volume m3
 * @param volumeTolerance share of the volume that it may be off by, either way
 * @example
 * const portions = [{ salt: 'potassium-chloride', purity: 1, mass: 0.05, division: 0.001 }] as const;
 * feedUncertainty(dissolvePortions(portions, 0.1), portions, 0.1).nutrients.K.standardUncertainty // => 0.001514, the potassium in 1 g / √12 and 100 L
 */
export function feedUncertainty(feed: Feed, portions: readonly UncertainPortion[], volume: number, volumeTolerance = 0): FeedUncertainty {
  const inputs = uncertainInputs(portions, volume, volumeTolerance);
  const spread = (value: number, sensitivityTo: (one: UncertainInput) => number): UncertainValue => {
    const shifts: UncertainShift[] = [];
    for (const one of inputs) {
      const sensitivity = sensitivityTo(one);
      if (sensitivity !== 0) shifts.push({ source: one.source, sensitivity, below: one.below, above: one.above });
    }
    return uncertainValue(value, shifts);
  };

  const { massConcentrations, amountConcentrations: amounts, alkalinity } = feed;
  const nutrients = entries(massConcentrations).map(([form, mass]) =>
    [form, spread(form === 'HCO3' ? alkalinity * molarMassOfNutrientForm(form) : mass, ({ forms }) => forms[form] ?? 0)] as const);
  const ions = entries(amounts).map(([ion, amount]) => [ion, spread(amount, (one) => amountIn(one, ion))] as const);
  return { nutrients: Object.fromEntries(nutrients), ions: Object.fromEntries(ions), conductivity: conductivitySpread() };

  function conductivitySpread(): UncertainValue | undefined {
    if (ionicStrengthOfIons(amounts) > strongestIonicStrength) return undefined;
    const { value, slopes } = conductivitySlopes(amounts, 298.15);
    const bySlope = entries(slopes);
    return spread(value, (one) => bySlope.reduce((sum, [ion, slope]) => sum + slope * amountIn(one, ion), 0));
  }
}

/** What a change of one does to the amount of an ion; acid that alkalinity does not use up stands as `H+`. */
const amountIn = ({ ions }: UncertainInput, ion: Ion): number => (ion === 'H+' ? -(ions['HCO3-'] ?? 0) : (ions[ion] ?? 0));

function entries<Key extends string>(record: { readonly [K in Key]?: number }): [Key, number][] {
  return Object.entries(record) as [Key, number][];
}
