/** What must hold of any record of the air. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as vapour from '../../src/vapour/index.js';
import type { AirBlock, AirRecordOptions, AirTotals } from '../../src/vapour/index.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A record with irregular steps, gaps, lost readings and repeated rows. */
const record: fc.Arbitrary<Required<AirBlock>> = fc
  .array(fc.record({
    step: fc.oneof({ weight: 8, arbitrary: within(60, 3600) }, { weight: 1, arbitrary: within(3601, 90000) }, { weight: 1, arbitrary: fc.constant(0) }),
    t: within(-15, 40), rh: within(0.05, 1.02), leaf: within(-4, 4), cover: within(-15, 2), outside: within(-25, 30), photons: within(0, 2e-3), radiation: within(0, 900),
    lost: fc.constantFrom('', '', '', '', '', '', 't', 'rh', 'leaf', 'cover', 'light'),
  }), { minLength: 2, maxLength: 60 })
  .map((rows) => {
    let time = 4000;
    const written: (typeof rows[number] & { time: number })[] = [];
    for (const row of rows) {
      const before = written.at(-1);
      time += row.step;
      written.push(row.step === 0 && before ? before : { ...row, time });
    }
    const column = (value: (row: typeof written[number]) => number, lost = 'never') => Float64Array.from(written, (row) => (row.lost === lost ? NaN : value(row)));
    return {
      readingTime: column((row) => row.time), airTemperature: column((row) => row.t + 273.15, 't'), relativeHumidity: column((row) => row.rh, 'rh'),
      leafTemperature: column((row) => row.t + row.leaf + 273.15, 'leaf'), coverTemperature: column((row) => row.t + row.cover + 273.15, 'cover'),
      outsideTemperature: column((row) => row.outside + 273.15), photonFlux: column((row) => row.photons, 'light'), globalRadiation: column((row) => row.radiation),
    };
  });
const options: AirRecordOptions = { deficitBands: [100, 400, 1200], baseTemperature: 283.15, upperTemperature: 301.15, coverRatio: 0.7 };

const part = (block: AirBlock, from: number, to: number) => Object.fromEntries(Object.entries(block).map(([name, values]) => [name, (values as Float64Array).slice(from, to)])) as unknown as AirBlock;
function totals(blocks: readonly AirBlock[], more: AirRecordOptions = {}): AirTotals {
  const made = vapour.newAirRecord({ ...options, ...more });
  for (const block of blocks) made.add(block);
  return made.result();
}
/** Every number of a result, by where it stands. */
function* numbers(value: unknown, path = ''): Generator<readonly [string, number]> {
  if (typeof value === 'number') yield [path, value];
  else if (typeof value === 'object' && value !== null) for (const [name, entry] of Object.entries(value)) yield* numbers(entry, `${path}.${name}`);
}
const close = (one: unknown, other: unknown, relative: number) => {
  const others = new Map(numbers(other));
  const all = [...numbers(one)];
  expect(all.map(([path]) => path)).toEqual([...others.keys()]);
  for (const [path, x] of all) {
    const y = others.get(path)!;
    if (!(Math.abs(x - y) <= relative * Math.max(1, Math.abs(x), Math.abs(y)) || Object.is(x, y))) throw new Error(`${path}: ${x} and ${y}`);
  }
};
const sumOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

describe('a record of the air', () => {
  test('is the same however it is cut into blocks', () => {
    fc.assert(fc.property(record, fc.array(fc.nat(60), { maxLength: 6 }), fc.boolean(), (block, cuts, byLight) => {
      const rows = block.readingTime.length;
      const edges = [0, ...cuts.map((cut) => Math.min(cut, rows)).sort((a, b) => a - b), rows];
      const light = byLight ? { dayLight: 1e-4 } : {};
      close(totals(edges.slice(1).map((to, i) => part(block, edges[i]!, to)), light), totals([block], light), 1e-12);
    }));
  });

  test('is what its rows with a time make, however many rows without one lie between and however it is cut', () => {
    fc.assert(fc.property(record, fc.array(fc.nat(59), { minLength: 1, maxLength: 8 }), fc.nat(70), (block, places, cut) => {
      const order = [...block.readingTime.keys(), ...places.map((place) => place % block.readingTime.length - 0.5)].sort((a, b) => a - b);
      const untimed = order.flatMap((at, row) => (Number.isInteger(at) ? [] : [row + 1]));
      const longer = Object.fromEntries(Object.entries(block).map(([name, values]) => [
        name, Float64Array.from(order, (at) => (name === 'readingTime' && !Number.isInteger(at) ? NaN : (values as Float64Array)[Math.ceil(at)]!)),
      ])) as unknown as AirBlock;
      const edge = Math.min(cut, order.length);
      const { rows, untimed: count, firstUntimed, clockJumps: _jumps, ...sums } = totals([part(longer, 0, edge), part(longer, edge, order.length)]);
      expect([rows, count, firstUntimed]).toEqual([order.length, untimed.length, untimed[0]]);
      const { rows: _rows, untimed: _untimed, firstUntimed: _first, clockJumps: _others, ...expected } = totals([block]);
      expect(sums).toEqual(expected);
      for (const [name, values] of Object.entries(vapour.airRows(longer, options))) for (const row of untimed) expect((values as Float64Array)[row - 1], name).toBeNaN();
    }));
  });

  test('is the same when the caller uses one buffer for all blocks', () => {
    fc.assert(fc.property(record, (block) => {
      const made = vapour.newAirRecord(options);
      const buffer = Object.fromEntries(Object.keys(block).map((name) => [name, new Float64Array(1)]));
      for (let i = 0; i < block.readingTime.length; i++) {
        for (const [name, values] of Object.entries(block)) buffer[name]![0] = (values as Float64Array)[i]!;
        made.add(buffer as unknown as AirBlock);
      }
      close(made.result(), totals([block]), 1e-12);
    }));
  });

  test('covers what it says: bands, days, day and night all make up the covered time, and with the pauses the whole', () => {
    fc.assert(fc.property(record, within(1, 86399), within(1, 86399), (block, dayBegins, nightBegins) => {
      fc.pre(dayBegins !== nightBegins);
      const made = totals([block], { dayBegins, nightBegins });
      const covered = made.whole?.coveredTime ?? 0;
      const known = [...block.readingTime].filter((_, i) => !Number.isNaN(block.airTemperature[i]! + block.relativeHumidity[i]!));
      expect(covered + made.uncoveredTime).toBeCloseTo(known.length === 0 ? 0 : known.at(-1)! - known[0]!, 5);
      expect(sumOf(made.bandTimes)).toBeCloseTo(covered, 5);
      expect((made.daytime?.coveredTime ?? 0) + (made.night?.coveredTime ?? 0)).toBeCloseTo(covered, 5);
      expect(sumOf(made.days.map(({ whole }) => whole.coveredTime))).toBeCloseTo(covered, 5);
      for (const day of made.days) {
        expect(day.whole.coveredTime).toBeLessThanOrEqual(86400 + 1e-6);
        expect(day.leafWetTime).toBeLessThanOrEqual(day.whole.coveredTime + 1e-6);
        expect(day.lowest).toBeLessThanOrEqual(day.whole.temperature + 1e-9);
        expect(day.highest).toBeGreaterThanOrEqual(day.whole.temperature - 1e-9);
      }
    }));
  });

  test('does not change where a reading is added on the line between two others', () => {
    // Along a steady temperature the deficit is as straight as the humidity.
    fc.assert(fc.property(fc.array(fc.tuple(within(0.05, 1), within(0, 800)), { minLength: 2, maxLength: 30 }), within(5, 35), within(0.05, 0.95), within(600, 3000), (rows, t, share, step) => {
      const of = (times: number[], values: (readonly [number, number])[]): AirBlock => ({
        readingTime: Float64Array.from(times), airTemperature: Float64Array.from(times, () => t + 273.15), relativeHumidity: Float64Array.from(values, ([rh]) => rh),
        coverTemperature: Float64Array.from(times, () => t + 268.15), globalRadiation: Float64Array.from(values, ([, radiation]) => radiation),
      });
      const times = rows.map((_, i) => 3000 + i * step);
      const fine = rows.flatMap((row, i) => (i === 0 ? [row] : [[0, 1].map((k) => (1 - share) * rows[i - 1]![k]! + share * row[k]!) as unknown as readonly [number, number], row]));
      const fineTimes = times.flatMap((time, i) => (i === 0 ? [time] : [time - (1 - share) * step, time]));
      const strip = ({ rows: _rows, ...rest }: AirTotals) => rest;
      for (const light of [{}, { dayLight: 5e-4 }]) close(strip(totals([of(times, rows)], light)), strip(totals([of(fineTimes, fine)], light)), 1e-8);
    }));
  });

  test('has degree-days between those of its coldest and warmest reading', () => {
    fc.assert(fc.property(record, (block) => {
      for (const { degreeDays, whole, highest, lowest } of totals([block]).days) {
        const rate = (temperature: number) => Math.min(301.15, Math.max(283.15, temperature)) - 283.15;
        expect(degreeDays).toBeGreaterThanOrEqual(rate(lowest) * whole.coveredTime - 1e-3);
        expect(degreeDays).toBeLessThanOrEqual(rate(highest) * whole.coveredTime + 1e-3);
      }
    }));
  });

  test('of years works, and remembers days only', () => {
    const made = vapour.newAirRecord();
    const rows = 24 * 366;
    for (let year = 0; year < 40; year++) {
      const hour = (i: number) => year * rows + i;
      made.add({
        readingTime: Float64Array.from({ length: rows }, (_, i) => hour(i) * 3600), airTemperature: Float64Array.from({ length: rows }, (_, i) => 288.15 + 8 * Math.sin(hour(i) / 3.82)),
        relativeHumidity: new Float64Array(rows).fill(0.7),
      });
    }
    const { days, uncoveredTime, whole } = made.result();
    expect(days).toHaveLength(40 * 366);
    expect(uncoveredTime).toBe(0);
    expect(whole!.coveredTime).toBe((40 * rows - 1) * 3600);
  });
});

describe('degree-days', () => {
  const day = fc.record({ highest: within(255, 315), span: within(0, 25), base: within(268, 290), above: within(1, 25) });
  test('by the mean never exceed those with limits, where nothing is above the upper one', () => {
    fc.assert(fc.property(day, ({ highest, span, base }) => {
      expect(vapour.degreeDaysMeanMcMasterWilhelm1997(highest, highest - span, base)).toBeLessThanOrEqual(vapour.degreeDaysLimitedMcMasterWilhelm1997(highest, highest - span, base) + 1e-6);
    }));
  });
  test('with limits lie from nothing to the span of the limits, and agree with the mean within them', () => {
    fc.assert(fc.property(day, ({ highest, span, base, above }) => {
      const limited = vapour.degreeDaysLimitedMcMasterWilhelm1997(highest, highest - span, base, base + above);
      expect(limited).toBeGreaterThanOrEqual(0);
      expect(limited).toBeLessThanOrEqual(86400 * above + 1e-6);
      if (highest - span >= base && highest <= base + above) expect(limited).toBeCloseTo(vapour.degreeDaysMeanMcMasterWilhelm1997(highest, highest - span, base), 6);
    }));
  });
});

test('a cover fogs just below the temperature outside that says so, and not above it', () => {
  fc.assert(fc.property(within(2, 40), within(0.3, 0.99), within(0.5, 7), within(7.5, 20), (t, relativeHumidity, u, film) => {
    const house = { airTemperature: `${t} °C`, relativeHumidity, coverHeatTransfer: `${u} W/(m²·K)`, insideFilmCoefficient: `${film} W/(m²·K)` } as const;
    const limit = vapour.coverCondensation({ ...house, outsideTemperature: '10 °C' }).condensationOutsideTemperature;
    fc.pre(limit !== undefined && limit.in('°C') > -39 && limit.in('°C') < 59);
    const wetAt = (outside: number) => vapour.coverCondensation({ ...house, outsideTemperature: `${outside} °C` }).wet;
    expect(wetAt(limit.in('°C') - 1e-4)).toBe(true);
    expect(wetAt(limit.in('°C') + 1e-4)).toBe(false);
  }));
});
