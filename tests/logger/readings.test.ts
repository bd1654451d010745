import { describe, expect, test } from 'vitest';
import { isInputError } from '../../src/calculation/index.js';
import { readLoggerText, type ColumnRequest } from '../../src/logger/index.js';

const stamp = (i: number): string => `2026-04-12 ${String(8 + Math.floor(i / 6)).padStart(2, '0')}:${i % 6}0`;
const file = (header: string, cells: readonly string[]): string => `time,${header}\n${cells.map((cell, i) => `${stamp(i)},${cell}`).join('\n')}\n`;
const temperatures = (cells: readonly string[], asked: Partial<Exclude<ColumnRequest, string | number>> = {}) =>
  readLoggerText(file('Temp', cells), { columns: { airTemperature: { column: 'Temp', unit: '°C', ...asked } } });

describe('cells', () => {
  test('missing readings are counted, not reported', () => {
    const { columns, taken, problems, rows } = temperatures(['18', '', ' ', 'NaN', 'null', '-', '--', 'N/A', '19']);
    expect([...columns.airTemperature.in('°C')]).toEqual([18, NaN, NaN, NaN, NaN, NaN, NaN, NaN, 19]);
    expect([taken[0]!.missing, problems, rows]).toEqual([7, [], 9]);
  });

  test('numbers in all their forms', () => {
    const written = ['18', '18.0', '-0.5', '+1.5', '.5', '5.', '1.85e1', '\u22121.5', '0018.5', '18.123456789012345678', '0.1', '12.345'];
    expect([...temperatures(written).columns.airTemperature.in('°C')]).toEqual([18, 18, -0.5, 1.5, 0.5, 5, 18.5, -1.5, 18.5, 18.123456789012345678, 0.1, 12.345]);
  });

  test('what cannot be read is named by line and kept as missing', () => {
    const { columns, problems, problemCounts } = temperatures(['18', 'err', '1 8', '18 °C', '0x10', 'Infinity', '1e999', '1,2']);
    expect([...columns.airTemperature.in('°C')].slice(1).every(Number.isNaN)).toBe(true);
    expect(problems[0]).toEqual({ kind: 'unreadable', line: 3, column: 'airTemperature', expected: 'a number', found: '"err"', hint: undefined });
    expect(problemCounts).toEqual({ unreadable: 6, 'too-many-cells': 1 });
  });

  test('too few and too many cells, and quotation marks that do not pair', () => {
    const text = 'time,Temp (°C),RH (%)\n2026-04-12 08:00,18,80\n2026-04-12 08:10,1\n2026-04-12 08:20,18,80,7\n2026-04-12 08:30,18,80,\n"2026-04-12 08:40",18,"80\n2026-04-12 08:50,19,81\n';
    const { columns, problems, rows } = readLoggerText(text);
    expect(problems).toMatchObject([
      { kind: 'too-few-cells', line: 3, expected: '3 cells', found: '2' }, { kind: 'too-many-cells', line: 4, found: '4' }, { kind: 'quotes', line: 6 },
    ]);
    expect(rows).toBe(6);
    expect([...columns.airTemperature!.in('°C')]).toEqual([18, NaN, NaN, 18, NaN, 19]);
    expect([...columns.readingTime!.in('h')]).toEqual([8, 8 + 1 / 6, 8 + 1 / 3, 8.5, NaN, 8 + 5 / 6]);
  });

  test('a mark within a cell spoils its line, not the next', () => {
    const text = 'time,Temp (°C),remark\n"2026-04-12 08:00",18,"5" pot"\n"2026-04-12 08:10",19,"5" pot\n"2026-04-12 08:20",20,"vent\nopen"\n"2026-04-12 08:30",21,\n';
    for (const read of [readLoggerText(text), readLoggerText(text.trimEnd()), readLoggerText(text, { separator: ',' })]) {
      expect(read.problems).toMatchObject([{ kind: 'quotes', line: 2 }, { kind: 'quotes', line: 3 }]);
      expect([...read.columns.airTemperature!.in('°C')]).toEqual([NaN, NaN, 20, 21]);
    }
  });

  test('a wrong mark behind a break spoils the one row that it is in', () => {
    const { problems, columns } = readLoggerText('time,Temp (°C),remark\n2026-04-12 08:00,18,\n2026-04-12 08:10,19,"vent\nopen" wide"\n2026-04-12 08:20,20,\n');
    expect(problems).toMatchObject([{ kind: 'quotes', line: 3 }]);
    expect([...columns.airTemperature!.in('°C')]).toEqual([18, NaN, 20]);
  });

  test('a mark that is never closed spoils its line, not the file', () => {
    const rows = Array.from({ length: 9000 }, (_, i) => `2026-04-12 08:00:00,${i === 3 ? '"' : ''}${10 + (i % 10)}`).join('\n');
    const read = readLoggerText(`time,Temp (°C)\n${rows}\n`);
    expect([read.rows, read.problemCounts.quotes, read.problems.find(({ kind }) => kind === 'quotes')!.line]).toEqual([9000, 1, 5]);
    expect(read.columns.airTemperature!.in('°C')[8999]).toBe(19);
  });
});

describe('placeholders and impossible readings', () => {
  test.each(['999', '-999', '9999', '-40', '-40.0', '85', '85.00', '850', '-127'])('%s in a column of temperature', (cell) => {
    const { columns, problems } = temperatures(['18', cell, '19']);
    expect(columns.airTemperature.in('°C')[1]).toBeNaN();
    expect(problems).toMatchObject([{ kind: 'placeholder', line: 3, found: JSON.stringify(cell), hint: expect.stringContaining('it stands for a missing one') }]);
  });

  test('the caller knows better', () => {
    expect(temperatures(['18', '31', '60'], { placeholders: [60] })).toMatchObject({ problems: [{ kind: 'placeholder', line: 4 }] });
    expect(temperatures(['18', '-39'], { placeholders: [-39] }).columns.airTemperature.in('°C')[1]).toBeNaN();
  });

  test('85 °F is a summer day, 185 °F is 85 °C', () => {
    expect(temperatures(['70', '85', '185'], { unit: '°F' }).problems).toMatchObject([{ kind: 'placeholder', line: 4, found: '"185"' }]);
  });

  test('999 is kept where it can be true, and named', () => {
    const { columns, problems } = readLoggerText(file('PPFD (µmol/m²/s)', ['998', '999', '1000', '9999']));
    expect([...columns.photonFlux!.in('µmol/(m²·s)')]).toEqual([998, 999, 1000, NaN]);
    expect(problems).toMatchObject([{ kind: 'perhaps-placeholder', line: 3 }, { kind: 'placeholder', line: 5 }]);
  });

  test('what no sensor can see', () => {
    const { columns, problems } = readLoggerText(file('RH (%)', ['0.1', '100', '102', '102.1', '0', '999']));
    expect([...columns.relativeHumidity!.in('%')]).toEqual([0.1, 100, 102, NaN, NaN, NaN]);
    expect(problems).toMatchObject([{ kind: 'impossible', line: 5, expected: 'a reading from 0.1 to 102 %' }, { kind: 'impossible', line: 6 }, { kind: 'placeholder', line: 7 }]);
  });
});

describe('units that the readings speak against', () => {
  test('humidity from 0 to 1 in a column of %', () => {
    expect(readLoggerText(file('RH (%)', ['0.65', '0.7', '1'])).problems).toMatchObject([{ kind: 'fraction-as-percent', column: 'relativeHumidity', found: '0.65 to 1', hint: expect.stringContaining("unit: 'fraction'") }]);
    expect(readLoggerText(file('RH (%)', ['0.65', '70'])).problems).toEqual([]);
  });

  test('% in a column of fractions', () => {
    expect(readLoggerText(file('RH (fraction)', ['65', '70'])).problemCounts).toEqual({ impossible: 2, 'percent-as-fraction': 1 });
  });

  test('°F in a column of °C, and the other way round', () => {
    expect(readLoggerText(file('Temp (°C)', ['64', '70', '75.5'])).problems.at(-1)).toMatchObject({ kind: 'fahrenheit-as-celsius', found: '64 to 75.5', hint: expect.stringContaining("unit: '°F'") });
    expect(readLoggerText(file('Temp (°C)', ['44', '50', '41'])).problemCounts).toEqual({ 'fahrenheit-as-celsius': 1 });
    expect(readLoggerText(file('Temp (°F)', ['14', '18', '21'])).problemCounts).toEqual({ 'celsius-as-fahrenheit': 1 });
    expect(readLoggerText(file('Temp (°C)', ['18', '36', '41'])).problems).toEqual([]);
  });
});

describe('the report', () => {
  test('keeps the first hundred problems and counts all', () => {
    const { problems, problemCounts } = temperatures(Array.from({ length: 300 }, () => 'x').concat('18'));
    expect([problems.length, problemCounts.unreadable]).toEqual([100, 300]);
  });

  test('strict throws one error that lists them', () => {
    const options = { strict: true } as const;
    expect(readLoggerText(file('Temp (°C)', ['18', '']), options).rows).toBe(2);
    try {
      readLoggerText(file('Temp (°C)', ['18', 'x', '999']), options);
      expect.unreachable();
    } catch (error) {
      expect(isInputError(error) && error.problems).toMatchObject([
        { path: 'lines[3].airTemperature', expected: 'a number', received: '"x"' }, { path: 'lines[4].airTemperature', received: '"999"' },
      ]);
    }
  });
});
