import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as laterals from '../../src/laterals/index.js';
import type { FrictionChoice, LateralLayout } from '../../src/laterals/index.js';
import { ConvergenceError } from '../../src/numerics/convergence-error.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const logBetween = (min: number, max: number) => between(Math.log(min), Math.log(max)).map(Math.exp);
const relativeRoughness = fc.oneof(fc.constant(0), logBetween(1e-6, 0.05));
const water = { law: 'Darcy-Weisbach', viscosity: 1.0034e-6, roughness: 1.5e-6 } as const;
const friction: fc.Arbitrary<FrictionChoice> = fc.constantFrom<FrictionChoice[]>(
  water, { ...water, frictionFactor: 'Swamee-Jain' }, { ...water, frictionFactor: 'Churchill' }, { ...water, frictionFactor: 'Blasius' },
  { ...water, frictionFactor: 'Bagarello' }, { law: 'Hazen-Williams', coefficient: 140 }, { law: 'Watters-Keller' });
const lph = 1 / 3.6e6;
const parts = {
  firstSpacing: between(0.05, 2),
  slope: between(-0.05, 0.05),
  friction,
  connection: fc.record({ lossCoefficient: between(0, 1), equivalentLength: between(0, 0.3) }),
};
const emitter = (most: number, exponent: fc.Arbitrary<number>) => fc.record({ flow: between(0.5 * lph, most * lph), head: fc.constant(10), exponent });
const plain = fc.record({
  ...parts, outlets: fc.integer({ min: 1, max: 150 }), spacing: between(0.1, 1), diameter: between(0.01, 0.025),
  emitter: emitter(8, fc.oneof(fc.constant(0.5), between(0.4, 1))),
});
const compensating = fc.record({
  ...parts, outlets: fc.integer({ min: 1, max: 60 }), spacing: between(0.1, 0.5), diameter: between(0.016, 0.025),
  emitter: emitter(4, between(0.01, 0.4)),
});
const layout: fc.Arbitrary<LateralLayout> = fc.oneof(plain, compensating);
const inletHead = between(8, 30);
/** How near the inlet head has to be met: the head of the pipe at rest counts where it runs downhill. */
const near = (pipe: LateralLayout, head: number) => 1e-8 * Math.max(head, head - pipe.slope! * (pipe.firstSpacing! + (pipe.outlets - 1) * pipe.spacing));
const sum = (values: ArrayLike<number>) => Array.from(values).reduce((a, b) => a + b, 0);

describe('friction factors', () => {
  test('between laminar and turbulent flow neither the factor nor its slope has a step', () => {
    for (const formula of [laterals.darcyFrictionFactor, laterals.frictionFactorRossman2020]) {
      fc.assert(fc.property(relativeRoughness, fc.constantFrom(2000, 4000), (rough, at) => {
        const [a, b, c, d] = [-2e-2, -1e-2, 1e-2, 2e-2].map((step) => formula(at + step, rough)) as [number, number, number, number];
        expect(Math.abs(c - b)).toBeLessThan(1e-6);
        expect(Math.abs((d - c) - (b - a)) / 1e-2).toBeLessThan(1e-7);
      }));
    }
  });

  test('the blend lies between its two ends', () => {
    fc.assert(fc.property(between(2000, 4000), relativeRoughness, (reynolds, rough) => {
      const f = laterals.darcyFrictionFactor(reynolds, rough);
      expect(f).toBeGreaterThanOrEqual(laterals.frictionFactorLaminar(reynolds) * (1 - 1e-12));
      expect(f).toBeLessThanOrEqual(laterals.frictionFactorColebrook1939(reynolds, rough) * (1 + 1e-12));
    }));
  });

  test('more flow loses more head, whatever the law', () => {
    fc.assert(fc.property(friction, logBetween(1e-8, 1e-3), logBetween(1.0001, 10), between(0.008, 0.03), (choice, flow, more, diameter) => {
      const gradient = laterals.frictionLaw(choice)(diameter);
      expect(gradient(flow)).toBeGreaterThan(0);
      expect(gradient(flow * more)).toBeGreaterThan(gradient(flow));
    }), { numRuns: 1000 });
  });

  test('no flow loses nothing', () => {
    fc.assert(fc.property(friction, (choice) => {
      expect(laterals.frictionLaw(choice)(0.0136)(0)).toBe(0);
    }));
  });
});

describe('the lateral', () => {
  test('balances mass and energy and meets the inlet head', () => {
    fc.assert(fc.property(layout, inletHead, (pipe, head) => {
      const { heads, flows, residual, ...inlet } = laterals.lateralFromInletHead(pipe, head);
      expect(Math.abs(inlet.inletHead - head)).toBe(residual);
      expect(residual).toBeLessThanOrEqual(near(pipe, head));
      expect(Math.abs(inlet.inletFlow - sum(flows))).toBeLessThan(1e-12 * inlet.inletFlow);
      const gradient = laterals.frictionLaw(pipe.friction as FrictionChoice)(pipe.diameter);
      let flow = inlet.inletFlow;
      let level = inlet.inletHead;
      heads.forEach((reached, i) => {
        const length = i === 0 ? pipe.firstSpacing! : pipe.spacing;
        level -= gradient(flow) * (length + pipe.connection!.equivalentLength!) + pipe.slope! * length
          + laterals.fittingHeadLoss(pipe.connection!.lossCoefficient!, laterals.pipeVelocity(flow, pipe.diameter));
        expect(Math.abs(level - reached)).toBeLessThan(1e-9 * head);
        const emitted = pipe.emitter.flow * Math.max(0, reached / pipe.emitter.head) ** pipe.emitter.exponent;
        expect(Math.abs(emitted - flows[i]!)).toBeLessThan(1e-12 * pipe.emitter.flow);
        flow = Math.max(0, flow - flows[i]!);
      });
    }));
  });

  test('more head at the inlet, more head and flow everywhere', () => {
    fc.assert(fc.property(layout, inletHead, between(0.01, 5), (pipe, head, more) => {
      const [less, greater] = [laterals.lateralFromInletHead(pipe, head), laterals.lateralFromInletHead(pipe, head + more)];
      less.heads.forEach((at, i) => expect(greater.heads[i]!).toBeGreaterThan(at));
      expect(greater.inletFlow).toBeGreaterThanOrEqual(less.inletFlow);
    }));
  });

  test('a head at the end and the head at the inlet that it takes belong together', () => {
    fc.assert(fc.property(layout, between(2, 30), (pipe, endHead) => {
      const found = laterals.lateralFromEndHead(pipe, endHead);
      expect(found.heads.at(-1)).toBe(endHead);
      fc.pre(found.inletHead > 0 && found.inletHead < 1000);
      laterals.lateralFromInletHead(pipe, found.inletHead).heads.forEach((head, i) => expect(Math.abs(head - found.heads[i]!)).toBeLessThan(1e-6 * found.inletHead));
    }));
  });

  test('on the level heads fall towards the end, in a wider pipe less', () => {
    fc.assert(fc.property(layout, inletHead, between(1.05, 2), (pipe, head, wider) => {
      const level = { ...pipe, slope: 0, connection: {} };
      const { heads } = laterals.lateralFromInletHead(level, head);
      heads.forEach((at, i) => expect(at).toBeLessThan(heads[i - 1] ?? head));
      fc.pre(head - heads.at(-1)! > 1e-5);
      expect(laterals.lateralFromInletHead({ ...level, diameter: pipe.diameter * wider }, head).heads.at(-1)!).toBeGreaterThan(heads.at(-1)!);
    }));
  });

  test('a level lateral without friction is even', () => {
    fc.assert(fc.property(layout, inletHead, (pipe, head) => {
      const { heads, flows } = laterals.lateralFromInletHead({ ...pipe, slope: 0, connection: {}, friction: () => () => 0 }, head);
      heads.forEach((at) => expect(Math.abs(at - head)).toBeLessThanOrEqual(1e-8 * head));
      expect(laterals.flowVariationWuGitlin1974(flows)).toBe(0);
    }));
  });

  test('laminar pipe and laminar emitters are linear: twice the head, twice the flow', () => {
    fc.assert(fc.property(layout, between(0.5, 1.5), (pipe, head) => {
      const laminar = {
        ...pipe, slope: 0, connection: {}, emitter: { ...pipe.emitter, exponent: 1 },
        friction: (diameter: number) => (flow: number) => (128 * 1.0034e-6 * flow) / (Math.PI * 9.80665 * diameter ** 4),
      };
      const [once, twice] = [laterals.lateralFromInletHead(laminar, head), laterals.lateralFromInletHead(laminar, 2 * head)];
      once.flows.forEach((flow, i) => expect(Math.abs(twice.flows[i]! / flow / 2 - 1)).toBeLessThan(1e-7));
    }));
  });

  test('compensating emitters lose the many-outlet share of the full-flow loss', () => {
    fc.assert(fc.property(layout, (pipe) => {
      const exact = { ...pipe, slope: 0, connection: {}, emitter: { ...pipe.emitter, exponent: 0 }, friction: { law: 'Watters-Keller' } as const };
      const first = pipe.firstSpacing! / pipe.spacing;
      const length = pipe.spacing * (pipe.outlets - 1 + first);
      const expected = laterals.headGradientWattersKeller1978(pipe.outlets * pipe.emitter.flow, pipe.diameter) * length
        * laterals.multipleOutletFactorScaloppi1988(pipe.outlets, 1.75, first);
      const head = 2 * expected;
      expect(Math.abs((head - laterals.lateralFromInletHead(exact, head).heads.at(-1)!) / expected - 1)).toBeLessThan(1e-7);
    }));
  });

  test('mean flow and inlet head answer each other', () => {
    fc.assert(fc.property(layout, between(0.5, 1.5), (pipe, share) => {
      const wanted = pipe.emitter.flow * share ** pipe.emitter.exponent;
      const found = laterals.lateralFromMeanFlow(pipe, wanted);
      expect(Math.abs(sum(found.flows) / pipe.outlets / wanted - 1)).toBeLessThan(1e-7);
      const back = laterals.lateralFromInletHead(pipe, found.inletHead);
      back.heads.forEach((head, i) => expect(Math.abs(head - found.heads[i]!)).toBeLessThan(1e-6 * found.inletHead));
    }));
  });

  test('any emitter is fed to the inlet head that was given, or refused', () => {
    fc.assert(fc.property(layout, fc.oneof(fc.constant(0), between(0, 0.2)), between(0.1, 30), (pipe, exponent, head) => {
      const attempt = () => laterals.lateralFromInletHead({ ...pipe, emitter: { ...pipe.emitter, exponent } }, head);
      try {
        expect(Math.abs(attempt().inletHead - head)).toBeLessThanOrEqual(near(pipe, head));
      } catch (error) {
        expect(error).toBeInstanceOf(ConvergenceError);
      }
    }), { numRuns: 500 });
  });

  test('outlets above the water give nothing, and a head that cannot feed compensating emitters is refused', () => {
    const uphill: LateralLayout = { outlets: 20, spacing: 1, diameter: 0.0136, slope: 0.2, emitter: { flow: 2 * lph, head: 10, exponent: 0.5 }, friction: water };
    const { heads, flows } = laterals.lateralFromInletHead(uphill, 2);
    expect(heads.findIndex((head) => head <= 0)).toBe(9);
    heads.forEach((head, i) => expect(flows[i]! > 0).toBe(head > 0));
    const starved = { ...uphill, outlets: 100, slope: 0, diameter: 0.008, emitter: { ...uphill.emitter, exponent: 0 } };
    expect(() => laterals.lateralFromInletHead(starved, 0.1)).toThrow('no flow along the lateral meets a head of 0.1 m');
    expect(() => laterals.lateralFromMeanFlow(starved, 1 * lph)).toThrow();
  });
});

describe('many outlets', () => {
  test('the factor falls from one towards 1/(m + 1) as outlets are added', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 400 }), between(1, 2), (outlets, exponent) => {
      const factor = laterals.multipleOutletFactorExact(outlets, exponent);
      expect(factor).toBeLessThanOrEqual(1);
      expect(laterals.multipleOutletFactorExact(outlets + 1, exponent)).toBeLessThan(factor);
      expect(factor).toBeGreaterThan(1 / (exponent + 1));
      expect(Math.abs(laterals.multipleOutletFactorAnwar1999(outlets, exponent, 1e9) - 1)).toBeLessThan(1e-8);
      expect(laterals.multipleOutletFactorScaloppi1988(outlets, exponent, 1)).toBeCloseTo(factor, 14);
    }));
  });

  test('the series is within 0.2 % of the sum from two outlets on', () => {
    fc.assert(fc.property(fc.integer({ min: 2, max: 400 }), between(1.75, 2), (outlets, exponent) => {
      const ratio = laterals.multipleOutletFactorChristiansen1942(outlets, exponent) / laterals.multipleOutletFactorExact(outlets, exponent);
      expect(Math.abs(ratio - 1)).toBeLessThan(2e-3);
    }));
  });
});

describe('emitters and uniformity', () => {
  const flows = fc.array(between(0.5, 8), { minLength: 2, maxLength: 60 });
  const measures = [
    laterals.lowQuarterUniformityWhole, laterals.lowQuarterUniformityWeighted, laterals.uniformityChristiansen1942,
    laterals.statisticalUniformityOfPopulation, laterals.statisticalUniformityOfSample, (values: ArrayLike<number>) => 1 - laterals.flowVariationWuGitlin1974(values),
  ];

  test('two flows give back the emitter they came from', () => {
    fc.assert(fc.property(logBetween(1e-8, 1e-5), between(0, 1), between(1, 10), between(1.1, 4), (coefficient, exponent, head, ratio) => {
      const flow = (at: number) => laterals.emitterFlow(at, coefficient, exponent);
      const found = laterals.emitterFromTwoFlows(flow(head), head, flow(head * ratio), head * ratio);
      expect(Math.abs(found.exponent - exponent)).toBeLessThan(1e-12);
      expect(Math.abs(found.coefficient / coefficient - 1)).toBeLessThan(1e-11);
    }));
  });

  test('every measure is at most one, one for equal flows, and blind to unit and order', () => {
    for (const measure of measures) {
      fc.assert(fc.property(flows, logBetween(1e-7, 1e3), (values, unit) => {
        const found = measure(values);
        expect(found).toBeLessThanOrEqual(1 + 1e-12);
        expect(Math.abs(measure(Float64Array.from([...values].reverse(), (value) => value * unit)) - found)).toBeLessThan(1e-9);
        expect(Math.abs(measure(values.map(() => values[0]!)) - 1)).toBeLessThan(1e-12);
      }));
    }
  });

  test('a sample is held for less even than a population, and both low quarters agree for fours', () => {
    fc.assert(fc.property(fc.array(between(0.5, 8), { minLength: 4, maxLength: 60 }), (values) => {
      expect(laterals.statisticalUniformityOfSample(values)).toBeLessThanOrEqual(laterals.statisticalUniformityOfPopulation(values));
      const fours = values.slice(0, values.length - (values.length % 4));
      expect(Math.abs(laterals.lowQuarterUniformityWhole(fours) - laterals.lowQuarterUniformityWeighted(fours))).toBeLessThan(1e-12);
    }));
  });
});
