/**
 * Finds the rows of `ionicConductivitiesRefitted` and that of MgSO4: `npx tsx tests/makers/ionic-conductivities.ts`.
 *
 * Each number is the one of a coarse grid that meets the measurements best, in the order: chloride (potassium chloride standards, 5 to 35 °C),
 * how fast magnesium falls off (magnesium chloride, 25 °C), magnesium sulfate's pair (25 °C).
 */
import { conductivityMcCleskey2012, ionicConductivitiesMcCleskey2012, ionicConductivitiesOwn, potassiumChlorideStandards, type IonicConductivityRow, type IonicConductivityTable } from '../../src/conductivity/index.js';
import type { ComponentTotals } from '../../src/solution/index.js';

/** Mol/kg and S cm2/mol at 25 °C, second-hand from the public-domain test files of PHREEQC 3. */
const magnesiumChloride = [[7.547e-5, 254.602], [1.702e-4, 252.546], [2.8e-4, 250.796], [5.354e-4, 247.856], [2.095e-3, 238.27], [4.206e-3, 231.176], [1.056e-2, 219.61], [2.364e-2, 207.36], [4.431e-2, 196.71]] as const;
const magnesiumSulfate = [[2.619e-4, 242.7], [5.187e-4, 232.1], [7.693e-4, 224.82], [1.029e-3, 218.46], [1.293e-3, 213.16], [1.567e-3, 208.46], [2.176e-3, 200.06], [3.138e-3, 190.018], [5.378e-2, 112.948]] as const;

const density25 = 997.047;
const range = (from: number, to: number, step: number): number[] => Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);
const meanSquare = (misses: readonly number[]): number => misses.reduce((sum, miss) => sum + miss ** 2, 0) / misses.length;
const best = <T>(candidates: readonly T[], missesOf: (one: T) => readonly number[]): T =>
  candidates.map((one) => ({ one, size: meanSquare(missesOf(one)) })).reduce((a, b) => (b.size < a.size ? b : a)).one;

const calculated = (totals: ComponentTotals, celsius: number, rows: IonicConductivityTable): number => conductivityMcCleskey2012(totals, { temperature: celsius + 273.15 }, rows).value;
const chloride = (factor: number): IonicConductivityRow => {
  const [a2, a1, a0, b2, b1, b0, B] = ionicConductivitiesMcCleskey2012['Cl-'];
  return [a2 * factor, a1 * factor, a0 * factor, b2 * factor, b1 * factor, b0 * factor, B];
};
const magnesium = ([factor, B]: readonly [number, number]): IonicConductivityRow => {
  const [a2, a1, a0, b2, b1, b0] = ionicConductivitiesMcCleskey2012['Mg2+'];
  return [a2, a1, a0, b2 * factor, b1 * factor, b0 * factor, B];
};
const pair = (at25: number): IonicConductivityRow => [0, 0.02 * at25, 0.5 * at25, 0, 0, 0, 0];

const standards = potassiumChlorideStandards.filter(({ celsius }) => celsius <= 35);
const ofChloride = best(range(0.9, 1, 0.02), (factor) => standards.flatMap(({ celsius, molal001, molal01 }) =>
  ([[0.01, molal001], [0.1, molal01]] as const).map(([m, measured]) => calculated({ 'K+': m, 'Cl-': m }, celsius, { 'Cl-': chloride(factor) }) / measured - 1)));
console.log('Cl-: factor', ofChloride);

const withChloride = { 'Cl-': chloride(0.98) };
const ofMagnesium = best(range(1, 2, 0.05).flatMap((factor) => range(1, 4, 0.1).map((B) => [factor, B] as const)), (candidate) =>
  magnesiumChloride.map(([m, measured]) => calculated({ 'Mg2+': m, 'Cl-': 2 * m }, 25, { ...withChloride, 'Mg2+': magnesium(candidate) }) / (m * density25 * measured * 1e-4) - 1));
console.log('Mg2+: factor and B', ofMagnesium, magnesium(ofMagnesium));

const withMagnesium = { ...ionicConductivitiesOwn, ...withChloride, 'Mg2+': magnesium(ofMagnesium) };
const ofPair = best(range(0, 100, 1), (at25) =>
  magnesiumSulfate.map(([m, measured]) => calculated({ 'Mg2+': m, 'SO4 2-': m }, 25, { ...withMagnesium, MgSO4: pair(at25) }) / (m * density25 * measured * 1e-4) - 1));
console.log('MgSO4: S cm2/mol at 25 °C', ofPair);
