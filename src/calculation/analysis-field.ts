/** Inputs that analyses need: values that may be stated in several dimensions, and names that are often written otherwise. */
import * as z from 'zod/mini';
import { dimension, type DimensionDefinition } from '../units/dimension.js';
import type { Dimension, Quantity } from '../units/quantity.js';
import { isRead, readQuantity } from '../units/read.js';
import type { Field } from './field-types.js';
import { refuse, single, type Context, type SingleField } from './single-field.js';
import type { ValidityCheck } from './validity.js';

type QuantityField = SingleField<unknown, Quantity<Dimension>>;
type WrittenIn<F> = F extends Field<infer Written, unknown> ? Written : never;
type SeenIn<F> = F extends Field<unknown, infer Seen> ? Seen : never;

const definitionOf = ({ about }: QuantityField) => about.dimension as DimensionDefinition<Dimension>;

/**
 * A quantity of any of several dimensions, each with limits of its own: `'80 mg/L'`, `'2 mmol/L'` or `'4 meq/L'`. The calculation sees the
 * quantity, which knows its dimension. The first way gives the dimension that the input is known by, and reads a unit that several have.
 */
export function either<const F extends readonly [QuantityField, ...QuantityField[]]>(...ways: F): SingleField<WrittenIn<F[number]>, SeenIn<F[number]>> {
  const definitions = ways.map(definitionOf);
  const any = dimension(
    definitions.map(({ name }) => name).join(' or '),
    Object.fromEntries(definitions.flatMap(({ units }) => Object.entries(units))),
    Object.fromEntries(definitions.flatMap(({ aliases }) => Object.entries(aliases))),
  ) as unknown as DimensionDefinition<Dimension>;
  const expected = `a number, a space and a unit (${definitions.flatMap(({ units }) => Object.keys(units).slice(0, 3)).join(', ')} …)`;
  const [first, ...others] = ways.map(({ about }) => about);
  const validity: ValidityCheck = (seen, path, notes) =>
    ways.find((one) => definitionOf(one).name === (seen as Quantity<Dimension> | undefined)?.dimension)?.about.validity?.(seen, path, notes);
  return single({ ...first!, alternatives: others, validity }, (value) => {
    for (const way of ways) {
      const reading = readQuantity(definitionOf(way), value);
      if (isRead(reading)) return way.read(reading) as SeenIn<F[number]>;
    }
    const reading = readQuantity(any, value);
    return refuse(expected, isRead(reading) ? undefined : reading.hint);
  });
}

/** Hints are looked for to so many unknown names of so many characters at most: a hint may take a while. */
const mostHints = 10;
const longestName = 60;

const unknownName = (input: unknown, name: string, hint: string | undefined) => ({ code: 'custom', input, path: [name], params: { expected: 'a known name', received: 'an unknown name', hint } });

/** The same record, but `hintFor` says what was perhaps meant by a name that it does not know. */
export const withNameHints = <Written, Seen>({ about, schema }: Field<Written, Seen>, hintFor: (name: string) => string | undefined): Field<Written, Seen> => ({
  about,
  schema: z.transform((value: unknown, context: Context) => {
    const { success, data, error } = z.safeParse(schema as z.ZodMiniType, value);
    if (success) return data;
    for (const issue of error.issues) {
      if (issue.code !== 'unrecognized_keys') context.issues.push({ ...issue, input: value });
      else issue.keys.forEach((name, i) => context.issues.push(unknownName(value, name, i < mostHints && name.length <= longestName ? hintFor(name) : undefined)));
    }
    return z.NEVER;
  }),
});
