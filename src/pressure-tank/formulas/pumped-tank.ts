import { bracketedRoot, type Root } from '../../numerics/roots.js';
import { placeOnTravel, pressureTravel, type PressureTravel } from './pressure-travel.js';
import { tankCompliance } from './drawdown.js';

/** A pressure tank with a pump on a switch and a demand, both of which answer to the pressure. Gauge pressures, Pa. */
export interface PumpedTank {
  /** m3. */
  readonly volume: number;
  /** Below the cut-out. */
  readonly preCharge: number;
  readonly cutIn: number;
  readonly cutOut: number;
  /** Absolute, Pa. */
  readonly atmosphere: number;
  /** Exponent of the gas, 1 to 1.4. */
  readonly exponent: number;
  /** Flow of the pump at a pressure, m3/s; never more at a higher one. */
  readonly pump: (pressure: number) => number;
  /** Flow that is drawn at a pressure, m3/s; never less at a higher one. */
  readonly demand: (pressure: number) => number;
}

/** A run or a rest of the pump: the pressure travels, and then the pump is switched or the pressure stays. */
export interface PumpPhase {
  readonly isRunning: boolean;
  readonly travel: PressureTravel;
  /** s; infinite where the pump is not switched any more. */
  readonly duration: number;
  /** Where the pump is switched at the end of it, if it is. */
  readonly switchedAt: number;
  /** Where the pressure stays in the end; undefined where the pump is switched. */
  readonly settled: SettledPressure | undefined;
}

/** A pressure that stays: the pump gives what is drawn. */
export interface SettledPressure {
  readonly pressure: number;
  /** Flow that is drawn, m3/s. */
  readonly demand: number;
  /** Flows not met in finding it, m3/s, and steps taken. */
  readonly residual: number;
  readonly steps: number;
}

/** A flow below this, m3/s, is none: 4 mL/h. */
export const leastFlow = 1e-9;

/** A pressure below this, Pa, is none. */
const leastPressure = 1;

/**
 * Run and rest of a pump on a switch: from cut-in to cut-out and back, or to where the pressure stays.
 *
 * A run that does not reach the cut-out settles where the pump gives what is drawn; a demand above the flow of the pump draws the pressure down
 * there. Once the tank is empty of water nothing holds the pressure: it falls to the cut-in at once, or to where pump and demand meet, or to nothing.
 *
 * @param breaks pressures where a curve has a corner, or that are asked for later
 */
export function pumpPhases(tank: PumpedTank, breaks: readonly number[] = []): { readonly run: PumpPhase; readonly rest: PumpPhase } {
  const { preCharge, cutIn, cutOut, pump, demand } = tank;
  const compliance = (p: number): number => tank.volume * tankCompliance(p, preCharge, tank.atmosphere, tank.exponent);
  const surplus = (p: number): number => pump(p) - demand(p);
  const phase = (isRunning: boolean, from: number, to: number, met?: Root): PumpPhase => {
    const travel = pressureTravel(from, to, { net: isRunning ? surplus : (p) => -demand(p), demand, compliance }, breaks);
    const drawn = (p: number): number => (isRunning ? Math.min(demand(p), pump(p)) : 0);
    const settled = met && { pressure: met.value, demand: drawn(met.value), residual: met.residual, steps: met.steps };
    return { isRunning, travel, switchedAt: isRunning ? cutOut : cutIn, duration: settled ? Infinity : travel.times.at(-1)!, settled };
  };
  const stay = (value: number): Root => ({ value, residual: 0, steps: 0 });
  const meet = (low: number, high: number, left: number): Root => bracketedRoot((p) => surplus(p) - left, low, high);

  /** Where a tank that holds water is when the pump starts. */
  const start = Math.max(cutIn, preCharge);
  const rest = demand(start) > leastFlow ? phase(false, cutOut, start) : phase(false, cutOut, cutOut, stay(cutOut));
  if (surplus(start) > leastFlow) {
    if (surplus(cutOut) > leastFlow) return { rest, run: phase(true, start, cutOut) };
    const met = meet(start, cutOut, leastFlow);
    return { rest, run: phase(true, start, met.value, met) };
  }
  if (surplus(start) >= -leastFlow) return { rest, run: phase(true, start, start, stay(start)) };
  const met = surplus(leastPressure) > -leastFlow ? meet(leastPressure, start, -leastFlow) : stay(0);
  return { rest, run: phase(true, start, Math.max(met.value, preCharge), met) };
}

/** Pressure (Pa), volume drawn (m3) and integral of the pressure (Pa s) at a time since a phase began, s. */
export function placeInPhase({ travel, settled }: PumpPhase, time: number): { readonly pressure: number; readonly drawn: number; readonly pressureTime: number } {
  const place = placeOnTravel(travel, time);
  const held = time - travel.times.at(-1)!;
  if (!settled || held <= 0) return place;
  return { pressure: settled.pressure, drawn: place.drawn + held * settled.demand, pressureTime: place.pressureTime + held * settled.pressure };
}

/** How long, s, the pressure is below a limit in the first `time` seconds of a phase; the limit must be among the breaks that the phase was made with. */
export function timeBelowInPhase({ travel: { pressures, times }, settled }: PumpPhase, limit: number, time: number): number {
  const [first, last, end] = [pressures[0]!, pressures.at(-1)!, times.at(-1)!];
  const node = pressures.indexOf(limit);
  const isRising = last > first;
  const startsBelow = first < limit;
  const crossing = node >= 0 ? times[node]! : startsBelow === isRising ? end : 0;
  const onTheWay = Math.min(time, end);
  const below = isRising ? Math.min(onTheWay, crossing) : Math.max(0, onTheWay - crossing);
  return below + (settled && settled.pressure < limit ? Math.max(0, time - end) : 0);
}
