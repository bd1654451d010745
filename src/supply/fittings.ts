/** What the calculations with fittings have in common. */
import type { Solving } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import { temperature } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { fittingLosses, type Fitting } from './fitting-losses.js';

/** Fittings by name and number, and whatever else costs a multiple of the velocity head. */
export const fittingFields = () => ({
  fittings: field.optional(field.record(Object.keys(fittingLosses) as Fitting[], field.count({ limits: [0, 1000] }))),
  lossCoefficient: field.withDefault(field.number({ limits: [0, 10_000] }), 0),
});

export const waterTemperature = () => field.withDefault(field.quantity(temperature, { limits: ['0 °C', '60 °C'] }), '20 °C');

/** No pump of a garden drives water through a pipe faster than this, m/s. */
const impossibleVelocity = 30;

/** Refuses a velocity that cannot be. */
export function refuseRacing(velocity: number, refuse: Solving['refuse']): void {
  if (velocity > impossibleVelocity) refuse('diameter', 'a pipe that can carry this flow', `one in which the water runs at ${writeNumber(velocity)} m/s`, 'are the units right?');
}

/** Loss coefficient of all of them together. */
export function totalLossCoefficient({ fittings = {}, lossCoefficient }: { readonly fittings: { readonly [F in Fitting]?: number } | undefined; readonly lossCoefficient: number }): number {
  return Object.entries(fittings).reduce((sum, [name, number]) => sum + number * fittingLosses[name as Fitting].lossCoefficient, lossCoefficient);
}
