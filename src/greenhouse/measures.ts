/** Quantities and columns from SI numbers, in the units that a grower reads. */
import { columnFromSI, type Column } from '../units/column.js';
import type { DimensionDefinition } from '../units/dimension.js';
import { flow, pressure, share, temperature, time, volume } from '../units/dimensions.js';
import { quantityFromSI, unitOf, type Dimension, type Quantity, type UnitOf } from '../units/quantity.js';

export const litresPerMinute = (si: number): Quantity<'flow'> => quantityFromSI(flow, si, unitOf(flow, 'L/min'));
export const kilopascals = (si: number): Quantity<'pressure'> => quantityFromSI(pressure, si, unitOf(pressure, 'kPa'));
export const seconds = (si: number): Quantity<'time'> => quantityFromSI(time, si, unitOf(time, 's'));
export const hours = (number: number): Quantity<'time'> => quantityFromSI(time, number * 3600, unitOf(time, 'h'));
export const minutes = (si: number): Quantity<'time'> => quantityFromSI(time, si, unitOf(time, 'min'));
export const percent = (si: number): Quantity<'share'> => quantityFromSI(share, si, unitOf(share, '%'));
export const degrees = (si: number): Quantity<'temperature'> => quantityFromSI(temperature, si, unitOf(temperature, '°C'));
export const litres = (si: number): Quantity<'volume'> => quantityFromSI(volume, si, unitOf(volume, 'L'));

export const columnOf = <D extends Dimension>(definition: DimensionDefinition<D>, unit: UnitOf<D>, si: Float64Array): Column<D> => columnFromSI(definition, si, unitOf(definition, unit));
