import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { airExchange, flow, frequency, power, temperatureDifference } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { airSpecificHeat } from './formulas/air-heat.js';
import { solarGain, ventilationForRiseEp406 } from './formulas/ventilation.js';
import { airDensity, checkAreas, checkCover, coverOf, houseVolume, sunlitHouseFields } from './house-fields.js';

/** More air than this by floor brings little more without pads, m³/(m² s) (Willits 2003). */
const enoughAir = 0.05;

/**
 * Air that a house needs so that the sun warms it by no more than a rise in temperature.
 *
 * Takes the sun on level ground (0 to 1400 W/m²), what of it comes in (0.7 by default; what shades is counted by shadingShare, none by default), the
 * share of it that the crop turns into vapour (0.5 of a full, well watered crop, the default; 0 of an empty house), the areas of floor and cover (0.5 m²
 * and up), the cover by name or its heat transfer, the rise allowed (0.5 to 40 K), and the density of the air that comes in (1.2 kg/m³; 3 to 5 % less in
 * heat or up high). Gives the flow, by floor and in air changes where the volume is given, and the surplus of heat that it carries.
 * @throws InputError for input outside these limits, for a house without a cover, and for a cover smaller than the floor.
 * @example
 * ventilationForRise({ globalRadiation: '800 W/m²', evaporativeShare: 0, floorArea: '18 m²', coverArea: '58.8 m²', coverHeatTransfer: '3.7 W/(m²·K)', temperatureRise: '5 K' }).ventilationFlow.in('m³/s') // => 1.489761
 */
export const ventilationForRise = /* @__PURE__ */ calculation({
  id: 'ventilationForRise',
  title: 'Air that holds the rise in temperature',
  inputs: () => ({
    ...sunlitHouseFields(),
    shadingShare: field.withDefault(field.share(), 0),
    temperatureRise: field.quantity(temperatureDifference, { limits: ['0.5 K', '40 K'] }),
    houseVolume: field.optional(houseVolume()),
    airDensity: airDensity(),
  }),
  outputs: () => ({
    ventilationFlow: output.quantity(flow, 'm³/s'),
    ventilationPerFloor: output.quantity(airExchange, 'm³/(m²·s)'),
    airChanges: output.optional(output.quantity(frequency, '1/h')),
    solarGain: output.quantity(power, 'W'),
    surplusHeat: output.quantity(power, 'W'),
  }),
  equation: 'q = [(1 − s) τ I A (1 − E) − U Ac ΔT]/(ρcp ΔT)',
  sources: ['asabe-ep406', 'willits-2003'],
  example: { globalRadiation: '700 W/m²', floorArea: '40 m²', coverArea: '82.5 m²', cover: 'single film', temperatureRise: '5 K', houseVolume: '78.5 m³' },
  check: (seen, problem) => {
    checkCover(seen, problem);
    checkAreas(seen, problem);
  },
  solve: ({ globalRadiation, coverTransmission, evaporativeShare, shadingShare, floorArea, coverArea, temperatureRise, houseVolume, airDensity, ...cover }, { note }) => {
    const gain = (1 - shadingShare) * solarGain(globalRadiation, floorArea, coverTransmission, evaporativeShare);
    const conductance = coverOf(cover).heatTransfer * coverArea;
    const ventilationFlow = ventilationForRiseEp406(gain, conductance, temperatureRise, airDensity * airSpecificHeat);
    const ventilationPerFloor = ventilationFlow / floorArea;
    if (ventilationFlow === 0) note('info', 'cover-alone', 'ventilationFlow', 'The cover alone holds the rise: air is needed for moisture and carbon dioxide only.');
    else if (ventilationPerFloor > enoughAir) note('info', 'little-gain', 'ventilationPerFloor', `${writeNumber(ventilationPerFloor)} m³/(m²·s) is more than the 0.05 beyond which air alone gains little: shade, wet the air, or allow a larger rise.`);
    return {
      ventilationFlow, ventilationPerFloor,
      airChanges: houseVolume === undefined ? undefined : ventilationFlow / houseVolume,
      solarGain: gain, surplusHeat: Math.max(0, gain - conductance * temperatureRise),
    };
  },
});
