/** JSON Schema (draft 2020-12) of what calculations take in. An entry of its own, so that importing a calculation does not bring it along. */
import type { Calculation } from './calculation/calculation.js';
import type { About, Fields } from './calculation/field-types.js';
import type { Outputs } from './calculation/output.js';
import { glossary, type Term } from './glossary.js';
import type { DimensionDefinition } from './units/dimension.js';
import { numberForm } from './units/read.js';

/** A JSON Schema. */
export type JsonSchema = { readonly [key: string]: unknown };

const escape = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');

/** Every way to write a unit of a dimension. */
const spellings = ({ spelled, units }: DimensionDefinition): readonly string[] => [...new Set([...Object.keys(units), ...spelled().keys()])];

/** The texts that are a quantity of a dimension: number, space, unit; or 1:n for a dilution. */
function quantityText(definition: DimensionDefinition): JsonSchema {
  const numberPattern = numberForm.source.slice(1, -1);
  const dilution = definition.rewrite ? '|1:\\d+(?:\\.\\d+)?' : '';
  return { type: 'string', pattern: `^(?:${numberPattern} (?:${spellings(definition).map(escape).join('|').replaceAll('µ', '[µμ]')})${dilution})$` };
}

const object = (properties: JsonSchema, required: readonly string[] = []): JsonSchema => ({
  type: 'object', properties, additionalProperties: false, ...(required.length > 0 && { required }),
});

function fieldsSchema(fields: Fields): JsonSchema {
  const entries = Object.entries(fields);
  return object(
    Object.fromEntries(entries.map(([name, { about }]) => [name, { ...schemaOf(about), ...described(name, about) }])),
    entries.filter(([, { about }]) => !about.optional).map(([name]) => name),
  );
}

/** The ways to state a quantity, one for each dimension that it may have. */
const waysOf = (about: About): readonly About[] => [about, ...(about.alternatives ?? [])];

function schemaOf(about: About): JsonSchema {
  const [low, high] = about.limits ?? [];
  switch (about.kind) {
    case 'quantity': return about.alternatives ? { anyOf: waysOf(about).map(({ dimension }) => quantityText(dimension!)) } : quantityText(about.dimension!);
    case 'share': return { anyOf: [{ type: 'number', minimum: low, maximum: high }, quantityText(about.dimension!)] };
    case 'number': return { type: 'number', minimum: low, maximum: high };
    case 'count': return { type: 'integer', minimum: low, maximum: high };
    case 'choice': return { enum: about.choices };
    case 'flag': return { type: 'boolean' };
    case 'text': return { type: 'string', minLength: low, maxLength: high };
    case 'column': return object({ unit: { enum: spellings(about.dimension!) }, values: { type: 'array', items: { type: ['number', 'null'] } } }, ['unit', 'values']);
    case 'list': return { type: 'array', items: schemaOf(about.item!.about), minItems: low, maxItems: high };
    case 'record': return object(Object.fromEntries(about.choices!.map((name) => [name, schemaOf(about.item!.about)])));
    case 'group': return fieldsSchema(about.fields!);
  }
}

/** Meaning and limits in words, and the default. */
function described(name: string, about: About): JsonSchema {
  const meaning = Object.hasOwn(glossary, name) ? (glossary as Readonly<Record<string, Term>>)[name]!.meaning : undefined;
  const limits = about.kind === 'quantity' ? waysOf(about).map(({ written }) => `from ${String(written!.limits![0])} to ${String(written!.limits![1])}`).join(' or ') : undefined;
  const description = [meaning, limits].filter((part) => part !== undefined).join(', ');
  return { ...(description !== '' && { description }), ...(about.default !== undefined && { default: about.default }) };
}

/**
 * The JSON Schema (draft 2020-12) of a calculation's input in its JSON form: quantities as texts, shares as numbers or texts.
 * What a pattern cannot tell, such as that 400 °C is outside the limits, stands in the descriptions.
 * @example
 * inputSchema(vapourPressureDeficit).required // => ["airTemperature","relativeHumidity"]
 */
export const inputSchema = <F extends Fields, O extends Outputs>(calculation: Calculation<F, O>): JsonSchema => ({
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  title: calculation.title,
  ...fieldsSchema(calculation.inputs),
});
