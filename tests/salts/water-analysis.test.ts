import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { isInputError } from '../../src/calculation/index.js';
import { dissolve, waterAnalysis, weighOut } from '../../src/salts/index.js';

type Input = Parameters<typeof waterAnalysis>[0];
type Water = NonNullable<Input['water']>;
const codes = (input: Input) => waterAnalysis(input).notes.map(({ code, severity }) => [code, severity]);
const problems = (input: unknown, calculation: { try: typeof waterAnalysis.try } = waterAnalysis) => {
  const attempt = calculation.try(input);
  if (attempt.ok || !isInputError(attempt.error)) throw new Error('was taken');
  return attempt.error.problems.map(({ path, hint }) => [path, hint]);
};
/** 5 meq/L of each side, nothing left out. */
const full: Water = { Ca: '3 meq/L', Mg: '1 meq/L', Na: '0.9 meq/L', K: '0.1 meq/L', Cl: '1 meq/L', SO4: '1 meq/L', NO3: '0.2 meq/L', HCO3: '2.8 meq/L' };

test('a full analysis that balances is left in peace, in whatever units it came', () => {
  const { notes, unstatedIons, missingAnions, missingCations, ions } = waterAnalysis({ water: full });
  expect(notes).toEqual([]);
  expect(unstatedIons).toEqual([]);
  expect(missingAnions.si + missingCations.si).toBeCloseTo(0, 12);
  const again = waterAnalysis({ water: { ...full, Ca: '60.117 mg/L', SO4: undefined, S: '0.5 mmol/L', NO3: undefined, 'N-NO3': '2.8014 mg/L', HCO3: undefined }, waterAlkalinity: '140.1204 mg/L CaCO3' });
  for (const [ion, amount] of Object.entries(ions)) expect(again.ions[ion as keyof typeof ions]!.si).toBeCloseTo(amount.si, 10);
});

test('what comes out as nutrients goes into a feed as its water', () => {
  const { nutrients, alkalinity } = waterAnalysis({ water: { ...full, NH4: '0.18 mg/L', SiO2: '8 mg/L', Fe: '0.1 mg/L', B: '30 µg/L' } });
  const feed = dissolve({ volume: '120 L', portions: [], water: nutrients });
  expect(feed.alkalinity.si).toBeCloseTo(alkalinity.si, 12);
  expect({ ...feed.nutrients, N: undefined }).toEqual({ ...nutrients, N: undefined });
  expect(feed.nutrients.N!.si).toBeCloseTo(nutrients['N-NO3']!.si + nutrients['N-NH4']!.si, 12);
});

test('a feed takes its water in any units, as the same feed', () => {
  const feed = (water: Water) => weighOut({ volume: '120 L', targets: { Ca: '120 mg/L', S: '40 mg/L' }, salts: [{ salt: 'calcium-nitrate-tetrahydrate' }, { salt: 'potassium-sulfate' }], water }).portions.map(({ mass }) => mass.si);
  const [calcium, sulfate] = feed({ Ca: '40.078 mg/L', S: '16.03 mg/L', HCO3: '61.016 mg/L' });
  const again = feed({ Ca: '2 meq/L', SO4: '0.5 mmol/L', HCO3: '1 mmol/L' });
  expect(again[0]).toBeCloseTo(calcium!, 10);
  expect(again[1]).toBeCloseTo(sulfate!, 10);
});

describe('what is missing', () => {
  const { SO4: _, ...withoutSulfate } = full;

  test('of the charge is told with its size', () => {
    const { notes, missingAnions, unstatedIons } = waterAnalysis({ water: withoutSulfate });
    expect(missingAnions.in('meq/L')).toBeCloseTo(1, 12);
    expect(unstatedIons).toEqual(['sulfate']);
    expect(notes).toMatchObject([{ code: 'water-imbalance', severity: 'caution', field: 'water', text: expect.stringMatching(/11\.11 % apart: 1 meq\/L of anions are missing \(not stated: sulfate\)/) as string }]);
  });

  test.each([
    [{ ...full, SO4: '0.6 meq/L' }, []], [{ ...full, SO4: '0.4 meq/L' }, [['water-imbalance', 'info']]], [{ Na: '0.15 meq/L' }, []], [{ Na: '0.15 meq/L', Cl: '0.01 meq/L' }, []],
    [{ Ca: '3 meq/L', Mg: '1 meq/L' }, [['part-of-analysis', 'caution']]], [{ HCO3: '3 meq/L', Cl: '0 mg/L' }, [['part-of-analysis', 'caution']]],
  ] as const)('%j: %j', (water, expected) => {
    expect(codes({ water })).toEqual(expected);
    expect(dissolve({ volume: '1 L', portions: [], water }).notes.filter(({ field }) => field === 'water').map(({ code, severity }) => [code, severity])).toEqual(expected);
  });

  test.each([['0.5 mS/cm', []], ['0.75 mS/cm', [['salt-missing', 'caution']]], ['0.3 mS/cm', [['conductivity-below-analysis', 'caution']]], ['0 mS/cm', [['conductivity-below-analysis', 'caution']]]] as const)('and in excess: a meter that shows %s', (measuredConductivity, expected) => {
    expect(codes({ water: full, measuredConductivity })).toEqual(expected);
  });

  test('a pH that the alkalinity does not allow is told', () => {
    expect(codes({ water: full, pH: 7.4 })).toEqual([]);
    expect(codes({ water: full, pH: 4 })).toEqual([['acidity-does-not-fit', 'caution']]);
  });
});

describe('hardness', () => {
  const { Mg: _, ...withoutMagnesium } = full;
  const { Ca: __, ...withoutBoth } = withoutMagnesium;

  test.each([
    [withoutMagnesium, '4 meq/L', [['from-hardness', 'info']]], [withoutBoth, '2 mmol/L', [['hardness-split', 'caution']]], [full, '4.1 meq/L', []], [full, '3 mmol/L', [['hardness-contradiction', 'caution']]],
    [withoutMagnesium, '1 mmol/L', [['hardness-contradiction', 'caution'], ['water-imbalance', 'caution']]],
  ] as const)('beside %j: %s', (water, hardness, expected) => {
    expect(codes({ water, hardness })).toEqual(expected);
  });

  test('takes the place of calcium and magnesium, by the share that is given', () => {
    const { ions, hardness } = waterAnalysis({ water: withoutBoth, hardness: '11.2154 °dH', calciumShare: 0.75 });
    expect([ions['Ca2+']!.si, ions['Mg2+']!.si, hardness.in('meq/L')].map((x) => x.toFixed(6))).toEqual(['1.500000', '0.500000', '4.000000']);
  });
});

describe('is refused', () => {
  test.each([
    [{ Ca: '80mg/L' }, 'water.Ca', "did you mean '80 mg/L'?"],
    [{ Ca: '5 furlongs' }, 'water.Ca', "'furlongs' is not a unit of massConcentration or amountConcentration or chargeConcentration"],
    [{ Ca: '14 °dH' }, 'water.Ca', "'°dH' is not a unit of massConcentration or amountConcentration or chargeConcentration"],
    [{ Ca: 80 }, 'water.Ca', "the unit is missing, as in '80 mg/L'"],
    [{ Ca: '-80 mg/L' }, 'water.Ca', undefined],
    [{ Ca: NaN }, 'water.Ca', "the unit is missing, as in '1 mg/L'"],
    [{ Ca: 'NaN mg/L' }, 'water.Ca', undefined],
    [{ Ca: '30 g/L' }, 'water.Ca', "did you mean '30 mg/L' or '30 µg/L'?"],
    [{ 'NO3-N': '2 mg/L' }, 'water.NO3-N', "did you mean 'N-NO3'?"],
    [{ 'Ca2+': '2 mg/L' }, 'water.Ca2+', "did you mean 'Ca'?"],
    [{ potasium: '2 mg/L' }, 'water.potasium', "did you mean 'K'?"],
    [{ moonlight: '2 mg/L' }, 'water.moonlight', undefined],
    [{ NO3: '11 mg/L', 'N-NO3': '2.5 mg/L' }, 'water.NO3', 'leave one of them out'],
    [{ B: '1 meq/L' }, 'water.B', 'boric acid carries no charge'],
    [{ PO4: '1 meq/L' }, 'water.PO4', 'phosphate carries one to three charges, by pH'],
    [{ Ca: '80 mg/L', HCO3: '20 mg/L' }, 'water', 'not stated: chloride, sulfate, nitrate'],
    [{ ...full, Ca: '60 mmol/L' }, 'water', 'are the units right?'],
  ])('%j', (water, path, hint) => {
    expect(problems({ water })).toEqual([[path, hint]]);
    expect(problems({ volume: '1 L', portions: [], water }, dissolve as never)).toEqual([[path, hint]]);
  });

  test.each([
    [{}, 'water'], [{ water: {} }, 'water'], [{ water: { HCO3: '61 mg/L' }, waterAlkalinity: '1 meq/L' }, 'waterAlkalinity'], [{ water: { CO3: '6 mg/L' }, waterAlkalinity: '1 meq/L' }, 'waterAlkalinity'],
    [{ hardness: '100 mg/L HCO3' }, 'hardness'], [{ hardness: '80 mg/L' }, 'hardness'], [{ hardness: '14 °dH', waterAlkalinity: '0.5 meq/L' }, 'water'],
    [{ water: { Na: '600 mmol/L', SO4: '600 mmol/L', K: '600 mmol/L' } }, 'water'],
  ])('%j', (input, path) => {
    expect(problems(input).map(([at]) => at)).toEqual([path]);
  });

  test('a flood of unknown names, without looking long for what they mean', () => {
    const started = performance.now();
    expect(problems({ water: Object.fromEntries(Array.from({ length: 2000 }, (_, i) => [`${'x'.repeat(2000)}${i}`, '1 mg/L'])) })).toHaveLength(2000);
    expect(performance.now() - started).toBeLessThan(2000);
  });

  test('a statement made twice names both', () => {
    const attempt = waterAnalysis.try({ water: { NO3: '11 mg/L', 'N-NO3': '2.5 mg/L' } });
    expect(!attempt.ok && attempt.error.message).toMatch(/nitrate stated once is needed, not NO3 beside N-NO3/);
  });
});

describe('natural waters', () => {
  const [head, ...rows] = readFileSync(new URL('../conductivity/natural-waters.csv', import.meta.url), 'utf8').split('\n').filter((line) => line !== '' && !line.startsWith('#')).map((line) => line.split(','));
  const waters = rows.map((row) => {
    const figure = (column: string): number => Number(row[head!.indexOf(column)]);
    const water: { [K in 'Cl' | 'SO4' | 'NO3' | 'Na' | 'K' | 'Ca' | 'Mg' | 'NH4']?: `${number} mg/L` } = {};
    for (const key of ['Cl', 'SO4', 'NO3', 'Na', 'K', 'Ca', 'Mg', 'NH4'] as const) water[key] = `${figure(`${key}_mg_L`)} mg/L`;
    return { water, waterAlkalinity: `${figure('alkalinity_as_HCO3_mg_L')} mg/L HCO3`, referenceTemperature: '20 °C', measuredConductivity: `${figure('EC20_mS_cm')} mS/cm` } as const;
  });

  test('that balance within 5 %, and whose conductivity was measured, are found complete', () => {
    expect(waters.length).toBeGreaterThan(70);
    for (const water of waters) expect(codes(water)).toEqual([]);
  });

  test('from which sodium chloride is left out are found to lack it, within a tenth of all their salt', () => {
    for (const water of waters) {
      const { ions, chargeBalance } = waterAnalysis(water);
      const salt = Math.min(ions['Na+']!.si, ions['Cl-']!.si);
      const rest = (ion: 'Na+' | 'Cl-') => `${ions[ion]!.si - salt} mmol/L` as const;
      const { missingSalt } = waterAnalysis({ ...water, water: { ...water.water, Na: rest('Na+'), Cl: rest('Cl-') } });
      expect(Math.abs(missingSalt!.si - salt)).toBeLessThan(0.1 * chargeBalance.cations.si);
    }
  });
});
