/** Inputs of one value each. */
import * as z from 'zod/mini';
import type { DimensionDefinition } from '../units/dimension.js';
import * as dimensions from '../units/dimensions.js';
import type { Dimension, Quantity, QuantityInput, QuantityText, ShareInput } from '../units/quantity.js';
import { quoted } from '../units/quoted.js';
import { isRead, readQuantity, suggest, type ReadingProblem } from '../units/read.js';
import type { About, Field, OptionalField, Range } from './field-types.js';
import { validityOf, type NumbersOf } from './validity.js';

/** Why a value is not taken. */
export class Refusal {
  constructor(readonly problem: ReadingProblem) {}
}

/** A refusal: what is expected, and what was perhaps meant. */
export const refuse = (expected: string, hint?: string): Refusal => new Refusal({ expected, hint });

/** An input of one value. */
export interface SingleField<Written, Seen> extends Field<Written, Seen> {
  readonly read: (value: unknown) => Seen | Refusal;
}

/** Where a validator says what is wrong. */
export interface Context {
  readonly issues: { push(issue: object): unknown };
}

/** An input of one value: `read` gives what the calculation sees of it, or says what is wrong. */
export const single = <Written, Seen>(about: About, read: (value: unknown) => Seen | Refusal): SingleField<Written, Seen> => ({
  about,
  read,
  schema: z.transform((value: unknown, context: Context) => {
    const result = read(value);
    if (!(result instanceof Refusal)) return result;
    context.issues.push({ code: 'custom', input: value, params: { received: quoted(value), ...result.problem } });
    return z.NEVER;
  }),
});

/** An input of one value that may be left out; the calculation then sees the default. */
export function withDefault<Written, Seen>({ about, read }: SingleField<Written, Seen>, value: Written): OptionalField<Written, Seen> {
  // The text of the default is read once, when it is first needed.
  let ofDefault: ReturnType<typeof read> | undefined;
  return single({ ...about, optional: true, default: value }, (given) => (given === undefined ? (ofDefault ??= read(value)) : read(given))) as unknown as OptionalField<Written, Seen>;
}

/** Whether a number is within a range. */
export const inside = (x: number, [low, high]: Range): boolean => x >= low && x <= high;

/** The ranges of an input as its calculation writes them. */
export interface Ranges<Text> {
  /** Both ends included; outside there is no meaningful result: an error. */
  readonly limits: readonly [low: Text, high: Text];
  /** Where the formulas behind it hold; outside, the result carries a note. */
  readonly valid?: readonly [low: Text, high: Text];
}

function siOf(definition: DimensionDefinition, text: string): number {
  const reading = readQuantity(definition as DimensionDefinition<Dimension>, text);
  if (isRead(reading)) return reading.si;
  throw new Error(`'${text}' in a definition: expected ${reading.expected}`);
}

/** What there is to say about the ranges of a field. */
type RangesAbout = Pick<About, 'valid' | 'validity' | 'written'> & { readonly limits: Range };

/** Limits and validity of a quantity or column. */
export function rangesOf<Seen>(definition: DimensionDefinition, ranges: Ranges<string>, numbers: NumbersOf<Seen>): RangesAbout {
  const range = ([low, high]: readonly [string, string]): Range => [siOf(definition, low), siOf(definition, high)];
  const valid = ranges.valid && range(ranges.valid);
  return { limits: range(ranges.limits), ...(valid && { valid }), ...validityOf(valid, ranges.valid, numbers), written: ranges };
}

/** A number in the units of the dimension in which it would be within the limits. */
const plausible = (definition: DimensionDefinition, number: number, limits: Range): readonly string[] =>
  Object.keys(definition.units).map((symbol) => `${number} ${symbol}`).filter((text) => inside(siOf(definition, text), limits));

/** Reads a quantity within limits; `see` says what the calculation gets of it. */
function quantityField<D extends Dimension, Seen>(
  definition: DimensionDefinition<D>, ranges: Ranges<string>, see: (quantity: Quantity<D>) => Seen, numbers: NumbersOf<Seen>,
): SingleField<QuantityInput<D>, Seen> {
  const about = { kind: 'quantity', dimension: definition, ...rangesOf(definition, ranges, numbers) } as const;
  return single(about, (value) => {
    const reading = readQuantity(definition, value);
    if (isRead(reading)) {
      if (inside(reading.si, about.limits)) return see(reading);
      return refuse(ranges.limits.join(' to '), suggest(plausible(definition, reading.in(reading.unit as never), about.limits).slice(0, 2)));
    }
    const [likely] = Number.isFinite(value) ? plausible(definition, value as number, about.limits) : [];
    return new Refusal(likely ? { ...reading, hint: `the unit is missing, as in '${likely}'` } : reading);
  });
}

const itself = (seen: number): readonly number[] => [seen];

/** A quantity; the calculation sees its SI number. */
export const quantity = <D extends Dimension>(definition: DimensionDefinition<D>, ranges: Ranges<QuantityText<D>>): SingleField<QuantityInput<D>, number> =>
  quantityField(definition, ranges, ({ si }) => si, itself);

/** A quantity that the calculation sees as it was written, for arithmetic in decimals. */
export const writtenQuantity = <D extends Dimension>(definition: DimensionDefinition<D>, ranges: Ranges<QuantityText<D>>): SingleField<QuantityInput<D>, Quantity<D>> =>
  quantityField(definition, ranges, (reading) => reading, ({ si }) => [si]);

/** A share: a number from 0 to 1, or a text such as '65 %'. The calculation sees the fraction. */
export function share({ limits = [0, 1], valid }: Partial<Ranges<number>> = {}): SingleField<ShareInput, number> {
  const percents = (range: Range): readonly [string, string] => range.map((x) => `${Number((x * 100).toPrecision(12))} %`) as unknown as readonly [string, string];
  const written = { limits: percents(limits), ...(valid && { valid: percents(valid) }) };
  const about = { kind: 'share', dimension: dimensions.share, limits, ...(valid && { valid }), written, ...validityOf(valid, written.valid, itself) } as const;
  return single(about, (value) => {
    const reading = typeof value === 'number' ? { si: value } : readQuantity(dimensions.share, value);
    if (!('si' in reading)) return new Refusal({ ...reading, expected: `a share: a number from ${limits.join(' to ')}, or a text such as '65 %'` });
    if (inside(reading.si, limits)) return reading.si;
    return refuse(`a share from ${written.limits.join(' to ')}`, suggest(typeof value === 'number' && inside(value / 100, limits) ? [`${value} %`] : []));
  });
}

const numeric = (kind: 'number' | 'count', ranges: Ranges<number>, what: string, isOne: (value: unknown) => boolean): SingleField<number, number> =>
  single({ kind, ...ranges, written: ranges, ...validityOf(ranges.valid, ranges.valid, itself) }, (value) =>
    isOne(value) && inside(value as number, ranges.limits) ? (value as number) : refuse(`a ${what} from ${ranges.limits.join(' to ')}`));

/** A number without a unit. */
export const number = (ranges: Ranges<number>): SingleField<number, number> => numeric('number', ranges, 'number', (value) => typeof value === 'number');

/** A whole number. */
export const count = (ranges: Ranges<number>): SingleField<number, number> => numeric('count', ranges, 'whole number', Number.isInteger);

/** One of a few words. */
export const choice = <const Word extends string>(choices: readonly Word[]): SingleField<Word, Word> =>
  single({ kind: 'choice', choices }, (value) => {
    if (choices.includes(value as Word)) return value as Word;
    const near = choices.filter((word) => word.toLowerCase() === String(typeof value === 'string' && value).toLowerCase());
    return refuse(`one of ${choices.map((word) => `'${word}'`).join(', ')}`, suggest(near));
  });

/** Yes or no. */
export const flag = (): SingleField<boolean, boolean> => single({ kind: 'flag' }, (value) => (typeof value === 'boolean' ? value : refuse('true or false')));

/** A text of at least one character; `check` says what is wrong with it, if anything. */
export const text = (longest: number, check: (text: string) => ReadingProblem | undefined = () => undefined): SingleField<string, string> =>
  single({ kind: 'text', limits: [1, longest] }, (value) => {
    if (typeof value !== 'string' || value.length === 0 || value.length > longest) return refuse(`a text of 1 to ${longest} characters`);
    const problem = check(value);
    return problem ? new Refusal(problem) : value;
  });
