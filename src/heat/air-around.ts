/** The air around a barrel: steady, swinging through the day, or as a logger read it. */
import type { AddProblem } from '../calculation/problem.js';
import type { Solving } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import { refuseBadTimes } from '../light/reading-times.js';
import type { Column } from '../units/column.js';
import { temperature, time } from '../units/dimensions.js';
import { hours } from '../units/in-words.js';
import { readAir, steadyAir, swingingAir, type Surroundings } from './formulas/barrel-run.js';

const air = () => field.quantity(temperature, { limits: ['-40 °C', '60 °C'] });
const ofDay = () => field.quantity(time, { limits: ['0 h', '24 h'] });

export const airAroundFields = () => ({
  airTemperature: field.optional(air()),
  highestAirTemperature: field.optional(air()),
  lowestAirTemperature: field.optional(air()),
  timeOfHighest: field.withDefault(ofDay(), '15 h'),
  readingTime: field.optional(field.column(time, { limits: ['0 h', '400 d'] })),
  airTemperatures: field.optional(field.column(temperature, { limits: ['-40 °C', '60 °C'] })),
  startTime: field.optional(field.quantity(time, { limits: ['0 h', '400 d'] })),
});

interface AirSeen {
  readonly airTemperature?: number | undefined;
  readonly highestAirTemperature?: number | undefined;
  readonly lowestAirTemperature?: number | undefined;
  readonly timeOfHighest: number;
  readonly readingTime?: Column<'time'> | undefined;
  readonly airTemperatures?: Column<'temperature'> | undefined;
  readonly startTime?: number | undefined;
  readonly lookAhead: number;
}

/** Most readings of the air between start and end. */
const mostReadings = 10_000;

/** Finds air that is stated twice, by halves or not at all, and readings that do not last. */
export function checkAir(seen: AirSeen, problem: AddProblem): void {
  const { airTemperature, highestAirTemperature: highest, lowestAirTemperature: lowest, readingTime, airTemperatures, startTime, lookAhead } = seen;
  const ways = [airTemperature, highest ?? lowest, readingTime ?? airTemperatures].filter((way) => way !== undefined);
  if (ways.length !== 1) problem(['airTemperature'], 'the air in one way: airTemperature, highestAirTemperature with lowestAirTemperature, or readingTime with airTemperatures', ways.length === 0 ? 'none' : 'several');
  if ((highest === undefined) !== (lowest === undefined)) problem([highest === undefined ? 'highestAirTemperature' : 'lowestAirTemperature'], 'a temperature, to go with the other', 'nothing');
  else if (highest !== undefined && lowest! > highest) problem(['lowestAirTemperature'], 'at most the highest', 'one above it', 'are the two swapped?');
  if ((readingTime === undefined) !== (airTemperatures === undefined)) problem([readingTime === undefined ? 'readingTime' : 'airTemperatures'], 'a column, to go with the other', 'nothing');
  if (!readingTime || !airTemperatures) return;
  refuseBadTimes(readingTime.si, 'airTemperatures', airTemperatures.length, problem);
  const known = [...readingTime.si].filter((_, row) => !Number.isNaN(airTemperatures.si[row]));
  const [first, last] = [known[0], known.at(-1)];
  if (first === undefined || last === undefined) return problem(['airTemperatures'], 'at least one temperature', 'none');
  const start = startTime ?? first;
  if (start < first || start + lookAhead > last) {
    problem(['airTemperatures'], `readings from the start on for ${hours(lookAhead)}`, `readings from ${hours(first)} to ${hours(last)}`, 'start within the readings, or look ahead less far');
  } else if (known.filter((t) => t > start && t < start + lookAhead).length > mostReadings) {
    problem(['airTemperatures'], `at most ${mostReadings} readings between start and end`, 'more', 'take their means over some minutes');
  }
}

/** Time of the day at which a barrel is filled where nothing else is said, s. */
const usualStart = 8 * 3600;

/** The air of a run, with the moments at which a reading of it stands, s since the start. */
export function airAround(seen: AirSeen, { note }: Pick<Solving, 'note'>): { readonly air: Surroundings; readonly moments: readonly number[] } {
  const { airTemperature, highestAirTemperature: highest, lowestAirTemperature: lowest, timeOfHighest, readingTime, airTemperatures, startTime, lookAhead } = seen;
  if (airTemperature !== undefined) return { air: steadyAir(airTemperature), moments: [] };
  if (highest !== undefined && lowest !== undefined) {
    return { air: swingingAir({ mean: (highest + lowest) / 2, amplitude: (highest - lowest) / 2, timeOfHighest }, startTime ?? usualStart), moments: [] };
  }
  const [t, readings] = [readingTime!.si, airTemperatures!.si];
  const known = [...t.keys()].filter((row) => !Number.isNaN(readings[row]));
  if (known.length < t.length) note('caution', 'gaps', 'airTemperatures', `${t.length - known.length} of ${t.length} readings are missing: the air is taken to go straight from the one before to the one after.`);
  const start = startTime ?? t[known[0]!]!;
  const times = known.map((row) => t[row]! - start);
  return { air: readAir(times, known.map((row) => readings[row]!)), moments: times.filter((x) => x > 0 && x < lookAhead) };
}
