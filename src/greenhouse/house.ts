/** The house: what it loses on a cold night, what a heater has to give, whether its cover fogs, how warm the sun makes it. */
import type { WrittenFields } from '../calculation/field-types.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { heatStore, heaterSize, houseHeatLoss, houseTemperature } from '../heat/index.js';
import { quantity } from '../units/by-name.js';
import { irradiance, temperatureDifference } from '../units/dimensions.js';
import { quantityFromSI, unitOf, type Quantity, type QuantityInput } from '../units/quantity.js';
import { threeDigits } from '../units/in-words.js';
import { writeNumber } from '../units/write.js';
import { coverCondensation } from '../vapour/index.js';
import type { Assessor } from './attempt.js';
import { finding, ownBasis } from './finding.js';
import type { LightOfDay } from './zone-day.js';

/** How the house is built, kept on a cold night, and aired on a warm day. */
export function houseFields() {
  const { airDensity: _shellAir, ...shell } = houseHeatLoss.inputs;
  const { houseConductance: _conductance, houseTemperature: _kept, outsideTemperature: _night, ...heater } = heaterSize.inputs;
  const { floorArea: _floor, coverArea: _area, cover: _cover, coverHeatTransfer: _transfer, houseVolume: _volume, airChanges: _changes, airDensity: _air, globalRadiation, ...vents } = houseTemperature.inputs;
  const { barrelVolume, barrelsInStore, waterTemperature, temperatureDrop } = heatStore.inputs;
  const { relativeHumidity, insideFilmCoefficient } = coverCondensation.inputs;
  return {
    ...shell,
    nightHumidity: field.optional(relativeHumidity),
    insideFilmCoefficient,
    heater: field.optional(field.group(heater)),
    vents: field.optional(field.group({ ...vents, globalRadiation: field.optional(globalRadiation) })),
    store: field.optional(field.group({ barrelVolume, barrelsInStore, waterTemperature, temperatureDrop })),
  };
}

/** What comes of it. */
export function houseOutputs() {
  const { heatLoss, lowestHeatLoss, highestHeatLoss, heatLossPerFloor, coverHeatTransfer, floorArea, coverArea, houseVolume } = houseHeatLoss.outputs;
  const { heaterPower, heaterEnergy, fuelMass, fuelVolume } = heaterSize.outputs;
  const { coverTemperature, wet, condensationHumidity, condensationOutsideTemperature } = coverCondensation.outputs;
  const { houseTemperature: warmest, ventilationFlow, ventilationPerFloor } = houseTemperature.outputs;
  const { storedHeat, meanPower, shareOfLoss } = heatStore.outputs;
  return output.optional(output.group({
    ...output.passedOn({ heatLoss, lowestHeatLoss, highestHeatLoss, heatLossPerFloor, coverHeatTransfer, floorArea, coverArea, houseVolume }),
    heater: output.optional(output.group(output.passedOn({ heaterPower, heaterEnergy, fuelMass, fuelVolume }))),
    night: output.optional(output.group(output.passedOn({ coverTemperature, wet, condensationHumidity, condensationOutsideTemperature }))),
    vents: output.optional(output.group(output.passedOn({ houseTemperature: warmest, ventilationFlow, ventilationPerFloor }))),
    store: output.optional(output.group(output.passedOn({ storedHeat, meanPower, shareOfLoss }))),
  }));
}

type DescribedHouse = WrittenFields<ReturnType<typeof houseFields>>;

/** A house on a cold night and on a warm day; where the sun at its highest is not told, that of the day described. */
export function assessHouse({ nightHumidity, insideFilmCoefficient, heater, vents, store, ...shell }: DescribedHouse, light: LightOfDay | undefined, assessor: Assessor) {
  const { run } = assessor;
  const loss = run(houseHeatLoss, 'house', shell);
  if (!loss) return undefined;
  const { coverHeatTransfer, floorArea, coverArea, houseVolume, airChanges, houseConductance, heatLoss } = loss;
  const { houseTemperature: kept, outsideTemperature } = shell;
  const globalRadiation = vents?.globalRadiation ?? (light && quantityFromSI(irradiance, light.globalRadiation.si.reduce((most, one) => Math.max(most, one), 0), unitOf(irradiance, 'W/m²')));
  const drop = store && dropOf(store, kept, assessor);
  return {
    ...loss,
    heater: heater && run(heaterSize, 'house.heater', { ...heater, designTemperature: designOf(heater, outsideTemperature, assessor), houseConductance, houseTemperature: kept, outsideTemperature }),
    night: nightHumidity === undefined ? undefined : run(coverCondensation, 'house', { airTemperature: kept, relativeHumidity: nightHumidity, outsideTemperature, coverHeatTransfer, insideFilmCoefficient }),
    vents: vents && globalRadiation && run(houseTemperature, 'house.vents', { ...vents, globalRadiation, floorArea, coverArea, coverHeatTransfer, houseVolume, airChanges }),
    store: store && drop && run(heatStore, 'house.store', { ...store, temperatureDrop: drop, nightLength: heater?.nightLength, ...(heatLoss.si > 0 && { heatLoss }) }),
  };
}

/** The temperature that a heater is planned for: that of the night described where it is colder. */
function designOf({ designTemperature }: NonNullable<DescribedHouse['heater']>, night: QuantityInput<'temperature'>, { add }: Assessor): Quantity<'temperature'> {
  const [design, cold] = [designTemperature, night].map((one) => quantity(one, 'temperature')) as [Quantity<'temperature'>, Quantity<'temperature'>];
  if (cold.si >= design.si) return design;
  add(finding(ownBasis, 'house.heater.designTemperature', 'caution', 'design-too-warm', `The night described, at ${String(cold)}, is colder than the ${String(design)} that the heater is planned for: it is sized for the colder one here. Set designTemperature to the coldest night that you expect.`));
  return cold;
}

/** By how much barrels cool that give their heat to a house: no further than it is kept. Nothing where they are no warmer. */
function dropOf({ waterTemperature = '20 °C', temperatureDrop }: NonNullable<DescribedHouse['store']>, kept: QuantityInput<'temperature'>, { add }: Assessor): Quantity<'temperatureDifference'> | undefined {
  const [wanted, possible] = [quantity(temperatureDrop, 'temperatureDifference').si, quantity(waterTemperature, 'temperature').si - quantity(kept, 'temperature').si];
  if (possible < wanted) add(finding(ownBasis, 'house.store.temperatureDrop', 'caution', 'store-not-warmer', possible < leastDrop
    ? 'The barrels are no warmer than the house is kept, so they give it nothing: they have to be warmed by the sun first.'
    : `The barrels cool no further than the house, by ${writeNumber(threeDigits(possible))} K: that is what they give here.`));
  return possible < leastDrop ? undefined : quantityFromSI(temperatureDifference, Math.min(wanted, possible), unitOf(temperatureDifference, 'K'));
}

/** Less than this is no store, K. */
const leastDrop = 0.1;
