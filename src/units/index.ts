export { column, dimensionNames, quantity, unitsOf } from './by-name.js';
export { isColumn, type Column, type ColumnInput } from './column.js';
export { isQuantity, type Dimension, type Quantity, type QuantityInput, type QuantityText, type ShareInput, type UnitOf } from './quantity.js';
