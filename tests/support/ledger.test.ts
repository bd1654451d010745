import { writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { compare } from './compare.js';
import { readDisagreements, readReference, runCheck } from './ledger.js';

const check = {
  id: 'table-1', of: 'vapour/nothing', input: [1], expect: 1.5, tolerance: 0.05,
  source: { kind: 'published', key: 'fao56', where: 'Table 1', mark: 'seen' },
};
const read = (...checks: object[]) => readReference('vapour/toy', JSON.stringify({ title: 'Toy', checks }));

describe('a file of check values', () => {
  test('is read', () => {
    expect(read(check)).toMatchObject({ folder: 'vapour', name: 'vapour/toy', checks: [{ id: 'table-1' }] });
  });

  test.each([
    ['an unknown source', { source: { ...check.source, key: 'nobody' } }, /no source 'nobody' in src\/sources.ts/],
    ['an unknown kind', { source: { ...check.source, kind: 'heard' } }, /kind/],
    ['an unknown mark', { source: { ...check.source, mark: 'sure' } }, /mark/],
    ['a published value without its source', { source: { kind: 'published', where: 'Table 1', mark: 'seen' } }, /names its source by key/],
    ['a published value without its place', { source: { kind: 'published', key: 'fao56', mark: 'seen' } }, /say where/],
    ['a published value without its mark', { source: { kind: 'published', key: 'fao56', where: 'Table 1' } }, /is marked/],
    ['an unknown field', { comment: 'x' }, /comment/],
  ])('is refused with %s', (_, change, message) => {
    expect(() => read({ ...check, ...change })).toThrow(message);
  });

  test('is refused with one id twice', () => {
    expect(() => read(check, check)).toThrow("'table-1' names two checks");
  });

  test.each([
    ['attic/saturation', 'there is no src/attic/index.ts'],
    ['units/nothing', "exports no function 'nothing'"],
  ])('cannot check %s', async (of, message) => {
    await expect(runCheck({ ...read(check).checks[0]!, of })).rejects.toThrow(message);
  });
});

describe('disagreements', () => {
  const path = join(tmpdir(), `disagreements-${process.pid}.json`);
  const list = (...checks: string[]) => {
    writeFileSync(path, JSON.stringify(checks.map((one) => ({ check: one, reason: 'misprint' }))));
    return readDisagreements([read(check), readReference('water/toy', JSON.stringify({ title: 'Toy', checks: [check, { ...check, id: 'own' }] }))], path);
  };

  test('name one check each', () => {
    expect([...list('vapour/toy/table-1', 'own').keys()]).toEqual(['vapour/toy/table-1', 'water/toy/own']);
    expect(() => list('table-1')).toThrow("'table-1' names 2 checks");
    expect(() => list('gone')).toThrow("'gone' names 0 checks");
  });
});

describe('compare', () => {
  const head = { in: (unit: string) => ({ kPa: 98.0665, m: 10 })[unit]! };
  const heads = { in: (unit: string) => Float64Array.of(9, 10).map((x) => (unit === 'm' ? x : x * 100)) };

  test.each([
    [1.52, '', 1.5, 0.05, true],
    [1.56, '', 1.5, 0.05, false],
    [1.56, '', 1.5, '5 %', true],
    [{ value: 1.5, steps: 3 }, 'value', 1.5, 1e-9, true],
    [{ value: 1.5, steps: 3 }, 'steps', 3, undefined, true],
    [{ value: 1.5, steps: 3 }, 'steps', 4, undefined, false],
    [{ emitters: [{ head }] }, 'emitters[0].head', '98.07 kPa', '0.005 kPa', true],
    [{ emitters: [{ head }] }, 'emitters[0].head', '98.07 kPa', 0.0005, false],
    [{ head }, 'head', '10 m', undefined, true],
    [{ heads }, 'heads[1]', '10.1 m', '0.2 m', true],
    [{ heads }, 'heads[1]', '1010 cm', '0.2 cm', false],
    [{ phase: 'ice' }, 'phase', 'ice', undefined, true],
    [{ phase: 'ice' }, 'phase', 'water', undefined, false],
  ])('%j at %j against %j within %j: %j', (result, path, expected, tolerance, agrees) => {
    expect(compare(result, path, expected, tolerance).agrees).toBe(agrees);
  });

  test.each([
    [NaN, '', 1.5, 0.1, 'not finite'],
    [Infinity, '', 1, undefined, 'not finite'],
    [{ value: 1 }, 'valu', 1.5, 0.1, "nothing at 'valu'"],
    [{ head: 98 }, 'head', '98 kPa', 1, 'no quantity'],
    [{ head }, 'head', 98, 1, 'no number'],
    [1.5, '', 1.5, undefined, 'needs a tolerance'],
    [1.5, '', 1.5, 0, 'not above zero'],
    [1.5, '', 1.5, NaN, 'not above zero'],
    [{ head }, 'head', '10 m', '1 kPa', 'not in m'],
    ['ice', '', 'ice', 1, 'words take no tolerance'],
  ])('refuses %j at %j against %j within %j', (result, path, expected, tolerance, message) => {
    expect(() => compare(result, path, expected, tolerance)).toThrow(message);
  });

  test('writes to two digits of the tolerance', () => {
    expect(compare(2.98412345678, '', 2.984, 0.0005)).toMatchObject({ got: '2.98412', error: '0.00012' });
    expect(compare(101325.4321, '', 101325, 50)).toMatchObject({ got: '101325', error: '0' });
    expect(compare(1.23456789e-12, '', 1.23e-12, 1e-14)).toMatchObject({ got: '1.235e-12', error: '5e-15' });
  });
});
