/** What the calculations of a tank that empties have in common. */
import type { Solving } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import { bracketedRoot, type Root } from '../numerics/roots.js';
import { area, length } from '../units/dimensions.js';

/** The last of a tank runs as drops and by the wind: below this head, m, no formula holds. Common practice, no source. */
const leastHead = 0.005;

/** The tank: the area of the water in it, and its levels above the outlet. */
export const tankFields = () => ({
  tankArea: field.quantity(area, { limits: ['1 cm²', '1000 m²'] }),
  startLevel: field.quantity(length, { limits: ['1 mm', '20 m'] }),
  endLevel: field.withDefault(field.quantity(length, { limits: ['0 m', '20 m'] }), '0 m'),
  outletDrop: field.withDefault(field.quantity(length, { limits: ['0 m', '30 m'] }), '0 m'),
});

/** Finds levels that are the wrong way round. */
export const checkLevels: field.GroupCheck<{ readonly startLevel: number; readonly endLevel: number }> = ({ startLevel, endLevel }, problem) => {
  if (endLevel >= startLevel) problem(['endLevel'], 'a level below the first', 'one as high or higher', 'swap them?');
};

/** Refuses to empty a tank down to where the water only drips. */
export function refuseDregs(endHead: number, { refuse }: Solving): void {
  if (endHead < leastHead) refuse('endLevel', `a level at least ${leastHead * 1000} mm above where the water comes out`, `${endHead * 1000} mm`, 'the last of it only drips');
}

/** Flow at which an outlet takes a head: between none and the `most` that would flow without friction, and a hair for rounding. */
export const flowAtHead = (headAtFlow: (flow: number) => number, head: number, most: number): Root =>
  bracketedRoot((flow) => headAtFlow(flow) - head, 0, most * 1.001);
