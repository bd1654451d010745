import { describe, expect, test } from 'vitest';
import { isInputError } from '../../src/calculation/index.js';
import { blend } from '../../src/solution/index.js';

const water = { volume: '40 L', ions: { 'Ca2+': '1 mmol/L', 'HCO3-': '2 mmol/L' } } as const;
const codes = (input: Parameters<typeof blend>[0]) => blend(input).notes.map(({ code, severity }) => [code, severity]);
const problems = (parts: readonly object[]) => {
  const attempt = blend.try({ parts });
  if (attempt.ok || !isInputError(attempt.error)) throw new Error('was taken');
  return attempt.error.problems.map(({ path }) => path);
};

describe('blend', () => {
  test.each([
    [[], ['parts']],
    [[water], ['parts']],
    [[water, { volume: '40 L' }], ['parts[1]']],
    [[water, { ...water, nutrients: { Ca: '40 mg/L' } }], ['parts[1].nutrients']],
    [[water, { ...water, volume: '0 L' }], ['parts[1].volume']],
    [[{ ...water, waterTemperature: '12 °C' }, water], ['parts[1].waterTemperature']],
    [[water, { ...water, ions: { 'Ca++': '1 mmol/L' } }], ['parts[1].ions.Ca++']],
  ])('refuses %j', (parts, paths) => {
    expect(problems(parts)).toEqual(paths);
  });

  test('tells no temperature where none is known', () => {
    expect(blend({ parts: [water, water] })).not.toHaveProperty('waterTemperature');
  });

  test('warns of acid that no alkalinity is left for, and counts none', () => {
    const acid = { volume: '10 L', ions: { 'H+': '20 mmol/L', 'NO3-': '20 mmol/L' } } as const;
    expect(codes({ parts: [water, acid] })).toEqual([['acid-left', 'danger']]);
    const { alkalinity, nutrients } = blend({ parts: [water, acid] });
    expect([alkalinity.si, nutrients.HCO3!.si]).toEqual([0, 0]);
    expect(codes({ parts: [{ ...water, volume: '400 L' }, acid] })).toEqual([]);
  });

  test('says where the charges of the blend are apart', () => {
    expect(codes({ parts: [water, { volume: '40 L', nutrients: { K: '200 mg/L' } }] })).toEqual([['charge-imbalance', 'caution']]);
  });
});
