import type { AddProblem } from './problem.js';
/** Says so where not exactly one of the named inputs is given; for use in the check of a calculation or group. */
export function expectExactlyOne<Name extends string>(
  seen: { readonly [N in Name]: unknown }, names: readonly Name[], problem: AddProblem,
): void {
  const given = names.filter((name) => seen[name] !== undefined);
  if (given.length !== 1) problem(given.slice(-1), `exactly one of ${names.join(', ')}`, given.length === 0 ? 'none' : given.join(' and '));
}
