import type { Range } from './field-types.js';
import type { Note } from './note.js';

/** Adds a note where a value lies outside the range that the formulas behind it were made for. */
export type ValidityCheck = (seen: unknown, path: string, notes: Note[]) => void;

/** The check of a field whose calculation sees something that has SI numbers in it. */
export const validityOf = (range: Range | undefined, written: readonly [unknown, unknown] | undefined, numbers: (seen: never) => ArrayLike<number> | number): { readonly validity?: ValidityCheck } =>
  range === undefined ? {} : {
    validity: (seen, path, notes) => {
      const found = numbers(seen as never);
      const isOutside = (x: number): boolean => x < range[0] || x > range[1];
      if (!(typeof found === 'number' ? isOutside(found) : Array.prototype.some.call(found, isOutside))) return;
      notes.push({ code: 'outside-range', severity: 'caution', field: path, text: `${path} is outside ${String(written![0])} to ${String(written![1])}, where the formulas behind this result hold; take it with care.` });
    },
  };
