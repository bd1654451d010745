import { expect, test } from 'vitest';
import { stockTank } from '../../src/salts/index.js';

const stock = (massConcentration: `${number} mg/L`, dilution: `1:${number}`) => stockTank({ massConcentration, massFraction: '20 %', dilution, stockVolume: '10 L' });

test('an injector needs a backflow preventer, and a strong stock asks to look up solubility', () => {
  const codes = (massConcentration: `${number} mg/L`) => stock(massConcentration, '1:100').notes.map(({ code }) => code).sort();
  expect(codes('150 mg/L')).toEqual(['backflow']);
  expect(codes('250 mg/L')).toEqual(['backflow', 'solubility']);
});

test('an injector marked by the water that joins the stock is 1:101', () => {
  expect(stock('100 mg/L', '1:101').mass.toJSON()).toBe('505 g');
});

test('a stock that cannot exist is refused', () => {
  expect(stockTank.try({ massConcentration: '5 g/L', massFraction: '20 %', dilution: '1:100', stockVolume: '10 L' })).toMatchObject({ ok: false, error: { problems: [{ path: 'massConcentration' }] } });
});
