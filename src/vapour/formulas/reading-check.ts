import type { AirBlock } from './air-rows.js';
import { fahrenheitSlip, fractionSlip } from './unit-slips.js';

type ReadingColumn = keyof AirBlock;

/** Something that is wrong with a column of readings. */
export interface ReadingFault {
  readonly column: ReadingColumn;
  /** The first such reading, its row, counted from 1, and how many more there are. */
  readonly received: string;
  /** What is wrong with it, and what was most likely meant. */
  readonly hint: string;
}

export interface ReadingCounts {
  readonly rows: number;
  /** Rows without a time, which are in no sum, and the first of them, counted from 1. */
  readonly untimed: number;
  readonly firstUntimed: number | undefined;
  /** Rows that only repeat the one before. */
  readonly repeated: number;
  /** Rows before which the clock jumps ahead by an hour: the first twenty. */
  readonly clockJumps: readonly number[];
}

/** Looks through blocks of readings for what no sensor shows: values that stand for a lost reading, wrong units, a clock that runs backwards. */
export interface ReadingCheck {
  look(this: void, block: AirBlock): void;
  faults(this: void): readonly ReadingFault[];
  counts(this: void): ReadingCounts;
}

/** What a sensor can show, in SI units, and how that reads: the number in the unit. */
interface Sensor {
  readonly limits: readonly [low: number, high: number];
  readonly unit: string;
  readonly shown: (si: number) => number;
}

const celsius = (si: number): number => si - 273.15;
const inHouse: Sensor = { limits: [233.25, 333.15], unit: '°C', shown: celsius };
const outdoors: Sensor = { limits: [213.15, 333.15], unit: '°C', shown: celsius };

/** What a broken thermometer shows, in K: -40 °C, which is -40 °F too. Colder air is not looked for in a house, so that this is told. */
const broken = 233.15;

const names = ['airTemperature', 'relativeHumidity', 'leafTemperature', 'coverTemperature', 'outsideTemperature', 'photonFlux', 'globalRadiation'] as const;

const sensors: Readonly<Record<typeof names[number], Sensor>> = {
  airTemperature: inHouse,
  relativeHumidity: { limits: [0.001, 1.02], unit: '%', shown: (si) => si * 100 },
  leafTemperature: inHouse,
  coverTemperature: inHouse,
  outsideTemperature: outdoors,
  photonFlux: { limits: [-50e-6, 5e-3], unit: 'µmol/(m²·s)', shown: (si) => si * 1e6 },
  globalRadiation: { limits: [-50, 2000], unit: 'W/m²', shown: (si) => si },
};

/** Latest time of a reading, in s: forty years. */
const latest = 40 * 366 * 86400;

/** What loggers write where a reading is lost. */
const placeholders: readonly number[] = [99.9, 998, 999, 999.9, 6999, 7999, 9998, 9999, 32767, 65535];

/** The key of times that run backwards. */
const backwards = 'readingTime backwards';

/** Most jumps of the clock that are told row by row. */
const mostJumps = 20;

/** Rows in which something is wrong: the first and how many, counted from 1. */
interface Found {
  readonly column: ReadingColumn;
  readonly first: number;
  readonly value: string;
  readonly why: string;
  count: number;
}

/**
 * A check of readings, block after block. `written` gives a reading of the first block as its writer wrote it, where that is known.
 */
export function newReadingCheck(written?: (column: ReadingColumn, row: number) => string): ReadingCheck {
  const found = new Map<string, Found>();
  const clockJumps: number[] = [];
  let coldest = Infinity;
  let moistest = -Infinity;
  let [rows, repeated, untimed, lastTime, usualStep] = [0, 0, 0, NaN, NaN];
  /** Rows later and earlier than the row with a time before them, and the time of that. */
  let [rises, falls, timeBefore] = [0, 0, NaN];
  let firstUntimed: number | undefined;
  /** Whether the row before has a time. */
  let follows = true;
  let lastRow: readonly (number | undefined)[] = [];

  return { look, faults, counts: () => ({ rows, untimed, firstUntimed, repeated, clockJumps }) };

  function add(column: ReadingColumn, kind: string, row: number, value: () => string, why: (value: string) => string): void {
    const key = `${column} ${kind}`;
    const known = found.get(key);
    if (known) known.count++;
    else {
      const text = value();
      found.set(key, { column, first: rows + row + 1, value: text, why: why(text), count: 1 });
    }
  }

  function look(block: AirBlock): void {
    for (const name of names) if (block[name]) lookAt(name, block[name]);
    lookAtTimes(block);
    rows += block.readingTime.length;
  }

  function lookAt(name: keyof typeof sensors, values: Float64Array): void {
    const { limits: [low, high], unit, shown } = sensors[name];
    let [lowest, highest] = [Infinity, -Infinity];
    for (let i = 0; i < values.length; i++) {
      const x = values[i]!;
      if (x < low || x > high) report(name, i, x, () => written?.(name, i) ?? `${Number(shown(x).toPrecision(6))} ${unit}`);
      if (x < lowest) lowest = x;
      if (x > highest) highest = x;
    }
    if (name === 'airTemperature') coldest = Math.min(coldest, lowest);
    if (name === 'relativeHumidity') moistest = Math.max(moistest, highest);
  }

  function report(name: keyof typeof sensors, row: number, x: number, value: () => string): void {
    const { limits, unit, shown } = sensors[name];
    const number = Math.abs(parseFloat(value()));
    if (unit === '°C' && Math.abs(x - broken) < 1e-6) add(name, 'broken', row, value, () => 'a broken or unplugged sensor shows this: give null for a lost reading');
    else if (placeholders.includes(number)) add(name, 'placeholder', row, value, () => 'this stands for a lost reading in many loggers: give null for it');
    else if (unit === '°C' && x > limits[1] && x < 413.15) {
      add(name, 'fahrenheit', row, value, (text) => {
        const n = parseFloat(text);
        return text.endsWith('°C') ? `too hot for air; ${n} °F would be ${((n - 32) / 1.8).toFixed(1)} °C: is the column in °F?` : 'too hot for air';
      });
    } else if (name === 'relativeHumidity' && x > 1.02) {
      add(name, 'outside', row, value, (text) => (text.endsWith('%') ? 'sensors show at most 102 %' : 'sensors show at most 102 %: are these per cent?'));
    } else add(name, 'outside', row, value, () => `there is none outside ${limits.map((end) => Number(shown(end).toPrecision(6))).join(' to ')} ${unit}`);
  }

  function lookAtTimes(block: AirBlock): void {
    const times = block.readingTime;
    // A column of one value holds for every row.
    const rowAt = (i: number): readonly (number | undefined)[] => names.map((name) => block[name]?.[i] ?? block[name]?.[0]);
    /** Of the block, the last row that moved the time on. */
    let at = -1;
    for (let i = 0; i < times.length; i++) {
      const time = times[i]!;
      if (Number.isNaN(time)) {
        untimed++;
        firstUntimed ??= rows + i + 1;
        follows = false;
        continue;
      }
      const step = time - lastTime;
      if (time > timeBefore) rises++;
      else if (time < timeBefore) falls++;
      timeBefore = time;
      const value = (): string => written?.('readingTime', i) ?? `${Number((time / 3600).toPrecision(9))} h`;
      if (time < 0 || time > latest) add('readingTime', 'outside', i, value, () => 'count from the midnight that begins the first day, for 40 years at most');
      else if (step < 0) {
        const isHour = Math.abs(3600 + step - (usualStep || 0)) < 300;
        add('readingTime', 'backwards', i, value, () => (isHour
          ? 'about an hour earlier than the row before: the clock was put back from daylight-saving time; take an hour off all times before it, or let the logger keep standard time'
          : 'earlier than the row before: sort the rows, or cut the record where the clock was set'));
      } else if (step === 0) {
        const before = at < 0 ? lastRow : rowAt(at);
        if (rowAt(i).every((reading, c) => Object.is(reading, before[c]))) repeated++;
        else add('readingTime', 'twice', i, value, () => 'this time has two rows with different readings: keep the right one');
      } else if (step > 0 && follows) {
        if (Math.abs(step - usualStep - 3600) < 1 && clockJumps.length < mostJumps) clockJumps.push(rows + i + 1);
        usualStep = step;
      }
      follows = true;
      if (!(step < 0)) {
        lastTime = time;
        at = i;
      }
    }
    if (at >= 0) lastRow = rowAt(at);
  }

  function faults(): readonly ReadingFault[] {
    const all: ReadingFault[] = [...found].map(([key, { column, first, value, why, count }]) => ({
      column, received: `${value} in row ${first}${count > 1 ? ` and ${count - 1} more like it` : ''}`, hint: key === backwards && falls > rises ? 'the rows run from the newest to the oldest: turn them round' : why,
    }));
    if (untimed > 0 && untimed === rows) all.push({ column: 'readingTime', received: 'no row with a time', hint: 'were the time stamps read?' });
    const hot = found.has('airTemperature fahrenheit') ? undefined : fahrenheitSlip(coldest);
    if (hot) all.push({ column: 'airTemperature', ...hot });
    const dry = fractionSlip(moistest);
    if (dry) all.push({ column: 'relativeHumidity', ...dry });
    return all;
  }
}
