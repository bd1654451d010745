import { calculation } from '../calculation/calculation.js';
import { backflow, pressureVessel } from '../calculation/caution.js';
import * as output from '../calculation/output.js';
import { pressure, share, volume } from '../units/dimensions.js';
import { fastDrainAcceptanceFactor, waterShareOfTank } from './formulas/drawdown.js';
import { notePreCharge } from './tank-notes.js';
import { checkSwitch, drawdownOf, gaugeError, polytropicExponent, tankFields, usualPreCharge, type Tank } from './tank.js';

const conventions = ['usual, 2 psi below the cut-in', 'at the cut-in', 'otherwise below the cut-in', 'above the cut-in', 'none: a plain tank'] as const;

/** Which of the customary pre-charges a tank has. Printed tables of drawdown take one of the first two. */
function conventionOf({ preCharge, cutIn }: Tank): (typeof conventions)[number] {
  if (preCharge === 0) return 'none: a plain tank';
  if (Math.abs(preCharge - cutIn) < gaugeError) return 'at the cut-in';
  if (preCharge > cutIn) return 'above the cut-in';
  return Math.abs(preCharge - usualPreCharge(cutIn)) < gaugeError ? 'usual, 2 psi below the cut-in' : 'otherwise below the cut-in';
}

/**
 * Water that a pressure tank gives between the pump's cut-out and its cut-in.
 *
 * Takes the volume of the tank (0.1 L to 10 m³), its pre-charge with no water in it, cut-in and cut-out (gauge), the atmosphere of the site (50
 * to 110 kPa), and the exponent of the gas, in filling and draining alike: 1 while heat has time to pass, over minutes (the default). Gives the
 * drawdown, as a share of the tank too, which convention the pre-charge follows and how far it is below the cut-in, the water left at cut-in, and the range that a fast drain leaves whatever that exponent is: the tank
 * fills slowly, then the air cools as it expands, with exponents 1.2 and 1.4, and less water comes. A pre-charge of 0 kPa is that of a plain tank
 * whose air starts at the atmosphere.
 * @throws InputError for input outside these limits, and for a cut-in that is not below the cut-out.
 * @example
 * drawdown({ tankVolume: '85 US gal', preCharge: '28 psi', cutIn: '30 psi', cutOut: '50 psi' }).drawdown.in('US gal') // => 25.10
 */
export const drawdown = /* @__PURE__ */ calculation({
  id: 'drawdown',
  title: 'Water that a pressure tank gives between cut-out and cut-in',
  inputs: () => ({ ...tankFields(), polytropicExponent: polytropicExponent() }),
  outputs: () => ({
    drawdown: output.quantity(volume, 'L'),
    acceptanceFactor: output.quantity(share, '%'),
    preChargeConvention: output.choice(conventions),
    preChargeMargin: output.quantity(pressure, 'kPa'),
    waterAtCutIn: output.quantity(volume, 'L'),
    fastDrain: output.group({ somewhatCooled: output.quantity(volume, 'L'), fullyCooled: output.quantity(volume, 'L') }),
  }),
  equation: 'V_d = V ((P1/P2)^(1/n) − (P1/P3)^(1/n)), drained fast V (P1/P3) ((P3/P2)^(1/n) − 1); absolute pressures: P1 pre-charge, P2 cut-in, P3 cut-out',
  sources: ['pelikan-columns', 'wsc-2007'],
  cautions: [pressureVessel, backflow],
  example: { tankVolume: '18 L', preCharge: '2.6 bar', cutIn: '40 psi', cutOut: '60 psi' },
  check: checkSwitch,
  solve: ({ polytropicExponent, ...tank }, { note }) => {
    notePreCharge(tank, note);
    const { tankVolume, preCharge, cutIn, cutOut, atmosphericPressure } = tank;
    const given = drawdownOf(tank, polytropicExponent);
    const drainedFast = (exponent: number) => tankVolume * fastDrainAcceptanceFactor(preCharge, cutIn, cutOut, atmosphericPressure, exponent);
    return {
      drawdown: given,
      acceptanceFactor: given / tankVolume,
      preChargeConvention: conventionOf(tank),
      preChargeMargin: cutIn - preCharge,
      waterAtCutIn: tankVolume * waterShareOfTank(cutIn, preCharge, atmosphericPressure, polytropicExponent),
      fastDrain: { somewhatCooled: drainedFast(1.2), fullyCooled: drainedFast(1.4) },
    };
  },
});
