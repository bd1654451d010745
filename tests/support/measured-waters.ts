/** Natural waters with full analysis and measured conductivity, 20 °C. */
import { readFileSync } from 'node:fs';
import { solutionConductivity } from '../../src/conductivity/index.js';
import { amountFromIonMass, type Ion } from '../../src/solution/index.js';

const columns: readonly (readonly [column: string, ion: Ion])[] = [
  ['Cl_mg_L', 'Cl-'], ['SO4_mg_L', 'SO4 2-'], ['NO3_mg_L', 'NO3-'], ['Na_mg_L', 'Na+'], ['K_mg_L', 'K+'], ['Ca_mg_L', 'Ca2+'], ['Mg_mg_L', 'Mg2+'], ['NH4_mg_L', 'NH4+'],
];

const [head, ...rows] = readFileSync(new URL('../conductivity/natural-waters.csv', import.meta.url), 'utf8').split('\n').filter((line) => line !== '' && !line.startsWith('#')).map((line) => line.split(','));
const waters = rows.map((row) => Object.fromEntries(row.map((entry, i) => [head![i]!, entry])));

/** Calculated over measured, less one, by the model and by its quick rules (brought to 20 °C as the model does), and the uncertainty stated, as shares of the measured. */
export const waterMisses = waters.map((water) => {
  const measured = Number(water['EC20_mS_cm']);
  const input = {
    ions: Object.fromEntries(columns.map(([column, ion]) => [ion, `${amountFromIonMass(ion, Number(water[column]) / 1000)} mmol/L` as const])),
    alkalinity: `${Number(water['alkalinity_as_HCO3_mg_L'])} mg/L HCO3` as const,
    ...(water['pH'] !== '' && { pH: Number(water['pH']) }),
    waterTemperature: '20 °C' as const,
  };
  const { conductivity, temperatureFactor, quickRules, conductivityUncertainty } = solutionConductivity(input);
  const miss = (calculated: number): number => calculated / measured - 1;
  const rule = (name: keyof typeof quickRules): number => miss(quickRules[name].conductivity.in('mS/cm') / temperatureFactor);
  return {
    model: miss(conductivity.in('mS/cm')),
    limitingSum: rule('limitingSum'), standardMethods: rule('standardMethods'), tenthOfCations: rule('tenthOfCations'), lineOfCations: rule('lineOfCations'),
    stated: conductivityUncertainty.in('mS/cm') / measured,
  };
});
