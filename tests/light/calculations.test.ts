/** What the calculations of light say beside their numbers, and what they refuse. */
import { describe, expect, test } from 'vitest';
import { isInputError } from '../../src/calculation/index.js';
import * as light from '../../src/light/index.js';

const codes = ({ notes }: { readonly notes: readonly { readonly code: string }[] }): string[] => notes.map(({ code }) => code);

/** The problems of an attempt that has to fail. */
function problems(attempt: { readonly ok: true } | { readonly ok: false; readonly error: Error }): string {
  if (attempt.ok) throw new Error('was accepted');
  if (!isInputError(attempt.error)) throw attempt.error;
  return attempt.error.message;
}

describe('the sun', () => {
  test('has no day beyond the polar circles, and that is said', () => {
    expect(problems(light.solarRadiation.try({ latitude: '70 °', dayOfYear: 355 }))).toMatch(/latitude: one between the polar circles.*not 70 °.*stays up or away/);
    expect(problems(light.radiationThroughDay.try({ latitude: '-67 °', dayOfYear: 172, radiationSum: '1 MJ/m²' }))).toContain('polar circles');
    expect(light.solarRadiation({ latitude: '66.5 °', dayOfYear: 355 }).extraterrestrialRadiation.in('MJ/m²')).toBeGreaterThan(0);
  });

  test('shines no longer than the day, give or take a quarter of an hour', () => {
    const site = { latitude: '48 °', dayOfYear: 355 } as const;
    expect(problems(light.solarRadiation.try({ ...site, sunshine: '10 h' }))).toMatch(/at most the length of the day, 8\.\d\d h.*hemisphere/);
    const most = light.solarRadiation(site).daylight.in('h');
    expect(light.solarRadiation({ ...site, sunshine: `${most + 0.2} h` }).radiationSum!.in('MJ/m²')).toBeCloseTo(light.solarRadiation(site).clearSkyRadiation.in('MJ/m²'), 12);
  });

  test('is told in one way only', () => {
    const site = { latitude: '48 °', dayOfYear: 172 } as const;
    expect(light.solarRadiation(site)).not.toHaveProperty('radiationSum');
    expect(problems(light.solarRadiation.try({ ...site, highestAirTemperature: '20 °C' }))).toContain('both the highest and the lowest');
    expect(problems(light.solarRadiation.try({ ...site, highestAirTemperature: '10 °C', lowestAirTemperature: '20 °C' }))).toContain('swapped');
    expect(problems(light.solarRadiation.try({ ...site, highestAirTemperature: '20 °C', lowestAirTemperature: '10 °C', sunshine: '5 h' }))).toContain('either hours of sunshine or temperatures');
  });

  test('without a reading is that of the swing of the temperature, inland', () => {
    // Allen et al. (1998), FAO-56, Example 20, Lyon in July: Ra 40.55, Rs 22.29 MJ/m².
    expect(light.radiationFromTemperatureRangeHargreaves(40.55, 26.6 - 14.8)).toBeCloseTo(22.29, 2);
  });

  test('does not shine through a clear sky more than that lets through', () => {
    const swing = light.solarRadiation({ latitude: '48 °', dayOfYear: 172, highestAirTemperature: '40 °C', lowestAirTemperature: '2 °C' });
    expect(codes(swing)).toContain('clear-sky-taken');
    expect(swing.radiationSum!.si).toBe(swing.clearSkyRadiation.si);
    expect(codes(light.solarRadiation({ latitude: '48 °', dayOfYear: 172, highestAirTemperature: '24 °C', lowestAirTemperature: '12 °C' }))).toEqual([]);
  });

  test('spreads over steps that fill the day, and no more than arrives outside the atmosphere', () => {
    const day = { latitude: '48 °', dayOfYear: 355, radiationSum: '3 MJ/m²' } as const;
    expect(problems(light.radiationThroughDay.try({ ...day, stepLength: '7 min' }))).toContain('stepLength: a part of a day');
    expect(problems(light.radiationThroughDay.try({ ...day, radiationSum: '30 MJ/m²' }))).toMatch(/at most \d+\.\d\d MJ\/m².*hemisphere/);
    const { sunrise, sunset, globalRadiation, readingTime, radiationSoFar } = light.radiationThroughDay({ ...day, stepLength: '15 min', solarNoon: '12.5 h' });
    expect(globalRadiation.length).toBe(96);
    expect((sunrise.in('h') + sunset.in('h')) / 2).toBeCloseTo(12.5, 12);
    expect(readingTime.in('h')[0]).toBe(0.125);
    expect(radiationSoFar.at(-1)!.in('MJ/m²')).toBe(3);
    const dark = globalRadiation.in('W/m²').filter((_, i) => (i + 1) / 4 < sunrise.in('h'));
    expect(Math.max(...dark)).toBe(0);
    const white = light.radiationThroughDay({ latitude: '66.5 °', dayOfYear: 172, radiationSum: '20 MJ/m²', solarNoon: '10 h' });
    // Up until 21:42, and again from 22:18 on: at midnight too.
    expect(white.sunset.in('h')).toBeLessThan(white.sunrise.in('h'));
    expect((white.sunrise.in('h') + white.sunset.in('h')) / 2).toBeCloseTo(22, 12);
  });

  test('refuses with a most that is taken', () => {
    const day = { latitude: '48 °', dayOfYear: 355 } as const;
    const [, most] = /at most ([\d.]+) MJ/.exec(problems(light.radiationThroughDay.try({ ...day, radiationSum: '30 MJ/m²' })))!;
    expect(light.radiationThroughDay({ ...day, radiationSum: `${Number(most)} MJ/m²` }).notes).toEqual([]);
  });
});

describe('daily light', () => {
  test('says which photons and which cover it is reckoned with', () => {
    expect(codes(light.dailyLightFromRadiation({ radiationSum: '10 MJ/m²' }))).toEqual(['photon-yield', 'no-cover']);
    expect(codes(light.dailyLightFromRadiation({ radiationSum: '10 MJ/m²', coverTransmission: 0.6, photonYield: '2.5 µmol/J' }))).toEqual(['outside-range', 'photon-yield']);
    const ofLight = light.dailyLightFromRadiation({ radiationSum: '10 MJ/m²', coverTransmission: 0.6, photonYield: '4.57 µmol/J' });
    expect(codes(ofLight)).toEqual(['outside-range', 'yield-of-light']);
    expect(ofLight.notes[1]!.text).toContain('it is 2.06 µmol/J');
    expect(problems(light.dailyLightFromRadiation.try({ radiationSum: '10 MJ/m²', coverTransmission: 65 }))).toContain("did you mean '65 %'");
  });

  test('of readings names the days with gaps and takes a sensor below zero for dark', () => {
    const readingTime = { unit: 'h', values: [0, 6, 12, 18, 24, 30] } as const;
    const result = light.dailyLightOfReadings({ readingTime, photonFlux: { unit: 'µmol/(m²·s)', values: [-3, -3, 100, -3, -3, null] }, longestGap: '6 h' });
    expect(result.lightOfDays.map(({ dailyLight, coveredTime }) => [dailyLight.in('mol/(m²·d)'), coveredTime.in('h')])).toEqual([[expect.closeTo(2.16, 9), 24]]);
    expect(codes(result)).toEqual([]);
    const torn = light.dailyLightOfReadings({ readingTime, photonFlux: { unit: 'µmol/(m²·s)', values: [0, 0, null, 0, 0, 0] }, longestGap: '6 h' });
    expect(torn.notes.map(({ text }) => text).join()).toContain('whole of days 1, 2');
    const away = light.dailyLightOfReadings({ readingTime: { unit: 'h', values: [0, 12, 24, 72, 84, 96] }, photonFlux: { unit: 'µmol/(m²·s)', values: [0, 9, 0, 0, 9, 0] }, longestGap: '12 h' });
    expect(away.lightOfDays.map(({ dayNumber }) => dayNumber)).toEqual([1, 4]);
    expect(away.notes.map(({ text }) => text).join()).toContain('whole of days 2, 3:');
  });

  test('of a logger with a row an hour is whole, a second of drift or not', () => {
    const hourly = (drift: number) => light.dailyLightOfReadings({ readingTime: { unit: 's', values: Array.from({ length: 24 }, (_, i) => i * (3600 + drift)) }, photonFlux: { unit: 'µmol/(m²·s)', values: Array.from({ length: 24 }, () => 100) } });
    for (const drift of [0, 1]) {
      expect(hourly(drift).lightOfDays[0]!.dailyLight.in('mol/(m²·d)')).toBeCloseTo(1e-4 * 23 * (3600 + drift), 9);
      expect(hourly(drift).notes).toEqual([]);
    }
  });

  test('that lacks no more than a gap at its ends is whole', () => {
    const from = (first: number) => light.dailyLightOfReadings({ readingTime: { unit: 'h', values: [first, 8, 16, 23.8] }, photonFlux: { unit: 'µmol/(m²·s)', values: [0, 9, 9, 0] }, longestGap: '8 h' });
    expect(codes(from(7.7))).toEqual([]);
    expect(codes(from(7.9))).toEqual(['gaps']);
  });

  test('needs times that rise', () => {
    const photonFlux = { unit: 'µmol/(m²·s)', values: [1, 1, 1] } as const;
    expect(problems(light.dailyLightOfReadings.try({ readingTime: { unit: 'h', values: [1, 3, 2] }, photonFlux }))).toMatch(/row 3 is not after.*daylight-saving/);
    expect(problems(light.dailyLightOfReadings.try({ readingTime: { unit: 'h', values: [1, null, 2] }, photonFlux }))).toContain('none in row 2');
    expect(problems(light.dailyLightOfReadings.try({ readingTime: { unit: 'h', values: [1, 2] }, photonFlux }))).toContain('photonFlux: 2 values');
    expect(codes(light.dailyLightOfReadings({ readingTime: { unit: 'h', values: [1, 2, 3] }, photonFlux }))).toEqual(['gaps']);
  });
});

describe('lamps', () => {
  const aim = { targetDailyLight: '17 mol/(m²·d)', naturalLight: '9 mol/(m²·d)' } as const;

  test('that leave no night are pointed out, and those too weak for a whole day refused', () => {
    expect(codes(light.lampHours({ ...aim, lampFlux: '120 µmol/(m²·s)' }))).toEqual(['short-night', 'mains-electricity']);
    expect(codes(light.lampHours({ ...aim, lampFlux: '200 µmol/(m²·s)' }))).toEqual(['mains-electricity']);
    expect(light.lampHours({ ...aim, lampFlux: '200 µmol/(m²·s)' }).notes[0]!.text).toContain('lamps, their ballasts and wiring');
    // 100 µmol/(m²·s) through 18 h are 6.48 mol/m².
    const night = (light_: number) => codes(light.lampHours({ targetDailyLight: `${light_} mol/(m²·d)`, naturalLight: '0 mol/(m²·d)', lampFlux: '100 µmol/(m²·s)' })).includes('short-night');
    expect([night(6.48), night(6.49)]).toEqual([false, true]);
    expect(problems(light.lampHours.try({ ...aim, lampFlux: '90 µmol/(m²·s)' }))).toContain('at least 93 µmol/(m²·s)');
    expect(light.lampHours({ ...aim, lampFlux: '93 µmol/(m²·s)' }).lampTime.in('h')).toBeLessThanOrEqual(24);
    // 150 µmol/(m²·s) through 24 h are 12.96 mol/m² exactly, but not in doubles.
    expect(light.lampHours({ targetDailyLight: '12.96 mol/(m²·d)', naturalLight: '0 mol/(m²·d)', lampFlux: '150 µmol/(m²·s)' }).lampTime.in('h')).toBe(24);
  });

  test('stay off where the sun brings enough', () => {
    expect(light.lampHours({ ...aim, naturalLight: '20 mol/(m²·d)', lampFlux: '1 µmol/(m²·s)' }).lampTime.in('h')).toBe(0);
  });
});
