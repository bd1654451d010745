/** A barrel followed through time while the air around it changes and, with its temperature, what its wall lets through. */
import { ConvergenceError } from '../../numerics/convergence-error.js';
import { bracketedRoot } from '../../numerics/roots.js';
import { lumpedTemperature, lumpedTemperatureInRamp, lumpedTemperatureInSwing, swingTemperature, type DailySwing } from './lumped.js';

/** Air around a body: its temperature at a time, and what becomes of a body in it between two times of constant τ and lift (P/(U A), K). */
export interface Surroundings {
  /** Temperature of the air, K, at a time since the start, s. */
  readonly at: (time: number) => number;
  readonly advance: (from: number, to: number, start: number, lift: number, timeConstant: number) => number;
}

/** Air that stays as it is, K. */
export const steadyAir = (temperature: number): Surroundings => ({
  at: () => temperature,
  advance: (from, to, start, lift, timeConstant) => lumpedTemperature(to - from, start, temperature + lift, timeConstant),
});

/** Air that swings through the day; `clock` is the time of day at the start, s. */
export const swingingAir = (swing: DailySwing, clock: number): Surroundings => ({
  at: (time) => swingTemperature(swing, clock + time),
  advance: (from, to, start, lift, timeConstant) => lumpedTemperatureInSwing(to - from, start, { ...swing, mean: swing.mean + lift }, clock + from, timeConstant),
});

/** Air as it was read, straight between readings: times since the start, s, rising; the course is to be followed from reading to reading. */
export function readAir(times: readonly number[], temperatures: readonly number[]): Surroundings {
  const at = (time: number): number => {
    let [low, high] = [0, times.length - 1];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (times[middle]! <= time) low = middle;
      else high = middle;
    }
    const [t0, t1] = [times[low]!, times[high]!];
    return t1 === t0 ? temperatures[low]! : temperatures[low]! + ((temperatures[high]! - temperatures[low]!) * (time - t0)) / (t1 - t0);
  };
  return { at, advance: (from, to, start, lift, timeConstant) => lumpedTemperatureInRamp(to - from, start, at(from) + lift, at(to) + lift, timeConstant) };
}

/** A barrel to be followed. */
export interface Barrel {
  /** K */
  readonly start: number;
  /** m cp, J/K */
  readonly heatCapacity: number;
  /** m² */
  readonly area: number;
  /** Heater and sun, W. */
  readonly power: number;
  readonly air: Surroundings;
  /** Heat transfer from water to air, W/(m² K): one number, or by both temperatures in K. */
  readonly transfer: number | ((water: number, air: number) => number);
}

/** What became of it. */
export interface BarrelCourse {
  /** Temperature of the water at each time, K. */
  readonly temperatures: Float64Array;
  /** Mean of the heat transfer over the course, W/(m² K). */
  readonly meanTransfer: number;
  /** First time, s, by which the water is at 0 °C and freezes, or at 100 °C and boils; it stays there for the rest. */
  readonly frozenAt?: number | undefined;
  readonly boilingAt?: number | undefined;
  /** First time at which the water is at a temperature, s; undefined where it never is. */
  readonly timeAt: (target: number) => number | undefined;
  /** By how much halving the steps moved a temperature at most, K. */
  readonly residual: number;
  readonly steps: number;
}

const freezing = 273.15;
const boiling = 373.15;

/** One course in a number of steps from each time to the next. */
function followed({ start, heatCapacity, area, power, air, transfer }: Barrel, times: readonly number[], parts: number) {
  const step = (from: number, to: number, before: number, coefficient: number): number =>
    air.advance(from, to, before, power / (coefficient * area), heatCapacity / (coefficient * area));
  /** Over a short time: with the transfer of its middle, to which half a step leads. */
  const shortStep = (from: number, to: number, before: number): readonly [after: number, coefficient: number] => {
    if (typeof transfer === 'number') return [step(from, to, before, transfer), transfer];
    const middle = (from + to) / 2;
    const halfway = step(from, middle, before, transfer(before, air.at(from)));
    const coefficient = transfer(halfway, air.at(middle));
    return [step(from, to, before, coefficient), coefficient];
  };
  const between = (from: number, to: number, before: number): readonly [after: number, meanCoefficient: number] => {
    let [now, sum] = [before, 0];
    for (let part = 0; part < parts; part++) {
      const [after, coefficient] = shortStep(from + ((to - from) * part) / parts, from + ((to - from) * (part + 1)) / parts, now);
      now = after;
      sum += coefficient;
    }
    return [now, sum / parts];
  };
  const temperatures = new Float64Array(times.length);
  temperatures[0] = start;
  let [frozenAt, boilingAt]: (number | undefined)[] = [];
  let sum = 0;
  for (let i = 1; i < times.length; i++) {
    const [from, to] = [times[i - 1]!, times[i]!];
    const before = temperatures[i - 1]!;
    const [after, coefficient] = between(from, to, before);
    sum += coefficient * (to - from);
    if (boilingAt === undefined && after < freezing) frozenAt ??= to;
    if (frozenAt === undefined && after > boiling) boilingAt ??= to;
    temperatures[i] = frozenAt === undefined && boilingAt === undefined ? after : boilingAt === undefined ? freezing : boiling;
  }
  const timeAt = (target: number): number | undefined => {
    if (target === start) return 0;
    const i = temperatures.findIndex((there, row) => row > 0 && (there - target) * (temperatures[row - 1]! - target) <= 0);
    if (i < 0) return undefined;
    const [from, to, before] = [times[i - 1]!, times[i]!, temperatures[i - 1]!];
    const off = (time: number): number => (time === to ? temperatures[i]! : between(from, time, before)[0]) - target;
    return bracketedRoot(off, from, to).value;
  };
  return { temperatures, meanTransfer: sum / (times[times.length - 1]! - times[0]!), frozenAt, boilingAt, timeAt };
}

/**
 * A barrel followed from time to time, in s from 0 on: exact where the heat transfer is one number; else in steps that are halved until no temperature
 * moves by more than the tolerance in K.
 *
 * Each step is the exact solution with the heat transfer of its middle. Throws ConvergenceError where 256 steps from time to time do not do.
 */
export function barrelCourse(barrel: Barrel, times: readonly number[], tolerance = 1e-3): BarrelCourse {
  let course = followed(barrel, times, 1);
  let steps = times.length - 1;
  if (typeof barrel.transfer === 'number') return { ...course, residual: 0, steps };
  let residual = Infinity;
  for (let parts = 2; parts <= 256; parts *= 2) {
    const finer = followed(barrel, times, parts);
    residual = finer.temperatures.reduce((most, there, i) => Math.max(most, Math.abs(there - course.temperatures[i]!)), 0);
    steps += parts * (times.length - 1);
    course = finer;
    if (residual <= tolerance) return { ...course, residual, steps };
  }
  throw new ConvergenceError(`the course of the barrel still moves by ${residual} K when its steps are halved`, residual, steps);
}
