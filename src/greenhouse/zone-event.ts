/** The pump while a zone is watered: one shot from the tank, and what there is to say of it. */
import type { ResultOf } from '../calculation/calculation.js';
import type { WrittenFields } from '../calculation/field-types.js';
import { irrigationCycle } from '../pressure-tank/index.js';
import type { Assessor } from './attempt.js';
import { findingsOf, within } from './finding.js';
import { kilopascals, litresPerMinute, seconds } from './measures.js';
import type { Driver } from './supply.js';

/** The longest that a shot can be, and the shortest that a pump is followed through, s. */
const [longestShot, shortestShot] = [86_400, 1];

/** Length of a shot as calculations take it. */
export const shotLength = (dailyRunTime: number, shotsPerDay: number) => seconds(Math.min(longestShot, Math.max(shortestShot, dailyRunTime / shotsPerDay)));

/** What a zone draws: q = q0 (p/p0)^x, with the pressure p of the tank, and the pressure that it wants there, Pa; m³/s. */
export interface Demand {
  readonly flow: number;
  readonly pressure?: number;
  readonly exponent?: number;
  readonly wanted: number;
}

/** The law through what a zone draws at two pressures of the tank. */
export function demandBetween(low: { readonly pressure: number; readonly flow: number }, high: { readonly pressure: number; readonly flow: number }, wanted: number): Demand {
  const exponent = Math.log(high.flow / low.flow) / Math.log(high.pressure / low.pressure);
  return { ...low, exponent: Math.min(1, Math.max(0, exponent)), wanted };
}

export type Event = ResultOf<typeof irrigationCycle.outputs>;

/** One shot from the tank; what there is to say of it is said when all zones are known. */
export function eventOf(where: string, { event }: Driver, { flow, pressure, exponent, wanted }: Demand, duration: WrittenFields<typeof irrigationCycle.inputs>['duration'], { runQuietly }: Assessor): Event | undefined {
  const law = pressure === undefined ? {} : { demandPressure: kilopascals(pressure), demandExponent: exponent };
  return runQuietly(irrigationCycle, `${where}.pump`, { ...event, demand: litresPerMinute(flow), ...law, lowestWantedPressure: kilopascals(wanted), duration });
}

/**
 * What there is to say of the events: of all of them what is dangerous, the rest of the one with the most starts an hour, whose remedies mend
 * the others.
 */
export function addEventFindings(zones: readonly { readonly where: string; readonly event: Event | undefined }[], { add }: Assessor): void {
  const events = zones.flatMap(({ where, event }) => (event ? { where, event } : []));
  const most = events.reduce((starts, { event }) => Math.max(starts, event.startsPerHour.si), 0);
  const busiest = events.find(({ event }) => event.startsPerHour.si === most);
  for (const one of events) {
    const notes = one === busiest ? one.event.notes : one.event.notes.filter(({ severity }) => severity === 'danger');
    add(...findingsOf(irrigationCycle, within(one.where, 'pump'), notes));
  }
}
