/** What a calculation takes in: one maker for each kind of value. Calculations call them as `field.quantity(...)` in their `inputs`. */
export { either, withNameHints } from './analysis-field.js';
export { column } from './column-field.js';
export { asWritten, group, list, optional, record, type GroupCheck } from './grouped-field.js';
export { choice, count, flag, number, quantity, share, text, withDefault, writtenQuantity } from './single-field.js';
