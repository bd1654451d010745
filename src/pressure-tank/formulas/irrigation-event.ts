import { placeInPhase, timeBelowInPhase, type PumpedTank, type PumpPhase } from './pumped-tank.js';

/** The run and rest that an event is made of, and which of them it begins with. */
export interface PumpPhases {
  readonly run: PumpPhase;
  readonly rest: PumpPhase;
  readonly startsWith: 'run' | 'rest';
}

/** A phase, or its first seconds, so many times over. */
export interface EventPart {
  readonly phase: PumpPhase;
  /** s. */
  readonly time: number;
  readonly times: number;
}

/** What the first `time` seconds of an event consist of: whole runs and rests, counted, and the phase that it is in at the end, which comes last. */
function eventParts({ run, rest, startsWith }: PumpPhases, time: number): readonly EventPart[] {
  const [first, second] = startsWith === 'run' ? [run, rest] : [rest, run];
  const cycle = run.duration + rest.duration;
  const cycles = Math.floor(time / cycle);
  const left = cycles > 0 ? Math.max(0, time - cycles * cycle) : time;
  const whole = cycles > 0 ? [{ phase: first, time: first.duration, times: cycles }, { phase: second, time: second.duration, times: cycles }] : [];
  if (left <= first.duration) return [...whole, { phase: first, time: left, times: 1 }];
  return [...whole, { phase: first, time: first.duration, times: 1 }, { phase: second, time: left - first.duration, times: 1 }];
}

const sum = (parts: readonly EventPart[], of: (part: EventPart) => number): number => parts.reduce((total, part) => total + part.times * of(part), 0);

/** What an event comes to. Gauge pressures, Pa. */
export interface EventTotals {
  readonly starts: number;
  /** m3. */
  readonly volumeDrawn: number;
  readonly meanPressure: number;
  readonly lowestTankPressure: number;
  readonly highestTankPressure: number;
}

/** Starts, volume and pressures of an event of some length, s, above zero. */
export function eventTotals(phases: PumpPhases, time: number): EventTotals {
  const parts = eventParts(phases, time);
  const ends = parts.filter((part) => part.time > 0).flatMap(({ phase, time }) => [phase.travel.pressures[0]!, time < phase.duration ? placeInPhase(phase, time).pressure : phase.switchedAt]);
  return {
    starts: sum(parts, (part) => (part.phase.isRunning && part.time > 0 ? 1 : 0)),
    volumeDrawn: sum(parts, (part) => placeInPhase(part.phase, part.time).drawn),
    meanPressure: sum(parts, (part) => placeInPhase(part.phase, part.time).pressureTime) / time,
    lowestTankPressure: Math.min(...ends),
    highestTankPressure: Math.max(...ends),
  };
}

/** How long, s, the pressure is below a limit in an event; the limit must be among the breaks that its phases were made with. */
export const timeBelowInEvent = (phases: PumpPhases, limit: number, time: number): number =>
  sum(eventParts(phases, time), (part) => timeBelowInPhase(part.phase, limit, part.time));

/** A moment of an event: gauge pressure, Pa, and flows, m3/s. */
export interface EventMoment {
  readonly pressure: number;
  readonly demandFlow: number;
  readonly pumpFlow: number;
  readonly isRunning: boolean;
}

/** Pressure and flows at a time of an event, s. */
export function momentOfEvent(phases: PumpPhases, { pump, demand }: Pick<PumpedTank, 'pump' | 'demand'>, at: number): EventMoment {
  const { phase, time } = eventParts(phases, at).at(-1)!;
  const { isRunning, settled, travel } = phase;
  const { pressure } = placeInPhase(phase, time);
  const isSettled = settled !== undefined && time >= travel.times.at(-1)!;
  return { pressure, isRunning, demandFlow: isSettled ? settled.demand : demand(pressure), pumpFlow: isRunning ? pump(pressure) : 0 };
}
