/** Friction factors against Colebrook-White solved here: to many digits, and every explicit formula over the whole range that it is said to hold for. */
import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  frictionFactorBagarello1995, frictionFactorBlasius1913, frictionFactorChurchill1977, frictionFactorColebrook1939, frictionFactorHaaland1983, frictionFactorLaminar, frictionFactorSerghides1984,
  frictionFactorSonnadGoudar2006, frictionFactorSwameeJain1976,
} from '../../src/laterals/index.js';

/** From one number to another in equal ratios. */
const ratios = (from: number, to: number, count: number): readonly number[] => Array.from({ length: count }, (_, i) => from * (to / from) ** (i / (count - 1)));

/** 1/sqrt(f) = -2 log10((e/D)/3.7 + 2.51/(Re sqrt(f))) put into itself until it stands still: each turn leaves a fifth of the error, or less. */
function solved(reynolds: number, rough: number): number {
  let root = 8;
  for (let before = 0; Math.abs(root - before) > 1e-14 * root;) [before, root] = [root, -2 * Math.log10(rough / 3.7 + (2.51 * root) / reynolds)];
  return root ** -2;
}

/** The same in 40 digits. */
function solvedInDecimals(reynolds: number, rough: number): Decimal {
  const Long = Decimal.clone({ precision: 40 });
  const [wall, film] = [new Long(rough).div('3.7'), new Long('2.51').div(reynolds)];
  let root = new Long(solved(reynolds, rough)).pow(-0.5);
  for (let before = new Long(0); root.minus(before).abs().gt('1e-30');) [before, root] = [root, film.times(root).plus(wall).log(10).times(-2)];
  return root.pow(-2);
}

test('Colebrook-White is solved to a millionth of a millionth', () => {
  let worst = 0;
  for (const reynolds of ratios(4e3, 1e8, 25)) {
    for (const rough of [0, ...ratios(1e-7, 0.05, 14)]) {
      worst = Math.max(worst, solvedInDecimals(reynolds, rough).div(frictionFactorColebrook1939(reynolds, rough)).minus(1).abs().toNumber());
    }
  }
  expect(worst).toBeLessThan(1e-12);
});

test('it is solved to the last digits at random too, where the flow is not turbulent yet, and on both sides of every change of method', () => {
  const logBetween = (min: number, max: number) => fc.double({ min: Math.log(min), max: Math.log(max), noNaN: true }).map(Math.exp);
  fc.assert(fc.property(fc.oneof(logBetween(600, 1e6), logBetween(4e3, 1e9)), fc.oneof(fc.constant(0), logBetween(1e-6, 0.05)), (reynolds, rough) => {
    expect(Math.abs(frictionFactorColebrook1939(reynolds, rough) / solved(reynolds, rough) - 1)).toBeLessThan(1e-13);
  }), { numRuns: 2000 });
});

/** What the docstring of a formula says: Reynolds numbers and e/D from and to, and how far below and above Colebrook-White it may lie there, as a share. */
interface Claim {
  readonly name: string;
  readonly formula: (reynolds: number, rough: number) => number;
  readonly reynolds: readonly [number, number];
  readonly rough: readonly number[];
  readonly below: number;
  readonly above: number;
}

const walls = ratios(1e-6, 0.05, 120);
const anyWall = [0, ...walls];
const claims: readonly Claim[] = [
  { name: 'Blasius', formula: (reynolds) => frictionFactorBlasius1913(reynolds), reynolds: [3e3, 2e5], rough: [0], below: 0.0433, above: 0.0284 },
  { name: 'Bagarello et al.', formula: (reynolds) => frictionFactorBagarello1995(reynolds), reynolds: [4e3, 7e4], rough: [0], below: 0.0485, above: -0.0184 },
  { name: 'Swamee & Jain', formula: frictionFactorSwameeJain1976, reynolds: [5e3, 1e8], rough: walls, below: 0.0071, above: 0.03 },
  { name: 'Swamee & Jain where flow is fast and the wall not too rough', formula: frictionFactorSwameeJain1976, reynolds: [5e4, 1e8], rough: ratios(1e-6, 0.01, 80), below: 0.0071, above: 0.012 },
  // The author's own share, from memory.
  { name: 'Haaland', formula: frictionFactorHaaland1983, reynolds: [4e3, 1e8], rough: anyWall, below: 0.015, above: 0.015 },
  { name: 'Serghides', formula: frictionFactorSerghides1984, reynolds: [4e3, 1e8], rough: anyWall, below: 3.2e-5, above: 1e-12 },
  // The authors' own share, from memory.
  { name: 'Sonnad & Goudar', formula: frictionFactorSonnadGoudar2006, reynolds: [4e3, 1e8], rough: anyWall, below: 0, above: 0.01 },
  { name: 'Churchill', formula: frictionFactorChurchill1977, reynolds: [4e3, 1e8], rough: anyWall, below: 0.007, above: 0.032 },
];

describe('explicit formulas stay as near to Colebrook-White as is said of them, throughout their range', () => {
  test.each(claims)('$name', ({ formula, reynolds: [from, to], rough, below, above }) => {
    let lowest = { miss: Infinity, at: '' };
    let highest = { miss: -Infinity, at: '' };
    for (const wall of rough) {
      for (const reynolds of ratios(from, to, 240)) {
        const miss = formula(reynolds, wall) / solved(reynolds, wall) - 1;
        if (Number.isNaN(miss)) throw new Error(`no number at Re ${reynolds}, e/D ${wall}`);
        if (miss < lowest.miss) lowest = { miss, at: `Re ${reynolds}, e/D ${wall}` };
        if (miss > highest.miss) highest = { miss, at: `Re ${reynolds}, e/D ${wall}` };
      }
    }
    expect(lowest.miss, lowest.at).toBeGreaterThanOrEqual(-below);
    expect(highest.miss, highest.at).toBeLessThanOrEqual(above);
  });
});

test('Churchill is laminar below Re 1500, whatever the wall', () => {
  for (const wall of [0, ...walls]) for (const reynolds of ratios(1, 1500, 50)) expect(Math.abs(frictionFactorChurchill1977(reynolds, wall) / frictionFactorLaminar(reynolds) - 1)).toBeLessThan(0.001);
});
