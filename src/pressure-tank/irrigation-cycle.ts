import { calculation } from '../calculation/calculation.js';
import { backflow, mainsElectricity, pressureVessel } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { flow, frequency, power, pressure, time, volume } from '../units/dimensions.js';
import { waterShareOfTank } from './formulas/drawdown.js';
import { eventTotals, momentOfEvent, timeBelowInEvent } from './formulas/irrigation-event.js';
import { pumpFlowFromPoints } from './formulas/pump-flow.js';
import { pumpPhases, type PumpedTank } from './formulas/pumped-tank.js';
import { noteColumns, noteCycling, notePumpRange, noteSettled, noteShutOff, noteWanted, pointsForCycles } from './irrigation-notes.js';
import { checkPumpPoints, curveOf, pumpPoints } from './pump-points.js';
import { halfTheStarts, setRight } from './switch-advice.js';
import { notePreCharge } from './tank-notes.js';
import { checkPreCharge, checkSwitch, leastRunTime, polytropicExponent, tankFields } from './tank.js';

/** Points of the columns where none are asked for: these, or as many as show every cycle, but no more than the second number. */
const usualPoints = 241;
const mostPoints = 10_000;

/** More starts than this in one event are refused: the moment of each would drown in rounding. */
const mostStarts = 100_000;

/**
 * Pressure and flow through a whole irrigation event from a pressure tank, whose pump and zone both answer to the pressure.
 *
 * Takes the tank and its switch as `drawdown` does; 1 to 50 points of the pump's curve by the pressure at the tank, lift and losses taken off (one
 * point is a pump that gives its flow at any pressure; between points its square goes straight); the demand (0 to 100 m³/h), constant, or with the
 * pressure at the tank that it is stated at (5 kPa to 2 MPa) as q = q0 (p/p0)ˣ with an exponent (0 to 1; 0.5 by default, as of most emitters); how
 * long the event lasts (1 s to 1 d); whether the tank starts at cut-out with the pump at rest (the default) or at cut-in with the pump starting;
 * perhaps the lowest and highest pressure that the zone wants; the least run of the pump, and the power of its motor, by which its starts are
 * judged; and the points of the columns (2 to 100 000; by default as many as show every
 * cycle, from 241 to 10 000), which change nothing else.
 *
 * Gives times, pressures, flows and the state of the pump as columns; run, rest and cycle (absent where the pump is not switched any more), starts,
 * the mean pressure and its swing, the volumes drawn and pumped, the time below and above what is wanted, where the pressure settles if the pump
 * never stops, the tank for the least run at this demand, and what would halve the starts: a tank, a cut-out, or a cut-in with its pre-charge. Where
 * the pre-charge is above the cut-in or far below it, these are for the tank with the usual one, which is to be set first. A pump that gives nothing
 * at its cut-out is told of whatever is drawn: it would never stop with the valves shut.
 *
 * Pump and zone follow the pressure without delay, the gas one exponent in filling and draining: 1 by default, nearer to 1.2 in short cycles.
 * @throws InputError for input outside these limits, for a switch or curve the wrong way round, a pre-charge that is not below the cut-out, and more
 * than 100 000 starts; ConvergenceError where the pressure at which the pump gives what is drawn is not found.
 * @example
 * const event = irrigationCycle(irrigationCycle.example);
 * event.starts // => 15
 * event.runTime?.in('s') // => 26.98
 */
export const irrigationCycle = /* @__PURE__ */ calculation({
  id: 'irrigationCycle',
  title: 'Pressure and flow through an irrigation event from a pressure tank',
  inputs: () => ({
    ...tankFields(),
    polytropicExponent: polytropicExponent(),
    pumpPoints: pumpPoints(),
    demand: field.quantity(flow, { limits: ['0 L/h', '100 m³/h'] }),
    demandPressure: field.optional(field.quantity(pressure, { limits: ['5 kPa', '2 MPa'] })),
    demandExponent: field.optional(field.number({ limits: [0, 1] })),
    duration: field.quantity(time, { limits: ['1 s', '1 d'] }),
    tankAtStart: field.withDefault(field.choice(['cut-out', 'cut-in']), 'cut-out'),
    lowestWantedPressure: field.optional(field.quantity(pressure, { limits: ['1 kPa', '2 MPa'] })),
    highestWantedPressure: field.optional(field.quantity(pressure, { limits: ['1 kPa', '2 MPa'] })),
    leastRunTime: leastRunTime(),
    motorPower: field.optional(field.quantity(power, { limits: ['1 W', '100 kW'] })),
    points: field.optional(field.count({ limits: [2, 100_000] })),
  }),
  outputs: () => ({
    times: output.column(time, 's'),
    tankPressures: output.column(pressure, 'kPa'),
    demandFlows: output.column(flow, 'L/min'),
    pumpFlows: output.column(flow, 'L/min'),
    pumpRunning: output.list(output.flag()),
    runTime: output.optional(output.quantity(time, 's')),
    restTime: output.optional(output.quantity(time, 's')),
    cycleTime: output.optional(output.quantity(time, 's')),
    starts: output.number(),
    startsPerHour: output.quantity(frequency, '1/h'),
    meanPressure: output.quantity(pressure, 'kPa'),
    lowestTankPressure: output.quantity(pressure, 'kPa'),
    highestTankPressure: output.quantity(pressure, 'kPa'),
    pressureSwing: output.quantity(pressure, 'kPa'),
    volumeDrawn: output.quantity(volume, 'L'),
    volumePumped: output.quantity(volume, 'L'),
    timeBelowWanted: output.optional(output.quantity(time, 's')),
    timeAboveWanted: output.optional(output.quantity(time, 's')),
    settledPressure: output.optional(output.quantity(pressure, 'kPa')),
    tankForLeastRun: output.optional(output.quantity(volume, 'L')),
    halfTheStarts: output.optional(output.group({
      tankVolume: output.quantity(volume, 'L'),
      cutOut: output.optional(output.quantity(pressure, 'kPa')),
      cutIn: output.optional(output.quantity(pressure, 'kPa')),
      preCharge: output.optional(output.quantity(pressure, 'kPa')),
    })),
    convergence: output.optional(output.group({ flowResidual: output.quantity(flow, 'L/min'), steps: output.number() })),
  }),
  equation: 'dW/dt = Q_p(p) − Q_d(p) while the pump runs, −Q_d(p) while it rests; W = V (1 − (P1/P)^(1/n)); t = ∫ (dW/dp)/(Q_p − Q_d) dp',
  sources: ['definition', 'pelikan-columns', 'wsc-2007', 'wsc-tank-standard', 'kill-tank-selection'],
  cautions: [pressureVessel, mainsElectricity, backflow],
  example: {
    tankVolume: '18 L', preCharge: '38 psi', cutIn: '40 psi', cutOut: '60 psi',
    pumpPoints: [{ pumpPressure: '2 bar', pumpFlow: '20 L/min' }, { pumpPressure: '3.5 bar', pumpFlow: '13 L/min' }, { pumpPressure: '4.5 bar', pumpFlow: '4 L/min' }],
    demand: '2.4 L/min', demandPressure: '3 bar', duration: '36 min', lowestWantedPressure: '2.5 bar', motorPower: '450 W',
  },
  check: (seen, problem) => {
    checkSwitch(seen, problem);
    checkPreCharge(seen, problem);
    checkPumpPoints(seen.pumpPoints, problem);
    if (seen.demandExponent !== undefined && seen.demandPressure === undefined) problem(['demandExponent'], 'a demandPressure beside it', 'none', 'a demand without a pressure is constant');
    if (seen.lowestWantedPressure !== undefined && seen.highestWantedPressure !== undefined && seen.lowestWantedPressure > seen.highestWantedPressure) problem(['lowestWantedPressure'], 'a pressure not above highestWantedPressure', 'a higher one', 'swap them?');
  },
  solve: (seen, { note, refuse }) => {
    const { tankVolume, preCharge, cutIn, cutOut, demand, demandPressure, demandExponent = 0.5, duration, lowestWantedPressure, highestWantedPressure, leastRunTime, motorPower } = seen;
    const curve = curveOf(seen.pumpPoints);
    const tank: PumpedTank = {
      volume: tankVolume, preCharge, cutIn, cutOut,
      atmosphere: seen.atmosphericPressure,
      exponent: seen.polytropicExponent,
      pump: (p) => pumpFlowFromPoints(curve, p),
      demand: demandPressure === undefined ? () => demand : (p) => demand * (p / demandPressure) ** demandExponent,
    };
    const breaks = [...curve.map((point) => point.pressure), lowestWantedPressure ?? cutIn, highestWantedPressure ?? cutOut];
    const phases = { ...pumpPhases(tank, breaks), startsWith: seen.tankAtStart === 'cut-in' ? 'run' : 'rest' } as const;
    const [runTime, restTime, cycleTime] = [phases.run.duration, phases.rest.duration, phases.run.duration + phases.rest.duration].map((seconds) => (Number.isFinite(seconds) ? seconds : undefined));
    if (cycleTime !== undefined && duration > mostStarts * cycleTime) refuse('duration', `an event of at most ${mostStarts} starts`, `one with a start every ${cycleTime.toPrecision(2)} s`, 'a larger tank, or a shorter event');

    const totals = eventTotals(phases, duration);
    const enough = pointsForCycles(duration, cycleTime);
    const points = seen.points ?? Math.min(Math.max(enough, usualPoints), mostPoints);
    const [times, tankPressures, demandFlows, pumpFlows] = [new Float64Array(points), new Float64Array(points), new Float64Array(points), new Float64Array(points)];
    const pumpRunning: boolean[] = [];
    for (let i = 0; i < points; i++) {
      times[i] = (duration * i) / (points - 1);
      const moment = momentOfEvent(phases, tank, times[i]!);
      tankPressures[i] = moment.pressure;
      demandFlows[i] = moment.demandFlow;
      pumpFlows[i] = moment.pumpFlow;
      pumpRunning.push(moment.isRunning);
    }
    const water = (p: number): number => tankVolume * waterShareOfTank(p, preCharge, tank.atmosphere, tank.exponent);
    const timeBelow = (limit: number): number => timeBelowInEvent(phases, limit, duration);
    const timeBelowWanted = lowestWantedPressure === undefined ? undefined : timeBelow(lowestWantedPressure);
    const timeAboveWanted = highestWantedPressure === undefined ? undefined : Math.max(0, duration - timeBelow(highestWantedPressure));
    const startsPerHour = cycleTime === undefined ? 0 : 1 / cycleTime;
    const settled = totals.starts > 0 ? phases.run.settled : undefined;
    const rightTank = setRight(tank);
    const right = rightTank.preCharge === preCharge ? phases : pumpPhases(rightTank, breaks);
    const rightRunTime = runTime === undefined ? undefined : right.run.duration;
    const better = cycleTime === undefined ? undefined : halfTheStarts(rightTank, lowestWantedPressure);

    notePreCharge(seen, note);
    noteShutOff(tank, note);
    if (settled) noteSettled(settled, tank, note);
    if (better) noteCycling({ runTime, rightRunTime, startsPerHour, rightStartsPerHour: 1 / (right.run.duration + right.rest.duration), better }, { tank, leastRunTime, motorPower }, note);
    noteWanted({ ...totals, settledPressure: settled?.pressure, timeBelowWanted, timeAboveWanted }, seen, note);
    if (totals.starts > 0) notePumpRange(phases.run, curve, note);
    if (points < enough) noteColumns(cycleTime!, enough, note);
    return {
      times, tankPressures, demandFlows, pumpFlows, pumpRunning,
      runTime, restTime, cycleTime, startsPerHour,
      ...totals,
      pressureSwing: totals.highestTankPressure - totals.lowestTankPressure,
      volumePumped: Math.max(0, totals.volumeDrawn + water(tankPressures[points - 1]!) - water(tankPressures[0]!)),
      timeBelowWanted, timeAboveWanted,
      settledPressure: settled?.pressure,
      tankForLeastRun: rightRunTime === undefined ? undefined : (tankVolume * leastRunTime) / rightRunTime,
      halfTheStarts: better,
      convergence: settled && { flowResidual: settled.residual, steps: settled.steps },
    };
  },
});
