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
    expect(textOf(above, 'limit-passed')).toContain('begins at its limit of 6 mmol/L or above; left alone it rises for ever. Let some');
    const falling = { ...salty, uptakeConcentrations: {}, uptakeFactors: { 'Na+': 0.3 } } as const;
    expect(textOf(ionBuildUp({ ...falling, startingSolution: { ions: { 'Na+': '7 mmol/L' } } }), 'limit-passed')).toContain('it comes to 5 mmol/L in the end. Begin with less of it.');
    expect(ionBuildUp({ ...falling, startingSolution: { ions: { 'Na+': '6 mmol/L' } } })).not.toHaveProperty('firstIon');
    expect(ionBuildUp({ ...salty, startingSolution: { ions: { 'Na+': '6 mmol/L' } } }).firstLimitTime!.si).toBe(0);
  });

  test('of an ion that runs out: the day, and that the feed has to bring more', () => {
    const out = loopRun({ ...salty, freshFeed: { ions: { 'K+': '3 mmol/L' } }, startingSolution: { ions: { 'K+': '4 mmol/L' } }, uptakeConcentrations: { 'K+': '5 mmol/L' }, days: 30 });
    expect(textOf(out, 'ion-runs-out')).toContain('after 20 days');
    const { ionLimits: _, ...potassium } = { ...salty, freshFeed: { ions: { 'K+': '3 mmol/L' } }, startingSolution: { ions: { 'K+': '4 mmol/L' } }, uptakeConcentrations: { 'K+': '5 mmol/L' } } as const;
    expect(textOf(ionBuildUp({ ...potassium, days: 30 }), 'ion-runs-out')).toContain('after 20 days');
    expect(codes(ionBuildUp({ ...potassium, days: 20 }))).toEqual([]);
    expect(out.balanceResidual.si).toBeLessThan(1e-12);
  });

  test('in whose clean water salt runs out is not told to raise it', () => {
    const clean = { ...salty, freshFeed: { ions: { 'K+': '3 mmol/L', 'Cl-': '0.1 mmol/L' } }, uptakeConcentrations: { 'K+': '5 mmol/L', 'Cl-': '0.5 mmol/L' }, days: 30 } as const;
    for (const { notes } of [loopRun(clean), ionBuildUp(clean)]) {
      const told = notes.filter(({ code }) => code === 'ion-runs-out').map(({ severity, text }) => [text.split(' ')[0], severity, text.includes('Raise it')]);
      expect(told).toEqual([['K+', 'caution', true], ['Cl-', 'info', false]]);
    }
  });

  test('that loses drain says how much of the supply, and what is in it', () => {
    const lossy = loopRun({ ...salty, days: 80, caughtShare: '50 %' });
    expect(lossy.dischargeEvents).toEqual([]);
    // Of 1/0.7 given for each litre taken up 0.3 drain, and half of that is lost: 1600 x 0.15/0.7 L; at 1.5 mmol/L of nitrate 342.857 x 1.5 x 14.007 mg.
    expect(textOf(lossy, 'discharged')).toBe('342.9 L, 17.65 % of the supply, is discharged with 7.204 g of nitrogen and 0 g of phosphorus: 342.9 L lost with the drain or let out all the time.');
    expect(textOf(loopRun({ ...salty, days: 80, caughtShare: '50 %', strategy: { dumpInterval: 80 } }), 'discharged')).toMatch(/: let out once, 200 L at a time, and 342\.9 L lost/);
    expect(codes(loopRun({ ...salty, days: 10 }))).not.toContain('discharged');
  });

  test('takes what is stated of an ion in mg/L of the whole ion', () => {
    // Sodium of 22.98977 g/mol and nitrate of 62.004 g/mol.
    const same = { ...salty, uptakeConcentrations: { 'Na+': '20.6908 mg/L', 'NO3-': '93.006 mg/L' }, ionLimits: { 'Na+': '137.9386 mg/L' }, strategy: { dumpLimits: { 'Na+': '137.7087 mg/L' } } } as const;
    const [masses, amounts] = [loopRun(same), loopRun({ ...salty, strategy: { dumpLimits: { 'Na+': '5.99 mmol/L' } } })];
    expect(masses.limitTimes[0]!.ionLimit.in('mmol/L')).toBeCloseTo(6, 4);
    expect(masses.dischargeEvents.map(({ day }) => day)).toEqual(amounts.dischargeEvents.map(({ day }) => day));
    expect(masses.concentrations['NO3-']!.si.at(-1)).toBeCloseTo(1.5, 3);
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

  test('in which plants take half as much of every ion are those of half the uptake, by either kind', () => {
    const run = (half: number, more: object) => loopRun({ ...salty, days: 50, uptakeConcentrations: { 'NO3-': `${1.2 * half} mmol/L` }, uptakeFactors: { 'Na+': 0.4 * half }, ...more });
    const [ratios, halved] = [run(1, { uptakeRatios: { unit: '%', values: Array(50).fill(50) } }), run(0.5, {})];
    for (const ion of ['Na+', 'NO3-'] as const) expect(ratios.concentrations[ion]!.si.at(-1)).toBeCloseTo(halved.concentrations[ion]!.si.at(-1)!, 12);
  });

  test('are above a limit where their evening is', () => {
    // From 7 mmol/L: 0.5 + 6.5 exp(-0.3 t) is 5.3 in the first evening.
    const fast = { ...salty, freshFeed: { ions: { 'Na+': '0.5 mmol/L' } }, startingSolution: { ions: { 'Na+': '7 mmol/L' } }, uptakeConcentrations: {}, uptakeFactors: { 'Na+': 1 }, dailyWaterUse: '60 L', days: 10 } as const;
    expect([loopRun(fast).daysAboveLimit, loopRun({ ...fast, ionLimits: { 'Na+': '5 mmol/L' } }).daysAboveLimit]).toEqual([0, 1]);
  });

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
    expect(textOf(never, 'limit-passed')).toContain('It takes 11.8 % of the supply let out all the time, or all of the loop every 42 days.');
    for (const strategy of [{ dischargeShare: '11.8 %' }, { dumpInterval: 42 }] as const) expect(loopRun({ ...salty, dailyWaterUse: '35 L', strategy }).daysAboveLimit).toBe(0);
    expect(loopRun({ ...salty, dailyWaterUse: '35 L', strategy: { dumpInterval: 43 } }).daysAboveLimit).toBeGreaterThan(0);
  });

  test.each([{ dumpLimits: { 'Na+': '1 mmol/L' } }, { dumpConductivity: '0.1 mS/cm' }] as const)('%j lets a strong refill out day by day, and is told so', (strategy) => {
    const run = loopRun({ ...salty, days: 10, strategy });
    expect(run.dischargeEvents.length).toBe(10);
    expect(codes(run)).toContain('dump-does-not-help');
  });

  test('says how often and how much it lets out, and what is in it', () => {
    const run = loopRun({ ...salty, freshFeed: { ions: { 'Na+': '1.5 mmol/L', 'H2PO4-': '1.3 mmol/L', 'HPO4 2-': '0.1 mmol/L' } }, strategy: { dumpInterval: 100, dumpShare: '40 %' } });
    // 240 L beside the 7300 L that are taken up.
    expect(textOf(run, 'discharged')).toMatch(/^240 L, 3\.183 % of the supply, is discharged with 0 g of nitrogen and .*: let out 3 times, 80 L at a time\.$/);
    expect(run.phosphorusMass.in('g')).toBeCloseTo(run.dischargeEvents.reduce((sum, { phosphorusMass }) => sum + phosphorusMass.in('g'), 0), 9);
    expect(run.dischargeEvents[0]!.dischargedVolume.in('L')).toBeCloseTo(80, 12);
    expect(Object.keys(run.dischargeEvents[0]!.nutrients).sort()).toEqual(['Na', 'P']);
  });

  test('by an ion that is not there is told that it never lets out, as a limit of one', () => {
    const absent = loopRun({ ...salty, days: 30, ionLimits: { 'Na+': '6 mmol/L', 'Mg2+': '3 mmol/L' }, strategy: { dumpLimits: { 'K+': '8 mmol/L', 'Na+': '6 mmol/L' } } });
    expect(textOf(absent, 'dump-limit-of-nothing')).toContain('by its K+, which');
    expect(textOf(absent, 'limit-of-nothing')).toContain('of Mg2+, which');
    const side = compareLoopStrategies({ ...salty, days: 30, strategies: [{ name: 'never' }, { name: 'at potassium', dumpLimits: { 'K+': '8 mmol/L' } }] });
    expect(side.notes.find(({ code }) => code === 'dump-limit-of-nothing')!.field).toBe('strategies[1].dumpLimits');
  });

  test('is judged by nothing where no ion of the loop has a limit, and that is said', () => {
    const strategies = [{ name: 'never' }, { name: 'every month', dumpInterval: 30 }] as const;
    const { ionLimits: _, ...unlimited } = salty;
    expect(textOf(compareLoopStrategies({ ...unlimited, strategies }), 'no-limits')).toContain("'never'");
    expect(codes(compareLoopStrategies({ ...unlimited, ionLimits: { 'K+': '5 mmol/L' }, strategies }))).toContain('no-limits');
    const judged = compareLoopStrategies({ ...salty, strategies });
    expect([codes(judged).includes('no-limits'), judged.leastNitrogenStrategy]).toEqual([false, 'every month']);
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
    // What nobody takes up and nobody holds may come to its limit: 0.1 x 8 mmol/L goes with a tenth of the supply.
    const untaken = (chloride: '0.79 mmol/L' | '0.81 mmol/L') => refillRecipe({ sourceWater: { ions: { 'Cl-': chloride } }, uptakeConcentrations: { 'K+': '3 mmol/L' }, heldSolution: { ions: { 'K+': '3 mmol/L' } }, ionLimits: { 'Cl-': '8 mmol/L' }, dischargeShare: '10 %' });
    expect([untaken('0.79 mmol/L').surplusIons.length, untaken('0.81 mmol/L').surplusIons.length]).toEqual([0, 1]);
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
    const thirds = { ...blend, drain: { ions: { 'K+': '3 mmol/L' } }, targetFeed: { ions: { 'K+': '2 mmol/L' } } } as const;
    const [, most] = /no more than (\S+) % drain/.exec(textOf(drainBlend({ ...thirds, drainInBlend: '90 %' }), 'too-much-in-blend'))!;
    expect(codes(drainBlend({ ...thirds, drainInBlend: `${Number(most)} %` }))).not.toContain('too-much-in-blend');
    const salt = drainBlend({ ...blend, drain: { ions: { 'Na+': '5 mmol/L' } }, drainInBlend: '50 %', ionLimits: { 'Na+': '0.5 mmol/L' } });
    expect(salt).not.toHaveProperty('largestDrainInBlend');
    expect(textOf(salt, 'limit-passed')).toContain('every share');
  });

  test('in which acid is left holds no bicarbonate', () => {
    const sour = drainBlend({ ...blend, sourceWater: { ions: { 'H+': '1 mmol/L' } }, drainInBlend: '10 %' });
    expect([sour.nutrients.HCO3!.si, codes(sour)]).toEqual([0, ['acid-left']]);
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

  test('counts what the plants take at the limit by a factor, and is called much above 30 % of the supply', () => {
    // (1.6 - 0.1 x 6)/(6 - 1.6) for each litre taken up, 1/5.4 of the supply.
    const some = dischargeNeeded({ sourceWater: { ions: { 'Na+': '1.6 mmol/L' } }, uptakeFactors: { 'Na+': 0.1 }, ionLimits: { 'Na+': '6 mmol/L' } });
    expect(some.dischargeShare!.si).toBeCloseTo(1 / 5.4, 12);
    expect(codes(some)).not.toContain('much-discharge');
    // Nothing taken up: 2.6/8 of the supply.
    expect(codes(dischargeNeeded({ sourceWater: { ions: { 'Na+': '2.6 mmol/L' } }, ionLimits: { 'Na+': '8 mmol/L' } }))).toContain('much-discharge');
  });
});

describe('a discharge', () => {
  test('carries the caution, and says how far it is above drinking water only where it is', () => {
    expect(codes(nutrientDischarge({ dischargedVolume: '10 L', ions: { 'NO3-': '10 mmol/L' } }))).toEqual(['nitrate-above-limit', 'discharge']);
    const clean = nutrientDischarge({ dischargedVolume: '10 L', ions: { 'NO3-': '0.1 mmol/L' } });
    expect([codes(clean), clean.dilutionToNitrateLimit]).toEqual([['discharge'], 1]);
    // 0.75 mmol/L is 46.5 mg/L of nitrate, within one limit, and 10.5 mg/L of nitrogen, above the other.
    expect(textOf(nutrientDischarge({ dischargedVolume: '10 L', ions: { 'NO3-': '0.75 mmol/L' } }), 'nitrate-above-limit')).toContain('1.051 times');
  });

  test('is told in mg/L of nitrate, the whole ion', () => {
    const well = nutrientDischarge({ dischargedVolume: '100 L', ions: { 'NO3-': '50 mg/L' } });
    expect([well.nitrate.in('mg/L'), well.timesNitrateLimit]).toEqual([expect.closeTo(50, 9), expect.closeTo(1, 9)]);
    // 14.007/62.004 of it is nitrogen.
    expect(well.nitrogenMass.in('g')).toBeCloseTo(5 * 14.007 / 62.004, 9);
    expect(refusal(() => nutrientDischarge({ dischargedVolume: '100 L', ions: { NO3: '50 mg/L' } } as never))).toContain("did you mean 'NO3-'?");
  });

  test('is spread over the land that can use its nitrogen', () => {
    // 21.0105 g at 4 g/m².
    expect(nutrientDischarge({ dischargedVolume: '100 L', ions: { 'NO3-': '15 mmol/L' }, nitrogenRate: '40 kg/ha' }).landArea!.in('m²')).toBeCloseTo(5.252625, 9);
  });

  test('counts nitrogen of every kind but that of chelates', () => {
    const mixed = nutrientDischarge({ dischargedVolume: '1 m³', ions: { 'NO3-': '1 mmol/L', 'NH4+': '1 mmol/L', 'NO2-': '1 mmol/L', 'CO(NH2)2': '1 mmol/L', 'FeEDTA-': '1 mmol/L' } });
    expect(mixed.nitrogenMass.in('g')).toBeCloseTo(5 * 14.007, 9);
  });
});
