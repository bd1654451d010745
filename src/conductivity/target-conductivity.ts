import type { Solving } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { conductivity } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';

/** Temperature (K) that a target is stated for, as meters state conductivity. */
export const targetTemperature = 298.15;

export const targetField = () => field.quantity(conductivity, { limits: ['0.01 mS/cm', '50 mS/cm'] });

/** How well a search for a conductivity closed. */
export const conductivityConvergence = () => output.group({ conductivityResidual: output.quantity(conductivity, 'mS/cm'), steps: output.number() });

/** A conductivity (S/m) for a note or a problem. */
export const conductivityText = (value: number): string => `${writeNumber(value * 10)} mS/cm`;

/** Ends the calculation where a target cannot be had of two solutions of these conductivities (S/m). */
export function refuseOutside(target: number, one: number, other: number, hint: string, { refuse }: Solving): void {
  const [low, high] = [Math.min(one, other), Math.max(one, other)];
  if (!(target >= low && target <= high && low < high)) refuse('targetConductivity', `a conductivity from ${conductivityText(low)} to ${conductivityText(high)}`, conductivityText(target), hint);
}
