/** Clocks of time zones: what they show, with and without daylight saving. */
import { refuse } from './refuse.js';
import { daysFromDate, secondsInDay as day } from './stamp.js';


export interface Zone {
  /** Seconds by which the zone's standard time is ahead of UTC in the year of an instant. */
  standard(instant: number): number;
  /** The instants at which the wall clock showed a time: two in the hour that comes twice, none in the one that is skipped. */
  instants(wall: number): readonly number[];
  /** Seconds ahead of UTC at an instant. */
  offset(instant: number): number;
}

/** The zone of an IANA name. @throws InputError for a name that is none. */
export function zoneNamed(name: string): Zone {
  const read = offsetReader(name);
  const days = new Map<number, (instant: number) => number>();

  /** The offsets of one day of UTC: mostly one for the whole of it. */
  function offsetsOf(start: number): (instant: number) => number {
    const [first, last] = [read(start), read(start + day)];
    if (first === last) return () => first;
    let [before, after] = [start, start + day];
    while (after - before > 1) {
      const middle = Math.floor((before + after) / 2);
      if (read(middle) === first) before = middle;
      else after = middle;
    }
    return (instant) => (instant < after ? first : last);
  }

  function offset(instant: number): number {
    const number = Math.floor(instant / day);
    let offsets = days.get(number);
    if (!offsets) {
      if (days.size > 4000) days.clear();
      days.set(number, (offsets = offsetsOf(number * day)));
    }
    return offsets(instant);
  }

  return {
    offset,
    standard(instant) {
      const year = new Date(instant * 1000).getUTCFullYear();
      return Math.min(read(daysFromDate(year, 1, 1) * day), read(daysFromDate(year, 7, 1) * day));
    },
    instants(wall) {
      const [before, after] = [offset(wall - day), offset(wall + day)];
      if (before === after) return [wall - before];
      return [wall - Math.max(before, after), wall - Math.min(before, after)].filter((instant) => instant + offset(instant) === wall);
    },
  };
}

function offsetReader(name: string): (instant: number) => number {
  let format: Intl.DateTimeFormat;
  try {
    format = new Intl.DateTimeFormat('en-US', { timeZone: name, hourCycle: 'h23', era: 'short', year: 'numeric', month: 'numeric', day: 'numeric', hour: 'numeric', minute: 'numeric', second: 'numeric' });
  } catch {
    return refuse(['timeZone'], 'the IANA name of a time zone', JSON.stringify(name), "as 'Europe/Vienna'");
  }
  return (instant) => {
    const part = Object.fromEntries(format.formatToParts(instant * 1000).map(({ type, value }) => [type, Number(value)]));
    return daysFromDate(part['year']!, part['month']!, part['day']!) * day + part['hour']! * 3600 + part['minute']! * 60 + part['second']! - instant;
  };
}
