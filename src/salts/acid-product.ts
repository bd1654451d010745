import type { AddProblem } from '../calculation/problem.js';
import type { Solving } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import { density, temperature } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { zeroCelsius } from '../water/constants.js';
import { liquidDensities, type LiquidKey } from './acid-densities.js';
import { acidKeys, molarMassOfAcid, titratingAcid, type AcidKey } from './acids.js';
import { inOrder } from './feed.js';
import { liquidProductDensity } from './formulas/acid-density.js';
import type { TitratingAcid } from './formulas/acid-titration.js';
import { contentOfProduct, type FormMasses } from './formulas/product-content.js';
import { noteUsualPurity, usualPurity } from './product.js';
import { salts } from './salt-table.js';

/** Strength, density and temperature of an acid as it is sold, with the same limits wherever they are asked for. */
export const acidStrengthFields = () => ({
  purity: field.optional(field.share({ limits: [0.01, 1] })),
  productDensity: field.optional(field.quantity(density, { limits: ['1 kg/L', '1.9 kg/L'] })),
  productTemperature: field.withDefault(field.quantity(temperature, { limits: ['0 °C', '50 °C'] }), '20 °C'),
});

/** The acid that goes into the water. */
export const acidProductFields = () => ({ acid: field.choice(acidKeys), ...acidStrengthFields() });

interface SeenAcid {
  readonly acid: AcidKey;
  readonly purity: number | undefined;
  readonly productDensity: number | undefined;
  readonly productTemperature: number;
}

/** An acid as dosing needs it. */
export interface AcidProduct {
  readonly acid: TitratingAcid;
  readonly purity: number;
  /** kg of product in a mole of acid. */
  readonly massPerMole: number;
  /** kg/m3; a powder has none. */
  readonly density: number | undefined;
}

const isLiquid = (acid: AcidKey): acid is AcidKey & LiquidKey => acid in liquidDensities;

/** Finds an acid of unknown strength, and a powder that has a density. */
export function checkAcidProduct({ acid, purity, productDensity }: SeenAcid, problem: AddProblem): void {
  if (purity === undefined && usualPurity(acid) === undefined) problem(['purity'], `the strength of ${salts[acid].name} by mass`, 'nothing', "read it off the container, such as '60 %'");
  if (productDensity !== undefined && !isLiquid(acid)) problem(['productDensity'], 'nothing for a powder', 'a density', 'powders are weighed');
}

/** The acid that was seen; a density left out is that of its strength. */
export function acidProductOf(seen: SeenAcid, { note }: Solving): AcidProduct {
  const { acid: key, productDensity, productTemperature } = seen;
  const purity = seen.purity ?? usualPurity(key) ?? 1;
  if (seen.purity === undefined) noteUsualPurity([key], 'purity', note);
  if (isLiquid(key) && productDensity === undefined) noteDensity(key, purity, productTemperature, note);
  return {
    acid: titratingAcid(key),
    purity,
    massPerMole: molarMassOfAcid(key) / purity,
    density: productDensity ?? (isLiquid(key) ? liquidProductDensity(key, purity, productTemperature) : undefined),
  };
}

/** What an acid brings beside its acidity (kg/m3, by form) where there is so much of the product (kg/m3). */
export function nutrientsOfAcid(acid: AcidKey, purity: number, concentration: number): FormMasses {
  const { HCO3: _taken, ...forms } = contentOfProduct({ salt: acid, purity }).forms;
  return inOrder(Object.fromEntries(Object.entries(forms).map(([form, part]) => [form, part * concentration])));
}

/** Says so where a density rests on less than the published fit. */
export function noteDensity(liquid: LiquidKey, purity: number, atTemperature: number, note: Solving['note']): void {
  const { strongest, temperatures: [coldest, hottest] } = liquidDensities[liquid];
  if (purity > strongest) {
    note('caution', 'density-from-memory', 'productDensity', `Above ${strongest * 100} % the density of ${salts[liquid].name} is taken from handbook values that are from memory: give the one on the container, or weigh the acid. So strong an acid is also the most dangerous to handle.`);
  }
  if (atTemperature < coldest || atTemperature > hottest) note('info', 'density-outside-range', 'productTemperature', `The density of ${salts[liquid].name} was measured from ${writeNumber(coldest - zeroCelsius)} to ${writeNumber(hottest - zeroCelsius)} °C; here its trend is carried on.`);
}
