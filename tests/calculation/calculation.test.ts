/** The contract, shown on two small calculations made for the purpose. */
import { describe, expect, test } from 'vitest';
import { calculation } from '../../src/calculation/calculation.js';
import { acid } from '../../src/calculation/caution.js';
import * as field from '../../src/calculation/field.js';
import * as output from '../../src/calculation/output.js';
import type { InputError} from '../../src/calculation/problem.js';
import { isInputError } from '../../src/calculation/problem.js';
import { ConvergenceError } from '../../src/numerics/convergence-error.js';
import { length, pressure, temperature, volume } from '../../src/units/dimensions.js';
import { quantity, type Quantity } from '../../src/units/index.js';

const heated = calculation({
  id: 'heated', title: 'A sum', equation: 'T + 1', sources: ['fao56'],
  inputs: () => ({
    airTemperature: field.quantity(temperature, { limits: ['-40 °C', '60 °C'], valid: ['0 °C', '40 °C'] }),
    relativeHumidity: field.withDefault(field.share(), 0.5),
    surface: field.optional(field.choice(['water', 'ice'])),
  }),
  outputs: () => ({ airTemperature: output.quantity(temperature, '°C'), relativeHumidity: output.number(), surface: output.optional(output.text()) }),
  example: { airTemperature: '24 °C' },
  solve: ({ airTemperature, relativeHumidity, surface }) => ({ airTemperature: airTemperature + 1, relativeHumidity, surface }),
});

const zones = calculation({
  id: 'zones', title: 'Zones', equation: 'none', sources: ['fao56'], cautions: [acid],
  inputs: () => ({
    zones: field.list(
      field.group(
        { low: field.quantity(pressure, { limits: ['0 bar', '10 bar'] }), high: field.quantity(pressure, { limits: ['0 bar', '10 bar'] }), count: field.withDefault(field.count({ limits: [1, 9] }), 1) },
        ({ low, high }, problem) => { if (low >= high) problem(['low'], 'a pressure below the high one', 'one above it'); },
      ),
      { limits: [1, 3] },
    ),
    amounts: field.optional(field.record(['a', 'b'], field.writtenQuantity(volume, { limits: ['0 L', '1 m³'] }))),
    spacing: field.optional(field.column(length, { limits: ['0 m', '5 m'] })),
  }),
  outputs: () => ({ names: output.record(output.text()), spacing: output.optional(output.column(length, 'm')), list: output.list(output.group({ high: output.quantity(pressure, 'bar') })) }),
  example: { zones: [{ low: '1 bar', high: '2 bar' }] },
  solve: ({ zones: entries, amounts = {}, spacing }, { note, refuse }) => {
    if (entries.length === 3) refuse('zones', 'two zones at most', 'three', 'close one');
    if (entries.length === 2) throw new ConvergenceError('never closes', 1, 2);
    note('info', 'seen', undefined, 'Zones were seen.');
    return { names: Object.fromEntries(Object.entries(amounts).map(([name, amount]) => [name, String(amount)])), spacing: spacing?.si, list: entries };
  },
});

const problemsOf = (run: () => unknown): InputError['problems'] => {
  try {
    run();
  } catch (error) {
    if (isInputError(error)) return error.problems;
    throw error;
  }
  throw new Error('did not throw');
};

describe('a call', () => {
  test('takes texts, quantities and defaults, and gives quantities', () => {
    const result = heated({ airTemperature: '24 °C' });
    const typed: Quantity<'temperature'> = result.airTemperature;
    expect(typed.in('°C')).toBeCloseTo(25, 12);
    expect(result.relativeHumidity).toBe(0.5);
    expect('surface' in result).toBe(false);
    expect(result.notes).toEqual([]);
    expect(heated({ airTemperature: quantity('75.2 °F', 'temperature'), relativeHumidity: '65 %' }).relativeHumidity).toBe(0.65);
  });

  test('notes a value outside the range of validity', () => {
    expect(heated({ airTemperature: '50 °C' }).notes).toEqual([expect.objectContaining({ code: 'outside-range', severity: 'caution', field: 'airTemperature' })]);
  });

  test('carries the cautions of its definition after its own notes', () => {
    const { notes } = zones({ zones: [{ low: '1 bar', high: '2 bar' }], amounts: { a: '1.50 L' }, spacing: { unit: 'cm', values: [30, null] } });
    expect(notes.map(({ code }) => code)).toEqual(['seen', 'acid']);
  });

  test('has notes of its own: changing them changes no other result', () => {
    const input = { zones: [{ low: '1 bar', high: '2 bar' }] } as const;
    (zones(input).notes.at(-1) as { text: string }).text = 'changed';
    expect(zones(input).notes.at(-1)!.text).toContain('acid');
  });

  test('wraps lists, records and columns', () => {
    const result = zones({ zones: [{ low: '1 bar', high: '2 bar' }], amounts: { a: '1.5 L' }, spacing: { unit: 'cm', values: [30, null] } });
    expect(result.names['a']).toBe('1.5 L');
    expect([...result.spacing!.in('cm')]).toEqual([30, NaN]);
    expect(result.list[0]!.high.in('kPa')).toBe(200);
  });
});

describe('bad input', () => {
  test('is told whole, with paths and hints', () => {
    const problems = problemsOf(() => heated({ airTemperature: 24, relativeHumidity: 65, surface: 'Ice', moon: 1 } as never));
    expect(problems.map(({ path }) => path)).toEqual(['airTemperature', 'relativeHumidity', 'surface', 'moon']);
    expect(problems.map(({ hint }) => hint)).toEqual(["the unit is missing, as in '24 °C'", "did you mean '65 %'?", "did you mean 'ice'?", expect.stringContaining('relativeHumidity')]);
  });

  test('a number that fits another unit gets a hint', () => {
    expect(problemsOf(() => heated({ airTemperature: '297 °C' }))[0]!.hint).toBe("did you mean '297 K'?");
  });

  test('is located within lists and groups', () => {
    const problems = problemsOf(() => zones({ zones: [{ low: '3 bar', high: '2 bar' }, { low: '-1 bar', high: '2 bar', count: 1.5 }], amounts: { c: '1 L' } } as never));
    expect(problems.map(({ path }) => path)).toEqual(['zones[0].low', 'zones[1].low', 'zones[1].count', 'amounts.c']);
  });

  test.each([[[], '1 to 3'], [Array(4).fill({ low: '1 bar', high: '2 bar' }), '1 to 3'], [5, 'a list']])('lists have lengths', (value, words) => {
    expect(problemsOf(() => zones({ zones: value as never }))[0]!.expected).toContain(words);
  });

  test('found while solving looks the same', () => {
    const zone = { low: '1 bar', high: '2 bar' } as const;
    expect(problemsOf(() => zones({ zones: [zone, zone, zone] }))).toEqual([{ path: 'zones', keys: ['zones'], expected: 'two zones at most', received: 'three', hint: 'close one' }]);
  });

  test('try never throws for it, nor for an iteration that did not close', () => {
    const zone = { low: '1 bar', high: '2 bar' } as const;
    expect(zones.try({ zones: [zone, zone] })).toEqual({ ok: false, error: expect.any(ConvergenceError) });
    const attempt = heated.try('nonsense');
    expect(attempt.ok).toBe(false);
    expect(!attempt.ok && attempt.error.message).toContain('heated: problems with the input: 1');
  });

  test.each([{ unit: 'cm', values: [900] }, { unit: 'cm', values: [Infinity] }, { unit: 'kPa', values: [1] }, { values: [1] }, { unit: 'cm', values: ['1'] }, { unit: 'cm', values: { length: 1e9 } }, [1, 2]])('a column like %j is refused', (spacing) => {
    expect(zones.try({ zones: [{ low: '1 bar', high: '2 bar' }], spacing }).ok).toBe(false);
  });
});

test('the standard-schema interface gives issues with paths', () => {
  const validated = heated['~standard'].validate({ airTemperature: 'warm' });
  expect('issues' in validated && validated.issues[0]!.path).toEqual(['airTemperature']);
  expect(heated['~standard'].vendor).toBe('guttation');
});
