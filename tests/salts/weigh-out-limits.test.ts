import { describe, expect, test } from 'vitest';
import { isInputError } from '../../src/calculation/index.js';
import { dissolve, weighOut } from '../../src/salts/index.js';

type Input = Parameters<typeof weighOut>[0];
const saltpetre = { salt: 'potassium-nitrate', purity: 1 } as const;
const sulfate = { salt: 'potassium-sulfate', purity: 1 } as const;
const phosphoric = { salt: 'phosphoric-acid', purity: '75 %' } as const;
const sheet = (input: Omit<Input, 'volume'>) => weighOut({ volume: '120 L', ...input });
const noted = ({ notes }: ReturnType<typeof weighOut>) => notes.map(({ severity, code, field }) => [severity, code, field]);
const milligrams = (result: ReturnType<typeof weighOut>, form: 'K' | 'N-NO3' | 'P' | 'S' | 'B' | 'Na' | 'N-NH4' | 'N') => result.nutrients[form]?.in('mg/L') ?? 0;

describe('what there is of a salt', () => {
  test('is not passed, nor by rounding', () => {
    const of = (mostMass: `${number} g`) => sheet({ targets: { K: '200 mg/L' }, salts: [{ ...saltpetre, mostMass, division: '1 g' }, sulfate], scales: [{ division: '0.01 g' }] }).portions.map(({ mass }) => mass.toJSON());
    expect(of('20.6 g')[0]).toBe('20 g');
    expect(of('21 g')[0]).toBe('21 g');
    expect(of('0 g')).toEqual(['0 g', '53.48 g']);
  });

  test('that is all used up stands in the way', () => {
    const result = sheet({ targets: { K: '100 mg/L' }, salts: [{ ...saltpetre, mostMass: '10 g' }] });
    expect(result.conflicts).toEqual([{ short: ['K'], over: [], products: ['potassium-nitrate'], limits: ['mostMass of potassium-nitrate'] }]);
    expect(result.notes[0]!.text).toContain('K falls short, because what there is of potassium-nitrate stands in the way');
  });
});

describe('bounds', () => {
  test('are kept before targets are met', () => {
    const result = sheet({ targets: { 'N-NO3': '70 mg/L', 'K': '200 mg/L' }, salts: [saltpetre, sulfate], bounds: { S: { most: '0 mg/L' }, K: { most: '180 mg/L' } } });
    expect(milligrams(result, 'S')).toBe(0);
    expect(milligrams(result, 'K')).toBeCloseTo(180, 9);
    expect(result.notes.filter(({ severity }) => severity === 'danger')).toEqual([]);
  });

  test('that nothing can keep are told with the reason, and the nearest is taken', () => {
    const result = sheet({ targets: { K: '200 mg/L' }, salts: [saltpetre], water: { Na: '20 mg/L', Cl: '30.8 mg/L' }, bounds: { B: { least: '0.2 mg/L' }, Na: { most: '5 mg/L' } } });
    expect(noted(result).slice(0, 2)).toEqual([['danger', 'limit-missed', 'bounds.Na.most'], ['danger', 'limit-missed', 'bounds.B.least']]);
    expect(milligrams(result, 'K')).toBeCloseTo(200, 4);
  });

  test('that contradict one another give way by least squares', () => {
    // K and N of KNO3 stand as 39.0983 to 14.007. Of bounds k <= K (150) and N <= n (30), as shares: least (1 - x/150)² + (14.007/39.0983 x/30 - 1)², at x = (1/150 + s) / (1/150² + s²), s = 0.0119417.
    const s = 14.007 / 39.0983 / 30;
    const result = sheet({ targets: { K: '200 mg/L' }, salts: [saltpetre], bounds: { 'K': { least: '150 mg/L' }, 'N-NO3': { most: '30 mg/L' } } });
    expect(milligrams(result, 'K')).toBeCloseTo((1 / 150 + s) / (1 / 150 ** 2 + s ** 2), 3);
    expect(result.conflicts[0]).toEqual({ short: ['K'], over: ['N-NO3'], products: ['potassium-nitrate'], limits: ['bounds.K.least', 'bounds.N-NO3.most'] });
    expect(noted(result).map(([, code]) => code)).toEqual(['limit-missed', 'limit-missed', 'target-unreachable']);
  });

  test('missed only by the scale say so', () => {
    const result = sheet({ targets: { K: '100 mg/L' }, salts: [saltpetre], bounds: { K: { most: '100 mg/L' } }, scales: [{ division: '10 g' }] });
    expect(result.portions[0]!.mass.toJSON()).toBe('30 g');
    expect(noted(sheet({ targets: { K: '100 mg/L' }, salts: [saltpetre], bounds: { K: { most: '96 mg/L' } }, scales: [{ division: '10 g' }] }))).toContainEqual(['caution', 'scale-too-coarse', 'bounds.K.most']);
  });
});

describe('ammonium', () => {
  const salts = [{ salt: 'ammonium-sulfate', purity: 1 }, { salt: 'calcium-nitrate-tetrahydrate', purity: 1 }] as const;
  test('stays within its share of the nitrogen', () => {
    const result = sheet({ targets: { 'N': '100 mg/L', 'N-NH4': '60 mg/L' }, salts, ammoniumShare: '20 %' });
    expect(milligrams(result, 'N-NH4') / milligrams(result, 'N')).toBeCloseTo(0.2, 9);
    expect(result.conflicts[0]!.limits).toContain('ammoniumShare');
  });

  test('that the water brings beyond its share is told', () => {
    const result = sheet({ targets: { K: '100 mg/L' }, salts: [sulfate], water: { 'N-NH4': '10 mg/L', 'S': '11.44 mg/L' }, ammoniumShare: '20 %' });
    expect(noted(result)[0]).toEqual(['danger', 'limit-missed', 'ammoniumShare']);
  });
});

describe('alkalinity', () => {
  const water = { water: { Ca: '40.078 mg/L' }, waterAlkalinity: '2 meq/L' } as const;
  test('is left by acid: half a meq/L, or as much as is asked', () => {
    const left = (more: Partial<Input>) => sheet({ targets: { P: '200 mg/L' }, salts: [phosphoric], ...water, ...more }).alkalinity.in('meq/L');
    expect(left({})).toBeCloseTo(0.5, 9);
    expect(left({ alkalinityLeft: '1.2 meq/L' })).toBeCloseTo(1.2, 9);
    expect(left({ alkalinityLeft: '0 meq/L' })).toBeCloseTo(0, 9);
    expect(left({ alkalinityLeft: '3 meq/L' })).toBeCloseTo(1.99, 9);
    expect(left({ bounds: { HCO3: { least: '91.524 mg/L' } } })).toBeCloseTo(1.5, 9);
  });

  test('is never used up, however much a target of it is missed', () => {
    const result = sheet({ targets: { P: '300 mg/L', HCO3: '10 mg/L' }, weights: { HCO3: 0.01 }, salts: [phosphoric], ...water });
    expect(result.alkalinity.in('meq/L')).toBeGreaterThan(0.1);
    expect(result.ions['H+']).toBeUndefined();
  });

  test('is raised by a meq/L at most, unless it is asked for', () => {
    const raised = (more: Partial<Input>) => sheet({ targets: { K: '300 mg/L' }, salts: [{ salt: 'potassium-bicarbonate', purity: 1 }], ...water, ...more }).alkalinity.in('meq/L');
    expect(raised({})).toBeCloseTo(3, 9);
    expect(raised({ bounds: { HCO3: { most: '366.096 mg/L' } } })).toBeCloseTo(6, 9);
    expect(raised({ targets: { K: '156.3932 mg/L', HCO3: '366.096 mg/L' } })).toBeCloseTo(6, 9);
  });
});

describe('cost', () => {
  const targets = { K: '100 mg/L' } as const;
  const priced = [{ ...saltpetre, pricePerKilogram: 2 }, { ...sulfate, pricePerKilogram: 1 }] as const;
  test('is least within the tolerance: the cheaper salt alone, and no more than needed', () => {
    const { portions, cost } = sheet({ targets, salts: priced, costTolerance: '5 %' });
    // 95 mg/L of K in 120 L from K2SO4, 78.1966 / 174.2526 of it K.
    const grams = (0.095 * 120 * 174.2526) / 78.1966;
    expect(portions[0]!.mass.in('g')).toBe(0);
    expect(portions[1]!.mass.in('g')).toBeCloseTo(grams, 9);
    expect(cost).toBeCloseTo(grams / 1000, 12);
  });

  test('is told of the best fit too, and not without every price', () => {
    expect(sheet({ targets, salts: priced }).cost).toBeGreaterThan(0);
    const unpriced = sheet({ targets, salts: [priced[0], sulfate], costTolerance: 0.1 });
    expect(unpriced.cost).toBeUndefined();
    expect(noted(unpriced)).toContainEqual(['caution', 'price-missing', 'costTolerance']);
  });

  test('decides between mixes that fit equally well, which is told where it does not', () => {
    expect(noted(sheet({ targets, salts: priced })).map(([, code]) => code)).toContain('several-mixes');
    expect(noted(sheet({ targets, salts: priced, costTolerance: 0 })).map(([, code]) => code)).not.toContain('several-mixes');
    expect(noted(sheet({ targets: { 'K': '100 mg/L', 'N-NO3': '20 mg/L' }, salts: [saltpetre, sulfate] })).map(([, code]) => code)).not.toContain('several-mixes');
  });
});

test('nothing wanted is nothing weighed', () => {
  const { portions, conflicts } = sheet({ targets: { 'K': '0 mg/L', 'N-NO3': '0 mg/L' }, salts: [saltpetre] });
  expect(portions[0]!.mass.in('g')).toBe(0);
  expect(conflicts).toEqual([]);
});

test('conflicts that have nothing to do with one another stay apart', () => {
  const { conflicts } = sheet({ targets: { 'K': '100 mg/L', 'N-NO3': '100 mg/L', 'Ca': '50 mg/L', 'Cl': '20 mg/L' }, salts: [saltpetre, { salt: 'calcium-chloride-dihydrate', purity: 1 }] });
  expect(conflicts).toEqual([
    { short: ['Ca'], over: ['Cl'], products: ['calcium-chloride-dihydrate'], limits: [] },
    { short: ['N-NO3'], over: ['K'], products: ['potassium-nitrate'], limits: [] },
  ]);
});

test('water that has too much of what comes along is a conflict', () => {
  const { conflicts, nutrients } = sheet({ targets: { 'N-NO3': '100 mg/L', 'Ca': '40 mg/L' }, salts: [{ salt: 'calcium-nitrate-tetrahydrate', purity: 1 }], water: { Ca: '80 mg/L', S: '64 mg/L' } });
  expect(conflicts).toEqual([{ short: ['N-NO3'], over: ['Ca'], products: ['calcium-nitrate-tetrahydrate'], limits: [] }]);
  const again = dissolve({ volume: '1 L', portions: [], water: { Ca: '80 mg/L' } }).nutrients;
  expect(nutrients.Ca!.si).toBeGreaterThanOrEqual(again.Ca!.si);
});

test.each([
  [{ bounds: { K: { least: '2 mg/L', most: '1 mg/L' } } }, ['bounds.K.least']],
  [{ bounds: { K: { most: '1e-9 mg/L' } } }, ['bounds.K.most']],
  [{ bounds: { Kalium: { most: '1 mg/L' } } }, ['bounds.Kalium']],
  [{ ammoniumShare: '101 %' }, ['ammoniumShare']],
  [{ alkalinityLeft: '-1 meq/L' }, ['alkalinityLeft']],
  [{ costTolerance: -0.1 }, ['costTolerance']],
  [{ salts: [{ ...saltpetre, mostMass: '-1 g' }] }, ['salts[0].mostMass']],
  [{ salts: [{ ...saltpetre, pricePerKilogram: '2 EUR' }] }, ['salts[0].pricePerKilogram']],
  [{ salts: [{ ...saltpetre, division: '0 g' }] }, ['salts[0].division']],
])('%j is refused', (input, paths) => {
  const attempt = weighOut.try({ volume: '120 L', targets: { K: '100 mg/L' }, salts: [saltpetre], ...input });
  if (attempt.ok || !isInputError(attempt.error)) throw new Error('was taken');
  expect(attempt.error.problems.map(({ path }) => path)).toEqual(paths);
});
