import { describe, expect, test } from 'vitest';
import { isInputError } from '../../src/calculation/index.js';
import { blendForConductivity, diluteToConductivity, strengthFromConductivity, strengthFromReading } from '../../src/conductivity/index.js';

const problemsOf = (attempt: ReturnType<typeof strengthFromReading.try> | ReturnType<typeof diluteToConductivity.try> | ReturnType<typeof blendForConductivity.try>) => {
  if (attempt.ok || !isInputError(attempt.error)) throw new Error('was taken');
  return attempt.error.problems.map(({ path }) => path);
};
const recipe = { ions: { 'K+': '8 mmol/L', 'Ca2+': '4 mmol/L', 'NO3-': '14 mmol/L', 'HCO3-': '2 mmol/L' } } as const;
const sourceWater = { ions: { 'Ca2+': '2 mmol/L', 'HCO3-': '4 mmol/L' } } as const;

describe('strengthFromReading', () => {
  const problems = (input: object) => problemsOf(strengthFromReading.try({ reading: '1.5 mS/cm', recipe, sourceWater, ...input }));

  test.each([
    [{ recipe: { ions: {} } }, ['recipe']],
    [{ recipe: { ions: { 'K+': '0 mmol/L' } } }, ['recipe']],
    [{ recipe: {} }, ['recipe']],
    [{ recipe: sourceWater }, ['recipe']],
    [{ recipe: { ions: { 'K+': '2 mol/L', 'NO3-': '2 mol/L' } } }, ['recipe']],
    [{ sourceWater: { ions: { 'K+': '2 mol/L', 'NO3-': '2 mol/L' } } }, ['sourceWater']],
    [{ sourceWater: {} }, ['sourceWater']],
    [{ reading: '0.2 mS/cm' }, ['reading']],
    [{ reading: '150 mS/cm' }, ['reading']],
    [{ reading: '1.5 mS/m' }, ['reading']],
  ])('refuses %j', (input, paths) => {
    expect(problems(input)).toEqual(paths);
  });

  test('a reading of the water alone is no recipe, and says so', () => {
    const { waterReading } = strengthFromReading({ reading: '1.5 mS/cm', recipe, sourceWater });
    const { strength, lowStrength, highStrength, notes } = strengthFromReading({ reading: waterReading.as('µS/cm'), recipe, sourceWater });
    expect(strength.si).toBe(0);
    expect(lowStrength.si).toBe(0);
    expect(highStrength.si).toBeGreaterThan(0);
    expect(notes.map(({ code }) => code)).toEqual(['no-recipe-seen']);
  });

  test('a reading as expected is full strength', () => {
    const { expectedReading } = strengthFromReading({ reading: '1.5 mS/cm', recipe, sourceWater, waterTemperature: '14 °C' });
    const { strength, notes } = strengthFromReading({ reading: expectedReading, recipe, sourceWater, waterTemperature: '14 °C' });
    expect(strength.in('%')).toBeCloseTo(100, 8);
    expect(notes).toEqual([]);
  });

  test('the plain formula has no answer where no feed can read so much', () => {
    expect(strengthFromConductivity({}, { 'K+': 10, 'NO3-': 10 }, 20, 298.15, 0.02)).toBeUndefined();
    expect(strengthFromConductivity({}, { 'K+': 1e-6, 'NO3-': 1e-6 }, 0.2, 298.15, 0.02)).toBeUndefined();
    expect(strengthFromConductivity({}, { 'K+': 10, 'NO3-': 10 }, 0, 298.15, 0.02)).toMatchObject({ strength: 0, low: 0, high: 0 });
  });
});

describe('diluteToConductivity', () => {
  const problems = (input: object) => problemsOf(diluteToConductivity.try({ volume: '60 L', ...recipe, sourceWater, targetConductivity: '1.2 mS/cm', ...input }));

  test.each([
    [{ targetConductivity: '0.2 mS/cm' }, ['targetConductivity']],
    [{ targetConductivity: '5 mS/cm' }, ['targetConductivity']],
    [{ ions: {} }, ['ions']],
    [{ ions: undefined, nutrients: { K: '0 mg/L' } }, ['nutrients']],
    [{ sourceWater: recipe, ions: sourceWater.ions }, ['ions']],
    [{ volume: '0 L' }, ['volume']],
  ])('refuses %j', (input, paths) => {
    expect(problems(input)).toEqual(paths);
  });

  test('does not thin a feed into water', () => {
    const { waterReading } = diluteToConductivity({ volume: '60 L', ...recipe, sourceWater, targetConductivity: '1.2 mS/cm' });
    expect(problems({ targetConductivity: waterReading })).toEqual(['targetConductivity']);
  });
});

describe('blendForConductivity', () => {
  test.each([
    [{ targetConductivity: '0.1 mS/cm' }, ['targetConductivity']],
    [{ targetConductivity: '9 mS/cm' }, ['targetConductivity']],
    [{ firstFeed: sourceWater }, ['targetConductivity']],
    [{ firstFeed: { ions: {} }, secondFeed: { ions: {} } }, ['targetConductivity']],
    [{ firstFeed: {} }, ['firstFeed']],
    [{ secondFeed: { ions: { 'K+': '2 mol/L', 'NO3-': '2 mol/L' } } }, ['secondFeed']],
  ])('refuses %j', (input, paths) => {
    expect(problemsOf(blendForConductivity.try({ firstFeed: recipe, secondFeed: sourceWater, targetConductivity: '1.2 mS/cm', ...input }))).toEqual(paths);
  });
});
