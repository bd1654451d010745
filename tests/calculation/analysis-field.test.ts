/** Inputs of analyses: values in any of several dimensions, names that are told what was meant. */
import { describe, expect, test } from 'vitest';
import * as field from '../../src/calculation/field.js';
import { calculation } from '../../src/calculation/calculation.js';
import { isInputError } from '../../src/calculation/problem.js';
import * as output from '../../src/calculation/output.js';
import { inputSchema } from '../../src/schema.js';
import { amountConcentration, massConcentration } from '../../src/units/dimensions.js';
import { quantity } from '../../src/units/index.js';

const stated = calculation({
  id: 'stated', title: 'What was stated', equation: 'none', sources: ['definition'],
  inputs: () => ({
    target: field.either(
      field.writtenQuantity(massConcentration, { limits: ['0 mg/L', '1 g/L'], valid: ['0 mg/L', '500 mg/L'] }),
      field.writtenQuantity(amountConcentration, { limits: ['0 mmol/L', '20 mmol/L'] }),
    ),
    water: field.optional(field.withNameHints(field.record(['Ca', 'Mg'], field.number({ limits: [0, 1] })), (name) => (name === 'Kalk' ? 'Ca?' : undefined))),
  }),
  outputs: () => ({ text: output.text() }),
  example: { target: '80 mg/L' },
  solve: ({ target }) => ({ text: `${target.dimension} ${target.si} ${target.unit}` }),
});

const problemsOf = (input: unknown) => {
  const attempt = stated.try(input);
  if (attempt.ok || !isInputError(attempt.error)) throw new Error('was taken');
  return attempt.error.problems.map(({ path, expected, hint }) => [path, expected, hint]);
};

describe('a value in any of several dimensions', () => {
  test.each([
    ['80 mg/L', 'massConcentration 0.08 mg/L'], ['2 mmol/L', 'amountConcentration 2 mmol/L'], [quantity('0.5 g/L', 'massConcentration'), 'massConcentration 0.5 g/L'],
    [quantity('3 mM', 'amountConcentration'), 'amountConcentration 3 mmol/L'],
  ] as const)('%s is taken as what it is', (target, text) => {
    expect(stated({ target }).text).toBe(text);
  });

  const units = 'a number, a space and a unit (mg/L, g/L, µg/L, mmol/L, µmol/L, mol/L …)';
  test.each([
    ['80mg/L', units, "did you mean '80 mg/L'?"], ['2,5 mmol/L', units, "did you mean '2.5 mmol/L'?"], [80, units, "the unit is missing, as in '80 mg/L'"],
    ['5 furlongs', units, "'furlongs' is not a unit of massConcentration or amountConcentration"], [quantity('5 min', 'time'), units, 'this quantity is of dimension time'], [null, units, undefined],
    ['30 mmol/L', '0 mmol/L to 20 mmol/L', "did you mean '30 µmol/L'?"], ['2 g/L', '0 mg/L to 1 g/L', "did you mean '2 mg/L' or '2 µg/L'?"], ['-1 mmol/L', '0 mmol/L to 20 mmol/L', undefined],
  ])('%s is refused', (target, expected, hint) => {
    expect(problemsOf({ target })).toEqual([['target', expected, hint]]);
  });

  test.each([['800 mg/L', ['outside-range']], ['400 mg/L', []], ['2 mmol/L', []]] as const)('%s is held against the range of its own dimension', (target, codes) => {
    expect(stated({ target }).notes.map(({ code }) => code)).toEqual(codes);
  });

  test('has the schema of each', () => {
    const { properties } = inputSchema(stated) as { readonly properties: { readonly target: { readonly anyOf: readonly { readonly pattern: string }[]; readonly description: string } } };
    const { anyOf, description } = properties.target;
    expect(anyOf.map(({ pattern }) => ['80 mg/L', '2 mmol/L', '2 meq/L'].map((text) => new RegExp(pattern).test(text)))).toEqual([[true, false, false], [false, true, false]]);
    expect(description).toContain('from 0 mg/L to 1 g/L or from 0 mmol/L to 20 mmol/L');
  });
});

test('an unknown name is told what was perhaps meant, beside all other problems', () => {
  expect(problemsOf({ target: '80 mg/L', water: { Kalk: 1, moon: 1, Ca: 2 } })).toEqual([
    ['water.Ca', 'a number from 0 to 1', undefined], ['water.Kalk', 'a known name', 'Ca?'], ['water.moon', 'a known name', undefined],
  ]);
  expect(problemsOf({ target: '80 mg/L', water: [] })).toEqual([['water', 'an object', undefined]]);
});
