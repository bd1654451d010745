/** Every calculation as data, with the glossary of its names and the publications behind it. */
import * as all from './index.js';
import { isCalculation, type Calculation } from './calculation/calculation.js';
import type { Fields } from './calculation/field-types.js';
import type { Outputs } from './calculation/output.js';

export { glossary, type Term } from './glossary.js';
export { sources, type Source, type SourceKey } from './sources.js';

/** Every calculation of the library, by id, in alphabetical order. */
export const catalogue = (): readonly Calculation<Fields, Outputs>[] =>
  (Object.values(all) as readonly unknown[])
    .filter(isCalculation)
    .sort((a, b) => (a.id < b.id ? -1 : 1));
