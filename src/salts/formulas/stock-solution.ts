import type { IonAmounts } from '../../solution/formulas/concentration.js';
import { ionicStrengthOfIons } from '../../solution/formulas/concentration.js';
import { saturationIndices, strongestForSaturation, type SaturationIndices } from '../../solution/formulas/saturation.js';
import { speciate } from '../../solution/formulas/speciation.js';
import { alkalinityOfIons, componentTotalsOf } from '../../solution/formulas/totals.js';
import type { Ion } from '../../solution/ions.js';
import { waterDensityIapws2008 } from '../../water/density.js';
import type { Portion } from './dissolve.js';
import { contentOfProduct, ionsFromCrystals } from './product-content.js';

/** Amounts of the ions (mol/m3) in a stock: those of the water, and of portions (kg) in a volume (m3), as they come from the crystals. */
export function amountsInStock(portions: readonly Portion[], volume: number, water: IonAmounts): IonAmounts {
  const amounts: { [I in Ion]?: number } = { ...water };
  for (const portion of portions) {
    for (const [ion, perMass] of Object.entries('salt' in portion ? ionsFromCrystals(portion) : contentOfProduct(portion).ions) as [Ion, number][]) {
      amounts[ion] = (amounts[ion] ?? 0) + (perMass * portion.mass) / volume;
    }
  }
  return amounts;
}

/** Acidity and saturation of a stock. */
export interface StockSolution {
  readonly pH: number;
  /** Mol/kg. */
  readonly ionicStrength: number;
  readonly indices: SaturationIndices;
}

/**
 * pH, ionic strength and saturation indices of a stock from the amounts of its ions (mol/m3), as if no carbon dioxide left it, at a temperature (K).
 *
 * Rough above an ionic strength of 0.5 mol/kg; undefined above 10 mol/L, where there is less water than ions.
 */
export function stockSolution(amounts: IonAmounts, temperature: number): StockSolution | undefined {
  if (ionicStrengthOfIons(amounts) > strongestForSaturation) return undefined;
  const density = waterDensityIapws2008(temperature);
  const found = speciate(componentTotalsOf(amounts, density), { temperature, alkalinity: alkalinityOfIons(amounts) / density });
  return { pH: found.pH!, ionicStrength: found.ionicStrength, indices: saturationIndices(found, temperature) };
}
