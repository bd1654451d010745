import { calculation, type Solving } from '../calculation/calculation.js';
import { discharge, mainsElectricity, pumpSuction } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { area, flow, frequency, length, power, time, volume } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { minimumCycleTimes } from './minimum-cycle-times.js';
import { dust, roundedDown, roundedUp } from '../numerics/round-outward.js';

/** An inflow below this, m³/s, is none: 4 mL/h. */
const leastInflow = 1e-9;

/**
 * How a pump empties a sump between its two floats: how long it runs and rests, how often it starts, and when the sump runs over if the pump fails.
 *
 * Takes the area of the sump (0.001 to 1000 m²), the height between the float that starts the pump and the one that stops it (1 mm to 10 m), the height
 * from the upper float to the overflow (0 to 10 m), where it is known, the inflow (0 to 1000 m³/h), the flow of the pump (1 L/h to 1000 m³/h), and the rated
 * power of the motor (1 W to 185 kW), where its starts are to be judged. Gives the volume between the floats, run, rest and cycle (absent where the pump
 * never stops or never starts), starts per hour, those at the worst inflow, half the pump's flow, and how long the sump takes from the upper float to
 * the overflow with the pump standing still; with the motor's power the volume between the floats that keeps its starts far enough apart at any inflow.
 * An inflow as large as the pump's flow is a note, no error.
 * @throws InputError for input outside these limits.
 * @example
 * const sump = sumpCycle({ sumpArea: '0.25 m²', floatSpan: '150 mm', freeboard: '100 mm', inflow: '3 L/min', pumpFlow: '40 L/min' });
 * sump.restTime?.in('min') // => 12.5
 * sump.startsPerHour.in('1/h') // => 4.44
 * sump.timeToOverflow?.in('min') // => 8.333
 */
export const sumpCycle = /* @__PURE__ */ calculation({
  id: 'sumpCycle',
  title: 'How a pump empties a sump between its floats',
  inputs: () => ({
    sumpArea: field.quantity(area, { limits: ['0.001 m²', '1000 m²'] }),
    floatSpan: field.quantity(length, { limits: ['1 mm', '10 m'] }),
    freeboard: field.optional(field.quantity(length, { limits: ['0 m', '10 m'] })),
    inflow: field.quantity(flow, { limits: ['0 L/h', '1000 m³/h'] }),
    pumpFlow: field.quantity(flow, { limits: ['1 L/h', '1000 m³/h'] }),
    motorPower: field.optional(field.quantity(power, { limits: ['1 W', '185 kW'] })),
  }),
  outputs: () => ({
    workingVolume: output.quantity(volume, 'L'),
    runTime: output.optional(output.quantity(time, 'min')),
    restTime: output.optional(output.quantity(time, 'min')),
    cycleTime: output.optional(output.quantity(time, 'min')),
    startsPerHour: output.quantity(frequency, '1/h'),
    worstInflow: output.quantity(flow, 'L/min'),
    mostStartsPerHour: output.quantity(frequency, '1/h'),
    timeToOverflow: output.optional(output.quantity(time, 'min')),
    leastWorkingVolume: output.optional(output.quantity(volume, 'L')),
  }),
  equation: 't_run = V/(Q_p − Q_in); t_rest = V/Q_in; at the worst inflow, Q_p/2, V = t_cycle Q_p/4',
  sources: ['usace-ei-11c201'],
  cautions: [mainsElectricity, pumpSuction, discharge],
  example: { sumpArea: '0.25 m²', floatSpan: '150 mm', freeboard: '100 mm', inflow: '3 L/min', pumpFlow: '40 L/min', motorPower: '250 W' },
  solve: ({ sumpArea, floatSpan, freeboard, inflow, pumpFlow, motorPower }, solving) => {
    const workingVolume = sumpArea * floatSpan;
    const isCycling = inflow > leastInflow && inflow < pumpFlow;
    const runTime = isCycling ? workingVolume / (pumpFlow - inflow) : undefined;
    const restTime = isCycling ? workingVolume / inflow : undefined;
    const cycleTime = isCycling ? runTime! + restTime! : undefined;
    const limit = minimumCycleTimes.find(({ above, upTo }) => motorPower !== undefined && motorPower > above && motorPower <= upTo);
    const leastWorkingVolume = limit && (limit.least[0] * pumpFlow) / 4;
    if (inflow >= pumpFlow) {
      const spilled = freeboard === undefined || inflow === pumpFlow ? '' : `, ${writeNumber((freeboard * sumpArea) / (inflow - pumpFlow) / 60)} min after it starts`;
      solving.note('danger', 'inflow-above-pump', 'inflow', `The pump does not keep up with the inflow: it never stops, and the sump runs over${spilled}. It takes a pump of more than ${writeNumber(inflow * 60_000)} L/min, or less drain at a time.`);
    }
    if (leastWorkingVolume !== undefined) noteStarts({ cycleTime, inflow, sumpArea }, limit!.least[0], workingVolume, leastWorkingVolume, solving);
    return {
      workingVolume, runTime, restTime, cycleTime,
      startsPerHour: cycleTime === undefined ? 0 : 1 / cycleTime,
      worstInflow: pumpFlow / 2,
      mostStartsPerHour: pumpFlow / (4 * workingVolume),
      timeToOverflow: freeboard === undefined || inflow <= leastInflow ? undefined : (freeboard * sumpArea) / inflow,
      leastWorkingVolume,
    };
  },
});

/** Says so where the pump starts more often than its motor should, now or at a worse inflow, and how far apart the floats would have to be. */
function noteStarts(
  { cycleTime, inflow, sumpArea }: { readonly cycleTime: number | undefined; readonly inflow: number; readonly sumpArea: number },
  leastCycleTime: number, volume: number, leastVolume: number, { note }: Solving,
): void {
  if (volume >= leastVolume * (1 - dust)) return;
  const smallerPump = (4 * volume) / leastCycleTime;
  const isNow = cycleTime !== undefined && cycleTime < leastCycleTime;
  const remedy = `Floats ${roundedUp((leastVolume / sumpArea) * 1000)} mm apart would do${smallerPump > inflow ? `, or a pump of ${roundedDown(smallerPump * 60_000)} L/min` : ''}.`;
  if (isNow) note('caution', 'too-many-starts', 'cycleTime', `The pump starts every ${writeNumber(cycleTime / 60)} min, more often than the ${leastCycleTime / 60} min asked of pumping stations. ${remedy}`);
  else note('info', 'too-many-starts-at-worst', 'mostStartsPerHour', `With half its flow coming in the pump would start every ${writeNumber((leastCycleTime * volume) / leastVolume / 60)} min, more often than the ${leastCycleTime / 60} min asked of pumping stations. ${remedy}`);
}
