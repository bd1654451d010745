import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { flow, head, length, pressure, slope, velocity } from '../units/dimensions.js';
import { frictionLaw } from './formulas/friction-law.js';
import { headGradientDarcyWeisbach, pipeVelocity } from './formulas/head-loss.js';
import { checkRoughness, chosenLaw, diameter, frictionFields, noteFlow, pressureOfHead, reynoldsNumberOf } from './pipe.js';

/** A flow below this, m³/s, is none: 4 mL/h. */
const leastFlow = 1e-9;

/**
 * Pressure lost by friction in a straight full pipe.
 *
 * Takes the flow (0 to 10 000 m³/h), the inside diameter (1 mm to 1 m), the length (0 to 10 km), the water temperature (20 °C by default) and the
 * friction law: Darcy-Weisbach by default, with a friction factor by name (64/Re up to a Reynolds number of 2000, the turbulent one from 4000, a
 * smooth passage between) and a roughness (0.0015 mm, plastic); Hazen-Williams with its coefficient; or the smooth-pipe gradient of Watters and
 * Keller. Gives the loss as pressure and as head of the water, the gradient, the velocity, the Reynolds number, the regime, and Darcy's friction
 * factor (four times Fanning's; of the other two laws the one that loses as much), absent where nothing flows.
 * @throws InputError for input outside these limits, for a roughness above a twentieth of the diameter, and for water faster than 30 m/s.
 * @example
 * pipeFriction({ flow: '12 L/min', diameter: '20.4 mm', length: '8 m' }).pressureLoss.in('kPa') // => 2.147
 */
export const pipeFriction = /* @__PURE__ */ calculation({
  id: 'pipeFriction',
  title: 'Pressure lost by friction in a pipe',
  inputs: () => ({
    flow: field.quantity(flow, { limits: ['0 L/h', '10000 m³/h'] }),
    diameter: diameter(),
    length: field.quantity(length, { limits: ['0 m', '10 km'] }),
    ...frictionFields(),
  }),
  outputs: () => ({
    pressureLoss: output.quantity(pressure, 'kPa'),
    headLoss: output.quantity(head, 'm'),
    headGradient: output.quantity(slope, 'm/100 m'),
    velocity: output.quantity(velocity, 'm/s'),
    reynoldsNumber: output.number(),
    darcyFrictionFactor: output.optional(output.number()),
    regime: output.choice(['laminar', 'in transition', 'turbulent']),
  }),
  equation: 'h = f (L/D) V²/(2 g); or Hazen-Williams, or J = 7.89·10⁷ Q^1.75 D^−4.75',
  sources: ['clamond-2009', 'colebrook-1939', 'rossman-2020', 'watters-keller-1978', 'iapws-sr6-08'],
  example: { flow: '12 L/min', diameter: '20.4 mm', length: '8 m' },
  check: checkRoughness,
  solve: (seen, solving) => {
    const { flow, diameter, length, waterTemperature } = seen;
    const headGradient = frictionLaw(chosenLaw(seen))(diameter)(flow);
    const reynoldsNumber = reynoldsNumberOf(flow, diameter, waterTemperature);
    const velocity = pipeVelocity(flow, diameter);
    const regime = regimeAt(reynoldsNumber);
    noteFlow('velocity', velocity, reynoldsNumber, seen, solving);
    if (regime === 'in transition') solving.note('info', 'in-transition', 'regime', 'Between laminar and turbulent the water flickers between both, and no formula is better than some 10 to 20 %.');
    return {
      pressureLoss: headGradient * length * pressureOfHead(waterTemperature),
      headLoss: headGradient * length,
      headGradient,
      velocity,
      reynoldsNumber,
      darcyFrictionFactor: flow > leastFlow ? headGradient / headGradientDarcyWeisbach(flow, diameter, 1) : undefined,
      regime,
    };
  },
});

function regimeAt(reynoldsNumber: number): 'laminar' | 'in transition' | 'turbulent' {
  if (reynoldsNumber < 2000) return 'laminar';
  return reynoldsNumber < 4000 ? 'in transition' : 'turbulent';
}
