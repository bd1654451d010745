import type { About } from './field-types.js';
import type { Note } from './note.js';

/** Adds a note for every value outside the range that the formulas behind it were made for. */
export type ValidityCheck = (seen: unknown, path: string, notes: Note[]) => void;

/** The check of a field, or undefined where nothing in it has such a range. */
export function validityCheck(about: About): ValidityCheck | undefined {
  if (!about.ranged) return undefined;
  if (about.kind === 'group') {
    const checks = Object.entries(about.fields!).flatMap(([name, field]) => {
      const check = validityCheck(field.about);
      return check ? [[name, check] as const] : [];
    });
    return (seen, path, notes) => {
      for (const [name, check] of checks) {
        const value = (seen as Record<string, unknown>)[name];
        if (value !== undefined) check(value, path === '' ? name : `${path}.${name}`, notes);
      }
    };
  }
  if (about.kind === 'list') {
    const check = validityCheck(about.item!.about)!;
    return (seen, path, notes) => (seen as readonly unknown[]).forEach((entry, i) => check(entry, `${path}[${i}]`, notes));
  }
  if (about.kind === 'record') {
    const check = validityCheck(about.item!.about)!;
    return (seen, path, notes) => {
      for (const [name, entry] of Object.entries(seen as object)) if (entry !== undefined) check(entry, `${path}.${name}`, notes);
    };
  }
  const [low, high] = about.valid!;
  const [from, to] = about.written!.valid!;
  const outside = (x: number): boolean => x < low || x > high;
  return (seen, path, notes) => {
    const isOutside = typeof seen === 'number' ? outside(seen) : about.kind === 'column' ? (seen as { readonly si: Float64Array }).si.some(outside) : outside((seen as { readonly si: number }).si);
    if (!isOutside) return;
    notes.push({ code: 'outside-range', severity: 'caution', field: path, text: `${path} is outside ${String(from)} to ${String(to)}, where the formulas behind this result hold; take it with care.` });
  };
}
