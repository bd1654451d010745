import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { flow, pressure } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { emitterFlow, emitterFromTwoFlows } from './formulas/emitter.js';

/** The higher pressure is at least this many times the lower: nearer, a reading error of 1 % moves the exponent by more than 0.05. */
const leastRatio = 1.2;

/** Exponents, with room for errors of reading, that an emitter can have. */
const possibleExponents = [-0.3, 1.3] as const;

/**
 * Exponent of an emitter, and its flow at any pressure, from its flow at two pressures.
 *
 * Takes two pressures (1 kPa to 1 MPa, the higher at least a fifth above the lower) with the flow measured at each (0.01 L/h to 10 m³/h), and the
 * pressure that a flow is wanted at (100 kPa by default). Gives the exponent and that flow, as `lateral` takes them. An error of 1 % in one flow
 * moves the exponent by 0.01/ln(p2/p1): measure far apart, and the mean of several emitters.
 * @throws InputError for input outside these limits, and for flows that no emitter gives (an exponent below -0.3 or above 1.3).
 * @example
 * emitterFit({ lowerPressure: '0.5 bar', flowAtLowerPressure: '1.4 L/h', higherPressure: '2 bar', flowAtHigherPressure: '2.8 L/h' }).emitterExponent // => 0.5
 */
export const emitterFit = /* @__PURE__ */ calculation({
  id: 'emitterFit',
  title: 'Exponent and nominal flow of an emitter from two measurements',
  inputs: () => {
    const measuredPressure = field.quantity(pressure, { limits: ['1 kPa', '1 MPa'] });
    const measuredFlow = field.quantity(flow, { limits: ['0.01 L/h', '10 m³/h'] });
    return {
      lowerPressure: measuredPressure,
      flowAtLowerPressure: measuredFlow,
      higherPressure: measuredPressure,
      flowAtHigherPressure: measuredFlow,
      emitterPressure: field.withDefault(field.quantity(pressure, { limits: ['5 kPa', '600 kPa'] }), '100 kPa'),
    };
  },
  outputs: () => ({ emitterExponent: output.number(), emitterFlow: output.quantity(flow, 'L/h') }),
  equation: 'x = ln(q2/q1)/ln(p2/p1); q = q1 (p/p1)ˣ',
  sources: ['keller-karmeli-1974'],
  example: { lowerPressure: '0.6 bar', flowAtLowerPressure: '1.55 L/h', higherPressure: '1.8 bar', flowAtHigherPressure: '2.65 L/h' },
  check: ({ lowerPressure, higherPressure }, problem) => {
    if (higherPressure < leastRatio * lowerPressure) problem(['higherPressure'], 'a pressure at least a fifth above the lower one', `${writeNumber(higherPressure / lowerPressure)} times it`, higherPressure < lowerPressure ? 'are the two swapped?' : 'measure further apart');
  },
  solve: ({ lowerPressure, flowAtLowerPressure, higherPressure, flowAtHigherPressure, emitterPressure }, { note, refuse }) => {
    const { coefficient, exponent } = emitterFromTwoFlows(flowAtHigherPressure, higherPressure, flowAtLowerPressure, lowerPressure);
    const [least, most] = possibleExponents;
    if (exponent < least || exponent > most) refuse('flowAtHigherPressure', `a flow that an emitter gives, with an exponent of ${least} to ${most}`, `one that makes it ${writeNumber(exponent)}`, 'is a reading from another emitter, or a pressure in another unit?');
    if (exponent < 0 || exponent > 1) note('caution', 'unusual-exponent', 'emitterExponent', `An exponent of ${writeNumber(exponent)} is outside 0 (compensating) to 1 (laminar): most likely an error of reading; lateral takes 0 to 1.`);
    if (emitterPressure < lowerPressure / 2 || emitterPressure > higherPressure * 2) note('caution', 'far-from-measured', 'emitterPressure', 'The pressure asked for is far outside those measured, and an exponent holds only near them.');
    return { emitterExponent: exponent, emitterFlow: emitterFlow(emitterPressure, coefficient, exponent) };
  },
});
