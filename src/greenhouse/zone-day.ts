/** The day of a zone: when its shots come, what its substrate holds meanwhile, what drains. */
import type { ResultOf } from '../calculation/calculation.js';
import type { WrittenFields } from '../calculation/field-types.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { runningSum, timeOfSum, type RunningSum } from '../dosing/formulas/running-sum.js';
import { evaporatedShareOfRadiation, irrigationDay, transpirationByRadiationSum } from '../dosing/index.js';
import { radiationThroughDay } from '../light/index.js';
import { quantity } from '../units/by-name.js';
import { evaporationRate, time } from '../units/dimensions.js';
import type { Column } from '../units/column.js';
import { litres as inLitres, threeDigits } from '../units/in-words.js';
import type { Quantity, QuantityInput } from '../units/quantity.js';
import type { Assessor } from './attempt.js';
import { finding, ownBasis } from './finding.js';
import { columnOf, litres } from './measures.js';

/** Where the garden lies to the sun, and what the sun brings in a usual day of the season. */
export function sunFields() {
  const { latitude, dayOfYear, radiationSum, solarNoon } = radiationThroughDay.inputs;
  return { latitude, dayOfYear, radiationSum, solarNoon };
}

/** What the plants of a zone stand in, and when their shots come where that is not left to their thirst. */
export function rootZoneFields() {
  const { plantDensity, substrateVolume, substrate, waterHoldingShare, easilyAvailableShare, startingShare, shotPlan } = irrigationDay.inputs;
  return { plantDensity, substrateVolume, substrate, waterHoldingShare, easilyAvailableShare, startingShare, shotPlan: field.optional(shotPlan) };
}

/** What comes of the day of a zone. */
export function zoneDayOutputs() {
  const { shots, shotsPerDay, runTimePerShot, drainShare, firstDrainShot, driestTime, driestWater, readingTime, givenVolumes, uptakeVolumes, drainedVolumes, waterVolumes } = irrigationDay.outputs;
  return output.passedOn({ shots, shotsPerDay, runTimePerShot, drainShare, firstDrainShot, driestTime, driestWater, readingTime, givenVolumes, uptakeVolumes, drainedVolumes, waterVolumes });
}

export type DescribedSun = WrittenFields<ReturnType<typeof sunFields>>;
export type DescribedRootZone = WrittenFields<ReturnType<typeof rootZoneFields>>;

/** The light of a day: its moments, W/m² at each, and what it adds up to in straight lines between them, J/m². */
export interface LightOfDay {
  readonly readingTime: Column<'time'>;
  readonly globalRadiation: Column<'irradiance'>;
  readonly sum: number;
  readonly course: RunningSum;
}

/** How the light of a usual day goes. */
export function lightOfDay(sun: DescribedSun, { run }: Assessor): LightOfDay | undefined {
  const seen = run(radiationThroughDay, 'sun', { ...sun, stepLength: '15 min' });
  if (!seen) return undefined;
  const { readingTime, globalRadiation } = seen;
  const course = runningSum(readingTime.si, globalRadiation.si);
  return { readingTime, globalRadiation, sum: course.sums.at(-1)!, course };
}

/** What a zone is watered with and how. */
export interface ZoneDose {
  readonly name: string;
  readonly where: string;
  readonly rootZone: DescribedRootZone;
  readonly plants: number;
  readonly volumePerPlant: QuantityInput<'volume'>;
  readonly appliedVolume: Quantity<'volume'>;
  readonly shotsPerDay: number;
  readonly dripperFlow: Quantity<'flow'>;
  readonly drippersPerPlant: number;
  readonly fillTime: Quantity<'time'> | undefined;
}

/**
 * A day of a zone whose plants take up their volume as the light comes. Unless a plan says otherwise, the shots come when half a shot's worth of it is
 * taken up, then one and a half, and so on; and unless it is told, the substrate begins the day as it ends it.
 */
export function dayOfZone({ name, where, rootZone, plants, volumePerPlant, appliedVolume, shotsPerDay, dripperFlow, drippersPerPlant, fillTime }: ZoneDose, light: LightOfDay, assessor: Assessor): ResultOf<typeof irrigationDay.outputs> | undefined {
  if (light.sum <= 0) {
    assessor.add(finding(ownBasis, 'sun.radiationSum', 'caution', 'no-light', 'Without light plants take up next to nothing, and there is no course of a day: give the radiation of a usual day.'));
    return undefined;
  }
  const { plantDensity, shotPlan, startingShare, ...substrate } = rootZone;
  const taken = quantity(volumePerPlant, 'volume').si;
  const { run, runQuietly } = assessor;
  judgeUptake(name, where, taken * plantDensity, plantDensity, light, assessor);
  const perLight = (taken * plantDensity) / light.sum;
  const input = {
    ...substrate, plantDensity, plants, dripperFlow, drippersPerPlant, fillTime,
    dayReadings: { readingTime: light.readingTime, globalRadiation: light.globalRadiation, transpirationRate: columnOf(evaporationRate, 'mm/h', light.globalRadiation.si.map((radiation) => radiation * perLight)) },
    shotVolume: litres(appliedVolume.si / shotsPerDay),
    shotPlan: shotPlan ?? { shotTimes: columnOf(time, 'h', timesByUptake(light, shotsPerDay)) },
  };
  const path = `${where}.irrigation`;
  const fromFull = startingShare === undefined ? runQuietly(irrigationDay, path, input)?.waterVolumes.si : undefined;
  const share = startingShare ?? (fromFull && fromFull.at(-1)! / fromFull[0]!);
  const day = share === undefined ? undefined : run(irrigationDay, path, { ...input, startingShare: share });
  if (day && shotPlan) judgePlan(name, path, day, appliedVolume.si, assessor);
  return day;
}

/** What a plan gives may be so much beside what is wanted before it is worth a word. Common practice, no source. */
const planMiss = 0.1;

/** Says so where a plan of shots gives another volume than plants want. */
function judgePlan(name: string, path: string, { shotsPerDay, appliedVolume }: ResultOf<typeof irrigationDay.outputs>, wanted: number, { add }: Assessor): void {
  if (Math.abs(appliedVolume.si / wanted - 1) <= planMiss) return;
  const text = shotsPerDay === 0
    ? `The plan of ${name} brings no shot: take a smaller step, or times within the day.`
    : `The plan of ${name} brings ${shotsPerDay} shots with ${inLitres(threeDigits(appliedVolume.si))} a plant, where ${inLitres(threeDigits(wanted))} are wanted: with a shotsPerDay of ${shotsPerDay} each shot is made for that.`;
  add(finding(ownBasis, `${path}.appliedVolume`, shotsPerDay === 0 ? 'danger' : 'caution', 'plan-gives-other', text));
}

/** What a full-grown crop takes up at most in use for the light outside, and usually, m³/J: 3 and 1.7 mL for each J/cm² and m². Common practice, no source. */
const [mostPerLight, usualPerLight] = [3e-10, 1.7e-10];

/** Says so where plants are said to take up more of a day than its light can carry, or than is usual; the volume is on an area, m³/m². */
function judgeUptake(name: string, where: string, perArea: number, plantDensity: number, { sum }: LightOfDay, { add }: Assessor): void {
  if (perArea / sum <= mostPerLight) return;
  const isImpossible = evaporatedShareOfRadiation(perArea / sum) > 1;
  add(finding(transpirationByRadiationSum, `${where}.volumePerPlant`, isImpossible ? 'danger' : 'caution', isImpossible ? 'more-than-radiation-evaporates' : 'much-for-the-light',
    `${name} are to take up ${inLitres(threeDigits(perArea))} on each square metre, ${isImpossible ? 'more than the radiation of the day evaporates' : 'unusually much for the radiation of the day'}; about ${inLitres(threeDigits((usualPerLight * sum) / plantDensity))} a plant are usual for a full-grown crop then. Look at the volume of a plant and at plantDensity, or give less on such a day.`));
}

/** When plants have taken up half a part of a day's water, one and a half, and so on, s. */
const timesByUptake = ({ course, sum }: LightOfDay, parts: number): Float64Array => Float64Array.from({ length: parts }, (_, part) => timeOfSum(course, ((part + 0.5) / parts) * sum));
