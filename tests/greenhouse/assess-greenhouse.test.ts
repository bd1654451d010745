import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { isInputError } from '../../src/calculation/index.js';
import { catalogue } from '../../src/catalogue.js';
import { dissolve, pumpCycle, runTime, weighOut } from '../../src/index.js';
import { assessGreenhouse, reportOf } from '../../src/greenhouse/index.js';
import { sources } from '../../src/sources.js';
import { replaced } from '../support/generate.js';

const garden: unknown = JSON.parse(readFileSync(new URL('../../docs/examples/teaching-garden.json', import.meta.url), 'utf8'));
const assess = (description: unknown): ReturnType<typeof assessGreenhouse> => {
  const attempt = assessGreenhouse.try(description);
  if (!attempt.ok) throw attempt.error;
  return attempt.value;
};
const changed = (path: readonly (string | number)[], value: unknown): ReturnType<typeof assessGreenhouse> => assess(replaced(garden, path, value));
const codes = ({ findings }: ReturnType<typeof assessGreenhouse>): readonly string[] => findings.map(({ code }) => code);

describe('the teaching garden', () => {
  const assessment = assess(garden);

  test('has every part', () => {
    expect(assessment.feed?.portions).toHaveLength(8);
    expect(assessment.zones.map(({ name }) => name)).toEqual(['strawberries in troughs', 'aubergines in bags', 'potted basil']);
    expect(assessment.feed?.meter).toBeDefined();
    expect(assessment.air?.readings).toBe(12);
  });

  // Common practice, no source: the sheet weighs in what the targets ask for, and the plants get what they take up and a share of drain.
  test('gets the feed that it asks for, by weighing the salts back in', () => {
    const sheet = assessment.feed!.portions;
    const { salts, sourceWater } = garden as { readonly salts: readonly { readonly name?: string; readonly salt?: string; readonly label?: object }[]; readonly sourceWater: { readonly water: object; readonly waterAlkalinity: string } };
    const acid = { salt: 'nitric-acid', purity: '38 %', mass: assessment.feed!.acidTreatment!.mass };
    const portions = [acid, ...salts.map(({ name: _, ...product }, i) => ({ ...product, mass: sheet[i]!.mass }))];
    const { nutrients } = dissolve({ volume: '120 L', portions, water: sourceWater.water, waterAlkalinity: sourceWater.waterAlkalinity } as never);
    for (const [form, wanted] of Object.entries({ 'N-NO3': 132, 'N-NH4': 6, P: 35, K: 180, Ca: 125, Mg: 30, Fe: 1.5 })) {
      expect(Math.abs((nutrients as never as Readonly<Record<string, { in: (unit: string) => number }>>)[form]!.in('mg/L') / wanted - 1), form).toBeLessThan(0.01);
    }
  });

  test('gives each plant its litres: 0.3 L over 80 % is 0.375 L, 1.8 L over 75 % is 2.4 L', () => {
    const [strawberries, aubergines] = assessment.zones;
    expect(strawberries!.appliedVolume.in('L')).toBeGreaterThanOrEqual(0.375);
    expect(strawberries!.appliedVolume.in('L')).toBeCloseTo(0.375 / strawberries!.uniformity.si, 6);
    expect(aubergines!.appliedVolume.in('L')).toBeCloseTo(2.4 / aubergines!.uniformity.si, 6);
    const given = assessment.zones.reduce((sum, zone, i) => sum + [56, 12, 48][i]! * zone.appliedVolume.in('L'), 0);
    expect(assessment.dailyVolume!.in('L')).toBeCloseTo(given, 9);
    expect(assessment.barrelLasts!.in('d')).toBeCloseTo(120 / given, 9);
    expect(strawberries!.runTimePerShot.in('min') * 5).toBeCloseTo(strawberries!.runTime.in('min'), 9);
  });

  test('is what the calculations by themselves say', () => {
    const [strawberries] = assessment.zones;
    const cycle = pumpCycle({ tankVolume: '18 L', preCharge: '26 psi', cutIn: '40 psi', cutOut: '60 psi', pumpFlow: '13 L/min', demand: strawberries!.zoneFlow, atmosphericPressure: '99.89 kPa' });
    expect(strawberries!.pump!.pumpRunTime!.in('s')).toBeCloseTo(cycle.runTime!.in('s'), 1);
    const dose = runTime({ volumePerPlant: '0.3 L', drainShare: '20 %', dripperFlow: strawberries!.meanFlow, uniformity: strawberries!.uniformity });
    expect(strawberries!.runTime.in('min')).toBeCloseTo(dose.runTime.in('min'), 9);
    expect(weighOut.id).toBe('weighOut');
  });

  test('has findings by severity, each with a calculation and sources that exist', () => {
    const ids = new Set(catalogue().map(({ id }) => id));
    const order = assessment.findings.map(({ severity }) => ['danger', 'caution', 'info'].indexOf(severity));
    expect(order).toEqual([...order].sort());
    for (const { calculation, sources: keys, text, where } of assessment.findings) {
      expect(ids).toContain(calculation);
      expect(keys.length).toBeGreaterThan(0);
      for (const key of keys) expect(sources).toHaveProperty([key]);
      expect(text).toMatch(/\.$/);
      expect(where).not.toBe('');
    }
    expect(codes(assessment)).toEqual(expect.arrayContaining(['no-source', 'pre-charge-low', 'short-run', 'air-too-wet', 'air-too-dry', 'pressure-vessel', 'mains-electricity', 'backflow']));
  });

  test('reads well in 80 columns', () => {
    const report = reportOf(assessment);
    expect(Math.max(...report.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
    for (const words of ['What to weigh in', 'potassium nitrate', 'The meter should show', 'How long each zone runs', 'potted basil', 'a full barrel lasts', 'What to mend', 'Take care']) expect(report).toContain(words);
    // The band that the air is judged by, beside what follows from the meaning of its terms.
    expect(reportOf(changed(['zones', 1, 'lateral', 'inletPressure'], '3 bar'))).toMatch(/assessGreenhouse: (?=.*Grange)(?=.*Follows)/s);
    expect(report).not.toMatch(/undefined|NaN|\[object/);
  });

  test('survives storage', () => {
    const stored: unknown = JSON.parse(JSON.stringify(assessment));
    expect(JSON.stringify(stored)).toBe(JSON.stringify(assessment));
    expect(stored).toHaveProperty('zones.0.runTime', expect.stringMatching(/ min$/));
  });
});

describe('what is wrong with a greenhouse', () => {
  test('a lateral that water cannot climb is a finding of danger, and the other zones still have results', () => {
    // 48 outlets at 15 cm and 50 % rise 3.6 m: 35 kPa of water, more than the 20 kPa at the inlet.
    const starved = assess(replaced(replaced(garden, ['zones', 2, 'lateral', 'slope'], '50 %'), ['zones', 2, 'lateral', 'inletPressure'], '20 kPa'));
    expect(starved.zones.map(({ name }) => name)).toEqual(['strawberries in troughs', 'aubergines in bags']);
    // What a day takes is not known while a zone has no result.
    expect(starved).not.toHaveProperty('dailyVolume');
    expect(starved).not.toHaveProperty('barrelLasts');
    expect(reportOf(starved)).toContain('not known while a zone has no result');
    expect(starved.findings[0]).toMatchObject({ severity: 'danger', code: 'no-result', where: 'zones[2].lateral.inletPressure', calculation: 'lateral' });
    expect(reportOf(starved)).toContain('!! zones[2].lateral.inletPressure: No result: ');
  });

  test('run times allow for the variation of the emitters where it is known', () => {
    const [strawberries] = changed(['zones', 0, 'lateral', 'manufacturingVariation'], '7 %').zones;
    // EU = 1 - 1.27 · 0.07 = 0.911 for even pressure (Keller and Karmeli 1974).
    expect(strawberries!.uniformity.in('%')).toBeCloseTo(91.1, 0);
    expect(strawberries!.appliedVolume.in('L')).toBeCloseTo(0.375 / strawberries!.uniformity.si, 6);
  });

  test('acid for a water that nothing is known of', () => {
    const { feed, findings } = changed(['sourceWater'], { waterTemperature: '16 °C', pH: 7.6 });
    expect(feed).toBeUndefined();
    expect(findings).toContainEqual(expect.objectContaining({ severity: 'danger', code: 'no-result', where: 'acidTreatment.alkalinity' }));
  });

  test('laterals that want more than the cut-in', () => {
    expect(codes(changed(['zones', 1, 'lateral', 'inletPressure'], '3 bar'))).toContain('inlet-above-cut-in');
  });

  test('a pump that cannot keep up runs through', () => {
    const assessment = changed(['pump', 'pumpFlow'], '1 L/min');
    // The strawberries draw 1.9 L/min.
    expect(assessment.findings.filter(({ severity }) => severity === 'danger').map(({ where }) => where)).toContain('zones[0].pump.demand');
    expect(assessment.zones[0]!.pump!.pumpRunTime).toBeUndefined();
    expect(reportOf(assessment)).toMatch(/strawberries in troughs +- +-/);
  });

  test('zones that take longer than a day has', () => {
    expect(codes(changed(['zones', 1, 'volumePerPlant'], '150 L'))).toContain('day-too-short');
  });

  test('a pre-charge above the cut-in', () => {
    expect(changed(['tank', 'preCharge'], '45 psi').findings[0]).toMatchObject({ severity: 'danger', code: 'pre-charge-above-cut-in', where: 'tank.preCharge' });
  });

  test('a logger with nothing in it', () => {
    const assessment = changed(['logger'], { airTemperature: { unit: '°C', values: [null] }, relativeHumidity: { unit: '%', values: [80] } });
    expect(assessment.air).toBeUndefined();
    expect(codes(assessment)).toContain('no-readings');
  });

  test('a description without logger, scales or names of salts still has its results', () => {
    const { logger: _, scales: __, ...rest } = garden as Readonly<Record<string, unknown>>;
    expect(assess(rest).air).toBeUndefined();
    expect(assess(rest).feed).toBeDefined();
  });
});

test('a bad description is told whole', () => {
  const bad = { ...(garden as object), site: { elevation: '120' }, barrel: { volume: '120 gal' }, pump: { pumpFlow: 13 }, zones: [{ ...(garden as { readonly zones: readonly object[] }).zones[0], plants: 0, lateral: { outlets: 0 } }], barrels: 2 };
  const attempt = assessGreenhouse.try(bad);
  if (attempt.ok || !isInputError(attempt.error)) throw new Error('the description was not refused');
  const { problems } = attempt.error;
  expect(problems.map(({ path }) => path)).toEqual(expect.arrayContaining(['site.elevation', 'barrel.volume', 'pump.pumpFlow', 'zones[0].plants', 'zones[0].lateral.outlets', 'zones[0].lateral.spacing', 'barrels']));
  expect(problems.find(({ path }) => path === 'barrel.volume')!.hint).toBe("did you mean '120 US gal' or '120 imp gal'?");
});
