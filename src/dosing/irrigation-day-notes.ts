import type { AddNote } from '../calculation/note.js';
import { clock, litres, percent } from '../units/in-words.js';
import { writeNumber } from '../units/write.js';
import { uptakeFromApplied } from './formulas/drain.js';
import type { RunningSum } from './formulas/running-sum.js';
import type { SeenDay } from './irrigation-day-fields.js';
import { towardsUsualDrain } from './usual-drain.js';

/** Shots usually end so long before the light does, s. Common practice, no source: 1 to 3 h. */
const dryEvening = 3600;

/** Shots after which the first drain usually comes. Common practice, no source. */
const [firstDrainFrom, firstDrainTo] = [4, 8];

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
  };
  readonly seen: SeenDay;
  readonly light: RunningSum | undefined;
  /** What a plant would have taken up from a substrate that never dries, m³. */
  readonly asked: number;
  readonly capacity: number;
  readonly easy: number | undefined;
}

/** Says what is to be said of a day. */
export function noteDay({ result, seen, light, asked, capacity, easy }: WorkedDay, note: AddNote): void {
  const { shots, appliedVolume, uptakeVolume, drainShare, firstDrainShot, driestTime, driestWater } = result;
  const { dayReadings, waterPerRadiation, shotPlan } = seen;
  if (!dayReadings.transpirationRate && waterPerRadiation === undefined) note('info', 'rule-of-thumb', 'waterPerRadiation', 'Uptake is taken as 1.7 mL for each J/cm² and m², as of a mature fruiting crop by common practice (1.5 to 3): weigh a bag, or measure the drain of a day, for your own.');
  if (shots.length === 0) note('danger', 'no-shot', 'shots', 'No shot comes on this day: the step is not reached within the limits.');
  if (uptakeVolume < asked * (1 - 1e-9)) note('danger', 'dried-out', 'driestTime', `The substrate runs dry, and the plants go without ${litres(asked - uptakeVolume)}: more shots, or larger ones.`);
  else if (easy !== undefined && driestWater < capacity - easy) note('caution', 'below-easily-available', 'driestTime', `At ${clock(driestTime)} the substrate has given up ${litres(capacity - driestWater)}, more than the ${litres(easy)} that are easily available: water sooner, by ${litres(capacity - easy - driestWater)} at least.`);
  noteTimes(shots, shotPlan, light, note);
  if (light && drainShare !== undefined) noteDrain(appliedVolume, drainShare, light.sums.at(-1)!, seen, note);
  if (firstDrainShot !== undefined && (firstDrainShot < firstDrainFrom || firstDrainShot > firstDrainTo)) note('info', 'first-drain', 'firstDrainShot', `The first drain comes with shot ${firstDrainShot}; ${firstDrainFrom} to ${firstDrainTo} is usual: ${firstDrainShot < firstDrainFrom ? 'smaller shots, or a drier start, put it off' : 'an earlier start, or larger shots in the morning, bring it on'}.`);
}

function noteTimes(shots: WorkedDay['result']['shots'], { shotTimes }: SeenDay['shotPlan'], light: RunningSum | undefined, note: AddNote): void {
  const late = shotTimes ? shots.filter(({ shotTime }, i) => shotTime > shotTimes.si[i]!).length : 0;
  if (late > 0) note('caution', 'shots-too-close', 'shotTimes', `Shots that start later than they are set, since the one before must end first: ${late} of ${shots.length}. Set them further apart.`);
  const lastLight = light ? light.rates.reduce((last, rate, i) => (rate > 0 ? i : last), -1) : -1;
  const evening = lastLight < 0 ? undefined : light!.times[lastLight + 1];
  const last = shots.at(-1)?.shotTime;
  if (evening !== undefined && last !== undefined && last > evening - dryEvening) note('caution', 'late-shot', 'shots', `The last shot comes at ${clock(last)}, and the light ends by ${clock(evening)}: stop 1 to 3 h before, so that roots have air in the night.`);
}

function noteDrain(appliedVolume: number, drainShare: number, radiationSum: number, { shotPlan }: SeenDay, note: AddNote): void {
  const unusual = towardsUsualDrain(drainShare, uptakeFromApplied(appliedVolume, drainShare), radiationSum);
  if (!unusual) return;
  const { usual: { lowest, highest }, towards, wanted } = unusual;
  const step = shotPlan.radiationStep === undefined ? '' : `, a shot every ${writeNumber((shotPlan.radiationStep * appliedVolume) / wanted / 1e4)} J/cm²`;
  note('info', 'unusual-drain', 'drainShare', `${percent(lowest)} to ${percent(highest)} drain is usual at ${writeNumber(radiationSum / 1e4)} J/cm²: about ${litres(wanted)} a plant instead of ${litres(appliedVolume)}${step}, would give ${percent(towards)}.`);
}
