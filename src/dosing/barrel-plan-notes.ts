import type { AddNote } from '../calculation/note.js';
import { dayAndClock, hours } from '../units/in-words.js';
import { daySeconds } from './formulas/barrel.js';
import type { BarrelTurn } from './formulas/barrel-turns.js';

/** The last working hour in time for a barrel whose vessel is free by then. */
export function lastInHours({ mixBy, free }: BarrelTurn, workFrom: number, workUntil: number): number | undefined {
  const midnight = Math.floor(mixBy / daySeconds) * daySeconds;
  const ofDay = mixBy - midnight;
  const last = ofDay < workFrom ? midnight - daySeconds + workUntil : midnight + Math.min(ofDay, workUntil);
  return last < free ? undefined : last;
}

/** Says so where plants go without. */
export function noteTurns(turns: readonly BarrelTurn[], { planStart, warmUpTime, standTime, barrels }: { readonly planStart: number; readonly warmUpTime: number; readonly standTime: number; readonly barrels: number }, note: AddNote): void {
  const [first] = turns;
  if (!first) {
    note('info', 'lasts-on', 'usedUpAfter', 'The barrel lasts beyond the days planned.');
    return;
  }
  const preparation = warmUpTime + standTime;
  const without = waiting(turns);
  if (without <= 0) return;
  if (barrels === 1) note('danger', 'no-feed', 'barrels', `A single barrel is mixed when it is empty, and its feed is ready ${hours(preparation)} later: plants go without for ${hours(without)}. A second barrel, or warm water to mix with, closes the gap.`);
  else if (first.mixBy < planStart) note('danger', 'mix-at-once', 'fills', `The next barrel should have been mixed ${hours(planStart - first.mixBy)} before the plan begins: mix it at once; plants go without for ${hours(first.ready - first.empty)}, or are given cold feed.`);
  else note('danger', 'no-feed', 'fills', `A barrel is used up before the other one is ready, and plants go without for ${hours(without)}: it takes ${hours(preparation)} from mixing to use. A larger barrel, or warmer water to mix with, closes the gap.`);
}

/** Time in which no barrel is ready, s. */
export const waiting = (turns: readonly BarrelTurn[]): number => turns.reduce((sum, { empty, ready }) => sum + ready - empty, 0);

/** Says so where a barrel would be mixed at night. */
export function noteHours(turns: readonly BarrelTurn[], inHours: readonly (number | undefined)[], note: AddNote): void {
  const night = turns.findIndex(({ free, mixBy }, i) => mixBy >= free && inHours[i] !== mixBy);
  if (night < 0) return;
  const instead = inHours[night];
  const when = instead === undefined ? 'no working hour in which its vessel is free lies before it: let it warm and stand for less, or take a larger barrel' : `mix it by ${dayAndClock(instead)}`;
  note('info', 'mixing-at-night', 'fills', `The barrel to be mixed by ${dayAndClock(turns[night]!.mixBy)} falls outside working hours: ${when}.`);
}
