import * as field from '../calculation/field.js';
import type { AddNote } from '../calculation/note.js';
import { length, velocity } from '../units/dimensions.js';
import { windSpeedAt2mFao56 } from './formulas/reference-evapotranspiration.js';

/** Wind outdoors and the height of its meter. */
export const windFields = () => ({
  windSpeed: field.optional(field.quantity(velocity, { limits: ['0 m/s', '40 m/s'] })),
  windHeight: field.withDefault(field.quantity(length, { limits: ['0.5 m', '200 m'] }), '2 m'),
});

/** Wind at 2 m, in m/s; 2 m/s where none was measured. */
export function windAt2m({ windSpeed, windHeight }: { readonly windSpeed: number | undefined; readonly windHeight: number }, note: AddNote): number {
  if (windSpeed === undefined) {
    note('caution', 'no-wind', 'windSpeed', 'No wind is given: 2 m/s are taken, the mean of weather stations all over the world. On a summer day 1 or 3 m/s would move the result by some 7 %, in dry air by more.');
    return 2;
  }
  const atTwo = windHeight === 2 ? windSpeed : windSpeedAt2mFao56(windSpeed, windHeight);
  if (atTwo < 0.5) note('info', 'still-air', 'windSpeed', 'Less than 0.5 m/s at 2 m: outdoors take 0.5 m/s there, as warm ground stirs the air; in a house take indoorEvapotranspiration.');
  return atTwo;
}
