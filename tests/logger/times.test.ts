import { describe, expect, test } from 'vitest';
import { readLoggerText, type LoggerOptions, type TimeFormat } from '../../src/logger/index.js';

const file = (stamps: readonly string[]): string => `time;Temp (°C)\n${stamps.map((stamp) => `${stamp};18`).join('\n')}\n`;
const read = (stamps: readonly string[], options: LoggerOptions = {}) => readLoggerText(file(stamps), options);
const hours = (stamps: readonly string[], options: LoggerOptions = {}): number[] => [...(read(stamps, options).columns as { readingTime: { in(unit: 'h'): Float64Array } }).readingTime.in('h')];
const formatted = (format: TimeFormat, more: object = {}) => ({ columns: { readingTime: { column: 0, format, ...more } } });

describe('formats', () => {
  test.each<[string, string, string, number]>([
    ['2026-04-12T08:30', 'YYYY-MM-DD', '2026-04-12', 8.5], ['2026-04-12 08:30:00', 'YYYY-MM-DD', '2026-04-12', 8.5], ['2026/4/12 8:30', 'YYYY-MM-DD', '2026-04-12', 8.5],
    ['20260412T083000', 'YYYY-MM-DD', '2026-04-12', 8.5], ['2026-04-12T08:30:00.500', 'YYYY-MM-DD', '2026-04-12', 8.5 + 0.5 / 3600], ['2026-04-12', 'YYYY-MM-DD', '2026-04-12', 0],
    ['12.04.2026 08:30', 'DD.MM.YYYY', '2026-04-12', 8.5], ['12.04.26, 08:30', 'DD.MM.YYYY', '2026-04-12', 8.5], ['2.4.2026 8:30', 'DD.MM.YYYY', '2026-04-02', 8.5],
    ['13/04/2026 08:30', 'DD/MM/YYYY', '2026-04-13', 8.5], ['04/13/2026 08:30', 'MM/DD/YYYY', '2026-04-13', 8.5], ['13-04-2026 08:30', 'DD/MM/YYYY', '2026-04-13', 8.5],
    ['4/13/2026 8:30:00 PM', 'MM/DD/YYYY', '2026-04-13', 20.5], ['4/13/2026 12:30 AM', 'MM/DD/YYYY', '2026-04-13', 0.5], ['4/13/26 12:30 p.m.', 'MM/DD/YYYY', '2026-04-13', 12.5],
    ['2026-04-12 24:00', 'YYYY-MM-DD', '2026-04-13', 0],
    // 2026-04-12 is 46,124 days after 1899-12-30; 08:30 is 0.354166… of a day.
    ['46124.3541666667', 'spreadsheet day', '2026-04-12', 8.5],
    // 20,555 days after 1970-01-01.
    ['1775982600', 'Unix s', '2026-04-12', 8.5], ['1775982600000', 'Unix ms', '2026-04-12', 8.5],
  ])('%s', (stamp, format, firstDay, hour) => {
    expect(read([stamp])).toMatchObject({ firstDay, time: { format, guessed: true }, problems: [] });
    expect(hours([stamp])[0]).toBeCloseTo(hour, 9);
  });

  test('what follows a time of day may change from row to row', () => {
    const ofDay = ['8:30 AM', '8:30 PM', '12:05 PM', '12:05 AM', '0:30 PM', '13:00 AM', '13:00', '8:30', '24:00', '25:00', '8:30:59 pm', '8:30:60 pm', '08:30:00.5'];
    const found = hours(ofDay.map((time) => `13/04/2026 ${time}`), formatted('DD/MM/YYYY'));
    expect(found).toEqual([8.5, 20.5, 12 + 5 / 60, 5 / 60, NaN, NaN, 13, 8.5, 24, NaN, 20 + (30 * 60 + 59) / 3600, NaN, 8.5 + 0.5 / 3600]);
    const offsets = ['08:30Z', '09:30+01:00', '08:30-01', '8:30 UTC', '08:30:00Z', '10:30:00+02:00'];
    expect(hours(offsets.map((time) => `2026-04-12 ${time}`))).toEqual([8.5, 8.5, 9.5, 8.5, 8.5, 8.5]);
    const nowhere = ['08:00+99:99', '08:10+15:00', '08:20+02:60', '08:30-13:00', '08:40+14:00', '08:50+02:60', '09:00-12:00'];
    expect(hours(nowhere.map((time) => `2026-04-12 ${time}`))).toEqual([NaN, NaN, NaN, NaN, 8 + 40 / 60, NaN, 35]);
    expect(read(nowhere.map((time) => `2026-04-12 ${time}`)).problemCounts).toEqual({ 'bad-time': 5 });
    const alike = ['2026-04-12 08:30+02:00', '2026-04-12 08:40+02:00'];
    expect(read(alike).problems).toEqual([]);
    expect(hours(alike, { timeZone: 'UTC' })).toEqual([6.5, 6.5 + 1 / 6]);
  });

  test('days, months and years are those of the calendar', () => {
    expect(hours(['2024-02-28 00:00', '2024-02-29 00:00', '2024-03-01 00:00', '2025-03-01 00:00'])).toEqual([0, 24, 48, 48 + 365 * 24]);
    expect(read(['2024-02-29 00:00', '2025-02-29 00:00', '2026-13-01 00:00', '2026-04-31 00:00', '2026-04-12 25:00', '2026-04-12 10:60', '13:00 PM', '']).problemCounts).toEqual({ 'bad-time': 7 });
  });

  test('date and time in columns of their own', () => {
    const text = 'Date,Temp (°C),Time\n12.04.2026,18,08:30\n13.04.2026,19,1:15:30 PM\n';
    expect(readLoggerText(text)).toMatchObject({ firstDay: '2026-04-12', time: { columns: [0, 2], headers: ['Date', 'Time'] } });
    expect([...readLoggerText(text).columns.readingTime!.in('s')]).toEqual([30_600, 86_400 + 47_730]);
    expect(readLoggerText(text, { columns: { readingTime: { column: ['Date', 'Time'] } } }).columns.readingTime.in('h')[0]).toBe(8.5);
  });

  test('day or month first is asked for where the file leaves it open', () => {
    expect(() => read(['04/12/2026 08:00', '05/12/2026 08:00'])).toThrow(/columns\.readingTime\.format: 'DD\/MM\/YYYY' or 'MM\/DD\/YYYY'.*say which/s);
    expect(() => read(['13/04/2026 08:00', '04/13/2026 08:00'])).toThrow(/go by both/);
    expect(read(['04/12/2026 08:00'], formatted('DD/MM/YYYY')).firstDay).toBe('2026-12-04');
    expect(read(['04/12/2026 08:00'], formatted('MM/DD/YYYY')).firstDay).toBe('2026-04-12');
    expect(read(['04/12/2026 08:00', '04/13/2026 08:00']).firstDay).toBe('2026-04-12');
  });

  test('an elapsed time, with and without a start', () => {
    const text = 'elapsed (min),Temp (°C)\n0,18\n90,19\n';
    expect(readLoggerText(text)).toMatchObject({ firstDay: undefined, time: { format: 'elapsed min', clock: 'since the start' } });
    expect([...readLoggerText(text).columns.readingTime!.in('h')]).toEqual([0, 1.5]);
    const started = readLoggerText(text, { columns: { readingTime: { column: 0, format: 'elapsed min', start: '2026-04-12 08:00' } } });
    expect([...started.columns.readingTime.in('h')]).toEqual([8, 9.5]);
    expect(started.firstDay).toBe('2026-04-12');
  });

  test('numbers of which nothing says what they count are asked about', () => {
    expect(() => readLoggerText('time,Temp (°C)\n0,18\n600,19\n')).toThrow(/readingTime\.format: what the numbers count/);
    expect(() => read(['2026-04-12 08:00'], formatted('DD-MM' as TimeFormat))).toThrow(/format: one of 'YYYY-MM-DD'/);
    expect(() => read(['2026-04-12 08:00'], formatted('YYYY-MM-DD', { start: '2026-04-12' }))).toThrow(/start: none with stamps/);
  });

  test('a file without time has its other columns', () => {
    const { columns, time, firstDay } = readLoggerText('Temp (°C),RH (%)\n18,80\n19,81\n');
    expect([time, firstDay, columns.readingTime, columns.airTemperature!.length]).toEqual([undefined, undefined, undefined, 2]);
  });
});

describe('clocks', () => {
  test('offsets from UTC are used', () => {
    const stamps = ['2026-03-29T01:30:00+01:00', '2026-03-29T03:00:00+02:00', '2026-03-29T01:30Z'];
    expect(hours(stamps)).toEqual([1.5, 2, 2.5]);
    expect(read(stamps).time!.clock).toBe('UTC+01:00');
    expect(hours(['2026-04-12T23:00:00Z'], { timeZone: 'Europe/Vienna' })).toEqual([0]);
    expect(read(['2026-04-12T23:00:00Z'], { timeZone: 'Europe/Vienna' })).toMatchObject({ firstDay: '2026-04-13', time: { clock: 'standard time of Europe/Vienna' } });
    expect(read(['2026-04-12T08:00Z', '2026-04-12T09:00']).problems).toMatchObject([{ kind: 'bad-time', line: 3, hint: 'give timeZone' }]);
  });

  test('Unix time in a zone', () => {
    // 08:30 UTC is 09:30 by the standard time of Vienna.
    expect(hours(['1775982600'], { timeZone: 'Europe/Vienna' })).toEqual([9.5]);
  });

  // In Vienna the clock went from 02:00 to 03:00 on 2026-03-29, and from 03:00 back to 02:00 on 2026-10-25.
  test('spring: the hour that the clock skips is no gap', () => {
    expect(hours(['2026-03-29 01:30', '2026-03-29 03:00', '2026-03-29 03:30'], { timeZone: 'Europe/Vienna' })).toEqual([1.5, 2, 2.5]);
    expect(read(['2026-03-29 01:30', '2026-03-29 02:30'], { timeZone: 'Europe/Vienna' }).problems).toMatchObject([{ kind: 'skipped-hour', line: 3, hint: expect.stringContaining('standard time') }]);
  });

  test('autumn: the hour that comes twice goes by the order of the rows', () => {
    const stamps = ['01:30', '02:00', '02:30', '02:00', '02:30', '03:00'].map((time) => `2026-10-25 ${time}`);
    expect(hours(stamps, { timeZone: 'Europe/Vienna' })).toEqual([0.5, 1, 1.5, 2, 2.5, 3]);
    expect(read(stamps, { timeZone: 'Europe/Vienna' }).problems).toEqual([]);
    const hourly = ['00:00', '01:00', '02:00', '02:00', '03:00'].map((time) => `2026-10-25 ${time}`);
    expect(hours(hourly, { timeZone: 'Europe/Vienna' })).toEqual([-1, 0, 1, 2, 3].map((hour) => hour + 24));
    const doubled = ['02:00', '02:10', '02:10', '02:20'].map((time) => `2026-10-25 ${time}`);
    expect(read(doubled, { timeZone: 'Europe/Vienna' }).problems).toMatchObject([{ kind: 'duplicate-time', line: 4 }]);
  });

  test('the southern summer', () => {
    // Sydney: standard time is UTC+10; on 2026-04-05 the clock goes from 03:00 back to 02:00.
    expect(hours(['2026-04-05 02:30', '2026-04-05 02:30', '2026-04-05 03:30'].slice(0, 1), { timeZone: 'Australia/Sydney' })).toEqual([1.5]);
    expect(hours(['2026-04-05 03:30'], { timeZone: 'Australia/Sydney' })).toEqual([3.5]);
  });

  test('without a zone, a clock put back is named', () => {
    const stamps = ['02:40', '02:50', '02:00', '02:10'].map((time) => `2026-10-25 ${time}`);
    expect(read(stamps).problems).toMatchObject([{ kind: 'clock-back', line: 4, found: '"2026-10-25 02:00"', hint: expect.stringContaining('give timeZone') }]);
    expect(hours(stamps)[2]).toBe(2);
  });

  test('time that runs backwards, and stamps that come twice', () => {
    const stamps = ['08:00', '08:10', '08:10', '08:20', '07:00', '07:10'].map((time) => `2026-04-12 ${time}`);
    expect(read(stamps).problems).toMatchObject([{ kind: 'duplicate-time', line: 4 }, { kind: 'time-backwards', line: 6 }]);
    expect(read(['08:20', '08:10', '08:00', '07:50'].map((time) => `2026-04-12 ${time}`)).problems.at(-1)).toMatchObject({ kind: 'newest-first', hint: 'turn the rows round' });
  });

  test('a zone does not go with an elapsed time', () => {
    expect(() => readLoggerText('elapsed (min),Temp (°C)\n0,18\n', { timeZone: 'Europe/Vienna' })).toThrow(/timeZone: none with an elapsed time/);
  });
});
