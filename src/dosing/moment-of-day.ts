import * as field from '../calculation/field.js';
import { time } from '../units/dimensions.js';

/** A time of the day, by the clock. */
export const momentOfDay = () => field.quantity(time, { limits: ['0 h', '24 h'] });
