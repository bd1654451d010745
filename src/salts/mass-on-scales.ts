import { mass } from '../units/dimensions.js';
import { unitOf, type Quantity } from '../units/quantity.js';
import { inDecimals } from './decimal-quantity.js';
import { readOnScales, scaleForMass } from './formulas/scale.js';

interface SeenScale {
  readonly division: Quantity<'mass'>;
  readonly maximumLoad: number | undefined;
}

/** A mass (kg) as the finest scale that carries it reads, in the unit of that scale; without scales as it is, in a unit of choice. */
export function massOnScales(exact: number, scales: readonly SeenScale[] = [], unit = 'g'): Quantity<'mass'> {
  const known = scales.map(({ division, maximumLoad = Infinity }) => ({ division: division.si, capacity: maximumLoad, unit: division.unit }));
  return inDecimals(mass, readOnScales(exact, known), unitOf(mass, scaleForMass(exact, known)?.unit ?? unit));
}
