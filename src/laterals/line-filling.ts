import { calculation, type Solving } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { ConvergenceError } from '../numerics/convergence-error.js';
import { flow, share, time, volume } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { inletPressure } from './design.js';
import { flowsToCompare } from './evenness.js';
import { drainLine } from './formulas/line-draining.js';
import { fillLine, type FilledLine } from './formulas/line-filling.js';
import type { LateralLayout } from './formulas/stretch.js';
import { lowQuarterUniformityWhole, mean } from './formulas/uniformity.js';
import { checkLateral, lateralFields, reachesOf } from './lateral-fields.js';
import { layoutOf, solved } from './lateral-layout.js';
import { pressureOfHead } from './pipe.js';

/** Most outlets of a line that is filled: its time goes on for each of two hundred pieces of pipe. */
const mostFilled = 10_000;

/** What filling and draining may take from the uniformity before it is worth a word. */
const tellingLoss = 0.05;

/** By how much a supply has to give more than the emitters take, for a line to fill. */
const leastSurplus = 1.01;

/**
 * What each emitter of a drip lateral really gives in one shot: the line fills first, and drains after the valve is shut.
 *
 * Takes what `lateral` takes of pipe and emitters (up to 10 000), the pressure at the inlet and how long the shot runs (1 s to 1 d). The greatest flow of the
 * supply may be given, which an empty line takes at once; without it only the pipe limits the flow. A line that starts full (anti-drain emitters, after the
 * first shot of a day) is told so. Gives when the water comes to each emitter, when the line is full, what each emitter gives in the shot and by
 * draining after it, both for the first and the last emitter, and how uniform the whole is beside the steady flow.
 *
 * The line is empty and open to the air through its emitters; the inertia of the water is left out, so nothing is said of the first second. After the shot
 * the valve at the inlet is tight, and air comes in through the highest emitters. A line, or its low end, that rises or falls by less than the diameter at its inlet
 * counts as level, and leaves each emitter the water of its own length of pipe. The time of draining is until 95 % of what falls has drained. Down a
 * steep slope water runs ahead of the front and of the sinking surface, and air stays behind: real lines then fill and drain less orderly. Draining is
 * not told of a line that first climbs and then falls, or is not yet full.
 * @throws InputError for input outside these limits, where pressure would not reach every emitter, and where the supply gives less than the emitters take.
 * @example
 * const row = lineFilling({ outlets: 28, spacing: '25 cm', diameter: '13.6 mm', slope: '1 %', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5, inletPressure: '1 bar', supplyFlow: '4 L/min', runTime: '1 min' });
 * row.fillTime.in('s') // => 15.40
 * row.lastEmitterVolume.in('mL') // => 24.68
 */
export const lineFilling = /* @__PURE__ */ calculation({
  id: 'lineFilling',
  title: 'Filling and draining of a drip lateral in a shot',
  inputs: () => ({
    ...lateralFields(),
    inletPressure: inletPressure(),
    supplyFlow: field.optional(field.quantity(flow, { limits: ['1 L/h', '100 m³/h'] })),
    runTime: field.quantity(time, { limits: ['1 s', '1 d'] }),
    startsFull: field.withDefault(field.flag(), false),
  }),
  outputs: () => ({
    arrivalTimes: output.column(time, 's'),
    fillTime: output.quantity(time, 's'),
    lineVolume: output.quantity(volume, 'L'),
    shotVolumes: output.column(volume, 'mL'),
    drainVolumes: output.optional(output.column(volume, 'mL')),
    drainTime: output.optional(output.quantity(time, 'min')),
    keptVolume: output.optional(output.quantity(volume, 'L')),
    firstEmitterVolume: output.quantity(volume, 'mL'),
    lastEmitterVolume: output.quantity(volume, 'mL'),
    lowQuarterUniformity: output.quantity(share, '%'),
    shotUniformity: output.optional(output.quantity(share, '%')),
    uniformityTaken: output.optional(output.quantity(share, '%')),
  }),
  equation: 'A dx/dt = Q at the front, which has the pressure of the air; behind it friction, rise and emitters as in a full lateral',
  sources: ['clamond-2009', 'colebrook-1939', 'iapws-sr6-08', 'definition'],
  example: { outlets: 28, spacing: '25 cm', diameter: '13.6 mm', slope: '1 %', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5, inletPressure: '1 bar', supplyFlow: '4 L/min', runTime: '1 min', furtherReaches: [] },
  check: (seen, problem) => {
    checkLateral(seen, problem);
    const all = reachesOf(seen).reduce((sum, { outlets }) => sum + outlets, 0);
    if (all > mostFilled) problem(['outlets'], `at most ${mostFilled} outlets to be filled`, String(all));
  },
  solve: (seen, solving) => {
    const { inletPressure, supplyFlow = Infinity, runTime, startsFull } = seen;
    const pascals = pressureOfHead(seen.waterTemperature);
    const layout = layoutOf(seen, pascals);
    const { flows, inletFlow } = solved(layout, seen, pascals, solving);
    if (inletFlow * leastSurplus > supplyFlow) solving.refuse('supplyFlow', 'a flow above that of the emitters', `${writeNumber(supplyFlow / inletFlow)} times it`, 'take a lower inlet pressure, or fewer emitters at a time');
    const filled = filling(layout, inletPressure / pascals, supplyFlow, runTime, solving);
    const { fillTime, arrivals, volumes } = startsFull ? { fillTime: 0, arrivals: flows.map(() => 0), volumes: flows.map(() => 0) } : filled;
    const drained = runTime < fillTime ? undefined : drainLine(layout);
    const inShot = (duration: number): Float64Array => volumes.map((given, i) => given + flows[i]! * Math.max(0, duration - fillTime));
    const inAll = (duration: number): Float64Array => inShot(duration).map((given, i) => given + (drained?.volumes[i] ?? 0));
    const compare = (values: Float64Array): number => lowQuarterUniformityWhole(flowsToCompare(values, reachesOf(seen)));
    const shotVolumes = inShot(runTime);
    const total = inAll(runTime);
    const lowQuarterUniformity = compare(flows);
    const shotUniformity = mean(total) > 0 ? compare(total) : undefined;
    if (runTime < fillTime) {
      const dry = arrivals.findIndex((arrival) => arrival >= runTime);
      solving.note('danger', 'never-full', 'runTime', `The line is full after ${writeNumber(fillTime)} s, and the shot ends before${dry < 0 ? '' : `: from emitter ${dry + 1} on nothing comes`}. Run fewer and longer shots.`);
    } else if (shotUniformity! < lowQuarterUniformity - tellingLoss) {
      const longer = shortestEven((duration) => compare(inAll(duration)) >= lowQuarterUniformity - tellingLoss, runTime);
      solving.note('caution', 'short-shot', 'runTime', `Filling and draining take ${writeNumber((lowQuarterUniformity - shotUniformity!) * 100)} % from the uniformity: run shots of ${writeNumber(longer / 60)} min or more, or take anti-drain emitters that keep the line full.`);
    }
    if (runTime >= fillTime && !drained) solving.note('info', 'pockets', 'drainVolumes', 'The line climbs and falls: where its water drains to is not told.');
    return {
      arrivalTimes: arrivals, fillTime, lineVolume: filled.lineVolume, shotVolumes,
      drainVolumes: drained?.volumes, drainTime: drained?.drainTime,
      keptVolume: drained && keptOf(filled.lineVolume, drained.volumes),
      firstEmitterVolume: total[0]!, lastEmitterVolume: total.at(-1)!,
      lowQuarterUniformity, shotUniformity,
      uniformityTaken: shotUniformity === undefined ? undefined : lowQuarterUniformity - shotUniformity,
    };
  },
});

/** The line filled, or a refusal where its water comes to a halt. */
function filling(layout: LateralLayout, inletHead: number, supplyFlow: number, runTime: number, { refuse }: Solving): FilledLine {
  try {
    return fillLine(layout, inletHead, supplyFlow, runTime);
  } catch (error) {
    if (error instanceof ConvergenceError) return refuse('inletPressure', 'enough pressure to fill the line', 'too little: the water comes to a halt on its way');
    throw error;
  }
}

/** What of a line's water did not drain; but for rounding. */
function keptOf(lineVolume: number, drained: Float64Array): number {
  const kept = lineVolume - drained.reduce((sum, given) => sum + given, 0);
  return Math.abs(kept) < 1e-9 * lineVolume ? 0 : kept;
}

/** The shortest time from one that is too short on for which something holds, to a hundredth. */
function shortestEven(holds: (duration: number) => boolean, tooShort: number): number {
  let [low, high] = [tooShort, 2 * tooShort];
  while (!holds(high)) [low, high] = [high, 2 * high];
  while (high > 1.01 * low) {
    const middle = Math.sqrt(low * high);
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return high;
}
