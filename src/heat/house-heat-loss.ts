import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { area, frequency, heatTransfer, irradiance, power, temperature, thermalConductance, volume } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { airLeaks, type AirLeaksName } from './air-leaks.js';
import { airSpecificHeat } from './formulas/air-heat.js';
import { infiltrationLoss, transmissionLoss } from './formulas/house.js';
import { airDensity, airOutside, checkCover, coverFields, coverOf } from './house-fields.js';
import { checkShape, shapeFields, sizeOf } from './house-shape.js';

/**
 * Heat that a shut house loses through its cover and with the air that leaks, and how far that may be off.
 *
 * Takes the house by its shape ('gable', 'arch' for a tunnel, 'flat') with width and length (0.3 to 300 m), the height of the eaves (0 m where the roof
 * starts on the ground) and of the ridge, or by the areas of floor and cover and its volume; the cover by name or its heat transfer (0.1 to 15 W/(m²
 * K)); how it is built, or its air changes (0 to 60 per hour); the temperatures inside (-10 to 50 °C) and outside (-40 to 60 °C); what a thermal screen
 * saves of the loss through the cover (0 by default; about 30 % in one study, 50 to 60 % of sealed aluminised ones), and an allowance for the frame (0
 * by default; 10 % is common practice, 2 to 8 % in tables). Gives the loss through cover and by air, the two together, by area of floor and per kelvin,
 * and the lowest and highest that the ranges of cover and leaks allow (15 % either way for a cover that is given as a number). Negative where the house
 * is colder than outside. The ground, the sky of a clear night and condensation are not counted: a clear, windy night goes to the upper end. A number
 * goes before a name, and a given size before that of the shape.
 * @throws InputError for input outside these limits, for a house without cover, leaks or size, a shape without its measures, an arch above a half circle, and a
 * cover smaller than the floor.
 * @example
 * const tunnel = houseHeatLoss({ houseShape: 'arch', houseWidth: '5 m', houseLength: '8 m', eavesHeight: '0 m', ridgeHeight: '2.5 m', cover: 'single film', construction: 'new single film', houseTemperature: '5 °C', outsideTemperature: '-5 °C' });
 * tunnel.heatLoss.in('kW') // => 5.884
 * tunnel.lowestHeatLoss.in('kW') // => 4.938
 */
export const houseHeatLoss = /* @__PURE__ */ calculation({
  id: 'houseHeatLoss',
  title: 'Heat loss of a house',
  inputs: () => ({
    ...shapeFields(),
    ...coverFields(),
    construction: field.optional(field.choice(Object.keys(airLeaks) as AirLeaksName[])),
    airChanges: field.optional(field.quantity(frequency, { limits: ['0 1/h', '60 1/h'], valid: ['0 1/h', '5 1/h'] })),
    houseTemperature: field.quantity(temperature, { limits: ['-10 °C', '50 °C'] }),
    outsideTemperature: airOutside(),
    screenSaving: field.withDefault(field.share({ limits: [0, 0.9], valid: [0, 0.6] }), 0),
    frameAllowance: field.withDefault(field.share({ limits: [0, 0.5] }), 0),
    airDensity: airDensity(),
  }),
  outputs: () => ({
    heatLoss: output.quantity(power, 'W'),
    transmissionLoss: output.quantity(power, 'W'),
    infiltrationLoss: output.quantity(power, 'W'),
    lowestHeatLoss: output.quantity(power, 'W'),
    highestHeatLoss: output.quantity(power, 'W'),
    heatLossPerFloor: output.quantity(irradiance, 'W/m²'),
    houseConductance: output.quantity(thermalConductance, 'W/K'),
    coverHeatTransfer: output.quantity(heatTransfer, 'W/(m²·K)'),
    airChanges: output.quantity(frequency, '1/h'),
    floorArea: output.quantity(area, 'm²'),
    coverArea: output.quantity(area, 'm²'),
    houseVolume: output.quantity(volume, 'm³'),
  }),
  equation: 'Q = (1 + f)(1 − s) U A (Ti − To) + n V ρcp (Ti − To); ρcp = 0.335 Wh/(m³·K) at 1.2 kg/m³',
  sources: ['extension-glazing', 'asabe-ep406', 'rasheed-2017', 'geoola-2009', 'common-practice'],
  example: {
    houseShape: 'arch', houseWidth: '5 m', houseLength: '8 m', eavesHeight: '0 m', ridgeHeight: '2.5 m',
    cover: 'single film', construction: 'new single film', houseTemperature: '5 °C', outsideTemperature: '-5 °C',
  },
  check: (seen, problem) => {
    checkShape(seen, problem);
    checkCover(seen, problem);
    if (seen.construction === undefined && seen.airChanges === undefined) problem(['airChanges'], 'air changes, or a construction by name', 'neither');
  },
  solve: ({ construction, airChanges, houseTemperature, outsideTemperature, screenSaving, frameAllowance, airDensity, ...house }, { note }) => {
    const { floorArea, coverArea, volume } = sizeOf(house);
    const cover = coverOf(house);
    const leaks = leaksOf(airChanges, construction);
    const changes = (leaks.low + leaks.high) / 2;
    const difference = houseTemperature - outsideTemperature;
    const ofCover = (transfer: number) => (1 + frameAllowance) * (1 - screenSaving) * transmissionLoss(transfer, coverArea, difference);
    const ofAir = (perSecond: number) => infiltrationLoss(perSecond, volume, difference, airDensity * airSpecificHeat);
    const [through, leaked] = [ofCover(cover.heatTransfer), ofAir(changes)];
    const ends = [ofCover(cover.low) + ofAir(leaks.low), ofCover(cover.high) + ofAir(leaks.high)];
    const heatLoss = through + leaked;
    if (difference > 0) {
      note('info', 'uncertain-loss', 'heatLoss', `The loss is from ${writeNumber(Math.min(...ends) / 1000)} to ${writeNumber(Math.max(...ends) / 1000)} kW: heat transfer rises with wind and clear sky, dew on film lowers it. Plan with the upper end.`);
    } else note('info', 'no-loss', 'heatLoss', 'The house is no warmer than outside, so it loses nothing.');
    return {
      heatLoss, transmissionLoss: through, infiltrationLoss: leaked, lowestHeatLoss: Math.min(...ends), highestHeatLoss: Math.max(...ends),
      heatLossPerFloor: heatLoss / floorArea,
      houseConductance: (1 + frameAllowance) * (1 - screenSaving) * cover.heatTransfer * coverArea + changes * volume * airDensity * airSpecificHeat,
      coverHeatTransfer: cover.heatTransfer, airChanges: changes, floorArea, coverArea, houseVolume: volume,
    };
  },
});

/** Air changes of a shut house, 1/s: a number goes before the name. */
function leaksOf(airChanges: number | undefined, construction: AirLeaksName | undefined) {
  if (airChanges !== undefined || construction === undefined) return { low: airChanges ?? 0, high: airChanges ?? 0 };
  const { low, high } = airLeaks[construction];
  return { low: low / 3600, high: high / 3600 };
}
