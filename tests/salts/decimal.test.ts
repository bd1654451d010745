import { Decimal } from 'decimal.js';
import { expect, test } from 'vitest';
import { analyseLabel, compositionOfFormula, labelAnalysis, molarMass, readOnScales, roundToDivision, salts, weighSheetInterval } from '../../src/salts/index.js';
import { atomicWeights, type Element } from '../../src/solution/index.js';

test('forms of nitrogen add up as they are printed, where doubles go wrong in the last digit', () => {
  expect(4.1 + 8.2).not.toBe(12.3);
  expect((4.1 + 8.2) / 100).not.toBe(0.123);
  expect(14.4 / 100 + 1.1 / 100).not.toBe(0.155);
  expect(analyseLabel({ 'N-NO3': 14.4 / 100, 'N-NH4': 1.1 / 100 })).toMatchObject({ forms: { N: 0.155 } });
  expect(analyseLabel({ 'N-NO3': 4.1 / 100, 'N-NH4': 8.2 / 100 })).toMatchObject({ forms: { N: 0.123 } });
});

test('a label prints the total that its printed figures make', () => {
  expect(`${4.1 + 8.2} %`).toBe('12.299999999999999 %');
  expect(labelAnalysis({ label: { 'N-NO3': '4.1 %', 'N-NH4': '8.2 %' } }).nutrientShares.N!.toJSON()).toBe('12.3 %');
  expect(`${5.6 + 5.8 + 8.4} %`).toBe('19.799999999999997 %');
  expect(labelAnalysis({ label: { 'N-NO3': '5.6 %', 'N-NH4': '5.8 %', 'N-urea': '8.4 %' } }).nutrientShares.N!.toJSON()).toBe('19.8 %');
});

test('a molar mass is printed as the sum of the printed atomic weights, where doubles go wrong in the last digit', () => {
  expect(39.0983 + 35.45).toBe(74.54830000000001);
  expect(molarMass({ formula: 'KCl' }).molarMass.toJSON()).toBe('74.5483 g/mol');
  for (const { formula } of Object.values(salts)) {
    const parts = Object.entries(compositionOfFormula(formula)).map(([element, atoms]) => new Decimal(atomicWeights[element as Element]).times(atoms));
    expect(molarMass({ formula }).molarMass.toJSON()).toBe(`${Decimal.sum(...parts).toString()} g/mol`);
  }
});

test('a weigh sheet adds up as it is written, in the unit of its first portion', () => {
  const total = (...masses: readonly ('0.1 g' | '0.2 g' | '0.7 g' | '0.1 oz' | '0.2 oz' | '12.4 g' | '0.0302 kg')[]) =>
    weighSheetInterval({ volume: '10 L', portions: masses.map((mass) => ({ salt: 'potassium-nitrate', purity: 1, mass })) }).totalMass.toJSON();
  expect(0.1 + 0.2).not.toBe(0.3);
  expect(total('0.1 g', '0.2 g')).toBe('0.3 g');
  expect(0.7 + 0.1).not.toBe(0.8);
  expect(total('0.7 g', '0.1 g')).toBe('0.8 g');
  expect(total('0.1 oz', '0.2 oz')).toBe('0.3 oz');
  expect(total('12.4 g', '0.0302 kg')).toBe('42.6 g');
  expect(total()).toBe('0 g');
});

test('a scale reads multiples of its division, where doubles go wrong in the last digit', () => {
  expect(Math.round(0.0003 / 0.0001) * 0.0001).not.toBe(0.0003);
  expect(roundToDivision(0.0003, 0.0001)).toBe(0.0003);
  expect(Math.round(0.00105 / 0.0001)).toBe(10);
  expect(roundToDivision(0.00105, 0.0001)).toBe(0.0011);
});

test('the finest scale that carries the mass is read', () => {
  const scales = [{ division: 0.001, maximumLoad: 5 }, { division: 0.00001, maximumLoad: 0.2 }, { division: 0.0001, maximumLoad: 0.5 }];
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
