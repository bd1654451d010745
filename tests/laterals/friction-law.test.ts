import fc from 'fast-check';
import { expect, test } from 'vitest';
import { darcyFrictionFactor, frictionLaw, headGradientDarcyWeisbach, lateralFromEndHead, pipeReynoldsNumber, type LateralLayout } from '../../src/laterals/index.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const logBetween = (min: number, max: number) => between(Math.log(min), Math.log(max)).map(Math.exp);
const viscosity = 1.0034e-6;

test('the gradient that laterals ask for most is that of the friction factor, in every regime, told the logarithm of the flow or not', () => {
  fc.assert(fc.property(logBetween(1e-9, 1), logBetween(0.003, 0.3), fc.oneof(fc.constant(0), logBetween(1e-8, 1e-4)), (flow, diameter, roughness) => {
    const gradient = frictionLaw({ law: 'Darcy-Weisbach', viscosity, roughness })(diameter);
    const expected = headGradientDarcyWeisbach(flow, diameter, darcyFrictionFactor(pipeReynoldsNumber(flow, diameter, viscosity), roughness / diameter));
    expect(Math.abs(gradient(flow) / expected - 1)).toBeLessThan(1e-13);
    expect(Math.abs(gradient(flow, Math.log(flow)) / expected - 1)).toBeLessThan(1e-13);
  }), { numRuns: 2000 });
});

test('a lateral hands on the logarithm of the flow to the last digits, whatever its emitters do', () => {
  const emitter = fc.record({ flow: logBetween(1e-8, 1e-5), head: fc.constant(10), exponent: between(0, 1) });
  const compensation = fc.record({ openingHead: between(4, 8), highestHead: between(12, 30), closingHead: between(0, 3) });
  fc.assert(fc.property(emitter, fc.option(compensation), fc.integer({ min: 1, max: 200 }), between(-0.3, 0.3), between(0.1, 20), (plain, range, outlets, slope, endHead) => {
    let worst = 0;
    const watching: LateralLayout['friction'] = () => (flow, logFlow) => {
      if (flow > 0) worst = Math.max(worst, Math.abs(logFlow! - Math.log(flow)));
      return 1e7 * flow;
    };
    lateralFromEndHead({ outlets, spacing: 0.5, diameter: 0.0136, slope, emitter: { ...plain, ...range }, friction: watching }, endHead);
    expect(worst).toBeLessThan(1e-14);
  }));
});
