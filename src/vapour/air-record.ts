import { calculation } from '../calculation/calculation.js';
import { dayAndClock } from '../units/in-words.js';
import { airRecordInputs, airRecordOutputs } from './air-record-fields.js';
import { noteRecord } from './air-record-notes.js';
import { refuseUncovered } from './air-record-uncovered.js';
import { noteEquations } from './columns.js';
import { noteIce } from './common.js';
import { checkFilm } from './cover-fields.js';
import { checkUpperTemperature, noteUpperTemperature } from './degree-day-fields.js';
import { newAirRecord, secondsPerDay } from './formulas/air-record.js';
import { dewOrFrostPoints, type AirBlock } from './formulas/air-rows.js';
import type { AirDay, AirMeans } from './formulas/air-totals.js';
import { newReadingCheck } from './formulas/reading-check.js';

/** Names of the columns of readings. */
const columns = ['readingTime', 'airTemperature', 'relativeHumidity', 'leafTemperature', 'coverTemperature', 'outsideTemperature', 'photonFlux', 'globalRadiation'] as const;

type SeenColumns = { readonly [Name in typeof columns[number]]?: { readonly si: Float64Array } | undefined };

const blockOf = (seen: SeenColumns): AirBlock => Object.fromEntries(columns.flatMap((name) => (seen[name] ? [[name, seen[name].si]] : []))) as unknown as AirBlock;

/**
 * What a logger says about the air of a house: how dry it was and for how long, by day and by night, whether leaves or the cover got wet, how much
 * warmth and light there was.
 *
 * Takes columns of any length, row by row: `readingTime` (0 to 40 years since the midnight that begins the first day, without daylight-saving time),
 * `airTemperature` (-39.9 to 60 °C) and `relativeHumidity` (0.1 to 102 %), null where a reading is lost. A row without a time is left out of all sums, and told. And where
 * they are known:
 * - leaves: `leafTemperature`, and `leafTemperatureOffset` (how much warmer than the air they are) for rows without;
 * - the cover: `coverTemperature`, and for rows without `outsideTemperature` (one value holds for all) with `coverHeatTransfer`, as in coverCondensation;
 * - light: `photonFlux`, or else `globalRadiation` with `photonYield` (2.06 µmol/J of global radiation); with the sensor outside, `coverTransmission`.
 * What a sensor reads wrong, `temperatureOffset` and `humidityOffset` put right: they are added. Between two readings at most `longestGap` (90 min) apart
 * everything goes in a straight line; longer pauses count as not covered. Day is from `dayBegins` to `nightBegins` (06:00 to 18:00), or while the
 * light at the plants is above `dayLight`. `deficitBands`, increasing, cut the scale of deficits; degree-days are those above `baseTemperature`, from every reading,
 * or from highest and lowest as in degreeDays.
 *
 * Gives columns by row (deficit; the dew point, which below 0.01 °C is the frost point; deficit at the leaf), then sums and means of the whole record, and by
 * day: of whole days, of the hours of day and of night in each, and light. Radiation sums are those at the sensor. For more rows than
 * memory holds feed newAirRecord block by block.
 * @throws InputError for a clock that runs backwards, one time with two readings, values that stand for lost readings (999, -40 °C), °F for °C, fractions for
 * per cent, columns of different lengths; each with its first row. Also where no row has a time, no two
 * readings are at most `longestGap` apart, or `upperTemperature` comes without `baseTemperature`.
 * @example
 * airRecord({
 *   readingTime: { unit: 'h', values: [0, 1, 2] }, airTemperature: { unit: '°C', values: [20, 20, 20] }, relativeHumidity: { unit: '%', values: [60, 60, 100] },
 *   deficitBands: ['0.5 kPa'],
 * }).bands?.[0]?.bandTime.in('h') // => 0.5344
 */
export const airRecord = /* @__PURE__ */ calculation({
  id: 'airRecord',
  title: 'What a logger says about the air',
  inputs: airRecordInputs,
  outputs: airRecordOutputs,
  equation: 'D = es(t) - φ es(t); wet where es(t surface) < φ es(t); cover: ts = ti - U/h (ti - to); times and means of straight lines between readings; ∫ max(0, min(t, tupper) - tbase) dt',
  sources: ['iapws-if97', 'murphy-koop-2005', 'iapws-r14-08', 'fao56', 'hyland-wexler-1983', 'wmo-8', 'buck-1996', 'mcmaster-wilhelm-1997'],
  example: {
    readingTime: { unit: 'h', values: [0, 3, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24] },
    airTemperature: { unit: '°C', values: [11, 9.5, 9, 14, 20.5, 25, 26, 24, 19, 15, 12.5, 11] },
    relativeHumidity: { unit: '%', values: [96, 98, 99, 88, 68, 55, 52, 58, 74, 86, 93, 96] },
    leafTemperatureOffset: '-1 K',
    outsideTemperature: { unit: '°C', values: [5, 4, 3.5, 7, 11, 14, 15, 14, 11, 8, 6.5, 5] },
    coverHeatTransfer: '6.5 W/(m²·K)',
    globalRadiation: { unit: 'W/m²', values: [0, 0, 20, 180, 430, 560, 520, 310, 70, 0, 0, 0] },
    coverTransmission: '70 %',
    longestGap: '3 h',
    deficitBands: ['0.2 kPa', '1.2 kPa'],
    baseTemperature: '10 °C',
  },
  check: (seen, problem) => {
    const rows = seen.readingTime.length;
    for (const name of columns) {
      const given = seen[name]?.length;
      if (given !== undefined && given !== rows && !(name === 'outsideTemperature' && given === 1)) problem([name], `${rows} values, as many as in readingTime`, `${given}`);
    }
    const readings = newReadingCheck((column, row) => {
      const [unit, reading] = [seen[column]!.unit, seen[column]!.at(row)!];
      return column === 'readingTime' && unit === 's' ? dayAndClock(reading.si) : `${Number(reading.in(unit as never).toPrecision(9))} ${unit}`;
    });
    readings.look(blockOf(seen));
    for (const { column, received, hint } of readings.faults()) problem([column], column === 'readingTime' ? 'each time once, in order' : 'what a working sensor shows', received, hint);
    const { outsideTemperature, coverHeatTransfer, insideFilmCoefficient, photonFlux, globalRadiation, dayLight, dayBegins, nightBegins, deficitBands, baseTemperature, upperTemperature } = seen;
    if (outsideTemperature && coverHeatTransfer === undefined) problem(['coverHeatTransfer'], 'the U-value of the cover, to go with outsideTemperature', 'nothing', "about '6.5 W/(m²·K)' for one layer of film or glass");
    checkFilm(coverHeatTransfer, insideFilmCoefficient, problem);
    if (dayLight !== undefined && !photonFlux && !globalRadiation) problem(['dayLight'], 'a column photonFlux or globalRadiation to go with it', 'neither', 'leave dayLight out to go by dayBegins and nightBegins');
    if (dayBegins === nightBegins) problem(['nightBegins'], 'another time than dayBegins', 'the same');
    deficitBands?.forEach((edge, k) => {
      if (k > 0 && edge <= deficitBands[k - 1]!) problem(['deficitBands', k], 'a deficit above the one before', 'one that is not');
    });
    checkUpperTemperature(baseTemperature, upperTemperature, problem);
  },
  solve: (seen, { note, refuse }) => {
    const { outsideTemperature, coverHeatTransfer, insideFilmCoefficient, leafTemperature, leafTemperatureOffset, coverTemperature, globalRadiation, deficitBands, baseTemperature, correlation } = seen;
    const record = newAirRecord({ ...seen, coverRatio: coverHeatTransfer === undefined ? undefined : coverHeatTransfer / insideFilmCoefficient, deficitBands: deficitBands ?? [] });
    const rows = record.add(blockOf(seen));
    const totals = record.result();
    const { days, whole, daytime, night, bandTimes, uncoveredTime } = totals;
    if (!whole) return refuseUncovered(seen, rows.deficit, refuse);
    noteEquations(rows.temperature, correlation, note);
    const points = dewOrFrostPoints(rows.vapourPressure, correlation);
    const coldest = points.reduce((lowest, point) => (point < lowest ? point : lowest), Infinity);
    if (coldest < 273.16) {
      noteIce(correlation, 'condensationTemperature', coldest, note);
      note('info', 'frost-point', 'condensationTemperature', correlation === 'FAO-56' ? 'FAO-56 has no equation over ice: below 0.01 °C these are dew points over supercooled water.' : 'Below 0.01 °C these are frost points, above it dew points.');
    }
    const moist = rows.deficit.reduce((count, deficit) => (deficit < 0 ? count + 1 : count), 0);
    if (moist > 0) note('caution', 'outside-range', 'relativeHumidity', `${moist} of ${totals.rows} rows are above 100 % and have a deficit below zero.`);
    noteRecord(totals, seen, note);
    noteUpperTemperature(seen, note);
    const isLit = days.filter(({ lightTime }) => lightTime > 0);
    const fullyLit = isLit.filter(({ lightTime }) => secondsPerDay - lightTime <= seen.longestGap);
    const columnOf = (of: readonly AirDay[], value: (day: AirDay) => number): Float64Array => Float64Array.from(of, value);
    const where = <T>(is: unknown, value: T): T | undefined => (is === undefined ? undefined : value);
    const sumOf = (value: (day: AirDay) => number): number => days.reduce((sum, day) => sum + value(day), 0);
    const leaf = leafTemperature ?? leafTemperatureOffset;
    const cover = coverTemperature ?? outsideTemperature;
    return {
      vapourPressureDeficit: rows.deficit,
      condensationTemperature: points,
      leafVapourPressureDeficit: rows.leafDeficit,
      coveredTime: whole.coveredTime,
      uncoveredTime,
      meanDeficit: whole.deficit,
      meanAirTemperature: whole.temperature,
      dayDeficit: daytime?.deficit,
      nightDeficit: night?.deficit,
      bands: deficitBands && bandTimes.map((time, k) => ({ deficitAbove: deficitBands[k - 1], deficitBelow: deficitBands[k], bandTime: time, bandShare: time / whole.coveredTime })),
      leafWetTime: where(leaf, sumOf((day) => day.leafWetTime)),
      coverWetTime: where(cover, sumOf((day) => day.coverWetTime)),
      degreeDays: where(baseTemperature, sumOf((day) => day.degreeDays)),
      meanDailyLight: fullyLit.length === 0 ? undefined : fullyLit.reduce((sum, { photons }) => sum + photons, 0) / fullyLit.length / secondsPerDay,
      wholeDays: {
        ...meanColumns(days, ({ whole }) => whole),
        highestAirTemperature: columnOf(days, ({ highest }) => highest),
        lowestAirTemperature: columnOf(days, ({ lowest }) => lowest),
        leafWetTime: where(leaf, columnOf(days, (day) => day.leafWetTime)),
        coverWetTime: where(cover, columnOf(days, (day) => day.coverWetTime)),
        degreeDays: where(baseTemperature, columnOf(days, (day) => day.degreeDays)),
      },
      daytimes: meanColumns(days, ({ daytime }) => daytime),
      nights: meanColumns(days, ({ night }) => night),
      lightDays: where(rows.light, {
        dayStart: columnOf(isLit, ({ dayStart }) => dayStart),
        coveredTime: columnOf(isLit, ({ lightTime }) => lightTime),
        dailyLight: columnOf(isLit, ({ photons }) => photons / secondsPerDay),
        radiationSum: where(globalRadiation, columnOf(isLit, ({ radiation }) => radiation)),
      }),
    };
  },
});

/** Columns of the means of a part of the days, of those days that have it. */
function meanColumns(days: readonly AirDay[], partOf: (day: AirDay) => AirMeans | undefined) {
  const having = days.filter((day) => partOf(day));
  const column = (value: (means: AirMeans) => number): Float64Array => Float64Array.from(having, (day) => value(partOf(day)!));
  return {
    dayStart: Float64Array.from(having, ({ dayStart }) => dayStart),
    coveredTime: column(({ coveredTime }) => coveredTime),
    meanDeficit: column(({ deficit }) => deficit),
    meanAirTemperature: column(({ temperature }) => temperature),
  };
}
