import type { Solving } from '../calculation/calculation.js';
import { acid, lye } from '../calculation/caution.js';
import { noteAcidLeft } from '../solution/acidity-note.js';
import { noteImbalance } from '../solution/imbalance-note.js';
import { writeNumber } from '../units/write.js';
import { isAcid } from './acids.js';
import { couldBeAcid } from './formulas/acid-label.js';
import type { Feed } from './formulas/dissolve.js';
import type { LabelStatement } from './formulas/label-analysis.js';
import { noteUsualPurity, statedPurity, type SeenProduct } from './product.js';
import type { SaltKey } from './salt-table.js';

/** More products than this in a volume of feed, kg/m3, cannot be: the heaviest acid, pure, weighs less. */
const impossibleStrength = 2000;
/** From here on, kg/m3, it is a stock and no feed. Common practice, no source. */
const stockStrength = 10;
/** Alkalinity, meq/L, from which pH in the air stands near 8. Common practice, no source. */
const highAlkalinity = 1.5;
/** Alkalinity, meq/L, that no feed needs and a base has brought. Common practice, no source. */
const alkalinityOfBase = 3;
/** By how much printed forms of nitrogen may fall short of the total, a fraction: rounding. Common practice, no source. */
const nitrogenRounding = 0.002;
/** Salts whose solutions burn as alkali. */
const lyes: readonly SaltKey[] = ['potassium-hydroxide', 'potassium-metasilicate'];
/** Salts that raise alkalinity without burning. */
const carbonates: readonly SaltKey[] = ['potassium-carbonate', 'potassium-bicarbonate'];

/** Ends the calculation where more has been put into the water than can be in it. */
export function refuseImpossible(strength: number, path: string, { refuse }: Solving): void {
  if (!(strength <= impossibleStrength)) refuse(path, 'a solution that can exist', `${writeNumber(strength)} g of products in a litre`, 'are the units right?');
}

/** Says so where a feed is so strong that what dissolves, and what settles out, has to be looked up. */
export function noteStrength(strength: number, path: string, { note }: Solving): void {
  if (strength <= stockStrength) return;
  note('caution', 'stock-strength', path, `${writeNumber(strength)} g of products in a litre is a stock, not a feed: whether all of it dissolves, and whether calcium settles out with sulfate or phosphate, has not been looked at.`);
}

/** What has to be said about products whatever comes of them: purities taken as usual, acid and lye. */
export function noteProducts(products: readonly SeenProduct[], path: string, { note }: Solving): void {
  const named = products.flatMap((one) => (one.salt === undefined ? [] : [{ salt: one.salt, purity: statedPurity(one) }]));
  noteUsualPurity(named.filter(({ purity }) => purity === undefined).map(({ salt }) => salt), path, note);
  if (named.some(({ salt }) => isAcid(salt))) note(acid.severity, acid.code, path, acid.text);
  if (products.some(({ label }) => label !== undefined && couldBeAcid(label))) {
    note('caution', 'label-looks-like-acid', path, `A label states next to no cations, as that of an acid does, and a label says nothing of acidity: no alkalinity is taken off for it. If it is an acid, take it from the table of salts, with its strength as the purity. ${acid.text}`);
  }
  if (named.some(({ salt }) => lyes.includes(salt))) note(lye.severity, lye.code, path, lye.text);
  if (products.some(({ label }) => label !== undefined && nitrogenOfNoForm(label) > nitrogenRounding)) {
    note('caution', 'nitrogen-form-unknown', path, 'A label states nitrogen without its form: it counts as N, but is in no ion, so conductivity and charges come out without it. State N-NO3, N-NH4 and N-urea.');
  }
}

/** Nitrogen that a label states without its form, a fraction. */
export const nitrogenOfNoForm = ({ N = 0, 'N-NO3': nitrate = 0, 'N-NH4': ammonium = 0, 'N-urea': urea = 0 }: LabelStatement): number => N - nitrate - ammonium - urea;

/** What has to be said about the feed itself. */
export function noteFeed(feed: Feed, products: readonly SeenProduct[], { note }: Solving): void {
  noteAcidLeft(feed.alkalinity, note);
  const baseUsed = products.some(({ salt }) => salt !== undefined && (lyes.includes(salt) || carbonates.includes(salt)));
  if (baseUsed && feed.alkalinity > alkalinityOfBase) {
    note('danger', 'alkali-left', 'alkalinity', `${writeNumber(feed.alkalinity)} meq/L of alkalinity stands in the feed after adding lye or carbonate: pH rises far above what roots bear, and calcium, iron and phosphate settle out. Use less of it.`);
  } else if (feed.alkalinity > highAlkalinity) {
    note('caution', 'alkalinity-high', 'alkalinity', `${writeNumber(feed.alkalinity)} meq/L of alkalinity is left: in the air pH climbs towards 8, where iron and phosphate settle out. Neutralise most of it with acid (acidDose).`);
  }
  const isLabelled = products.some(({ label }) => label !== undefined);
  noteImbalance(feed.chargeBalance, 'chargeBalance', (severity, code, path, text) => {
    if (isLabelled) note('info', 'label-imbalance', path, `${text} Labels do not state every ion, so it need not be a fault.`);
    else note(severity, code, path, text);
  });
}
