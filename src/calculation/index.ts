export { ConvergenceError } from '../numerics/convergence-error.js';
export type { Attempt, Calculation, ResultOf, StandardSchema } from './calculation.js';
export { isCalculation } from './calculation.js';
export type { About, Field, Fields, OptionalField, Range } from './field-types.js';
export type { Note, Severity } from './note.js';
export type { Output, Outputs } from './output.js';
export { InputError, isInputError, problemText, type Problem } from './problem.js';
