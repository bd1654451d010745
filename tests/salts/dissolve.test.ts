import { describe, expect, test } from 'vitest';
import { isInputError, type Problem } from '../../src/calculation/index.js';
import { dissolve, labelAnalysis } from '../../src/salts/index.js';

type Input = Parameters<typeof dissolve>[0];
const codes = (input: Input) => dissolve(input).notes.map(({ code }) => code);
const problems = (input: unknown): readonly Problem[] => {
  const attempt = dissolve.try(input);
  if (attempt.ok || !isInputError(attempt.error)) throw new Error('was taken');
  return attempt.error.problems;
};
const portionProblems = (portion: object) => problems({ volume: '120 L', portions: [portion] });

describe('acid', () => {
  const soften = (mass: `${number} g`) => dissolve({ volume: '1000 L', portions: [{ salt: 'nitric-acid', purity: '60 %', mass }], water: { Ca: '60.117 mg/L' }, waterAlkalinity: '3 meq/L' });

  test('beyond the alkalinity is a danger, and stands among the ions', () => {
    const { alkalinity, ions, notes } = soften('420.08 g');
    expect(alkalinity.in('meq/L')).toBe(0);
    expect(ions['H+']!.in('mmol/L')).toBeCloseTo(1, 12);
    expect(notes).toMatchObject([{ code: 'acid-left', severity: 'danger', field: 'alkalinity', text: expect.stringMatching(/^1 meq\/L/) as string }, { code: 'acid' }]);
  });

  test('up to the alkalinity is none, but carries the caution', () => {
    const { alkalinity, notes } = soften('315.06 g');
    expect(alkalinity.in('meq/L')).toBeCloseTo(0, 12);
    expect(notes.map(({ code }) => code)).toEqual(['acid']);
  });

  test.each([['boric-acid'], ['ammonium-heptamolybdate-tetrahydrate'], ['monopotassium-phosphate']] as const)('%s is none to be careful of', (salt) => {
    expect(codes({ volume: '1000 L', portions: [{ salt, purity: 1, mass: '1 g' }] })).toEqual([]);
  });
});

describe('a label', () => {
  const said = (label: Input['portions'][number]['label']) => codes({ volume: '1000 L', portions: [{ label, mass: '1 g' }] }).includes('label-looks-like-acid');

  test.each([[{ P2O5: '61 %' }], [{ 'N-NO3': '13 %' }], [{ S: '31 %' }], [{ 'N-urea': '17 %', P2O5: '44 %' }], [{ 'N-NO3': '13 %', K2O: '1 %' }]] as const)('of %j may be that of an acid', (label) => {
    expect(said(label)).toBe(true);
  });

  test.each([
    [{ N: '12 %', P2O5: '61 %' }], [{ 'N-NO3': '14.4 %', 'N-NH4': '1.1 %', CaO: '26.3 %' }], [{ P2O5: '52 %', K2O: '34 %' }], [{ N: '46 %' }],
    [{ Fe: '6 %' }], [{ Fe: '20 %', S: '11.5 %' }], [{ Mo: '39 %' }], [{ B: '17 %' }],
  ] as const)('of %j is none', (label) => {
    expect(said(label)).toBe(false);
  });

  test('that looks like an acid carries what there is to know of acid', () => {
    const { notes } = dissolve({ volume: '1000 L', portions: [{ label: { P2O5: '61 %' }, mass: '100 g' }] });
    expect(notes.find(({ code }) => code === 'label-looks-like-acid')).toMatchObject({ severity: 'caution', field: 'portions', text: expect.stringContaining('add acid to water') as string });
  });
});

describe('charges', () => {
  test('that do not balance are told, of the water and of the feed: the water analysis lacks something', () => {
    expect(codes({ volume: '120 L', portions: [], water: { Na: '46 mg/L', Cl: '50 mg/L' } })).toEqual(['water-imbalance', 'charge-imbalance']);
  });

  test.each([[{ Na: '46 mg/L', Cl: '64 mg/L' }], [{ Na: '4 mg/L' }]] as const)('of %j are near enough', (water) => {
    expect(codes({ volume: '120 L', portions: [], water })).toEqual([]);
  });

  test('of a label cannot balance, which is no fault of the water', () => {
    const { notes } = dissolve({ volume: '10 L', portions: [{ label: { N: '20 %', P2O5: '20 %', K2O: '20 %' }, mass: '10 g' }] });
    expect(notes).toMatchObject([{ code: 'label-imbalance', severity: 'info' }, { code: 'nitrogen-form-unknown', severity: 'caution' }]);
  });
});

test('purities taken as usual are told, those given are not', () => {
  const portion = { salt: 'potassium-nitrate', mass: '50 g' } as const;
  expect(codes({ volume: '120 L', portions: [portion] })).toEqual(['usual-purity']);
  expect(codes({ volume: '120 L', portions: [{ ...portion, purity: '99 %' }] })).toEqual([]);
  expect(dissolve({ volume: '120 L', portions: [portion] }).nutrients).toEqual(dissolve({ volume: '120 L', portions: [{ ...portion, purity: 0.99 }] }).nutrients);
});

test('a stock is told from a feed, and what no litre holds is refused', () => {
  const put = (mass: `${number} kg`) => ({ volume: '10 L', portions: [{ salt: 'potassium-nitrate', purity: 1, mass }] }) as const;
  expect(codes(put('0.09 kg'))).toEqual([]);
  expect(codes(put('1.2 kg'))).toEqual(['stock-strength']);
  expect(problems(put('21 kg'))).toMatchObject([{ path: 'volume' }]);
});

test('water by itself stays as it is', () => {
  const { nutrients, alkalinity } = dissolve({ volume: '1 L', portions: [], water: { Ca: '52 mg/L', 'N-NO3': '3.5 mg/L', HCO3: '122.032 mg/L' } });
  expect(nutrients.Ca!.in('mg/L')).toBe(52);
  expect(nutrients.N!.in('mg/L')).toBe(3.5);
  expect(alkalinity.in('meq/L')).toBeCloseTo(2, 12);
});

test('a label may come from its analysis, and may leave figures open', () => {
  const portions = (label: Input['portions'][number]['label']) => ({ volume: '10 L', portions: [{ label, mass: '10 g' }] }) as const;
  const analysed = dissolve(portions(labelAnalysis({ label: { N: '13 %', K2O: '46 %' } }).nutrientShares)).nutrients;
  const { nutrients } = dissolve(portions({ N: '13 %', K2O: '46 %', P2O5: undefined }));
  expect(Object.keys(analysed)).toEqual(Object.keys(nutrients));
  expect(analysed.K!.in('mg/L')).toBeCloseTo(nutrients.K!.in('mg/L'), 10);
});

describe('a portion is refused', () => {
  test.each([
    [{ mass: '1 g' }, 'portions[0]', 'a salt or a label'],
    [{ salt: 'urea', label: { N: 0.46 }, mass: '1 g' }, 'portions[0].label', 'either'],
    [{ salt: 'nitric-acid', mass: '1 g' }, 'portions[0].purity', 'the purity of nitric acid'],
    [{ label: { N: 0.46 }, purity: 0.9, mass: '1 g' }, 'portions[0].purity', 'a label alone'],
    [{ label: {}, mass: '1 g' }, 'portions[0].label', 'at least one figure'],
    [{ label: { K2O: 0.9, Cl: 0.5 }, mass: '1 g' }, 'portions[0].label', 'adds up'],
    [{ label: { P2O5: 0.52, P: 0.227 }, mass: '1 g' }, 'portions[0].label.P2O5', 'adds up'],
    [{ label: { N: 0.1, HCO3: 0.5 }, mass: '1 g' }, 'portions[0].label.HCO3', 'a known name'],
    [{ salt: 'urea', purity: 0, mass: '1 g' }, 'portions[0].purity', 'a share'],
    [{ salt: 'urea', mass: '-1 g' }, 'portions[0].mass', '0 g to 1 t'],
  ])('%j at %s', (portion, path, expected) => {
    expect(portionProblems(portion)).toMatchObject([{ path, expected: expect.stringContaining(expected) as string }]);
  });

  test.each([
    ['KNO3', "did you mean 'potassium-nitrate'?"],
    ['Potassium nitrate', "did you mean 'potassium-nitrate'?"],
    ['potasium-nitrat', "did you mean 'potassium-nitrate'?"],
    ['MgSO4.7H2O', "did you mean 'magnesium-sulfate-heptahydrate'?"],
    ['calcium nitrate', "did you mean 'calcium-nitrate-tetrahydrate' or 'calcium-nitrate-anhydrous'?"],
    ['moon dust', undefined],
    ['__proto__', undefined],
    ['toString', undefined],
  ])('of a salt called %s, with what was perhaps meant', (salt, hint) => {
    const [problem] = portionProblems({ salt, purity: 1, mass: '1 g' });
    expect(problem).toMatchObject({ path: 'portions[0].salt', received: `"${salt}"` });
    expect(problem!.hint).toBe(hint);
  });
});

test('alkalinity is stated once', () => {
  expect(problems({ volume: '1 L', portions: [], water: { HCO3: '61 mg/L' }, waterAlkalinity: '1 meq/L' })).toMatchObject([{ path: 'waterAlkalinity' }]);
});
