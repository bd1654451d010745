import { lineFilling } from '../laterals/index.js';
import type { Quantity } from '../units/quantity.js';
import { writeNumber } from '../units/write.js';
import type { Assessor } from './attempt.js';
import { finding, findingsOf, within } from './finding.js';
import { litresPerMinute } from './measures.js';
import type { Driver } from './supply.js';
import { shotLength } from './zone-event.js';
import { openEndFlow, type ZonePlace, type ZoneWater } from './zone-water.js';

/** What a shot gives from a lateral that has run dry since the last one, and what runs out of it after, m³. Water comes as fast as its way, or without one the pump, lets it. */
export function fillingOf(place: ZonePlace, { inletPressure, zoneFlow }: ZoneWater, tankPressure: number | undefined, dailyRunTime: number, driver: Driver | undefined, { runQuietly, add }: Assessor) {
  const { zone: { name, lateral: described, laterals, shotsPerDay }, supply, waterTemperature } = place;
  const where = `${place.where}.shot`;
  const { meanEmitterFlow: _mean, manufacturingVariation: _variation, flushingVelocity: _flushing, ...pipe } = described;
  const comes = tankPressure === undefined ? undefined : supply.main ? openEndFlow(place, tankPressure, runQuietly) : driver?.flowAt(tankPressure);
  const inShots = (shots: number) => runQuietly(lineFilling, where, {
    ...pipe, inletPressure, waterTemperature, runTime: shotLength(dailyRunTime, shots),
    ...(comes !== undefined && comes > leastSurplus * zoneFlow && { supplyFlow: litresPerMinute(comes / laterals) }),
  });
  const filled = inShots(shotsPerDay);
  if (!filled) return undefined;
  const isShort = ({ notes }: typeof filled): boolean => notes.some(({ code }) => code === 'short-shot');
  const inOne = isShort(filled) && shotsPerDay > 1 ? inShots(1) : filled;
  if (isShort(filled) && inOne && isShort(inOne)) {
    // A shot long enough would be longer than all of the day.
    add(...findingsOf(lineFilling, where, filled.notes.filter(({ code }) => code !== 'short-shot')));
    add(finding(lineFilling, within(where, 'runTime'), 'caution', 'short-shot', `Filling and draining take ${inPercent(filled.uniformityTaken)} from the uniformity of ${name} in ${shotsPerDay} shots a day, and still ${inPercent(inOne.uniformityTaken)} in one: take anti-drain drippers, which keep the line full.`));
  } else add(...findingsOf(lineFilling, where, filled.notes));
  return { filled, drained: filled.drainVolumes?.si.reduce((sum, volume) => sum + volume, 0) ?? 0 };
}

const inPercent = (taken: Quantity<'share'> | undefined): string => `${writeNumber(Number(((taken?.si ?? 0) * 100).toPrecision(2)))} %`;

/** A line fills where so many times more comes than its emitters take. */
const leastSurplus = 1.02;
