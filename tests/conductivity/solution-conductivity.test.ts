import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { InputError } from '../../src/calculation/index.js';
import { conductivityAtReference, dissolvedSolidsMeter, solutionConductivity } from '../../src/conductivity/index.js';
import { ions, type Ion } from '../../src/solution/index.js';

const codes = ({ notes }: { readonly notes: readonly { readonly code: string }[] }) => notes.map(({ code }) => code);
const feed = { 'K+': '6 mmol/L', 'Ca2+': '4 mmol/L', 'Mg2+': '1.5 mmol/L', 'NO3-': '14 mmol/L', 'SO4 2-': '1 mmol/L', 'H2PO4-': '1 mmol/L' } as const;
const hardWater = { 'Ca2+': '2 mmol/L', 'Na+': '1 mmol/L', 'Cl-': '1 mmol/L' } as const;
const mS = (input: Parameters<typeof solutionConductivity>[0]) => solutionConductivity(input).conductivity.in('mS/cm');

describe('solutionConductivity', () => {
  test('whatever is mixed, at any pH and temperature, gives a conductivity above zero or one InputError', () => {
    const amount = fc.double({ min: Math.log(1e-6), max: Math.log(300), noNaN: true }).map((ln) => `${Math.exp(ln)} mmol/L`);
    const mixture = fc.dictionary(fc.constantFrom(...(Object.keys(ions) as Ion[])), amount, { minKeys: 1 });
    const pH = fc.option(fc.double({ min: 2, max: 11, noNaN: true }), { nil: undefined });
    let results = 0;
    fc.assert(fc.property(mixture, pH, fc.double({ min: 0, max: 95, noNaN: true }), (some, acidity, t) => {
      const attempt = solutionConductivity.try({ ions: some, ...(acidity !== undefined && { pH: acidity }), waterTemperature: `${t} °C` });
      if (!attempt.ok) {
        expect(attempt.error).toBeInstanceOf(InputError);
        return;
      }
      results += 1;
      const { conductivity, temperatureFactor, transportNumbers, convergence } = attempt.value;
      expect(conductivity.si).toBeGreaterThan(0);
      expect(temperatureFactor).toBeGreaterThan(0);
      expect(Object.values(transportNumbers).reduce((sum, part) => sum + part!.si, 0)).toBeCloseTo(1, 12);
      expect(Math.min(...Object.values(transportNumbers).map((part) => part!.si))).toBeGreaterThanOrEqual(0);
      expect(convergence.relativeResidual.si).toBeLessThan(1e-6);
    }), { numRuns: 600 });
    expect(results).toBeGreaterThan(200);
  });

  test('the same feed by ions and by nutrients reads the same', () => {
    const byIons = solutionConductivity({ ions: { 'K+': '5 mmol/L', 'NO3-': '4 mmol/L', 'H2PO4-': '1 mmol/L' } });
    const byNutrients = solutionConductivity({ nutrients: { K: '195.4915 mg/L', 'N-NO3': '56.028 mg/L', P: '30.973762 mg/L' } });
    expect(byNutrients.conductivity.si / byIons.conductivity.si).toBeCloseTo(1, 12);
  });

  test('alkalinity and bicarbonate are the same, with and without a pH', () => {
    for (const acidity of [{}, { pH: 7.4 }]) {
      const stated = mS({ ions: hardWater, alkalinity: '4 meq/L', ...acidity });
      expect(stated / mS({ ions: { ...hardWater, 'HCO3-': '4 mmol/L' }, ...acidity })).toBeCloseTo(1, 12);
      expect(stated).toBeGreaterThan(mS({ ions: hardWater, ...acidity }));
    }
    expect(() => solutionConductivity({ ions: { ...hardWater, 'HCO3-': '4 mmol/L' }, alkalinity: '4 meq/L' })).toThrow(/stated once/);
  });

  test('hydrogen phosphate and carbonate settle: dipotassium phosphate turns alkaline, acid takes bicarbonate away', () => {
    const { contributions } = solutionConductivity({ ions: { 'K+': '4 mmol/L', 'HPO4 2-': '2 mmol/L' } });
    expect(contributions['HPO4 2-']!.si).toBeGreaterThan(5 * contributions['H2PO4-']!.si);
    const acid = solutionConductivity({ ions: { 'Ca2+': '2 mmol/L', 'HCO3-': '4 mmol/L', 'H+': '3 mmol/L', 'NO3-': '3 mmol/L' } });
    const after = solutionConductivity({ ions: { 'Ca2+': '2 mmol/L', 'HCO3-': '1 mmol/L', 'NO3-': '3 mmol/L' } });
    expect(acid.conductivity.si / after.conductivity.si).toBeCloseTo(1, 2);
  });

  test('strong acid left over carries most of the current', () => {
    const { transportNumbers } = solutionConductivity({ ions: { 'H+': '2 mmol/L', 'NO3-': '2 mmol/L' } });
    expect(transportNumbers['H+']!.si).toBeGreaterThan(0.8);
  });

  test('a pH that the alkalinity does not fit is said, and bicarbonate left out', () => {
    const odd = solutionConductivity({ ions: { ...feed, 'HCO3-': '0.1 mmol/L' }, pH: 7.5 });
    expect(codes(odd)).toContain('acidity-does-not-fit');
    expect(odd.contributions['HCO3-']).toBeUndefined();
    expect(codes(solutionConductivity({ ions: hardWater, alkalinity: '4 meq/L', pH: 4 }))).toContain('acidity-does-not-fit');
    expect(codes(solutionConductivity({ ions: hardWater, alkalinity: '4 meq/L', pH: 7.4 }))).not.toContain('acidity-does-not-fit');
  });

  test('says what it leaves open', () => {
    expect(codes(solutionConductivity({ ions: feed }))).toEqual([]);
    expect(codes(solutionConductivity({ ions: { 'K+': '10 mmol/L', 'H2PO4-': '10 mmol/L' } }))).toContain('assumed-conductivities');
    expect(codes(solutionConductivity({ ions: { ...feed, 'Cl-': '3 mmol/L' } }))).toContain('charge-imbalance');
    expect(codes(solutionConductivity({ ions: { 'Na+': '1 mmol/L', 'FeEDTA-': '1 mmol/L' } }))).toContain('ions-left-out');
    expect(codes(solutionConductivity({ ions: { 'Na+': '0.05 mmol/L', 'Cl-': '0.05 mmol/L' } }))).toEqual(['outside-range']);
    expect(codes(solutionConductivity({ ions: feed, waterTemperature: '70 °C' }))).toContain('outside-range');
  });

  test.each([
    [{}, /exactly one of ions, nutrients/],
    [{ ions: feed, nutrients: { K: '100 mg/L' } }, /exactly one/],
    [{ ions: {} }, /at least one ion that conducts/],
    [{ ions: { 'K+': '0 mmol/L' } }, /at least one ion that conducts/],
    [{ ions: { 'H3BO3': '1 mmol/L' } }, /at least one ion that conducts/],
    [{ ions: { 'FeEDTA-': '1 mmol/L' } }, /at least one ion that conducts/],
    [{ ions: { 'Ca2+': '1.2 mol/L', 'NO3-': '2 mol/L' } }, /at most 1 mol\/L of ionic strength/],
    [{ ions: { Kalium: '1 mmol/L' } }, /ions\.Kalium/],
  ])('refuses %o', (input, message) => {
    const attempt = solutionConductivity.try(input);
    expect(attempt.ok).toBe(false);
    if (!attempt.ok) {
      expect(attempt.error).toBeInstanceOf(InputError);
      expect(attempt.error.message).toMatch(message);
    }
  });
});

describe('conductivityAtReference', () => {
  test('every way leaves a reading at 25 °C alone', () => {
    for (const temperatureCompensation of ['potassium chloride', 'linear', 'ISO 7888'] as const) {
      expect(conductivityAtReference({ conductivity: '2 mS/cm', waterTemperature: '25 °C', temperatureCompensation }).temperatureFactor).toBeCloseTo(1, 3);
    }
    expect(conductivityAtReference({ conductivity: '2 mS/cm', waterTemperature: '20 °C', referenceTemperature: '20 °C' }).temperatureFactor).toBe(1);
  });

  test('ISO 7888 goes to 25 °C only', () => {
    expect(() => conductivityAtReference({ conductivity: '0.5 mS/cm', waterTemperature: '12 °C', referenceTemperature: '20 °C', temperatureCompensation: 'ISO 7888' })).toThrow(/25 °C with ISO 7888/);
  });

  test('says where a way is stretched', () => {
    const at10 = { conductivity: '1.5 mS/cm', waterTemperature: '10 °C' } as const;
    expect(codes(conductivityAtReference(at10))).toEqual([]);
    expect(codes(conductivityAtReference({ ...at10, temperatureCompensation: 'linear' }))).toEqual(['constant-coefficient']);
    expect(codes(conductivityAtReference({ ...at10, temperatureCompensation: 'ISO 7888' }))).toEqual(['coefficients-from-memory', 'outside-range']);
  });
});

test('a meter reading needs its other side', () => {
  expect(() => dissolvedSolidsMeter({ dissolvedSolidsScale: '500' })).toThrow(/exactly one/);
  expect(() => dissolvedSolidsMeter({ dissolvedSolidsScale: '500', conductivity: '1 mS/cm', dissolvedSolidsReading: '500 ppm' })).toThrow(/exactly one/);
});
