import * as output from '../calculation/output.js';
import { drippersToAPlant, runTime } from '../dosing/index.js';
import { lateral, lineFilling } from '../laterals/index.js';
import { irrigationCycle } from '../pressure-tank/index.js';
import { gutter } from '../supply/index.js';
import { quantity } from '../units/by-name.js';
import { flow, pressure, share, time, volume } from '../units/dimensions.js';
import { threeDigits } from '../units/in-words.js';
import { writeNumber } from '../units/write.js';
import type { QuantityInput } from '../units/quantity.js';
import type { Assessor } from './attempt.js';
import { finding, ownBasis, within } from './finding.js';
import { kilopascals, litresPerMinute, minutes } from './measures.js';
import type { Driver } from './supply.js';
import type { DescribedSupply, DescribedZone } from './water-fields.js';
import { dayOfZone, zoneDayOutputs, type LightOfDay } from './zone-day.js';
import { demandBetween, eventOf, shotLength } from './zone-event.js';
import { fillingOf } from './zone-shot.js';
import { waterAtInlet, waterFromTank, type WaterOnItsWay, type ZonePlace, type ZoneWater } from './zone-water.js';

/** A flow that grows with more than this power of the pressure in the tank is worth a word: a tenth between usual switch points. Common practice, no source. */
const leastFollowing = 0.25;

/** Plants with fewer drippers than this go without. */
const fewestDrippers = 0.999;

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
    dailyDrain: output.quantity(volume, 'L'),
    gutter: output.optional(output.group(output.passedOn({ waterDepth, fillShare, mostFlow }))),
    irrigation: output.optional(output.group(zoneDayOutputs())),
  });
}

/** What the zones have in common. */
export interface Common {
  readonly supply: DescribedSupply;
  readonly driver: Driver | undefined;
  readonly waterTemperature: QuantityInput<'temperature'>;
  readonly light: LightOfDay | undefined;
}

/**
 * A zone by its laterals, its dose and its pump. Run time allows for the design emission uniformity where the variation of the emitters is known, and
 * for the evenness of the pipe alone where it is not.
 */
export function assessZone(zone: DescribedZone, where: string, { supply, driver, waterTemperature, light }: Common, assessor: Assessor) {
  const { name, plants, shotsPerDay, laterals, volumePerPlant } = zone;
  const drippers = laterals * outletsOf(zone);
  const drippersPerPlant = drippersToAPlant(drippers, plants);
  if (drippersPerPlant < fewestDrippers) {
    assessor.add(finding(ownBasis, `${where}.plants`, 'danger', 'plants-without-dripper', `${name} has ${plants} plants and ${drippers} drippers: ${plants - drippers} plants get nothing. Add as many drippers.`));
  }
  const place: ZonePlace = { zone, where, supply, waterTemperature, emittersPerPlant: Math.max(1, drippersPerPlant) };
  const found = supply.main ? fromTank(place, driver, drippersPerPlant, assessor) : atInlet(place, driver, drippersPerPlant, assessor);
  if (!found) return undefined;
  const { water, dose, event } = found;
  const shot = zone.drainsBetweenShots ? fillingOf(place, water, event?.meanPressure.si ?? driver?.cutIn, dose.runTime.si, driver, assessor) : undefined;
  const irrigation = zone.rootZone && light && dayOfZone({
    name, where, rootZone: zone.rootZone, plants, volumePerPlant, appliedVolume: dose.appliedVolume, shotsPerDay, dripperFlow: water.meanFlow, drippersPerPlant, fillTime: shot?.filled.fillTime,
  }, light, assessor);
  // Where a plan says when shots come, it says what is given too.
  const shots = irrigation?.shotsPerDay ?? shotsPerDay;
  const given = irrigation?.appliedVolume ?? dose.appliedVolume;
  const drainFlow = water.zoneFlow * (irrigation?.drainShare ?? dose.meanDrainShare).si;
  const drain = zone.gutter && drainFlow > 0 ? assessor.run(gutter, `${where}.gutter`, { ...zone.gutter, flow: litresPerMinute(drainFlow) }) : undefined;
  // What runs out of the laterals after each shot is given too.
  const drained = shot?.drained ?? 0;
  const dailyVolume = plants * given.si + drained * laterals * shots;
  if (drained > 0) {
    assessor.add(finding(ownBasis, `${where}.drainsBetweenShots`, 'caution', 'laterals-drain', `After each shot ${writeNumber(threeDigits(drained * laterals * 1000))} L run out of the laterals of ${name}, ${writeNumber(Number(((drained * laterals * shots * 100) / dailyVolume).toPrecision(2)))} % of what the zone takes in a day, and most of it at the low end: anti-drain drippers keep it in, fewer shots make less of it.`));
  }
  return {
    ...water,
    name, plants,
    volumePerPlant: quantity(volumePerPlant, 'volume'),
    appliedVolume: given,
    runTime: minutes((dose.runTime.si / shotsPerDay) * shots),
    runTimePerShot: dose.runTime.si / shotsPerDay,
    dailyVolume,
    atCutIn: found.atCutIn, atCutOut: found.atCutOut,
    pump: event && { ...event, pumpRunTime: event.runTime, pumpRestTime: event.restTime },
    event, where,
    shot: shot?.filled, drainFlow,
    dailyDrain: plants * (irrigation ? irrigation.drainPerPlant.si : Math.max(0, given.si - quantity(volumePerPlant, 'volume').si)),
    gutter: drain,
    irrigation,
  };
}

/** Outlets of a lateral with all its reaches. */
const outletsOf = ({ lateral: { outlets, furtherReaches = [] } }: DescribedZone): number =>
  furtherReaches.reduce((sum, reach) => sum + reach.outlets, outlets);

/** Of a zone whose drippers give less than this, as a uniformity and in m³/s, nobody can say how long it has to run. */
const [leastUniformity, leastEmitted] = [0.05, 1e-12];

/** How long a zone waters, at what its laterals give. */
function doseOf({ zone: { name, volumePerPlant, drainShare }, where }: ZonePlace, { meanFlow, uniformity }: ZoneWater, drippersPerPlant: number, { run, add }: Pick<Assessor, 'run' | 'add'>) {
  if (uniformity.si < leastUniformity || meanFlow.si < leastEmitted) {
    add(finding(ownBasis, where, 'danger', 'not-watered', `Some plants of ${name} get next to nothing of its water, so no run time would do: see to the pressure first.`));
    return undefined;
  }
  return run(runTime, where, { volumePerPlant, drainShare, dripperFlow: meanFlow, drippersPerPlant, uniformity });
}

/** A zone whose laterals get a pressure that is given. */
function atInlet(place: ZonePlace, driver: Driver | undefined, drippersPerPlant: number, assessor: Assessor) {
  const { zone: { name, shotsPerDay }, where } = place;
  const water = waterAtInlet(place, assessor);
  const dose = water && doseOf(place, water, drippersPerPlant, assessor);
  if (!dose) return undefined;
  if (driver && water.inletPressure.si > driver.cutIn) {
    assessor.add(finding(ownBasis, where, 'danger', 'inlet-above-cut-in', `The laterals of ${name} are to get ${String(water.inletPressure)}, which is more than the cut-in of the pump: the pressure will not be there. Regulate it lower, or move the switch.`));
  }
  const event = driver && eventOf(where, driver, { flow: water.zoneFlow, wanted: water.inletPressure.si }, shotLength(dose.runTime.si, shotsPerDay), assessor);
  return { water, dose, event, atCutIn: undefined, atCutOut: undefined };
}

/**
 * A zone that gets what the tank has, less what is lost on the way. Its flow at cut-in and cut-out makes the law of its demand; the pump then goes
 * through a shot, and the mean pressure of that is what the plants are watered with. Where the pump does not hold the cut-in, the law is drawn again
 * from where the pressure settles.
 */
function fromTank(place: ZonePlace, driver: Driver | undefined, drippersPerPlant: number, assessor: Assessor) {
  if (!driver) return undefined;
  const { cutIn, cutOut } = driver;
  const { zone: { shotsPerDay }, where } = place;
  const at = (tankPressure: number, run = assessor.runQuietly, path = 'atMeanPressure') => waterFromTank(place, tankPressure, run, path);
  const atCutIn = at(cutIn, assessor.run, 'atCutIn');
  const atCutOut = atCutIn && at(cutOut, assessor.runQuietly, 'atCutOut');
  const firstDose = atCutOut && doseOf(place, atCutIn, drippersPerPlant, { ...assessor, run: assessor.runQuietly });
  if (!firstDose) return undefined;
  const duration = shotLength(firstDose.runTime.si, shotsPerDay);
  const wanted = atCutIn.neededPressure ?? cutIn;
  const upper = { pressure: cutIn, flow: atCutIn.zoneFlow };
  let event = eventOf(where, driver, demandBetween(upper, { pressure: cutOut, flow: atCutOut.zoneFlow }, wanted), duration, assessor);
  for (let turn = 0; turn < turnsBelowCutIn && event?.settledPressure && event.settledPressure.si < cutIn; turn++) {
    const pressure = Math.max(event.settledPressure.si, cutIn / 10);
    const flow = at(pressure)?.zoneFlow;
    if (!flow) break;
    event = eventOf(where, driver, demandBetween({ pressure, flow }, upper, wanted), duration, assessor);
  }
  addFollowing(place, atCutIn, atCutOut, driver, assessor);
  const water = event ? at(event.meanPressure.si) : atCutIn;
  const dose = water && doseOf(place, water, drippersPerPlant, assessor);
  if (dose) addFlushing(place, water, assessor);
  return dose && { water, dose, event, atCutIn, atCutOut };
}

/** Says what `lateral` does of flushing, where that is asked for. */
function addFlushing({ zone: { lateral: described }, where, waterTemperature }: ZonePlace, { inletPressure }: ZoneWater, { run }: Assessor): void {
  if (described.flushingVelocity !== undefined) run(lateral, `${where}.lateral`, { ...described, inletPressure, waterTemperature });
}

/** So often the demand of a zone below the cut-in is drawn anew. */
const turnsBelowCutIn = 3;

/** Says so where the flow of a zone without a regulator goes with the pressure of the tank, and what a regulator would be set to: what its drippers are stated at, and what is lost on the way to them. */
function addFollowing({ zone: { name, branch, lateral: { emitterPressure } }, where }: ZonePlace, atCutIn: WaterOnItsWay, atCutOut: ZoneWater, { cutIn, cutOut }: Driver, { add }: Assessor): void {
  if (branch?.setPressure || Math.log(atCutOut.zoneFlow / atCutIn.zoneFlow) / Math.log(cutOut / cutIn) <= leastFollowing) return;
  const lost = Math.max(0, atCutIn.branchPressure - atCutIn.endPressure.si);
  const setting = Math.min(Math.ceil((quantity(emitterPressure, 'pressure').si + lost) / 5000) * 5000, 0.9 * atCutIn.branchPressure);
  add(finding(ownBasis, within(where, 'zoneFlow'), 'caution', 'flow-follows-tank', `${name} gives ${String(litresPerMinute(atCutIn.zoneFlow))} at the cut-in and ${String(litresPerMinute(atCutOut.zoneFlow))} at the cut-out of the pump: a pressure regulator at its valve, set to about ${String(kilopascals(setting))}, makes it even.`));
}
