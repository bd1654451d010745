import type { AddNote } from '../calculation/note.js';
import { roundedDown, roundedUp } from '../numerics/round-outward.js';
import { clock, litres, percent, threeDigits } from '../units/in-words.js';
import { writeNumber } from '../units/write.js';
import { sumUntil, timeOfSum, type RunningSum } from './formulas/running-sum.js';
import type { WaterCourse } from './formulas/water-balance.js';
import type { SeenDay } from './irrigation-day-fields.js';
import { isAbove } from './is-above.js';
import { noteShotShare } from './shot.js';
import { isUsual, towardsUsualDrain } from './usual-drain.js';

/** Shots usually end so long before the light does, s. Common practice, no source: 1 to 3 h. */
const dryEvening = 3600;

/** Shots after which the first drain usually comes. Common practice, no source. */
const [firstDrainFrom, firstDrainTo] = [4, 8];

/** More drain than this is worth a warning, and so is a day that gives less than plants take up by more than this share. Common practice, no source. */
const [muchDrain, littleDrier] = [0.5, 0.05];

/** The least and the largest shot, m³. */
const [leastShot, mostShot] = [1e-6, 0.1];

/** What the rounding of doubles may add, as a share. */
const rounding = 1e-9;

const share = (x: number): string => percent(Number(x.toPrecision(2)));

/** A day that is worked out. */
interface WorkedDay {
  readonly result: {
    readonly shots: readonly { readonly shotTime: number }[];
    readonly appliedVolume: number;
    readonly uptakeVolume: number;
    readonly drainShare: number | undefined;
    readonly firstDrainShot: number | undefined;
    readonly driestTime: number;
    readonly driestWater: number;
    readonly readingTime: Float64Array;
    readonly waterVolumes: Float64Array;
  };
  readonly seen: SeenDay;
  readonly light: RunningSum | undefined;
  /** What a plant takes up from a substrate that never dries, m³. */
  readonly demand: RunningSum;
  /** All of it. */
  readonly asked: number;
  readonly capacity: number;
  readonly easy: number | undefined;
  /** The same day with shots of another volume; undefined where they do not fit into it. */
  readonly withShotsOf: (volume: number) => { readonly shots: number; readonly course: WaterCourse } | undefined;
}

/** Says what is to be said of a day. */
export function noteDay(day: WorkedDay, note: AddNote): void {
  const { result: { shots, uptakeVolume, driestWater, firstDrainShot }, seen, light, asked, capacity, easy } = day;
  const { dayReadings, waterPerRadiation, shotPlan, shotVolume, substrateVolume } = seen;
  if (!dayReadings.transpirationRate && waterPerRadiation === undefined) note('info', 'rule-of-thumb', 'waterPerRadiation', 'Uptake is taken as 1.7 mL for each J/cm² and m², as of a mature fruiting crop by common practice (1.5 to 3): weigh a bag, or measure the drain of a day, for your own.');
  noteShotShare(shotVolume / substrateVolume, 'shotVolume', note);
  if (shots.length === 0) note('danger', 'no-shot', 'shots', 'No shot comes on this day: the step is not reached within the limits.');
  const isDry = uptakeVolume < asked * (1 - rounding);
  if (isDry) note('danger', 'dried-out', 'driestTime', `The substrate runs dry, and the plants go without ${litres(threeDigits(asked - uptakeVolume))}: more shots, or larger ones.`);
  else if (easy !== undefined && driestWater < (capacity - easy) * (1 - rounding)) noteDryness(day, capacity - easy, note);
  noteTimes(shots, shotPlan, light, note);
  if (shots.length > 0) noteBalance(day, isDry, note);
  if (firstDrainShot !== undefined && (firstDrainShot < firstDrainFrom || firstDrainShot > firstDrainTo)) note('info', 'first-drain', 'firstDrainShot', `The first drain comes with shot ${firstDrainShot}; ${firstDrainFrom} to ${firstDrainTo} is usual: ${firstDrainShot < firstDrainFrom ? 'smaller shots, or a drier start, put it off' : 'an earlier start, or larger shots in the morning, bring it on'}.`);
}

/** Says when the substrate comes to hold less than is wanted, m³, and what keeps it from that. */
function noteDryness({ result: { shots, driestTime, driestWater, readingTime, waterVolumes }, demand, capacity }: WorkedDay, wanted: number, note: AddNote): void {
  const lacking = litres(roundedUp(wanted - driestWater, 3));
  const next = waterVolumes.findIndex((water) => water < wanted * (1 - rounding));
  const before = next - 1;
  const passed = timeOfSum(demand, sumUntil(demand, readingTime[before]!) + waterVolumes[before]! - wanted);
  const from = clock(Math.floor(passed / 60) * 60);
  const last = shots.at(-1)?.shotTime ?? Infinity;
  const remedy = next === 0 ? `it begins the day too dry, so fill it with ${lacking} before`
    : wanted - driestWater > capacity - wanted ? `it takes ${lacking} more in several shots from ${from} on${driestTime > last ? `, some after the last one of ${clock(last)}` : ''}`
    : `${lacking} more by ${from} keep it from that, in ${passed > last ? `a shot after the last one of ${clock(last)}` : 'an earlier or a larger shot'}`;
  note('caution', 'below-easily-available', 'driestTime', `At ${clock(driestTime)} the substrate has given up ${litres(threeDigits(capacity - driestWater))}, more than the ${litres(threeDigits(capacity - wanted))} that are easily available: ${remedy}.`);
}

function noteTimes(shots: WorkedDay['result']['shots'], { shotTimes }: SeenDay['shotPlan'], light: RunningSum | undefined, note: AddNote): void {
  const late = shotTimes ? shots.filter(({ shotTime }, i) => shotTime > shotTimes.si[i]!).length : 0;
  if (late > 0) note('caution', 'shots-too-close', 'shotTimes', `Shots that start later than they are set, since the one before must end first: ${late} of ${shots.length}. Set them further apart.`);
  const lastLight = light ? light.rates.reduce((last, rate, i) => (rate > 0 ? i : last), -1) : -1;
  const evening = lastLight < 0 ? undefined : light!.times[lastLight + 1];
  const last = shots.at(-1)?.shotTime;
  if (evening !== undefined && last !== undefined && last > evening - dryEvening) note('caution', 'late-shot', 'shots', `The last shot comes at ${clock(last)}, and the light ends by ${clock(evening)}: stop 1 to 3 h before, so that roots have air in the night.`);
}

/** Says so where shots give less than plants take up, and where neither what drains of this day nor what would day after day, without what the substrate gains or loses on this one, is usual. */
function noteBalance(day: WorkedDay, isDry: boolean, note: AddNote): void {
  const { result: { appliedVolume, drainShare: today }, light, asked } = day;
  const drainShare = Math.max(0, 1 - asked / appliedVolume);
  const radiation = light?.sums.at(-1);
  const unusual = radiation !== undefined || isAbove(drainShare, muchDrain) ? towardsUsualDrain(drainShare, asked, radiation ?? Infinity) : undefined;
  const usual = unusual && (radiation === undefined ? `more than ${percent(unusual.usual.highest)} is never usual` : `${percent(unusual.usual.lowest)} to ${percent(unusual.usual.highest)} is usual at ${writeNumber(threeDigits(radiation / 1e4))} J/cm²`);
  if (isAbove(asked * (1 - littleDrier), appliedVolume)) {
    note('caution', 'less-than-uptake', 'appliedVolume', `Plants ask for ${litres(threeDigits(asked))} and are given ${litres(threeDigits(appliedVolume))}: each such day leaves the substrate ${litres(threeDigits(asked - appliedVolume))} drier. ${adviseShots(day, unusual?.wanted ?? asked, roundedUp)}${usual ? `; ${usual}` : ''}.`);
  } else if (unusual && !isDry && !isUsual(today!, unusual.usual)) {
    const isMuch = drainShare > unusual.towards;
    note(isAbove(drainShare, muchDrain) ? 'caution' : 'info', 'unusual-drain', 'drainShare', `Of ${litres(threeDigits(appliedVolume))} that a plant is given ${litres(threeDigits(Math.max(0, appliedVolume - asked)))} drain day after day, ${share(drainShare)}; ${usual}. ${adviseShots(day, unusual.wanted, isMuch ? roundedDown : roundedUp)}.`);
  }
}

/** The shots that bring a plant a volume in the day, m³, and what then drains: day after day, and on this one, which begins as it does. */
function adviseShots({ result: { shots }, seen: { shotVolume }, asked, withShotsOf }: WorkedDay, wanted: number, round: (volume: number, digits: number) => number): string {
  let count = shots.length;
  for (let attempt = 0; attempt < 5; attempt++) {
    const volume = round(wanted / count, 3);
    const then = volume < leastShot || volume > mostShot ? undefined : withShotsOf(volume);
    if (!then || then.shots === 0) break;
    if (then.shots === count) {
      const { given, taken, drained } = then.course;
      const [all, gain, today] = [given.at(-1)!, given.at(-1)! - taken.at(-1)! - drained.at(-1)!, share(drained.at(-1)! / given.at(-1)!)];
      const lasting = share(Math.max(0, 1 - asked / all));
      const thisDay = today === lasting ? '' : `, and ${today} of this one, on which the substrate ${gain > 0 ? 'gains' : 'loses'} ${litres(threeDigits(Math.abs(gain)))}`;
      return `Shots of ${writeNumber(volume * 1e6)} mL, ${litres(threeDigits(all))} a plant in all, drain ${lasting} day after day${thisDay}`;
    }
    count = then.shots;
  }
  return `It takes ${litres(round(wanted, 3))} a plant in all, in ${wanted > count * shotVolume ? 'more' : 'fewer'} shots`;
}
