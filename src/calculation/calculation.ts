import * as z from 'zod/mini';
import type { SourceKey } from '../sources.js';
import { lazily } from '../units/lazily.js';
import { quoted } from '../units/quoted.js';
import { fieldsOf, type GroupCheck } from './grouped-field.js';
import type { Fields, SeenFields, WrittenFields } from './field-types.js';
import type { AddNote, Note } from './note.js';
import { wrapperOf, type GivenOutputs, type GotOutputs, type Outputs } from './output.js';
import { InputError, problemAt, problemText, type Problem } from './problem.js';

/** A result, or the error that stood in its way. */
export type Attempt<Result> = { readonly ok: true; readonly value: Result } | { readonly ok: false; readonly error: Error };

/** What a caller gets: the outputs, and what is to be said about them. */
export type ResultOf<O extends Outputs> = GotOutputs<O> & { readonly notes: readonly Note[] };

/** What `solve` may use beside its inputs. */
export interface Solving {
  /** Adds a finding to the result. */
  readonly note: AddNote;
  /** Ends the calculation with a problem of the input that shows only while solving. */
  readonly refuse: (path: string, expected: string, received: string, hint?: string) => never;
}

/** All that there is to say about a calculation. Everything else is derived from it. */
export interface Definition<F extends Fields, O extends Outputs> {
  /** The name that it is exported by. */
  readonly id: string;
  readonly title: string;
  readonly inputs: () => F;
  readonly outputs: () => O;
  /** The equation or method, in words and symbols. */
  readonly equation: string;
  /** Publications behind it; `definition` where it follows from the meaning of its terms, `common-practice` where there is none. */
  readonly sources: readonly [SourceKey, ...SourceKey[]];
  /** Dangers that every result of it has to mention. */
  readonly cautions?: readonly Note[];
  /** A run that makes sense, from the teaching garden. */
  readonly example: WrittenFields<F>;
  /** What must hold between inputs that are each well on their own. */
  readonly check?: GroupCheck<SeenFields<F>>;
  /** From SI numbers to SI numbers. */
  readonly solve: (inputs: SeenFields<F>, solving: Solving) => GivenOutputs<O>;
}

/** A calculation: call it with quantities or texts; it checks, computes and says what the result rests on. */
export interface Calculation<F extends Fields, O extends Outputs> {
  /** @throws InputError that lists every problem of the input; ConvergenceError where an iteration did not close. */
  (input: WrittenFields<F>): ResultOf<O>;
  /** For data that the compiler has not seen. Never throws for bad input; only what a getter of the input itself throws comes through. */
  try(input: unknown): Attempt<ResultOf<O>>;
  readonly id: string;
  readonly title: string;
  readonly equation: string;
  readonly sources: readonly SourceKey[];
  readonly cautions: readonly Note[];
  readonly example: WrittenFields<F>;
  /** The inputs: kinds, dimensions, limits, ranges of validity, defaults. */
  readonly inputs: F;
  /** The outputs: kinds, dimensions, the units that they are shown in. */
  readonly outputs: O;
  readonly '~standard': StandardSchema<WrittenFields<F>>;
}

/**
 * The standard-schema interface (version 1): a calculation as the validator of its input. What only solving can find, such as a
 * lateral that water does not climb, is not told here.
 */
export interface StandardSchema<Input> {
  readonly version: 1;
  readonly vendor: 'guttation';
  readonly validate: (value: unknown) => { readonly value: Input } | { readonly issues: readonly { readonly message: string; readonly path: readonly PropertyKey[] }[] };
  readonly types?: { readonly input: Input; readonly output: Input };
}

const mark = /* @__PURE__ */ Symbol.for('guttation.calculation');

/** Whether a value is a calculation. */
export const isCalculation = (value: unknown): value is Calculation<Fields, Outputs> => typeof value === 'function' && mark in value;

/** What the validator reports: a problem of ours, names that it does not know, or an input that is no object. */
interface Issue {
  readonly path: readonly PropertyKey[];
  readonly params?: Omit<Problem, 'path' | 'keys'>;
  readonly keys?: readonly string[];
}

/** What the validator found, in our words. */
const problemsOf = (issues: readonly Issue[], input: unknown, names: readonly string[]): readonly Problem[] =>
  issues.flatMap(({ path, params, keys }) => {
    if (params) return problemAt(path, params);
    if (keys) {
      const hint = path.length === 0 ? `known are ${names.join(', ')}` : undefined;
      return keys.map((key) => problemAt([...path, key], { expected: 'a known name', received: 'an unknown name', hint }));
    }
    return problemAt(path, { expected: 'an object', received: quoted(input) });
  });

/** Makes a calculation from its definition. Call it as `@__PURE__`, so that a bundler can drop the calculations nobody uses. */
export function calculation<F extends Fields, O extends Outputs>(definition: Definition<F, O>): Calculation<F, O> {
  const { id, solve, cautions = [] } = definition;
  const prepared = lazily(() => {
    const inputs = definition.inputs();
    const outputs = definition.outputs();
    const { schema, about } = fieldsOf(inputs, definition.check);
    return { inputs, outputs, schema: schema as z.ZodMiniType, validity: about.validity, wrap: wrapperOf(outputs) };
  });

  const parse = (input: unknown) => z.safeParse(prepared().schema, input);
  const problemsIn = (input: unknown, issues: readonly object[]): readonly Problem[] => problemsOf(issues as readonly Issue[], input, Object.keys(prepared().inputs));

  const run = (input: unknown): ResultOf<O> => {
    const { success, data, error } = parse(input);
    if (!success) throw new InputError(problemsIn(input, error.issues), id);
    const { validity, wrap } = prepared();
    const notes: Note[] = [];
    validity?.(data, [], notes);
    const given = solve(data as SeenFields<F>, {
      note: (severity, code, field, text) => notes.push({ code, severity, field, text }),
      refuse: (path, expected, received, hint) => {
        throw new InputError([problemAt([path], { expected, received, hint })], id);
      },
    });
    for (const caution of cautions) notes.push({ ...caution });
    const result = wrap(given) as Record<string, unknown>;
    result['notes'] = notes;
    return result as ResultOf<O>;
  };

  const attempt = (input: unknown): Attempt<ResultOf<O>> => {
    try {
      return { ok: true, value: run(input) };
    } catch (error) {
      if (error instanceof Error && (error.name === 'InputError' || error.name === 'ConvergenceError')) return { ok: false, error };
      throw error;
    }
  };

  const validate = (value: unknown): ReturnType<StandardSchema<WrittenFields<F>>['validate']> => {
    const { success, error } = parse(value);
    if (success) return { value: value as WrittenFields<F> };
    return { issues: problemsIn(value, error.issues).map((problem) => ({ message: problemText(problem), path: problem.keys })) };
  };

  const { title, equation, sources, example } = definition;
  return Object.defineProperties(
    Object.assign(run, {
      [mark]: true, id, title, equation, sources, cautions, example,
      try: attempt,
      '~standard': { version: 1, vendor: 'guttation', validate } as const,
    }),
    { name: { value: id }, inputs: { get: () => prepared().inputs }, outputs: { get: () => prepared().outputs } },
  ) as unknown as Calculation<F, O>;
}
