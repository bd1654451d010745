import type { AddProblem } from '../calculation/problem.js';
import * as field from '../calculation/field.js';
import type { SeenFields } from '../calculation/field-types.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import { refuseBadTimes } from '../light/reading-times.js';
import { evaporationRate, irradiance, radiationSum, time, volume, waterPerRadiation } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { runTimeForVolume } from './formulas/run-time.js';
import { momentOfDay } from './moment-of-day.js';
import { plantDensityField } from './plant-share.js';
import { runTime } from './run-time.js';
import { checkSubstrate, substrateFields } from './substrate-fields.js';

/** Most rows of a day: more than one a second. */
const mostRows = 100_000;

/** Readings of a day. */
const readingFields = () => ({
  readingTime: field.column(time, { limits: ['0 h', '24 h'] }),
  globalRadiation: field.optional(field.column(irradiance, { limits: ['-50 W/m²', '1500 W/m²'] })),
  transpirationRate: field.optional(field.column(evaporationRate, { limits: ['0 mm/h', '3 mm/h'] })),
});

/** What shots follow, and between which limits. */
const planFields = () => ({
  shotTimes: field.optional(field.column(time, { limits: ['0 h', '24 h'] })),
  radiationStep: field.optional(field.quantity(radiationSum, { limits: ['1 J/cm²', '6000 J/cm²'] })),
  uptakeStep: field.optional(field.quantity(volume, { limits: ['0.1 mL', '100 L'] })),
  earliestShot: field.optional(momentOfDay()),
  latestShot: field.optional(momentOfDay()),
  shortestPause: field.optional(field.quantity(time, { limits: ['1 s', '24 h'] })),
  longestPause: field.optional(field.quantity(time, { limits: ['1 min', '24 h'] })),
});

/** What a day of irrigation takes in. */
export const irrigationDayFields = () => ({
  dayReadings: field.group(readingFields(), checkReadings),
  waterPerRadiation: field.optional(field.quantity(waterPerRadiation, { limits: ['0.05 mL·cm²/(J·m²)', '4.08 mL·cm²/(J·m²)'] })),
  plantDensity: plantDensityField(),
  ...substrateFields(),
  startingShare: field.withDefault(field.share(), 1),
  shotVolume: field.quantity(volume, { limits: ['1 mL', '100 L'] }),
  dripperFlow: runTime.inputs.dripperFlow,
  drippersPerPlant: runTime.inputs.drippersPerPlant,
  fillTime: runTime.inputs.fillTime,
  plants: field.optional(field.count({ limits: [1, 100_000] })),
  shotPlan: field.group(planFields(), checkPlan),
});

export type SeenDay = SeenFields<ReturnType<typeof irrigationDayFields>>;
export type SeenPlan = SeenDay['shotPlan'];

function checkReadings({ readingTime, globalRadiation, transpirationRate }: SeenFields<ReturnType<typeof readingFields>>, problem: AddProblem): void {
  const rows = readingTime.length;
  if (rows < 2 || rows > mostRows) problem(['readingTime'], `2 to ${mostRows} readings`, `${rows}`);
  refuseBadTimes(readingTime.si, 'readingTime', rows, problem);
  for (const [name, column] of Object.entries({ globalRadiation, transpirationRate })) {
    if (column && column.length !== rows) problem([name], `${rows} values, as many as in readingTime`, `${column.length}`);
    else if (column?.si.some(Number.isNaN)) problem([name], 'a value for every row', `none in row ${column.si.findIndex(Number.isNaN) + 1}`, 'leave the row out: between readings a straight line is drawn');
  }
  if (!globalRadiation && !transpirationRate) problem(['transpirationRate'], 'what the plants give off, or the globalRadiation to work it out from', 'neither');
}

function checkPlan(plan: SeenFields<ReturnType<typeof planFields>>, problem: AddProblem): void {
  expectExactlyOne(plan, ['shotTimes', 'radiationStep', 'uptakeStep'], problem);
  const { shotTimes, earliestShot = 0, latestShot = Infinity, shortestPause = 0, longestPause = Infinity } = plan;
  if (shotTimes) {
    for (const name of ['earliestShot', 'latestShot', 'longestPause'] as const) if (plan[name] !== undefined) problem([name], 'no such limit beside shotTimes', 'one', 'fixed times are their own limits');
    if (shotTimes.length === 0) problem(['shotTimes'], 'at least one time', 'none');
    else if (!shotTimes.si.every((x, i, all) => (i === 0 ? !Number.isNaN(x) : x > all[i - 1]!))) problem(['shotTimes'], 'times that rise from shot to shot', 'one that does not, or that is missing');
  }
  if (latestShot < earliestShot) problem(['latestShot'], 'a time not before earliestShot', 'an earlier one', 'swap them?');
  if (longestPause < shortestPause) problem(['longestPause'], 'a pause not shorter than shortestPause', 'a shorter one', 'swap them?');
}

/** How long drippers give in one shot, and how long the zone runs for it, s. */
export function shotLengths({ shotVolume, drippersPerPlant, dripperFlow, fillTime }: SeenDay): { readonly giving: number; readonly whole: number } {
  const giving = runTimeForVolume(shotVolume, drippersPerPlant, dripperFlow);
  return { giving, whole: giving + fillTime };
}

/** What must hold between the inputs of a day. */
export function checkDay(seen: SeenDay, problem: AddProblem): void {
  checkSubstrate(seen, problem);
  const { dayReadings: { readingTime, globalRadiation }, shotPlan: { shotTimes, radiationStep, shortestPause } } = seen;
  const { whole } = shotLengths(seen);
  const last = readingTime.si.at(-1)!;
  if (radiationStep !== undefined && !globalRadiation) problem(['dayReadings', 'globalRadiation'], 'the radiation that radiationStep counts', 'none');
  if (whole > last - readingTime.si[0]!) problem(['shotVolume'], 'a shot that is over within the readings', `one of ${writeNumber(whole / 60)} min`, 'more or larger drippers, or a smaller shot');
  if (shortestPause !== undefined && shortestPause < whole) problem(['shotPlan', 'shortestPause'], `a pause, from start to start, of no less than the ${Math.ceil(whole * (1 - 1e-12))} s that a shot takes`, 'a shorter one');
  if (shotTimes && (shotTimes.si[0]! < readingTime.si[0]! || shotTimes.si.at(-1)! + whole > last)) problem(['shotPlan', 'shotTimes'], 'shots that begin and end within the readings', 'one that does not');
}
