import type { ResultOf } from '../calculation/calculation.js';
import type { WrittenFields } from '../calculation/field-types.js';
import * as output from '../calculation/output.js';
import { drippersToAPlant, runTime } from '../dosing/index.js';
import { lateral, lineFilling } from '../laterals/index.js';
import { irrigationCycle } from '../pressure-tank/index.js';
import { gutter } from '../supply/index.js';
import { quantity } from '../units/by-name.js';
import { flow, pressure, share, time, volume } from '../units/dimensions.js';
import { quantityFromSI, unitOf, type Quantity, type QuantityInput } from '../units/quantity.js';
import type { Assessor } from './attempt.js';
import { finding, findingsOf, within } from './finding.js';
import type { Driver } from './supply.js';
import type { DescribedSupply, DescribedZone } from './water-fields.js';
import { waterAtInlet, waterFromTank, type ZonePlace, type ZoneWater } from './zone-water.js';

/** The longest that a shot can be, and the shortest that a pump is followed through, s. */
const [longestShot, shortestShot] = [86_400, 1];

/** A flow that grows with more than this power of the pressure in the tank is worth a word: a tenth between usual switch points. Common practice, no source. */
const leastFollowing = 0.25;

/** A zone at one pressure of the tank. */
const atPressure = () => output.optional(output.group({
  zoneFlow: output.quantity(flow, 'L/min'),
  ...output.passedOn({ endPressure: output.quantity(pressure, 'kPa'), lowQuarterUniformity: output.quantity(share, '%') }),
}));

/** How long a zone runs, what its plants get, what its laterals do, and how the pump goes meanwhile. */
export function zoneOutputs() {
  const { inletPressure, endPressure, meanFlow, flowVariation, lowQuarterUniformity } = lateral.outputs;
  const { startsPerHour, runTime: pumpRunTime, restTime: pumpRestTime, starts, meanPressure, pressureSwing, settledPressure, tankForLeastRun } = irrigationCycle.outputs;
  const { fillTime, lineVolume, firstEmitterVolume, lastEmitterVolume, shotUniformity } = lineFilling.outputs;
  const { waterDepth, fillShare, mostFlow } = gutter.outputs;
  return output.group({
    name: output.text(),
    ...output.passedOn({ volumePerPlant: output.quantity(volume, 'L'), appliedVolume: runTime.outputs.appliedVolume, runTime: runTime.outputs.runTime }),
    runTimePerShot: output.quantity(time, 'min'),
    dailyVolume: output.quantity(volume, 'L'),
    zoneFlow: output.quantity(flow, 'L/min'),
    ...output.passedOn({ inletPressure, endPressure, meanFlow, flowVariation, lowQuarterUniformity, uniformity: output.quantity(share, '%') }),
    atCutIn: atPressure(),
    atCutOut: atPressure(),
    pump: output.optional(output.group(output.passedOn({ startsPerHour, pumpRunTime, pumpRestTime, starts, meanPressure, pressureSwing, settledPressure, tankForLeastRun }))),
    shot: output.optional(output.group(output.passedOn({ fillTime, lineVolume, firstEmitterVolume, lastEmitterVolume, shotUniformity }))),
    drainFlow: output.quantity(flow, 'L/min'),
    gutter: output.optional(output.group(output.passedOn({ waterDepth, fillShare, mostFlow }))),
  });
}

/** What the zones have in common. */
export interface Common {
  readonly supply: DescribedSupply;
  readonly driver: Driver | undefined;
  readonly waterTemperature: QuantityInput<'temperature'>;
}

/**
 * A zone by its laterals, its dose and its pump. Run time allows for the design emission uniformity where the variation of the emitters is known, and
 * for the evenness of the pipe alone where it is not.
 */
export function assessZone(zone: DescribedZone, where: string, { supply, driver, waterTemperature }: Common, assessor: Assessor) {
  const { name, plants, shotsPerDay, laterals, volumePerPlant } = zone;
  const drippersPerPlant = drippersToAPlant(laterals * zone.lateral.outlets, plants);
  const place: ZonePlace = { zone, where, supply, waterTemperature, emittersPerPlant: Math.max(1, drippersPerPlant) };
  const found = supply.main ? fromTank(place, driver, drippersPerPlant, assessor) : atInlet(place, driver, drippersPerPlant, assessor);
  if (!found) return undefined;
  const { water, dose, event } = found;
  const runTimePerShot = dose.runTime.si / shotsPerDay;
  const shot = zone.drainsBetweenShots ? fillingOf(place, water, runTimePerShot, assessor) : undefined;
  const drainFlow = water.zoneFlow * dose.meanDrainShare.si;
  const drain = zone.gutter && drainFlow > 0 ? assessor.run(gutter, `${where}.gutter`, { ...zone.gutter, flow: litresPerMinute(drainFlow) }) : undefined;
  return {
    ...water,
    name,
    volumePerPlant: quantity(volumePerPlant, 'volume'),
    appliedVolume: dose.appliedVolume,
    runTime: dose.runTime,
    runTimePerShot,
    dailyVolume: plants * dose.appliedVolume.si,
    atCutIn: found.atCutIn, atCutOut: found.atCutOut,
    pump: event && { ...event, pumpRunTime: event.runTime, pumpRestTime: event.restTime },
    event, where,
    shot, drainFlow,
    gutter: drain,
  };
}

const litresPerMinute = (si: number): Quantity<'flow'> => quantityFromSI(flow, si, unitOf(flow, 'L/min'));
const pascals = (si: number): Quantity<'pressure'> => quantityFromSI(pressure, si, unitOf(pressure, 'kPa'));
const seconds = (si: number): Quantity<'time'> => quantityFromSI(time, si, unitOf(time, 's'));

/** How long a zone waters, at what its laterals give. */
const doseOf = ({ zone: { volumePerPlant, drainShare }, where }: ZonePlace, { meanFlow, uniformity }: ZoneWater, drippersPerPlant: number, run: Assessor['run']) =>
  run(runTime, where, { volumePerPlant, drainShare, dripperFlow: meanFlow, drippersPerPlant, uniformity });

type Demand = Pick<WrittenFields<typeof irrigationCycle.inputs>, 'demand' | 'demandPressure' | 'demandExponent' | 'lowestWantedPressure'>;

/** One shot from the tank; what there is to say of it is said of the zone with the most starts, when all are known. */
function eventOf({ zone: { shotsPerDay }, where }: ZonePlace, driver: Driver | undefined, demand: Demand, dailyRunTime: number, { runQuietly }: Assessor) {
  const duration = Math.min(longestShot, Math.max(shortestShot, dailyRunTime / shotsPerDay));
  return driver && runQuietly(irrigationCycle, `${where}.pump`, { ...driver.event, ...demand, duration: seconds(duration) });
}

/**
 * What there is to say of the events: of all of them what is dangerous, the rest of the one with the most starts an hour, whose remedies mend
 * the others.
 */
export function addEventFindings(zones: readonly { readonly where: string; readonly event: ResultOf<typeof irrigationCycle.outputs> | undefined }[], { add }: Assessor): void {
  const events = zones.flatMap(({ where, event }) => (event ? { where, event } : []));
  const most = events.reduce((starts, { event }) => Math.max(starts, event.startsPerHour.si), 0);
  const busiest = events.find(({ event }) => event.startsPerHour.si === most);
  for (const one of events) {
    const notes = one === busiest ? one.event.notes : one.event.notes.filter(({ severity }) => severity === 'danger');
    add(...findingsOf(irrigationCycle, within(one.where, 'pump'), notes));
  }
}

/** A zone whose laterals get a pressure that is given. */
function atInlet(place: ZonePlace, driver: Driver | undefined, drippersPerPlant: number, assessor: Assessor) {
  const water = waterAtInlet(place, assessor);
  const dose = water && doseOf(place, water, drippersPerPlant, assessor.run);
  if (!dose) return undefined;
  if (driver && water.inletPressure.si > driver.cutIn) {
    assessor.add(finding({ id: 'assessGreenhouse', sources: ['definition'] }, place.where, 'danger', 'inlet-above-cut-in', `The laterals of ${place.zone.name} are to get ${String(water.inletPressure)}, which is more than the cut-in of the pump: the pressure will not be there. Regulate it lower, or move the switch.`));
  }
  const event = eventOf(place, driver, { demand: litresPerMinute(water.zoneFlow), lowestWantedPressure: water.inletPressure }, dose.runTime.si, assessor);
  return { water, dose, event, atCutIn: undefined, atCutOut: undefined };
}

/**
 * A zone that gets what the tank has, less what is lost on the way. Its flow at cut-in and cut-out makes the law of its demand; the pump then goes
 * through a shot, and the mean pressure of that is what the plants are watered with.
 */
function fromTank(place: ZonePlace, driver: Driver | undefined, drippersPerPlant: number, assessor: Assessor) {
  if (!driver) return undefined;
  const { cutIn, cutOut } = driver;
  const atCutIn = waterFromTank(place, cutIn, assessor.run, 'atCutIn');
  const atCutOut = atCutIn && waterFromTank(place, cutOut, assessor.runQuietly, 'atCutOut');
  const firstDose = atCutOut && doseOf(place, atCutIn, drippersPerPlant, assessor.runQuietly);
  if (!firstDose) return undefined;
  const exponent = Math.log(atCutOut.zoneFlow / atCutIn.zoneFlow) / Math.log(cutOut / cutIn);
  const demand = { demand: litresPerMinute(atCutIn.zoneFlow), demandPressure: driver.event.cutIn, demandExponent: Math.min(1, Math.max(0, exponent)), lowestWantedPressure: pascals(atCutIn.neededPressure ?? cutIn) };
  if (exponent > leastFollowing) {
    const kept = pascals(Math.floor(atCutIn.inletPressure.si / 5000) * 5000);
    assessor.add(finding({ id: 'assessGreenhouse', sources: ['definition'] }, within(place.where, 'zoneFlow'), 'caution', 'flow-follows-tank', `${place.zone.name} gives ${String(litresPerMinute(atCutIn.zoneFlow))} at the cut-in and ${String(litresPerMinute(atCutOut.zoneFlow))} at the cut-out of the pump: a pressure regulator at its valve, set to ${String(kept)} or less, makes it even.`));
  }
  const event = eventOf(place, driver, demand, firstDose.runTime.si, assessor);
  const water = event ? waterFromTank(place, event.meanPressure.si, assessor.runQuietly, 'atMeanPressure') : atCutIn;
  const dose = water && doseOf(place, water, drippersPerPlant, assessor.run);
  return dose && { water, dose, event, atCutIn, atCutOut };
}

/** What a shot gives from a lateral that has run dry since the last one. */
function fillingOf({ zone: { lateral: described }, where, waterTemperature }: ZonePlace, { inletPressure }: ZoneWater, duration: number, { run }: Assessor) {
  const { meanEmitterFlow: _mean, manufacturingVariation: _variation, flushingVelocity: _flushing, ...pipe } = described;
  return run(lineFilling, `${where}.shot`, { ...pipe, inletPressure, waterTemperature, runTime: seconds(Math.min(longestShot, Math.max(shortestShot, duration))) });
}
