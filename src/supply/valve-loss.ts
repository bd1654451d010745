import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { pipeVelocity } from '../laterals/formulas/head-loss.js';
import { diameter, pressureOfHead, refuseRacing, waterTemperature } from '../laterals/pipe.js';
import { flow, flowCoefficient, head, pressure, velocity } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { waterDensityIapws2008 } from '../water/density.js';
import { flowCoefficientFromLossCoefficient, lossCoefficientFromFlowCoefficient, pressureLossAtFlowCoefficient } from './formulas/flow-coefficient.js';

/** A valve costs no less than this multiple of the velocity head: a straight bore of its own length does. Common practice, no source. */
const leastLossCoefficient = 0.02;

/** What an open valve of a zone may cost, Pa. Common practice, no source. */
const usualLoss = 20_000;

/** No valve of a garden loses more than this, Pa. */
const impossibleLoss = 10e6;

/**
 * Pressure lost in an open valve, from the flow coefficient of its data sheet.
 *
 * Takes the flow (0 to 10 000 m³/h), the flow coefficient as Kv or Cv (0.001 to 10 000 Kv), the inside diameter of the pipe that it sits in, where it
 * is known, and the water temperature (20 °C by default). Gives the loss as pressure and as head, and with the diameter the velocity in the pipe and the
 * loss coefficient that the valve has there. A loss above 20 kPa is noted with the flow coefficient that would keep to it.
 * @throws InputError for input outside these limits, for a flow coefficient larger than the bore of the pipe allows, for a loss above 10 MPa, and for
 * water faster than 30 m/s.
 * @example
 * const { pressureLoss, lossCoefficient } = valveLoss({ flow: '18 L/min', flowCoefficient: '3.2 Kv', diameter: '20.4 mm' });
 * pressureLoss.in('kPa') // => 11.37
 * lossCoefficient // => 27.04
 */
export const valveLoss = /* @__PURE__ */ calculation({
  id: 'valveLoss',
  title: 'Pressure lost in a valve',
  inputs: () => ({
    flow: field.quantity(flow, { limits: ['0 L/h', '10000 m³/h'] }),
    flowCoefficient: field.quantity(flowCoefficient, { limits: ['0.001 Kv', '10000 Kv'] }),
    diameter: field.optional(diameter()),
    waterTemperature: waterTemperature(),
  }),
  outputs: () => ({
    pressureLoss: output.quantity(pressure, 'kPa'),
    headLoss: output.quantity(head, 'm'),
    velocity: output.optional(output.quantity(velocity, 'm/s')),
    lossCoefficient: output.optional(output.number()),
  }),
  equation: 'Δp = 1 bar · (ρ/1000) (Q/Kv)²; K = 1.599·10⁻³ D⁴/Kv² with D in mm',
  sources: ['iec-60534-2-1'],
  example: { flow: '18 L/min', flowCoefficient: '3.2 Kv', diameter: '20.4 mm' },
  solve: ({ flow, flowCoefficient, diameter, waterTemperature }, { note, refuse }) => {
    const velocity = diameter === undefined ? undefined : pipeVelocity(flow, diameter);
    const lossCoefficient = diameter === undefined ? undefined : lossCoefficientFromFlowCoefficient(flowCoefficient, diameter);
    if (velocity !== undefined) refuseRacing(velocity, refuse);
    if (lossCoefficient !== undefined && lossCoefficient < leastLossCoefficient) {
      refuse('flowCoefficient', `at most ${writeNumber(flowCoefficientFromLossCoefficient(leastLossCoefficient, diameter!))} Kv, as much as a pipe of this bore has`, `${writeNumber(flowCoefficient)} Kv`, 'Kv or Cv? is the diameter right?');
    }
    const pressureLoss = pressureLossAtFlowCoefficient(flow, flowCoefficient, waterDensityIapws2008(waterTemperature));
    if (pressureLoss > impossibleLoss) refuse('flowCoefficient', 'a valve that can pass this flow', `one that would take ${writeNumber(pressureLoss / 1000)} kPa`, 'are the units right?');
    if (pressureLoss > usualLoss) {
      note('caution', 'costly-valve', 'pressureLoss', `The valve takes ${writeNumber(pressureLoss / 1000)} kPa: one of ${writeNumber(flowCoefficient * Math.sqrt(pressureLoss / usualLoss))} Kv would take ${usualLoss / 1000} kPa.`);
    }
    return { pressureLoss, headLoss: pressureLoss / pressureOfHead(waterTemperature), velocity, lossCoefficient };
  },
});
