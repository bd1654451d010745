import type { Ion } from '../../solution/ions.js';
import { isAcid } from '../acids.js';
import { salts } from '../salt-table.js';
import { couldBeAcid } from './acid-label.js';
import { contentOfProduct, type Product } from './product-content.js';

/** What about a product decides which others it can share a concentrate with. */
export type StockTrait = 'calcium' | 'magnesium' | 'ammonium' | 'sulfate' | 'phosphate' | 'alkali' | 'acid' | 'chelate' | 'molybdate' | 'trace metal' | 'boron';

/** Two traits that must not meet in a concentrate. */
export interface StockConflict {
  readonly traits: readonly [StockTrait, StockTrait];
  readonly severity: 'caution' | 'danger';
  /** What comes of it. */
  readonly outcome: string;
}

const caution = 'caution';
const danger = 'danger';

/** What must not meet in a concentrate, a row each. Calcium molybdate after the constant in minteq.v4.dat; the rest is common practice, no source. */
export const stockConflicts = [
  { traits: ['calcium', 'sulfate'], severity: danger, outcome: 'gypsum settles out, blocks injector and drippers, and its calcium and sulfate never reach the plants' },
  { traits: ['calcium', 'phosphate'], severity: danger, outcome: 'calcium phosphate settles out, blocks injector and drippers, and its calcium and phosphate never reach the plants' },
  { traits: ['alkali', 'acid'], severity: danger, outcome: 'they heat up, foam or set to a gel, and cancel each other' },
  { traits: ['alkali', 'calcium'], severity: caution, outcome: 'lime or calcium silicate settles out' },
  { traits: ['alkali', 'magnesium'], severity: caution, outcome: 'magnesium carbonate, silicate or hydroxide settles out' },
  { traits: ['alkali', 'ammonium'], severity: caution, outcome: 'ammonia escapes' },
  { traits: ['alkali', 'phosphate'], severity: caution, outcome: 'they foam, set to a gel or cancel each other' },
  { traits: ['alkali', 'trace metal'], severity: caution, outcome: 'the trace metals settle out' },
  { traits: ['alkali', 'chelate'], severity: caution, outcome: 'the chelate loses its iron' },
  { traits: ['acid', 'chelate'], severity: caution, outcome: 'acid breaks the chelate up, and its iron settles out' },
  { traits: ['calcium', 'molybdate'], severity: caution, outcome: 'calcium molybdate settles out' },
] as const satisfies readonly StockConflict[];

const traitOfIon: { readonly [I in Ion]?: StockTrait } = {
  'Ca2+': 'calcium', 'Mg2+': 'magnesium', 'NH4+': 'ammonium', 'Fe2+': 'trace metal', 'Mn2+': 'trace metal', 'Zn2+': 'trace metal', 'Cu2+': 'trace metal',
  'SO4 2-': 'sulfate', 'H2PO4-': 'phosphate', 'HPO4 2-': 'phosphate', 'MoO4 2-': 'molybdate', 'H3BO3': 'boron',
  'OH-': 'alkali', 'HCO3-': 'alkali', 'CO3 2-': 'alkali', 'H4SiO4': 'alkali',
  'FeEDTA-': 'chelate', 'FeHDTPA-': 'chelate', 'FeEDDHA-': 'chelate', 'FeHBED-': 'chelate',
};

/** Traits of a product, from what it gives to the water. Borax, alkaline as it is, counts as boron only; the iron of a label as a chelate. */
export function stockTraits(product: Product): ReadonlySet<StockTrait> {
  const ions = 'salt' in product ? salts[product.salt].ions : contentOfProduct(product).ions;
  const given = (Object.entries(ions) as [Ion, number][]).filter(([, amount]) => amount > 0).map(([ion]) => ion);
  const traits = new Set(given.flatMap((ion) => traitOfIon[ion] ?? []));
  if (traits.has('boron')) traits.delete('alkali');
  if ('salt' in product ? isAcid(product.salt) : couldBeAcid(product.label)) traits.add('acid');
  return traits;
}

/** Conflicts between what is in a concentrate (or between it and what is to join it). */
export function conflictsBetween(one: ReadonlySet<StockTrait>, other: ReadonlySet<StockTrait>): readonly StockConflict[] {
  return stockConflicts.filter(({ traits: [a, b] }) => (one.has(a) && other.has(b)) || (one.has(b) && other.has(a)));
}

/**
 * Place of a product in the order of dissolving: acid first, into plenty of water, then phosphates, sulfates and alkali, then nitrates and what else there
 * is much of, then trace elements, chelates last. Common practice, no source.
 */
export function dissolvingRank(traits: ReadonlySet<StockTrait>): number {
  const ranks: readonly (readonly [StockTrait, number])[] = [['acid', 0], ['chelate', 5], ['trace metal', 4], ['molybdate', 4], ['boron', 4], ['phosphate', 1], ['sulfate', 2], ['alkali', 2]];
  return ranks.find(([trait]) => traits.has(trait))?.[1] ?? 3;
}
