import type { AddNote } from '../calculation/note.js';
import { roundedUp } from '../numerics/round-outward.js';
import { dayAndClock, hours, litres } from '../units/in-words.js';
import { daySeconds } from './formulas/barrel.js';
import type { BarrelTurn } from './formulas/barrel-turns.js';

/** Gaps shorter than this are the rounding of doubles, s. */
const shortest = 1;

/** Barrels larger than this are not looked for, m³. */
const largest = 100;

/** The last working hour in time for a barrel whose vessel is free by then. */
export function lastInHours({ mixBy, free }: BarrelTurn, workFrom: number, workUntil: number): number | undefined {
  const midnight = Math.floor(mixBy / daySeconds) * daySeconds;
  const ofDay = mixBy - midnight;
  const last = ofDay < workFrom ? midnight - daySeconds + workUntil : midnight + Math.min(ofDay, workUntil);
  return last < free ? undefined : last;
}

/** Time in which no barrel is ready, s. */
export const waiting = (turns: readonly BarrelTurn[]): number => turns.reduce((sum, { empty, ready }) => sum + ready - empty, 0);

/** The turns of so many barrels of a volume, m³, in place of those planned. */
export type OtherBarrels = (volume: number, barrels: number) => readonly BarrelTurn[];

interface Planned {
  readonly planStart: number;
  readonly warmUpTime: number;
  readonly standTime: number;
  readonly barrels: number;
  readonly barrelVolume: number;
}

/** Says so where plants go without, and what would close the gap. */
export function noteTurns(turns: readonly BarrelTurn[], { planStart, warmUpTime, standTime, barrels, barrelVolume }: Planned, others: OtherBarrels, note: AddNote): void {
  const [first] = turns;
  if (!first) {
    note('info', 'lasts-on', 'usedUpAfter', 'The barrel lasts beyond the days planned.');
    return;
  }
  const without = waiting(turns);
  if (without < shortest) return;
  const preparation = `it takes ${hours(warmUpTime + standTime)} from mixing to use`;
  if (barrels === 1) {
    note('danger', 'no-feed', 'barrels', `A single barrel is mixed when it is empty, and ${preparation}: plants go without for ${hours(without)} in all. ${remedy(turns, barrelVolume, others)}`);
  } else if (first.mixBy < planStart) {
    const once = first.ready - first.empty;
    const gap = without - once < shortest ? `for ${hours(once)} until it is ready` : `for ${hours(without)} in all, ${hours(once)} of them until it is ready`;
    note('danger', 'mix-at-once', 'fills', `The next barrel should have been mixed ${hours(planStart - first.mixBy)} before the plan begins: mix it at once; plants go without ${gap}, or are given cold feed. ${without - once < shortest ? '' : remedy(turns, barrelVolume, others)}`.trimEnd());
  } else {
    note('danger', 'no-feed', 'fills', `A barrel is used up before the other one is ready, and plants go without for ${hours(without)} in all: ${preparation}. ${remedy(turns, barrelVolume, others)}`);
  }
}

/** Two barrels that close the gap, or where the first one holds too little for that and more gaps follow, those. */
function remedy(turns: readonly BarrelTurn[], barrelVolume: number, others: OtherBarrels): string {
  const rest = waiting(turns.slice(1)) < shortest ? [] : [[1, 'all gaps but the first'] as const];
  for (const [from, gap] of [[0, 'the gap'] as const, ...rest]) {
    const volume = closing(barrelVolume, (size) => waiting(others(size, 2).slice(from)) < shortest);
    if (volume === barrelVolume) return `A second barrel that takes turns with it closes ${gap}.`;
    if (volume !== undefined) return `Two barrels of ${litres(volume)} that take turns close ${gap}.`;
  }
  return 'Only feed that is ready sooner closes the gap: warmer water to mix with, or a heater.';
}

/** The least volume that will do, from the present one up, to three digits. */
function closing(from: number, isEnough: (volume: number) => boolean): number | undefined {
  if (isEnough(from)) return from;
  if (!isEnough(largest)) return undefined;
  let [low, high] = [from, largest];
  while (high > low * 1.0005) {
    const middle = Math.sqrt(low * high);
    if (isEnough(middle)) high = middle;
    else low = middle;
  }
  let volume = roundedUp(high, 3);
  while (!isEnough(volume)) volume = roundedUp(volume * 1.01, 3);
  return volume;
}

/** Says so where a barrel would be mixed at night: one that cannot be mixed before, and one that can. */
export function noteHours(turns: readonly BarrelTurn[], inHours: readonly (number | undefined)[], workFrom: number, note: AddNote): void {
  const atNight = turns.flatMap((turn, i) => (turn.mixBy >= turn.free && inHours[i] !== turn.mixBy ? [{ ...turn, instead: inHours[i] }] : []));
  const say = (mixBy: number, what: string): void => note('info', 'mixing-at-night', 'fills', `The barrel to be mixed by ${dayAndClock(mixBy)} falls outside working hours: ${what}.`);
  const after = atNight.find(({ instead }) => instead === undefined);
  if (after) {
    const midnight = Math.floor(after.free / daySeconds) * daySeconds;
    const next = midnight + workFrom + (after.free - midnight > workFrom ? daySeconds : 0);
    say(after.mixBy, `no working hour in which its vessel is free lies before it; mixed at ${dayAndClock(next)}, the next one, it leaves plants without for ${hours(next - after.mixBy)}`);
  }
  const before = atNight.find(({ instead }) => instead !== undefined);
  if (before) say(before.mixBy, `mix it by ${dayAndClock(before.instead!)}`);
}
