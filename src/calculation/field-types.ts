import type { DimensionDefinition } from '../units/dimension.js';
import type { ValidityCheck } from './validity.js';

/** A range in SI numbers, both ends in it. */
export type Range = readonly [low: number, high: number];

/** What a field accepts, for people and for programs. */
export interface About {
  readonly kind: 'quantity' | 'share' | 'number' | 'count' | 'choice' | 'flag' | 'text' | 'column' | 'list' | 'group' | 'record';
  readonly dimension?: DimensionDefinition;
  /** Outside these there is no meaningful result: an error. */
  readonly limits?: Range;
  /** Outside these a result rests on less: a note. */
  readonly valid?: Range;
  /** Limits and validity as the definition writes them. */
  readonly written?: { readonly limits?: readonly [unknown, unknown]; readonly valid?: readonly [unknown, unknown] };
  /** Other dimensions that a quantity may be stated in. */
  readonly alternatives?: readonly About[];
  readonly choices?: readonly string[];
  readonly default?: unknown;
  readonly optional?: true;
  /** Of a group: its fields. */
  readonly fields?: Fields;
  /** Of a list or a record: what each entry is. */
  readonly item?: AnyField;
  /** Notes what lies outside a range of validity, in it or in anything in it. */
  readonly validity?: ValidityCheck;
}

declare const types: unique symbol;

/** One input of a calculation: what a caller writes there and what the calculation sees. */
export interface Field<Written, Seen> {
  readonly about: About;
  /** The validator. Its type is nobody's business but this folder's. */
  readonly schema: unknown;
  readonly [types]?: { readonly written: Written; readonly seen: Seen; readonly optional: false };
}

/** An input that may be left out. */
export interface OptionalField<Written, Seen> {
  readonly about: About;
  readonly schema: unknown;
  readonly [types]?: { readonly written: Written; readonly seen: Seen; readonly optional: true };
}

export type AnyField = Field<unknown, unknown> | OptionalField<unknown, unknown>;

/** The inputs of a calculation, or of a group within one. */
export type Fields = { readonly [name: string]: AnyField };

type WrittenOf<F> = F extends { readonly [types]?: { readonly written: infer W } } ? W : never;
type SeenOf<F> = F extends { readonly [types]?: { readonly seen: infer S } } ? S : never;
type OptionalKeys<F extends Fields> = { [K in keyof F]: F[K] extends { readonly [types]?: { readonly optional: true } } ? K : never }[keyof F];
type Show<T> = { [K in keyof T]: T[K] } & {};

/** What a caller writes for a set of fields. */
export type WrittenFields<F extends Fields> = Show<
  { readonly [K in Exclude<keyof F, OptionalKeys<F>>]: WrittenOf<F[K]> } & { readonly [K in OptionalKeys<F>]?: WrittenOf<F[K]> | undefined }
>;

/** What a calculation sees of them. */
export type SeenFields<F extends Fields> = Show<{ readonly [K in keyof F]: SeenOf<F[K]> }>;
