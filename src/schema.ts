/** JSON Schema (draft 2020-12) of what calculations take in. An entry of its own, so that importing a calculation does not bring the exporter along. */
import * as z from 'zod/mini';
import type { Calculation } from './calculation/calculation.js';
import type { About, Fields } from './calculation/field-types.js';
import type { Outputs } from './calculation/output.js';
import { glossary, type Term } from './glossary.js';
import type { DimensionDefinition } from './units/dimension.js';
import { toAscii } from './units/dimension.js';

/** A JSON Schema document. */
export type JsonSchema = { readonly [key: string]: unknown };

const escape = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
const numberPattern = '[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?';

/** The texts that are a quantity of a dimension: number, space, unit. */
function quantityText(definition: DimensionDefinition): JsonSchema {
  const units = [...Object.keys(definition.units), ...Object.keys(definition.aliases)];
  const spellings = [...new Set(units.flatMap((unit) => [unit, toAscii(unit)]))];
  const dilution = definition.readForm ? '|1:\\d+(?:\\.\\d+)?' : '';
  return { type: 'string', pattern: `^(?:${numberPattern} (?:${spellings.map(escape).join('|')})${dilution})$` };
}

/** The schema of one kind of value; lists and groups come from the validator itself. */
function schemaOf(about: About): JsonSchema | undefined {
  const [low, high] = about.limits ?? [];
  switch (about.kind) {
    case 'quantity': return quantityText(about.dimension!);
    case 'share': return { anyOf: [{ type: 'number', minimum: low, maximum: high }, quantityText(about.dimension!)] };
    case 'number': return { type: 'number', minimum: low, maximum: high };
    case 'count': return { type: 'integer', minimum: low, maximum: high };
    case 'choice': return { enum: about.choices };
    case 'flag': return { type: 'boolean' };
    case 'text': return { type: 'string', minLength: low, maxLength: high };
    case 'column': return {
      type: 'object', required: ['unit', 'values'],
      properties: { unit: { enum: Object.keys(about.dimension!.units) }, values: { type: 'array', items: { type: ['number', 'null'] } } },
    };
    default: return undefined;
  }
}
