/** Inputs that calculations of several subjects ask for in the same way. */
import { absolutePressure } from '../units/dimensions.js';
import * as field from './field.js';

/** Pressure of the atmosphere at the site, that at sea level where not given. */
export const atmosphericPressureField = () => field.withDefault(field.quantity(absolutePressure, { limits: ['50 kPa', '110 kPa'] }), '101.325 kPa');
