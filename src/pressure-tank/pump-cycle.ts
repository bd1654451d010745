import { calculation } from '../calculation/calculation.js';
import { backflow, mainsElectricity, pressureVessel } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { flow, frequency, power, time, volume } from '../units/dimensions.js';
import { pumpRestTime, pumpRunTime, pumpStartRate, pumpStartRateOverDay, worstDemandForStarts } from './formulas/cycling.js';
import { leastFlow } from './formulas/pumped-tank.js';
import { noteShortRun, noteStarts } from './start-notes.js';
import { notePreCharge } from './tank-notes.js';
import { checkSwitch, drawdownOf, leastRunTime, pumpFlow, rightPreCharge, tankFields } from './tank.js';

/**
 * How long a pump on a pressure switch runs and rests while water is drawn, and how often it starts.
 *
 * Takes the tank and its switch as `drawdown` does, the flow of the pump between cut-in and cut-out, taken as constant (1 L/h to 100 m³/h), the
 * demand (0 to 100 m³/h), the least run that is kind to the pump (1 s to 1 h; one minute by default), the rated power of the motor, where its
 * starts are to be judged, and how long a day the demand goes on, where those of a day are. Starts are judged at the worst demand too, whatever
 * the demand is now. Gives the drawdown, the run, the rest and the cycle of both (absent where the pump never stops, or never starts), starts per
 * hour and per day, the demand that makes most starts, and how many. A demand as large as the pump's flow keeps it running, and a larger one gets
 * too little: notes, no errors.
 * @throws InputError for input outside these limits, and for a cut-in that is not below the cut-out.
 * @example
 * const cycle = pumpCycle({ tankVolume: '18 L', preCharge: '38 psi', cutIn: '40 psi', cutOut: '60 psi', pumpFlow: '13 L/min', demand: '2 L/min' });
 * cycle.runTime?.in('s') // => 25.33
 * cycle.startsPerHour.in('1/h') // => 21.87
 */
export const pumpCycle = /* @__PURE__ */ calculation({
  id: 'pumpCycle',
  title: 'How a pump on a pressure switch runs and rests',
  inputs: () => ({
    ...tankFields(),
    pumpFlow: pumpFlow(),
    demand: field.quantity(flow, { limits: ['0 L/h', '100 m³/h'] }),
    leastRunTime: leastRunTime(),
    motorPower: field.optional(field.quantity(power, { limits: ['1 W', '100 kW'] })),
    dailyDemandTime: field.optional(field.quantity(time, { limits: ['0 s', '24 h'] })),
  }),
  outputs: () => ({
    drawdown: output.quantity(volume, 'L'),
    runTime: output.optional(output.quantity(time, 's')),
    restTime: output.optional(output.quantity(time, 's')),
    cycleTime: output.optional(output.quantity(time, 's')),
    startsPerHour: output.quantity(frequency, '1/h'),
    startsPerDay: output.optional(output.quantity(frequency, '1/d')),
    worstDemand: output.quantity(flow, 'L/min'),
    mostStartsPerHour: output.optional(output.quantity(frequency, '1/h')),
  }),
  equation: 't_run = V_d / (Q_p − Q_d); t_rest = V_d / Q_d; starts = 1 / (t_run + t_rest), most at Q_d = Q_p / 2',
  sources: ['pelikan-columns', 'wsc-2007', 'wsc-tank-standard', 'kill-tank-selection', 'usace-ei-11c201'],
  cautions: [pressureVessel, mainsElectricity, backflow],
  example: { tankVolume: '18 L', preCharge: '2.6 bar', cutIn: '40 psi', cutOut: '60 psi', pumpFlow: '13 L/min', demand: '2 L/min', motorPower: '450 W' },
  check: checkSwitch,
  solve: ({ pumpFlow, demand, leastRunTime, motorPower, dailyDemandTime, ...tank }, { note }) => {
    notePreCharge(tank, note);
    const drawdown = drawdownOf(tank);
    const worstDemand = worstDemandForStarts(pumpFlow);
    const isCycling = demand > leastFlow && demand < pumpFlow && drawdown > 0;
    const runTime = isCycling ? pumpRunTime(drawdown, pumpFlow, demand) : undefined;
    const restTime = isCycling ? pumpRestTime(drawdown, demand) : undefined;
    const startsPerHour = isCycling ? pumpStartRate(drawdown, pumpFlow, demand) : 0;
    const starts = {
      startsPerHour,
      startsPerDay: dailyDemandTime === undefined ? undefined : pumpStartRateOverDay(startsPerHour, dailyDemandTime),
      mostStartsPerHour: drawdown > 0 ? pumpStartRate(drawdown, pumpFlow, worstDemand) : undefined,
    };
    if (demand > pumpFlow) note('danger', 'demand-above-pump', 'demand', 'The demand is above the flow of the pump: the pressure falls until no more is drawn than the pump gives, so nothing gets what it should.');
    else if (demand === pumpFlow) note('caution', 'pump-runs-through', 'demand', 'The demand is as large as the flow of the pump: it never reaches its cut-out, and the pressure settles below it.');
    const small = { tankVolume: tank.tankVolume, gain: drawdownOf({ ...tank, preCharge: rightPreCharge(tank) }) / drawdown };
    if (runTime !== undefined) noteShortRun(runTime, leastRunTime, small, note);
    if (motorPower !== undefined) noteStarts(starts, motorPower, small, note);
    return { drawdown, runTime, restTime, cycleTime: isCycling ? 1 / startsPerHour : undefined, ...starts, worstDemand };
  },
});
