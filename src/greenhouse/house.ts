/** The house: what it loses on a cold night, what a heater has to give, whether its cover fogs, how warm the sun makes it. */
import type { WrittenFields } from '../calculation/field-types.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { heatStore, heaterSize, houseHeatLoss, houseTemperature } from '../heat/index.js';
import { irradiance } from '../units/dimensions.js';
import { quantityFromSI, unitOf } from '../units/quantity.js';
import { coverCondensation } from '../vapour/index.js';
import type { Assessor } from './attempt.js';
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
export function assessHouse({ nightHumidity, insideFilmCoefficient, heater, vents, store, ...shell }: DescribedHouse, light: LightOfDay | undefined, { run }: Assessor) {
  const loss = run(houseHeatLoss, 'house', shell);
  if (!loss) return undefined;
  const { coverHeatTransfer, floorArea, coverArea, houseVolume, airChanges, houseConductance, heatLoss } = loss;
  const { houseTemperature: kept, outsideTemperature } = shell;
  const globalRadiation = vents?.globalRadiation ?? (light && quantityFromSI(irradiance, light.globalRadiation.si.reduce((most, one) => Math.max(most, one), 0), unitOf(irradiance, 'W/m²')));
  return {
    ...loss,
    heater: heater && run(heaterSize, 'house.heater', { ...heater, houseConductance, houseTemperature: kept, outsideTemperature }),
    night: nightHumidity === undefined ? undefined : run(coverCondensation, 'house', { airTemperature: kept, relativeHumidity: nightHumidity, outsideTemperature, coverHeatTransfer, insideFilmCoefficient }),
    vents: vents && globalRadiation && run(houseTemperature, 'house.vents', { ...vents, globalRadiation, floorArea, coverArea, coverHeatTransfer, houseVolume, airChanges }),
    store: store && run(heatStore, 'house.store', { ...store, nightLength: heater?.nightLength, ...(heatLoss.si > 0 && { heatLoss }) }),
  };
}
