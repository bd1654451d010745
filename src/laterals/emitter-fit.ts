import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { flow, pressure, share } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { emitterFlow, emitterFromFlows } from './formulas/emitter.js';
import { lowestAndHighest } from './formulas/uniformity.js';

/** The highest pressure is at least this many times the lowest: nearer, a reading error of 1 % moves the exponent by more than 0.05. */
const leastRatio = 1.2;

/** Exponents, with room for errors of reading, that an emitter can have. */
const possibleExponents = [-0.3, 1.3] as const;

/** Scatter of the flows from which they hardly lie on one curve. */
const tellingScatter = 0.05;

const pair = ['lowerPressure', 'flowAtLowerPressure', 'higherPressure', 'flowAtHigherPressure'] as const;
const lists = ['testPressures', 'testFlows'] as const;

/**
 * Exponent of an emitter, and its flow at any pressure, from its flow at two or more pressures.
 *
 * Takes either two pressures (1 kPa to 1 MPa, the higher at least a fifth above the lower) with the flow measured at each (0.01 L/h to 10 m³/h), or the
 * points of a catalogue or test as two columns of equal length, pressures and flows; and the pressure that a flow is wanted at (100 kPa by default).
 * Gives the exponent and that flow, as `lateral` takes them; of three points or more the curve that errs least by shares of the flow, how far the flows
 * scatter about it and the standard error of the exponent. An error of 1 % in one of two flows moves the exponent by 0.01/ln(p2/p1): measure far apart,
 * and the mean of several emitters. Leave points out where a compensating emitter does not regulate.
 * @throws InputError for input outside these limits, where not exactly one of the two ways is given, and for flows that no emitter gives (an exponent
 * below -0.3 or above 1.3).
 * @example
 * emitterFit({ lowerPressure: '0.5 bar', flowAtLowerPressure: '1.4 L/h', higherPressure: '2 bar', flowAtHigherPressure: '2.8 L/h' }).emitterExponent // => 0.5
 */
export const emitterFit = /* @__PURE__ */ calculation({
  id: 'emitterFit',
  title: 'Exponent and nominal flow of an emitter from measurements',
  inputs: () => {
    const pressures = { limits: ['1 kPa', '1 MPa'] } as const;
    const flows = { limits: ['0.01 L/h', '10 m³/h'] } as const;
    const measuredPressure = field.optional(field.quantity(pressure, pressures));
    const measuredFlow = field.optional(field.quantity(flow, flows));
    return {
      lowerPressure: measuredPressure,
      flowAtLowerPressure: measuredFlow,
      higherPressure: measuredPressure,
      flowAtHigherPressure: measuredFlow,
      testPressures: field.optional(field.column(pressure, pressures)),
      testFlows: field.optional(field.column(flow, flows)),
      emitterPressure: field.withDefault(field.quantity(pressure, { limits: ['5 kPa', '600 kPa'] }), '100 kPa'),
    };
  },
  outputs: () => ({
    emitterExponent: output.number(),
    emitterFlow: output.quantity(flow, 'L/h'),
    flowScatter: output.optional(output.quantity(share, '%')),
    exponentError: output.optional(output.number()),
  }),
  equation: 'ln q = ln k + x ln p by least squares; of two points x = ln(q2/q1)/ln(p2/p1); q = k pˣ',
  sources: ['keller-karmeli-1974'],
  example: { lowerPressure: '0.6 bar', flowAtLowerPressure: '1.55 L/h', higherPressure: '1.8 bar', flowAtHigherPressure: '2.65 L/h' },
  check: (seen, problem) => {
    const missing = (names: readonly (keyof typeof seen)[]) => names.filter((name) => seen[name] === undefined);
    const isPair = missing(pair).length < pair.length;
    if (isPair && missing(lists).length < lists.length) return problem(['testPressures'], 'two pressures with their flows, or columns of them', 'some of both');
    for (const name of missing(isPair ? pair : lists)) problem([name], isPair ? 'two pressures with their flows' : 'testPressures and testFlows, or two pressures with their flows', 'nothing');
    const { lowerPressure, higherPressure, testPressures, testFlows } = seen;
    if (lowerPressure !== undefined && higherPressure! < leastRatio * lowerPressure) problem(['higherPressure'], 'a pressure at least a fifth above the lower one', `${writeNumber(higherPressure! / lowerPressure)} times it`, higherPressure! < lowerPressure ? 'are the two swapped?' : 'measure further apart');
    if (testPressures && testFlows && testPressures.length !== testFlows.length) problem(['testFlows'], `as many flows as pressures, ${testPressures.length}`, String(testFlows.length));
  },
  solve: ({ lowerPressure, flowAtLowerPressure, higherPressure, flowAtHigherPressure, testPressures, testFlows, emitterPressure }, { note, refuse }) => {
    const points = testPressures
      ? [...testPressures.si.keys()].map((i) => [testPressures.si[i]!, testFlows!.si[i]!] as const).filter(([p, q]) => !Number.isNaN(p + q))
      : [[lowerPressure!, flowAtLowerPressure!], [higherPressure!, flowAtHigherPressure!]] as const;
    const path = testPressures ? 'testFlows' : 'flowAtHigherPressure';
    const [lowest, highest] = lowestAndHighest(points.map(([p]) => p));
    if (!(highest >= leastRatio * lowest)) return refuse('testPressures', 'pressures of which the highest is at least a fifth above the lowest', points.length < 2 ? `${points.length} with a flow` : `${writeNumber(highest / lowest)} times it`);
    const { coefficient, exponent, scatter, exponentError } = emitterFromFlows(points.map(([p]) => p), points.map(([, q]) => q));
    const [least, most] = possibleExponents;
    if (exponent < least || exponent > most) refuse(path, `flows that an emitter gives, with an exponent of ${least} to ${most}`, `such that make it ${writeNumber(exponent)}`, 'is a reading from another emitter, or a pressure in another unit?');
    if (exponent < 0 || exponent > 1) note('caution', 'unusual-exponent', 'emitterExponent', `An exponent of ${writeNumber(exponent)} is outside 0 (compensating) to 1 (laminar): most likely an error of reading; lateral takes 0 to 1.`);
    if (scatter !== undefined && scatter > tellingScatter) note('caution', 'scattered', path, `The flows lie ${writeNumber(scatter * 100)} % off one curve: a compensating emitter outside the pressures that it regulates between, different emitters, or errors of reading.`);
    if (emitterPressure < lowest / 2 || emitterPressure > highest * 2) note('caution', 'far-from-measured', 'emitterPressure', 'The pressure asked for is far outside those measured, and an exponent holds only near them.');
    return { emitterExponent: exponent, emitterFlow: emitterFlow(emitterPressure, coefficient, exponent), flowScatter: scatter, exponentError };
  },
});
