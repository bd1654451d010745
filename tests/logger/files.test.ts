import { describe, expect, test } from 'vitest';
import { readLoggerText, type LoggerOptions } from '../../src/logger/index.js';

/** The numbers of a column, in the unit it is shown in. */
const numbers = (text: string, name: string, options: LoggerOptions = {}): number[] => {
  const column = (readLoggerText(text, options).columns as Record<string, { unit: string; in(unit: string): Float64Array }>)[name]!;
  return [...column.in(column.unit)];
};
const two = (head: string, separator = ','): string => [head, ['2026-04-12 08:00', '18.5', '81'].join(separator), ['2026-04-12 08:10', '19', '79.5'].join(separator), ''].join('\n');

describe('separator and decimal mark', () => {
  test.each([',', ';', '\t'] as const)('%j is found', (separator) => {
    const text = two(['time', 'Temp (°C)', 'RH (%)'].join(separator), separator);
    expect(readLoggerText(text)).toMatchObject({ separator, decimal: '.', rows: 2, firstDay: '2026-04-12', headerLine: 1, problems: [] });
    expect(numbers(text, 'relativeHumidity')).toEqual([81, 79.5]);
  });

  test('a decimal comma beside semicolons', () => {
    const text = 'time;Temp (°C);RH (%)\n2026-04-12 08:00;18,5;81,25\n2026-04-12 08:10;-0,5;79\n';
    expect(readLoggerText(text)).toMatchObject({ separator: ';', decimal: ',' });
    expect(numbers(text, 'airTemperature')).toEqual([18.5, -0.5]);
  });

  test('a decimal comma in quotes beside commas', () => {
    const text = 'time,Temp (°C)\n2026-04-12 08:00,"18,5"\n2026-04-12 08:10,"19,0"\n';
    expect(readLoggerText(text)).toMatchObject({ separator: ',', decimal: ',' });
    expect(numbers(text, 'airTemperature')).toEqual([18.5, 19]);
  });

  test('a mark of the other kind is no number', () => {
    const text = 'time;Temp (°C)\n2026-04-12 08:00;18.5\n2026-04-12 08:10;19.5\n2026-04-12 08:20;1,5\n';
    expect(numbers(text, 'airTemperature')).toEqual([18.5, 19.5, NaN]);
    expect(readLoggerText(text).problems).toMatchObject([{ kind: 'unreadable', line: 4, found: '"1,5"', hint: "a decimal comma? give decimal: ','" }]);
  });

  test('both can be given', () => {
    const text = 'x;y,Temp (°C)\n1;2,18\n3;4,19\n';
    expect(readLoggerText(text, { separator: ',' }).taken).toMatchObject([{ name: 'airTemperature', column: 1 }]);
    expect(numbers('x,Temp (°C)\n0,"1,234"\n', 'airTemperature', { decimal: ',' })).toEqual([1.234]);
  });
});

describe('lines', () => {
  test('BOM, CR LF, quotes, blanks around cells, blank lines', () => {
    const text = '\uFEFF"time" , "Temp (°C)"\r\n2026-04-12 08:00, 18.5 \r\n\r\n"2026-04-12 08:10","19"\r\n  \r\n';
    expect(numbers(text, 'airTemperature')).toEqual([18.5, 19]);
    expect(readLoggerText(text)).toMatchObject({ rows: 2, problems: [] });
  });

  test('CR alone', () => {
    expect(numbers('time,Temp (°C)\r2026-04-12 08:00,18.5\r2026-04-12 08:10,19', 'airTemperature')).toEqual([18.5, 19]);
  });

  test('lines are counted through line breaks in quotes', () => {
    const text = 'time,Temp (°C),remark\n2026-04-12 08:00,18.5,"vent\nopen\r\nby hand"\n2026-04-12 08:10,?,\n';
    expect(readLoggerText(text)).toMatchObject({ rows: 2, problems: [{ kind: 'unreadable', line: 5, column: 'airTemperature', expected: 'a number', found: '"?"' }] });
  });

  test('what stands before the header is reported', () => {
    const text = 'Teaching garden;tunnel\nSerial;12345\n\n# recorded every 10 min\ntime;Temp (°C);RH (%)\n2026-04-12 08:00;18,5;81\n# battery changed\n2026-04-12 08:10;19;80\n';
    expect(readLoggerText(text)).toMatchObject({
      rows: 2, headerLine: 5, problems: [],
      remarks: [{ line: 1, text: 'Teaching garden;tunnel' }, { line: 2, text: 'Serial;12345' }, { line: 4, text: '# recorded every 10 min' }, { line: 7, text: '# battery changed' }],
    });
  });

  test('more lines before the header than behind it', () => {
    expect(readLoggerText('Teaching garden\nTunnel, north end\nbed 2\n5 x 8 m\ntime;Temp (°C);RH (%)\n2026-04-12 08:00;18,5;81,5\n')).toMatchObject({ separator: ';', headerLine: 5, rows: 1, problems: [] });
  });

  test('a single column', () => {
    expect(numbers('Temp (°C)\n18.5\n19\n', 'airTemperature')).toEqual([18.5, 19]);
  });

  test('as many cells before the header as in it', () => {
    const text = 'Serial;12345\nPlace;tunnel\ntime;Temp (°C)\n2026-04-12 08:00;18,5\n2026-04-12 08:10;19\n';
    expect(readLoggerText(text)).toMatchObject({ headerLine: 3, rows: 2, remarks: [{ line: 1 }, { line: 2 }] });
  });

  test('the line of the header can be given', () => {
    const text = 'time,Temp (°F),RH (%)\ntime,Temp (°C),RH (%)\n2026-04-12 08:00,50,81\n';
    expect(readLoggerText(text, { headerLine: 2 }).taken[0]!.unit).toBe('°C');
    expect(readLoggerText(text, { headerLine: 1 })).toMatchObject({ rows: 2, problems: [{ line: 2 }, { line: 2 }, { line: 2 }] });
    expect(() => readLoggerText(text, { headerLine: 3 })).toThrow(/headerLine/);
  });

  test('a bad row right below the header stays a row', () => {
    expect(readLoggerText('time,Temp (°C)\nerror,18\n2026-04-12 08:10,19\n2026-04-12 08:20,19\n')).toMatchObject({ rows: 3, problems: [{ kind: 'bad-time', line: 2, found: '"error"' }] });
  });

  test('a row of words below the header stays a row', () => {
    expect(readLoggerText('time,Temp (°C)\nclock,set\n2026-04-12 08:10,19\n2026-04-12 08:20,19\n')).toMatchObject({ headerLine: 1, rows: 3, problemCounts: { 'bad-time': 1, unreadable: 1 } });
  });

  test('a file without a header is read by index', () => {
    expect(numbers('2026-04-12 08:00,18.5\n2026-04-12 08:10,19\n', 'airTemperature', { columns: { airTemperature: { column: 1, unit: '°C' } } })).toEqual([18.5, 19]);
  });

  test('a file without a header says how its columns are named', () => {
    const text = '2026-04-12 08:00,18.5,60\n2026-04-12 08:10,19,61\n';
    expect(() => readLoggerText(text)).toThrow(/by index is needed, not no header; the first row is "2026-04-12 08:00", "18.5", "60" \(as \{ airTemperature: \{ column: 1, unit: '°C'/);
    expect(() => readLoggerText(text, { columns: { airTemperature: 'Temp' } })).toThrow(/an index from 0 to 2 is needed, not "Temp" \(the file has no header\)/);
  });

  test('the header in the middle of the file is left out and named', () => {
    const header = 'time,Temp (°C)\n';
    const text = `${header}2026-04-12 08:00,18.5\n${header}2026-04-12 08:10,19\n`;
    expect(readLoggerText(text)).toMatchObject({ rows: 2, problems: [{ kind: 'repeated-header', line: 3 }] });
  });
});

describe('units', () => {
  test.each([
    ['Temp (°C)', 'airTemperature', '°C'], ['Temp [°F]', 'airTemperature', '°F'], ['temperature/°C', 'airTemperature', '°C'], ['air_temp_degC', 'airTemperature', '°C'], ['Temperature in °C', 'airTemperature', '°C'],
    ['Temp (C)', 'airTemperature', '°C'], ['Temp, ºC', 'airTemperature', '°C'], ['Air temperature (deg C)', 'airTemperature', '°C'], ['T ℃', 'airTemperature', '°C'], ['T (Celsius)', 'airTemperature', '°C'],
    ['Leaf temp (°C)', 'leafTemperature', '°C'], ['Outside temp. (°C)', 'outsideTemperature', '°C'], ['Dew point (°C)', 'dewPoint', '°C'],
    ['RH [%]', 'relativeHumidity', '%'], ['Humidity (%RH)', 'relativeHumidity', '%'], ['RH (% RH)', 'relativeHumidity', '%'], ['rel. humidity %', 'relativeHumidity', '%'], ['rh_percent', 'relativeHumidity', '%'],
    ['PPFD µmol/m²/s', 'photonFlux', 'µmol/(m²·s)'], ['PAR (µmol m-2 s-1)', 'photonFlux', 'µmol/(m²·s)'], ['PPFD [µmol/(m²·s)]', 'photonFlux', 'µmol/(m²·s)'], ['PPFD (μmol·m⁻²·s⁻¹)', 'photonFlux', 'µmol/(m²·s)'],
    ['PAR umol/m2s', 'photonFlux', 'µmol/(m²·s)'], ['PAR (umol/s/m^2)', 'photonFlux', 'µmol/(m²·s)'],
    ['Radiation W/m²', 'globalRadiation', 'W/m²'], ['Solar (W m-2)', 'globalRadiation', 'W/m²'], ['Global radiation/W/m2', 'globalRadiation', 'W/m²'], ['Barometer (hPa)', 'atmosphericPressure', 'hPa'], ['VPD kPa', 'vapourPressureDeficit', 'kPa'],
  ])('%s', (header, name, unit) => {
    expect(readLoggerText(`time,"${header}"\n2026-04-12 08:00,1\n`).taken).toMatchObject([{ name, unit, unitFrom: 'header', guessed: true }]);
  });

  test('a row of units', () => {
    const text = 'time,Temp,RH\n,[°F],%\n2026-04-12 08:00,68,81\n2026-04-12 08:10,50,80\n';
    expect(readLoggerText(text)).toMatchObject({ rows: 2, headerLine: 1, taken: [{ unit: '°F', unitFrom: 'unit row' }, { unit: '%' }] });
    expect(readLoggerText(text).columns.airTemperature!.in('°C')[1]).toBe(10);
  });

  test('columns by name, by index, with units and dimensions of their own', () => {
    const text = 'when,Temp 1,Temp 2,EC,Tank\n2026-04-12 08:00,68,20,2.1,1.5\n';
    const { columns, taken } = readLoggerText(text, {
      columns: {
        readingTime: 'when', airTemperature: { column: 'Temp 1', unit: '°F' }, leafTemperature: { column: 2, unit: '°C' }, drainConductivity: { column: 'ec', unit: 'mS/cm' },
        tankPressure: { column: 'Tank', unit: 'bar', dimension: 'pressure' },
      },
    });
    expect(columns.airTemperature.in('°C')[0]).toBe(20);
    expect(columns.leafTemperature.in('°F')[0]).toBe(68);
    expect(columns.drainConductivity.dimension).toBe('conductivity');
    expect(columns.tankPressure.in('kPa')[0]).toBe(150);
    expect(columns.readingTime.in('h')[0]).toBe(8);
    expect(taken.every(({ guessed, unitFrom }) => !guessed && unitFrom === 'caller')).toBe(true);
  });

  test('what is left says why', () => {
    const text = 'time,Temp (°C),Temp 2 (°C),Vent (%),Pipe temp (°C),Battery\n2026-04-12 08:00,18,19,5,40,3\n';
    expect(readLoggerText(text).left).toMatchObject([
      { column: 2, why: expect.stringContaining('airTemperature is taken') }, { column: 3, header: 'Vent (%)' }, { column: 4 }, { column: 5, why: expect.stringContaining('no unit') },
    ]);
  });

  test.each<[string, LoggerOptions, RegExp]>([
    ['a column that is not there', { columns: { airTemperature: 'Temperature' } }, /columns\.airTemperature: one of the headers "time", "Temp"/],
    ['an index that is none', { columns: { airTemperature: { column: 9, unit: '°C' } } }, /an index from 0 to 3/],
    ['placeholders that are none', { columns: { airTemperature: { column: 'Temp', unit: '°C', placeholders: 999 as unknown as [] } } }, /a list of numbers/],
    ['no unit', { columns: { airTemperature: 'Temp' } }, /columns\.airTemperature: a unit .*unit: '°C'/],
    ['a unit of something else', { columns: { airTemperature: { column: 'Temp', unit: '%' } } }, /a unit of temperature/],
    ['a unit that is none', { columns: { other: { column: 'Temp', unit: 'blue' } } }, /a known unit/],
    ['a unit of several dimensions', { columns: { tank: { column: 'Temp', unit: 'bar' } } }, /add dimension: '/],
    ['two columns of a name', { columns: { airTemperature: { column: 'x', unit: '°C' } } }, /give the index: 2 or 3/],
    ['nothing that is plain', {}, /columns of the file by name/],
    ['a zone that is none', { timeZone: 'Garden', columns: { readingTime: 'time' } }, /timeZone: the IANA name/],
    ['an option that is none', { zone: 'Europe/Vienna' } as LoggerOptions, /zone: one of columns, separator/],
    ['options of the wrong kind', { separator: '|', headerLine: 0 } as unknown as LoggerOptions, /separator.*\n.*headerLine/],
  ])('%s is refused', (_, options, message) => {
    expect(() => readLoggerText('time,Temp,x,x\n2026-04-12 08:00,18,1,2\n', options)).toThrow(message);
  });

  test('all that is wrong with the columns is said at once', () => {
    expect(() => readLoggerText('time,Temp\n2026-04-12 08:00,18\n', { columns: { airTemperature: 'Temp', relativeHumidity: 'RH' } })).toThrow(/problems with the input: 2/);
  });

  test.each(['', '\n\n', 'garden', 'time,Temp (°C)\n', 'a,b\nc,d\n'])('%j is no table', (text) => {
    expect(() => readLoggerText(text)).toThrow(/source: a header and rows of numbers/);
  });
});
