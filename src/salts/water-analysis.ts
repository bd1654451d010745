import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import type { AddNote } from '../calculation/note.js';
import * as output from '../calculation/output.js';
import { conductivityOfSolution, strongestIonicStrength } from '../conductivity/formulas/ionic-model.js';
import { conductivityTenthOfCharge } from '../conductivity/formulas/quick-rules.js';
import { noteContradiction } from '../solution/acidity-note.js';
import { nutrientMassesOfIons } from '../solution/formulas/blending.js';
import { chargeBalanceOfIons, chargesOfIons, ionicStrengthOfIons } from '../solution/formulas/concentration.js';
import { speciationTask } from '../solution/formulas/stated-solution.js';
import { alkalinityOfIons } from '../solution/formulas/totals.js';
import { chargeConcentration, conductivity, hardness, share, temperature } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { waterDensityIapws2008 } from '../water/density.js';
import { feedOutputs, inOrder } from './feed.js';
import { filledFromHardness, hardnessFields, hardnessOfIons, noteHardness } from './hardness.js';
import { missingSaltFromConductivity } from './formulas/missing-salt.js';
import { amountsInWater, problemsOfItems, waterFields, waterOf } from './source-water.js';
import { checkWaterBalance, noteWaterBalance, unstatedIons } from './water-balance.js';

/** No water conducts less, S/m: what its own ions carry. From memory. */
const leastConductivity = 5e-6;
/** A measured conductivity this far off, as a share, is told: twice the uncertainty of a calculated one. */
const tellingDifference = 0.1;

/**
 * A water analysis, in whatever units it came, as one checked composition: what every ion, nutrient and charge comes to, whether it can be complete, and
 * what is missing.
 *
 * In: `water`, by what the analysis states: an element or nitrogen form (`Ca`, `S`, `N-NO3`, `HCO3`, …) or a whole ion (`NO3`, `SO4`, `PO4`, `CO3`, …),
 * each in mg/L (0 to 20 g/L), mmol/L or meq/L (0 to 600); `waterAlkalinity` (0 to 50 meq/L, or as mg/L CaCO3, mg/L HCO3, °dH of carbonate hardness) in
 * place of `HCO3` and `CO3`; total `hardness` (0 to 560 °dH, or in mmol/L, meq/L, mg/L CaCO3), which gives calcium or magnesium where one is not
 * stated, and both, split by `calciumShare` (80 % of the moles where not given), where neither is; the `measuredConductivity` at the
 * `referenceTemperature` (15 to 30 °C, 25 °C where not given) and the `pH` (2 to 11).
 * Out: `ions` in mmol/L; `nutrients` in mg/L by form, without nitrite and fluoride, which `weighOut` and `dissolve` take as their `water`; `charges` in meq/L with their
 * `chargeBalance`; `alkalinity`, `hardness`; `missingCations` or `missingAnions`, the charge that the other side has more of; `unstatedIons`, of the
 * eight that make up most waters; the `conductivityAtReference` that follows from the analysis (5 % uncertain), and where one was measured the
 * `conductivityDifference` and, by the rule of 0.1 mS/cm for each meq/L, roughly the `missingSalt` that is not in the analysis.
 *
 * Notes from 5 % between cations and anions, where that is more than 0.2 meq/L; where hardness contradicts calcium and magnesium; where the meter is more
 * than 10 % off. An InputError where cations and anions are more than 50 % of their sum apart (only one side stated is a part of an analysis, and a note), where a
 * thing is stated twice, phosphate or what has no charge in meq/L, nothing at all, or more than 1 mol/L of ionic strength.
 *
 * Source: Prohaska et al. 2022, Standard atomic weights of the elements 2021, for the masses; the conductivity as in `solutionConductivity`.
 * @example
 * const tap = waterAnalysis({ water: { Ca: '72 mg/L', Na: '14 mg/L', Cl: '24 mg/L', SO4: '38 mg/L' }, waterAlkalinity: '170 mg/L CaCO3', hardness: '11.6 °dH' });
 * tap.nutrients.Mg.in('mg/L') // => 6.61
 * tap.nutrients.S.in('mg/L') // => 12.68
 * String(tap.chargeBalance.imbalance) // => '-0.1192 meq/L'
 */
export const waterAnalysis = /* @__PURE__ */ calculation({
  id: 'waterAnalysis',
  title: 'What is in a water by its analysis, and what the analysis lacks',
  inputs: () => ({
    ...waterFields(),
    ...hardnessFields(),
    measuredConductivity: field.optional(field.quantity(conductivity, { limits: ['0 mS/cm', '200 mS/cm'] })),
    referenceTemperature: field.withDefault(field.quantity(temperature, { limits: ['15 °C', '30 °C'] }), '25 °C'),
    pH: field.optional(field.number({ limits: [2, 11], valid: [2, 9.8] })),
  }),
  outputs: () => ({
    ...feedOutputs(),
    hardness: output.quantity(hardness, '°dH'),
    missingCations: output.quantity(chargeConcentration, 'meq/L'),
    missingAnions: output.quantity(chargeConcentration, 'meq/L'),
    unstatedIons: output.list(output.text()),
    conductivityAtReference: output.quantity(conductivity, 'mS/cm'),
    conductivityDifference: output.optional(output.quantity(share, '%')),
    missingSalt: output.optional(output.quantity(chargeConcentration, 'meq/L')),
    convergence: output.group({ relativeResidual: output.quantity(share, '%'), steps: output.number() }),
  }),
  equation: 'c = stated / molar mass of what is stated, or / charge; Σ z c of the cations - Σ |z| c of the anions; hardness = 2 (Ca + Mg)',
  sources: ['prohaska-2022', 'mccleskey-2012', 'ball-nordstrom-1991', 'plummer-busenberg-1982', 'common-practice'],
  example: {
    water: { Ca: '72 mg/L', Na: '14 mg/L', K: '2 mg/L', Cl: '24 mg/L', SO4: '0.79 meq/L', NO3: '11 mg/L' },
    waterAlkalinity: '170 mg/L CaCO3',
    hardness: '11.6 °dH',
    measuredConductivity: '0.49 mS/cm',
    pH: 7.5,
  },
  check: (seen, problem) => {
    const { water = {}, waterAlkalinity, hardness: total } = seen;
    if (Object.keys(water).length === 0 && waterAlkalinity === undefined && total === undefined) problem(['water'], 'at least one figure', 'none');
    const problems = problemsOfItems(seen);
    for (const one of problems) problem(...one);
    if (problems.length === 0) checkWaterBalance(filledFromHardness(amountsInWater(seen), seen), problem);
  },
  solve: (inputs, { note, refuse }) => {
    const { measuredConductivity: measured, referenceTemperature, pH } = inputs;
    const stated = amountsInWater(inputs);
    const amounts = filledFromHardness(stated, inputs);
    const strength = ionicStrengthOfIons(amounts);
    if (strength > strongestIonicStrength) refuse('water', 'a water of at most 1 mol/L of ionic strength', `one of ${writeNumber(strength / 1000)} mol/L`, 'are the units right?');
    noteHardness(stated, inputs, note);
    noteWaterBalance(amounts, note);

    const { totals, conditions, contradiction } = speciationTask(amounts, pH, referenceTemperature, waterDensityIapws2008(referenceTemperature));
    noteContradiction(contradiction, note);
    const { value: calculated, residual, steps } = conductivityOfSolution(totals, conditions);
    const chargeBalance = chargeBalanceOfIons(amounts);
    const missingSalt = measured === undefined ? undefined : missingSaltFromConductivity(measured, calculated, chargeBalance.imbalance);
    noteConductivity(measured, calculated, missingSalt, note);

    return {
      nutrients: inOrder({ ...nutrientMassesOfIons(amounts), ...waterOf(inputs) }),
      ions: amounts,
      charges: chargesOfIons(amounts),
      chargeBalance,
      alkalinity: alkalinityOfIons(amounts),
      hardness: hardnessOfIons(amounts),
      missingCations: Math.max(0, -chargeBalance.imbalance),
      missingAnions: Math.max(0, chargeBalance.imbalance),
      unstatedIons: unstatedIons(amounts),
      conductivityAtReference: calculated,
      conductivityDifference: measured === undefined ? undefined : (measured - calculated) / Math.max(measured, calculated, leastConductivity),
      missingSalt,
      convergence: { relativeResidual: residual, steps },
    };
  },
});

/** Says so where the meter and the analysis do not tell of the same water. */
function noteConductivity(measured: number | undefined, calculated: number, missingSalt: number | undefined, note: AddNote): void {
  if (measured === undefined || missingSalt === undefined) return;
  const figures = `The meter shows ${writeNumber(measured * 10)} mS/cm and the analysis makes ${writeNumber(calculated * 10)} mS/cm`;
  if (conductivityTenthOfCharge(missingSalt) > tellingDifference * measured) {
    note('caution', 'salt-missing', 'missingSalt', `${figures}: some ${Number(missingSalt.toPrecision(2))} meq/L of salt are in the water and not in the analysis, beside what its balance of charges lacks.`);
  } else if (calculated - measured > tellingDifference * calculated) {
    note('caution', 'conductivity-below-analysis', 'measuredConductivity', `${figures}: a figure of the analysis is too high, or they are not of the same water.`);
  }
}
