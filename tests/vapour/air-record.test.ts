/** What a record of the air refuses, and what it says beside its numbers. */
import { describe, expect, test } from 'vitest';
import { isInputError } from '../../src/calculation/index.js';
import { readLoggerText } from '../../src/logger/index.js';
import { airRecord, newAirRecord, wetBulb, wetBulbColumn } from '../../src/vapour/index.js';

const column = <const Unit extends string>(unit: Unit, ...values: (number | null)[]) => ({ unit, values });
const hours = (...values: (number | null)[]) => column('h', ...values);
const steady = (rows: number) => ({
  readingTime: hours(...Array.from({ length: rows }, (_, i) => i)), airTemperature: column('°C', ...Array.from({ length: rows }, () => 20)), relativeHumidity: column('%', ...Array.from({ length: rows }, () => 60)),
});
function problems(input: object): string {
  const attempt = airRecord.try({ ...steady(3), ...input });
  if (attempt.ok) throw new Error('was accepted');
  if (!isInputError(attempt.error)) throw attempt.error;
  return attempt.error.message;
}
const codes = (input: object): string[] => {
  const attempt = airRecord.try({ ...steady(3), ...input });
  if (!attempt.ok) throw attempt.error;
  return attempt.value.notes.map(({ code }) => code);
};

describe('readings that cannot be', () => {
  test.each([
    ['999', { airTemperature: column('°C', 20, 999, 999) }, /airTemperature: .*999 °C in row 2 and 1 more.*null/],
    ['-999', { airTemperature: column('°C', 20, -999, 20) }, /-999 °C in row 2 .*null/],
    ['9999 in another column', { globalRadiation: column('W/m²', 20, 9999, 20) }, /globalRadiation: .*9999 W\/m² in row 2/],
    ['-40 °C', { airTemperature: column('°C', -40, 20, 20) }, /-40 °C in row 1 \(a broken or unplugged sensor/],
    ['-40 °F', { airTemperature: column('°F', -40, 60, 60) }, /-40 °F in row 1 \(a broken or unplugged sensor/],
    ['°F for °C, above what air can be', { airTemperature: column('°C', 50, 68, 70) }, /68 °F would be 20.0 °C: is the column in °F/],
    ['°F for °C, all of them possible', { airTemperature: column('°C', 50, 51, 52) }, /no reading below 50 °C \(is the column in °F\? 50 °F is 10.0 °C/],
    ['fractions for per cent', { relativeHumidity: column('%', 0.65, 0.7, 0.98) }, /0.98 as a fraction is 98 %/],
    ['per cent for fractions', { relativeHumidity: column('fraction', 65, 70, 98) }, /65 fraction in row 1 and 2 more.*are these per cent/],
    ['a clock put back', { readingTime: column('min', 160, 170, 120) }, /120 min in row 3 \(about an hour earlier.*daylight-saving/],
    ['a clock that runs backwards', { readingTime: hours(5, 6, 1) }, /1 h in row 3 \(earlier than the row before/],
    ['an hourly logger with two rows swapped', { ...steady(4), readingTime: hours(0, 2, 1, 3) }, /1 h in row 3 \(earlier than the row before: sort the rows/],
    ['rows from the newest to the oldest', { readingTime: hours(2, 1, 0) }, /1 h in row 2 and 1 more like it \(the rows run from the newest to the oldest: turn them round\)$/],
    ['one time with two readings', { readingTime: hours(0, 1, 1), airTemperature: column('°C', 20, 20, 21) }, /1 h in row 3 \(this time has two rows/],
    ['no row with a time', { readingTime: hours(null, null, null) }, /readingTime: .*no row with a time/],
    ['columns of different lengths', { leafTemperature: column('°C', 20) }, /leafTemperature: 3 values, as many as in readingTime/],
    ['no two readings close enough', { readingTime: hours(0, 5, 10) }, /longestGap is 1.5 h .*give longestGap '5.1 h'/],
    ['readings more than a day apart', { readingTime: hours(0, 25, 50) }, /more than a day apart/],
    ['no temperature in any row', { airTemperature: column('°C', null, null, null) }, /airTemperature: .*not 0 of 3 \(no row has the airTemperature/],
    ['temperature and humidity never in one row', { airTemperature: column('°C', 20, null, 20), relativeHumidity: column('%', null, 60, null) }, /readingTime: two rows with a time, a temperature and a humidity is needed, not 0 of 3$/],
    ['one row', steady(1), /not 1 of 1$/],
    ['empty columns', steady(0), /not 0 of 0$/],
    ['weather without a cover', { outsideTemperature: column('°C', 5) }, /coverHeatTransfer/],
    ['a U-value that leaves no film', { outsideTemperature: column('°C', 5), coverHeatTransfer: '9 W/(m²·K)' }, /insideFilmCoefficient/],
    ['a limit of light without light', { dayLight: '5 µmol/(m²·s)' }, /dayLight/],
    ['a day without a night', { dayBegins: '18 h' }, /nightBegins/],
    ['bands that do not rise', { deficitBands: ['1 kPa', '0.5 kPa'] }, /deficitBands\[1\]/],
    ['an upper limit without a base', { upperTemperature: '25 °C' }, /baseTemperature: .*not nothing/],
    ['an upper limit below the base', { baseTemperature: '10 °C', upperTemperature: '8 °C' }, /upperTemperature/],
  ])('%s', (_, input, message) => {
    expect(problems(input)).toMatch(message);
  });

  test('in °F are told once', () => {
    expect(problems({ airTemperature: column('°C', 50, 68, 70) })).toContain('problems with the input: 1');
  });

  test('of a logger are quoted by day and clock, and what is advised mends them', () => {
    const newestFirst = 'time,Temp (°C),RH (%)\n2026-04-13 09:00,18,60\n2026-04-13 08:00,18,60\n2026-04-13 07:00,18,61\n';
    const { readingTime, airTemperature, relativeHumidity } = readLoggerText(newestFirst).columns;
    expect(problems({ readingTime, airTemperature, relativeHumidity })).toContain('8:00 of day 1 in row 2 and 1 more');
    const [header, ...rows] = newestFirst.trim().split('\n');
    expect(airRecord.try(readLoggerText([header, ...rows.reverse()].join('\n')).columns).ok).toBe(true);
    for (const [step, advised] of [[5, '5.1 h'], [23.9, '24 h'], [3601 / 3600 * 1.5, '1.6 h']] as const) {
      const far = { readingTime: hours(0, step, 2 * step) };
      expect(problems(far)).toContain(`give longestGap '${advised}'`);
      expect(codes({ ...far, longestGap: advised })).not.toContain('not-covered');
    }
  });

  test('are told all at once', () => {
    expect(problems({ readingTime: hours(0, 2, 1), airTemperature: column('°C', 999, -40, 68), relativeHumidity: column('%', 0.5, 0.6, 0.7) })).toContain('problems with the input: 5');
  });

  test('are no result of a record in blocks either, also over the border of two', () => {
    const block = (time: number, t: number) => ({ readingTime: Float64Array.of(time), airTemperature: Float64Array.of(t), relativeHumidity: Float64Array.of(0.6) });
    const record = newAirRecord();
    record.add(block(3600, 293));
    record.add(block(3600, 294));
    record.add(block(1800, 999 + 273.15));
    expect(record.faults().map(({ column, received }) => `${column} ${received}`)).toEqual(['readingTime 1 h in row 2', 'airTemperature 999 °C in row 3', 'readingTime 0.5 h in row 3']);
    expect(() => record.result()).toThrow(/row 2[^]*row 3/);
  });
});

describe('a record says', () => {
  test('what it does not cover', () => {
    expect(codes({ readingTime: hours(0, 1, 4) })).toEqual(expect.arrayContaining(['not-covered', 'part-days']));
    expect(codes({ airTemperature: column('°C', 20, null, 20), longestGap: '2 h' })).toContain('gaps');
  });

  test('nothing of an hourly logger whose clock is a second off', () => {
    const late = Array.from({ length: 25 }, (_, i) => 3600 * i + (i % 2));
    const { coveredTime, notes } = airRecord({ ...steady(25), readingTime: column('s', ...late) });
    expect([coveredTime.in('h'), notes.map(({ code }) => code)]).toEqual([24, ['saturation-equation']]);
  });

  test('that the hours of day go through midnight', () => {
    expect(codes({ dayBegins: '20 h', nightBegins: '6 h' })).toContain('day-through-midnight');
    expect(codes({ dayBegins: '6 h', nightBegins: '20 h' })).not.toContain('day-through-midnight');
    expect(codes({ dayBegins: '20 h', nightBegins: '6 h', dayLight: '5 µmol/(m²·s)', photonFlux: column('µmol/(m²·s)', 0, 9, 9) })).not.toContain('day-through-midnight');
  });

  test('which rows have no time', () => {
    const { notes, vapourPressureDeficit, coveredTime } = airRecord({ ...steady(4), readingTime: hours(0, null, 1, null), longestGap: '1 h' });
    expect(notes.find(({ code }) => code === 'rows-without-time')).toMatchObject({ severity: 'caution', field: 'readingTime', text: expect.stringContaining('2 of 4 rows have no time, row 2 first') });
    expect([...vapourPressureDeficit.si].map(Number.isNaN)).toEqual([false, true, false, true]);
    expect(coveredTime.in('h')).toBe(1);
    expect(notes.map(({ code }) => code)).not.toContain('gaps');
  });

  test('of a row without a time no jump of the clock', () => {
    expect(codes({ ...steady(4), readingTime: hours(0, 1, null, 3) })).not.toContain('clock-jump');
    expect(codes({ ...steady(3), readingTime: hours(0, 1, 3) })).toContain('clock-jump');
  });

  test('which rows repeat, and where the clock may have been put forward', () => {
    expect(codes({ readingTime: hours(0, 1, 1) })).toContain('repeated-rows');
    expect(codes({ ...steady(4), readingTime: hours(0, 1, null, 1), airTemperature: column('°C', 20, 20, 21, 20) })).toContain('repeated-rows');
    expect(codes({ readingTime: column('min', 0, 10, 80), longestGap: '2 h' })).toContain('clock-jump');
  });

  test('which equation it rests on, over water and over ice', () => {
    const frost = { airTemperature: column('°C', -5, 3, 10), relativeHumidity: column('%', 90, 60, 50) };
    expect(codes(frost).filter((code) => code === 'saturation-equation')).toHaveLength(3);
    expect(codes({ ...frost, correlation: 'WMO' })).toContain('coefficients-from-memory');
    expect(codes(steady(3))).toEqual(['saturation-equation', 'part-days']);
  });

  test('that leaf or cover are wet', () => {
    expect(codes({ leafTemperatureOffset: '-10 K' })).toContain('dew-on-leaf');
    expect(codes({ outsideTemperature: column('°C', -5), coverHeatTransfer: '6 W/(m²·K)' })).toEqual(expect.arrayContaining(['cover-fogs', 'clear-sky']));
  });

  test('that the mean of a day knows no upper limit', () => {
    const warmth = { baseTemperature: '10 °C', upperTemperature: '30 °C' } as const;
    expect(codes({ ...warmth, degreeDayMethod: 'mean' })).toContain('no-upper-limit');
    expect(codes({ ...warmth, degreeDayMethod: 'limited' })).not.toContain('no-upper-limit');
  });

  test('nothing of what it was not asked', () => {
    const result = airRecord(steady(3));
    for (const name of ['leafVapourPressureDeficit', 'leafWetTime', 'coverWetTime', 'degreeDays', 'bands', 'lightDays', 'meanDailyLight', 'dayDeficit']) expect(result).not.toHaveProperty(name);
    expect(result.daytimes.dayStart).toHaveLength(0);
  });
});

test('a frozen cover is wet where the air is saturated over ice, not over water', () => {
  // At -5 °C 401.7 Pa over ice, 421.8 Pa over water; air of 20 °C and 17.6 % has 411.7 Pa.
  const { coverWetTime } = airRecord({ ...steady(2), relativeHumidity: column('%', 17.6, 17.6), coverTemperature: column('°C', -5, -5) });
  expect(coverWetTime!.in('h')).toBe(1);
});

test('what a sensor shows below zero at night is no radiation', () => {
  const { lightDays } = airRecord({ ...steady(3), globalRadiation: column('W/m²', -4, -4, -4) });
  expect([lightDays!.radiationSum!.si[0], lightDays!.dailyLight.si[0]]).toEqual([0, 0]);
});

test('an offset is added to the readings, and where a leaf or cover is not read it is reckoned', () => {
  const result = airRecord({ ...steady(3), temperatureOffset: '-1 K', humidityOffset: 0.05, leafTemperature: column('°C', 18, null, 18), leafTemperatureOffset: '2 K' });
  const same = airRecord({ ...steady(3), airTemperature: column('°C', 19, 19, 19), relativeHumidity: column('%', 65, 65, 65), leafTemperature: column('°C', 18, 21, 18) });
  expect(result.meanDeficit.si).toBeCloseTo(same.meanDeficit.si, 8);
  expect(result.leafVapourPressureDeficit!.si[1]).toBeCloseTo(same.leafVapourPressureDeficit!.si[1]!, 8);
});

test('a column of wet bulbs keeps gaps, counts what is iced or too moist, and is row by row the single one', () => {
  const { wetBulbTemperature, notes } = wetBulbColumn({ airTemperature: column('°C', 25, null, 3, 20), relativeHumidity: column('%', 60, 60, 30, 101) });
  expect(wetBulbColumn({ airTemperature: column('°C', null), relativeHumidity: column('%', 101) }).notes.map(({ code }) => code)).toEqual(['gaps']);
  expect(wetBulbColumn({ airTemperature: column('°C', -5), relativeHumidity: column('%', 100) }).notes.map(({ code }) => code)).toContain('supercooled-wick');
  expect(wetBulbTemperature.in('°C')[0]).toBeCloseTo(wetBulb({ airTemperature: '25 °C', relativeHumidity: '60 %' }).wetBulbTemperature.in('°C'), 9);
  expect(wetBulbTemperature.in('°C')[1]).toBeNaN();
  expect(wetBulbTemperature.in('°C')[3]).toBeCloseTo(20, 9);
  expect(notes.map(({ code }) => code)).toEqual(['saturation-equation', 'gaps', 'outside-range', 'saturation-equation', 'iced-wick']);
});
