import { describe, expect, test } from 'vitest';
import { isInputError } from '../../src/calculation/index.js';
import { correctFeed, topUp, topUpByRecipe } from '../../src/salts/index.js';

const problemsOf = (attempt: ReturnType<typeof topUp.try> | ReturnType<typeof topUpByRecipe.try> | ReturnType<typeof correctFeed.try>) => {
  if (attempt.ok || !isInputError(attempt.error)) throw new Error('was taken');
  return attempt.error.problems.map(({ path }) => path);
};
const codes = ({ notes }: { readonly notes: readonly { readonly code: string }[] }) => notes.map(({ code }) => code);

describe('topUp', () => {
  const barrel = {
    presentVolume: '40 L', nutrients: { K: '117.3 mg/L', 'N-NO3': '42 mg/L' }, finalVolume: '100 L', targets: { K: '117.3 mg/L' },
    salts: [{ salt: 'potassium-nitrate', purity: 1 }], scales: [{ division: '0.1 g' }],
  } as const;

  test.each([
    [{ finalVolume: '39 L' }, ['finalVolume']],
    [{ nutrients: undefined }, ['']],
    [{ ions: { 'K+': '3 mmol/L' } }, ['nutrients']],
    [{ targets: {} }, ['targets']],
    [{ salts: [{ salt: 'saltpetre', purity: 1 }] }, ['salts[0].salt']],
    [{ volume: '100 L' }, ['volume']],
    [{ nutrients: undefined, ions: { 'H+': '3 mmol/L', 'NO3-': '3 mmol/L' } }, ['ions']],
    [{ nutrients: { K: '390 mg/L', 'N-NO3': '14 mg/L' } }, ['nutrients']],
  ])('refuses %j', (input, paths) => {
    expect(problemsOf(topUp.try({ ...barrel, ...input }))).toEqual(paths);
  });

  test('takes what the barrel holds off what is weighed in', () => {
    expect(topUp(barrel).portions[0]!.mass.toJSON()).toBe('18.2 g');
    expect(topUp({ ...barrel, presentVolume: '0 L' }).portions[0]!.mass.toJSON()).toBe('30.3 g');
    expect(topUp({ ...barrel, presentVolume: '100 L' }).portions[0]!.mass.toJSON()).toBe('0 g');
  });

  test('names what the barrel already has too much of, and what the water in a note means', () => {
    const sheet = topUp({ ...barrel, targets: { K: '30 mg/L' } });
    expect(sheet.exceededByWater).toEqual(['K']);
    expect(codes(sheet)).toEqual(['water-exceeds-target', 'barrel-counts-as-water']);
    expect(codes(topUp({ ...barrel, nutrients: { K: '117.3 mg/L' } }))).toEqual(expect.arrayContaining(['part-of-analysis', 'barrel-counts-as-water']));
  });

  test('takes ions as well, and says which of them no form counts', () => {
    const { nutrients: _, ...rest } = barrel;
    const sheet = topUp({ ...rest, ions: { 'K+': '3 mmol/L', 'NO3-': '2.9 mmol/L', 'F-': '0.1 mmol/L' } });
    expect(sheet.portions[0]!.mass.toJSON()).toBe('18.2 g');
    expect(codes(sheet)).toEqual(['ions-left-out']);
  });
});

describe('topUpByRecipe', () => {
  const refill = { presentVolume: '65 L', finalVolume: '100 L', recipe: { volume: '100 L', portions: [{ name: 'magnesium sulfate', mass: '12.4 g' }, { name: 'boric acid', mass: '0.1 oz' }] } } as const;

  test.each([
    [{ finalVolume: '64 L' }, ['finalVolume']],
    [{ strength: '160 %' }, ['finalVolume']],
    [{ strength: 80 }, ['strength']],
    [{ recipe: { volume: '100 L', portions: [] } }, ['recipe.portions']],
    [{ recipe: { volume: '0 L', portions: refill.recipe.portions } }, ['recipe.volume']],
    [{ recipe: { volume: '100 L', portions: [{ name: 'magnesium sulfate' }] } }, ['recipe.portions[0].mass']],
  ])('refuses %j', (input, paths) => {
    expect(problemsOf(topUpByRecipe.try({ ...refill, ...input }))).toEqual(paths);
  });

  test('writes masses as a scale shows them: in its steps and its unit, and without one in those of the recipe', () => {
    const masses = (input: object) => topUpByRecipe({ ...refill, ...input }).portions.map(({ mass }) => mass.toJSON());
    expect(masses({})).toEqual(['4.34 g', '0.035 oz']);
    expect(masses({ scales: [{ division: '0.5 g' }] })).toEqual(['4.5 g', '1 g']);
  });

  test('multiplies in decimals, where doubles make 2.8699999999999997 g', () => {
    expect(0.35 * 8.2).not.toBe(2.87);
    const [portion] = topUpByRecipe({ ...refill, recipe: { volume: '100 L', portions: [{ name: 'magnesium sulfate', mass: '8.2 g' }] } }).portions;
    expect(portion!.mass.toJSON()).toBe('2.87 g');
  });

  test('has nothing to weigh in where the barrel holds just enough', () => {
    expect(topUpByRecipe({ ...refill, presentVolume: '50 L', strength: 2 }).portions.map(({ mass }) => mass.si)).toEqual([0, 0]);
  });
});

describe('correctFeed', () => {
  const barrel = {
    presentVolume: '100 L', recipe: { volume: '100 L', portions: [{ salt: 'potassium-nitrate', purity: 1, mass: '100 g' }, { salt: 'magnesium-sulfate-heptahydrate', purity: 1, mass: '0.2 g' }] }, scales: [{ division: '0.1 g' }],
  } as const;
  const full = correctFeed({ ...barrel, reading: '1 mS/cm' }).expectedReading.in('mS/cm');

  test.each([
    [{ barrelVolume: '99 L' }, ['barrelVolume']],
    [{ recipe: { volume: '100 L', portions: [{ salt: 'potassium-nitrate', mass: '0 g' }] } }, ['recipe']],
    [{ recipe: { volume: '100 L', portions: [] } }, ['recipe.portions']],
    [{ recipe: { volume: '100 L', portions: [{ salt: 'urea', mass: '100 g' }] } }, ['recipe']],
    [{ recipe: { volume: '1 L', portions: [{ salt: 'potassium-nitrate', mass: '3 kg' }] } }, ['recipe']],
    [{ recipe: { volume: '1 L', portions: [{ salt: 'potassium-nitrate', mass: '200 g' }] } }, ['recipe']],
    [{ recipe: { volume: '100 L', portions: [{ mass: '3 g' }] } }, ['recipe.portions[0]']],
    [{ water: { Ca: '80 mg/L' }, waterAlkalinity: '4 meq/L', reading: '0.1 mS/cm' }, ['reading']],
    [{ reading: '190 mS/cm' }, ['reading']],
    [{ recipe: { volume: '100 L', portions: [{ label: { Fe: '6 %' }, mass: '3 g' }] } }, ['recipe.portions[0].name']],
  ])('refuses %j', (input, paths) => {
    expect(problemsOf(correctFeed.try({ ...barrel, reading: '1.2 mS/cm', ...input }))).toEqual(paths);
  });

  test('leaves a feed alone that meter and model cannot tell from its recipe', () => {
    for (const share of [0.98, 1, 1.02]) {
      const { portions, freshWaterVolume, notes } = correctFeed({ ...barrel, reading: `${share * full} mS/cm` });
      expect([...portions.map(({ mass }) => mass.si), freshWaterVolume.si]).toEqual([0, 0, 0]);
      expect(codes({ notes })).toEqual(['within-uncertainty']);
    }
  });

  test('but not where the meter is good enough to tell', () => {
    const gypsumFree = { ...barrel, reading: `${0.93 * full} mS/cm` } as const;
    expect(codes(correctFeed({ ...gypsumFree, meterAccuracy: '10 %' }))).toContain('within-uncertainty');
    expect(codes(correctFeed({ ...gypsumFree, meterAccuracy: 0 }))).not.toContain('within-uncertainty');
  });

  test('says where the scale is too coarse for a portion', () => {
    const { portions, notes } = correctFeed({ ...barrel, reading: `${0.85 * full} mS/cm` });
    expect(portions.map(({ mass }) => mass.si > 0)).toEqual([true, false]);
    expect(codes({ notes })).toEqual(['scale-too-coarse']);
  });

  test('lets out what a full barrel has no room for, with the caution for it', () => {
    const strong = { ...barrel, reading: `${1.3 * full} mS/cm` } as const;
    const open = correctFeed(strong);
    expect(open.drainVolume.si).toBe(0);
    expect(codes(open)).toEqual([]);
    const tight = correctFeed({ ...strong, barrelVolume: '110 L' });
    expect(tight.finalVolume.in('L')).toBeCloseTo(110, 10);
    expect(tight.drainVolume.si).toBeGreaterThan(0);
    expect(codes(tight)).toEqual(['barrel-too-small', 'discharge']);
    expect(codes(correctFeed({ ...strong, barrelVolume: '200 L' }))).toEqual([]);
  });

  test('of an acid says how to handle it', () => {
    const recipe = { volume: '100 L', portions: [{ salt: 'potassium-nitrate', purity: 1, mass: '100 g' }, { salt: 'nitric-acid', purity: '60 %', mass: '15 g' }] } as const;
    expect(codes(correctFeed({ presentVolume: '50 L', recipe, water: { Ca: '40 mg/L' }, waterAlkalinity: '2 meq/L', reading: '1.5 mS/cm' }))).toContain('acid');
  });
});
