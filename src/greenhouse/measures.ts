/** Quantities from SI numbers, in the units that a grower reads. */
import { flow, pressure, share, time } from '../units/dimensions.js';
import { quantityFromSI, unitOf, type Quantity } from '../units/quantity.js';

export const litresPerMinute = (si: number): Quantity<'flow'> => quantityFromSI(flow, si, unitOf(flow, 'L/min'));
export const kilopascals = (si: number): Quantity<'pressure'> => quantityFromSI(pressure, si, unitOf(pressure, 'kPa'));
export const seconds = (si: number): Quantity<'time'> => quantityFromSI(time, si, unitOf(time, 's'));
export const percent = (si: number): Quantity<'share'> => quantityFromSI(share, si, unitOf(share, '%'));
