import { describe, expect, test } from 'vitest';
import { barrelPlan, irrigationDay } from '../../src/dosing/index.js';

const codes = ({ notes }: { readonly notes: readonly { readonly code: string; readonly severity: string }[] }): readonly string[] => notes.filter(({ code }) => !['discharge', 'backflow', 'first-drain', 'unusual-drain', 'less-than-uptake', 'unusual-shot'].includes(code)).map(({ code, severity }) => `${severity} ${code}`);

describe('a day of irrigation', () => {
  const bag = { plantDensity: 2, substrateVolume: '10 L', waterHoldingShare: '60 %', easilyAvailableShare: '20 %', shotVolume: '300 mL', dripperFlow: '2 L/h' } as const;
  const light = { readingTime: { unit: 'h', values: [0, 6, 12, 18, 24] }, globalRadiation: { unit: 'W/m²', values: [0, 0, 700, 0, 0] } } as const;
  const by = { radiationStep: '150 J/cm²', latestShot: '16 h' } as const;
  const day = { ...bag, dayReadings: light, waterPerRadiation: '2 mL·cm²/(J·m²)', shotPlan: by } as const;

  test('that goes well has nothing to say', () => {
    expect(codes(irrigationDay(day))).toEqual([]);
  });

  test('starts by light outside, but within the hours set', () => {
    const shots = irrigationDay({ ...day, shotPlan: { ...by, earliestShot: '11 h' } }).shots.map(({ shotTime }) => shotTime.in('h'));
    expect(shots[0]).toBe(11);
    expect(Math.max(...shots)).toBeLessThanOrEqual(16);
  });

  test('waits between shots, and does not wait too long', () => {
    const at = (changes: object): readonly number[] => {
      const attempt = irrigationDay.try({ ...day, shotPlan: { ...by, ...changes } });
      if (!attempt.ok) throw attempt.error;
      return attempt.value.shots.map(({ shotTime }) => shotTime.in('h'));
    };
    const pauses = (times: readonly number[]): readonly number[] => times.slice(1).map((time, i) => time - times[i]!);
    expect(Math.min(...pauses(at({ shortestPause: '1.5 h' })))).toBeGreaterThanOrEqual(1.5 - 1e-12);
    expect(Math.max(...pauses(at({ longestPause: '40 min' })))).toBeLessThanOrEqual(40 / 60 + 1e-12);
  });

  test('of no shot, of dryness, of late and of crowded shots says so', () => {
    expect(codes(irrigationDay({ ...day, shotPlan: { radiationStep: '5000 J/cm²' } }))).toEqual(['danger no-shot']);
    expect(codes(irrigationDay({ ...day, substrateVolume: '1 L', shotPlan: { radiationStep: '5000 J/cm²' } }))).toEqual(['danger no-shot', 'danger dried-out']);
    expect(codes(irrigationDay({ ...day, easilyAvailableShare: '1 %' }))).toEqual(['caution below-easily-available']);
    expect(codes(irrigationDay({ ...day, shotPlan: { shotTimes: { unit: 'h', values: [8, 10, 12, 14, 17.5] } } }))).toEqual(['caution late-shot']);
    expect(codes(irrigationDay({ ...day, shotPlan: { shotTimes: { unit: 'h', values: [8, 8.1, 12, 15] } } }))).toEqual(['caution shots-too-close']);
    expect(codes(irrigationDay({ ...day, waterPerRadiation: undefined }))).toEqual(['info rule-of-thumb']);
    expect(irrigationDay({ ...day, waterPerRadiation: undefined }).uptakeVolume).toEqual(irrigationDay({ ...day, waterPerRadiation: '1.7 mL·cm²/(J·m²)' }).uptakeVolume);
    expect(codes(irrigationDay({ ...day, shotPlan: { shotTimes: { unit: 'h', values: [8, 10, 12, 14, 16.5] } } }))).toEqual([]);
  });

  test('that gives back what was taken up drains nothing, whatever doubles make of it', () => {
    for (const shotVolume of ['100 mL', '210 mL', '300 mL'] as const) {
      const even = irrigationDay({ ...day, shotVolume, dayReadings: { readingTime: light.readingTime, transpirationRate: { unit: 'mm/h', values: [0, 0, 0.7, 0, 0] } }, shotPlan: { uptakeStep: shotVolume } });
      expect(even).not.toHaveProperty('firstDrainShot');
      expect(even.drainPerPlant.si).toBe(0);
    }
  });

  test('tells of a first drain that comes early or late', () => {
    const first = (startingShare: number, shots: number) => irrigationDay({ ...day, startingShare, shotVolume: '200 mL', shotPlan: { shotTimes: { unit: 'h', values: Array.from({ length: shots }, (_, i) => 6 + i / 2) } } });
    const said = (result: ReturnType<typeof first>) => result.notes.some(({ code }) => code === 'first-drain');
    const late = first(0.75, 20);
    expect(late.firstDrainShot).toBeGreaterThan(8);
    expect(said(late)).toBe(true);
    const usual = first(0.9, 20);
    expect(usual.firstDrainShot).toBeGreaterThan(3);
    expect(usual.firstDrainShot).toBeLessThan(9);
    expect(said(usual)).toBe(false);
  });

  test('counts as night what goes before the first shot and after the last', () => {
    // 0.2 mm/h on half a square metre are 0.1 L/h. Shots of 9 min: 8 h before the first, 12 h - 9 min after the start of the last, of 6 L.
    const steady = irrigationDay({ ...day, dayReadings: { readingTime: { unit: 'h', values: [0, 24] }, transpirationRate: { unit: 'mm/h', values: [0.2, 0.2] } }, shotPlan: { shotTimes: { unit: 'h', values: [8, 12] } } });
    expect(steady.nightUseShare!.in('fraction')).toBeCloseTo((0.1 * (8 + 12 - 0.15)) / 6, 12);
  });

  test('that gives less than plants take up, or far more, says by how much', () => {
    const said = (result: ReturnType<typeof irrigationDay>, code: string) => result.notes.find((note) => note.code === code);
    // A triangle of 700 W/m² and 12 h: 1512 J/cm² and 2 mL for each of them and m², on half a square metre: 1.512 L.
    const little = irrigationDay({ ...day, shotVolume: '120 mL' });
    expect(little.appliedVolume.in('L')).toBeLessThan(1.2);
    expect(said(little, 'less-than-uptake')).toMatchObject({ severity: 'caution', text: expect.stringContaining('Plants ask for 1.51 L') });
    const much = irrigationDay({ ...day, shotVolume: '600 mL' });
    expect(said(much, 'unusual-drain')).toMatchObject({ severity: 'caution', text: expect.stringContaining(`Of ${Number(much.appliedVolume.in('L').toPrecision(3))} L that a plant is given ${Number((much.appliedVolume.in('L') - 1.512).toPrecision(3))} L drain`) });
  });

  test.each<[string, object]>([
    ['little', { shotVolume: '120 mL' }],
    ['much', { shotVolume: '600 mL' }],
    ['from a dry bag', { startingShare: 0.5 }],
    ['at fixed times', { shotPlan: { shotTimes: { unit: 'h', values: [8, 10, 12, 14, 16] } } }],
    ['in far too many shots', { shotPlan: { ...by, radiationStep: '15 J/cm²' } }],
  ])('%s is told which shots would do, and they do', (_, changes) => {
    const attempt = (more: object) => {
      const result = irrigationDay.try({ ...day, ...changes, ...more });
      if (!result.ok) throw result.error;
      return result.value;
    };
    const told = (result: ReturnType<typeof attempt>) => result.notes.find(({ code }) => code === 'less-than-uptake' || code === 'unusual-drain');
    const [, shotVolume, lasting, today] = /Shots of ([\d.]+) mL, .* drain ([\d.]+) % day after day(?:, and ([\d.]+) % of this one)?/.exec(told(attempt({}))!.text)!;
    const better = attempt({ shotVolume: `${shotVolume!} mL` });
    expect(better.drainShare!.in('%')).toBeCloseTo(Number(today ?? lasting), 0);
    expect(1 - 1.512 / better.appliedVolume.in('L')).toBeCloseTo(Number(lasting) / 100, 2);
    // More than 1500 J/cm²: 30 to 40 % are usual.
    expect(1 - 1.512 / better.appliedVolume.in('L')).toBeGreaterThanOrEqual(0.3);
    expect(1 - 1.512 / better.appliedVolume.in('L')).toBeLessThanOrEqual(0.4);
    expect(told(better)).toBeUndefined();
  });

  test('too dry at its beginning, before a shot or after the last is told what keeps it from that, and that does', () => {
    const dry = { ...day, easilyAvailableShare: '4.5 %' } as const;
    const at = (values: readonly number[], changes = {}) => {
      const result = irrigationDay.try({ ...dry, shotPlan: { shotTimes: { unit: 'h', values } }, ...changes });
      if (!result.ok) throw result.error;
      return result.value.notes.find(({ code }) => code === 'below-easily-available')?.text;
    };
    // Holds 6 L, of which 0.45 L are easily available; a triangle of light from 6 to 18 h, 1.512 L in all.
    expect(at([8, 9, 10, 11, 12, 13, 14, 15], { startingShare: '80 %' })).toMatch(/begins the day too dry, so fill it with 0\.\d+ L before/);
    const [, lacking] = /fill it with ([\d.]+) L/.exec(at([8, 9, 10, 11, 12, 13, 14, 15], { startingShare: '80 %' })!)!;
    expect(at([8, 9, 10, 11, 12, 13, 14, 15], { startingShare: 0.8 + Number(lacking) / 6 })).toBeUndefined();
    // From 12:09 on it gives up 0.252 L/h, falling straight to nothing at 18:00: 0.45 L by 14:25.
    expect(at([8, 9, 10, 11, 12])).toMatch(/L more by 14:2\d keep it from that, in a shot after the last one of 12:00/);
    expect(at([8, 9, 10, 11, 12, 14])).toBeUndefined();
    expect(at([12, 12.5, 13, 13.5, 14])).toMatch(/L more by 10:\d\d keep it from that, in an earlier or a larger shot/);
    expect(at([10, 10.3, 12, 12.5, 13, 13.5, 14])).toBeUndefined();
    // 0.252 x²/12 L in the first x hours: 0.2 L by 9:05.
    expect(at([17], { easilyAvailableShare: '2 %' })).toContain('in several shots from 9:05 on');
  });

  test('takes what a sensor shows below zero in the dark for dark', () => {
    const { notes: _, ...below } = irrigationDay({ ...day, dayReadings: { ...light, globalRadiation: { unit: 'W/m²', values: [-3, 0, 700, -50, -2] } } });
    const { notes: __, ...zero } = irrigationDay(day);
    expect(JSON.stringify(below)).toBe(JSON.stringify(zero));
  });

  test('counts rows from 1', () => {
    const refused = irrigationDay.try({ ...day, dayReadings: { ...light, globalRadiation: { unit: 'W/m²', values: [0, null, 700, 0, 0] } } });
    expect(refused.ok ? '' : refused.error.message).toContain('none in row 2');
  });

  test('with shots of an unusual share of the bag says so', () => {
    const said = (shotVolume: '100 mL' | '250 mL' | '2 L') => irrigationDay({ ...day, shotVolume, dripperFlow: '20 L/h' }).notes.some(({ code }) => code === 'unusual-shot');
    expect([said('100 mL'), said('250 mL'), said('2 L')]).toEqual([true, false, true]);
  });

  test('without light and uptake has no evening, and no volume that would drain as usual', () => {
    const dark = irrigationDay({ ...day, dayReadings: { readingTime: { unit: 'h', values: [0, 24] }, globalRadiation: { unit: 'W/m²', values: [0, 0] } }, shotPlan: { shotTimes: { unit: 'h', values: [12] } } });
    expect(dark.notes.map(({ code }) => code).sort()).toEqual(['discharge', 'first-drain']);
  });

  test('refuses a pause with the shortest that is taken', () => {
    const slow = { ...day, shotVolume: '280 mL', dripperFlow: '1.8 L/h' } as const;
    const refused = irrigationDay.try({ ...slow, shotPlan: { ...by, shortestPause: '9.3 min' } });
    const [, seconds] = /no less than the (\d+) s/.exec(refused.ok ? '' : refused.error.message)!;
    expect(irrigationDay.try({ ...slow, shotPlan: { ...by, shortestPause: `${Number(seconds)} s` } }).ok).toBe(true);
  });

  test('gives a plant no more than there is', () => {
    const dry = irrigationDay({ ...day, substrateVolume: '1 L', shotPlan: { shotTimes: { unit: 'h', values: [20] } } });
    expect(dry.uptakeVolume.in('L')).toBeCloseTo(0.6, 12);
    expect(dry.driestWater.si).toBe(0);
  });

  test.each<[string, object, string]>([
    ['times that go back', { dayReadings: { ...light, readingTime: { unit: 'h', values: [0, 6, 5, 18, 24] } } }, 'dayReadings.readingTime'],
    ['a gap', { dayReadings: { ...light, globalRadiation: { unit: 'W/m²', values: [0, 0, null, 0, 0] } } }, 'dayReadings.globalRadiation'],
    ['columns of two lengths', { dayReadings: { ...light, globalRadiation: { unit: 'W/m²', values: [0, 0, 700, 0] } } }, 'dayReadings.globalRadiation'],
    ['nothing that plants take up', { dayReadings: { readingTime: light.readingTime } }, 'dayReadings.transpirationRate'],
    ['no start', { shotPlan: {} }, 'shotPlan'],
    ['fixed times that are none', { shotPlan: { shotTimes: { unit: 'h', values: [] } } }, 'shotPlan.shotTimes'],
    ['two starts', { shotPlan: { ...by, uptakeStep: '0.3 L' } }, 'shotPlan.uptakeStep'],
    ['light to count and none given', { dayReadings: { readingTime: light.readingTime, transpirationRate: { unit: 'mm/h', values: [0, 0, 1, 0, 0] } } }, 'dayReadings.globalRadiation'],
    ['a pause shorter than a shot', { shotPlan: { ...by, shortestPause: '5 min' } }, 'shotPlan.shortestPause'],
    ['the latest before the earliest', { shotPlan: { ...by, earliestShot: '17 h' } }, 'shotPlan.latestShot'],
    ['hours beside fixed times', { shotPlan: { shotTimes: { unit: 'h', values: [8] }, latestShot: '16 h' } }, 'shotPlan.latestShot'],
    ['a shot after the readings', { shotPlan: { shotTimes: { unit: 'h', values: [8, 23.95] } } }, 'shotPlan.shotTimes'],
    ['a shot longer than the day', { dripperFlow: '0.01 L/h' }, 'shotVolume'],
    ['no substrate', { substrateVolume: '0 L' }, 'substrateVolume'],
  ])('%s is refused', (_, changes, path) => {
    const attempt = irrigationDay.try({ ...day, ...changes });
    expect(attempt.ok ? [] : (attempt.error as unknown as { problems: readonly { path: string }[] }).problems.map((problem) => problem.path)).toContain(path);
  });
});

describe('barrels', () => {
  const barrel = { barrelVolume: '200 L', zones: [{ dailyVolumes: { unit: 'L', values: [80] } }] } as const;

  test('that last say nothing, and those of which plants wait say so', () => {
    expect(codes(barrelPlan({ ...barrel, warmUpTime: '18 h', days: 3 }))).toEqual([]);
    expect(codes(barrelPlan({ ...barrel, warmUpTime: '61 h', days: 3 }))).toEqual(['danger mix-at-once']);
    expect(codes(barrelPlan({ ...barrel, presentVolume: '40 L', warmUpTime: '13 h', days: 1 }))).toEqual(['danger mix-at-once']);
    expect(codes(barrelPlan({ ...barrel, barrels: 1, warmUpTime: '10 h' }))).toContain('danger no-feed');
    expect(codes(barrelPlan({ ...barrel, days: 2 }))).toEqual(['info lasts-on']);
  });

  test('to be mixed at night are to be mixed the evening before', () => {
    const plan = barrelPlan({ ...barrel, warmUpTime: '34 h' });
    expect(plan.fills[0]!.mixInHours!.in('h')).toBe(20);
    expect(plan.notes.find(({ code }) => code === 'mixing-at-night')!.text).toContain('2:00 of day 2 falls outside working hours: mix it by 20:00 of day 1');
  });

  test('to be mixed before the first working hour of the plan have none to be mixed in', () => {
    const plan = barrelPlan({ ...barrel, presentVolume: '50 L', planStart: '21 h', warmUpTime: '9 h' });
    expect(plan.fills[0]!.mixBy!.in('h')).toBeCloseTo(27, 9);
    expect(plan.fills[0]).not.toHaveProperty('mixInHours');
    const said = plan.notes.find(({ code }) => code === 'mixing-at-night')!.text;
    expect(said).toContain('no working hour in which its vessel is free');
    // Used up at 12:00 of day 2; mixed at 7:00 it is ready at 16:00.
    expect(said).toContain('mixed at 7:00 of day 2, the next one, it leaves plants without for 4 h');
    // 90 L a day use 200 L up at 5:20 of day 3.
    expect(barrelPlan({ ...barrel, zones: [{ dailyVolumes: { unit: 'L', values: [90] } }], barrels: 1 }).notes.find(({ code }) => code === 'mixing-at-night')!.text).toContain('mixed at 7:00 of day 3, the next one, it leaves plants without for 1.67 h');
  });

  test('that are too small are told the whole gap and the volume that closes it, and it does', () => {
    // 20 L last 6 h, 12 h short of 18 h each time: 7 times in a week.
    const small = { ...barrel, barrelVolume: '20 L', warmUpTime: '18 h' } as const;
    for (const [changes, hours] of [[{}, 84], [{ barrels: 1 }, 126]] as const) {
      const plan = barrelPlan({ ...small, ...changes });
      expect(plan.timeWithoutFeed.in('h')).toBeCloseTo(hours, 6);
      const said = plan.notes.find(({ code }) => code === 'mix-at-once' || code === 'no-feed')!.text;
      expect(said).toContain(`without for ${hours} h in all`);
      const [, litres] = /Two barrels of ([\d.]+) L that take turns close the gap/.exec(said)!;
      expect(Number(litres)).toBeGreaterThanOrEqual(60);
      expect(Number(litres)).toBeLessThan(60.2);
      expect(barrelPlan({ ...small, barrelVolume: `${Number(litres)} L` }).timeWithoutFeed.in('h')).toBe(0);
    }
    expect(barrelPlan({ ...barrel, barrels: 1, warmUpTime: '10 h' }).notes.find(({ code }) => code === 'no-feed')!.text).toContain('A second barrel that takes turns with it closes the gap');
    const first = barrelPlan({ ...small, presentVolume: '5 L' }).notes.find(({ code }) => code === 'mix-at-once')!.text;
    expect(first).toContain('close all gaps but the first');
    expect(barrelPlan({ ...barrel, presentVolume: '40 L', warmUpTime: '13 h' }).notes.find(({ code }) => code === 'mix-at-once')!.text).toContain('without for 1 h until it is ready, or are given cold feed.');
  });

  test('that are not full last for what is in them, and the next ones for what they hold', () => {
    const plan = barrelPlan({ ...barrel, presentVolume: '40 L' });
    expect(plan.fills.slice(0, 3).map(({ emptyTime }) => emptyTime.in('d'))).toEqual([0.5, 3, 5.5].map((days) => expect.closeTo(days, 9)));
  });

  test('that a schedule uses up are used up when it ends, not when its readings do', () => {
    const schedule = { readingTime: { unit: 'h', values: [0, 8, 18, 24] }, givenVolumes: { unit: 'L', values: [0, 0, 1, 1] } } as const;
    for (const [litres, daily] of [[90, 30], [70, 0.7], [7, 0.7]] as const) {
      const plan = barrelPlan({ barrelVolume: `${litres} L`, zones: [{ dailyVolumes: { unit: 'L', values: Array.from({ length: 40 }, () => daily) } }], dayUse: schedule, days: 366 });
      plan.fills.forEach(({ emptyTime }, i) => expect(emptyTime.in('h')).toBeCloseTo(((i + 1) * litres) / daily * 24 - 6, 6));
    }
  });

  test('follow a schedule wherever its sums begin', () => {
    const use = (from: number) => barrelPlan({ ...barrel, dayUse: { readingTime: { unit: 'h', values: [6, 9, 12, 18] }, givenVolumes: { unit: 'L', values: [0, 0.5, 1.5, 2].map((x) => x + from) } } }).fills.map(({ emptyTime }) => emptyTime.in('h'));
    expect(use(3)).toEqual(use(0).map((at) => expect.closeTo(at, 6)));
  });

  test('that hold a whole number of days are used up in the evening, not the next morning', () => {
    for (const [litres, daily] of [[90, 30], [70, 0.7], [7, 0.7], [210, 70]] as const) {
      const plan = barrelPlan({ barrelVolume: `${litres} L`, zones: [{ dailyVolumes: { unit: 'L', values: Array.from({ length: 40 }, () => daily) } }], dayUse: { useFrom: '8 h', useUntil: '18 h' }, days: 366 });
      expect(plan.fills.length).toBeGreaterThan(2);
      plan.fills.forEach(({ emptyTime }, i) => expect(emptyTime.in('h')).toBeCloseTo(((i + 1) * litres) / daily * 24 - 6, 6));
    }
  });

  test.each<[string, object, string]>([
    ['more than it holds', { presentVolume: '201 L' }, 'presentVolume'],
    ['no more than its reserve', { presentVolume: '10 L', reserveShare: '5 %' }, 'presentVolume'],
    ['hours the wrong way round', { workFrom: '20 h', workUntil: '7 h' }, 'workUntil'],
    ['no volume', { zones: [{ dailyVolumes: { unit: 'L', values: [] } }] }, 'zones[0].dailyVolumes'],
    ['volumes that are missing', { zones: [{ dailyVolumes: { unit: 'L', values: [80, null] } }] }, 'zones[0].dailyVolumes'],
    ['volumes of single shots', { dayUse: { readingTime: { unit: 'h', values: [8, 10, 12] }, givenVolumes: { unit: 'L', values: [0, 0.3, 0.2] } } }, 'dayUse.givenVolumes'],
    ['use without times', { dayUse: { givenVolumes: { unit: 'L', values: [0, 1] } } }, 'dayUse.readingTime'],
    ['a thimble', { barrelVolume: '1 L', days: 60 }, 'barrelVolume'],
    ['no barrel', { barrelVolume: '0 L' }, 'barrelVolume'],
  ])('%s is refused', (_, changes, path) => {
    expect(barrelPlan.try({ ...barrel, ...changes })).toMatchObject({ ok: false, error: { problems: expect.arrayContaining([expect.objectContaining({ path })]) } });
  });
});
