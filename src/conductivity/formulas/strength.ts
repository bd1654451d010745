import { ionicStrengthOfIons, type IonAmounts } from '../../solution/formulas/concentration.js';
import { conductivityModelUncertainty, strongestIonicStrength } from './ionic-model.js';
import { amountsBetween, conductivityOfIons, shareForConductivity } from './mixing.js';

/** How strong a feed is, as a share of its recipe. */
export interface FeedStrength {
  readonly strength: number;
  /** Ends of the interval that meter and model leave. */
  readonly low: number;
  readonly high: number;
  /** S/m. */
  readonly residual: number;
  readonly steps: number;
}

/**
 * Strength of a feed from its conductivity (S/m) at a temperature (K): the share s of its recipe at which water + s (recipe - water) conducts as much.
 *
 * The recipe is what is in the finished feed at full strength, water included (mol/m3). `low` and `high` are the strengths at the conductivity
 * less and more by √(u² + u_model²), u the uncertainty of the reading as a share of it and u_model `conductivityModelUncertainty`.
 * Below the conductivity of the water a strength is 0. Undefined where ionic strength would be above 1 mol/L, or the strength above 10 000.
 *
 * @example strengthFromConductivity({}, { 'K+': 10, 'NO3-': 10 }, 0.0719, 298.15, 0.02)!.strength // => 0.5
 */
export function strengthFromConductivity(
  water: IonAmounts, recipe: IonAmounts, conductivity: number, temperature: number, readingUncertainty: number,
): FeedStrength | undefined {
  const uncertainty = Math.hypot(readingUncertainty, conductivityModelUncertainty);
  const least = conductivityOfIons(water, temperature);
  const most = strengthBeyond(water, recipe, conductivity * (1 + uncertainty), temperature);
  if (most === undefined) return undefined;
  const at = (wanted: number) => (wanted <= least ? { value: 0, residual: 0, steps: 0 } : shareForConductivity(water, recipe, wanted, temperature, most));
  const { value, residual, steps } = at(conductivity);
  return { strength: value, low: at(conductivity * (1 - uncertainty)).value, high: at(conductivity * (1 + uncertainty)).value, residual, steps };
}

/** A recipe so thin that a feed has to be this much stronger is none. */
const strongestFeed = 10_000;

/** A strength at which the feed conducts as much or more: 1, 2, 4, ... */
function strengthBeyond(water: IonAmounts, recipe: IonAmounts, conductivity: number, temperature: number): number | undefined {
  for (let strength = 1; strength < strongestFeed; strength *= 2) {
    const amounts = amountsBetween(water, recipe, strength);
    if (ionicStrengthOfIons(amounts) > strongestIonicStrength) return undefined;
    if (conductivityOfIons(amounts, temperature) >= conductivity) return strength;
  }
  return undefined;
}
