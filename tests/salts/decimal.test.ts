import { Decimal } from 'decimal.js';
import { expect, test } from 'vitest';
import { analyseLabel, readOnScales, roundToDivision } from '../../src/salts/index.js';

test('forms of nitrogen add up as they are printed, where doubles go wrong in the last digit', () => {
  expect(4.1 + 8.2).not.toBe(12.3);
  expect((4.1 + 8.2) / 100).not.toBe(0.123);
  expect(14.4 / 100 + 1.1 / 100).not.toBe(0.155);
  expect(analyseLabel({ 'N-NO3': 14.4 / 100, 'N-NH4': 1.1 / 100 })).toMatchObject({ forms: { N: 0.155 } });
  expect(analyseLabel({ 'N-NO3': 4.1 / 100, 'N-NH4': 8.2 / 100 })).toMatchObject({ forms: { N: 0.123 } });
});

test('a scale reads multiples of its division, where doubles go wrong in the last digit', () => {
  expect(Math.round(0.0003 / 0.0001) * 0.0001).not.toBe(0.0003);
  expect(roundToDivision(0.0003, 0.0001)).toBe(0.0003);
  expect(Math.round(0.00105 / 0.0001)).toBe(10);
  expect(roundToDivision(0.00105, 0.0001)).toBe(0.0011);
});

test('the finest scale that carries the mass is read', () => {
  const scales = [{ division: 0.001, capacity: 5 }, { division: 0.00001, capacity: 0.2 }, { division: 0.0001, capacity: 0.5 }];
  expect(readOnScales(0.1234567, scales)).toBe(0.12346);
  expect(readOnScales(0.3234567, scales)).toBe(0.3235);
  expect(readOnScales(3.2345, scales)).toBe(3.235);
  expect(readOnScales(12.3456, scales)).toBe(12.346);
  expect(readOnScales(12.3456, [])).toBe(12.3456);
});

test('settings of decimal.js elsewhere in a program do not matter, nor are they touched', () => {
  const { precision, rounding } = Decimal;
  Decimal.set({ precision: 3, rounding: Decimal.ROUND_UP });
  try {
    expect(analyseLabel({ N: 0.123456, 'N-NO3': 0.123456 })).toMatchObject({ forms: { N: 0.123456 } });
    expect(Decimal.precision).toBe(3);
  } finally {
    Decimal.set({ precision, rounding });
  }
});
