/** One thing that is wrong with an input. */
export interface Problem {
  /** Where: `zones[0].lateral.spacing`; empty for the input as a whole. */
  readonly path: string;
  /** The same as keys and indices. */
  readonly keys: readonly PropertyKey[];
  /** What is needed there. */
  readonly expected: string;
  /** What was given, shortened. */
  readonly received: string;
  /** What was most likely meant, where that can be told. */
  readonly hint?: string | undefined;
}

/** Finds a problem at a path within what is checked. */
export type AddProblem = (path: readonly PropertyKey[], expected: string, received: string, hint?: string) => void;

const mark = /* @__PURE__ */ Symbol.for('guttation.InputError');

/** Thrown for bad input. Lists every problem found, not only the first. */
export class InputError extends Error {
  override readonly name = 'InputError';

  constructor(readonly problems: readonly Problem[], of: string) {
    super([`${of}: problems with the input: ${problems.length}`, ...problems.map(problemText)].join('\n- '));
    Object.defineProperty(this, mark, { value: true });
  }
}

/** Whether an error lists the problems of an input, from this or another copy of the library. */
export const isInputError = (error: unknown): error is InputError => error instanceof Error && mark in error;

/** What is needed and what came, without the place. */
export const needText = ({ expected, received, hint }: Problem): string => `${expected} is needed, not ${received}${hint === undefined ? '' : ` (${hint})`}`;

/** A problem as one sentence. */
export const problemText = (problem: Problem): string => `${problem.path === '' ? 'the input' : problem.path}: ${needText(problem)}`;

/** A path of keys and indices as one text. */
export const pathText = (keys: readonly PropertyKey[]): string =>
  keys.reduce<string>((text, key) => (typeof key === 'number' ? `${text}[${key}]` : text === '' ? String(key) : `${text}.${String(key)}`), '');

/** A problem at a path. */
export const problemAt = (keys: readonly PropertyKey[], rest: Omit<Problem, 'path' | 'keys'>): Problem => ({ path: pathText(keys), keys, ...rest });
