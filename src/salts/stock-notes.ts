import type { Solving } from '../calculation/calculation.js';
import { writeNumber } from '../units/write.js';
import { conflictsBetween, type StockTrait } from './formulas/stock-traits.js';
import { roughSolubilityText } from './solubility.js';

/** A product in a tank, as far as notes tell of it. */
export interface TankedProduct {
  readonly name: string;
  readonly traits: ReadonlySet<StockTrait>;
  /** kg/m3 of stock. */
  readonly strength: number;
  /** What that is of what the stock can hold of it; undefined where that is not known, zero where it mixes with water. */
  readonly solubilityShare: number | undefined;
}

/** Sum of the shares from which a tank is crowded. Common practice, no source. */
const crowded = 0.8;

const listed = (products: readonly { readonly name: string }[]): string => products.map(({ name }) => name).join(', ');

/** Says what meets in a tank that must not, and what does not dissolve in it. `dilution` is parts of feed from one part of stock. */
export function noteTank(tank: string, products: readonly TankedProduct[], dilution: number, field: string, { note }: Solving): void {
  const all = new Set(products.flatMap(({ traits }) => [...traits]));
  for (const { traits: [one, other], severity, outcome } of conflictsBetween(all, all)) {
    const having = (trait: StockTrait) => listed(products.filter(({ traits }) => traits.has(trait)));
    note(severity, `${one}-with-${other}`.replace(' ', '-'), field, `Tank ${tank} mixes ${one} (${having(one)}) with ${other} (${having(other)}): ${outcome}. Keep them in separate tanks.`);
  }

  for (const { name, strength, solubilityShare = 0 } of products.filter((one) => (one.solubilityShare ?? 0) > 1)) {
    const weaker = Math.floor(dilution / solubilityShare);
    const remedy = weaker > 1 ? `an injector at 1:${weaker}, which makes the stock weaker, or less of it would do` : 'use less of it';
    note('danger', 'does-not-dissolve', field, `Tank ${tank} is to hold ${writeNumber(strength)} g/L of ${name}, of which about ${writeNumber(Math.round(strength / solubilityShare))} g/L dissolve at the coldest: ${remedy}.`);
  }
  const sum = products.reduce((load, { solubilityShare = 0 }) => load + solubilityShare, 0);
  if (sum > crowded) note('caution', 'crowded-tank', field, `Tank ${tank} holds ${writeNumber(Math.round(sum * 100))} % of what dissolves, its products taken together: salts with an ion in common push each other out, so some of it may settle out in the cold.`);
}

/** Says of which products the solubility is not known, or not known well. */
export function noteSolubilities(unknown: readonly string[], rough: readonly string[], { note }: Solving): void {
  if (unknown.length > 0) note('caution', 'unknown-solubility', 'portions', `Whether all of it dissolves is not known of ${unknown.join(', ')}: state the solubility that the data sheet gives.`);
  if (rough.length > 0) note('info', 'rough-solubility', 'portions', `The solubility of ${rough.join(', ')} is ${roughSolubilityText}.`);
}

/** Says how to go about dissolving. */
export function noteDissolving(products: readonly TankedProduct[], cooling: readonly string[], { note }: Solving): void {
  const acid = products.some(({ traits }) => traits.has('acid')) ? ' Acid goes into the water, never water into acid.' : '';
  note('info', 'dissolving-order', 'tanks', `Fill a tank two thirds with water, warm where you can, stir the products in in the order listed, each only when the one before is dissolved, then fill up.${acid}`);
  if (cooling.length > 0) note('info', 'cools-as-it-dissolves', 'tanks', `${cooling.join(', ')} cool the water while they dissolve: start with warm water and give them time.`);
}
