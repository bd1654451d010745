import { decimalSum, writtenDecimal } from '../exact-decimal.js';

/**
 * Share of a recipe's portions to weigh in for a refill: (V_final - s V_present)/V_recipe, in decimals, s the strength of what is in the barrel.
 *
 * Below zero where the barrel holds more of the recipe than the final volume needs. Any unit of volume, the same for all three.
 *
 * @example refillShare(100, 100, 65) // => 0.35
 */
export function refillShare(recipeVolume: number, finalVolume: number, presentVolume: number, strength = 1): number {
  const held = writtenDecimal(strength).times(writtenDecimal(presentVolume));
  return decimalSum([writtenDecimal(finalVolume), held.negated()]).div(writtenDecimal(recipeVolume)).toNumber();
}

/**
 * A share of a mass, in decimals: where doubles make 2.8699999999999997 of it, 0.35 × 8.2 is 2.87.
 *
 * @example shareOfMass(8.2, 0.35) // => 2.87
 */
export function shareOfMass(mass: number, share: number): number {
  return writtenDecimal(mass).times(writtenDecimal(share)).toNumber();
}

/** What to let out of a barrel, and what to pour in. */
export interface Thinning {
  /** m3. */
  readonly drainVolume: number;
  /** m3. */
  readonly freshWaterVolume: number;
}

/**
 * Water that brings a feed of a strength above 1 down to full strength (m3): V (s - 1); and what to drain first, V - V_barrel/s, where the barrel
 * is too small for that.
 *
 * @example thinningOf(0.1, 1.2, 0.12) // => { drainVolume: 0, freshWaterVolume: 0.02 }
 */
export function thinningOf(volume: number, strength: number, barrelVolume = Infinity): Thinning {
  if (volume * strength <= barrelVolume) return { drainVolume: 0, freshWaterVolume: volume * (strength - 1) };
  const kept = barrelVolume / strength;
  return { drainVolume: volume - kept, freshWaterVolume: barrelVolume - kept };
}
