/**
 * Every conversion between every two units of every dimension is the correctly rounded double, against decimals of 400 digits.
 */
import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import * as dimensions from '../../src/units/dimensions.js';
import type { DimensionDefinition, UnitRow } from '../../src/units/dimension.js';
import { quantity, type Dimension } from '../../src/units/index.js';
import { quantityIn, unitOf } from '../../src/units/quantity.js';

const Exact = Decimal.clone({ precision: 400, toExpNeg: -400, toExpPos: 400 });
const table = dimensions as unknown as Readonly<Record<string, DimensionDefinition<Dimension>>>;

const ratio = ([n, d]: readonly [bigint, bigint, ...unknown[]]): Decimal => new Exact(n.toString()).div(d.toString());
/** The number that a double is, not the shortest decimal that stands for it. */
const binary = (x: number): Decimal => (Number.isInteger(x) ? new Exact(x) : binary(x * 2).div(2));
/** One division at the end, so that ties stay ties. */
const exactly = (x: number, from: UnitRow, to: UnitRow): number => {
  const [fromN, fromD, toN, toD] = [from[0], from[1], to[0], to[1]].map((whole) => new Exact(whole.toString())) as [Decimal, Decimal, Decimal, Decimal];
  const [[a, b], [c, d]] = [from, to].map((row) => (row.length === 3 ? row[2] : [0n, 1n]).map((whole) => new Exact(whole.toString()))) as [[Decimal, Decimal], [Decimal, Decimal]];
  const numerator = binary(x).mul(fromN).mul(b).mul(d).add(a.mul(d).mul(fromD)).sub(c.mul(b).mul(fromD)).mul(toD);
  return Number(numerator.div(fromD.mul(toN).mul(b).mul(d)).toString());
};

/** A fixed sequence of doubles over many sizes (linear congruential, Numerical Recipes constants). */
function* doubles(count: number): Generator<number> {
  let state = 1;
  for (let i = 0; i < count; i++) {
    state = (state * 1664525 + 1013904223) % 2 ** 32;
    yield (state / 2 ** 32) * 10 ** ((i % 19) - 9);
  }
}
const values = [1, 60, 0.1, 3.785, -17.7, 451, 1e-7, ...doubles(20)];

describe.each(Object.entries(table))('%s', (name, definition) => {
  test('is named as it is exported', () => expect(definition.name).toBe(name));

  const rows = Object.entries(definition.units);
  test.each(rows)('from %s to each other unit', (from, row) => {
    for (const [to, target] of rows) {
      for (const x of values) {
        const got = quantityIn(definition, x, unitOf(definition, from)).in(to as never);
        expect(got, `${x} ${from} in ${to}`).toBe(exactly(x, row, target));
      }
    }
  });

  test('aliases stand for units of the table', () => {
    for (const [alias, symbol] of Object.entries(definition.aliases)) {
      expect(definition.units).toHaveProperty([symbol]);
      expect(quantityIn(definition, 1, unitOf(definition, alias)).unit).toBe(symbol);
    }
  });
});

describe('definitions', () => {
  // Exact by definition: SI brochure, international yard and pound agreement of 1959, NIST Handbook 44 (gallon of 231 in³),
  // Weights and Measures Act 1985 (imperial gallon), NIST SP 811 Appendix B (conventional columns, Btu IT). From memory of those texts.
  test.each([
    ['length', 'in', '0.0254'], ['length', 'ft', '0.3048'], ['length', 'yd', '0.9144'],
    ['mass', 'lb', '0.45359237'], ['mass', 'oz', '0.028349523125'],
    ['volume', 'US gal', '0.003785411784'], ['volume', 'imp gal', '0.00454609'], ['volume', 'US fl oz', '0.0000295735295625'], ['volume', 'ft³', '0.028316846592'],
    ['area', 'acre', '4046.8564224'], ['area', 'ha', '10000'],
    ['pressure', 'atm', '101325'], ['pressure', 'm H2O', '9806.65'], ['pressure', 'ft H2O', '2989.06692'], ['pressure', 'inHg', '3386.388640341'], ['pressure', 'mmHg', '133.322387415'],
    ['energy', 'BTU', '1055.05585262'], ['power', 'hp', '745.69987158227022'],
  ] as const)('%s: one %s is %s in SI', (dimension, unit, si) => {
    expect(ratio(table[dimension]!.units[unit]!).toString()).toBe(new Exact(si).toString());
  });

  const factor = (dimension: string, unit: string): Decimal => ratio(table[dimension]!.units[unit]!);
  test('areas are squares and volumes are cubes of lengths', () => {
    for (const [unit, length] of [['cm²', 'cm'], ['mm²', 'mm'], ['in²', 'in'], ['ft²', 'ft']] as const) expect(factor('area', unit).eq(factor('length', length).pow(2)), unit).toBe(true);
    for (const [unit, length] of [['cm³', 'cm'], ['in³', 'in'], ['ft³', 'ft']] as const) expect(factor('volume', unit).eq(factor('length', length).pow(3)), unit).toBe(true);
    expect(factor('volume', 'US gal').eq(factor('volume', 'in³').mul(231))).toBe(true);
    expect(factor('area', 'acre').eq(factor('length', 'ft').pow(2).mul(43560))).toBe(true);
  });

  test('compound units are made of their parts', () => {
    const same = (left: Decimal, right: Decimal): void => expect(left.sub(right).abs().lt('1e-45'), `${left} and ${right}`).toBe(true);
    same(factor('pressure', 'psi').mul(factor('length', 'in').pow(2)), factor('mass', 'lb').mul('9.80665'));
    same(factor('flow', 'US gal/min').mul(60), factor('volume', 'US gal'));
    same(factor('flow', 'imp gal/min').mul(60), factor('volume', 'imp gal'));
    same(factor('flow', 'ft³/s'), factor('volume', 'ft³'));
    same(factor('massConcentration', 'oz/100 US gal').mul(factor('volume', 'US gal')).mul(100), factor('mass', 'oz'));
    same(factor('density', 'lb/ft³').mul(factor('volume', 'ft³')), factor('mass', 'lb'));
    same(factor('power', 'BTU/h').mul(3600), factor('energy', 'BTU'));
    same(factor('power', 'hp'), factor('length', 'ft').mul(550).mul(factor('mass', 'lb')).mul('9.80665'));
    same(factor('heatTransfer', 'BTU/(h·ft²·°F)').mul(factor('area', 'ft²')).mul(factor('temperatureDifference', '°F')), factor('power', 'BTU/h'));
  });

  test('one Cv in Kv: Q = Kv √(Δp/bar) and Q = Cv √(Δp/psi) are the same flow', () => {
    const cubicMetresPerHour = factor('flow', 'US gal/min').mul(3600);
    const kv = cubicMetresPerHour.div(factor('pressure', 'psi').div(factor('pressure', 'bar')).sqrt());
    expect(factor('flowCoefficient', 'Cv').sub(kv).abs().lt('1e-43')).toBe(true);
    // IEC 60534-2-1 prints Kv = 0.865 Cv.
    expect(factor('flowCoefficient', 'Cv').toFixed(3)).toBe('0.865');
  });
});

describe('quantities known from tables', () => {
  // Decimals worked out from the definitions; 1 psi in metres of water and 1 ft³/s in US gal/min as printed in NIST SP 811 Appendix B (from memory).
  test.each([
    ['1 psi', 'pressure', 'kPa', 6.894757293168361], ['1 bar', 'pressure', 'psi', 14.503773773020923], ['1 psi', 'pressure', 'm H2O', 0.7030695796391593],
    ['1 ft³/s', 'flow', 'US gal/min', 448.8311688311688], ['1 US gal/min', 'flow', 'L/h', 227.12470704],
    ['212 °F', 'temperature', '°C', 100], ['-40 °C', 'temperature', '°F', -40], ['0 °F', 'temperature', 'K', 255.3722222222222],
    ['1 oz/100 US gal', 'massConcentration', 'mg/L', 74.8915170730604],
    ['1 meq/L', 'alkalinity', 'mg/L CaCO3', 50.043], ['10 °dH', 'alkalinity', 'meq/L', 3.566524600103],
    ['1 mS/cm', 'conductivity', 'dS/m', 1], ['1 MJ/m²', 'radiationSum', 'J/cm²', 100], ['1:100', 'dilution', '%', 1],
  ] as const)('%s is a %s', (text, dimension, unit, expected) => {
    expect(quantity(text as never, dimension).in(unit as never)).toBeCloseTo(expected, 9);
  });
});
