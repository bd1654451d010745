import { InputError, problemAt, type Problem } from '../calculation/problem.js';

/** Ends with an InputError on one thing that only the caller can say, or that makes a file unreadable as a whole. */
export function refuse(keys: readonly PropertyKey[], expected: string, received: string, hint?: string): never {
  throw inputError([problemAt(keys, { expected, received, hint })]);
}

export const inputError = (problems: readonly Problem[]): InputError => new InputError(problems, 'logger');
