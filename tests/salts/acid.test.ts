import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { InputError } from '../../src/calculation/index.js';
import { acidDose, acidKeys, acidStrength, titrationCurve } from '../../src/salts/index.js';

const codes = ({ notes }: { readonly notes: readonly { readonly code: string }[] }) => notes.map(({ code }) => code);
const barrel = { volume: '120 L', alkalinity: '4 meq/L', pH: 7.4, waterTemperature: '14 °C', acid: 'nitric-acid', purity: '38 %' } as const;
const hard = { 'Ca2+': '2.4 mmol/L', 'Mg2+': '0.4 mmol/L', 'Cl-': '1.6 mmol/L' } as const;

describe('acidDose', () => {
  test('any water that can be gets a dose that brings the pH asked for', () => {
    const water = fc.record({
      alkalinity: fc.double({ min: 0.2, max: 12, noNaN: true }).map((meq) => `${meq} meq/L` as const),
      pH: fc.double({ min: 6, max: 8.6, noNaN: true }),
      waterTemperature: fc.double({ min: 0, max: 50, noNaN: true }).map((t) => `${t} °C` as const),
      exposure: fc.constantFrom('closed', 'open'),
      acid: fc.constantFrom(...acidKeys),
    });
    fc.assert(fc.property(water, fc.double({ min: 3.2, max: 5.9, noNaN: true }), (some, targetPH) => {
      const dose = acidDose({ ...some, volume: '100 L', purity: '60 %', ions: hard, targetPH });
      expect(dose.pH).toBeCloseTo(targetPH, 6);
      expect(dose.mass.si).toBeGreaterThan(0);
      expect(dose.convergence.relativeResidual.si).toBeLessThan(1e-6);
      expect(codes(dose)).toContain('acid');
    }), { numRuns: 300 });
  });

  test('bicarbonate among the ions or the nutrients is the alkalinity', () => {
    const { alkalinity: _, ...rest } = barrel;
    const stated = acidDose({ ...barrel, targetPH: 5.8 }).mass.si;
    expect(acidDose({ ...rest, ions: { 'HCO3-': '4 mmol/L' }, targetPH: 5.8 }).mass.si / stated).toBeCloseTo(1, 12);
    expect(acidDose({ ...rest, nutrients: { HCO3: '244.064 mg/L' }, targetPH: 5.8 }).mass.si / stated).toBeCloseTo(1, 6);
  });

  test('what is in the acid is added: nitrogen, phosphorus, sulfur', () => {
    const added = (acid: typeof acidKeys[number]) => Object.keys(acidDose({ ...barrel, acid, targetAlkalinity: '1 meq/L' }).nutrientsAdded);
    expect(added('nitric-acid')).toEqual(['N', 'N-NO3']);
    expect(added('phosphoric-acid')).toEqual(['P']);
    expect(added('sulfuric-acid')).toEqual(['S']);
    expect(added('citric-acid-anhydrous')).toEqual([]);
  });

  test('a powder is weighed and has no volume, and the monohydrate weighs its water', () => {
    const powder = acidDose({ ...barrel, acid: 'citric-acid-anhydrous', purity: 1, targetPH: 6 });
    expect(powder.productVolume).toBeUndefined();
    const crystals = acidDose({ ...barrel, acid: 'citric-acid-monohydrate', purity: 1, targetPH: 6 });
    expect(crystals.mass.si / powder.mass.si).toBeCloseTo(210.138 / 192.123, 4);
  });

  test('water at its target already needs none', () => {
    expect(acidDose({ ...barrel, targetPH: 7.4 }).mass.si).toBeLessThan(1e-12);
    expect(acidDose({ ...barrel, targetAlkalinity: '4 meq/L' }).mass.si).toBe(0);
  });

  test('an open water needs far more acid for a pH than one that keeps its carbon dioxide', () => {
    const [shut, open] = (['closed', 'open'] as const).map((exposure) => acidDose({ ...barrel, exposure, targetPH: 6 }));
    expect(open!.acidConcentration.si).toBeGreaterThan(1.2 * shut!.acidConcentration.si);
    expect(open!.pHInAir).toBeCloseTo(6, 8);
    expect(shut!.pHInAir).toBeGreaterThan(7);
  });

  test('a density off the container goes before the one worked out', () => {
    const { mass, productVolume } = acidDose({ ...barrel, productDensity: '1.24 kg/L', targetPH: 5.8 });
    expect(productVolume!.si * 1240).toBeCloseTo(mass.si, 12);
  });

  test('says what is to be said', () => {
    expect(codes(acidDose({ ...barrel, targetPH: 5.8 }))).toEqual(['carbon-dioxide-leaves', 'acid']);
    expect(codes(acidDose({ ...barrel, targetPH: 4 }))).toContain('acid-left');
    expect(codes(acidDose({ ...barrel, targetPH: 5.8, exposure: 'open' }))).toEqual(['unbuffered', 'acid']);
    expect(codes(acidDose({ ...barrel, targetPH: 5.8, waterTemperature: '3 °C' }))).toContain('outside-range');
    expect(codes(acidDose({ ...barrel, targetPH: 5.8, acid: 'sulfuric-acid', purity: '96 %' }))).toContain('density-from-memory');
    expect(codes(acidDose({ ...barrel, targetPH: 5.8, acid: 'sulfuric-acid', purity: '96 %', productDensity: '1.835 kg/L' }))).not.toContain('density-from-memory');
    expect(codes(acidDose({ ...barrel, targetPH: 5.8, acid: 'phosphoric-acid', productTemperature: '5 °C' }))).toContain('density-outside-range');
    expect(codes(acidDose({ ...barrel, pH: 5.8, targetPH: 5.5 }))).toContain('much-carbon-dioxide');
    expect(codes(acidDose({ ...barrel, ions: { 'Ca2+': '1 mmol/L' }, targetPH: 5.8 }))).toContain('charge-imbalance');
    const { purity: _, ...noPurity } = barrel;
    expect(codes(acidDose({ ...noPurity, acid: 'citric-acid-anhydrous', targetPH: 5.8 }))).toEqual(['usual-purity', 'carbon-dioxide-leaves', 'citrate-fades', 'acid']);
  });

  test('phosphoric acid in hard water may settle out, in soft water or with nitric acid nothing does', () => {
    const treated = (acid: 'phosphoric-acid' | 'nitric-acid', calcium: number) => {
      const water = { 'Ca2+': `${calcium} mmol/L`, 'Cl-': `${2 * calcium - 4} mmol/L` } as const;
      return codes(acidDose({ ...barrel, ions: water, acid, targetPH: 6.2 }));
    };
    expect(treated('phosphoric-acid', 5)).toContain('calcium-phosphate');
    expect(treated('nitric-acid', 5)).not.toContain('calcium-phosphate');
    expect(codes(acidDose({ ...barrel, ions: { 'Na+': '4 mmol/L', 'Ca2+': '0.1 mmol/L' }, acid: 'phosphoric-acid', targetPH: 6.2 }))).not.toContain('calcium-phosphate');
  });

  test.each([
    [{ targetPH: 8 }, /targetPH: a pH of at most the 7\.4 of the water is needed, not 8 \(acid only lowers it\)/],
    [{ targetPH: 9, exposure: 'open' }, /in balance with the air/],
    [{ targetPH: 14.1 }, /targetPH: a number from 0 to 14/],
    [{ targetPH: -1 }, /targetPH: a number from 0 to 14/],
    [{ targetPH: 0 }, /that 1 mol\/L of this acid reaches/],
    [{ targetPH: 1, acid: 'citric-acid-anhydrous' }, /that 1 mol\/L of this acid reaches/],
    [{ targetAlkalinity: '5 meq/L' }, /targetAlkalinity: an alkalinity below the 4 meq\/L/],
    [{}, /exactly one of targetPH, targetAlkalinity/],
    [{ targetPH: 6, targetAlkalinity: '1 meq/L' }, /exactly one of targetPH, targetAlkalinity/],
    [{ targetPH: 6, alkalinity: undefined }, /alkalinity: the alkalinity, here or as bicarbonate/],
    [{ targetPH: 6, ions: { 'HCO3-': '4 mmol/L' } }, /alkalinity stated once/],
    [{ targetPH: 6, pH: undefined }, /pH: the pH of a closed water/],
    [{ targetPH: 3, pH: 4 }, /more carbon dioxide than water holds/],
    [{ targetPH: 6, alkalinity: '0.1 meq/L', ions: { 'H2PO4-': '2 mmol/L' } }, /alkalinity: at least 1\.\d+ meq\/L at pH 7\.4/],
    [{ targetPH: 6, purity: '101 %' }, /purity: a share from 1 % to 100 %/],
    [{ targetPH: 6, purity: 60 }, /60 %/],
    [{ targetPH: 6, purity: undefined }, /purity: the strength of nitric acid by mass/],
    [{ targetPH: 6, acid: 'citric-acid-anhydrous', productDensity: '1.6 kg/L' }, /powders are weighed/],
    [{ targetPH: 6, acid: 'potassium-hydroxide' }, /acid: one of/],
    [{ targetPH: 6, ions: { 'K+': '0.6 mol/L', 'NO3-': '0.6 mol/L' } }, /at most 0\.5 mol\/L of ionic strength/],
  ])('refuses %o', (change, message) => {
    const attempt = acidDose.try({ ...barrel, ...change });
    expect(attempt.ok).toBe(false);
    if (attempt.ok) return;
    expect(attempt.error).toBeInstanceOf(InputError);
    expect(attempt.error.message).toMatch(message);
  });
});

describe('titrationCurve', () => {
  test('an open water keeps its carbon dioxide, a closed one gathers it', () => {
    const gas = (exposure: 'closed' | 'open') => titrationCurve({ ...barrel, exposure, lowestPH: 5 }).dissolvedCarbonDioxide.si;
    const [shut, open] = [gas('closed'), gas('open')];
    expect(shut.at(-1)!).toBeGreaterThan(5 * shut[0]!);
    expect(open.at(-1)! / open[0]!).toBeCloseTo(1, 2);
  });

  test('alkalinity ends at zero where acid is left over', () => {
    const { alkalinitiesLeft, notes } = titrationCurve({ ...barrel, mostAcidConcentration: '6 mmol/L' });
    expect(alkalinitiesLeft.at(-1)!.si).toBe(0);
    expect(codes({ notes })).toEqual(['acid']);
  });

  test.each([
    [{}, /exactly one of mostAcidConcentration, lowestPH/],
    [{ lowestPH: 8 }, /lowestPH: a pH of at most/],
    [{ lowestPH: 5, points: 1 }, /points: a whole number from 2 to 200/],
  ])('refuses %o', (change, message) => {
    expect(() => titrationCurve({ ...barrel, ...change })).toThrow(message);
  });
});

describe('acidStrength', () => {
  test('says where it rests on memory', () => {
    expect(codes(acidStrength({ acid: 'sulfuric-acid', purity: '93 %' }))).toEqual(['density-from-memory', 'acid']);
    expect(codes(acidStrength({ acid: 'sulfuric-acid', purity: '37 %' }))).toEqual(['acid']);
  });

  test('strength and density come back from each other', () => {
    const { productDensity } = acidStrength({ acid: 'phosphoric-acid', purity: '80 %', productTemperature: '12 °C' });
    expect(acidStrength({ acid: 'phosphoric-acid', productDensity, productTemperature: '12 °C' }).purity.in('%')).toBeCloseTo(80, 8);
  });

  test('a litre takes as much alkalinity as a dose of it does', () => {
    const bottle = acidStrength({ acid: 'sulfuric-acid', purity: '37 %' });
    const dose = acidDose({ ...barrel, acid: 'sulfuric-acid', purity: '37 %', targetAlkalinity: '1 meq/L' });
    expect(dose.productVolume!.in('L') * bottle.alkalinityTaken.in('meq/L')).toBeCloseTo(3 * 120, 9);
    expect(dose.productVolume!.in('L') * bottle.nutrientsInProduct.S!.in('mg/L')).toBeCloseTo(120 * dose.nutrientsAdded.S!.in('mg/L'), 6);
  });

  test.each([
    [{}, /exactly one of purity, productDensity/],
    [{ productDensity: '1.51 kg/L' }, /productDensity: a density from 0\.9982 to 1\.501 kg\/L/],
    [{ purity: '0.5 %' }, /purity/],
  ])('refuses %o', (change, message) => {
    const attempt = acidStrength.try({ acid: 'nitric-acid', ...change });
    expect(!attempt.ok && attempt.error.message).toMatch(message);
  });
});
