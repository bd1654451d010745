import type { Range } from './field-types.js';
import { outsideRange, type Note } from './note.js';
import { pathText } from './problem.js';

/** Adds a note where a value lies outside the range that the formulas behind it were made for. */
export type ValidityCheck = (seen: unknown, path: readonly PropertyKey[], notes: Note[]) => void;

/** Finds the SI numbers in what a calculation sees of a field. */
export type NumbersOf<Seen> = (seen: Seen) => readonly number[] | Float64Array;

/** The check of a field, by its range in SI numbers and as it is written. */
export const validityOf = <Seen>(range: Range | undefined, written: readonly [unknown, unknown] | undefined, numbers: NumbersOf<Seen>): { readonly validity?: ValidityCheck } =>
  range === undefined ? {} : {
    validity: (seen, path, notes) => {
      const isOutside = seen !== undefined && numbers(seen as Seen).some((x) => x < range[0] || x > range[1]);
      if (isOutside) notes.push(outsideRange(pathText(path), ...written!));
    },
  };
