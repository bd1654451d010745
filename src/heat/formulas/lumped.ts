/** A body of one temperature that gains and loses heat: a stirred barrel. τ = m cp/(U A) throughout, s. */

const day = 86400;

/**
 * Temperature of a body after a time, in K, in surroundings that stay as they are: T = Ta + (T0 - Ta) exp(-t/τ).
 *
 * With a steady source of P in W, pass Ta + P/(U A). Exact.
 *
 * @example lumpedTemperature(86400, 281.15, 293.15, 63811) // => 290.0515
 */
export const lumpedTemperature = (time: number, start: number, surroundings: number, timeConstant: number): number =>
  start - (surroundings - start) * Math.expm1(-time / timeConstant);

/**
 * Time after which a body is at a temperature, in s, in surroundings that stay as they are; undefined where it never is: t = τ ln((T0 - Ta)/(T - Ta)).
 *
 * @example lumpedTimeToReach(287.15, 281.15, 293.15, 63811) // => 44230.4
 */
export function lumpedTimeToReach(target: number, start: number, surroundings: number, timeConstant: number): number | undefined {
  if (target === start) return 0;
  const ratio = (target - start) / (surroundings - start);
  return ratio > 0 && ratio < 1 ? -timeConstant * Math.log1p(-ratio) : undefined;
}

/**
 * Temperature of a body after a time, in K, while that of its surroundings goes straight from one to another: exact for any step.
 *
 *   T = Ta0 + r t - r τ + (T0 - Ta0 + r τ) exp(-t/τ),  r = (Ta1 - Ta0)/t
 *
 * @example lumpedTemperatureInRamp(3600, 281.15, 283.15, 285.15, 63811) // => 281.31508
 */
export function lumpedTemperatureInRamp(time: number, start: number, first: number, last: number, timeConstant: number): number {
  const x = time / timeConstant;
  if (x === 0) return start;
  const gone = -Math.expm1(-x);
  return start + (first - start) * gone + (last - first) * (1 - gone / x);
}

/** Air that is warmest at one time of the day and coldest half a day from it, in a sine between. */
export interface DailySwing {
  /** K */
  readonly mean: number;
  /** Half of highest less lowest, K. */
  readonly amplitude: number;
  /** Time of day of the highest, s. */
  readonly timeOfHighest: number;
}

/** Temperature of the air at a time of the clock in s: m + A cos(2π (t - th)/d). */
export const swingTemperature = ({ mean, amplitude, timeOfHighest }: DailySwing, clock: number): number =>
  mean + amplitude * Math.cos((2 * Math.PI * (clock - timeOfHighest)) / day);

/**
 * Temperature of a body after a time, in K, in air that swings through the day. Exact.
 *
 *   T = Tp(t1) + (T0 - Tp(t0)) exp(-(t1 - t0)/τ),  Tp(t) = m + A cos(ω (t - th) - φ)/√(1 + ω²τ²),  tan φ = ωτ,  ω = 2π/day
 *
 * @param clock time of day at the start, s
 * @example lumpedTemperatureInSwing(86400, 281.15, { mean: 288.15, amplitude: 6, timeOfHighest: 54000 }, 28800, 63811) // => 285.4061
 */
export function lumpedTemperatureInSwing(time: number, start: number, swing: DailySwing, clock: number, timeConstant: number): number {
  const turn = ((2 * Math.PI) / day) * timeConstant;
  const lag = (Math.atan(turn) * day) / (2 * Math.PI);
  const followed = { mean: swing.mean, amplitude: swing.amplitude / Math.hypot(1, turn), timeOfHighest: swing.timeOfHighest + lag };
  const settled = swingTemperature(followed, clock + time);
  return settled + (start - swingTemperature(followed, clock)) * Math.exp(-time / timeConstant);
}

/**
 * Heat that a mass takes to warm, in J: Q = m cp ΔT. Negative where it cools.
 *
 * @example heatToWarm(120, 4186, 10) // => 5023200
 */
export const heatToWarm = (mass: number, specificHeat: number, rise: number): number => mass * specificHeat * rise;
