import { expect, test } from 'vitest';
import { molarMass } from '../../src/salts/index.js';

test('a formula that cannot be read is a problem with its place', () => {
  expect(molarMass.try({ formula: 'K2(SO4' })).toMatchObject({ ok: false, error: { problems: [{ path: 'formula', received: '"K2(SO4"', hint: 'character 3: this bracket is not closed' }] } });
});

test('water counts as crystal water only behind a salt', () => {
  expect(molarMass({ formula: 'H2O' }).waterOfCrystallisation.in('%')).toBe(0);
  expect(molarMass({ formula: 'KNO3' }).waterOfCrystallisation.in('%')).toBe(0);
});

test('is written as the sum by hand is', () => {
  expect(molarMass({ formula: 'KNO3' }).molarMass.toJSON()).toBe('101.1023 g/mol');
});
