/** What calculations about the sun ask of the site and the day. */
import type { AddProblem } from '../calculation/problem.js';
import * as field from '../calculation/field.js';
import { angle, length, radiationSum, time } from '../units/dimensions.js';

/** Latitude of the site, positive north; `refusePolar` in the check keeps it between the polar circles. */
export const latitudeField = () => field.quantity(angle, { limits: ['-90 °', '90 °'] });

export const dayOfYearField = () => field.count({ limits: [1, 366] });

export const elevationField = () => field.quantity(length, { limits: ['-400 m', '5000 m'] });

/** Time by the clock at which the sun stands highest. */
export const solarNoonField = () => field.withDefault(field.quantity(time, { limits: ['10 h', '14 h'] }), '12 h');

/** Radiation from the sun in a day; outside the atmosphere it comes to no more than 45 MJ/m² anywhere between the polar circles. */
export const radiationSumField = () => field.quantity(radiationSum, { limits: ['0 MJ/m²', '45 MJ/m²'] });

/** Share of the radiation outdoors that gets to the plants; all of it where it was measured at the plants. */
export const coverTransmissionField = () => field.withDefault(field.share({ limits: [0.01, 1] }), 1);

const polarCircle = 66.5;

/** A problem where the site lies beyond a polar circle. */
export function refusePolar(latitude: number, problem: AddProblem): void {
  if (Math.abs(latitude) <= polarCircle) return;
  problem(['latitude'], `one between the polar circles, -${polarCircle} to ${polarCircle} °`, `${latitude} °`, 'beyond them the sun stays up or away for days on end, and length of day and clear sky have no meaning');
}

/** Degrees to radians. */
export const radians = (degrees: number): number => degrees * Math.PI / 180;
