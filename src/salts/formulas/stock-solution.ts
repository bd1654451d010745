import type { IonAmounts } from '../../solution/formulas/concentration.js';
import { ionicStrengthOfIons } from '../../solution/formulas/concentration.js';
import { saturationIndices, type SaturationIndices } from '../../solution/formulas/saturation.js';
import { speciate } from '../../solution/formulas/speciation.js';
import { alkalinityOfIons, componentTotalsOf } from '../../solution/formulas/totals.js';
import type { Ion } from '../../solution/ions.js';
import { waterDensityIapws2008 } from '../../water/density.js';
import { salts } from '../salt-table.js';
import { contentOfProduct, type Product } from './product-content.js';
import { molarMassOfFormula } from './molar-mass.js';
import type { Portion } from './dissolve.js';

/** Above this sum of charges, mol/m3, nothing can be said of activities. */
const strongest = 10_000;

/** Ions of a product as they come from its crystals, mol per kg; in a concentrate they have not settled to what they are in a feed. */
function ionsFromCrystals(product: Product): IonAmounts {
  if (!('salt' in product)) return contentOfProduct(product).ions;
  const { formula, ions } = salts[product.salt];
  const units = product.purity / molarMassOfFormula(formula);
  return Object.fromEntries(Object.entries(ions).map(([ion, count]) => [ion, count * units]));
}

/** Amounts of the ions (mol/m3) in a stock: those of the water, and of portions (kg) in a volume (m3), as they come from the crystals. */
export function amountsInStock(portions: readonly Portion[], volume: number, water: IonAmounts): IonAmounts {
  const amounts: { [I in Ion]?: number } = { ...water };
  for (const portion of portions) {
    for (const [ion, perMass] of Object.entries(ionsFromCrystals(portion)) as [Ion, number][]) {
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
  if (ionicStrengthOfIons(amounts) > strongest) return undefined;
  const density = waterDensityIapws2008(temperature);
  const found = speciate(componentTotalsOf(amounts, density), { temperature, alkalinity: alkalinityOfIons(amounts) / density });
  return { pH: found.pH!, ionicStrength: found.ionicStrength, indices: saturationIndices(found, temperature) };
}
