/** Inputs of many numbers of one dimension. */
import type { DimensionDefinition } from '../units/dimension.js';
import { columnIn, isColumn, type Column, type ColumnInput } from '../units/column.js';
import { unitOf, type Dimension, type QuantityText } from '../units/quantity.js';
import { rangesOf, refuse, single, type Ranges, type SingleField } from './single-field.js';

/** Longest column that is taken in. */
const mostValues = 10_000_000;

/** Many numbers of one dimension; `null` or NaN stands for a missing reading. The calculation sees the column. */
export function column<D extends Dimension>(definition: DimensionDefinition<D>, ranges: Ranges<QuantityText<D>>): SingleField<ColumnInput<D>, Column<D>> {
  const about = { kind: 'column', dimension: definition, ...rangesOf(definition, ranges, (seen: Column<D>) => seen.si) } as const;
  return single(about, (value) => {
    const read = isColumn(value) && value.dimension === definition.name ? (value as Column<D>) : columnFrom(definition, value);
    if (!read) return refuse(`a column of ${definition.name}: { unit, values }, at most ${mostValues} values`);
    const [low, high] = about.limits;
    const { si } = read;
    for (let i = 0; i < si.length; i++) {
      if (si[i]! < low || si[i]! > high) return refuse(`every value from ${ranges.limits.join(' to ')}`, `value ${i} is ${read.at(i)!}`);
    }
    return read;
  });
}

function columnFrom<D extends Dimension>(definition: DimensionDefinition<D>, value: unknown): Column<D> | undefined {
  if (typeof value !== 'object' || value === null || !('unit' in value) || !('values' in value)) return undefined;
  const { unit, values } = value;
  const isNumbers = values instanceof Float64Array || (Array.isArray(values) && values.every((x) => x === null || typeof x === 'number'));
  if (typeof unit !== 'string' || !isNumbers || values.length > mostValues) return undefined;
  try {
    return columnIn(definition, values as ArrayLike<number | null>, unitOf(definition, unit));
  } catch {
    return undefined;
  }
}
