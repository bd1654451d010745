/** What is to be said about how often and how long a pump runs. */
import type { AddNote } from '../calculation/note.js';
import { writeNumber } from '../units/write.js';
import { motorStartLimits } from './motor-starts.js';
import { tankOf } from './tank-notes.js';

/** Starts of a pump, 1/s: now, as a mean over a day, and at the demand that makes most of them. */
export interface Starts {
  readonly startsPerHour: number;
  readonly startsPerDay?: number | undefined;
  readonly mostStartsPerHour?: number | undefined;
}

/** A tank that lacks volume, m³, and how much longer its pump takes once the pre-charge is set right, in multiples of now; 1 where it is right. */
export interface SmallTank {
  readonly tankVolume: number;
  readonly gain: number;
}

/** The tank in whose stead the time that a pump takes is so many times longer. */
function longer(times: number, { tankVolume, gain }: SmallTank): string {
  if (gain === 1) return tankOf(tankVolume * times);
  return `with the pre-charge set right, ${times > gain ? tankOf((tankVolume * times) / gain) : 'this tank'}`;
}

/** Says so where the pump starts more often than its motor should: now, in a day, or at a worse demand; and the tank that would mend it. */
export function noteStarts({ startsPerHour, startsPerDay = 0, mostStartsPerHour = 0 }: Starts, motorPower: number, tank: SmallTank, note: AddNote): void {
  const limits = motorStartLimits.filter(({ above, upTo }) => motorPower > above && motorPower <= upTo);
  const perHour = Math.min(...limits.map(({ startsPerHour = Infinity }) => startsPerHour));
  const perDay = Math.min(...limits.map(({ startsPerDay = Infinity }) => startsPerDay));
  const [now, inADay, most] = [startsPerHour * 3600, startsPerDay * 86400, mostStartsPerHour * 3600];
  const mended = (starts: number, limit: number): string => `${longer(starts / limit, tank)} would keep to it`;
  if (now > perHour) note('caution', 'too-many-starts', 'startsPerHour', `While this is drawn the pump starts ${writeNumber(now)} times an hour, more than the ${perHour} that a motor of this power should: ${mended(now, perHour)}.`);
  else if (most > perHour) note('info', 'too-many-starts-at-worst', 'mostStartsPerHour', `At the worst demand the pump would start ${writeNumber(most)} times an hour, more than the ${perHour} that a motor of this power should: ${mended(most, perHour)}.`);
  if (inADay > perDay) note('caution', 'too-many-starts-a-day', 'startsPerDay', `${writeNumber(inADay)} starts a day are more than the ${perDay} that a motor of this power should make: ${mended(inADay, perDay)}.`);
}

/** Says so where the pump runs for less than it should at a stretch, and the tank that would mend it. */
export function noteShortRun(runTime: number, leastRunTime: number, tank: SmallTank, note: AddNote): void {
  if (runTime >= leastRunTime) return;
  note('caution', 'short-run', 'runTime', `The pump runs ${writeNumber(runTime)} s at a time, less than the ${writeNumber(leastRunTime)} s that it should: ${longer(leastRunTime / runTime, tank)} would do, or a wider switch, or a smaller pump.`);
}
