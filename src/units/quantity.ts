import { convert } from './exact.js';
import { conversionTo, findUnit, type Ascii, type DimensionDefinition, type Unit } from './dimension.js';
import { isMarked, marked } from './marked.js';
import { writeNumber } from './write.js';
import type * as table from './dimensions.js';

/** Name of a dimension: `'pressure'`, `'conductivity'`, … */
export type Dimension = keyof typeof table;

/** Every way to write a unit of a dimension, with or without special characters. */
export type UnitOf<D extends Dimension> = (typeof table)[D] extends DimensionDefinition<string, infer Symbol, infer Alias>
  ? Symbol | Alias | Ascii<Symbol | Alias>
  : never;

/** A quantity as text: a decimal number, one space, a unit of the dimension. A dilution may also be written as `1:100`. */
export type QuantityText<D extends Dimension> = `${number} ${UnitOf<D>}` | (D extends 'dilution' ? `1:${number}` : never);

/** What is accepted where a quantity is asked for. */
export type QuantityInput<D extends Dimension> = Quantity<D> | QuantityText<D>;

/** What is accepted where a share is asked for: a number from 0 to 1, or a text such as `'65 %'`. */
export type ShareInput = number | QuantityInput<'share'>;

/** A number with its unit. Immutable. */
export interface Quantity<D extends Dimension> {
  readonly dimension: D;
  /** The number in SI units (mass in kg, amount concentration in mol/m³, shares as a fraction). */
  readonly si: number;
  /** The unit that it is shown in. */
  readonly unit: string;
  /** The number in a unit, correctly rounded. @throws RangeError for a unit of another dimension. */
  in(unit: UnitOf<D>): number;
  /** The same quantity, shown in another unit. @throws RangeError for a unit of another dimension. */
  as(unit: UnitOf<D>): Quantity<D>;
  /** For people: four significant digits and the unit. */
  toString(): string;
  /** For storage: every digit and the unit, as every input accepts it. */
  toJSON(): string;
}

/** A unit of a dimension, or a RangeError. */
export function unitOf(definition: DimensionDefinition, written: string): Unit {
  const unit = findUnit(definition, written);
  if (!unit) throw new RangeError(`'${written}' is not a unit of ${definition.name}`);
  return unit;
}

const QuantityValue = /* @__PURE__ */ marked('quantity', class {
  constructor(
    readonly definition: DimensionDefinition,
    readonly shown: Unit,
    /** The number as it was written in the unit shown, where it came so: it must not change by going through SI. */
    readonly written: number | undefined,
    readonly si: number,
  ) {}

  get dimension(): string {
    return this.definition.name;
  }

  get unit(): string {
    return this.shown.symbol;
  }

  in(unit: string): number {
    const target = unit === this.shown.symbol ? this.shown : unitOf(this.definition, unit);
    if (this.written === undefined) return convert(this.si, target.fromSI);
    return target === this.shown ? this.written : convert(this.written, conversionTo(this.shown, target));
  }

  as(unit: string): object {
    const target = unitOf(this.definition, unit);
    return new QuantityValue(this.definition, target, this.written === undefined ? undefined : this.in(unit), this.si);
  }

  toString(): string {
    return `${writeNumber(this.in(this.unit))} ${this.unit}`;
  }

  toJSON(): string {
    return `${this.in(this.unit)} ${this.unit}`;
  }

  [Symbol.toPrimitive](hint: string): string {
    if (hint === 'number') throw new TypeError(`${this.toString()} has no number without a unit: use .in('${this.unit}')`);
    return this.toString();
  }
});

/** A quantity from a number in one of the units of a dimension. */
export function quantityIn<Name extends Dimension>(definition: DimensionDefinition<Name>, value: number, unit: Unit): Quantity<Name> {
  return new QuantityValue(definition, unit, value, convert(value, unit.toSI)) as unknown as Quantity<Name>;
}

/** A quantity from its SI number, shown in one of the units of its dimension. */
export function quantityFromSI<Name extends Dimension>(definition: DimensionDefinition<Name>, si: number, shown: Unit): Quantity<Name> {
  return new QuantityValue(definition, shown, undefined, si) as unknown as Quantity<Name>;
}

/** Whether a value is a quantity, of this or another copy of the library. */
export const isQuantity = (value: unknown): value is Quantity<Dimension> => isMarked(value, 'quantity');
