import { calculation, type Solving } from '../calculation/calculation.js';
import { backflow, mainsElectricity, pressureVessel } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { flow, frequency, power, time, volume } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { pumpRestTime, pumpRunTime, pumpStartsPerHour, worstDemandForStarts } from './formulas/cycling.js';
import { motorStartLimits } from './motor-starts.js';
import { checkSwitch, drawdownOf, notePreCharge, pumpFlow, tankFields } from './tank.js';

/** A demand below this, m³/s, is none: 4 mL/h. */
const leastDemand = 1e-9;

/** Least run of a small pump, s (Pelikan 2004-2011). */
const leastRun = 60;

/**
 * How long a pump on a pressure switch runs and rests while water is drawn, and how often it starts.
 *
 * Takes the tank and its switch as `drawdown` does, the flow of the pump between cut-in and cut-out, taken as constant (1 L/h to 100 m³/h), the demand (0 to 100 m³/h),
 * the rated power of the motor, where its starts are to be judged, and how long a day the demand goes on, where those of a day are. Gives the drawdown, the run, the rest and the cycle
 * of both (absent where the pump never stops, or never starts), starts per hour and per day, the demand that makes most starts, and how many.
 * A demand as large as the pump's flow keeps it running: a note, no error.
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
  sources: ['pelikan-columns', 'wsc-tank-standard', 'kill-tank-selection', 'usace-ei-11c201'],
  cautions: [pressureVessel, mainsElectricity, backflow],
  example: { tankVolume: '18 L', preCharge: '2.6 bar', cutIn: '40 psi', cutOut: '60 psi', pumpFlow: '13 L/min', demand: '2 L/min', motorPower: '450 W' },
  check: checkSwitch,
  solve: ({ pumpFlow, demand, motorPower, dailyDemandTime, ...tank }, solving) => {
    const { note } = solving;
    notePreCharge(tank, note);
    const drawdown = drawdownOf(tank);
    const worstDemand = worstDemandForStarts(pumpFlow);
    const mostStartsPerHour = drawdown > 0 ? pumpStartsPerHour(drawdown, pumpFlow, worstDemand) / 3600 : undefined;
    const inADay = (starts: number) => (dailyDemandTime === undefined ? undefined : (starts * dailyDemandTime) / 86400);
    const always = { drawdown, worstDemand, mostStartsPerHour };
    const isCycling = demand > leastDemand && demand < pumpFlow && drawdown > 0;
    if (demand >= pumpFlow) note('caution', 'pump-runs-through', 'demand', 'The demand is as large as the flow of the pump: it never reaches its cut-out, and the pressure settles below it.');
    if (!isCycling) return { ...always, runTime: undefined, restTime: undefined, cycleTime: undefined, startsPerHour: 0, startsPerDay: inADay(0) };
    const runTime = pumpRunTime(drawdown, pumpFlow, demand);
    const startsPerHour = pumpStartsPerHour(drawdown, pumpFlow, demand) / 3600;
    const startsPerDay = inADay(startsPerHour);
    if (runTime < leastRun) note('caution', 'short-run', 'runTime', `The pump runs ${writeNumber(runTime)} s at a time; a minute or more is kind to its motor: a larger tank, a wider switch, or a smaller pump.`);
    if (motorPower !== undefined) noteStarts({ startsPerHour, startsPerDay, mostStartsPerHour }, motorPower, solving);
    return { ...always, runTime, restTime: pumpRestTime(drawdown, demand), cycleTime: 1 / startsPerHour, startsPerHour, startsPerDay };
  },
});

/** Says so where the pump starts more often than its motor should: now, in a day, or at a worse demand. All per second. */
function noteStarts(starts: { readonly startsPerHour: number; readonly startsPerDay: number | undefined; readonly mostStartsPerHour: number | undefined }, motorPower: number, { note }: Solving): void {
  const limits = motorStartLimits.filter(({ above, upTo }) => motorPower > above && motorPower <= upTo);
  const perHour = Math.min(...limits.map(({ startsPerHour = Infinity }) => startsPerHour));
  const perDay = Math.min(...limits.map(({ startsPerDay = Infinity }) => startsPerDay));
  const [now, inADay, most] = [starts.startsPerHour * 3600, (starts.startsPerDay ?? 0) * 86400, (starts.mostStartsPerHour ?? 0) * 3600];
  if (now > perHour) note('caution', 'too-many-starts', 'startsPerHour', `${writeNumber(now)} starts an hour are more than the ${perHour} that a motor of this power should make.`);
  else if (most > perHour) note('info', 'too-many-starts-at-worst', 'mostStartsPerHour', `At the worst demand the pump would start ${writeNumber(most)} times an hour, more than the ${perHour} that a motor of this power should.`);
  if (inADay > perDay) note('caution', 'too-many-starts-a-day', 'startsPerDay', `${writeNumber(inADay)} starts a day are more than the ${perDay} that a motor of this power should make.`);
}
