import { describe, expect, test } from 'vitest';
import { isInputError } from '../../src/calculation/index.js';
import { meterCheck } from '../../src/conductivity/index.js';

type Input = Parameters<typeof meterCheck>[0];
const codes = (input: Input) => meterCheck(input).notes.map(({ code }) => code);
const problems = (input: object) => {
  const attempt = meterCheck.try(input);
  if (attempt.ok || !isInputError(attempt.error)) throw new Error('was taken');
  return attempt.error.problems.map(({ path }) => path);
};

describe('meterCheck', () => {
  const bottle = { standardConductivity: '1413 µS/cm' } as const;

  test.each([
    [{ reading: '1.4 mS/cm' }, ['']],
    [{ ...bottle, standard: '0.01 mol/L', reading: '1.4 mS/cm' }, ['standardConductivity']],
    [{ standard: '0.03 mol/L', reading: '1.4 mS/cm' }, ['standard']],
    [{ ...bottle, reading: '0 mS/cm' }, ['reading']],
    [{ ...bottle, reading: '1.4 mS/cm', cellConstant: 0 }, ['cellConstant']],
    [{ ...bottle, reading: '1.4 mS/cm', waterTemperature: '70 °C' }, ['waterTemperature']],
  ])('refuses %j', (input, paths) => {
    expect(problems(input)).toEqual(paths);
  });

  test.each([
    ['1.39 mS/cm', 'fine', ['meter-fine']],
    ['1.32 mS/cm', 'set', ['meter-to-set']],
    ['1.52 mS/cm', 'set', ['meter-to-set']],
    ['0.9 mS/cm', 'look into', ['meter-far-off']],
    ['2.9 mS/cm', 'look into', ['meter-far-off']],
  ] as const)('a reading of %s is %s', (reading, verdict, notes) => {
    expect(meterCheck({ ...bottle, reading }).verdict).toBe(verdict);
    expect(codes({ ...bottle, reading })).toEqual(notes);
  });

  test('knows a meter that compensates from one that does not', () => {
    const cold = { ...bottle, waterTemperature: '12 °C' } as const;
    const plain = meterCheck({ ...cold, temperatureCompensation: 'none', reading: '1 mS/cm' }).expectedReading;
    expect(codes({ ...cold, reading: plain })).toEqual(['other-compensation']);
    expect(codes({ ...cold, reading: '1.413 mS/cm', temperatureCompensation: 'none' })).toContain('other-compensation');
    expect(codes({ ...cold, reading: plain, temperatureCompensation: 'none' })).toEqual(['meter-fine']);
  });

  test('says where a standard lies outside the tables', () => {
    expect(codes({ standardConductivity: '0.06 mS/cm', reading: '0.06 mS/cm' })).toContain('outside-range');
    expect(codes({ standardConductivity: '84 µS/cm', reading: '0.084 mS/cm' })).toEqual(['meter-fine']);
  });

  test('gives a cell constant only where there is one', () => {
    expect(meterCheck({ ...bottle, reading: '1.4 mS/cm' })).not.toHaveProperty('correctedCellConstant');
  });
});
