import { describe, expect, test } from 'vitest';
import { chargeBalance, convertConcentration, nutrientForms, oxides, oxideToElement, type NutrientFormKey, type Oxide } from '../../src/solution/index.js';

describe('convertConcentration', () => {
  test.each(Object.keys(nutrientForms) as NutrientFormKey[])('%s comes back from every way of stating it', (nutrientForm) => {
    const first = convertConcentration({ nutrientForm, massConcentration: '80 mg/L' });
    const others = [
      convertConcentration({ nutrientForm, amountConcentration: first.amountConcentration }),
      ...(first.chargeConcentration ? [convertConcentration({ nutrientForm, chargeConcentration: first.chargeConcentration })] : []),
    ];
    for (const other of others) expect(other.massConcentration.in('mg/L')).toBeCloseTo(80, 11);
  });

  test('the charge of an anion may be written without its sign', () => {
    expect(convertConcentration({ nutrientForm: 'S', chargeConcentration: '3 meq/L' }).chargeConcentration!.in('meq/L')).toBe(-3);
    expect(() => convertConcentration({ nutrientForm: 'Ca', chargeConcentration: '-3 meq/L' })).toThrow(/a cation/);
  });

  test('a neutral molecule has no charge', () => {
    expect(convertConcentration({ nutrientForm: 'B', massConcentration: '0.3 mg/L' })).not.toHaveProperty('chargeConcentration');
    expect(() => convertConcentration({ nutrientForm: 'N-urea', chargeConcentration: '1 meq/L' })).toThrow(/urea carries no charge/);
  });

  test('one concentration, not none and not two', () => {
    expect(() => convertConcentration({ nutrientForm: 'K' })).toThrow(/exactly one of massConcentration, amountConcentration, chargeConcentration/);
    expect(() => convertConcentration({ nutrientForm: 'K', massConcentration: '1 mg/L', amountConcentration: '1 mmol/L' })).toThrow(/massConcentration and amountConcentration/);
  });
});

describe('oxideToElement', () => {
  test.each(Object.keys(oxides) as Oxide[])('%s comes back from its element', (oxide) => {
    const { elementShare } = oxideToElement({ oxide, oxideShare: '40 %' });
    expect(oxideToElement({ oxide, elementShare }).oxideShare.in('%')).toBeCloseTo(40, 12);
  });

  test('no more oxide than the pure element stands for', () => {
    expect(oxideToElement({ oxide: 'SO3', elementShare: 1 }).oxideShare.in('%')).toBeGreaterThan(240);
    expect(() => oxideToElement({ oxide: 'P2O5', oxideShare: 2.4 })).toThrow(/pure element/);
  });
});

describe('chargeBalance', () => {
  const codes = (sodium: string) => chargeBalance({ ions: { 'Na+': `${Number(sodium)} mmol/L`, 'Cl-': '10 mmol/L' } }).notes.map(({ code, severity }) => `${code} ${severity}`);

  test('a miss is said by how large it is', () => {
    expect(codes('10.5')).toEqual([]);
    expect(codes('11.5')).toEqual(['charge-imbalance info']);
    expect(codes('14')).toEqual(['charge-imbalance caution']);
    expect(chargeBalance({ ions: { 'Na+': '0.1 mmol/L' } }).notes).toEqual([]);
  });

  test('neutral molecules weigh nothing', () => {
    const { cations, anions, ionicStrength } = chargeBalance({ ions: { 'H3BO3': '1 mmol/L', 'CO(NH2)2': '5 mmol/L' } });
    expect([cations.si, anions.si, ionicStrength.si]).toEqual([0, 0, 0]);
  });
});
