/** From what the stamps of a file say to seconds since the midnight that begins its first day, in local standard time, with a watch on their order. */
import type { Problems } from './problems.js';
import { shown } from './problems.js';
import { dateText, secondsInDay as day } from './stamp.js';
import { zoneNamed, type Zone } from './zone.js';

const hour = 3600;
const later = 'a time after that of the row before';

export interface Clock {
  /** The reading time of a stamp; NaN for one that has none. `offset` is NaN where the stamp tells none. */
  time(wall: number, offset: number, text: string, line: number): number;
  /** The date of the first stamp; undefined before it and for an elapsed time without a start. */
  firstDay(): string | undefined;
  /** What the times are counted by. */
  name(): string;
  /** Rows whose time was before that of the row above. */
  stepsBack(): number;
}

const offsetText = (seconds: number): string => {
  const minutes = Math.round(Math.abs(seconds) / 60);
  const two = (number: number): string => String(number).padStart(2, '0');
  return `UTC${seconds < 0 ? '-' : '+'}${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
};

/** @param elapsed the times count from a start that nobody has given */
export function fileClock(timeZone: string | undefined, elapsed: boolean, problems: Problems): Clock {
  const zone: Zone | undefined = timeZone === undefined ? undefined : zoneNamed(timeZone);
  let midnight = NaN; // of the first day, by the clock that the times are counted by
  let ahead = NaN; // of UTC, that clock's
  /** The time of the row before, and the last step forward. */
  const last = { time: NaN, step: NaN };
  let back = 0;
  const add = (kind: 'bad-time' | 'duplicate-time' | 'time-backwards' | 'clock-back' | 'skipped-hour', line: number, found: string, expected: string, hint?: string): void => {
    problems.add({ kind, line, column: 'readingTime', expected, found: shown(found), hint });
  };

  function instantOf(wall: number, zone: Zone, text: string, line: number): number {
    const [first, second] = zone.instants(wall);
    if (first === undefined) {
      add('skipped-hour', line, text, `a time that the clock of ${timeZone} shows`, 'it skips this one: does the logger keep standard time? then leave timeZone out');
      return wall - zone.offset(wall - day);
    }
    if (second === undefined) return first;
    // The hour that comes twice: the one that goes on from the row above.
    const expected = last.time + midnight - ahead + (last.step || 0);
    return Math.abs(second - expected) < Math.abs(first - expected) ? second : first;
  }

  /** By the clock that the times are counted by. */
  function local(wall: number, offset: number, text: string, line: number): number {
    if (zone) {
      const instant = Number.isNaN(offset) ? instantOf(wall, zone, text, line) : wall - offset;
      if (Number.isNaN(ahead)) ahead = zone.standard(instant);
      return instant + ahead;
    }
    if (Number.isNaN(midnight)) ahead = offset;
    if (Number.isNaN(ahead) !== Number.isNaN(offset)) {
      add('bad-time', line, text, `${Number.isNaN(offset) ? 'an' : 'no'} offset from UTC, as in the first row`, 'give timeZone');
      return NaN;
    }
    return Number.isNaN(offset) ? wall : wall - offset + ahead;
  }

  function watch(time: number, text: string, line: number): void {
    const change = time - last.time;
    if (change > 0) last.step = change;
    else if (change === 0) {
      add('duplicate-time', line, text, later, last.step === hour && !zone ? 'an hourly logger whose clock was put back? give timeZone' : undefined);
    } else if (change < 0) {
      back++;
      const putBack = !zone && Math.abs(hour + change - last.step) <= last.step / 2;
      if (putBack) add('clock-back', line, text, later, "the clock was put back by an hour: give timeZone, as 'Europe/Vienna', or let the logger keep standard time");
      else add('time-backwards', line, text, later, 'sort the rows, or read two logs one by one');
    }
    last.time = time;
  }

  return {
    time(wall, offset, text, line) {
      const seconds = local(wall, offset, text, line);
      if (Number.isNaN(seconds)) return NaN;
      if (Number.isNaN(midnight)) midnight = elapsed ? 0 : Math.floor(seconds / day) * day;
      const time = seconds - midnight;
      watch(time, text, line);
      return time;
    },
    firstDay: () => (Number.isNaN(midnight) || elapsed ? undefined : dateText(midnight / day)),
    name: () => (elapsed ? 'since the start' : zone ? `standard time of ${timeZone}` : Number.isNaN(ahead) ? 'the clock of the logger' : offsetText(ahead)),
    stepsBack: () => back,
  };
}
