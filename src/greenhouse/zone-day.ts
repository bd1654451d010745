/** The day of a zone: when its shots come, what its substrate holds meanwhile, what drains. */
import type { ResultOf } from '../calculation/calculation.js';
import type { WrittenFields } from '../calculation/field-types.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { evaporatedShareOfRadiation, irrigationDay, transpirationByRadiationSum } from '../dosing/index.js';
import { radiationThroughDay } from '../light/index.js';
import { quantity } from '../units/by-name.js';
import { evaporationRate, time } from '../units/dimensions.js';
import type { Column } from '../units/column.js';
import { litres as inLitres } from '../units/in-words.js';
import type { Quantity, QuantityInput } from '../units/quantity.js';
import { writeNumber } from '../units/write.js';
import type { Assessor } from './attempt.js';
import { finding } from './finding.js';
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
}

/** How the light of a usual day goes. */
export function lightOfDay(sun: DescribedSun, { run }: Assessor): LightOfDay | undefined {
  const course = run(radiationThroughDay, 'sun', { ...sun, stepLength: '15 min' });
  if (!course) return undefined;
  return { ...course, sum: sumsAlong(course.readingTime.si, course.globalRadiation.si).at(-1)! };
}

/** Running sum of straight lines between readings. */
function sumsAlong(times: Float64Array, values: Float64Array): Float64Array {
  const sums = new Float64Array(times.length);
  for (let i = 1; i < times.length; i++) sums[i] = sums[i - 1]! + ((values[i - 1]! + values[i]!) / 2) * (times[i]! - times[i - 1]!);
  return sums;
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
  if (light.sum <= 0) return undefined;
  const { plantDensity, shotPlan, startingShare, ...substrate } = rootZone;
  const taken = quantity(volumePerPlant, 'volume').si;
  const { run, runQuietly } = assessor;
  judgeUptake(name, where, taken * plantDensity, light, assessor);
  const perLight = (taken * plantDensity) / light.sum;
  const input = {
    ...substrate, plantDensity, plants, dripperFlow, drippersPerPlant, fillTime,
    dayReadings: { readingTime: light.readingTime, globalRadiation: light.globalRadiation, transpirationRate: columnOf(evaporationRate, 'mm/h', light.globalRadiation.si.map((radiation) => radiation * perLight)) },
    shotVolume: litres(appliedVolume.si / shotsPerDay),
    shotPlan: shotPlan ?? { shotTimes: columnOf(time, 'h', timesByUptake(light, shotsPerDay)) },
  };
  const path = `${where}.irrigation`;
  if (startingShare !== undefined) return run(irrigationDay, path, { ...input, startingShare });
  const fromFull = runQuietly(irrigationDay, path, input);
  const share = fromFull && fromFull.waterVolumes.si.at(-1)! / fromFull.waterVolumes.si[0]!;
  return share === undefined ? undefined : run(irrigationDay, path, { ...input, startingShare: share });
}

/** Says so where the radiation of the day cannot evaporate what plants are said to take up, m³/m². */
function judgeUptake(name: string, where: string, perArea: number, { sum }: LightOfDay, { add }: Assessor): void {
  const share = evaporatedShareOfRadiation(perArea / sum);
  if (share <= 1) return;
  const most = perArea / share;
  add(finding(transpirationByRadiationSum, `${where}.volumePerPlant`, 'danger', 'more-than-radiation-evaporates', `${name} are to take up ${inLitres(perArea)} on each square metre in a day whose radiation evaporates ${inLitres(most)} at most: the rest drains or drowns roots. Look at the volume of a plant and at plantDensity, or give ${writeNumber(Math.floor(100 / share))} % of it on such a day.`));
}

/** When plants have taken up half a part of a day's water, one and a half, and so on, s. */
function timesByUptake({ readingTime, globalRadiation }: LightOfDay, parts: number): Float64Array {
  const sums = sumsAlong(readingTime.si, globalRadiation.si);
  const total = sums.at(-1)!;
  let i = 1;
  return Float64Array.from({ length: parts }, (_, part) => {
    const wanted = ((part + 0.5) / parts) * total;
    while (sums[i]! < wanted) i++;
    const [before, after] = [readingTime.si[i - 1]!, readingTime.si[i]!];
    return before + ((wanted - sums[i - 1]!) / (sums[i]! - sums[i - 1]!)) * (after - before);
  });
}
