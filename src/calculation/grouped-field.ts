/** Inputs made of other inputs: groups, lists, records, and inputs that may be left out. */
import type { AddProblem } from './problem.js';
import * as z from 'zod/mini';
import type { About, AnyField, Field, Fields, OptionalField, Range, SeenFields, WrittenFields } from './field-types.js';
import { inside, refuse, Refusal, single, type Context } from './single-field.js';
import type { ValidityCheck } from './validity.js';

/** An input that may be left out; the calculation then sees `undefined`. */
export const optional = <Written, Seen>(field: Field<Written, Seen>): OptionalField<Written, Seen | undefined> => ({
  about: { ...field.about, optional: true },
  schema: z.optional(field.schema as z.ZodMiniType),
});

/** The same field, but the calculation sees what was written, once it is found good: to be handed on to another calculation. */
export function asWritten<Written>(field: Field<Written, unknown>): Field<Written, Written>;
export function asWritten<Written>(field: OptionalField<Written, unknown>): OptionalField<Written, Written | undefined>;
export function asWritten({ about: { validity: _toBeNotedThere, ...about }, schema }: AnyField): AnyField {
  return {
    about,
    schema: z.transform((value: unknown, context: Context) => {
      const read = z.safeParse(schema as z.ZodMiniType, value);
      if (read.success) return value;
      for (const issue of read.error.issues) context.issues.push({ ...issue, input: value });
      return z.NEVER;
    }),
  };
}

type WrittenIn<F> = F extends Field<infer Written, unknown> ? Written : never;
type SeenIn<F> = F extends Field<unknown, infer Seen> ? Seen : never;

const schemasOf = (fields: Fields): Record<string, z.ZodMiniType> =>
  Object.fromEntries(Object.entries(fields).map(([name, { schema }]) => [name, schema as z.ZodMiniType]));

/** A cross-check over a group that read well; `problem` says what is wrong, at a path within it. */
export type GroupCheck<Seen> = (seen: Seen, problem: AddProblem) => void;

/** A problem of a group or list as a whole, in the form that the validator passes on. */
const issue = (input: unknown, path: readonly PropertyKey[], expected: string, received: string, hint?: string) =>
  ({ code: 'custom' as const, input, path: [...path], params: { expected, received, hint } });

/** A field behind a first look: only what `look` does not refuse comes to the validator. */
const guarded = <Written, Seen>(about: About, validator: unknown, look: (value: unknown) => Refusal | undefined): Field<Written, Seen> => {
  const { schema } = single(about, (value) => look(value) ?? value);
  return { about, schema: z.pipe(schema as z.ZodMiniType, validator as z.ZodMiniType) };
};

/** Refuses what is no object of names: a list, map, date or promise would seem to hold nothing. */
const named = (value: unknown): Refusal | undefined => (Object.prototype.toString.call(value) === '[object Object]' ? undefined : refuse('an object'));

/** The fields of a group as one object; unknown names are problems. */
export function fieldsOf<F extends Fields>(fields: F, check?: GroupCheck<SeenFields<F>>): Field<WrittenFields<F>, SeenFields<F>> {
  const object = z.strictObject(schemasOf(fields));
  const checked = check && object.check((payload) => {
    check(payload.value as SeenFields<F>, (...problem) => payload.issues.push(issue(payload.value, ...problem)));
  });
  const ranged = Object.entries(fields).filter(([, { about }]) => about.validity);
  const validity: ValidityCheck = (seen, path, notes) => {
    for (const [name, { about }] of ranged) about.validity!((seen as SeenFields<F> | undefined)?.[name], [...path, name], notes);
  };
  return { about: { kind: 'group', fields, ...(ranged.length > 0 && { validity }) }, schema: checked ?? object };
}

/** Several named inputs together. Unknown names are problems. */
export function group<F extends Fields>(fields: F, check?: GroupCheck<SeenFields<F>>): Field<WrittenFields<F>, SeenFields<F>> {
  const { about, schema } = fieldsOf(fields, check);
  return guarded(about, schema, named);
}

/** A list of entries of one kind. */
export function list<F extends AnyField>(item: F, { limits }: { readonly limits: Range }): Field<readonly WrittenIn<F>[], readonly SeenIn<F>[]> {
  const { validity: ofEach } = item.about;
  const validity: ValidityCheck = (seen, path, notes) => (seen as readonly unknown[] | undefined)?.forEach((entry, i) => ofEach!(entry, [...path, i], notes));
  const about = { kind: 'list', item, limits, ...(ofEach && { validity }) } as const;
  const expected = `a list of ${limits.join(' to ')}`;
  return guarded(about, z.array(item.schema as z.ZodMiniType), (value) => {
    if (!Array.isArray(value)) return refuse(expected);
    return inside(value.length, limits) ? undefined : new Refusal({ expected, received: `one of ${value.length}` });
  });
}

/** Entries of one kind by name; each name is one of `names`. A name given as undefined is a name left out. */
export function record<const Name extends string, F extends AnyField>(
  names: readonly Name[], item: F,
): Field<{ readonly [N in Name]?: WrittenIn<F> | undefined }, { readonly [N in Name]?: SeenIn<F> }> {
  const { validity: ofEach } = item.about;
  const validity: ValidityCheck = (seen, path, notes) => Object.entries(seen ?? {}).forEach(([name, entry]) => ofEach!(entry, [...path, name], notes));
  const entries = z.pipe(
    z.strictObject(Object.fromEntries(names.map((name) => [name, z.optional(item.schema as z.ZodMiniType)]))),
    z.transform((given) => Object.fromEntries(Object.entries(given).filter(([, entry]) => entry !== undefined))),
  );
  return guarded({ kind: 'record', item, choices: names, ...(ofEach && { validity }) }, entries, named);
}
