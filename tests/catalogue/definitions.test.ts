/** What every calculation promises by its definition. */
import { readdirSync, readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import * as everything from '../../src/index.js';
import { catalogue } from '../../src/catalogue.js';
import { glossary, type Term } from '../../src/glossary.js';
import { inputSchema } from '../../src/schema.js';
import { sources } from '../../src/sources.js';
import type { About, Fields } from '../../src/calculation/field-types.js';
import type { Output, Outputs } from '../../src/calculation/output.js';
import { pathText } from '../../src/calculation/problem.js';
import { places, replaced } from '../support/generate.js';

/** Every name with what it stands for, groups and lists entered. */
function* inputNames(fields: Fields): Generator<readonly [string, string]> {
  for (const [name, { about }] of Object.entries(fields)) {
    yield [name, dimensionOf(about)];
    yield* innerNames(about);
  }
}
function* innerNames(about: About): Generator<readonly [string, string]> {
  if (about.fields) yield* inputNames(about.fields);
  if (about.item) yield* innerNames(about.item.about);
}
function* outputNames(outputs: Outputs): Generator<readonly [string, string]> {
  for (const [name, output] of Object.entries(outputs)) {
    yield [name, output.dimension?.name ?? output.kind];
    yield* innerOutputs(output);
  }
}
function* innerOutputs(output: Output<never, unknown>): Generator<readonly [string, string]> {
  if (output.outputs) yield* outputNames(output.outputs);
  if (output.item) yield* innerOutputs(output.item);
}
const dimensionOf = (about: About): string => about.dimension?.name ?? about.kind;
const alike: Readonly<Record<string, string>> = { count: 'number', choice: 'text' };
const kind = (name: string): string => alike[name] ?? name;

const src = new URL('../../src/', import.meta.url);
const code = readdirSync(src, { recursive: true, encoding: 'utf8' }).filter((path) => path.endsWith('.ts')).map((path) => readFileSync(new URL(path, src), 'utf8'));

/** The docstring before the definition of a calculation. */
function docstringOf(id: string): string {
  const [text] = code.flatMap((file) => file.split(`export const ${id} = /* @__PURE__ */ calculation(`).slice(0, -1));
  return text?.slice(text.lastIndexOf('/**')) ?? '';
}

test('every calculation that is written is exported', () => {
  const written = code.flatMap((file) => [...file.matchAll(/^export const (\w+) = \/\* @__PURE__ \*\/ calculation\(/gm)].map(([, id]) => id));
  expect(written.sort()).toEqual(catalogue().map(({ id }) => id).sort());
});

test('the glossary is in alphabetical order and says something of each name', () => {
  const names = Object.keys(glossary);
  expect(names.filter((name, i) => i > 0 && name < names[i - 1]!), 'out of order').toEqual([]);
  for (const [name, { meaning }] of Object.entries(glossary)) expect(meaning.length, name).toBeGreaterThan(5);
});

test('no name of the glossary is unused', () => {
  const used = new Set(catalogue().flatMap((calculation) => [...inputNames(calculation.inputs), ...outputNames(calculation.outputs)].map(([name]) => name)));
  expect(Object.keys(glossary).filter((name) => !used.has(name))).toEqual([]);
});

describe.each(catalogue().map((calculation) => [calculation.id, calculation] as const))('%s', (id, calculation) => {
  test('is exported by its id and says what it rests on', () => {
    expect((everything as Readonly<Record<string, unknown>>)[id], `no export is named '${id}'`).toBe(calculation);
    expect(calculation.title).not.toBe('');
    expect(calculation.equation).not.toBe('');
    for (const key of calculation.sources) expect(sources).toHaveProperty([key]);
  });

  test('has a docstring that names its errors and shows an example', () => {
    expect(docstringOf(id)).toMatch(/InputError/);
    expect(docstringOf(id)).toMatch(/@example/);
  });

  test('uses names of the glossary, each with its one dimension', () => {
    for (const [name, dimension] of [...inputNames(calculation.inputs), ...outputNames(calculation.outputs)]) {
      const term = (glossary as Readonly<Record<string, Term>>)[name];
      expect(term, `${name} (${dimension}) is not in the glossary`).toBeDefined();
      expect(kind(term!.dimension), name).toBe(kind(dimension));
    }
  });

  test('its example runs, and runs again from its JSON', () => {
    const first = calculation(calculation.example);
    const again = calculation.try(JSON.parse(JSON.stringify(calculation.example)));
    expect(again.ok && JSON.stringify(again.value)).toBe(JSON.stringify(first));
    expect(JSON.stringify(first)).not.toContain('null');
  });

  test('answers the standard-schema interface', () => {
    expect(calculation['~standard'].validate(calculation.example)).toEqual({ value: calculation.example });
    expect(calculation['~standard'].validate({ nonsense: 1 })).toHaveProperty('issues');
  });

  test('its JSON Schema accepts the example and refuses what the calculation refuses', () => {
    const validate = new Ajv2020({ allowUnionTypes: true, strict: false }).compile(inputSchema(calculation) as object);
    const example: unknown = JSON.parse(JSON.stringify(calculation.example));
    expect(validate(example), JSON.stringify(validate.errors)).toBe(true);
    expect(validate({ ...(example as object), nonsense: 1 })).toBe(false);
    for (const { path, about } of places(calculation.inputs, example as never)) {
      if (about.kind === 'text' || about.kind === 'record' || about.kind === 'group') continue;
      for (const value of ['1,5 bar', '60psi', null, true]) {
        if (about.kind === 'flag' && value === true) continue;
        expect(validate(replaced(example, path, value)), `${JSON.stringify(value)} in ${pathText(path)}`).toBe(false);
      }
    }
  });
});
