/** The uncertainty that a calculated conductivity states, held against measured waters. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { solutionConductivity } from '../../src/conductivity/index.js';
import { amountFromIonMass, type Ion } from '../../src/solution/index.js';

const columns: readonly (readonly [column: string, ion: Ion])[] = [
  ['Cl_mg_L', 'Cl-'], ['SO4_mg_L', 'SO4 2-'], ['NO3_mg_L', 'NO3-'], ['Na_mg_L', 'Na+'], ['K_mg_L', 'K+'], ['Ca_mg_L', 'Ca2+'], ['Mg_mg_L', 'Mg2+'], ['NH4_mg_L', 'NH4+'],
];

const [head, ...rows] = readFileSync(new URL('natural-waters.csv', import.meta.url), 'utf8').split('\n').filter((line) => line !== '' && !line.startsWith('#')).map((line) => line.split(','));
const waters = rows.map((row) => Object.fromEntries(row.map((entry, i) => [head![i]!, entry])));

/** Calculated over measured conductivity, less one, and the uncertainty stated, as shares of the measured. */
const misses = waters.map((water) => {
  const amounts = Object.fromEntries(columns.map(([column, ion]) => [ion, `${amountFromIonMass(ion, Number(water[column]) / 1000)} mmol/L` as const]));
  const { conductivityAtReference, conductivityUncertainty } = solutionConductivity({
    ions: amounts,
    alkalinity: `${Number(water['alkalinity_as_HCO3_mg_L'])} mg/L HCO3`,
    ...(water['pH'] !== '' && { pH: Number(water['pH']) }),
    waterTemperature: '20 °C',
    referenceTemperature: '20 °C',
  });
  const measured = Number(water['EC20_mS_cm']);
  return { miss: conductivityAtReference.in('mS/cm') / measured - 1, stated: conductivityUncertainty.in('mS/cm') / measured };
});
const shareOf = (holds: (one: (typeof misses)[number]) => boolean): number => misses.filter(holds).length / misses.length;

test('three in four measured waters lie within the stated uncertainty', () => {
  expect(misses.length).toBeGreaterThan(70);
  expect(shareOf(({ miss, stated }) => Math.abs(miss) <= stated)).toBeGreaterThan(0.75);
});

test('nine in ten lie within 6.5 %, and on average they are met within 3 %', () => {
  expect(shareOf(({ miss }) => Math.abs(miss) <= 0.065)).toBeGreaterThan(0.9);
  expect(misses.reduce((sum, { miss }) => sum + Math.abs(miss), 0) / misses.length).toBeLessThan(0.03);
});
