import type { AddProblem } from '../calculation/problem.js';
import * as field from '../calculation/field.js';
import { mass, massConcentration } from '../units/dimensions.js';
import { waterDensityIapws2008 } from '../water/density.js';
import { checkNamedProduct, checkNames, namedProductFields, nameOf } from './at-hand.js';
import type { Product } from './formulas/product-content.js';
import { solubilityOfSalt, strengthOfSaturatedSolution } from './formulas/solubility.js';
import { stockTraits } from './formulas/stock-traits.js';
import { productOf, type SeenProduct } from './product.js';
import { salts } from './salt-table.js';
import { roughSolubilities, soldAsLiquids } from './solubility-table.js';
import type { TankedProduct } from './stock-notes.js';

/** Names of the tanks. */
export const tankNames = ['A', 'B', 'C', 'D'] as const;

/** A portion of a recipe as it is seen. */
export type SeenPortion = SeenProduct & {
  readonly name: string | undefined;
  readonly mass: number;
  readonly solubility: number | undefined;
  readonly intoTank: (typeof tankNames)[number] | undefined;
};

/** Portions of a recipe that is to go into stock tanks. */
export const stockPortions = () =>
  field.list(
    field.group({
      ...namedProductFields(),
      mass: field.quantity(mass, { limits: ['0 g', '1 t'] }),
      solubility: field.optional(field.quantity(massConcentration, { limits: ['0.1 g/L', '20000 g/L'] })),
      intoTank: field.optional(field.choice(tankNames)),
    }, checkNamedProduct),
    { limits: [1, 50] },
  );

/** Finds two portions of one name, and an allocation that is given for some portions only. */
export function checkStockPortions(portions: readonly SeenPortion[], problem: AddProblem): void {
  checkNames(portions, problem, 'portions');
  const isGiven = portions.some(({ intoTank }) => intoTank !== undefined);
  portions.forEach(({ intoTank }, i) => {
    if (isGiven && intoTank === undefined) problem(['portions', i, 'intoTank'], 'a tank for every portion or for none', 'nothing');
  });
}

/** A product of a recipe, at the strength that it has in a stock. */
export type StockProduct = TankedProduct & { readonly product: Product };

/** A product as it stands in one tank that takes all of it, at a strength in kg/m3 and a temperature in K. */
export function stockProduct(portion: SeenPortion, strength: number, temperature: number): StockProduct {
  const product = productOf(portion);
  return { name: nameOf(portion), product, traits: stockTraits(product), strength, solubilityShare: solubilityShareOf(product, portion.solubility, strength, temperature) };
}

/** What a strength is of the most that the stock can hold: of a salt the pure part counts, of a product with a solubility of its own (kg/m3 of water) all of it. */
function solubilityShareOf(product: Product, stated: number | undefined, strength: number, temperature: number): number | undefined {
  if (stated !== undefined) return strength / strengthOfSaturatedSolution(stated / waterDensityIapws2008(temperature), temperature);
  if (!('salt' in product)) return undefined;
  if (soldAsLiquids.includes(product.salt)) return 0;
  const perMass = solubilityOfSalt(product.salt, temperature);
  return perMass === undefined ? undefined : (strength * product.purity) / strengthOfSaturatedSolution(perMass, temperature);
}

/** The same product where only a part of it goes into the tank. */
export const inPart = (one: StockProduct, fraction: number): StockProduct =>
  ({ ...one, strength: one.strength * fraction, solubilityShare: one.solubilityShare === undefined ? undefined : one.solubilityShare * fraction });

/** Whether the solubility of a product rests on less than a handbook or its data sheet. */
export const isRoughlyKnown = ({ salt, solubility }: SeenPortion): boolean => salt !== undefined && salt in roughSolubilities && solubility === undefined;

/** Whether a product draws heat from the water as it dissolves: urea, and nitrates other than the acid and anhydrous calcium nitrate. From memory. */
export const coolsWater = ({ salt }: SeenPortion): boolean =>
  salt !== undefined && (salt === 'urea' || ('NO3-' in salts[salt].ions && !soldAsLiquids.includes(salt) && salt !== 'calcium-nitrate-anhydrous'));
