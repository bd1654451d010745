/** Inputs that sums of degree-days have in common. */
import type { AddProblem } from '../calculation/problem.js';
import * as field from '../calculation/field.js';
import type { AddNote } from '../calculation/note.js';
import { temperature } from '../units/dimensions.js';

/** Temperature that growth starts at. */
export const baseTemperature = () => field.quantity(temperature, { limits: ['-10 °C', '40 °C'] });

/** Temperature above which it gets no faster. */
export const upperTemperature = () => field.optional(field.quantity(temperature, { limits: ['-10 °C', '60 °C'] }));

/** What is wrong with the two together. */
export function checkUpperTemperature(
  base: number | undefined, upper: number | undefined, problem: AddProblem,
): void {
  if (upper === undefined) return;
  if (base === undefined) problem(['baseTemperature'], 'the temperature above which degree-days count, to go with upperTemperature', 'nothing', 'leave upperTemperature out to do without degree-days');
  else if (upper <= base) problem(['upperTemperature'], 'a temperature above the base', 'one that is not', 'are the two swapped?');
}

/** What is to be said where the method does not know the limit. */
export function noteUpperTemperature({ upperTemperature, degreeDayMethod }: { readonly upperTemperature?: number | undefined; readonly degreeDayMethod: string }, note: AddNote): void {
  if (upperTemperature !== undefined && degreeDayMethod === 'mean') note('info', 'no-upper-limit', 'upperTemperature', "The method 'mean' has no upper limit: 'limited' would keep to it.");
}
