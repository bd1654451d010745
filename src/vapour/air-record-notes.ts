import type { AddNote } from '../calculation/note.js';
import { clock, hours } from '../units/in-words.js';
import type { AirTotals } from './formulas/air-totals.js';

interface Seen {
  readonly outsideTemperature?: unknown;
  readonly longestGap: number;
  readonly dayBegins: number;
  readonly nightBegins: number;
  readonly dayLight?: number | undefined;
}

/** What is to be said about a record beside its numbers: what it does not cover, what was put right, and what the numbers mean for the house. */
export function noteRecord({ days, whole, rows, untimed, firstUntimed, missing, repeated, clockJumps, uncoveredTime, pauses, longestPause }: AirTotals, seen: Seen, note: AddNote): void {
  if (untimed > 0) note('caution', 'rows-without-time', 'readingTime', `${untimed} of ${rows} rows have no time, row ${firstUntimed!} first: they are in no sum and no mean.`);
  if (missing > 0) note('info', 'gaps', 'vapourPressureDeficit', `${missing} of ${rows} rows lack a reading and have no deficit.`);
  if (repeated > 0) note('info', 'repeated-rows', 'readingTime', `${repeated} of ${rows} rows repeat the one before and count once.`);
  if (clockJumps.length > 0) {
    note('caution', 'clock-jump', 'readingTime', `Before row ${clockJumps[0]!}${clockJumps.length > 1 ? ` and ${clockJumps.length - 1} others` : ''} the clock jumps ahead by an hour: readings are lost, or it was put forward to daylight-saving time. If so, take the hour off all later times.`);
  }
  if (pauses > 0) {
    note('caution', 'not-covered', 'uncoveredTime', `Pauses of more than ${hours(seen.longestGap)}: ${pauses}, the longest of ${hours(longestPause)}, ${hours(uncoveredTime)} in all. That time is in no sum and no mean.`);
  }
  if (seen.dayLight === undefined && seen.dayBegins > seen.nightBegins) {
    note('info', 'day-through-midnight', 'dayBegins', `The hours of day go through midnight, from ${clock(seen.dayBegins)} to ${clock(seen.nightBegins)}. If those are the night, give dayBegins and nightBegins the other way round.`);
  }
  const partial = days.filter((day) => 86400 - day.whole.coveredTime > seen.longestGap).length;
  if (partial > 0) note('info', 'part-days', 'wholeDays', `${partial} of ${days.length} days are covered in part only: their sums are too small, and highest and lowest may be missed.`);
  if (seen.outsideTemperature !== undefined) note('info', 'clear-sky', 'coverWetTime', 'Under a clear night sky the cover is some kelvins colder than reckoned here, and wet for longer.');
  const coverWet = days.reduce((sum, { coverWetTime }) => sum + coverWetTime, 0);
  if (coverWet > 0) note('caution', 'cover-fogs', 'coverWetTime', `The cover is wet for ${hours(coverWet)} of ${hours(whole!.coveredTime)}: vent a little with some heat before the cool hours.`);
  const leafWet = days.reduce((sum, { leafWetTime }) => sum + leafWetTime, 0);
  if (leafWet > 0) note('caution', 'dew-on-leaf', 'leafWetTime', `Leaves are wet for ${hours(leafWet)}, ${hours(leafWet / days.length)} a day on average: moulds need some hours of it. Warm or move the air before it.`);
}
