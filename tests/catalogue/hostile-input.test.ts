/** Whatever stands in whichever field, bad input ends in one InputError that names the field. */
import { describe, expect, test } from 'vitest';
import { InputError, pathText } from '../../src/calculation/problem.js';
import type { About } from '../../src/calculation/field-types.js';
import { catalogue } from '../../src/catalogue.js';
import { places, replaced, type AnyCalculation } from '../support/generate.js';

const hostile: readonly (readonly [string, unknown])[] = [
  ['NaN', NaN], ['Infinity', Infinity], ['-Infinity', -Infinity], ['an empty text', ''], ['null', null], ['a list', []], ['an object', {}],
  ['a decimal comma', '1,5 bar'], ['no space', '60psi'], ['a unit of nothing', '5 furlongs'], ['1e309', 1e309], ['a number too large', '1e309 m'], ['NaN with a unit', 'NaN kPa'],
  ['a function', () => 1], ['a symbol', Symbol('x')], ['a big integer', 1n],
  ['a name of every object', '5 constructor'], ['a map', new Map([['Ca', '40 mg/L']])], ['a date', new Date(0)], ['a promise', Promise.resolve({})], ['a long list', Array(200_000).fill({})],
  ['a forged quantity', { si: 300, '~guttation': 'quantity', dimension: 'temperature', unit: 'K' }], ['something that cannot be written', { toJSON: () => undefined }],
];
const acceptable = (about: About, name: string): boolean =>
  (about.kind === 'list' && name === 'a list' && about.limits![0] === 0) ||
  (about.kind === 'record' && name === 'an object') ||
  (about.kind === 'group' && name === 'an object' && Object.values(about.fields!).every(({ about: inner }) => inner.optional)) ||
  (about.kind === 'text' && ['a decimal comma', 'no space', 'a unit of nothing', 'a number too large', 'NaN with a unit', 'a name of every object'].includes(name));

/** A text of a dimension that the field is not. */
const wrongDimension = ({ dimension }: About): string => (dimension?.name === 'time' ? '5 kPa' : '5 min');

const problemsOf = (calculation: AnyCalculation, input: unknown): readonly string[] => {
  const attempt = calculation.try(input);
  if (attempt.ok) throw new Error('was accepted');
  expect(attempt.error).toBeInstanceOf(InputError);
  return (attempt.error as InputError).problems.map(({ path }) => path);
};

describe.each(catalogue().map((calculation) => [calculation.id, calculation] as const))('%s', (_, calculation) => {
  test.each(places(calculation.inputs, calculation.example as never).map(({ path, about }) => [pathText(path), path, about] as const))('%s refuses what it cannot mean', (name, path, about) => {
    const tries = [...hostile.filter(([what]) => !acceptable(about, what)), ...(about.dimension ? [['another dimension', wrongDimension(about)] as const] : [])];
    for (const [what, value] of tries) {
      expect(problemsOf(calculation, replaced(calculation.example, path, value)).some((problem) => problem.startsWith(name)), `${what} in ${name}`).toBe(true);
    }
    if (about.kind === 'quantity' && about.limits![0] >= 0 && about.dimension!.name !== 'temperature') {
      expect(problemsOf(calculation, replaced(calculation.example, path, `-1 ${Object.keys(about.dimension!.units)[0]!}`)), `a negative ${name}`).toContain(name);
    }
  });

  test.each([null, undefined, 5, 'text', [], NaN, new Map(), () => 1])('%s is no input', (value) => {
    const required = Object.values(calculation.inputs).some(({ about }) => !about.optional);
    if (required || typeof value !== 'object' || value === null || Array.isArray(value)) problemsOf(calculation, value);
  });

  test('unknown and prototype names are problems', () => {
    expect(problemsOf(calculation, { ...(calculation.example as object), humidityOfTheMoon: 1 })).toContain('humidityOfTheMoon');
    expect(problemsOf(calculation, JSON.parse(`{"__proto__": {"polluted": true}, ${JSON.stringify(calculation.example).slice(1)}`))).toContain('__proto__');
    expect(problemsOf(calculation, { ...(calculation.example as object), constructor: 1 })).toContain('constructor');
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });

  test('every problem is listed', () => {
    const required = Object.entries(calculation.inputs).filter(([, { about }]) => !about.optional).map(([name]) => name);
    const found = problemsOf(calculation, { ...Object.fromEntries(required.map((name) => [name, NaN])), nonsense: 1 });
    for (const name of [...required, 'nonsense']) expect(found).toContain(name);
  });
});
