import { describe, expect, test } from 'vitest';
import { analyseLabel, contentOfProduct, labelAnalysis } from '../../src/salts/index.js';

describe('a label', () => {
  test('of nitrogen forms without a total makes one', () => {
    expect(analyseLabel({ 'N-NO3': 0.041, 'N-NH4': 0.082 })).toEqual({ ok: true, forms: { 'N-NO3': 0.041, 'N-NH4': 0.082, N: 0.123 } });
  });

  test('may round the forms of nitrogen a little past the total', () => {
    expect(analyseLabel({ N: 0.2, 'N-NO3': 0.06, 'N-NH4': 0.039, 'N-urea': 0.102 })).toMatchObject({ ok: true, forms: { N: 0.201 } });
  });

  test('leaves the rest of the nitrogen without a form', () => {
    const { forms, ions } = contentOfProduct({ label: { N: 0.2, 'N-NO3': 0.06 } });
    expect(forms).toEqual({ N: 0.2, 'N-NO3': 0.06 });
    expect(Object.keys(ions)).toEqual(['NO3-']);
  });

  test('of a chloride may state oxide and chlorine of more than the whole', () => {
    expect(analyseLabel({ K2O: 0.62, Cl: 0.47 })).toMatchObject({ ok: true });
  });

  test.each([
    [{ K2O: 0.8, Cl: 0.47 }, undefined, undefined, 'come to 113.4 %'],
    [{ N: 0.5, P: 0.5, K: 0.001 }, undefined, undefined, 'come to 100.1 %'],
    [{ N: 0.7 }, 500, undefined, 'come to 140 %'],
    [{ P2O5: 0.52, P: 0.227 }, undefined, 'P', 'P2O5 and P state the same nutrient'],
    [{ N: 0.1, 'N-NO3': 0.144 }, undefined, 'N', 'more than the total'],
  ])('%j with density %s is refused', (label, density, item, message) => {
    const analysis = analyseLabel(label, density);
    expect(analysis).toMatchObject({ ok: false, problems: [{ message: expect.stringContaining(message) }] });
    if (!analysis.ok) expect(analysis.problems[0]!.item).toBe(item);
  });

  test('that cannot be right is no product', () => {
    expect(() => contentOfProduct({ label: { K: 1.1 } })).toThrow(RangeError);
  });
});

describe('the analysis of a label', () => {
  test('keeps the decimals that are printed', () => {
    const { nutrientShares } = labelAnalysis({ label: { 'N-NO3': '4.1 %', 'N-NH4': '8.2 %', Mg: '2.8 %' } });
    expect(JSON.stringify(nutrientShares)).toBe('{"N-NO3":"4.1 %","N-NH4":"8.2 %","Mg":"2.8 %","N":"12.3 %"}');
  });

  test('finds everything that is wrong', () => {
    const attempt = labelAnalysis.try({ label: { P: '20 %', P2O5: '40 %', N: '2 %', 'N-NO3': '3 %', K: '90 %' } });
    expect(attempt).toMatchObject({ ok: false, error: { problems: [{ path: 'label.P2O5', received: '40 %' }, { path: 'label.N', received: '2 %' }, { path: 'label' }] } });
  });

  test('takes a share of the product volume only with the density', () => {
    expect(labelAnalysis.try({ label: { N: '70 %' }, productDensity: '0.6 kg/L' })).toMatchObject({ ok: false, error: { problems: [{ path: 'label' }] } });
    expect(labelAnalysis({ label: { N: '8 %' }, productDensity: '1.25 kg/L' }).nutrientShares.N!.toJSON()).toBe('6.4 %');
  });
});
