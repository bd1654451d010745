/** The barrel through the days: how long it lasts, and when the next is mixed so that it is warm when it is wanted. */
import type { WrittenFields } from '../calculation/field-types.js';
import * as output from '../calculation/output.js';
import { barrelPlan } from '../dosing/index.js';
import { barrelWarmUp } from '../heat/index.js';
import { quantity } from '../units/by-name.js';
import { time, volume } from '../units/dimensions.js';
import type { QuantityInput } from '../units/quantity.js';
import type { Assessor } from './attempt.js';
import { finding, ownBasis } from './finding.js';
import { columnOf, degrees, hours } from './measures.js';

/** What warms a barrel, and who mixes it when. */
export function barrelFields() {
  const { wantedTemperature, highestAirTemperature, lowestAirTemperature, timeOfHighest, barrelDiameter, wallMaterial, wallThickness, insulationThickness, barrelHeatTransfer, heaterPower } = barrelWarmUp.inputs;
  const { reserveShare, barrels, standTime, workFrom, workUntil } = barrelPlan.inputs;
  return {
    wantedTemperature, highestAirTemperature, lowestAirTemperature, timeOfHighest, barrelDiameter, wallMaterial, wallThickness, insulationThickness, barrelHeatTransfer, heaterPower,
    reserveShare, barrels, standTime, workFrom, workUntil,
  };
}

/** How the barrel warms, and the plan of the barrels that follow. */
export function barrelDayOutputs() {
  const { timeToReach, timeConstant, endTemperature, times, waterTemperatures } = barrelWarmUp.outputs;
  const { usedUpAfter, fills, timeWithoutFeed } = barrelPlan.outputs;
  return {
    warmUp: output.optional(output.group(output.passedOn({ timeToReach, timeConstant, endTemperature, times, waterTemperatures }))),
    barrelPlan: output.optional(output.group(output.passedOn({ usedUpAfter, fills, timeWithoutFeed }))),
  };
}

export type DescribedBarrel = WrittenFields<ReturnType<typeof barrelFields>> & { readonly volume: QuantityInput<'volume'>; readonly pH?: number | undefined };

/** A zone's share in what the barrel gives: m³ a day, and where its day is known, how that goes through it. */
export interface ZoneUse {
  readonly dailyVolume: number;
  readonly irrigation: { readonly readingTime: { readonly si: Float64Array }; readonly givenVolumes: { readonly si: Float64Array } } | undefined;
}

/** Coldest and warmest that the air in the house is, K. */
export interface AirSwing {
  readonly lowestAirTemperature: number;
  readonly highestAirTemperature: number;
}

/** How the barrel warms where it is wanted warmer than the water that it is mixed from, and from that the plan; none where it does not get there. */
export function assessBarrel(described: DescribedBarrel, zones: readonly ZoneUse[], swing: AirSwing | undefined, waterTemperature: QuantityInput<'temperature'>, assessor: Assessor) {
  const { volume: barrelVolume, reserveShare, barrels, standTime, workFrom, workUntil } = described;
  const warmUp = slowestWarmUp(described, swing, waterTemperature, assessor);
  if (warmUp === 'unknown' || (warmUp && !warmUp.timeToReach)) return { warmUp: warmUp === 'unknown' ? undefined : warmUp, barrelPlan: undefined };
  const plan = assessor.run(barrelPlan, 'barrel', {
    barrelVolume, reserveShare, barrels, standTime, workFrom, workUntil, warmUpTime: warmUp?.timeToReach,
    zones: zones.map(({ dailyVolume }) => ({ dailyVolumes: columnOf(volume, 'L', Float64Array.of(dailyVolume)) })),
    dayUse: useThroughDay(zones),
  });
  return { warmUp, barrelPlan: plan };
}

/** The warming of a barrel that takes longest of those mixed in the hours of work; 'unknown' where nothing is known of the air around it. */
function slowestWarmUp({ volume: barrelVolume, pH: _pH, reserveShare: _reserve, barrels: _barrels, standTime: _stand, workFrom = '7 h', workUntil = '20 h', ...warming }: DescribedBarrel, swing: AirSwing | undefined, waterTemperature: QuantityInput<'temperature'>, { run, runQuietly, add }: Assessor) {
  const { wantedTemperature } = warming;
  if (wantedTemperature === undefined || quantity(wantedTemperature, 'temperature').si <= quantity(waterTemperature, 'temperature').si) return undefined;
  const isAirKnown = (warming.highestAirTemperature ?? warming.lowestAirTemperature) !== undefined;
  if (!isAirKnown && !swing) {
    add(finding(ownBasis, 'barrel.wantedTemperature', 'caution', 'air-not-known', 'How long a barrel takes to warm, and so when to mix it, cannot be said without the air around it: give highestAirTemperature and lowestAirTemperature in the barrel, or a logger.'));
    return 'unknown';
  }
  const air = isAirKnown ? {} : { lowestAirTemperature: degrees(swing!.lowestAirTemperature), highestAirTemperature: degrees(swing!.highestAirTemperature) };
  const input = (hour: number) => ({ ...warming, ...air, barrelVolume, waterTemperature, startTime: hours(hour) });
  const [from, until] = [workFrom, workUntil].map((moment) => quantity(moment, 'time').in('h')) as [number, number];
  let [slowest, longest] = [from, 0];
  for (let hour = from; hour <= until; hour++) {
    const seen = runQuietly(barrelWarmUp, 'barrel', input(hour));
    if (!seen) return 'unknown';
    const takes = seen.timeToReach?.si ?? Infinity;
    if (takes > longest) [slowest, longest] = [hour, takes];
    if (longest === Infinity) break;
  }
  return run(barrelWarmUp, 'barrel', input(slowest)) ?? 'unknown';
}

/** What all zones together have been given, moment by moment; nothing where the day of one is not known. */
function useThroughDay(zones: readonly ZoneUse[]) {
  const courses = zones.flatMap(({ dailyVolume, irrigation }) => {
    const given = irrigation?.givenVolumes.si.at(-1) ?? 0;
    return irrigation && given > 0 ? [{ times: irrigation.readingTime.si, sums: irrigation.givenVolumes.si.map((sum) => (sum / given) * dailyVolume) }] : [];
  });
  if (courses.length === 0 || courses.length < zones.length) return undefined;
  const moments = Float64Array.from(new Set(courses.flatMap(({ times }) => [...times]))).sort();
  const together = new Float64Array(moments.length);
  for (const { times, sums } of courses) {
    let i = 1;
    moments.forEach((moment, row) => {
      while (i < times.length - 1 && times[i]! < moment) i++;
      const part = Math.min(1, Math.max(0, (moment - times[i - 1]!) / (times[i]! - times[i - 1]!)));
      together[row]! += sums[i - 1]! + part * (sums[i]! - sums[i - 1]!);
    });
  }
  return { readingTime: columnOf(time, 'h', moments), givenVolumes: columnOf(volume, 'L', together) };
}
