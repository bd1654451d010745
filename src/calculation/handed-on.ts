import type { Field, Fields, OptionalField } from './field-types.js';
import { asWritten } from './grouped-field.js';

/** Fields whose calculation sees what was written, to be handed on to another. */
export type HandedOn<F extends Fields> = {
  readonly [K in keyof F]: F[K] extends OptionalField<infer Written, unknown> ? OptionalField<Written, Written | undefined> : F[K] extends Field<infer Written, unknown> ? Field<Written, Written> : never;
};

/** The same inputs, but the calculation sees each as it was written, once it is found good. */
export function handedOn<F extends Fields>(fields: F): HandedOn<F> {
  return Object.fromEntries(Object.entries(fields).map(([name, one]) => [name, asWritten(one as Field<unknown, unknown>)])) as unknown as HandedOn<F>;
}
