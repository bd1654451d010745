import { calculation } from '../calculation/calculation.js';
import { backflow, mainsElectricity, pressureVessel } from '../calculation/caution.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { volume } from '../units/dimensions.js';
import { drawdownForRunTime } from './formulas/cycling.js';
import { pumpFlowFromPoints } from './formulas/pump-flow.js';
import { pumpPhases } from './formulas/pumped-tank.js';
import { checkPumpPoints, curveOf, pumpPoints } from './pump-points.js';
import { inWords, notePreCharge } from './tank-notes.js';
import { checkPreCharge, checkSwitch, drawdownOf, leastRunTime, preCharge, pumpFlow, switchFields, usualPreCharge } from './tank.js';

/**
 * The pressure tank that lets a pump run for a least time when nothing is drawn.
 *
 * Takes the flow of the pump between cut-in and cut-out (1 L/h to 100 m³/h), or 1 to 50 points of its curve by the pressure at the tank; the least
 * run (1 s to 1 h; one minute by default), the switch (gauge), the pre-charge (2 psi below the cut-in by default) and the atmosphere of the site.
 * Gives the volume of the tank and the drawdown in it.
 * @throws InputError for input outside these limits, unless one of pumpFlow and pumpPoints is given, for a cut-in that is not below the cut-out, for a
 * pre-charge that is not below the cut-out, and for a pump whose curve does not reach the cut-out.
 * @example
 * tankSize({ pumpFlow: '13 L/min', cutIn: '40 psi', cutOut: '60 psi' }).tankVolume.in('L') // => 50.40
 */
export const tankSize = /* @__PURE__ */ calculation({
  id: 'tankSize',
  title: 'Pressure tank for a least run of the pump',
  inputs: () => ({
    pumpFlow: field.optional(pumpFlow()),
    pumpPoints: field.optional(pumpPoints()),
    leastRunTime: leastRunTime(),
    preCharge: field.optional(preCharge()),
    ...switchFields(),
  }),
  outputs: () => ({ tankVolume: output.quantity(volume, 'L'), drawdown: output.quantity(volume, 'L') }),
  equation: 'V = Q_p t_least / (V_d / V); with a curve V = t_least / ∫ (1/V)(dW/dp) / Q_p(p) dp',
  sources: ['wsc-2007', 'pelikan-columns'],
  cautions: [pressureVessel, mainsElectricity, backflow],
  example: { pumpFlow: '13 L/min', cutIn: '40 psi', cutOut: '60 psi' },
  check: (seen, problem) => {
    checkSwitch(seen, problem);
    checkPreCharge(seen, problem);
    expectExactlyOne(seen, ['pumpFlow', 'pumpPoints'], problem);
    if (seen.pumpPoints) checkPumpPoints(seen.pumpPoints, problem);
  },
  solve: ({ pumpFlow = 0, pumpPoints, leastRunTime, preCharge, ...rest }, { note, refuse }) => {
    const unit = { tankVolume: 1, preCharge: preCharge ?? usualPreCharge(rest.cutIn), ...rest };
    const share = drawdownOf(unit);
    const sizeByCurve = (points: NonNullable<typeof pumpPoints>): number => {
      const curve = curveOf(points);
      const { run } = pumpPhases({ ...unit, volume: 1, atmosphere: rest.atmosphericPressure, exponent: 1, pump: (p) => pumpFlowFromPoints(curve, p), demand: () => 0 }, curve.map(({ pressure }) => pressure));
      if (run.settled) refuse('pumpPoints', 'a pump that reaches the cut-out', `one that gives nothing from ${inWords(run.settled.pressure)} on`, 'set a lower cut-out');
      return leastRunTime / run.duration;
    };
    const tankVolume = pumpPoints ? sizeByCurve(pumpPoints) : drawdownForRunTime(pumpFlow, leastRunTime) / share;
    notePreCharge({ ...unit, tankVolume }, note);
    return { tankVolume, drawdown: tankVolume * share };
  },
});
