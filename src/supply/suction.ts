import { calculation, type Solving } from '../calculation/calculation.js';
import { backflow, mainsElectricity, pumpSuction } from '../calculation/caution.js';
import { atmosphericPressureField } from '../calculation/common-fields.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { frictionLaw } from '../laterals/formulas/friction-law.js';
import { fittingHeadLoss, pipeVelocity } from '../laterals/formulas/head-loss.js';
import { checkRoughness, chosenLaw, diameter, frictionFields, noteFlow, pressureOfHead, reynoldsNumberOf } from '../laterals/pipe.js';
import { flow, head, length, pressure, velocity } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { waterDensityIapws2008 } from '../water/density.js';
import { saturationPressureOverWater } from '../water/saturation/over-water.js';
import { fittingFields, totalLossCoefficient } from './fittings.js';
import { headOfPressure, netPositiveSuctionHead, practicalSuctionLift, pressureAltitude } from './formulas/suction.js';
import { roundedUp } from '../numerics/round-outward.js';

/** The table of practical lifts is for water no warmer than this, K. */
const coldWater = 293.15;

/**
 * Whether a pump can draw its water: the suction head that it has, the one that it needs, and how high it may stand.
 *
 * Takes the flow (0 to 1000 m³/h), how far the pump stands above the water (-50 to 15 m; negative where the water stands higher), the suction pipe by its
 * inside diameter (1 mm to 1 m), length (0 to 1 km), fittings and friction as `fittingLoss` and `pipeFriction` do, the water temperature (20 °C by
 * default), the atmosphere (`atmosphericPressureAtElevation` has it for a height above the sea), the pressure on the water where it is in a closed tank
 * (0 to 1 MPa, gauge), and from the pump's data sheet the suction head that it requires (0.1 to 50 m), with what is to be held in reserve (0 to 10 m;
 * 0.5 m by default). Gives the suction head available (NPSH), the loss and the velocity in the pipe, the pressure at the pump's inlet, the lift that the
 * atmosphere could push up at most and the one that pumps manage in practice, and with the required head what is to spare and the highest place for
 * the pump.
 * @throws InputError for input outside these limits, for a lift that boils the water on its way, for a roughness above a twentieth of the diameter, and for
 * water faster than 30 m/s.
 * @example
 * const well = suction({ flow: '20 L/min', suctionLift: '3 m', diameter: '26 mm', length: '5 m', fittings: { 'square entrance': 1, 'swing check valve': 1 }, requiredSuctionHead: '2.5 m' });
 * well.availableSuctionHead.in('m') // => 6.946
 * well.practicalLift.in('m') // => 6.7
 */
export const suction = /* @__PURE__ */ calculation({
  id: 'suction',
  title: 'Suction of a pump: head available and highest place',
  inputs: () => ({
    flow: field.quantity(flow, { limits: ['0 L/h', '1000 m³/h'] }),
    suctionLift: field.quantity(length, { limits: ['-50 m', '15 m'] }),
    diameter: diameter(),
    length: field.quantity(length, { limits: ['0 m', '1 km'] }),
    ...fittingFields(),
    ...frictionFields(),
    atmosphericPressure: atmosphericPressureField(),
    surfacePressure: field.withDefault(field.quantity(pressure, { limits: ['0 kPa', '1 MPa'] }), '0 kPa'),
    requiredSuctionHead: field.optional(field.quantity(head, { limits: ['0.1 m', '50 m'] })),
    suctionReserve: field.withDefault(field.quantity(head, { limits: ['0 m', '10 m'] }), '0.5 m'),
  }),
  outputs: () => ({
    availableSuctionHead: output.quantity(head, 'm'),
    headLoss: output.quantity(head, 'm'),
    velocity: output.quantity(velocity, 'm/s'),
    pumpInletPressure: output.quantity(pressure, 'kPa'),
    theoreticalLift: output.quantity(head, 'm'),
    practicalLift: output.quantity(head, 'm'),
    spareSuctionHead: output.optional(output.quantity(head, 'm')),
    highestSuctionLift: output.optional(output.quantity(length, 'm')),
  }),
  equation: 'NPSH = (p_s − p_v)/(ρ g) − z − h_f; h_f = J L + ΣK V²/(2 g)',
  sources: ['bachus-custodio-2003', 'engineering-toolbox-suction', 'iapws-if97', 'iapws-sr6-08', 'rossman-2020', 'clamond-2009', 'ashrae-2017'],
  cautions: [mainsElectricity, pumpSuction, backflow],
  example: { flow: '20 L/min', suctionLift: '3 m', diameter: '26 mm', length: '5 m', fittings: { 'square entrance': 1, 'swing check valve': 1 }, requiredSuctionHead: '2.5 m' },
  check: checkRoughness,
  solve: (seen, solving) => {
    const { flow, suctionLift, diameter, length, waterTemperature, atmosphericPressure, surfacePressure, requiredSuctionHead, suctionReserve } = seen;
    const velocity = pipeVelocity(flow, diameter);
    noteFlow('velocity', velocity, reynoldsNumberOf(flow, diameter, waterTemperature), seen, solving);
    const headLoss = frictionLaw(chosenLaw(seen))(diameter)(flow) * length + fittingHeadLoss(totalLossCoefficient(seen), velocity);
    const density = waterDensityIapws2008(waterTemperature);
    const vapourPressure = saturationPressureOverWater(waterTemperature);
    const onSurface = atmosphericPressure + surfacePressure;
    const availableSuctionHead = netPositiveSuctionHead(onSurface, vapourPressure, suctionLift, headLoss, density);
    if (availableSuctionHead <= 0) {
      solving.refuse('suctionLift', `less than ${writeNumber(suctionLift + availableSuctionHead)} m, above which the water boils on its way to the pump`, `${writeNumber(suctionLift)} m`, headLoss > 0.5 ? `the suction pipe alone takes ${writeNumber(headLoss)} m at this flow` : 'stand the pump lower');
    }
    const warmth = Math.max(0, vapourPressure - saturationPressureOverWater(coldWater));
    const practicalLift = Math.max(0, practicalSuctionLift(pressureAltitude(atmosphericPressure)) - headOfPressure(warmth, density));
    const spareSuctionHead = requiredSuctionHead === undefined ? undefined : availableSuctionHead - requiredSuctionHead;
    if (suctionLift > practicalLift) {
      solving.note('caution', 'lift-too-high', 'suctionLift', `Pumps lift water by suction ${writeNumber(practicalLift)} m in practice here: stand it ${roundedUp(suctionLift - practicalLift)} m lower, or take one that stands in the water.`);
    }
    if (spareSuctionHead !== undefined) noteSpare(spareSuctionHead, suctionReserve, solving);
    return {
      availableSuctionHead, headLoss, velocity,
      pumpInletPressure: surfacePressure - (suctionLift + headLoss + fittingHeadLoss(1, velocity)) * pressureOfHead(waterTemperature),
      theoreticalLift: headOfPressure(atmosphericPressure - vapourPressure, density),
      practicalLift, spareSuctionHead,
      highestSuctionLift: spareSuctionHead === undefined ? undefined : suctionLift + spareSuctionHead - suctionReserve,
    };
  },
});

/** Says so where the pump has less suction head than it needs, or hardly more, and how much lower it would have to stand. */
function noteSpare(spare: number, reserve: number, { note }: Solving): void {
  if (spare >= reserve) return;
  const remedy = `stand the pump ${roundedUp(reserve - spare)} m lower, or save as much in a wider or shorter suction pipe`;
  if (spare < 0) note('danger', 'cavitation', 'availableSuctionHead', `The pump lacks ${writeNumber(-spare)} m of suction head and will cavitate: ${remedy}.`);
  else note('caution', 'little-suction-head', 'spareSuctionHead', `The pump has ${writeNumber(spare)} m of suction head to spare, less than the ${writeNumber(reserve)} m wanted in reserve: ${remedy}.`);
}
