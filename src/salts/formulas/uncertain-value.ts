import type { UncertaintySource } from './weighing-uncertainty.js';

/** Something that a value rests on, and that may be other than stated: by at most `below` downwards and `above` upwards. */
export interface UncertainShift {
  readonly source: UncertaintySource;
  /** What a change of one does to the value; below zero where it lowers it. */
  readonly sensitivity: number;
  readonly below: number;
  readonly above: number;
}

/** A value that cannot be below zero, and how well it is known. All but `mainSource` are in the unit of the value. */
export interface UncertainValue {
  readonly value: number;
  readonly standardUncertainty: number;
  /** Two standard uncertainties to either side of what is to be expected, about 95 % of all cases: no further than is possible, and never short of the value. */
  readonly low: number;
  readonly high: number;
  /** Everything off to one side at once. */
  readonly least: number;
  readonly most: number;
  /** What most of the variance comes from; undefined where nothing is uncertain. */
  readonly mainSource: UncertaintySource | undefined;
}

/**
 * Standard uncertainty and interval of a value from independent shifts, to first order: u² = Σ (c (below + above))² / 12, c being the sensitivity.
 *
 * Every shift is taken as equally likely anywhere within its bounds (a rectangular distribution, half width / √3), also where these are not the
 * same to both sides: what is to be expected then lies midway between them, and not at the value. Good to a few percent of u where shifts stay
 * within about a tenth of what they shift.
 *
 * Source: JCGM 100:2008, 4.3.7, 4.3.8 and 5.1.2, from memory.
 *
 * @example uncertainValue(100, [{ source: 'scale', sensitivity: 100, below: 0.01, above: 0.01 }, { source: 'volume', sensitivity: -100, below: 0.02, above: 0.02 }]).standardUncertainty // => 1.291, √(1² + 2²) / √3
 */
export function uncertainValue(value: number, shifts: readonly UncertainShift[]): UncertainValue {
  const variances = new Map<UncertaintySource, number>();
  let [variance, expected, least, most] = [0, value, value, value];
  for (const { source, sensitivity, below, above } of shifts) {
    const own = (sensitivity * (below + above)) ** 2 / 12;
    variances.set(source, (variances.get(source) ?? 0) + own);
    variance += own;
    expected += (sensitivity * (above - below)) / 2;
    least -= sensitivity > 0 ? sensitivity * below : -sensitivity * above;
    most += sensitivity > 0 ? sensitivity * above : -sensitivity * below;
  }
  const standardUncertainty = Math.sqrt(variance);
  let mainSource: UncertaintySource | undefined;
  for (const [source, own] of variances) if (own > (mainSource === undefined ? 0 : variances.get(mainSource)!)) mainSource = source;
  const atLeastZero = (x: number): number => Math.max(0, x);
  return {
    value: atLeastZero(value),
    standardUncertainty,
    low: atLeastZero(Math.min(value, Math.max(least, expected - 2 * standardUncertainty))),
    high: atLeastZero(Math.max(value, Math.min(most, expected + 2 * standardUncertainty))),
    least: atLeastZero(least),
    most: atLeastZero(most),
    mainSource,
  };
}
