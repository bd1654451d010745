import type { Range } from './field-types.js';
import { outsideRange, type Note } from './note.js';
import { pathText } from './problem.js';

/** Adds a note where a value lies outside the range that the formulas behind it were made for. */
export type ValidityCheck = (seen: unknown, path: readonly PropertyKey[], notes: Note[]) => void;

/** The check of a field; `numbers` finds the SI numbers in what the calculation sees. */
export const validityOf = (range: Range | undefined, written: readonly [unknown, unknown] | undefined, numbers: (seen: never) => readonly number[] | Float64Array): { readonly validity?: ValidityCheck } =>
  range === undefined ? {} : {
    validity: (seen, path, notes) => {
      if (seen !== undefined && numbers(seen as never).some((x) => x < range[0] || x > range[1])) notes.push(outsideRange(pathText(path), ...written!));
    },
  };
