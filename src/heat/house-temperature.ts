import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { airExchange, flow, frequency, power, temperature, temperatureDifference } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { zeroCelsius } from '../water/constants.js';
import { airSpecificHeat } from './formulas/air-heat.js';
import { balancedRise, equalVentArea, solarGain } from './formulas/ventilation.js';
import { airDensity, airOutside, checkAreas, checkCover, coverOf, houseVolume, sunlitHouseFields } from './house-fields.js';
import { checkPlace, flowThroughVents, ventArea, ventPlaceFields } from './vent-fields.js';

/** Above this no balance of this kind means anything, K. */
const absurd = 353.15;

/** Above this most crops suffer, K: common practice. */
const tooHot = 308.15;

/**
 * Temperature that a house comes to in the sun, with its vents as they are.
 *
 * Takes the sun on level ground (0 to 1400 W/m²), what of it comes in (0.7 by default), the share that shade takes away before (0 by default), the share
 * that the crop turns into vapour (0.5 by default), the areas of floor and cover (0.5 m² and up), the cover by name or its heat transfer, the
 * temperature outside (-40 to 60 °C), the vents as `naturalVentilation` does (0 m² by default: shut), a fan's flow, and with the volume of the house the
 * air changes of its leaks (1 per hour by default). Gives the temperature where as much heat goes out as comes in, the rise, the flow of air through the
 * vents, by floor and in air changes, and what cover and air carry. Once soil, water and crop have warmed, after an hour or two of steady sun; before
 * that the house is cooler.
 * @throws InputError for input outside these limits, for a house without a cover, for a cover smaller than the floor, a height stated
 * twice, and a house that would pass 80 °C. ConvergenceError where the balance does not close.
 * @example
 * houseTemperature({ globalRadiation: '800 W/m²', evaporativeShare: 0, floorArea: '18 m²', coverArea: '58.8 m²', coverHeatTransfer: '3.7 W/(m²·K)', outsideTemperature: '25 °C', fanFlow: '1.489761 m³/s' }).houseTemperature.in('°C') // => 30
 */
export const houseTemperature = /* @__PURE__ */ calculation({
  id: 'houseTemperature',
  title: 'Temperature of a house in the sun',
  inputs: () => ({
    ...sunlitHouseFields(),
    shadingShare: field.withDefault(field.share(), 0),
    outsideTemperature: airOutside(),
    ventArea: field.withDefault(ventArea(), '0 m²'),
    outletArea: field.optional(ventArea()),
    ...ventPlaceFields(),
    fanFlow: field.withDefault(field.quantity(flow, { limits: ['0 m³/s', '10000 m³/s'] }), '0 m³/s'),
    houseVolume: field.optional(houseVolume()),
    airChanges: field.withDefault(field.quantity(frequency, { limits: ['0 1/h', '60 1/h'] }), '1 1/h'),
    airDensity: airDensity(),
  }),
  outputs: () => ({
    houseTemperature: output.quantity(temperature, '°C'),
    temperatureRise: output.quantity(temperatureDifference, 'K'),
    ventilationFlow: output.quantity(flow, 'm³/s'),
    ventilationPerFloor: output.quantity(airExchange, 'm³/(m²·s)'),
    solarGain: output.quantity(power, 'W'),
    transmissionLoss: output.quantity(power, 'W'),
    ventilationLoss: output.quantity(power, 'W'),
    convergence: output.group({ powerResidual: output.quantity(power, 'W'), steps: output.number() }),
  }),
  equation: '(1 − s) τ I A (1 − E) = U Ac ΔT + ρcp q(ΔT) ΔT',
  sources: ['asabe-ep406', 'ashrae-1997', 'common-practice'],
  example: { globalRadiation: '750 W/m²', floorArea: '40 m²', coverArea: '82.5 m²', cover: 'single film', outsideTemperature: '24 °C', ventArea: '2.4 m²', heightBetweenVents: '1.6 m', windSpeed: '1 m/s', houseVolume: '78.5 m³' },
  check: (seen, problem) => {
    checkCover(seen, problem);
    checkAreas(seen, problem);
    checkPlace(seen, problem);
  },
  solve: ({ globalRadiation, coverTransmission, evaporativeShare, shadingShare, floorArea, coverArea, cover, coverHeatTransfer, outsideTemperature, ventArea, outletArea = ventArea, fanFlow, houseVolume = 0, airChanges, airDensity, ...place }, { note, refuse }) => {
    const gain = (1 - shadingShare) * solarGain(globalRadiation, floorArea, coverTransmission, evaporativeShare);
    const conductance = coverOf({ cover, coverHeatTransfer }).heatTransfer * coverArea;
    const heatCapacity = airDensity * airSpecificHeat;
    const vents = equalVentArea(ventArea, outletArea);
    const flowAt = (rise: number): number => fanFlow + airChanges * houseVolume + flowThroughVents(vents, place, outsideTemperature + rise, outsideTemperature).ventilationFlow;
    const { value: rise, residual, steps } = balancedRise(gain, conductance, flowAt, heatCapacity);
    const houseTemperature = outsideTemperature + rise;
    if (houseTemperature > absurd) refuse(vents === 0 && fanFlow === 0 ? 'ventArea' : 'coverHeatTransfer', 'a way out for the heat below 80 °C', `a house at ${writeNumber(houseTemperature - zeroCelsius)} °C`, 'open the vents, and check areas and units');
    if (houseTemperature > tooHot) {
      const remedy = outsideTemperature < tooHot ? 'open more vents (ventArea says how much), shade (shading says how much) or wet the paths' : 'vents and shade bring it no lower than outside, so wet the paths too';
      note('caution', 'too-hot', 'houseTemperature', `The house comes to ${writeNumber(houseTemperature - zeroCelsius)} °C: ${remedy}.`);
    }
    const ventilationFlow = flowAt(rise);
    return {
      houseTemperature, temperatureRise: rise, ventilationFlow, ventilationPerFloor: ventilationFlow / floorArea,
      solarGain: gain, transmissionLoss: conductance * rise, ventilationLoss: heatCapacity * ventilationFlow * rise,
      convergence: { powerResidual: residual, steps },
    };
  },
});
