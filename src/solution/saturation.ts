import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { amountConcentration, share, temperature } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { waterDensityIapws2008 } from '../water/density.js';
import { noteContradiction } from './acidity-note.js';
import { amountsSeen, checkComposition, compositionFields } from './composition-field.js';
import { chargeBalanceOfIons, ionicStrengthOfIons } from './formulas/concentration.js';
import { saturationIndices, strongestForSaturation } from './formulas/saturation.js';
import { speciate } from './formulas/speciation.js';
import { speciationTask } from './formulas/stated-solution.js';
import { noteImbalance } from './imbalance-note.js';
import { noteSaturation, noteStrongSolution } from './saturation-notes.js';
import type { SolidKey } from './solids.js';

/**
 * Whether lime, gypsum, calcium phosphate or another solid settles out of a water or a feed of known composition.
 *
 * In: `ions` in mmol/L or `nutrients` in mg/L by form, one of the two, bicarbonate being the alkalinity; the `pH` (2 to 11) and the
 * `waterTemperature` (0 to 50 °C, 25 °C where not given).
 * Out: `saturationIndices` by solid, log10 of the product of its ions over the one that it is in balance with: 0 is in balance, above it may settle out; the
 * `ionicStrength` without what is paired; and how well the balances closed. Notes tell of solids that are above 0: those that form readily
 * (gypsum, calcite, brushite, struvite) with a caution from 0.3, the slow ones for information. Iron counts as iron(II) where it stands
 * among the `ions`; what a chelate holds cannot settle out, and iron(III) phosphate cannot be told.
 * An InputError where not exactly one composition is given, where it forms none of the solids, or where its ionic strength is above 10 mol/L.
 *
 * Good to about 0.1 in water and feeds. Above an ionic strength of 0.5 mol/kg, in a stock, indices are rough, and a note says so.
 *
 * Source: constants in the table `solids`, most of them of Ball and Nordstrom 1991; activities after Davies 1962.
 * @example
 * const feed = saturation({ nutrients: { 'N-NO3': '150 mg/L', P: '40 mg/L', K: '240 mg/L', Ca: '130 mg/L', Mg: '30 mg/L', S: '50 mg/L' }, pH: 7.2 });
 * feed.saturationIndices.brushite // => 0.27
 * feed.saturationIndices.gypsum // => -1.37
 */
export const saturation = /* @__PURE__ */ calculation({
  id: 'saturation',
  title: 'What settles out of a water or a feed',
  inputs: () => ({
    ...compositionFields(),
    pH: field.number({ limits: [2, 11] }),
    waterTemperature: field.withDefault(field.quantity(temperature, { limits: ['0 °C', '50 °C'] }), '25 °C'),
  }),
  outputs: () => ({
    saturationIndices: output.record<SolidKey, number, number>(output.number()),
    ionicStrength: output.quantity(amountConcentration, 'mmol/L'),
    convergence: output.group({ relativeResidual: output.quantity(share, '%'), steps: output.number() }),
  }),
  equation: 'SI = log10(Π activities / K)',
  sources: ['ball-nordstrom-1991', 'plummer-busenberg-1982', 'allison-1991', 'dorozhkin-2010', 'ronteltap-2007', 'parkhurst-appelo-2013', 'davies-1962'],
  example: {
    nutrients: { 'N-NO3': '140 mg/L', 'N-NH4': '8 mg/L', P: '40 mg/L', K: '220 mg/L', Ca: '120 mg/L', Mg: '28 mg/L', S: '45 mg/L', Na: '12 mg/L', Cl: '18 mg/L', HCO3: '30 mg/L' },
    pH: 6.2,
    waterTemperature: '17 °C',
  },
  check: checkComposition,
  solve: (inputs, { note, refuse }) => {
    const { pH, waterTemperature } = inputs;
    const amounts = amountsSeen(inputs);
    const place = inputs.ions === undefined ? 'nutrients' : 'ions';
    const strength = ionicStrengthOfIons(amounts);
    if (strength > strongestForSaturation) refuse(place, 'a solution of at most 10 mol/L of ionic strength', `one of ${writeNumber(strength / 1000)} mol/L`, 'are the units right?');

    const density = waterDensityIapws2008(waterTemperature);
    const task = speciationTask(amounts, pH, waterTemperature, density);
    const found = speciate(task.totals, task.conditions);
    const indices = saturationIndices(found, waterTemperature);
    if (Object.keys(indices).length === 0) refuse(place, 'ions that form a solid together, such as calcium with sulfate', 'none of them');

    noteImbalance(chargeBalanceOfIons(amounts), place, note);
    noteContradiction(task.contradiction, note);
    noteSaturation(indices, 'The solution', 'saturationIndices', note);
    noteStrongSolution(found.ionicStrength, 'The solution', 'saturationIndices', note);
    return {
      saturationIndices: indices,
      ionicStrength: found.ionicStrength * density,
      convergence: { relativeResidual: found.residual, steps: found.steps },
    };
  },
});
