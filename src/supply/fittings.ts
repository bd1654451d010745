/** What the calculations with fittings have in common. */
import * as field from '../calculation/field.js';
import { fittingLosses, type Fitting } from './fitting-losses.js';

/** Fittings by name and number, and whatever else costs a multiple of the velocity head. */
export const fittingFields = () => ({
  fittings: field.optional(field.record(Object.keys(fittingLosses) as Fitting[], field.count({ limits: [0, 1000] }))),
  lossCoefficient: field.withDefault(field.number({ limits: [0, 10_000] }), 0),
});

/** Loss coefficient of all of them together. */
export function totalLossCoefficient({ fittings = {}, lossCoefficient }: { readonly fittings: { readonly [F in Fitting]?: number } | undefined; readonly lossCoefficient: number }): number {
  return Object.entries(fittings).reduce((sum, [name, number]) => sum + number * fittingLosses[name as Fitting].lossCoefficient, lossCoefficient);
}
