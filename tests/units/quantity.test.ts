import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { column, dimensionNames, isColumn, isQuantity, quantity, unitsOf, type Dimension } from '../../src/units/index.js';
import { pressure } from '../../src/units/dimensions.js';
import { isRead, readQuantity } from '../../src/units/read.js';
import { writeNumber } from '../../src/units/write.js';

const dimension = fc.constantFrom(...dimensionNames());
const number = fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e12, max: 1e12 }).filter((x) => x === 0 || Math.abs(x) > 1e-100);
const written = fc.tuple(dimension, number, fc.nat()).map(([name, value, pick]): readonly [Dimension, string, string] => {
  const units = unitsOf(name);
  const unit = units[pick % units.length]!;
  return [name, `${value} ${unit}`, unit];
});

describe('a quantity', () => {
  test('survives storage digit by digit', () => {
    fc.assert(fc.property(written, ([name, text, unit]) => {
      const first = quantity(text as never, name);
      const again = quantity(JSON.parse(JSON.stringify(first)) as never, name);
      expect(again.in(unit as never)).toBe(first.in(unit as never));
      expect(again.si).toBe(first.si);
    }));
  });

  test('is the same in every unit, to the last digit or two', () => {
    fc.assert(fc.property(written, fc.nat(), ([name, text, unit], pick) => {
      const other = unitsOf(name)[pick % unitsOf(name).length]!;
      const first = quantity(text as never, name);
      const back = first.as(other as never).as(unit as never).in(unit as never);
      const scale = Math.abs(first.in(unit as never)) + (name === 'temperature' ? 500 : 0);
      expect(Math.abs(back - first.in(unit as never))).toBeLessThanOrEqual(4 * Number.EPSILON * scale);
    }));
  });

  test('is recognised by its mark and has no number without a unit', () => {
    const q = quantity('60 psi', 'pressure');
    expect(isQuantity(q)).toBe(true);
    expect(isQuantity({ si: 1, unit: 'Pa' })).toBe(false);
    expect(`${q}`).toBe('60 psi');
    expect(() => Number(q)).toThrow("use .in('psi')");
  });

  test('refuses units of other dimensions', () => {
    expect(() => quantity('60 psi', 'pressure').in('°C' as never)).toThrow("'°C' is not a unit of pressure");
    expect(() => quantity('60 psi' as never, 'temperature')).toThrow('temperature');
    expect(() => quantity('1 m', 'lengths' as never)).toThrow("'lengths' is not a dimension");
  });

  test('reads plain-keyboard spellings', () => {
    expect(quantity('21 degC', 'temperature').unit).toBe('°C');
    expect(quantity('1800 uS/cm', 'conductivity').in('mS/cm')).toBe(1.8);
    expect(quantity('300 umol/(m2*s)', 'photonFlux').unit).toBe('µmol/(m²·s)');
    expect(quantity('5 m3/h', 'flow').unit).toBe('m³/h');
  });
});

describe('reading a text', () => {
  const hint = (text: unknown): string | undefined => {
    const reading = readQuantity(pressure, text);
    if (isRead(reading)) throw new Error(`${String(text)} was read`);
    return reading.hint;
  };

  test.each([
    ['1,5 bar', "'1.5 bar'"], ['1,021 Pa', "'1021 Pa' or '1.021 Pa'"], ['60psi', "'60 psi'"], ['60  psi', "'60 psi'"], ['60\u00a0psi', "'60 psi'"],
    ['5 KPA', "'5 kPa'"], ['60', 'unit is missing'], ['60 psia', 'subtract the atmosphere'], ['60 pis', 'not a unit of pressure'], ['1e309 Pa', 'too large'],
  ])('%s gets a hint and no guess', (text, words) => expect(hint(text)).toContain(words));

  test('a gallon asks whose', () => expect(() => quantity('5 gal' as never, 'volume')).toThrow("'5 US gal' or '5 imp gal'"));

  test.each([NaN, Infinity, 60, '', ' ', null, undefined, [], {}, true, 'NaN kPa', 'Infinity kPa', '0x10 kPa', '1_0 kPa', '--1 kPa', '1e kPa', '. kPa', `${'9'.repeat(80)} kPa`, { si: 5 }])('%s is refused', (value) => {
    expect(isRead(readQuantity(pressure, value))).toBe(false);
  });

  test('never throws and never takes long', () => {
    fc.assert(fc.property(fc.anything(), (value) => {
      readQuantity(pressure, value);
    }));
    const start = performance.now();
    for (const text of [`${'1'.repeat(1e6)} kPa`, `${'1,'.repeat(1e6)}bar`, ' '.repeat(1e6)]) readQuantity(pressure, text);
    expect(performance.now() - start).toBeLessThan(1000);
  });
});

describe('writing a number', () => {
  // Common practice, no source: four significant digits are what an instrument of this trade can show.
  test.each([[0, '0'], [1.0443711, '1.044'], [24, '24'], [101.325, '101.3'], [12345.6, '12346'], [0.00012346, '0.0001235'], [-3.5, '-3.5'], [1e-9, '1e-9'], [6.02e23, '6.02e+23'], [100, '100'], [9.9999, '10']])('%d as %s', (value, text) => expect(writeNumber(value)).toBe(text));
});

describe('a column', () => {
  test('keeps what was written, gaps included', () => {
    const c = column([20, 22.5, null], '°C', 'temperature');
    expect(isColumn(c)).toBe(true);
    expect([...c.in('°F')]).toEqual([68, 72.5, NaN]);
    expect(JSON.parse(JSON.stringify(c))).toEqual({ unit: '°C', values: [20, 22.5, null] });
    expect(String(c.at(-2))).toBe('22.5 °C');
    expect([...column([Infinity, -Infinity], '°F', 'temperature').in('K')]).toEqual([Infinity, -Infinity]);
    expect(c.as('K').at(0)!.in('°C')).toBeCloseTo(20, 12);
    expect([...c].map(String).slice(0, 2)).toEqual(['20 °C', '22.5 °C']);
  });
});
