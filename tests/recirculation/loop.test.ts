/** What the calculations of a loop say beside their numbers, and what they refuse. */
import { describe, expect, test } from 'vitest';
import { InputError } from '../../src/calculation/problem.js';
import { compareLoopStrategies, cropUptakes, dischargeNeeded, drainBlend, ionBuildUp, loopRun, nutrientDischarge, refillRecipe } from '../../src/recirculation/index.js';

const salty = {
  loopVolume: '200 L', dailyWaterUse: '20 L',
  freshFeed: { ions: { 'Na+': '1.5 mmol/L', 'NO3-': '1.5 mmol/L' } },
  uptakeConcentrations: { 'Na+': '0.9 mmol/L', 'NO3-': '1.5 mmol/L' },
  ionLimits: { 'Na+': '6 mmol/L' },
} as const;
const codes = ({ notes }: { readonly notes: readonly { readonly code: string }[] }): string[] => notes.map(({ code }) => code);
const textOf = ({ notes }: { readonly notes: readonly { readonly code: string; readonly text: string }[] }, code: string): string => notes.find((note) => note.code === code)!.text;
/** Paths, needs and hints of what is refused. */
function refusal(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
  throw new Error('was accepted');
}

describe('a loop', () => {
  test('takes from the source water what the feed does not name, and only that', () => {
    const { concentrations } = ionBuildUp({ ...salty, sourceWater: { ions: { 'Na+': '0.4 mmol/L', 'Cl-': '0.7 mmol/L', 'HCO3-': '3 mmol/L' } } });
    expect(concentrations['Na+']!.at(0)!.in('mmol/L')).toBe(1.5);
    expect(concentrations['Cl-']!.at(0)!.in('mmol/L')).toBe(0.7);
    expect(concentrations).not.toHaveProperty('HCO3-');
  });

  test('says that the feed cannot hold less than its water', () => {
    expect(textOf(ionBuildUp({ ...salty, sourceWater: { nutrients: { Na: '60 mg/L' } } }), 'feed-below-water')).toContain('holds more Na+');
  });

  test('names the ions whose uptake nobody stated, and uptake of what nothing brings', () => {
    const loop = ionBuildUp({ ...salty, freshFeed: { ions: { 'K+': '3 mmol/L', 'Cl-': '3 mmol/L' } }, uptakeConcentrations: { 'K+': '3 mmol/L', 'Mg2+': '1 mmol/L' } });
    expect(textOf(loop, 'no-uptake-stated')).toContain('Cl-');
    expect(textOf(loop, 'uptake-of-nothing')).toContain('Mg2+');
  });

  test('takes the figures of a crop where none are stated, and says so', () => {
    const { uptakeConcentrations: _, ionLimits: __, ...bare } = salty;
    const loop = ionBuildUp({ ...bare, crop: 'cucumber' });
    expect(codes(loop)).toContain('uptake-by-crop');
    // (1.5 - 1.2) 20/200 a day up to 8.
    expect(loop.firstLimitTime!.in('d')).toBeCloseTo((8 - 1.5) / 0.03, 6);
    // A factor stands in for the figure of the crop and does not add to it.
    expect(ionBuildUp({ ...bare, crop: 'cucumber', uptakeFactors: { 'Na+': 0.5 } }).steadyStates['Na+']!.in('mmol/L')).toBeCloseTo(3, 12);
    expect(() => cropUptakes('rose', 'sonneveld-voogt-2009')).toThrow(RangeError);
  });

  test('never passes a limit above its ceiling, and is past one that it starts above', () => {
    const level = ionBuildUp({ ...salty, uptakeConcentrations: {}, uptakeFactors: { 'Na+': 0.3 } });
    for (const absent of ['firstIon', 'firstLimitTime', 'limitTimes[0].timeUntilLimit', 'limitTimes[0].waterUntilLimit']) expect(level).not.toHaveProperty(absent);
    const above = ionBuildUp({ ...salty, startingSolution: { ions: { 'Na+': '7 mmol/L' } } });
    expect(above.firstLimitTime!.si).toBe(0);
  });

  test('of an ion that runs out: the day, and that the feed has to bring more', () => {
    const out = loopRun({ ...salty, freshFeed: { ions: { 'K+': '3 mmol/L' } }, startingSolution: { ions: { 'K+': '4 mmol/L' } }, uptakeConcentrations: { 'K+': '5 mmol/L' }, days: 30 });
    expect(textOf(out, 'ion-runs-out')).toContain('after 20 days');
    expect(out.balanceResidual.si).toBeLessThan(1e-12);
  });

  test('that would come to crystals is refused', () => {
    const message = refusal(() => ionBuildUp({ ...salty, loopVolume: '1 L', dailyWaterUse: '500 L', days: 365 }));
    expect(message).toContain('loopVolume');
    expect(message).toContain('mol/L');
    expect(refusal(() => loopRun({ ...salty, loopVolume: '1 L', dailyWaterUse: '500 L' }))).toContain('loopVolume');
  });

  test('told of an element is asked for the ion', () => {
    expect(refusal(() => ionBuildUp({ ...salty, ionLimits: { Na: '6 mmol/L' } } as never))).toContain("ionLimits.Na: a known name is needed, not an unknown name (did you mean 'Na+'?)");
    expect(refusal(() => ionBuildUp({ ...salty, uptakeFactors: { 'n-no3': 1 } } as never))).toContain("did you mean 'NO3-'?");
  });

  test.each(['0 L', '-1 L'])('of %s is refused', (loopVolume) => {
    expect(ionBuildUp.try({ ...salty, loopVolume }).ok).toBe(false);
  });

  test('of which all drains is refused', () => {
    expect(refusal(() => ionBuildUp({ ...salty, drainShare: '100 %' }))).toContain('drainShare: a share from 0 % to 90 %');
  });
});

describe('the days of a run', () => {
  const { dailyWaterUse: _, ...daily } = salty;

  test('are as many as the column has, a year where there is none', () => {
    expect(loopRun({ ...daily, dailyWaterUses: { unit: 'L', values: [10, 20, 0, 5] } }).times.length).toBe(5);
    expect(loopRun(salty).times.length).toBe(366);
  });

  test.each([
    [{}, 'exactly one of dailyWaterUse, dailyWaterUses'],
    [{ dailyWaterUse: '20 L', dailyWaterUses: { unit: 'L', values: [10] } }, 'exactly one of dailyWaterUse, dailyWaterUses'],
    [{ dailyWaterUses: { unit: 'L', values: [10, null, 12] } }, 'none for day 2'],
    [{ dailyWaterUses: { unit: 'L', values: [10, 12] }, days: 3 }, '3 values, one for each day'],
    [{ dailyWaterUses: { unit: 'L', values: [10, 12] }, uptakeRatios: { unit: '%', values: [100] } }, '2 values, one for each day'],
    [{ dailyWaterUses: { unit: 'L', values: [] } }, '1 to 3650 days'],
  ] as const)('%j is refused', (given, what) => {
    expect(refusal(() => loopRun({ ...daily, ...given }))).toContain(what);
  });
});

describe('a strategy', () => {
  test('that lets the loop out at the limit is told the rise of a day to spare', () => {
    const late = loopRun({ ...salty, dailyWaterUse: '35 L', strategy: { dumpLimits: { 'Na+': '6 mmol/L' } } });
    // It rises by 0.6 x 35/200 = 0.105 mmol/L a day.
    expect(textOf(late, 'limit-passed')).toContain('let the loop out from 5.895 mmol/L on');
    const early = loopRun({ ...salty, dailyWaterUse: '35 L', strategy: { dumpLimits: { 'Na+': '5.895 mmol/L' } } });
    expect(early.daysAboveLimit).toBe(0);
  });

  test('never told is given two that keep the limit, and both do', () => {
    const never = loopRun({ ...salty, dailyWaterUse: '35 L' });
    // From 1.5 to 6 mmol/L by 0.105 a day; (1.5 - 0.9)/(6 - 1.5) for each litre taken up.
    expect(textOf(never, 'limit-passed')).toContain('It takes 11.76 % of the supply let out all the time, or all of the loop every 42 days.');
    for (const strategy of [{ dischargeShare: 0.6 / 5.1 }, { dumpInterval: 42 }]) expect(loopRun({ ...salty, dailyWaterUse: '35 L', strategy }).daysAboveLimit).toBe(0);
    expect(loopRun({ ...salty, dailyWaterUse: '35 L', strategy: { dumpInterval: 43 } }).daysAboveLimit).toBeGreaterThan(0);
  });

  test.each([{ dumpLimits: { 'Na+': '1 mmol/L' } }, { dumpConductivity: '0.1 mS/cm' }] as const)('%j lets a strong refill out day by day, and is told so', (strategy) => {
    const run = loopRun({ ...salty, days: 10, strategy });
    expect(run.dischargeEvents.length).toBe(10);
    expect(codes(run)).toContain('dump-does-not-help');
  });

  test('of the same name as another is refused; where none is good enough that is said', () => {
    expect(refusal(() => compareLoopStrategies({ ...salty, strategies: [{ name: 'a' }, { name: 'a', dumpInterval: 3 }] }))).toContain('strategies[1].name');
    expect(textOf(compareLoopStrategies({ ...salty, strategies: [{ name: 'never' }] }), 'limit-passed')).toContain("'never'");
  });
});

describe('a refill recipe', () => {
  test('asks for what it cannot know', () => {
    expect(refusal(() => refillRecipe({ sourceWater: { ions: {} } }))).toContain('what the plants take up');
    expect(refusal(() => refillRecipe({ sourceWater: { ions: {} }, uptakeFactors: { 'Na+': 0.2 } }))).toContain('the concentration of Na+');
  });

  test('names what the water brings too much of, and that letting out does not help against its own limit', () => {
    const hard = refillRecipe({ sourceWater: { ions: { 'Na+': '9 mmol/L' } }, uptakeConcentrations: { 'Na+': '0.9 mmol/L' }, ionLimits: { 'Na+': '8 mmol/L' } });
    expect(hard.surplusIons[0]).not.toHaveProperty('dischargeShare');
    expect(textOf(hard, 'surplus-in-water')).toContain('No letting out helps');
  });

  test('takes salt that is let out at its limit as held', () => {
    // 10 % of the supply: (0.9 + 8/9)/(10/9) = 1.61 mmol/L may come in.
    const bled = refillRecipe({ sourceWater: { ions: { 'Na+': '1.6 mmol/L' } }, uptakeConcentrations: { 'Na+': '0.9 mmol/L' }, heldSolution: { ions: { 'Na+': '8 mmol/L' } }, dischargeShare: '10 %' });
    expect(bled.surplusIons).toEqual([]);
  });
});

describe('a blend of drain', () => {
  const blend = { drain: { ions: { 'K+': '8 mmol/L' } }, sourceWater: { ions: { 'Na+': '1 mmol/L' } }, drainConductivity: '3 mS/cm', freshConductivity: '0.5 mS/cm' } as const;

  test('is all water or all drain where the target lies outside, with a note', () => {
    const none = drainBlend({ ...blend, targetConductivity: '0.4 mS/cm' });
    expect([none.drainInBlend.si, codes(none)]).toEqual([0, ['water-above-target']]);
    const all = drainBlend({ ...blend, targetConductivity: '4 mS/cm' });
    expect([all.drainInBlend.si, codes(all)]).toEqual([1, ['drain-below-target']]);
  });

  test('of a drain no stronger than the water is refused where a conductivity is wanted', () => {
    expect(refusal(() => drainBlend({ ...blend, drainConductivity: '0.5 mS/cm', targetConductivity: '0.5 mS/cm' }))).toContain('drainConductivity');
    expect(drainBlend({ ...blend, drainConductivity: '0.5 mS/cm', drainInBlend: '20 %' }).drainInBlend.si).toBe(0.2);
    expect(refusal(() => drainBlend(blend))).toContain('exactly one of targetConductivity, drainInBlend');
  });

  test('that holds too much is told how much drain would do, or that none would', () => {
    const rich = drainBlend({ ...blend, drainInBlend: '50 %', targetFeed: { ions: { 'K+': '2 mmol/L' } } });
    expect(textOf(rich, 'too-much-in-blend')).toContain('no more than 25 % drain');
    const salt = drainBlend({ ...blend, drain: { ions: { 'Na+': '5 mmol/L' } }, drainInBlend: '50 %', ionLimits: { 'Na+': '0.5 mmol/L' } });
    expect(salt).not.toHaveProperty('largestDrainInBlend');
    expect(textOf(salt, 'limit-passed')).toContain('every share');
  });

  test('counts acid against bicarbonate as a cation to be added', () => {
    const { chargeBalance } = drainBlend({ drain: { ions: { 'K+': '2 mmol/L' } }, sourceWater: { ions: { 'Ca2+': '1 mmol/L', 'HCO3-': '2 mmol/L' } }, drainInBlend: 0, targetFeed: { ions: { 'Ca2+': '1 mmol/L', 'NO3-': '1.5 mmol/L', 'HCO3-': '0.5 mmol/L' } } });
    expect([chargeBalance.cations.in('meq/L'), chargeBalance.anions.in('meq/L')]).toEqual([1.5, 1.5]);
  });
});

describe('what has to be let out', () => {
  test('needs a limit, and says where nothing helps', () => {
    expect(refusal(() => dischargeNeeded({ sourceWater: { ions: { 'Na+': '1 mmol/L' } } }))).toContain('ionLimits');
    const hard = dischargeNeeded({ sourceWater: { ions: { 'Na+': '9 mmol/L', 'Cl-': '2 mmol/L' } }, ionLimits: { 'Na+': '8 mmol/L', 'Cl-': '8 mmol/L' }, dailyWaterUse: '10 L' });
    expect(codes(hard)).toContain('discharge-impossible');
    for (const absent of ['dischargeShare', 'dischargePerUptake', 'dailyDischarge']) expect(hard).not.toHaveProperty(absent);
    expect(hard.decidingIon).toBe('Na+');
  });
});

describe('a discharge', () => {
  test('carries the caution, and says how far it is above drinking water only where it is', () => {
    expect(codes(nutrientDischarge({ dischargedVolume: '10 L', ions: { 'NO3-': '10 mmol/L' } }))).toEqual(['nitrate-above-limit', 'discharge']);
    const clean = nutrientDischarge({ dischargedVolume: '10 L', ions: { 'NO3-': '0.1 mmol/L' } });
    expect([codes(clean), clean.dilutionToNitrateLimit]).toEqual([['discharge'], 1]);
  });

  test('counts nitrogen of every kind but that of chelates', () => {
    const mixed = nutrientDischarge({ dischargedVolume: '1 m³', ions: { 'NO3-': '1 mmol/L', 'NH4+': '1 mmol/L', 'NO2-': '1 mmol/L', 'CO(NH2)2': '1 mmol/L', 'FeEDTA-': '1 mmol/L' } });
    expect(mixed.nitrogenMass.in('g')).toBeCloseTo(5 * 14.007, 9);
  });
});
