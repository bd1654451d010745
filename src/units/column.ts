import { convert, type Conversion } from './exact.js';
import { isMarked, marked } from './marked.js';
import { conversionTo, type DimensionDefinition, type Unit } from './dimension.js';
import { quantityFromSI, quantityIn, unitOf, type Dimension, type Quantity, type UnitOf } from './quantity.js';

/** Many numbers of one dimension: a logger's readings, the pressures along a lateral. NaN stands for a missing reading. Immutable by contract. */
export interface Column<D extends Dimension> extends Iterable<Quantity<D>> {
  readonly dimension: D;
  readonly length: number;
  /** The numbers in SI units. Not a copy: do not write to it. */
  readonly si: Float64Array;
  /** The unit that it is shown in. */
  readonly unit: string;
  /** The numbers in a unit, as a new array. @throws RangeError for a unit of another dimension. */
  in(unit: UnitOf<D>): Float64Array;
  /** The same column, shown in another unit. */
  as(unit: UnitOf<D>): Column<D>;
  /** One number of it as a quantity; negative counts from the end. */
  at(index: number): Quantity<D> | undefined;
  toString(): string;
  toJSON(): { readonly unit: string; readonly values: readonly (number | null)[] };
}

/** What is accepted where a column is asked for. `null` or NaN stands for a missing reading. */
export type ColumnInput<D extends Dimension> = Column<D> | { readonly unit: UnitOf<D>; readonly values: ArrayLike<number | null> };

const ColumnValue = /* @__PURE__ */ marked('column', class {
  #si: Float64Array | undefined;

  constructor(
    readonly definition: DimensionDefinition,
    readonly shown: Unit,
    /** The numbers as they were written in the unit shown, where they came so: they must not change by going through SI. */
    readonly written: Float64Array | undefined,
    si?: Float64Array,
  ) {
    this.#si = si;
  }

  get dimension(): string {
    return this.definition.name;
  }

  get unit(): string {
    return this.shown.symbol;
  }

  get length(): number {
    return (this.written ?? this.si).length;
  }

  get si(): Float64Array {
    return (this.#si ??= convertAll(this.written!, this.shown.toSI));
  }

  in(unit: string): Float64Array {
    const target = unitOf(this.definition, unit);
    if (!this.written) return convertAll(this.si, target.fromSI);
    return target === this.shown ? this.written.slice() : convertAll(this.written, conversionTo(this.shown, target));
  }

  as(unit: string): object {
    const target = unitOf(this.definition, unit);
    return new ColumnValue(this.definition, target, this.written && this.in(unit), this.#si);
  }

  at(index: number): Quantity<Dimension> | undefined {
    const definition = this.definition as DimensionDefinition<Dimension>;
    const value = (this.written ?? this.si).at(index);
    if (value === undefined) return undefined;
    return this.written ? quantityIn(definition, value, this.shown) : quantityFromSI(definition, value, this.shown);
  }

  *[Symbol.iterator](): Iterator<Quantity<Dimension>> {
    for (let i = 0; i < this.length; i++) yield this.at(i)!;
  }

  toString(): string {
    return `${this.length} × ${this.dimension} in ${this.unit}`;
  }

  toJSON(): { unit: string; values: (number | null)[] } {
    return { unit: this.unit, values: Array.from(this.in(this.unit), (x) => (Number.isNaN(x) ? null : x)) };
  }
});

// Plain loops below: columns are long, and a function called for each number costs more than what it does.

function convertAll(values: Float64Array, conversion: Conversion): Float64Array {
  const converted = new Float64Array(values.length);
  for (let i = 0; i < values.length; i++) converted[i] = convert(values[i]!, conversion);
  return converted;
}

/** A column from its SI numbers, shown in one of the units of its dimension. */
export function columnFromSI<Name extends Dimension>(definition: DimensionDefinition<Name>, si: Float64Array, shown: Unit): Column<Name> {
  return new ColumnValue(definition, shown, undefined, si) as unknown as Column<Name>;
}

/** A column from numbers in a unit. */
export function columnIn<Name extends Dimension>(definition: DimensionDefinition<Name>, values: ArrayLike<number | null>, unit: Unit): Column<Name> {
  const numbers = new Float64Array(values.length);
  for (let i = 0; i < values.length; i++) numbers[i] = values[i] ?? NaN;
  return new ColumnValue(definition, unit, numbers) as unknown as Column<Name>;
}

/** Whether a value is a column, of this or another copy of the library. */
export const isColumn = (value: unknown): value is Column<Dimension> => isMarked(value, 'column');
