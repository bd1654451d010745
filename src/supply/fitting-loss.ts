import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { fittingHeadLoss, pipeVelocity } from '../laterals/formulas/head-loss.js';
import { diameter, pressureOfHead, refuseRacing, waterTemperature } from '../laterals/pipe.js';
import { flow, flowCoefficient, head, pressure, velocity } from '../units/dimensions.js';
import { fittingFields, totalLossCoefficient } from './fittings.js';
import { flowCoefficientFromLossCoefficient } from './formulas/flow-coefficient.js';

/**
 * Pressure lost in the fittings and open valves of a pipe: elbows, tees, entrance, exit.
 *
 * Takes the flow (0 to 10 000 m³/h), the inside diameter of the pipe (1 mm to 1 m), how many of each fitting there are, and a loss coefficient for
 * whatever else there is (0 to 10 000; none by default). Gives the sum of the loss coefficients, the velocity, the loss as head and as pressure, and
 * the flow coefficient of one valve that would cost as much, absent where nothing is lost. The friction of the pipe itself comes on top
 * (`pipeFriction`). Fittings close together disturb one another, so the sum is good to some 20 %.
 * @throws InputError for input outside these limits, and for water faster than 30 m/s.
 * @example
 * fittingLoss({ flow: '12 L/min', diameter: '20.4 mm', fittings: { 'short elbow': 4, 'gate valve': 1 } }).pressureLoss.in('kPa') // => 0.7101
 */
export const fittingLoss = /* @__PURE__ */ calculation({
  id: 'fittingLoss',
  title: 'Pressure lost in fittings',
  inputs: () => ({
    flow: field.quantity(flow, { limits: ['0 L/h', '10000 m³/h'] }),
    diameter: diameter(),
    ...fittingFields(),
    waterTemperature: waterTemperature(),
  }),
  outputs: () => ({
    totalLossCoefficient: output.number(),
    velocity: output.quantity(velocity, 'm/s'),
    headLoss: output.quantity(head, 'm'),
    pressureLoss: output.quantity(pressure, 'kPa'),
    flowCoefficient: output.optional(output.quantity(flowCoefficient, 'Kv')),
  }),
  equation: 'h = ΣK V²/(2 g)',
  sources: ['rossman-2020', 'munson', 'iec-60534-2-1'],
  example: { flow: '12 L/min', diameter: '20.4 mm', fittings: { 'square entrance': 1, 'short elbow': 4, 'gate valve': 1 } },
  solve: ({ flow, diameter, waterTemperature, ...rest }, { refuse }) => {
    const coefficient = totalLossCoefficient(rest);
    const velocity = pipeVelocity(flow, diameter);
    refuseRacing(velocity, refuse);
    const headLoss = fittingHeadLoss(coefficient, velocity);
    return {
      totalLossCoefficient: coefficient,
      velocity,
      headLoss,
      pressureLoss: headLoss * pressureOfHead(waterTemperature),
      flowCoefficient: coefficient > 0 ? flowCoefficientFromLossCoefficient(coefficient, diameter) : undefined,
    };
  },
});
