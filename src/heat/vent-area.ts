import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { area, flow, share } from '../units/dimensions.js';
import { airOutside, floorArea } from './house-fields.js';
import { checkPlace, flowThroughVents, ventPlaceFields } from './vent-fields.js';

/**
 * Area of vents that lets a wanted flow of air through by warmth and wind.
 *
 * Takes the wanted flow (1 m³/h to 10 000 m³/s), as `ventilationForRise` has it, the height between vents low and high or to the neutral level, the
 * temperatures inside and outside (-40 to 60 °C), wind and coefficients as `naturalVentilation` does. Gives the area that air comes in by (it needs as much
 * again to leave by), with no wind too, and as a share of the floor where that is given; a fifth of it and more are usual.
 * @throws InputError for input outside these limits, for a height stated twice, and where neither warmth nor wind drives any air.
 * @example
 * ventArea({ wantedVentilation: '0.531467 m³/s', heightBetweenVents: '3 m', houseTemperature: '35 °C', outsideTemperature: '28 °C' }).ventArea.in('m²') // => 1.00000
 */
export const ventArea = /* @__PURE__ */ calculation({
  id: 'ventArea',
  title: 'Area of vents for a flow of air',
  inputs: () => ({
    wantedVentilation: field.quantity(flow, { limits: ['1 m³/h', '10000 m³/s'] }),
    ...ventPlaceFields(),
    houseTemperature: airOutside(),
    outsideTemperature: airOutside(),
    floorArea: field.optional(floorArea()),
  }),
  outputs: () => ({
    ventArea: output.quantity(area, 'm²'),
    ventAreaInCalm: output.optional(output.quantity(area, 'm²')),
    ventShareOfFloor: output.optional(output.quantity(share, '%')),
  }),
  equation: 'A = Q/√(qs² + qw²), qs = Cd √(2 g H |Ti − To|/Ti), qw = Cv u',
  sources: ['ashrae-1997', 'common-practice'],
  example: { wantedVentilation: '1.6 m³/s', heightBetweenVents: '1.6 m', houseTemperature: '30 °C', outsideTemperature: '25 °C', windSpeed: '1 m/s', floorArea: '40 m²' },
  check: checkPlace,
  solve: ({ wantedVentilation, houseTemperature, outsideTemperature, floorArea, ...place }, { note, refuse }) => {
    const { stackFlow, ventilationFlow } = flowThroughVents(1, place, houseTemperature, outsideTemperature);
    /** Less than this through a square metre is no ventilation, m/s. */
    const still = 0.001;
    if (ventilationFlow < still) refuse(place.windSpeed === 0 ? 'heightBetweenVents' : 'windSpeed', 'warmth and height between the vents, or wind, to drive air through them', 'too little of either', 'a fan does without');
    const ventArea = wantedVentilation / ventilationFlow;
    const ventAreaInCalm = stackFlow < still ? undefined : wantedVentilation / stackFlow;
    if (floorArea !== undefined && ventArea > floorArea / 2) note('caution', 'vents-too-large', 'ventArea', 'Vents of more than half the floor can hardly be built: shade the house, let it get warmer, or use a fan.');
    return { ventArea, ventAreaInCalm, ventShareOfFloor: floorArea === undefined ? undefined : ventArea / floorArea };
  },
});
