import { calculation, type Solving } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { ConvergenceError } from '../numerics/convergence-error.js';
import { noteContradiction } from '../solution/acidity-note.js';
import { amountsSeen, checkComposition, compositionFields } from '../solution/composition-field.js';
import { chargeBalanceOfIons, type ChargeBalance, type IonAmounts } from '../solution/formulas/concentration.js';
import { speciationTask, speciationTaskFromCharge, type SpeciationTask } from '../solution/formulas/stated-solution.js';
import { alkalinityOfIons, chargeLeftOut } from '../solution/formulas/totals.js';
import { noteImbalance } from '../solution/imbalance-note.js';
import { alkalinity, amountConcentration, conductivity, share, temperature } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { waterDensityIapws2008 } from '../water/density.js';
import { conductivityModelUncertainty, conductivityOfSolution, type SolutionConductivity } from './formulas/ionic-model.js';
import { conductivityLimitingSum, conductivitySonneveld1999, conductivityStandardMethods2510, conductivityTenthOfCharge } from './formulas/quick-rules.js';
import { ionicConductivitiesOwn } from './ionic-conductivities.js';
import { refuseTooStrong } from './strength-seen.js';

/** Sulfate with calcium, mol/m³, and sulfate's share of the anions, from which their pairs count as much as the uncertainty says (against McCleskey 2011). */
const sulfateRich = { from: 2, share: 0.6 } as const;

/**
 * What a conductivity meter should show in a water or a feed of known composition.
 *
 * In: `ions` in mmol/L or `nutrients` in mg/L by form, one of the two; perhaps the `alkalinity` (0 to 100 meq/L), in place of `HCO3`; perhaps
 * the `pH` (2 to 11): without it every ion stays what it is named, as it does in a feed of pH 5 to 6.5, unless `acidity` is `'from charge'`: then
 * the pH is the one at which the charges balance, for salts, acids and bases weighed into pure water; the `waterTemperature` (0 to 95 °C;
 * constants of the ion pairs hold to 50 °C) and the `referenceTemperature` of the meter (15 to 30 °C), both 25 °C where not given.
 * Out: the `conductivity` at the temperature of the water, `conductivityAtReference`, which a meter shows, and the `temperatureFactor` between;
 * the `conductivityUncertainty`, 5 %: three in four measured natural waters lie within (no feed has been measured with its full analysis);
 * the `contributions` of every ion and ion pair and their share, the `transportNumbers`; the `ionicStrength` without what is paired; the `pH` where one was
 * given or asked for; how well the balances closed; and `quickRules`, shortcuts at 25 °C that skip ion pairs, each with its `differenceFromModel`:
 * `limitingSum`, as if every ion moved alone; `standardMethods`, that sum times a factor of ionic strength (conductivities from memory);
 * `tenthOfCations`, 1 mS/cm for 10 meq/L (common practice); `lineOfCations`, 0.095 mS/cm per meq/L and 0.19 (coefficients from memory, for feeds).
 * What they miss measured waters by stands in docs/accuracy.md.
 *
 * Ion pairs and acids are worked out, then each ion conducts by its own row over temperature and ionic strength (0 to 95 °C, 0.0004 to 0.7
 * mol/kg, 0.03 to 70 mS/cm; notes outside). Phosphate and the pairs of sulfate with ammonium and magnesium have rows of our own, since the published set
 * has none, and a note tells how much of the result rests on them; chloride and magnesium are brought to better measurements. Chelates,
 * citrate, boron, silicon, molybdenum, urea and fluoride are left out. An InputError where not exactly one composition is given, where nothing in it
 * conducts, alkalinity is stated twice, no pH balances the charges, or ionic strength is above 1 mol/L.
 *
 * Source: McCleskey, Nordstrom, Ryan and Ball 2012; ion pairs after Ball and Nordstrom 1991 and Plummer and Busenberg 1982.
 * @example
 * const feed = solutionConductivity({ nutrients: { 'N-NO3': '150 mg/L', P: '40 mg/L', K: '240 mg/L', Ca: '130 mg/L', Mg: '30 mg/L', S: '50 mg/L' }, waterTemperature: '16 °C' });
 * feed.conductivityAtReference.in('mS/cm') // => 1.705
 * feed.conductivity.in('mS/cm') // => 1.417
 */
export const solutionConductivity = /* @__PURE__ */ calculation({
  id: 'solutionConductivity',
  title: 'Conductivity of a water or a feed from what is dissolved in it',
  inputs: () => ({
    ...compositionFields(),
    alkalinity: field.optional(field.quantity(alkalinity, { limits: ['0 meq/L', '100 meq/L'] })),
    pH: field.optional(field.number({ limits: [2, 11], valid: [2, 9.8] })),
    acidity: field.withDefault(field.choice(['as stated', 'from charge']), 'as stated'),
    waterTemperature: field.withDefault(field.quantity(temperature, { limits: ['0 °C', '95 °C'], valid: ['0 °C', '50 °C'] }), '25 °C'),
    referenceTemperature: field.withDefault(field.quantity(temperature, { limits: ['15 °C', '30 °C'] }), '25 °C'),
  }),
  outputs: () => ({
    conductivity: output.quantity(conductivity, 'mS/cm'),
    conductivityAtReference: output.quantity(conductivity, 'mS/cm'),
    conductivityUncertainty: output.quantity(conductivity, 'mS/cm'),
    temperatureFactor: output.number(),
    ionicStrength: output.quantity(amountConcentration, 'mmol/L'),
    pH: output.optional(output.number()),
    contributions: output.record(output.quantity(conductivity, 'mS/cm')),
    transportNumbers: output.record(output.quantity(share, '%')),
    quickRules: output.group({ limitingSum: quickRule(), standardMethods: quickRule(), tenthOfCations: quickRule(), lineOfCations: quickRule() }),
    convergence: output.group({ relativeResidual: output.quantity(share, '%'), steps: output.number() }),
  }),
  equation: 'κ = Σ λ m over the free ions and charged pairs; λ = λ0(t) - A(t) √I/(1 + B √I)',
  sources: ['mccleskey-2012', 'pratt-2001', 'shedlovsky-brown-1934', 'tomsic-2002', 'crc-handbook', 'sonneveld-1999', 'ball-nordstrom-1991', 'plummer-busenberg-1982', 'parkhurst-appelo-2013', 'davies-1962', 'standard-methods-2510'],
  example: {
    nutrients: { 'N-NO3': '140 mg/L', 'N-NH4': '8 mg/L', P: '40 mg/L', K: '220 mg/L', Ca: '120 mg/L', Mg: '28 mg/L', S: '45 mg/L', Na: '12 mg/L', Cl: '18 mg/L', Fe: '2 mg/L', HCO3: '30 mg/L' },
    waterTemperature: '17 °C',
  },
  check: (seen, problem) => {
    checkComposition(seen, problem);
    if (seen.acidity === 'from charge' && seen.pH !== undefined) problem(['pH'], 'the pH, or the balance of charges to give it', 'both');
    if (seen.alkalinity !== undefined && alkalinityOfIons(amountsSeen(seen)) !== 0) problem(['alkalinity'], 'the alkalinity stated once', 'alkalinity beside bicarbonate, or beside ions that exchange protons');
  },
  solve: (inputs, solving) => {
    const { alkalinity, pH, acidity, waterTemperature, referenceTemperature } = inputs;
    const amounts: IonAmounts = { ...amountsSeen(inputs), ...(alkalinity !== undefined && { 'HCO3-': alkalinity }) };
    const density = waterDensityIapws2008(waterTemperature);
    const place = inputs.ions === undefined ? 'nutrients' : 'ions';
    refuseTooStrong(amounts, place, solving);

    const taskAt = (t: number): SpeciationTask => (acidity === 'from charge' ? speciationTaskFromCharge(amounts, t, density) : speciationTask(amounts, pH, t, density));
    const conductivityAt = ({ totals, conditions }: SpeciationTask): SolutionConductivity => {
      try {
        return conductivityOfSolution(totals, conditions);
      } catch (error) {
        if (acidity === 'from charge' && error instanceof ConvergenceError) return solving.refuse('acidity', 'charges that a pH from -2 to 16 balances', 'ions that none does', 'is an ion missing?');
        throw error;
      }
    };
    const task = taskAt(waterTemperature);
    const here = conductivityAt(task);
    if (!(here.value > 0)) solving.refuse(place, 'at least one ion that conducts', 'none');
    const valueAt = (t: number): number => (t === waterTemperature ? here : conductivityAt(taskAt(t))).value;
    const atReference = valueAt(referenceTemperature);
    const at25 = referenceTemperature === 298.15 ? atReference : valueAt(298.15);

    const balance = chargeBalanceOfIons(amounts);
    noteImbalance(balance, place, solving.note);
    noteContradiction(task.contradiction, solving.note);
    noteModel(here, balance, amounts, solving);
    return {
      conductivity: here.value,
      conductivityAtReference: atReference,
      conductivityUncertainty: conductivityModelUncertainty * atReference,
      temperatureFactor: atReference / here.value,
      ionicStrength: here.ionicStrength * density,
      pH: here.pH,
      contributions: here.contributions,
      transportNumbers: Object.fromEntries(Object.entries(here.contributions).map(([species, part]) => [species, part / here.value])),
      quickRules: {
        limitingSum: against(at25, conductivityLimitingSum(amounts)),
        standardMethods: against(at25, conductivityStandardMethods2510(amounts)),
        tenthOfCations: against(at25, conductivityTenthOfCharge(balance.cations)),
        lineOfCations: against(at25, conductivitySonneveld1999(balance.cations)),
      },
      convergence: { relativeResidual: here.residual, steps: here.steps },
    };
  },
});

/** A shortcut at 25 °C, beside what the model gives there. */
const quickRule = () => output.group({ conductivity: output.quantity(conductivity, 'mS/cm'), differenceFromModel: output.quantity(share, '%') });
const against = (model: number, value: number) => ({ conductivity: value, differenceFromModel: value / model - 1 });

/** What the model leaves open for this solution. */
function noteModel({ value, contributions, ionicStrength }: SolutionConductivity, { cations, anions }: ChargeBalance, amounts: IonAmounts, { note }: Solving): void {
  if (ionicStrength < 0.0004 || ionicStrength > 0.7) note('caution', 'outside-range', 'ionicStrength', 'ionicStrength is outside 0.4 to 700 mmol/L, where the conductivities of the ions were measured; take it with care.');
  const own = Object.keys(ionicConductivitiesOwn).reduce((sum, species) => sum + (contributions[species] ?? 0), 0) / value;
  if (own > 0.1) note('info', 'assumed-conductivities', 'contributions', `${writeNumber(own * 100)} % rests on conductivities of our own for phosphate and for the pairs of sulfate with ammonium and magnesium, which the published set does not have.`);
  const sulfate = amounts['SO4 2-'] ?? 0;
  if (Math.min(sulfate, amounts['Ca2+'] ?? 0) > sulfateRich.from && 2 * sulfate > sulfateRich.share * anions) {
    note('caution', 'sulfate-rich', 'conductivityUncertainty', `${writeNumber(((2 * sulfate) / anions) * 100)} % of the anions is sulfate: with calcium the model pairs too much of it and reads low, by 4 to 5 % at 5 to 20 mmol/L of calcium sulfate alone.`);
  }
  const leftOut = (chargeLeftOut(amounts) + 2 * (amounts['C6H6O7 2-'] ?? 0)) / (cations + anions);
  if (leftOut > 0.01) note('caution', 'ions-left-out', 'contributions', `${writeNumber(leftOut * 100)} % of the charge is on ions that the model does not know (chelates, fluoride, nitrite, molybdate, citrate): the result is low by up to as much.`);
}
