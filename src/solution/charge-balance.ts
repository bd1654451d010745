import { calculation } from '../calculation/calculation.js';
import * as output from '../calculation/output.js';
import { amountConcentration } from '../units/dimensions.js';
import { chargeBalanceOutputs } from './charge-balance-outputs.js';
import { amountsSeen, checkComposition, compositionFields } from './composition-field.js';
import { chargeBalanceOfIons, ionicStrengthOfIons } from './formulas/concentration.js';
import { noteImbalance } from './imbalance-note.js';

/**
 * Whether the cations and anions of a water analysis or a feed carry the same charge: the test of whether it is complete.
 *
 * In: `ions` in mmol/L (0 to 2 mol/L each), or `nutrients` in mg/L by form (0 to 100 g/L each; `S` counts as sulfate, `P` as dihydrogen
 * phosphate, `Fe` as a chelate with one negative charge).
 * Out: `cations` and `anions` in meq/L, both positive; `imbalance`, cations less anions; `relativeImbalance`, as a share of both together;
 * `ionicStrength` in mmol/L, as if no ions paired. Notes from 5 % and from 10 % of imbalance, where that is more than 0.2 meq/L
 * (a limit from memory).
 * An InputError where not exactly one of `ions` and `nutrients` is given.
 *
 * Source: Prohaska et al. 2022, Standard atomic weights of the elements 2021, for the masses.
 * @example
 * const well = chargeBalance({ nutrients: { Ca: '80 mg/L', Mg: '12 mg/L', Na: '20 mg/L', Cl: '30 mg/L', S: '15 mg/L', HCO3: '240 mg/L' } });
 * String(well.cations) // => '5.85 meq/L'
 * String(well.anions) // => '5.715 meq/L'
 */
export const chargeBalance = /* @__PURE__ */ calculation({
  id: 'chargeBalance',
  title: 'Balance of charges of a water or a feed',
  inputs: compositionFields,
  outputs: () => ({ ...chargeBalanceOutputs(), ionicStrength: output.quantity(amountConcentration, 'mmol/L') }),
  equation: 'Σ z c of the cations - Σ |z| c of the anions; I = Σ z² c / 2',
  sources: ['prohaska-2022'],
  example: {
    ions: { 'Ca2+': '2 mmol/L', 'Mg2+': '0.5 mmol/L', 'Na+': '0.9 mmol/L', 'K+': '0.1 mmol/L', 'Cl-': '0.8 mmol/L', 'SO4 2-': '0.5 mmol/L', 'HCO3-': '4.1 mmol/L' },
  },
  check: checkComposition,
  solve: (inputs, { note }) => {
    const amounts = amountsSeen(inputs);
    const balance = chargeBalanceOfIons(amounts);
    noteImbalance(balance, 'relativeImbalance', note);
    return { ...balance, ionicStrength: ionicStrengthOfIons(amounts) };
  },
});
