import { calculation } from '../calculation/calculation.js';
import { backflow, mainsElectricity, pressureVessel } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { pressure, volume } from '../units/dimensions.js';
import { drawdownForRunTime } from './formulas/cycling.js';
import { checkSwitch, drawdownOf, leastRunTime, notePreCharge, pumpFlow, switchFields, usualMargin } from './tank.js';

/**
 * The pressure tank that lets a pump run for a least time when nothing is drawn.
 *
 * Takes the flow of the pump (1 L/h to 100 m³/h), the least run (1 s to 1 h; one minute by default), the switch (gauge), the pre-charge (2 psi
 * below the cut-in by default) and the atmosphere of the site. Gives the volume of the tank and the drawdown in it.
 * @throws InputError for input outside these limits, for a cut-in that is not below the cut-out, and for a pre-charge that is not below the cut-out.
 * @example
 * tankSize({ pumpFlow: '13 L/min', cutIn: '40 psi', cutOut: '60 psi' }).tankVolume.in('L') // => 50.40
 */
export const tankSize = /* @__PURE__ */ calculation({
  id: 'tankSize',
  title: 'Pressure tank for a least run of the pump',
  inputs: () => ({
    pumpFlow: pumpFlow(),
    leastRunTime: leastRunTime(),
    preCharge: field.optional(field.quantity(pressure, { limits: ['0 kPa', '2 MPa'] })),
    ...switchFields(),
  }),
  outputs: () => ({ tankVolume: output.quantity(volume, 'L'), drawdown: output.quantity(volume, 'L') }),
  equation: 'V = Q_p t_least / (V_d / V)',
  sources: ['wsc-2007', 'pelikan-columns'],
  cautions: [pressureVessel, mainsElectricity, backflow],
  example: { pumpFlow: '13 L/min', cutIn: '40 psi', cutOut: '60 psi' },
  check: (seen, problem) => {
    checkSwitch(seen, problem);
    if (seen.preCharge !== undefined && seen.preCharge > seen.cutOut * 0.98) problem(['preCharge'], 'a pressure below the cut-out', 'one as high or higher');
  },
  solve: ({ pumpFlow, leastRunTime, preCharge, ...rest }, { note }) => {
    const unit = { tankVolume: 1, preCharge: preCharge ?? Math.max(0, rest.cutIn - usualMargin), ...rest };
    const drawdown = drawdownForRunTime(pumpFlow, leastRunTime);
    const tankVolume = drawdown / drawdownOf(unit);
    notePreCharge({ ...unit, tankVolume }, note);
    return { tankVolume, drawdown };
  },
});
