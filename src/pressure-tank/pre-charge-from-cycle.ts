import { calculation } from '../calculation/calculation.js';
import { backflow, mainsElectricity, pressureVessel } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { flow, pressure, time, volume } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { demandFromRunAndRest, drawdownFromRunAndRest } from './formulas/cycling.js';
import { preChargeFromAcceptance } from './formulas/drawdown.js';
import { checkSwitch, drawdownOf, pumpFlow, switchFields, tankVolume, usualMargin } from './tank.js';

/**
 * The pre-charge that a tank must have, from how long its pump is seen to run and to rest while a steady amount is drawn.
 *
 * Takes the volume of the tank, the switch (gauge), the atmosphere of the site, the flow of the pump, and the run and the rest by the watch (1 s
 * to 1 d). Gives the demand and the drawdown that they show, and the pre-charges that explain it: one below the cut-in, which is what a tank that
 * has lost air shows, and one above it, where that is possible; and what a right pre-charge would give. A drawdown far below that is noted as
 * lost air; of a waterlogged tank the pre-charge below the cut-in comes out below the atmosphere, which stands for less air than the tank would
 * hold open.
 * @throws InputError for input outside these limits, and for a cut-in that is not below the cut-out.
 * @example
 * preChargeFromCycle({ tankVolume: '18 L', cutIn: '40 psi', cutOut: '60 psi', pumpFlow: '13 L/min', runTime: '16 s', restTime: '90 s' }).preChargeBelowCutIn?.in('psi') // => 18.71
 */
export const preChargeFromCycle = /* @__PURE__ */ calculation({
  id: 'preChargeFromCycle',
  title: 'Pre-charge of a tank from the run and rest of its pump',
  inputs: () => ({
    tankVolume: tankVolume(),
    ...switchFields(),
    pumpFlow: pumpFlow(),
    runTime: field.quantity(time, { limits: ['1 s', '1 d'] }),
    restTime: field.quantity(time, { limits: ['1 s', '1 d'] }),
  }),
  outputs: () => ({
    demand: output.quantity(flow, 'L/min'),
    drawdown: output.quantity(volume, 'L'),
    preChargeBelowCutIn: output.optional(output.quantity(pressure, 'kPa')),
    preChargeAboveCutIn: output.optional(output.quantity(pressure, 'kPa')),
    usualDrawdown: output.quantity(volume, 'L'),
  }),
  equation: 'V_d = Q_p t_run t_rest / (t_run + t_rest); P1 = (V_d / V) / (1/P2 − 1/P3), or (1 − V_d / V) P3 where that is above P2; absolute',
  sources: ['pelikan-columns'],
  cautions: [pressureVessel, mainsElectricity, backflow],
  example: { tankVolume: '18 L', cutIn: '40 psi', cutOut: '60 psi', pumpFlow: '13 L/min', runTime: '16 s', restTime: '90 s' },
  check: checkSwitch,
  solve: ({ runTime, restTime, pumpFlow, ...tank }, { note }) => {
    const { cutIn, cutOut, tankVolume, atmosphericPressure } = tank;
    const drawdown = drawdownFromRunAndRest(pumpFlow, runTime, restTime);
    const { belowCutIn, aboveCutIn } = preChargeFromAcceptance(drawdown / tankVolume, cutIn, cutOut, atmosphericPressure);
    const usualDrawdown = drawdownOf({ ...tank, preCharge: Math.max(0, cutIn - usualMargin) });
    if (belowCutIn === undefined && aboveCutIn === undefined) {
      note('caution', 'no-pre-charge-fits', 'drawdown', 'The tank gave more than any pre-charge allows: the flow of the pump, the switch or the volume of the tank is not as stated, or the draw was not steady.');
    } else if (drawdown < usualDrawdown / 2) {
      note('caution', 'air-lost', 'preChargeBelowCutIn', `The tank gives ${writeNumber((drawdown / usualDrawdown) * 100)} % of what it should: most likely its air is gone, or its bladder, though a pre-charge well above the cut-in shows the same. Let the pressure off and check the pre-charge with no water in it.`);
    }
    return { demand: demandFromRunAndRest(pumpFlow, runTime, restTime), drawdown, preChargeBelowCutIn: belowCutIn, preChargeAboveCutIn: aboveCutIn, usualDrawdown };
  },
});
