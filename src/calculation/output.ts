/** What a calculation gives back: one maker for each kind of value. Calculations call them as `output.quantity(...)` in their `outputs`. */
import { columnFromSI, type Column } from '../units/column.js';
import type { DimensionDefinition } from '../units/dimension.js';
import { quantityFromSI, unitOf, type Dimension, type Quantity, type UnitOf } from '../units/quantity.js';

declare const types: unique symbol;

/** One output of a calculation: what its formulas give and what a caller gets. */
export interface Output<Given, Got> {
  readonly kind: 'quantity' | 'number' | 'text' | 'choice' | 'flag' | 'column' | 'list' | 'group' | 'record';
  readonly dimension?: DimensionDefinition;
  /** The unit that it is shown in. */
  readonly unit?: string;
  readonly choices?: readonly string[];
  readonly outputs?: Outputs;
  readonly item?: Output<never, unknown>;
  readonly optional?: true;
  /** From what the formulas give to what the caller gets. */
  readonly wrap: (given: Given) => Got;
  readonly [types]?: { readonly given: (given: Given) => void; readonly got: Got };
}

/** The outputs of a calculation, or of a group within one. */
export type Outputs = { readonly [name: string]: Output<never, unknown> };

type GivenOf<O> = O extends { readonly [types]?: { readonly given: (given: infer G) => void } } ? G : never;
type GotOf<O> = O extends { readonly [types]?: { readonly got: infer G } } ? G : never;

/** What a calculation's `solve` returns. */
export type GivenOutputs<O extends Outputs> = { readonly [K in keyof O]: GivenOf<O[K]> };

/** What its caller gets. */
export type GotOutputs<O extends Outputs> = { readonly [K in keyof O]: GotOf<O[K]> };

/** A quantity, from its SI number. */
export function quantity<D extends Dimension>(definition: DimensionDefinition<D>, unit: UnitOf<D>): Output<number, Quantity<D>> {
  const shown = unitOf(definition, unit);
  return { kind: 'quantity', dimension: definition, unit: shown.symbol, wrap: (si) => quantityFromSI(definition, si, shown) };
}

/** Many numbers of one dimension, from SI numbers. */
export function column<D extends Dimension>(definition: DimensionDefinition<D>, unit: UnitOf<D>): Output<Float64Array, Column<D>> {
  const shown = unitOf(definition, unit);
  return { kind: 'column', dimension: definition, unit: shown.symbol, wrap: (si) => columnFromSI(definition, si, shown) };
}

const asIs = <T>(given: T): T => given;

/** A number without a unit. */
export const number = (): Output<number, number> => ({ kind: 'number', wrap: asIs });

/** A text. */
export const text = (): Output<string, string> => ({ kind: 'text', wrap: asIs });

/** One of a few words. */
export const choice = <const Word extends string>(choices: readonly Word[]): Output<Word, Word> => ({ kind: 'choice', choices, wrap: asIs });

/** Yes or no. */
export const flag = (): Output<boolean, boolean> => ({ kind: 'flag', wrap: asIs });

/** An output that there may not be. */
export function optional<Given, Got>({ wrap, ...rest }: Output<Given, Got>): Output<Given | undefined, Got | undefined> {
  const perhaps = (given: Given | undefined): Got | undefined => (given === undefined ? undefined : wrap(given));
  return { ...rest, optional: true, wrap: perhaps } as Output<Given | undefined, Got | undefined>;
}

/** Outputs of another calculation, handed on as they came from there. */
export const passedOn = <O extends Outputs>(outputs: O): { readonly [K in keyof O]: Output<GotOf<O[K]>, GotOf<O[K]>> } =>
  Object.fromEntries(Object.entries(outputs).map(([name, output]) => [name, { ...output, wrap: asIs }])) as never;

/** Several named outputs together. */
export function group<O extends Outputs>(outputs: O): Output<GivenOutputs<O>, GotOutputs<O>> {
  return { kind: 'group', outputs, wrap: wrapperOf(outputs) };
}

/** A list of entries of one kind. */
export const list = <Given, Got>(item: Output<Given, Got>): Output<readonly Given[], readonly Got[]> => ({
  kind: 'list',
  item: item,
  wrap: (given) => given.map((entry) => item.wrap(entry)),
});

/** Entries of one kind by name. */
export const record = <Name extends string, Given, Got>(
  item: Output<Given, Got>,
): Output<Readonly<Partial<Record<Name, Given>>>, Readonly<Partial<Record<Name, Got>>>> => ({
  kind: 'record',
  item: item,
  wrap: (given) => Object.fromEntries(Object.entries(given).map(([name, entry]) => [name, item.wrap(entry as Given)])) as Partial<Record<Name, Got>>,
});

/** From what formulas give to what a caller gets; an optional output that is absent stays absent. */
export function wrapperOf<O extends Outputs>(outputs: O): (given: GivenOutputs<O>) => GotOutputs<O> {
  const entries = Object.entries(outputs) as unknown as [string, Output<unknown, unknown>][];
  return (given) => {
    const got: Record<string, unknown> = {};
    for (const [name, output] of entries) {
      const value = output.wrap((given as Record<string, unknown>)[name]);
      if (value !== undefined) got[name] = value;
    }
    return got as GotOutputs<O>;
  };
}
