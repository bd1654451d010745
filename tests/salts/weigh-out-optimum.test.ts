/** The mixes of random tasks against solvers that are not ours. */
import { expect, test } from 'vitest';
import { salts } from '../../src/salts/index.js';
import { costAgainstHighs, costTolerances, fitAgainstQuadprog, weighingCases } from '../support/weighing-cases.js';

test('the cases are as many and as varied as they should be', () => {
  expect(weighingCases.length).toBe(50);
  expect(weighingCases.filter(({ ammoniumShare }) => ammoniumShare !== undefined).length).toBeGreaterThan(15);
  expect(weighingCases.filter(({ targets }) => Object.keys(targets).length > 9).length).toBeGreaterThan(5);
  expect(weighingCases.every(({ products }) => Object.values(products).every((product) => 'salt' in product && product.salt in salts))).toBe(true);
});

test.each(weighingCases.map((task, i) => [i, task] as const))('the best fit of case %i is that of quadprog', (_, task) => {
  const { ours, theirs, breach, residual } = fitAgainstQuadprog(task);
  expect(breach).toBeLessThanOrEqual(1e-10);
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-9 * theirs + 1e-20);
  expect(residual).toBeLessThanOrEqual(1e-12);
});

test.each(weighingCases.map((task, i) => [i, task] as const))('the least cost of case %i is that of HiGHS', (i, task) => {
  const { ours, theirs, ofFit } = costAgainstHighs(task, costTolerances[i % 3]!);
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(1e-9 * theirs);
  expect(ours).toBeGreaterThan(0);
  expect(ours).toBeLessThanOrEqual(ofFit * (1 + 1e-9));
});
