import { calculation } from '../calculation/calculation.js';
import { discharge } from '../calculation/caution.js';
import * as output from '../calculation/output.js';
import { share, time, volume } from '../units/dimensions.js';
import { transpirationFromRadiation, volumePerPlantFromDepth } from './formulas/crop-transpiration.js';
import { drainShareFromVolumes } from './formulas/drain.js';
import { runningSum, type RunningSum } from './formulas/running-sum.js';
import { shotStartsAt, shotStartsBySum } from './formulas/shot-starts.js';
import { waterThroughDay, type Delivery } from './formulas/water-balance.js';
import { checkDay, irrigationDayFields, shotLengths, type SeenDay } from './irrigation-day-fields.js';
import { noteDay } from './irrigation-day-notes.js';
import { heldBy, noteSubstrate } from './substrate-fields.js';

/** More shots than this in a day are refused. */
const mostShots = 2000;

/** Water that a mature crop takes up for the light outside where it is not told: 1.7 mL for each J/cm² and m². Common practice, as a grower's journal of 2020 gives it. */
const usualWaterPerRadiation = 1.7e-10;

/**
 * A day of irrigation: when each shot comes, what it brings, and what the plants, the substrate and the drain make of it.
 *
 * `dayReadings` are columns of one length (2 to 100 000 rows, rising times of one day): the time since midnight, and the global radiation outside (-50 to 1500 W/m²; below zero counts as 0),
 * the transpiration of the crop (up to 3 mm/h), or both. Without the latter, plants take up what the rule of so many mL for each J/cm² says
 * (`waterPerRadiation`, 1.7 by default). `plantDensity` is plants to a m². The substrate is given as for `substrateWater`; it begins with a share of what it holds drained
 * (all of it by default). A shot is so much to a plant (1 mL to 100 L), from drippers as for `runTime`, perhaps through lines that fill first.
 * `shotPlan` says when: at fixed times (`shotTimes`), or each time the radiation (`radiationStep`) or the uptake of a plant (`uptakeStep`) since the last
 * start has come to a step, not before `earliestShot`, not after `latestShot`, and from start to start neither sooner than `shortestPause` (by default as soon as the
 * one before is over) nor later than `longestPause`. With the number of plants comes the volume of the zone.
 *
 * Gives the shots with their times, between readings too, and their drain; sums of the day, its share of drain, the first shot that drains, the driest moment, and what
 * goes between the last shot and the first, as far as the readings reach; and columns for plotting, with a row for each reading and each begin and end of a shot: what a
 * plant was given, took up and drained since the first reading, and what its substrate holds.
 *
 * Between readings straight lines are drawn. What is above container capacity drains at once; real substrates drain a little before they are full.
 * @throws InputError for input outside these limits, gaps and times that do not rise in the readings, a plan with none or several of the three starts, shots that are not over within
 * the readings, and more than 2000 shots.
 * @example
 * const day = irrigationDay(irrigationDay.example);
 * day.shotsPerDay // => 10
 * day.drainShare?.in('%') // => 30.37
 */
export const irrigationDay = /* @__PURE__ */ calculation({
  id: 'irrigationDay',
  title: 'Irrigation through a day',
  inputs: irrigationDayFields,
  outputs: () => ({
    shots: output.list(output.group({ shotTime: output.quantity(time, 'h'), shotVolume: output.quantity(volume, 'mL'), shotDrain: output.quantity(volume, 'mL') })),
    shotsPerDay: output.number(),
    runTimePerShot: output.quantity(time, 'min'),
    appliedVolume: output.quantity(volume, 'L'),
    uptakeVolume: output.quantity(volume, 'L'),
    drainPerPlant: output.quantity(volume, 'L'),
    drainShare: output.optional(output.quantity(share, '%')),
    firstDrainShot: output.optional(output.number()),
    driestTime: output.quantity(time, 'h'),
    driestWater: output.quantity(volume, 'L'),
    nightUseShare: output.optional(output.quantity(share, '%')),
    dailyVolume: output.optional(output.quantity(volume, 'L')),
    readingTime: output.column(time, 'h'),
    givenVolumes: output.column(volume, 'L'),
    uptakeVolumes: output.column(volume, 'L'),
    drainedVolumes: output.column(volume, 'L'),
    waterVolumes: output.column(volume, 'L'),
  }),
  equation: 'dW/dt = given − taken up − drained; drained is what would be above container capacity',
  sources: ['definition', 'common-practice'],
  cautions: [discharge],
  example: {
    dayReadings: {
      readingTime: { unit: 'h', values: [0, 6, 9, 12, 15, 18, 21, 24] },
      globalRadiation: { unit: 'W/m²', values: [0, 10, 320, 650, 480, 130, 0, 0] },
    },
    waterPerRadiation: '1.8 mL·cm²/(J·m²)', plantDensity: 2.5, substrate: 'coir', substrateVolume: '10 L', startingShare: '90 %',
    shotVolume: '250 mL', dripperFlow: '2 L/h', plants: 28,
    shotPlan: { radiationStep: '150 J/cm²', earliestShot: '7.5 h', latestShot: '17 h' },
  },
  check: checkDay,
  solve: (seen, { note, refuse }) => {
    const { dayReadings, plantDensity, substrateVolume, startingShare, shotVolume, plants } = seen;
    const [moments, radiation] = [dayReadings.readingTime.si, dayReadings.globalRadiation?.si];
    const light = radiation && runningSum(moments, radiation.map(notBelowZero));
    const asked = runningSum(moments, transpirationOf(seen).map((rate) => volumePerPlantFromDepth(rate, plantDensity)));
    const held = heldBy(seen);
    const capacity = held.water * substrateVolume;
    const shotsOf = (volume: number) => {
      const { giving, whole } = shotLengths({ ...seen, shotVolume: volume });
      const starts = startsOf(seen, light, asked, whole);
      const areOver = starts.length === 0 || starts.at(-1)! + whole <= moments.at(-1)!;
      return { starts, whole, areOver, deliveries: starts.map((start) => ({ from: start + whole - giving, until: start + whole })) };
    };
    const courseOf = (deliveries: readonly Delivery[], volume: number) => waterThroughDay(asked, deliveries, volume, capacity, startingShare * capacity);
    const { starts, whole, areOver, deliveries } = shotsOf(shotVolume);
    if (starts.length > mostShots) refuse('shotPlan', `at most ${mostShots} shots a day`, 'more', 'a larger step, or fewer times');
    if (!areOver) refuse('shotPlan.shotTimes', 'shots that are over within the readings, each after the one before', 'more than fit', 'fewer shots, or shorter ones');
    const course = courseOf(deliveries, shotVolume);
    const taken = (moment: number): number => course.taken[course.times.indexOf(moment)]!;
    const shots = starts.map((shotTime, i) => ({ shotTime, shotVolume, shotDrain: course.drains[i]! }));
    const [appliedVolume, uptakeVolume, drainPerPlant] = [course.given, course.taken, course.drained].map((sums) => sums.at(-1)!) as [number, number, number];
    const driest = course.held.reduce((least, water, i) => (water < course.held[least]! ? i : least), 0);
    const firstDrain = shots.findIndex(({ shotDrain }) => shotDrain > 0);
    const result = {
      shots,
      shotsPerDay: starts.length,
      runTimePerShot: whole,
      appliedVolume, uptakeVolume, drainPerPlant,
      drainShare: appliedVolume > 0 ? drainShareFromVolumes(appliedVolume, drainPerPlant) : undefined,
      firstDrainShot: firstDrain < 0 ? undefined : firstDrain + 1,
      driestTime: course.times[driest]!,
      driestWater: course.held[driest]!,
      nightUseShare: deliveries.length === 0 ? undefined : (taken(deliveries[0]!.from) + uptakeVolume - taken(deliveries.at(-1)!.until)) / capacity,
      dailyVolume: plants === undefined ? undefined : plants * appliedVolume,
      readingTime: course.times,
      givenVolumes: course.given, uptakeVolumes: course.taken, drainedVolumes: course.drained, waterVolumes: course.held,
    };
    noteSubstrate(seen, note);
    const withShotsOf = (volume: number) => {
      const { starts: { length: shots }, whole, areOver, deliveries } = shotsOf(volume);
      return areOver && shots <= mostShots && whole <= (seen.shotPlan.shortestPause ?? Infinity) ? { shots, course: courseOf(deliveries, volume) } : undefined;
    };
    noteDay({ result, seen, light, demand: asked, asked: asked.sums.at(-1)!, capacity, easy: held.easy === undefined ? undefined : held.easy * substrateVolume, withShotsOf }, note);
    return result;
  },
});

/** What a sensor shows below zero in the dark is dark. */
const notBelowZero = (x: number): number => Math.max(0, x);

/** What the plants give off at each reading, m/s. */
function transpirationOf({ dayReadings: { transpirationRate, globalRadiation }, waterPerRadiation = usualWaterPerRadiation }: SeenDay): Float64Array {
  return transpirationRate ? transpirationRate.si : globalRadiation!.si.map((radiation) => transpirationFromRadiation(waterPerRadiation, notBelowZero(radiation)));
}

/** When the shots start, s. */
function startsOf({ dayReadings: { readingTime }, shotPlan }: SeenDay, light: RunningSum | undefined, asked: RunningSum, whole: number): readonly number[] {
  const { shotTimes, radiationStep, uptakeStep, earliestShot = 0, latestShot = Infinity, shortestPause = whole, longestPause = Infinity } = shotPlan;
  if (shotTimes) return shotStartsAt(shotTimes.si, shortestPause);
  const limits = { earliest: Math.max(earliestShot, readingTime.si[0]!), latest: Math.min(latestShot, readingTime.si.at(-1)! - whole), shortestPause, longestPause };
  return radiationStep === undefined ? shotStartsBySum(asked, uptakeStep!, limits, mostShots) : shotStartsBySum(light!, radiationStep, limits, mostShots);
}
