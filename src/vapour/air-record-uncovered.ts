import { roundedUp } from '../numerics/round-outward.js';
import { hours } from '../units/in-words.js';
import { secondsPerDay } from './formulas/air-record.js';

interface Seen {
  readonly readingTime: { readonly si: Float64Array };
  readonly airTemperature: { readonly si: Float64Array };
  readonly relativeHumidity: { readonly si: Float64Array };
  readonly longestGap: number;
}
type Refuse = (path: string, expected: string, received: string, hint?: string) => never;


/** Ends a record that covers no time: too few rows have a deficit, which it takes a time, a temperature and a humidity for, or they are too far apart. */
export function refuseUncovered(seen: Seen, deficits: Float64Array, refuse: Refuse): never {
  const times = [...new Set(seen.readingTime.si.filter((_, row) => !Number.isNaN(deficits[row]!)))];
  if (times.length < 2) {
    const empty = (['airTemperature', 'relativeHumidity'] as const).find((name) => deficits.length > 0 && seen[name].si.every(Number.isNaN));
    return refuse(empty ?? 'readingTime', 'two rows with a time, a temperature and a humidity', `${times.length} of ${deficits.length}`, empty && `no row has the ${empty}: was the column read?`);
  }
  const steps = times.slice(1).map((time, k) => time - times[k]!).sort((one, other) => one - other);
  const usual = steps[Math.floor((steps.length - 1) / 2)]!;
  const needed = Math.min(24, roundedUp(usual * 1.02 / 3600, 2));
  return refuse('readingTime', 'two rows with temperature and humidity, at most longestGap apart', `none: longestGap is ${hours(seen.longestGap)}`, steps[0]! > secondsPerDay
    ? 'the readings are more than a day apart: too far for a straight line from one to the next'
    : `the readings are farther apart: give longestGap '${needed} h'`);
}
