import { calculation } from '../calculation/calculation.js';
import { backflow, pressureVessel } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { share, volume } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { plainTankAcceptanceFactor, preChargeFromAirShare, waterShareOfTank } from './formulas/drawdown.js';
import { drawdownMoves, litres } from './tank-notes.js';
import { checkSwitch, drawdownOf, polytropicExponent, switchFields, tankVolume } from './tank.js';

/** Drawdown below this share of that of the freshly aired tank: a waterlogged one. Common practice, no source. */
const waterloggedBelow = 0.75;

/**
 * Water that a plain pressure tank gives, in which air stands over water without a bladder.
 *
 * Takes the volume of the tank (0.1 L to 10 m³), the switch (gauge), the atmosphere of the site, the exponent of the gas (1 by default), and
 * perhaps the share of the tank that is air at cut-out (1 to 99 %), by a sight glass or where it sounds hollow; without it the tank is taken as freshly aired:
 * closed with nothing but air of the atmosphere in it. Gives the drawdown, the shares of air at cut-out and at cut-in, and the drawdown freshly
 * aired. Water carries air away, so that these tanks must be aired again and again. A published chart of such tanks for homes, of the sizes
 * that were sold, comes to runs of the pump of 1.1 to 2.2 minutes.
 * @throws InputError for input outside these limits, and for a cut-in that is not below the cut-out.
 * @example
 * plainTank({ tankVolume: '82 US gal', cutIn: '20 psi', cutOut: '40 psi' }).drawdown.in('US gal') // => 12.70
 */
export const plainTank = /* @__PURE__ */ calculation({
  id: 'plainTank',
  title: 'Water that a plain pressure tank gives',
  inputs: () => ({
    tankVolume: tankVolume(),
    ...switchFields(),
    airShareAtCutOut: field.optional(field.share({ limits: [0.01, 0.99] })),
    polytropicExponent: polytropicExponent(),
  }),
  outputs: () => ({
    drawdown: output.quantity(volume, 'L'),
    acceptanceFactor: output.quantity(share, '%'),
    airShareAtCutOut: output.quantity(share, '%'),
    airShareAtCutIn: output.quantity(share, '%'),
    freshDrawdown: output.quantity(volume, 'L'),
  }),
  equation: 'V_d = V a3 ((P3/P2)^(1/n) − 1), no more than the water; a3 air at cut-out, fresh (Pa/P3)^(1/n); absolute pressures: P2 cut-in, P3 cut-out',
  sources: ['definition', 'epa-private-water'],
  cautions: [pressureVessel, backflow],
  example: { tankVolume: '200 L', cutIn: '1.4 bar', cutOut: '2.8 bar', airShareAtCutOut: '15 %' },
  check: checkSwitch,
  solve: ({ airShareAtCutOut, polytropicExponent, ...tank }, { note }) => {
    const { tankVolume, cutIn, cutOut, atmosphericPressure } = tank;
    const fresh = 1 - waterShareOfTank(cutOut, 0, atmosphericPressure, polytropicExponent);
    const air = airShareAtCutOut ?? fresh;
    const preCharge = preChargeFromAirShare(air, cutOut, atmosphericPressure, polytropicExponent);
    const drawdown = drawdownOf({ ...tank, preCharge }, polytropicExponent);
    const freshDrawdown = tankVolume * plainTankAcceptanceFactor(cutIn, cutOut, atmosphericPressure, polytropicExponent);
    if (preCharge > cutIn) note('caution', 'air-into-pipe', 'airShareAtCutOut', `So much air drives all water out before the pump starts, and then goes into the pipe: let some out; freshly aired the tank holds ${writeNumber(fresh * 100)} % of air at cut-out.`);
    else if (drawdown < freshDrawdown * waterloggedBelow) note('caution', 'waterlogged', 'airShareAtCutOut', `The tank has lost air to the water: let the pressure off, drain it and let air in; ${drawdownMoves(drawdown, freshDrawdown)}. Or pump in ${litres(((fresh - air) * tankVolume * (cutOut + atmosphericPressure)) / atmosphericPressure)} of free air.`);
    return { drawdown, acceptanceFactor: drawdown / tankVolume, airShareAtCutOut: air, airShareAtCutIn: 1 - waterShareOfTank(cutIn, preCharge, atmosphericPressure, polytropicExponent), freshDrawdown };
  },
});
