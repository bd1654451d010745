import { describe, expect, test } from 'vitest';
import { drainCheck, drainStrength, salinityYield, soilLeaching, substrateLeaching, substrates, substrateByWeight, substrateWater, waterGiven } from '../../src/dosing/index.js';

const codes = ({ notes }: { readonly notes: readonly { readonly code: string; readonly severity: string }[] }): readonly string[] => notes.filter(({ code }) => code !== 'discharge').map(({ code, severity }) => `${severity} ${code}`);

describe('substrate leaching', () => {
  const feed = { feedConductivity: '2 mS/cm', drainConductivity: '3 mS/cm', uptakeConductivity: '1.5 mS/cm' } as const;

  test('without an uptake says that far less may do', () => {
    expect(codes(substrateLeaching(feed))).toEqual([]);
    expect(codes(substrateLeaching({ ...feed, uptakeConductivity: undefined }))).toEqual(['caution no-uptake', 'caution much-drain']);
    // (2 - 1.5)/(drain - 1.5): 41.7 % at 2.7 mS/cm, 38.5 % at 2.8.
    expect(codes(substrateLeaching({ ...feed, drainConductivity: '2.7 mS/cm' }))).toEqual(['caution much-drain']);
    expect(codes(substrateLeaching({ ...feed, drainConductivity: '2.8 mS/cm' }))).toEqual([]);
    expect(codes(drainStrength({ feedConductivity: '2 mS/cm', drainShare: '30 %' }))).toEqual(['caution no-uptake']);
  });

  test.each<[string, object, string]>([
    ['a drain as strong as the feed', { drainConductivity: '2 mS/cm' }, 'drainConductivity'],
    ['a drain weaker than the feed', { drainConductivity: '1.4 mS/cm' }, 'drainConductivity'],
    ['an uptake as strong as the feed', { uptakeConductivity: '2 mS/cm' }, 'uptakeConductivity'],
  ])('%s is refused', (_, changes, path) => {
    expect(substrateLeaching.try({ ...feed, ...changes })).toMatchObject({ ok: false, error: { problems: [{ path }] } });
  });

  test('plants that would take up more salt than they get are refused', () => {
    expect(drainStrength.try({ feedConductivity: '1 mS/cm', drainShare: '10 %', uptakeConductivity: '2 mS/cm' })).toMatchObject({ ok: false, error: { problems: [{ path: 'uptakeConductivity', expected: 'at most 1.111 mS/cm' }] } });
  });

  test('the most that plants are said to take up is taken', () => {
    const feed = { feedConductivity: '1 mS/cm', drainShare: '40 %' } as const;
    expect(drainStrength.try({ ...feed, uptakeConductivity: '2 mS/cm' })).toMatchObject({ ok: false, error: { problems: [{ expected: 'at most 1.666 mS/cm' }] } });
    expect(drainStrength.try({ ...feed, uptakeConductivity: '1.666 mS/cm' }).ok).toBe(true);
  });
});

describe('soil leaching', () => {
  test.each([['5 dS/m', '1 dS/m'], ['7 dS/m', '1 dS/m'], ['2.45 dS/m', '1 dS/m']] as const)('water of %s where the crop stands %s has no answer', (waterConductivity, soilConductivity) => {
    expect(soilLeaching.try({ waterConductivity, soilConductivity })).toMatchObject({ ok: false, error: { problems: [{ path: 'waterConductivity', hint: expect.stringContaining('blend') }] } });
  });

  test.each([['0.8 dS/m', []], ['1.2 dS/m', ['caution unsuitable-water']], ['1.5 dS/m', ['danger unsuitable-water']]] as const)('water of %s on a crop that stands 1 dS/m', (waterConductivity, expected) => {
    expect(codes(soilLeaching({ waterConductivity, soilConductivity: '1 dS/m' }))).toEqual(expected);
  });
});

describe('the drain of a day', () => {
  const day = { appliedVolume: '2 L', drainCaught: '0.5 L', feedConductivity: '1.8 mS/cm', drainConductivity: '2.4 mS/cm' } as const;

  test.each([['2 L'], ['2.1 L']] as const)('of %s from 2 L is refused', (drainCaught) => {
    expect(drainCheck.try({ ...day, drainCaught })).toMatchObject({ ok: false, error: { problems: [{ path: 'drainCaught' }] } });
  });

  test('of one conductivity alone is refused, of none is fine', () => {
    expect(drainCheck.try({ ...day, drainConductivity: undefined })).toMatchObject({ ok: false, error: { problems: [{ path: 'drainConductivity' }] } });
    expect(drainCheck({ ...day, feedConductivity: undefined, drainConductivity: undefined })).not.toHaveProperty('uptakeConductivity');
  });

  test('is judged by light and by salt', () => {
    expect(codes(drainCheck({ ...day, radiationSum: '1200 J/cm²' }))).toEqual([]);
    const dull = drainCheck({ ...day, radiationSum: '300 J/cm²', drainConductivity: '3.4 mS/cm' });
    expect(codes(dull)).toEqual(['info unusual-drain', 'caution salt-builds-up']);
    // Below 500 J/cm² 0 to 10 %, from 500 on 10 to 20 %: 15 % are too much only below.
    const some = (radiationSum: '499 J/cm²' | '500 J/cm²') => codes(drainCheck({ ...day, drainCaught: '0.3 L', radiationSum }));
    expect([some('499 J/cm²'), some('500 J/cm²')]).toEqual([['info unusual-drain'], []]);
    // Above 1500 J/cm² 30 to 40 %.
    const bright = (radiationSum: '1500 J/cm²' | '1501 J/cm²') => codes(drainCheck({ ...day, radiationSum }));
    expect([bright('1500 J/cm²'), bright('1501 J/cm²')]).toEqual([[], ['info unusual-drain']]);
    expect(dull.notes[0]!.text).toContain('1.66 L instead of 2 L would give 10 %');
  });

  test('on the edge of what is usual is usual, whatever doubles make of it', () => {
    // 0.15/1.5 comes out below 0.1, and 4.5 - 3.0 mS/cm above 1.5 in S/m.
    expect(codes(drainCheck({ appliedVolume: '1.5 L', drainCaught: '0.15 L', feedConductivity: '3 mS/cm', drainConductivity: '4.5 mS/cm', radiationSum: '700 J/cm²' }))).toEqual([]);
    // 10.4 % are 10 %, 10.6 % are 11 %, where 0 to 10 % are usual.
    const dull = (drainCaught: '0.208 L' | '0.212 L') => codes(drainCheck({ ...day, drainCaught, radiationSum: '300 J/cm²' }));
    expect([dull('0.208 L'), dull('0.212 L')]).toEqual([[], ['info unusual-drain']]);
    expect(codes(drainCheck({ ...day, feedConductivity: '3 mS/cm', drainConductivity: '4.51 mS/cm' }))).toEqual(['caution salt-builds-up']);
  });

  test('that washes salt out says nothing of uptake', () => {
    const washed = drainCheck({ ...day, drainCaught: '1.5 L', drainConductivity: '3 mS/cm' });
    expect(washed).not.toHaveProperty('uptakeConductivity');
    expect(washed).not.toHaveProperty('saltTakenShare');
    expect(codes(washed)).toContain('info salt-washed-out');
  });

  test('that is weaker than the feed asks for a stronger one', () => {
    expect(codes(drainCheck({ ...day, drainConductivity: '1.7 mS/cm' }))).toEqual(['info weak-drain']);
    expect(codes(drainCheck({ ...day, drainConductivity: '1.8 mS/cm' }))).toEqual([]);
  });
});

describe('salt and yield', () => {
  test('below the threshold costs nothing, far above it leaves nothing, and beyond half the line is a guess', () => {
    expect(salinityYield({ crop: 'strawberry', soilConductivity: '1 dS/m' }).lowestYieldShare.si).toBe(1);
    const far = salinityYield({ crop: 'strawberry', soilConductivity: '8 dS/m' });
    expect(far.lowestYieldShare.si).toBe(0);
    expect(codes(far)).toEqual(['caution outside-range']);
    expect(codes(salinityYield({ crop: 'strawberry', soilConductivity: '2.5 dS/m' }))).toEqual([]);
    expect(codes(salinityYield({ crop: 'strawberry', soilConductivity: '2.6 dS/m' }))).toEqual(['caution outside-range']);
  });

  test('needs a crop or both figures, and own figures go first', () => {
    expect(salinityYield.try({ soilConductivity: '2 dS/m', salinityThreshold: '1 dS/m' })).toMatchObject({ ok: false, error: { problems: [{ path: 'salinityLoss' }] } });
    expect(salinityYield({ crop: 'strawberry', soilConductivity: '2 dS/m', salinityThreshold: '2 dS/m' }).lowestYieldShare.si).toBe(1);
  });
});

describe('substrates', () => {
  /** What the studies that the table stands on found, % of the volume. */
  const found = {
    coir: { pores: [92, 100], water: [50, 81], easy: [18, 35], air: [11, 53] },
    'stone wool': { pores: [95, 95], water: [80, 80], easy: [0, 100], air: [9, 15] },
    peat: { pores: [90, 96], water: [60, 86], easy: [20, 35], air: [10, 30] },
    perlite: { pores: [85, 95], water: [35, 70], easy: [5, 20], air: [25, 50] },
  } as const;

  test.each(Object.keys(found) as (keyof typeof found)[])('%s lies within what is known of it', (name) => {
    const row: { readonly pores: number; readonly water: number; readonly easy?: number } = substrates[name];
    const share = { ...row, air: row.pores - row.water };
    for (const [what, [low, high]] of Object.entries(found[name])) {
      const value = share[what as keyof typeof share];
      if (value === undefined) continue;
      expect(value * 100, what).toBeGreaterThanOrEqual(low - 1e-9);
      expect(value * 100, what).toBeLessThanOrEqual(high + 1e-9);
    }
  });

  test('of which nothing is known, or that cannot be, are refused', () => {
    expect(substrateWater.try({ substrateVolume: '10 L' })).toMatchObject({ ok: false, error: { problems: [{ path: 'waterHoldingShare' }] } });
    expect(substrateWater.try({ substrateVolume: '10 L', waterHoldingShare: '60 %', easilyAvailableShare: '70 %' })).toMatchObject({ ok: false, error: { problems: [{ path: 'easilyAvailableShare' }] } });
    expect(substrateWater.try({ substrateVolume: '10 L', waterHoldingShare: '60 %', poreShare: '50 %' })).toMatchObject({ ok: false, error: { problems: [{ path: 'poreShare' }] } });
    expect(substrateWater.try({ substrateVolume: '0 L', substrate: 'coir' })).toMatchObject({ ok: false, error: { problems: [{ path: 'substrateVolume' }] } });
  });

  test('say where their figures are from, and what a night or a shot is', () => {
    const own = { substrateVolume: '10 L', waterHoldingShare: '60 %', easilyAvailableShare: '5 %' } as const;
    expect(codes(substrateWater({ ...own, shotVolume: '0.6 L', nightUse: '1 L' }))).toEqual(['caution shot-too-large', 'caution dry-night']);
    expect(codes(substrateWater({ ...own, nightUse: '0.2 L' }))).toEqual(['info wet-night']);
    expect(codes(substrateWater({ ...own, nightUse: '0.5 L' }))).toEqual([]);
    expect(codes(substrateWater({ substrateVolume: '10 L', substrate: 'coir' }))).toEqual(['info table-figures']);
    expect(codes(substrateWater({ substrateVolume: '10 L', substrate: 'stone wool', waterHoldingShare: '78 %' }))).toEqual([]);
    expect(codes(substrateWater({ substrateVolume: '10 L', substrate: 'coir', waterHoldingShare: '60 %' }))).toEqual(['info table-figures']);
    expect(codes(substrateWater({ ...own, poreShare: '65 %' }))).toEqual(['caution little-air']);
    const beyond = substrateWater({ substrateVolume: '12 L', substrate: 'coir', waterHoldingShare: '96 %' });
    expect(beyond).not.toHaveProperty('airShare');
    expect(codes(beyond)).toEqual(['info table-figures', 'caution more-than-pores']);
    expect(codes(substrateWater({ substrateVolume: '12 L', substrate: 'coir', waterHoldingShare: '93 %' }))).toEqual(['info table-figures', 'caution little-air']);
    expect(codes(substrateWater({ substrateVolume: '12 L', substrate: 'stone wool', shotVolume: '9 L' }))).toContain('info unusual-shot');
    expect(substrateWater({ substrateVolume: '10 L', substrate: 'stone wool' })).not.toHaveProperty('easilyAvailableWater');
  });

  test.each<[string, object, string]>([
    ['drained lighter than dry', { drainedMass: '0.8 kg' }, 'drainedMass'],
    ['more water than volume', { drainedMass: '12 kg' }, 'drainedMass'],
    ['lighter now than dry', { presentMass: '0.5 kg' }, 'presentMass'],
    ['with more water now than volume', { presentMass: '12 kg' }, 'presentMass'],
  ])('weighed %s are refused', (_, changes, path) => {
    expect(substrateByWeight.try({ ...substrateByWeight.example, ...changes })).toMatchObject({ ok: false, error: { problems: [{ path }] } });
  });
});

test('a run that is over before the lines are full is refused', () => {
  expect(waterGiven.try({ runTime: '1 min', dripperFlow: '2 L/h', shotsPerDay: 4, fillTime: '15 s' })).toMatchObject({ ok: false, error: { problems: [{ path: 'runTime', expected: 'more than the 1 min in which the lines fill', received: '1 min', hint: 'fewer shots, each of them longer' }] } });
});
