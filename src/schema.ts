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

interface Named {
  readonly name: string | undefined;
  readonly about: About;
}

/** Every field under its validator, those of groups and lists included. */
function byValidator(entries: readonly (readonly [string | undefined, { readonly about: About; readonly schema: unknown }])[]): readonly (readonly [unknown, Named])[] {
  return entries.flatMap(([name, { about, schema }]) => [
    [schema, { name, about }] as const,
    ...byValidator(Object.entries(about.fields ?? {})),
    ...(about.item ? byValidator([[undefined, about.item]]) : []),
  ]);
}

function describe({ name, about }: Named): JsonSchema {
  const meaning = name !== undefined && Object.hasOwn(glossary, name) ? (glossary as Readonly<Record<string, Term>>)[name]!.meaning : undefined;
  const limits = about.kind === 'quantity' && about.written?.limits ? `from ${String(about.written.limits[0])} to ${String(about.written.limits[1])}` : undefined;
  const description = [meaning, limits].filter((part) => part !== undefined).join(', ');
  return { ...(description !== '' && { description }), ...(about.default !== undefined && { default: about.default }) };
}

/**
 * The JSON Schema (draft 2020-12) of a calculation's input in its JSON form: quantities as texts, shares as numbers or texts.
 * What a text alone cannot tell, such as that 400 °C is outside the limits, stands in the descriptions.
 * @example
 * inputSchema(vapourPressureDeficit).required // => ["airTemperature","relativeHumidity"]
 */
export function inputSchema<F extends Fields, O extends Outputs>(calculation: Calculation<F, O>): JsonSchema {
  const fields = new Map(byValidator(Object.entries(calculation.inputs)));
  return z.toJSONSchema((calculation as unknown as { readonly schema: z.ZodMiniType }).schema, {
    io: 'input',
    unrepresentable: 'any',
    override: ({ zodSchema, jsonSchema }) => {
      const named = fields.get(zodSchema);
      if (named) Object.assign(jsonSchema, schemaOf(named.about), describe(named));
    },
  }) as JsonSchema;
}
