/** Inputs of many numbers of one dimension. */
import type { DimensionDefinition } from '../units/dimension.js';
import { columnIn, isColumn, type Column, type ColumnInput } from '../units/column.js';
import { unitOf, type Dimension, type QuantityText, type UnitOf } from '../units/quantity.js';
import { quoted } from '../units/quoted.js';
import { isRead, readQuantity } from '../units/read.js';
import { rangesOf, Refusal, single, type Ranges, type SingleField } from './single-field.js';

/** Longest column that is taken in. */
const mostValues = 10_000_000;

/** Many numbers of one dimension; `null` or NaN stands for a missing reading. The calculation sees the column. */
export function column<D extends Dimension>(definition: DimensionDefinition<D>, ranges: Ranges<QuantityText<D>>): SingleField<ColumnInput<D>, Column<D>> {
  const about = { kind: 'column', dimension: definition, ...rangesOf(definition, ranges, (seen: Column<D>) => seen.si) } as const;
  return single(about, (value) => {
    const read = isColumn(value) && value.dimension === definition.name ? (value as Column<D>) : columnFrom(definition, value);
    if (read instanceof Refusal) return read;
    const [low, high] = about.limits;
    const { si } = read;
    for (let i = 0; i < si.length; i++) {
      if (si[i]! < low || si[i]! > high) return new Refusal({ expected: `every value from ${ranges.limits.join(' to ')}`, received: `${read.at(i)!} in row ${i + 1}` });
    }
    return read;
  });
}

/** A column from what was written, or what is wrong with it. */
function columnFrom<D extends Dimension>(definition: DimensionDefinition<D>, value: unknown): Column<D> | Refusal {
  const expected = `a column of ${definition.name}: { unit, values }, at most ${mostValues} values`;
  const wrong = (received?: string, hint?: string): Refusal => new Refusal({ expected, hint, ...(received !== undefined && { received }) });
  if (isColumn(value)) return wrong(`a column of ${value.dimension}`);
  if (typeof value !== 'object' || value === null || !('unit' in value) || !('values' in value)) return wrong();
  const { unit, values } = value;
  if (typeof unit !== 'string') return wrong(`unit ${quoted(unit)}`);
  const one = readQuantity(definition, `1 ${unit}`);
  if (!isRead(one)) return wrong(`unit ${quoted(unit)}`, one.hint);
  if (!(values instanceof Float64Array) && !Array.isArray(values)) return wrong(`values ${quoted(values)}`, 'a list of numbers');
  if (values.length > mostValues) return wrong(`${values.length} values`);
  const stray = values instanceof Float64Array ? -1 : values.findIndex((x) => x !== null && typeof x !== 'number');
  if (stray >= 0) return wrong(`${quoted((values as unknown[])[stray])} in row ${stray + 1}`, 'numbers without unit, null where a reading is missing');
  return columnIn(definition, values as ArrayLike<number | null>, unitOf(definition, unit as UnitOf<D>));
}
