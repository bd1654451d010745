import { describe, expect, test } from 'vitest';
import { correctFeed, dissolve, labelAnalysis, solutionConductivity, weighOut } from '../../src/index.js';

const codes = (notes: readonly { readonly code: string }[]): readonly string[] => notes.map(({ code }) => code);

// Common practice, no source: what a careful grower would want to be told.
describe('what a feed has to say', () => {
  test('lye in plenty is a danger, a little of it only a caution', () => {
    const lye = (mass: `${number} g`) => dissolve({ volume: '1 L', portions: [{ salt: 'potassium-hydroxide', purity: '90 %', mass }] }).notes;
    expect(codes(lye('100 g'))).toContain('alkali-left');
    expect(codes(lye('0.05 g'))).not.toContain('alkali-left');
    expect(codes(lye('0.05 g'))).toContain('lye');
  });

  test('a portion that no scale carries', () => {
    const sheet = weighOut({ ...weighOut.example, scales: [{ division: '0.01 g', maximumLoad: '5 g' }] });
    expect(codes(sheet.notes)).toContain('scale-overloaded');
    expect(codes(weighOut(weighOut.example).notes)).not.toContain('scale-overloaded');
  });

  // McCleskey 2011, smoothed measurements at 25 °C: 10 mmol/kg of calcium sulfate reads 1.582 mS/cm.
  test('a solution of little else than calcium sulfate reads low, and says so', () => {
    const gypsum = solutionConductivity({ ions: { 'Ca2+': '9.97 mmol/L', 'SO4 2-': '9.97 mmol/L' } });
    expect(gypsum.conductivity.in('mS/cm')).toBeLessThan(1.582 * 0.97);
    expect(codes(gypsum.notes)).toContain('sulfate-rich');
    expect(codes(solutionConductivity(solutionConductivity.example).notes)).not.toContain('sulfate-rich');
  });
});

test('what dissolve gives goes into the conductivity as it is, by ions or by nutrients', () => {
  const { ions, nutrients } = dissolve(dissolve.example);
  const byNutrients = solutionConductivity({ nutrients }).conductivity.in('mS/cm');
  expect(Math.abs(byNutrients / solutionConductivity({ ions }).conductivity.in('mS/cm') - 1)).toBeLessThan(0.01);
  const attempt = solutionConductivity.try({ nutrients: { N: '100 mg/L', K: '200 mg/L' } });
  expect(!attempt.ok && attempt.error.message).toContain('state nitrogen by its forms');
});

test('alkalinity that is left is told, from a water or from a carbonate', () => {
  const saltpetre = { salt: 'potassium-nitrate', mass: '5 g' } as const;
  expect(codes(dissolve({ volume: '10 L', portions: [saltpetre], water: { Ca: '60 mg/L' }, waterAlkalinity: '3 meq/L' }).notes)).toContain('alkalinity-high');
  expect(codes(dissolve({ volume: '100 L', portions: [{ salt: 'potassium-carbonate', mass: '100 g' }] }).notes)).toContain('alkali-left');
  expect(codes(dissolve({ volume: '10 L', portions: [saltpetre] }).notes)).not.toContain('alkalinity-high');
});

test('nitrogen of no stated form is told, and no reading is promised for it', () => {
  const portion = { name: 'compound', label: { N: '20 %', P2O5: '20 %', K2O: '20 %' }, mass: '100 g' } as const;
  expect(codes(dissolve({ volume: '100 L', portions: [{ label: portion.label, mass: portion.mass }] }).notes)).toContain('nitrogen-form-unknown');
  expect(correctFeed.try({ presentVolume: '100 L', recipe: { volume: '100 L', portions: [portion] }, reading: '0.8 mS/cm' }).ok).toBe(false);
});

test('a muriate whose oxide and chlorine pass the whole is a right label', () => {
  expect(labelAnalysis.try({ label: { K2O: '60 %', Cl: '47 %' } }).ok).toBe(true);
});
