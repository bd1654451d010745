/** Inside the declared limits every result is finite and physically possible, or one clear error says why there is none. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { catalogue } from '../../src/catalogue.js';
import { InputError } from '../../src/calculation/problem.js';
import { ConvergenceError } from '../../src/numerics/convergence-error.js';
import { isColumn, isQuantity, unitsOf } from '../../src/units/index.js';
import { randomInput } from '../support/generate.js';

const neverNegative: ReadonlySet<string> = new Set(['absolutePressure', 'temperature', 'mass', 'volume', 'time', 'frequency', 'conductivity', 'density', 'dynamicViscosity', 'kinematicViscosity', 'absoluteHumidity', 'humidityRatio', 'area', 'molarMass', 'alkalinity' /* of salts at hand */]);
const runs = Number(process.env['SWEEP_RUNS'] ?? 200);

/** Every number of a result, with the dimension it has. */
function* numbers(value: unknown, path: string): Generator<readonly [path: string, number: number, dimension: string | undefined]> {
  if (typeof value === 'number') yield [path, value, undefined];
  else if (isQuantity(value)) yield [path, value.si, value.dimension];
  else if (isColumn(value)) for (const [i, x] of value.si.entries()) yield [`${path}[${i}]`, x, value.dimension];
  else if (Array.isArray(value)) for (const [i, entry] of value.entries()) yield* numbers(entry, `${path}[${i}]`);
  else if (typeof value === 'object' && value !== null) for (const [name, entry] of Object.entries(value)) yield* numbers(entry, `${path}.${name}`);
}

/** The same input with every quantity shown in another unit of its dimension. */
function inOtherUnits(value: unknown, pick: number): unknown {
  if (isQuantity(value)) {
    const units = unitsOf(value.dimension);
    return value.as(units[pick % units.length] as never);
  }
  if (Array.isArray(value)) return value.map((entry, i) => inOtherUnits(entry, pick + i));
  if (typeof value !== 'object' || value === null || isColumn(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([name, entry], i) => [name, inOtherUnits(entry, pick + 7 * i)]));
}

describe.each(catalogue().map((calculation) => [calculation.id, calculation] as const))('%s', (_, calculation) => {
  test('is finite and possible throughout its limits', () => {
    let [results, unsolved] = [0, 0];
    fc.assert(
      fc.property(randomInput(calculation), (input) => {
        const attempt = calculation.try(input);
        if (!attempt.ok) {
          if (attempt.error instanceof ConvergenceError) unsolved++;
          else expect(attempt.error, attempt.error.message).toBeInstanceOf(InputError);
          return;
        }
        results++;
        for (const [path, x, dimension] of numbers(attempt.value, '')) {
          if (!Number.isFinite(x)) throw new Error(`${path} is ${x}`);
          if (dimension !== undefined && neverNegative.has(dimension) && x < 0) throw new Error(`${path}, a ${dimension}, is ${x}`);
        }
      }),
      { numRuns: runs },
    );
    expect(results, 'no input within the limits gave a result').toBeGreaterThan(0);
    expect(unsolved, 'a search that does not end is for one input in a hundred at most').toBeLessThanOrEqual(runs / 100);
  });

  test('gives the same in whatever units it is asked', () => {
    fc.assert(
      fc.property(randomInput(calculation), fc.nat(1000), (input, pick) => {
        const [one, other] = [calculation.try(input), calculation.try(inOtherUnits(input, pick))];
        // A number on the edge of a limit may fall to either side.
        if (!one.ok || !other.ok) return;
        const others = new Map([...numbers(other.value, '')].map(([path, x]) => [path, x]));
        for (const [path, x] of numbers(one.value, '')) {
          // What an iteration left is noise.
          if (path.includes('convergence')) continue;
          const y = others.get(path);
          if (y === undefined || !(Math.abs(x - y) <= 1e-6 * Math.max(Math.abs(x), Math.abs(y)) + 1e-12)) throw new Error(`${path} is ${x}, and in other units ${y}`);
        }
      }),
      { numRuns: Math.ceil(runs / 4) },
    );
  });
});
