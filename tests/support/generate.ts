/** Random inputs of a calculation, generated from what its fields declare. */
import fc from 'fast-check';
import type { Calculation } from '../../src/calculation/calculation.js';
import type { About, AnyField, Fields } from '../../src/calculation/field-types.js';
import type { Outputs } from '../../src/calculation/output.js';
import type { DimensionDefinition } from '../../src/units/dimension.js';
import { quantityFromSI, unitOf, type Dimension } from '../../src/units/quantity.js';

export type AnyCalculation = Calculation<Fields, Outputs>;

const within = ([low, high]: readonly [number, number]): fc.Arbitrary<number> =>
  fc.oneof(
    { weight: 8, arbitrary: fc.double({ min: low, max: high, noNaN: true }) },
    // Small numbers of a wide range are as interesting as large ones.
    { weight: 6, arbitrary: low > 0 ? fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map((x) => Math.min(high, Math.max(low, Math.exp(x)))) : fc.double({ min: 0, max: 1, noNaN: true }).map((x) => low + (high - low) * x ** 4) },
    { weight: 1, arbitrary: fc.constantFrom(low, high) },
  );

/** A quantity within its limits, in any of its units. */
function quantityWithin({ dimension, limits }: About): fc.Arbitrary<unknown> {
  const definition = dimension as DimensionDefinition<Dimension>;
  return fc.tuple(within(limits!), fc.constantFrom(...Object.keys(definition.units))).map(([si, unit]) => quantityFromSI(definition, si, unitOf(definition, unit)));
}

/** A value of one field, or undefined where a field cannot be made up (a text has a meaning of its own). */
function valueOf(about: About, example: unknown, rows?: number): fc.Arbitrary<unknown> {
  switch (about.kind) {
    case 'quantity': return fc.oneof(...[about, ...(about.alternatives ?? [])].map(quantityWithin));
    case 'share':
    case 'number': return within(about.limits!);
    case 'count': return fc.integer({ min: about.limits![0], max: Math.min(about.limits![1], 400) });
    case 'choice': return fc.constantFrom(...about.choices!);
    case 'flag': return fc.boolean();
    case 'column': return fc.array(within(about.limits!), { minLength: rows ?? 1, maxLength: rows ?? 12 }).map((values) => ({ unit: siUnit(about.dimension!), values }));
    case 'list': {
      const entries = Array.isArray(example) ? example : [];
      return fc.tuple(...entries.map((entry) => valueOf(about.item!.about, entry)));
    }
    case 'group': return inputOf(about.fields!, (example ?? {}) as Readonly<Record<string, unknown>>);
    case 'record': {
      const names = about.choices!.filter((name) => (example as Readonly<Record<string, unknown>> | undefined)?.[name] !== undefined);
      return fc.record(Object.fromEntries(names.map((name) => [name, valueOf(about.item!.about, (example as Readonly<Record<string, unknown>>)[name])])));
    }
    case 'text': return fc.constant(example);
  }
}

/** The unit of a dimension whose factor is one. */
const siUnit = (definition: DimensionDefinition): string => Object.entries(definition.units).find(([, [n, d, offset]]) => n === d && offset === undefined)?.[0] ?? Object.keys(definition.units)[0]!;

/** Inputs for a set of fields: a mixture of the example and of random values within the limits. */
function inputOf(fields: Fields, example: Readonly<Record<string, unknown>>): fc.Arbitrary<Record<string, unknown>> {
  const rows = rowsOf(example);
  const entries = Object.entries(fields).map(([name, { about }]: [string, AnyField]) => {
    const given = example[name];
    const canBeMade = about.kind !== 'text' || given !== undefined;
    if (!canBeMade || (given === undefined && (about.kind === 'list' || about.kind === 'record'))) return fc.constant([name, undefined] as const);
    const random = valueOf(about, given, rows).map((value) => [name, value] as const);
    const kept = fc.constant([name, given] as const);
    return about.optional || given !== undefined ? fc.oneof({ weight: 2, arbitrary: random }, { weight: 1, arbitrary: kept }) : random;
  });
  return fc.tuple(...entries).map((pairs) => Object.fromEntries(pairs.filter(([, value]) => value !== undefined)));
}

/** Rows of the columns of an example: its random columns have as many, for most calculations want them all of one length. */
const rowsOf = (example: Readonly<Record<string, unknown>>): number | undefined =>
  Object.values(example).map((value) => (value as { readonly values?: ArrayLike<unknown> } | undefined)?.values?.length).find((length) => length !== undefined);

export const randomInput = (calculation: AnyCalculation): fc.Arbitrary<Record<string, unknown>> => inputOf(calculation.inputs, calculation.example);

/** Every place of an example where a field stands, with what the field declares. */
export function places(fields: Fields, example: Readonly<Record<string, unknown>>, path: readonly (string | number)[] = []): readonly { readonly path: readonly (string | number)[]; readonly about: About }[] {
  return Object.entries(fields).flatMap(([name, { about }]) => placesOf(about, example[name], [...path, name]));
}

function placesOf(about: About, example: unknown, path: readonly (string | number)[]): ReturnType<typeof places> {
  const here = { path, about };
  if (example === undefined) return [here];
  if (about.kind === 'group') return [here, ...places(about.fields!, example as Readonly<Record<string, unknown>>, path)];
  if (about.kind === 'list') return [here, ...(example as readonly unknown[]).slice(0, 2).flatMap((entry, i) => placesOf(about.item!.about, entry, [...path, i]))];
  if (about.kind === 'record') return [here, ...Object.entries(example as object).slice(0, 2).flatMap(([name, entry]) => placesOf(about.item!.about, entry, [...path, name]))];
  return [here];
}

/** A copy of a value with one place replaced. */
export function replaced(value: unknown, [key, ...rest]: readonly (string | number)[], by: unknown): unknown {
  if (key === undefined) return by;
  if (Array.isArray(value)) return value.map((entry: unknown, i) => (i === key ? replaced(entry, rest, by) : entry));
  return { ...(value as object), [key]: replaced((value as Record<string, unknown> | undefined)?.[key], rest, by) };
}
