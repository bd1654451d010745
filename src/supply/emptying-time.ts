import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { frictionLaw } from '../laterals/formulas/friction-law.js';
import { fittingHeadLoss, pipeVelocity } from '../laterals/formulas/head-loss.js';
import { checkRoughness, chosenLaw, diameter, frictionFields, noteFlow, reynoldsNumberOf } from '../laterals/pipe.js';
import { flow, head, length, time, velocity, volume } from '../units/dimensions.js';
import { emptyingTimeThrough, emptyingTimeThroughOrifice, flowThroughOrifice } from './formulas/emptying.js';
import { checkLevels, flowAtHead, refuseDregs, tankFields } from './upright-tank.js';

/**
 * Time in which an upright tank or barrel empties through a hole or a pipe.
 *
 * Takes the area of the water (1 cm² to 1000 m²), the levels before and after above the outlet (1 mm to 20 m, and 0 to 20 m; 0 by default), the inside
 * diameter of the outlet (1 mm to 1 m) and its discharge coefficient (0.3 to 1; 0.6, a sharp-edged hole, by default, 0.8 for a pipe flush with the wall);
 * for a pipe or hose its length (0 to 1 km; none by default), how far its end lies below the outlet (0 to 30 m), a loss coefficient for its fittings
 * and its friction as `pipeFriction` does. The end of the pipe lies open. Gives the time, the volume that has run out, and the flow at both levels with
 * the velocity at the first.
 * @throws InputError for input outside these limits, for a level that does not fall, for a pipe that is to run until it drips (less than 5 mm of head), for a
 * roughness above a twentieth of the diameter, and for water faster than 30 m/s.
 * @example
 * emptyingTime({ tankArea: '0.26 m²', startLevel: '80 cm', diameter: '20 mm' }).emptyingTime.in('min') // => 9.286
 */
export const emptyingTime = /* @__PURE__ */ calculation({
  id: 'emptyingTime',
  title: 'Time in which a tank empties through a hole or a pipe',
  inputs: () => ({
    ...tankFields(),
    diameter: diameter(),
    dischargeCoefficient: field.withDefault(field.number({ limits: [0.3, 1] }), 0.6),
    length: field.withDefault(field.quantity(length, { limits: ['0 m', '1 km'] }), '0 m'),
    lossCoefficient: field.withDefault(field.number({ limits: [0, 10_000] }), 0),
    ...frictionFields(),
  }),
  outputs: () => ({
    emptyingTime: output.quantity(time, 'min'),
    drainedVolume: output.quantity(volume, 'L'),
    startFlow: output.quantity(flow, 'L/min'),
    endFlow: output.quantity(flow, 'L/min'),
    velocity: output.quantity(velocity, 'm/s'),
    convergence: output.group({ headResidual: output.quantity(head, 'm'), steps: output.number() }),
  }),
  equation: 't = 2 A (√h1 − √h2)/(C_d a √(2 g)); through a pipe t = A ∫ dh/Q with h = (1/C_d² + ΣK + f L/D) V²/(2 g)',
  sources: ['paradise', 'cengel-cimbala', 'clamond-2009', 'common-practice'],
  example: { tankArea: '0.26 m²', startLevel: '80 cm', diameter: '20.4 mm', length: '6 m', outletDrop: '40 cm', dischargeCoefficient: 0.8 },
  check: (seen, problem) => {
    checkLevels(seen, problem);
    checkRoughness(seen, problem);
  },
  solve: (seen, solving) => {
    const { tankArea, startLevel, endLevel, outletDrop, diameter, dischargeCoefficient, length, lossCoefficient, waterTemperature } = seen;
    const [startHead, endHead] = [startLevel + outletDrop, endLevel + outletDrop];
    const coefficient = 1 / Math.sqrt(1 / dischargeCoefficient ** 2 + lossCoefficient);
    const area = (Math.PI / 4) * diameter ** 2;
    const drainedVolume = tankArea * (startLevel - endLevel);
    const frictionless = (headThere: number) => flowThroughOrifice(headThere, area, coefficient);
    if (length === 0) {
      const velocity = pipeVelocity(frictionless(startHead), diameter);
      return {
        emptyingTime: emptyingTimeThroughOrifice(tankArea, startHead, endHead, area, coefficient),
        drainedVolume, startFlow: frictionless(startHead), endFlow: frictionless(endHead), velocity,
        convergence: { headResidual: 0, steps: 0 },
      };
    }
    refuseDregs(endHead, solving);
    const gradient = frictionLaw(chosenLaw(seen))(diameter);
    const headAtFlow = (flow: number) => fittingHeadLoss(coefficient ** -2, pipeVelocity(flow, diameter)) + gradient(flow) * length;
    const start = flowAtHead(headAtFlow, startHead, frictionless(startHead));
    const end = flowAtHead(headAtFlow, endHead, frictionless(endHead));
    const velocity = pipeVelocity(start.value, diameter);
    noteFlow('velocity', velocity, reynoldsNumberOf(end.value, diameter, waterTemperature), seen, solving);
    return {
      emptyingTime: emptyingTimeThrough(tankArea, headAtFlow, start.value, end.value),
      drainedVolume, startFlow: start.value, endFlow: end.value, velocity,
      convergence: { headResidual: Math.max(start.residual, end.residual), steps: start.steps + end.steps },
    };
  },
});
