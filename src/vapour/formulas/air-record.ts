import { airRows, type AirBlock, type AirRows } from './air-rows.js';
import type { AirDay, AirMeans, AirRecord, AirRecordOptions, AirTotals } from './air-totals.js';
import { degreeDaysLimitedMcMasterWilhelm1997, degreeDaysMeanMcMasterWilhelm1997 } from './degree-days.js';
import { integralAboveZero, timeBelowZero } from './linear-course.js';
import { newReadingCheck } from './reading-check.js';

export const secondsPerDay = 86400;

/** Sums over a part of a day. */
interface Sums {
  time: number;
  deficit: number;
  temperature: number;
}
const noSums = (): Sums => ({ time: 0, deficit: 0, temperature: 0 });
const addSums = (to: Sums, { time, deficit, temperature }: Sums): void => {
  to.time += time;
  to.deficit += deficit;
  to.temperature += temperature;
};
const meansOf = ({ time, deficit, temperature }: Sums): AirMeans | undefined =>
  time > 0 ? { coveredTime: time, deficit: deficit / time, temperature: temperature / time } : undefined;

interface Day {
  readonly index: number;
  readonly whole: Sums;
  readonly daytime: Sums;
  readonly night: Sums;
  highest: number;
  lowest: number;
  leafWetTime: number;
  coverWetTime: number;
  warmth: number;
  lightTime: number;
  photons: number;
  radiation: number;
}

/** One reading, of what is summed. */
interface Point {
  time: number;
  temperature: number;
  deficit: number;
  leafMargin: number;
  coverMargin: number;
  light: number;
  radiation: number;
}
const noPoint = (): Point => ({ time: NaN, temperature: NaN, deficit: NaN, leafMargin: NaN, coverMargin: NaN, light: NaN, radiation: NaN });

/** Sets a point on the straight line between two others. */
function between(to: Point, a: Point, b: Point, share: number): void {
  const rest = 1 - share;
  to.temperature = rest * a.temperature + share * b.temperature;
  to.deficit = rest * a.deficit + share * b.deficit;
  to.leafMargin = rest * a.leafMargin + share * b.leafMargin;
  to.coverMargin = rest * a.coverMargin + share * b.coverMargin;
  to.light = rest * a.light + share * b.light;
  to.radiation = rest * a.radiation + share * b.radiation;
}

/**
 * A record of the air to be filled block by block: what airRecord does, in memory that does not grow with the rows, only with the days.
 *
 * Between two readings that are at most `longestGap` apart everything goes in a straight line: deficit, temperature, light and the margins of leaf and cover
 * above the dew or frost point. Times and means are those of these lines exactly, split at midnight and where day and night begin, so that a coarse
 * and a fine logger agree as far as straight lines do. The sums are the same however the rows are cut into blocks.
 *
 * @example
 * const record = newAirRecord({ deficitBands: [500] });
 * record.add({ readingTime: Float64Array.of(0, 3600), airTemperature: Float64Array.of(293.15, 293.15), relativeHumidity: Float64Array.of(0.6, 0.6) });
 * record.add({ readingTime: Float64Array.of(7200), airTemperature: Float64Array.of(293.15), relativeHumidity: Float64Array.of(1) });
 * record.result().bandTimes[0] // => 1924
 */
export function newAirRecord(options: AirRecordOptions = {}): AirRecord {
  const { longestGap = 5400, dayBegins = 21600, nightBegins = 64800, dayLight, deficitBands = [], baseTemperature, upperTemperature = Infinity, degreeDayMethod = 'readings' } = options;
  const check = newReadingCheck();
  const days: Day[] = [];
  const timeBelow = new Float64Array(deficitBands.length);
  let last = noPoint();
  let next = noPoint();
  let day: Day | undefined;
  let isDaytime = false;
  let boundary = NaN;
  let [missing, uncoveredTime, pauses, longestPause] = [0, 0, 0, 0];
  const start = noPoint();
  const end = noPoint();
  const crossing = noPoint();

  return { add, result, faults: check.faults };

  function add(block: AirBlock): AirRows {
    check.look(block);
    const rows = airRows(block, options);
    const { readingTime, globalRadiation } = block;
    const { temperature, deficit, leafMargin, coverMargin, light } = rows;
    for (let i = 0; i < readingTime.length; i++) {
      const time = readingTime[i]!;
      if (Number.isNaN(time)) continue;
      if (Number.isNaN(deficit[i]!)) {
        missing++;
        continue;
      }
      // A repeated row, or one that the check reports.
      if (!(time > last.time) && !Number.isNaN(last.time)) continue;
      next.time = time;
      next.temperature = temperature[i]!;
      next.deficit = deficit[i]!;
      next.leafMargin = leafMargin ? leafMargin[i]! : NaN;
      next.coverMargin = coverMargin ? coverMargin[i]! : NaN;
      next.light = light ? light[i]! : NaN;
      next.radiation = globalRadiation ? Math.max(0, globalRadiation[i]!) : 0;
      const pause = time - last.time;
      if (pause <= longestGap) cover(pause);
      else {
        if (pause > 0) {
          pauses++;
          uncoveredTime += pause;
          longestPause = Math.max(longestPause, pause);
        }
        enter(time);
      }
      reach(next.temperature);
      [last, next] = [next, last];
    }
    return rows;
  }

  /** Goes on to the day and the part of it that a moment is in. */
  function enter(time: number): void {
    const index = Math.floor(time / secondsPerDay);
    if (day?.index !== index) {
      day = {
        index, whole: noSums(), daytime: noSums(), night: noSums(), highest: -Infinity, lowest: Infinity,
        leafWetTime: 0, coverWetTime: 0, warmth: 0, lightTime: 0, photons: 0, radiation: 0,
      };
      days.push(day);
    }
    const midnight = index * secondsPerDay;
    // Compared with the very moments that boundaries are set at, lest rounding keeps one ahead for ever.
    const [morning, evening] = [midnight + dayBegins, midnight + nightBegins];
    isDaytime = dayBegins < nightBegins ? time >= morning && time < evening : time >= morning || time < evening;
    boundary = Math.min(morning > time ? morning : Infinity, evening > time ? evening : Infinity, midnight + secondsPerDay);
  }

  function reach(temperature: number): void {
    if (temperature > day!.highest) day!.highest = temperature;
    if (temperature < day!.lowest) day!.lowest = temperature;
  }

  /** Sums what lies between the last reading and the next. */
  function cover(pause: number): void {
    for (let k = 0; k < deficitBands.length; k++) {
      const edge = deficitBands[k]!;
      timeBelow[k] = timeBelow[k]! + timeBelowZero(last.deficit - edge, next.deficit - edge, pause);
    }
    if (next.time < boundary) {
      sum(last, next, pause);
      return;
    }
    let from = last.time;
    between(start, last, next, 0);
    while (from < next.time) {
      const to = Math.min(boundary, next.time);
      between(end, last, next, (to - last.time) / pause);
      sum(start, end, to - from);
      reach(start.temperature);
      reach(end.temperature);
      if (to === boundary) enter(to);
      between(start, last, next, (to - last.time) / pause);
      from = to;
    }
  }

  /** Sums a straight course over a time that begins and ends in the same part of the same day. */
  function sum(a: Point, b: Point, time: number): void {
    const into = day!;
    sumPart(into.whole, a, b, time);
    if (dayLight === undefined) sumPart(isDaytime ? into.daytime : into.night, a, b, time);
    else if (!Number.isNaN(a.light + b.light)) sumByLight(into, a, b, time, dayLight);
    if (a.leafMargin < 0 || b.leafMargin < 0) into.leafWetTime += timeOfBoth(a.leafMargin, b.leafMargin, time);
    if (a.coverMargin < 0 || b.coverMargin < 0) into.coverWetTime += timeOfBoth(a.coverMargin, b.coverMargin, time);
    if (baseTemperature !== undefined && degreeDayMethod === 'readings') {
      into.warmth += integralAboveZero(a.temperature - baseTemperature, b.temperature - baseTemperature, time);
      if (upperTemperature < Infinity) into.warmth -= integralAboveZero(a.temperature - upperTemperature, b.temperature - upperTemperature, time);
    }
    const light = a.light + b.light + a.radiation + b.radiation;
    if (!Number.isNaN(light)) {
      into.lightTime += time;
      into.photons += (a.light + b.light) / 2 * time;
      into.radiation += (a.radiation + b.radiation) / 2 * time;
    }
  }

  function sumByLight(into: Day, a: Point, b: Point, time: number, threshold: number): void {
    const [from, to] = [a.light - threshold, b.light - threshold];
    const part = (isLight: boolean): Sums => (isLight ? into.daytime : into.night);
    if (from > 0 === to > 0) {
      sumPart(part(from > 0), a, b, time);
      return;
    }
    const share = from / (from - to);
    between(crossing, a, b, share);
    sumPart(part(from > 0), a, crossing, share * time);
    sumPart(part(to > 0), crossing, b, (1 - share) * time);
  }

  function result(): AirTotals {
    const faults = check.faults();
    if (faults.length > 0) throw new RangeError(['the readings cannot be used', ...faults.map(({ column, received, hint }) => `${column}: ${received} (${hint})`)].join('\n- '));
    const [whole, daytime, night] = [noSums(), noSums(), noSums()];
    for (const one of days) {
      addSums(whole, one.whole);
      addSums(daytime, one.daytime);
      addSums(night, one.night);
    }
    return {
      days: days.filter((one) => one.whole.time > 0).map(dayOf),
      whole: meansOf(whole),
      daytime: meansOf(daytime),
      night: meansOf(night),
      bandTimes: [...timeBelow, whole.time].map((time, k) => Math.max(0, time - (k > 0 ? timeBelow[k - 1]! : 0))),
      uncoveredTime, pauses, longestPause, missing,
      ...check.counts(),
    };
  }

  function dayOf({ index, whole, daytime, night, warmth, ...rest }: Day): AirDay {
    return { ...rest, dayStart: index * secondsPerDay, whole: meansOf(whole)!, daytime: meansOf(daytime), night: meansOf(night), degreeDays: degreeDaysOf(warmth, rest.highest, rest.lowest) };
  }

  function degreeDaysOf(warmth: number, highest: number, lowest: number): number {
    if (baseTemperature === undefined || degreeDayMethod === 'readings') return warmth;
    return degreeDayMethod === 'mean'
      ? degreeDaysMeanMcMasterWilhelm1997(highest, lowest, baseTemperature)
      : degreeDaysLimitedMcMasterWilhelm1997(highest, lowest, baseTemperature, upperTemperature);
  }
}

function sumPart(into: Sums, a: Point, b: Point, time: number): void {
  into.time += time;
  into.deficit += (a.deficit + b.deficit) / 2 * time;
  into.temperature += (a.temperature + b.temperature) / 2 * time;
}

/** Time below zero where both ends are known. */
const timeOfBoth = (from: number, to: number, time: number): number => (Number.isNaN(from + to) ? 0 : timeBelowZero(from, to, time));
