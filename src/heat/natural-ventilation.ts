import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { airExchange, flow, frequency } from '../units/dimensions.js';
import { equalVentArea } from './formulas/ventilation.js';
import { airOutside, floorArea, houseVolume } from './house-fields.js';
import { checkPlace, flowThroughVents, ventArea, ventPlaceFields } from './vent-fields.js';

/**
 * Air that warmth and wind drive through open vents.
 *
 * Takes the area of the openings that air comes in by (0 to 10 000 m²) and of those that it leaves by (as much, unless given), the height between the
 * two (0 to 30 m) or from the middle of one to the neutral level (0 to 15 m), temperatures inside and outside (-40 to 60 °C), and the wind (none by
 * default). The discharge coefficient is 0.65 unless given, from memory, or 0.40 + 0.0045 |Ti − To| for one opening that breathes both ways (for that
 * take half its area, and two ninths of its height as neutralHeight); that of wind 0.3, aslant, unless given (0.5 to 0.6 straight on). Insect screens
 * halve the flow or worse: take them off the area. Gives the flow by warmth, by wind and by both, which of them drives it, and by volume and floor of
 * the house where these are given.
 * @throws InputError for input outside these limits and for a height stated twice.
 * @example
 * naturalVentilation({ ventArea: '1 m²', heightBetweenVents: '3 m', houseTemperature: '35 °C', outsideTemperature: '28 °C' }).ventilationFlow.in('m³/s') // => 0.531467
 */
export const naturalVentilation = /* @__PURE__ */ calculation({
  id: 'naturalVentilation',
  title: 'Air through open vents',
  inputs: () => ({
    ventArea: ventArea(),
    outletArea: field.optional(ventArea()),
    ...ventPlaceFields(),
    houseTemperature: airOutside(),
    outsideTemperature: airOutside(),
    floorArea: field.optional(floorArea()),
    houseVolume: field.optional(houseVolume()),
  }),
  outputs: () => ({
    ventilationFlow: output.quantity(flow, 'm³/s'),
    stackFlow: output.quantity(flow, 'm³/s'),
    windFlow: output.quantity(flow, 'm³/s'),
    drivenBy: output.choice(['warmth', 'wind', 'nothing']),
    airChanges: output.optional(output.quantity(frequency, '1/h')),
    ventilationPerFloor: output.optional(output.quantity(airExchange, 'm³/(m²·s)')),
  }),
  equation: 'Qs = Cd A √(2 g H |Ti − To|/Ti), Qw = Cv A u, Q = √(Qs² + Qw²); unequal openings √2 A1 A2/√(A1² + A2²)',
  sources: ['ashrae-1997', 'common-practice'],
  example: { ventArea: '2.4 m²', heightBetweenVents: '1.6 m', houseTemperature: '30 °C', outsideTemperature: '24 °C', windSpeed: '1 m/s', floorArea: '40 m²', houseVolume: '78.5 m³' },
  check: checkPlace,
  solve: ({ ventArea, outletArea = ventArea, houseTemperature, outsideTemperature, floorArea, houseVolume, ...place }, { note }) => {
    const { stackFlow, windFlow, ventilationFlow } = flowThroughVents(equalVentArea(ventArea, outletArea), place, houseTemperature, outsideTemperature);
    if (place.neutralHeight === undefined && place.heightBetweenVents === undefined && houseTemperature !== outsideTemperature) {
      note('info', 'no-height', 'heightBetweenVents', 'No height between the vents is given, so warmth is taken to drive nothing through them.');
    }
    const drivenBy = ventilationFlow === 0 ? 'nothing' as const : windFlow > stackFlow ? 'wind' as const : 'warmth' as const;
    return {
      ventilationFlow, stackFlow, windFlow, drivenBy,
      airChanges: houseVolume === undefined ? undefined : ventilationFlow / houseVolume,
      ventilationPerFloor: floorArea === undefined ? undefined : ventilationFlow / floorArea,
    };
  },
});
