import * as output from '../calculation/output.js';
import type { DimensionDefinition, Unit } from '../units/dimension.js';
import { quantityFromSI, quantityIn, unitOf, type Dimension, type Quantity, type UnitOf } from '../units/quantity.js';
import { writtenDecimal } from './exact-decimal.js';

/** A quantity whose number in the unit shown is a decimal as one writes it down: 12.3 %, not 12.299999999999999 %. */
export function inDecimals<D extends Dimension>(definition: DimensionDefinition<D>, si: number, unit: Unit): Quantity<D> {
  const value = quantityFromSI(definition, si, unit).in(unit.symbol as UnitOf<D>);
  return quantityIn(definition, writtenDecimal(value).toNumber(), unit);
}

/** The output of such a quantity, from its SI number. */
export function decimalQuantity<D extends Dimension>(definition: DimensionDefinition<D>, unit: UnitOf<D>): output.Output<number, Quantity<D>> {
  const shown = unitOf(definition, unit);
  return { ...output.quantity(definition, unit), wrap: (si) => inDecimals(definition, si, shown) };
}
