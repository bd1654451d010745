const markOf = (kind: string): symbol => Symbol.for(`guttation.${kind}`);

/** Marks the instances of a class, so that other copies of the library recognise them. Data cannot forge the mark. */
export function marked<Class extends abstract new (...args: never[]) => object>(kind: string, made: Class): Class {
  Object.defineProperty(made.prototype, markOf(kind), { value: true });
  return made;
}

/** Whether a value is an instance of a class marked so, of this or another copy of the library. */
export const isMarked = (value: unknown, kind: string): boolean => typeof value === 'object' && value !== null && markOf(kind) in value;
