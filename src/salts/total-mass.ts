import { mass } from '../units/dimensions.js';
import { quantityIn, unitOf, type Quantity, type UnitOf } from '../units/quantity.js';
import { decimalSum, writtenDecimal } from './exact-decimal.js';

/** Total of masses as they are written down, in the unit of the first: 0.1 g and 0.2 g make 0.3 g. Of none it is 0 g. */
export function totalMassOf(masses: readonly Quantity<'mass'>[]): Quantity<'mass'> {
  const unit = unitOf(mass, masses[0]?.unit ?? 'g');
  const total = decimalSum(masses.map((one) => writtenDecimal(one.in(unit.symbol as UnitOf<'mass'>))));
  return quantityIn(mass, total.toNumber(), unit);
}
