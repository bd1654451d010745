import { mass } from '../units/dimensions.js';
import { unitOf, type Quantity } from '../units/quantity.js';
import { inDecimals } from './decimal-quantity.js';
import { readOnScales, scaleForMass } from './formulas/scale.js';

interface SeenScale {
  readonly division: Quantity<'mass'>;
  readonly maximumLoad: number | undefined;
}

/** Scales at hand as formulas take them, with the unit that each is read in. */
export const weighingScales = (scales: readonly SeenScale[] = []) => scales.map(({ division, maximumLoad }) => ({ division: division.si, maximumLoad, unit: division.unit }));

/** A mass (kg) as the finest scale that carries it reads, in the unit of that scale; without scales as it is, in a unit of choice. */
export function massOnScales(exact: number, scales: readonly SeenScale[] | undefined, unit: string): Quantity<'mass'> {
  const known = weighingScales(scales);
  return inDecimals(mass, readOnScales(exact, known), unitOf(mass, scaleForMass(exact, known)?.unit ?? unit));
}
