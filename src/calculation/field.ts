/** What a calculation takes in: one maker for each kind of value. Calculations call them as `field.quantity(...)` in their `inputs`. */
import * as z from 'zod/mini';
import type { DimensionDefinition } from '../units/dimension.js';
import * as dimensions from '../units/dimensions.js';
import { columnIn, isColumn, type Column, type ColumnInput } from '../units/column.js';
import { unitOf, type Dimension, type Quantity, type QuantityInput, type QuantityText, type ShareInput } from '../units/quantity.js';
import { isRead, readQuantity, type ReadingProblem } from '../units/read.js';
import type { About, AnyField, Field, Fields, OptionalField, Range, SeenFields, WrittenFields } from './field-types.js';
import { quoted } from './problem.js';

/** Longest list or column that is taken in. */
const mostEntries = 1_000_000;

class Refusal {
  constructor(readonly problem: ReadingProblem) {}
}

const refuse = (expected: string, hint?: string): Refusal => new Refusal(hint === undefined ? { expected } : { expected, hint });

interface Context {
  readonly issues: { push(issue: object): unknown };
}

/** A validator of one value: `read` gives what the calculation sees of it, or says what is wrong. */
const reader = (read: (value: unknown) => unknown): unknown =>
  z.transform((value: unknown, context: Context) => {
    const result = read(value);
    if (!(result instanceof Refusal)) return result;
    context.issues.push({ code: 'custom', input: value, params: { received: quoted(value), ...result.problem } });
    return z.NEVER;
  });

const inside = (x: number, [low, high]: Range): boolean => x >= low && x <= high;

/** An input that may be left out; the calculation then sees `undefined`. */
export const optional = <Written, Seen>(field: Field<Written, Seen>): OptionalField<Written, Seen | undefined> => ({
  about: { ...field.about, optional: true },
  schema: z.optional(field.schema as z.ZodMiniType),
});

/** An input that may be left out; the calculation then sees the default. */
export const withDefault = <Written, Seen>(field: Field<Written, Seen>, value: Written): OptionalField<Written, Seen> => ({
  about: { ...field.about, optional: true, default: value },
  schema: z.prefault(field.schema as z.ZodMiniType, value),
});

/** The same field, but the calculation sees what was written, once it is found good: to be handed on to another calculation. */
export const asWritten = <Written>(field: Field<Written, unknown>): Field<Written, Written> => ({
  about: field.about,
  schema: z.transform((value: unknown, context: Context) => {
    const read = z.safeParse(field.schema as z.ZodMiniType, value);
    for (const issue of read.error?.issues ?? []) context.issues.push({ ...issue, input: value });
    return value;
  }),
});

interface Ranges<Text> {
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

function ranged(definition: DimensionDefinition, ranges: Ranges<string>): Pick<About, 'valid' | 'ranged' | 'written'> & { readonly limits: Range } {
  const range = ([low, high]: readonly [string, string]): Range => [siOf(definition, low), siOf(definition, high)];
  return { limits: range(ranges.limits), ...(ranges.valid && { valid: range(ranges.valid), ranged: true }), written: ranges };
}

/** Other units of the dimension in which the same number would be within the limits. */
function plausibleUnits(definition: DimensionDefinition, written: Quantity<Dimension>, limits: Range): string | undefined {
  const number = written.in(written.unit as never);
  const texts = Object.keys(definition.units)
    .map((symbol) => `${number} ${symbol}`)
    .filter((text) => inside(siOf(definition, text), limits))
    .slice(0, 2);
  return texts.length === 0 ? undefined : `did you mean ${texts.map((text) => `'${text}'`).join(' or ')}?`;
}

/** Reads a quantity within limits; `see` says what the calculation gets of it. */
function quantityField<D extends Dimension, Seen>(definition: DimensionDefinition<D>, ranges: Ranges<string>, see: (quantity: Quantity<D>) => Seen): Field<QuantityInput<D>, Seen> {
  const range = ranged(definition, ranges);
  return {
    about: { kind: 'quantity', dimension: definition, ...range },
    schema: reader((value) => {
      const reading = readQuantity(definition, value);
      if (!isRead(reading)) return new Refusal(reading);
      if (inside(reading.si, range.limits)) return see(reading);
      return refuse(`${ranges.limits[0]} to ${ranges.limits[1]}`, plausibleUnits(definition, reading, range.limits));
    }),
  };
}

/** A quantity; the calculation sees its SI number. */
export const quantity = <D extends Dimension>(definition: DimensionDefinition<D>, ranges: Ranges<QuantityText<D>>): Field<QuantityInput<D>, number> =>
  quantityField(definition, ranges, ({ si }) => si);

/** A quantity that the calculation sees as it was written, for arithmetic in decimals. */
export const writtenQuantity = <D extends Dimension>(definition: DimensionDefinition<D>, ranges: Ranges<QuantityText<D>>): Field<QuantityInput<D>, Quantity<D>> =>
  quantityField(definition, ranges, (reading) => reading);

/** A share: a number from 0 to 1, or a text such as '65 %'. The calculation sees the fraction. */
export function share(ranges: Partial<Ranges<number>> = {}): Field<ShareInput, number> {
  const limits = ranges.limits ?? [0, 1];
  const percent = (x: number): string => `${Number((x * 100).toPrecision(12))} %`;
  return {
    about: { kind: 'share', dimension: dimensions.share, ...ranges, limits, ...(ranges.valid && { ranged: true }), written: { limits: [percent(limits[0]), percent(limits[1])], ...(ranges.valid && { valid: [percent(ranges.valid[0]), percent(ranges.valid[1])] }) } },
    schema: reader((value) => {
      const reading = typeof value === 'number' ? { si: value } : readQuantity(dimensions.share, value);
      if (!('si' in reading)) return new Refusal({ ...reading, expected: `a share: a number from ${limits[0]} to ${limits[1]}, or a text such as '65 %'` });
      if (inside(reading.si, limits)) return reading.si;
      return refuse(`a share from ${percent(limits[0])} to ${percent(limits[1])}`, typeof value === 'number' && inside(value / 100, limits) ? `did you mean '${value} %'?` : undefined);
    }),
  };
}

/** A number without a unit. */
export const number = (ranges: Ranges<number>): Field<number, number> => ({
  about: { kind: 'number', ...ranges, ...(ranges.valid && { ranged: true }), written: ranges },
  schema: reader((value) => (typeof value === 'number' && inside(value, ranges.limits) ? value : refuse(`a number from ${ranges.limits[0]} to ${ranges.limits[1]}`))),
});

/** A whole number. */
export const count = (ranges: Ranges<number>): Field<number, number> => ({
  about: { kind: 'count', ...ranges, ...(ranges.valid && { ranged: true }), written: ranges },
  schema: reader((value) => (Number.isInteger(value) && inside(value as number, ranges.limits) ? value : refuse(`a whole number from ${ranges.limits[0]} to ${ranges.limits[1]}`))),
});

/** One of a few words. */
export const choice = <const Word extends string>(choices: readonly Word[]): Field<Word, Word> => ({
  about: { kind: 'choice', choices },
  schema: reader((value) => {
    if (choices.includes(value as Word)) return value;
    const near = typeof value === 'string' ? choices.find((word) => word.toLowerCase() === value.toLowerCase()) : undefined;
    return refuse(`one of ${choices.map((word) => `'${word}'`).join(', ')}`, near && `did you mean '${near}'?`);
  }),
});

/** Yes or no. */
export const flag = (): Field<boolean, boolean> => ({
  about: { kind: 'flag' },
  schema: reader((value) => (typeof value === 'boolean' ? value : refuse('true or false'))),
});

/** A text of at least one character; `check` says what is wrong with it, if anything. */
export const text = (longest: number, check: (text: string) => ReadingProblem | undefined = () => undefined): Field<string, string> => ({
  about: { kind: 'text', limits: [1, longest] },
  schema: reader((value) => {
    if (typeof value !== 'string' || value.length === 0 || value.length > longest) return refuse(`a text of 1 to ${longest} characters`);
    const problem = check(value);
    return problem ? new Refusal(problem) : value;
  }),
});

/** Many numbers of one dimension. `null` or NaN stands for a missing reading. */
export function column<D extends Dimension>(definition: DimensionDefinition<D>, ranges: Ranges<QuantityText<D>>): Field<ColumnInput<D>, Column<D>> {
  const range = ranged(definition, ranges);
  const expected = `a column of ${definition.name}: { unit, values }, at most ${mostEntries} values`;
  return {
    about: { kind: 'column', dimension: definition, ...range },
    schema: reader((value) => {
      const read = isColumn(value) && value.dimension === definition.name ? (value as Column<D>) : columnFrom(definition, value);
      if (!read || read.length > mostEntries) return refuse(expected);
      const [low, high] = range.limits;
      const { si } = read;
      for (let i = 0; i < si.length; i++) {
        if (si[i]! < low || si[i]! > high) return refuse(`every value from ${ranges.limits[0]} to ${ranges.limits[1]}`, `value ${i} is ${read.at(i)!}`);
      }
      return read;
    }),
  };
}

function columnFrom<D extends Dimension>(definition: DimensionDefinition<D>, value: unknown): Column<D> | undefined {
  if (typeof value !== 'object' || value === null || !('unit' in value) || !('values' in value)) return undefined;
  const { unit, values } = value;
  const isNumbers = values instanceof Float64Array || (Array.isArray(values) && values.every((x) => x === null || typeof x === 'number'));
  if (typeof unit !== 'string' || !isNumbers || values.length > mostEntries) return undefined;
  try {
    return columnIn(definition, values as ArrayLike<number | null>, unitOf(definition, unit));
  } catch {
    return undefined;
  }
}

type WrittenIn<F> = F extends Field<infer Written, unknown> ? Written : never;
type SeenIn<F> = F extends Field<unknown, infer Seen> ? Seen : never;

const schemasOf = (fields: Fields): Record<string, z.ZodMiniType> =>
  Object.fromEntries(Object.entries(fields).map(([name, { schema }]) => [name, schema as z.ZodMiniType]));

/** A cross-check over a group that read well; `problem` says what is wrong, at a path within it. */
export type GroupCheck<Seen> = (seen: Seen, problem: (path: readonly PropertyKey[], expected: string, received: string, hint?: string) => void) => void;

/** Several named inputs together. Unknown names are problems. */
export function group<F extends Fields>(fields: F, check?: GroupCheck<SeenFields<F>>): Field<WrittenFields<F>, SeenFields<F>> {
  const object = z.strictObject(schemasOf(fields));
  const checked = check && object.check((payload) => {
    check(payload.value as SeenFields<F>, (path, expected, received, hint) => {
      payload.issues.push({ code: 'custom', input: payload.value, path: [...path], params: { expected, received, ...(hint !== undefined && { hint }) } });
    });
  });
  return { about: { kind: 'group', fields, ranged: Object.values(fields).some((entry) => entry.about.ranged) }, schema: checked ?? object };
}

/** A list of entries of one kind. */
export const list = <F extends AnyField>(item: F, { limits }: { readonly limits: Range }): Field<readonly WrittenIn<F>[], readonly SeenIn<F>[]> => ({
  about: { kind: 'list', item, limits, ranged: item.about.ranged ?? false },
  schema: z.array(item.schema as z.ZodMiniType).check(z.minLength(limits[0]), z.maxLength(limits[1])),
});

/** Entries of one kind by name; each name is one of `names`. */
export const record = <const Name extends string, F extends AnyField>(names: readonly Name[], item: F): Field<{ readonly [N in Name]?: WrittenIn<F> | undefined }, { readonly [N in Name]?: SeenIn<F> }> => ({
  about: { kind: 'record', item, choices: names, ranged: item.about.ranged ?? false },
  schema: z.strictObject(Object.fromEntries(names.map((name) => [name, z.optional(item.schema as z.ZodMiniType)]))),
});
