import { solids, type Solid, type SolidKey } from '../solids.js';
import { logConstantOf } from './equilibrium.js';
import type { Speciation } from './speciation.js';

/** Ionic strength, mol/m3, above which there is less water than ions and nothing can be said of saturation. */
export const strongestForSaturation = 10_000;

/** Saturation index of each solid whose constituents are all in the water. */
export type SaturationIndices = { readonly [S in SolidKey]?: number };

/**
 * log10 of the constant of dissolution of a solid, at a temperature (K) and zero ionic strength: of the reaction that its row in `solids` gives.
 *
 * @example logSolubilityConstant('calcite', 298.15) // => -8.4798
 */
export function logSolubilityConstant(solid: SolidKey, temperature: number): number {
  return logConstantOf(solids[solid], temperature);
}

/**
 * Saturation indices of a solution: how far it is from being in balance with each solid that its ions can form.
 *
 * SI = log10(IAP / K), IAP the product of activities of what the solid gives. 0: in balance; above 0: it may settle out; below 0: more
 * of the solid would dissolve. The activity of water is its mole fraction (Raoult's law), 0.98 in a litre with a mole of ions.
 * A solid that takes or gives protons is told only where a pH is known. Good to about 0.1 in water and feeds; rough above 0.5 mol/kg.
 *
 * @param temperature K, the one of the speciation
 * @example saturationIndices(speciate({ 'Ca2+': 0.03, 'SO4 2-': 0.03 }, { temperature: 298.15 }), 298.15).gypsum // => 0.340
 */
export function saturationIndices({ activities, molalities }: Pick<Speciation, 'activities' | 'molalities'>, temperature: number): SaturationIndices {
  const dissolved = Object.values(molalities).reduce((sum, molality) => sum + molality, 0);
  const logWater = -Math.log10(1 + dissolved / waterMolality);
  const indices: { [S in SolidKey]?: number } = {};
  for (const [key, { gives, water = 0 }] of Object.entries<Solid>(solids)) {
    const parts = Object.entries(gives) as [keyof typeof activities, number][];
    if (!parts.every(([species]) => (activities[species] ?? 0) > 0)) continue;
    const logProduct = parts.reduce((sum, [species, order]) => sum + order * Math.log10(activities[species]!), water * logWater);
    indices[key as SolidKey] = logProduct - logSolubilityConstant(key as SolidKey, temperature);
  }
  return indices;
}

/** Moles of water in a kilogram of it. */
const waterMolality = 1 / 0.018015;
