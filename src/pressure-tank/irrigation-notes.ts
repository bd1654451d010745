/** What is to be said about an irrigation event from a pressure tank. */
import type { AddNote } from '../calculation/note.js';
import { writeNumber } from '../units/write.js';
import type { PumpPressurePoint } from './formulas/pump-flow.js';
import { leastFlow, pumpPhases, type PumpedTank, type PumpPhase, type SettledPressure } from './formulas/pumped-tank.js';
import { noteShortRun, noteStarts } from './start-notes.js';
import { setRight, shutOffBelowCutOut, switchBelow, usualBand, type HalfTheStarts } from './switch-advice.js';
import { inWords, litresPerMinute, tankOf } from './tank-notes.js';
import { gaugeError } from './tank.js';

/** A band between cut-in and cut-out that is narrow: 10 psi, Pa. Common practice, no source. */
const narrowBand = 68_900;

/** Points of a column for a cycle, below which it does not show. */
const pointsToACycle = 8;

/** A share of the time that is worth telling. */
const tellingShare = 0.001;

const percent = (share: number): string => `${writeNumber(Math.round(share * 1000) / 10)} %`;

/** Says so where the pump gives nothing at its cut-out, whatever is drawn now: with the valves shut it runs for ever. */
export function noteShutOff(tank: PumpedTank, note: AddNote): void {
  const shutOff = shutOffBelowCutOut(tank);
  if (shutOff === undefined) return;
  const better = switchBelow(shutOff, tank);
  const setting = better?.cutIn === undefined ? '' : ` and the cut-in to ${inWords(better.cutIn)} with a pre-charge of ${inWords(better.preCharge!)}`;
  const stronger = `take a pump that still gives water at ${inWords(tank.cutOut)}`;
  const remedy = better ? `Set the cut-out to ${inWords(better.cutOut)}${setting}, or ${stronger}.` : `No usual switch is that low: ${stronger}.`;
  note('danger', 'cut-out-not-reached', 'cutOut', `The pump gives nothing from ${inWords(shutOff)} on, ${shutOff < tank.cutIn ? `not even at its cut-in of ${inWords(tank.cutIn)}` : `below its cut-out of ${inWords(tank.cutOut)}`}: once nothing is drawn it never stops, and heats the water in it. ${remedy}`);
}

/** Says so where the pump never stops while this is drawn: it gives as much, or less. */
export function noteSettled({ pressure, demand }: SettledPressure, { cutIn, cutOut, pump, demand: drawn }: PumpedTank, note: AddNote): void {
  const [gives, draws] = [pump(cutIn), drawn(cutIn)];
  const share = gives > leastFlow ? `Let no more than ${percent(gives / draws)} of it run at a time, or take` : 'Take';
  if (pressure < cutIn - gaugeError) note('danger', 'demand-above-pump', 'demand', `At the cut-in ${litresPerMinute(draws)} are drawn and the pump gives ${gives > leastFlow ? litresPerMinute(gives) : 'nothing'}: the pressure sinks to ${inWords(pressure)}, below the cut-in, and the pump never stops. ${share} a pump that gives ${litresPerMinute(draws)} at ${inWords(cutIn)}.`);
  else if (demand > leastFlow && pump(cutOut) > leastFlow) note('caution', 'pump-runs-through', 'cutOut', `The pressure settles at ${inWords(pressure)}, below the cut-out of ${inWords(cutOut)}: the pump gives what is drawn there, ${litresPerMinute(demand)}, and never stops. That spares it starts; where it is to rest, set the cut-out below ${inWords(pressure)}.`);
}

/** How a pump cycles, and what would halve its starts. Times in s, rates in 1/s. */
interface Cycling {
  readonly runTime: number | undefined;
  /** The run once the pre-charge is set right, and the starts then. */
  readonly rightRunTime: number | undefined;
  readonly startsPerHour: number;
  readonly rightStartsPerHour: number;
  readonly better: HalfTheStarts;
}

/** Says so where runs are short, starts many or the band of the switch narrow, and what to set instead. */
export function noteCycling(
  { runTime = Infinity, rightRunTime = Infinity, startsPerHour, rightStartsPerHour, better }: Cycling,
  { tank, leastRunTime, motorPower }: { readonly tank: PumpedTank; readonly leastRunTime: number; readonly motorPower: number | undefined },
  note: AddNote,
): void {
  const { volume: tankVolume, preCharge, cutIn, cutOut } = tank;
  const right = setRight(tank);
  const isRight = right.preCharge === preCharge;
  noteShortRun(runTime, leastRunTime, { tankVolume, gain: rightRunTime / runTime }, note);
  if (motorPower !== undefined) noteStarts({ startsPerHour }, motorPower, { tankVolume, gain: startsPerHour / rightStartsPerHour }, note);
  if (cutOut - cutIn < narrowBand) {
    const { run } = pumpPhases({ ...right, cutOut: cutIn + usualBand });
    const then = run.settled ? ', but this pump does not reach that against what is drawn' : `: with that${isRight ? '' : ' and the pre-charge set right'} the pump runs ${writeNumber(run.duration)} s at a time`;
    note('caution', 'narrow-band', 'cutOut', `Cut-in and cut-out are ${inWords(cutOut - cutIn)} apart, less than most switches have; ${inWords(usualBand)} is usual${then}.`);
  }
  const ways = [
    better.cutOut !== undefined && `a cut-out of ${inWords(better.cutOut)}, if tank and pipes are rated for it`,
    better.cutIn !== undefined && `a cut-in of ${inWords(better.cutIn)} with a pre-charge of ${inWords(better.preCharge!)}`,
    tankOf(better.tankVolume),
  ].filter((way) => way !== false);
  const noOther = better.cutOut === undefined && better.cutIn === undefined ? '; neither cut-out nor cut-in alone would do it' : '';
  const once = isRight ? 'Half as many starts would come of' : 'Once the pre-charge is set right, half as many starts as then would come of';
  if (Math.max(runTime, rightRunTime) < leastRunTime) note('info', 'half-the-starts', 'halfTheStarts', `${once} ${ways.join(', or of ')}${noOther}.`);
}

/** Says for how much of an event the pressure is not as wanted, and what to set. */
export function noteWanted(
  event: { readonly settledPressure: number | undefined; readonly lowestTankPressure: number; readonly highestTankPressure: number; readonly timeBelowWanted: number | undefined; readonly timeAboveWanted: number | undefined },
  { duration, lowestWantedPressure = 0, highestWantedPressure = 0 }: { readonly duration: number; readonly lowestWantedPressure?: number | undefined; readonly highestWantedPressure?: number | undefined },
  note: AddNote,
): void {
  const { timeBelowWanted: below = 0, timeAboveWanted: above = 0, settledPressure = Infinity } = event;
  const remedy = settledPressure < lowestWantedPressure ? 'the pump cannot hold it, so let less run at a time' : `raise the cut-in to ${inWords(lowestWantedPressure)} and the pre-charge with it`;
  if (below > duration * tellingShare) note('caution', 'pressure-below-wanted', 'timeBelowWanted', `For ${percent(below / duration)} of the time the pressure is below the ${inWords(lowestWantedPressure)} that is wanted, at the least ${inWords(event.lowestTankPressure)}: ${remedy}.`);
  if (above > duration * tellingShare) note('info', 'pressure-above-wanted', 'timeAboveWanted', `For ${percent(above / duration)} of the time the pressure is above the ${inWords(highestWantedPressure)} that is wanted, at the most ${inWords(event.highestTankPressure)}: a pressure regulator before the zone holds it there.`);
}

/** Says so where the pump works outside the points of its curve. */
export function notePumpRange({ travel: { pressures }, settled }: PumpPhase, curve: readonly PumpPressurePoint[], note: AddNote): void {
  if (curve.length === 1) return;
  const worked = [pressures[0]!, settled?.pressure ?? pressures.at(-1)!];
  const [low, high] = [curve[0]!.pressure, curve.at(-1)!.pressure];
  if (Math.min(...worked) >= low - gaugeError && Math.max(...worked) <= high + gaugeError) return;
  note('caution', 'outside-pump-curve', 'pumpPoints', `The pump works from ${inWords(Math.min(...worked))} to ${inWords(Math.max(...worked))}, and its points go from ${inWords(low)} to ${inWords(high)}: outside them its flow is a guess.`);
}

/** Points of columns that show every cycle of an event; none are needed where it has no whole one. */
export const pointsForCycles = (duration: number, cycleTime = Infinity): number => (cycleTime < duration ? Math.ceil((pointsToACycle * duration) / cycleTime) + 1 : 0);

/** Says so where the columns have too few points to show the cycles. */
export function noteColumns(cycleTime: number, enough: number, note: AddNote): void {
  note('info', 'few-points', 'points', `The columns have fewer than ${pointsToACycle} points for a cycle of ${writeNumber(cycleTime)} s: ${enough} points, or a shorter event, would show each.`);
}
