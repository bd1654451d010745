import type { Solving } from '../calculation/calculation.js';
import { writeNumber } from '../units/write.js';
import type { FeedForm } from './formulas/label-analysis.js';
import type { Conflict } from './formulas/mix-conflicts.js';
import type { WeighingTask, WeighSheet } from './formulas/weigh-out.js';

/** A miss of this share of the target has to be told. */
const tellingMiss = 0.05;
/** So has a bound that rounding to the scale misses by this share. */
const tellingBreach = 0.005;

const milligrams = (concentration: number): string => `${writeNumber(concentration * 1000)} mg/L`;

/** A concentration in as many digits as it takes to tell it from another. */
function apartFrom(concentration: number, other: number): string {
  for (let digits = 4; digits < 8; digits++) {
    const [one, two] = [concentration, other].map((x) => Number((x * 1000).toPrecision(digits)));
    if (one !== two) return `${String(one)} mg/L`;
  }
  return milligrams(concentration);
}

const listed = (words: readonly string[]): string => (words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)!}`);

/** A limit in words: `bounds.Ca.least`, `ammoniumShare`, `mostMass of potassium-nitrate`. */
function limitText(limit: string): string {
  const [, form, side] = /^bounds\.(.+)\.(least|most)$/.exec(limit) ?? [];
  if (form !== undefined) return `the ${side!} of ${form} allowed`;
  if (limit === 'ammoniumShare') return 'the share of ammonium allowed';
  if (limit === 'alkalinityLeft') return 'the alkalinity that is to be left';
  if (limit === 'alkalinityRise') return 'the 1 meq/L by which alkalinity may rise unless HCO3 has a target or a bound';
  return limit.replace(/^mostMass of /, 'what there is of ');
}

/** A conflict as half a sentence. */
function conflictText({ short, over, products, limits: names }: Conflict): string {
  const limits = names.map(limitText);
  const come = [
    ...(short.length > 0 ? [`${listed(short)} ${short.length > 1 ? 'fall' : 'falls'} short`] : []),
    ...(over.length > 0 ? [`${listed(over)} ${over.length > 1 ? 'come' : 'comes'} to too much`] : []),
  ].join(' and ');
  if (short.length + over.length < 2) return `${come}, because ${listed(limits)} ${limits.length > 1 ? 'stand' : 'stands'} in the way`;
  const tie = `${come}, because ${listed(products)} ${products.length > 1 ? 'tie' : 'ties'} them together`;
  return limits.length > 0 ? `${tie} and ${listed(limits)} ${limits.length > 1 ? 'stand' : 'stands'} in the way` : tie;
}

/** Says which targets are missed by more than 5 %, or by more than was allowed for the price, and why. */
export function noteMisses({ misfits, exactConcentrations, unavailable, exceededByWater, conflicts }: WeighSheet, { costTolerance = 0 }: WeighingTask, { note }: Solving): void {
  const entries = Object.entries(misfits);
  const largest = Math.max(...entries.map(([, { target }]) => target));
  for (const [name, { target, reached }] of entries) {
    const form = name as FeedForm;
    const isMissed = (concentration: number): boolean =>
      Math.abs(concentration - target) > (target > 0 ? Math.max(tellingMiss, costTolerance * 1.001) * target : tellingMiss * largest);
    if (!isMissed(reached)) continue;
    const tell = (code: string, why: string): void =>
      note('caution', code, `targets.${form}`, `${form} comes to ${milligrams(reached)} where ${milligrams(target)} is wanted: ${why}.`);
    const conflict = conflicts.filter(({ short, over }) => short.includes(form) || over.includes(form)).at(-1);
    if (unavailable.includes(form)) tell('no-source', 'no product at hand supplies it');
    else if (exceededByWater.includes(form) && reached > target) tell('water-exceeds-target', 'the water alone has more, and no product takes it out');
    else if (!isMissed(exactConcentrations[form] ?? 0)) tell('scale-too-coarse', 'the scale is too coarse for so little; dissolve a larger amount and measure out a part of that');
    else tell('target-unreachable', `no mix of the products at hand meets all that is asked at once${conflict ? `; ${conflictText(conflict)}` : ''}`);
  }
}

/** Says which limits no mix keeps, and why, and which bounds are missed because of the scale. */
export function noteLimits({ missedLimits, conflicts, exactConcentrations, feed }: WeighSheet, { bounds = {} }: WeighingTask, { note }: Solving): void {
  const why = (limit: string, form?: FeedForm): string => {
    const conflict = conflicts.find(({ limits }) => limits.includes(limit));
    if (conflict) return conflictText(conflict);
    return limit.endsWith('.least') ? 'no product at hand brings enough of it' : `the water alone has more${form === undefined ? '' : ', and no product takes it out'}`;
  };
  if (missedLimits.includes('ammoniumShare')) {
    note('danger', 'limit-missed', 'ammoniumShare', `No mix of the products at hand keeps ammonium within its share of the nitrogen: ${why('ammoniumShare')}. The sheet comes as near as can be.`);
  }
  for (const [name, sides] of Object.entries(bounds)) {
    const form = name as FeedForm;
    for (const side of ['least', 'most'] as const) {
      const bound = sides[side];
      if (bound === undefined) continue;
      const limit = `bounds.${form}.${side}`;
      const comes = (concentration: number): string => `${form} comes to ${apartFrom(concentration, bound)} where ${side === 'least' ? 'no less' : 'no more'} than ${milligrams(bound)} is allowed`;
      const reached = feed.massConcentrations[form] ?? 0;
      const breach = (side === 'least' ? bound - reached : reached - bound) / (bound || 1);
      if (missedLimits.includes(limit)) note('danger', 'limit-missed', limit, `${comes(exactConcentrations[form] ?? 0)}: ${why(limit, form)}. The sheet comes as near as can be.`);
      else if (breach > tellingBreach) note('caution', 'scale-too-coarse', limit, `${comes(reached)}: the scale is too coarse; dissolve a larger amount and measure out a part of that.`);
    }
  }
}

/** Says where several mixes fit equally well and nothing decides between them. */
export function noteAlternatives({ interchangeable }: WeighSheet, { note }: Solving): void {
  if (interchangeable.length === 0) return;
  note('info', 'several-mixes', 'salts', `Other mixes fit as well: ${listed(interchangeable)} can stand in for one another. An even mixture of them is taken; prices with a costTolerance, or less of one as its mostMass, would decide.`);
}

/** Says so where a cheapest mix is asked for and cannot be told. */
export function notePrices({ costTolerance, products }: WeighingTask, { note }: Solving): void {
  const unpriced = Object.keys(products).filter((name) => products[name]!.pricePerKilogram === undefined).sort();
  if (costTolerance === undefined || unpriced.length === 0) return;
  note('caution', 'price-missing', 'costTolerance', `The best fit is taken and not the cheapest mix, because there is no price for ${listed(unpriced)}.`);
}
