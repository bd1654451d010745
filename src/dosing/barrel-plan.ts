import type { AddProblem } from '../calculation/problem.js';
import { calculation } from '../calculation/calculation.js';
import { backflow } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { refuseBadTimes } from '../light/reading-times.js';
import { time, volume } from '../units/dimensions.js';
import { lastInHours, noteHours, noteTurns, waiting } from './barrel-plan-notes.js';
import { daySeconds } from './formulas/barrel.js';
import { barrelTurns } from './formulas/barrel-turns.js';
import { momentOfDay } from './moment-of-day.js';

/** More barrels than this are refused. */
const mostTurns = 1000;

/**
 * How long a barrel of feed lasts, and when the next has to be mixed so that it is warm when it is wanted.
 *
 * Takes the barrel (1 L to 100 m³) with what is in it now (full by default) and the share that is not to be used; the zones with what each is given
 * day by day (columns; the last day goes on); how the use is spread over a day: evenly between two times (all day by default), or as `readingTime` and
 * `givenVolumes` of `irrigationDay` say; the time of the first day at which the plan begins; how long a fresh barrel takes to warm and to stand (up to
 * 30 d each); whether two barrels take turns (the default) or one is mixed anew when it is empty; the hours of the day in which someone can mix (7 to
 * 20 h by default); and for how many days to plan (7 by default).
 *
 * Gives how long the first barrel lasts; the barrels that follow, with the time by which each has to be mixed, the last working hour before it in which its
 * vessel is free, when it is ready, and when the one before is used up, all since the first midnight; and the time that plants go without feed. What
 * lies before the first midnight or beyond the days planned is absent.
 * @throws InputError for input outside these limits, a barrel that holds no more than its reserve, use that does not rise through the day, and more than 1000 barrels.
 * @example
 * const plan = barrelPlan({ barrelVolume: '200 L', zones: [{ dailyVolumes: { unit: 'L', values: [80] } }], warmUpTime: '18 h' });
 * plan.usedUpAfter?.in('d') // => 2.5
 * plan.fills[0]?.mixBy?.in('h') // => 42
 */
export const barrelPlan = /* @__PURE__ */ calculation({
  id: 'barrelPlan',
  title: 'How long a barrel lasts and when to mix the next',
  inputs: () => ({
    barrelVolume: field.quantity(volume, { limits: ['1 L', '100 m³'] }),
    presentVolume: field.optional(field.quantity(volume, { limits: ['0 L', '100 m³'] })),
    reserveShare: field.withDefault(field.share({ limits: [0, 0.9] }), 0),
    zones: field.list(field.group({ dailyVolumes: field.column(volume, { limits: ['0 L', '1000 m³'] }) }), { limits: [1, 50] }),
    dayUse: field.optional(field.group({
      useFrom: field.optional(momentOfDay()),
      useUntil: field.optional(momentOfDay()),
      readingTime: field.optional(field.column(time, { limits: ['0 h', '24 h'] })),
      givenVolumes: field.optional(field.column(volume, { limits: ['0 L', '1000 m³'] })),
    }, checkUse)),
    planStart: field.withDefault(momentOfDay(), '0 h'),
    warmUpTime: field.withDefault(field.quantity(time, { limits: ['0 h', '30 d'] }), '0 h'),
    standTime: field.withDefault(field.quantity(time, { limits: ['0 h', '30 d'] }), '0 h'),
    barrels: field.withDefault(field.count({ limits: [1, 2] }), 2),
    workFrom: field.withDefault(momentOfDay(), '7 h'),
    workUntil: field.withDefault(momentOfDay(), '20 h'),
    days: field.withDefault(field.count({ limits: [1, 366] }), 7),
  }),
  outputs: () => ({
    dailyVolume: output.quantity(volume, 'L'),
    usedUpAfter: output.optional(output.quantity(time, 'd')),
    fills: output.list(output.group({
      mixBy: output.optional(output.quantity(time, 'h')),
      mixInHours: output.optional(output.quantity(time, 'h')),
      readyTime: output.quantity(time, 'h'),
      emptyTime: output.quantity(time, 'h'),
    })),
    timeWithoutFeed: output.quantity(time, 'h'),
  }),
  equation: 'used(t) = Σ V_day + V_day p(t); mix by used⁻¹(V) − warm-up − standing',
  sources: ['definition'],
  cautions: [backflow],
  example: {
    barrelVolume: '200 L', reserveShare: '5 %',
    zones: [{ dailyVolumes: { unit: 'L', values: [34, 36, 40] } }, { dailyVolumes: { unit: 'L', values: [42, 45, 51] } }, { dailyVolumes: { unit: 'L', values: [4] } }],
    dayUse: { useFrom: '8 h', useUntil: '18 h' }, warmUpTime: '20 h', standTime: '1 h', days: 6,
  },
  check: ({ barrelVolume, presentVolume = barrelVolume, reserveShare, workFrom, workUntil, zones }, problem) => {
    if (presentVolume > barrelVolume) problem(['presentVolume'], 'no more than the barrel holds', 'more');
    else if (presentVolume <= reserveShare * barrelVolume) problem(['presentVolume'], 'more than the reserve that is not to be used', 'no more', 'the barrel is used up: mix one first');
    if (workUntil <= workFrom) problem(['workUntil'], 'a time after workFrom', 'one that is not', 'swap them?');
    zones.forEach(({ dailyVolumes }, i) => {
      if (dailyVolumes.length < 1 || dailyVolumes.length > 366) problem(['zones', i, 'dailyVolumes'], '1 to 366 volumes, one a day', `${dailyVolumes.length}`);
      else if (dailyVolumes.si.some(Number.isNaN)) problem(['zones', i, 'dailyVolumes'], 'a volume for every day', `none in row ${dailyVolumes.si.findIndex(Number.isNaN) + 1}`);
    });
  },
  solve: (seen, { note, refuse }) => {
    const { barrelVolume, presentVolume, reserveShare, zones, planStart, warmUpTime, standTime, barrels, workFrom, workUntil, days } = seen;
    const dailyVolumes = Array.from({ length: Math.max(...zones.map(({ dailyVolumes: { length } }) => length)) }, (_, day) =>
      zones.reduce((sum, { dailyVolumes: { si } }) => sum + si[Math.min(day, si.length - 1)]!, 0));
    const pattern = patternOf(seen.dayUse);
    const turnsOf = (size: number, number: number, first = size) => barrelTurns({
      start: planStart, first: first - reserveShare * size, full: size - reserveShare * size, preparation: warmUpTime + standTime, barrels: number, dailyVolumes, pattern,
    }, days * daySeconds, mostTurns);
    const turns = turnsOf(barrelVolume, barrels, presentVolume);
    if (turns.length > mostTurns) refuse('barrelVolume', `a barrel that lasts: at most ${mostTurns} in the days planned`, 'more of them', 'a larger barrel, or fewer days');
    const inHours = turns.map((turn) => lastInHours(turn, workFrom, workUntil));
    noteTurns(turns, seen, (size, number) => turnsOf(size, number, presentVolume), note);
    noteHours(turns, inHours, workFrom, note);
    return {
      dailyVolume: dailyVolumes[0]!,
      usedUpAfter: turns.length === 0 ? undefined : turns[0]!.empty - planStart,
      fills: turns.map(({ empty, mixBy, ready }, i) => ({ mixBy: mixBy < 0 ? undefined : mixBy, mixInHours: inHours[i], readyTime: ready, emptyTime: empty })),
      timeWithoutFeed: waiting(turns),
    };
  },
});

interface SeenUse {
  readonly useFrom: number | undefined;
  readonly useUntil: number | undefined;
  readonly readingTime: { readonly si: Float64Array } | undefined;
  readonly givenVolumes: { readonly si: Float64Array } | undefined;
}

function checkUse({ useFrom = 0, useUntil = daySeconds, readingTime, givenVolumes }: SeenUse, problem: AddProblem): void {
  if (useUntil <= useFrom) problem(['useUntil'], 'a time after useFrom', 'one that is not', 'swap them?');
  if (!readingTime !== !givenVolumes) problem([readingTime ? 'givenVolumes' : 'readingTime'], 'readingTime and givenVolumes together, or neither', 'one of them');
  if (!readingTime || !givenVolumes) return;
  const [moments, given] = [readingTime.si, givenVolumes.si];
  refuseBadTimes(moments, 'givenVolumes', given.length, problem);
  if (!given.every((x, i) => i === 0 ? !Number.isNaN(x) : x >= given[i - 1]!) || !(given.at(-1)! > given[0]!)) problem(['givenVolumes'], 'sums since the first row, which never fall and at last are above it', 'others', 'volumes of single shots have to be summed up');
}

/** How use is spread over a day. */
function patternOf({ useFrom = 0, useUntil = daySeconds, readingTime, givenVolumes }: Partial<SeenUse> = {}) {
  if (!readingTime || !givenVolumes) return { times: [useFrom, useUntil], shares: [0, 1] };
  const [first, last] = [givenVolumes.si[0]!, givenVolumes.si.at(-1)!];
  return { times: readingTime.si, shares: givenVolumes.si.map((given) => (given - first) / (last - first)) };
}
