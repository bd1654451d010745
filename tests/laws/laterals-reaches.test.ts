import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as laterals from '../../src/laterals/index.js';
import type { CompensatingEmitter, LateralLayout, LateralReach } from '../../src/laterals/index.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const lph = 1 / 3.6e6;
const water = { law: 'Darcy-Weisbach', viscosity: 1.0034e-6, roughness: 1.5e-6 } as const;
const sum = (values: Iterable<number>) => [...values].reduce((a, b) => a + b, 0);

const plain = fc.record({ flow: between(0.5 * lph, 6 * lph), head: fc.constant(10), exponent: between(0.3, 1) });
const compensating: fc.Arbitrary<CompensatingEmitter> = fc.record({
  flow: between(0.5 * lph, 6 * lph), head: fc.constant(10), exponent: between(0, 0.1), openingHead: between(2, 8), highestHead: between(10, 40), closingHead: between(0, 1.5),
});
const reach: fc.Arbitrary<LateralReach> = fc.record({
  outlets: fc.integer({ min: 1, max: 40 }), spacing: between(0.1, 0.6), firstSpacing: between(0.05, 2), diameter: between(0.012, 0.02), slope: between(-0.04, 0.04),
  emitter: fc.oneof(plain, compensating), connection: fc.record({ lossCoefficient: between(0, 1), equivalentLength: between(0, 0.2) }),
});
const layout: fc.Arbitrary<LateralLayout> = fc.record({ first: reach, furtherReaches: fc.array(reach, { maxLength: 3 }), velocityHead: fc.boolean() })
  .map(({ first, furtherReaches, velocityHead }) => ({ ...first, furtherReaches, velocityHead, friction: water }));
const level = (pipe: LateralLayout): LateralLayout => ({ ...pipe, slope: 0, furtherReaches: pipe.furtherReaches!.map((each) => ({ ...each, slope: 0 })) });

describe('a lateral of several reaches', () => {
  test('gives at its emitters what it takes at its inlet', () => {
    fc.assert(fc.property(layout, between(8, 30), (pipe, head) => {
      const { flows, inletFlow } = laterals.lateralFromInletHead(pipe, head);
      expect(Math.abs(sum(flows) / inletFlow - 1)).toBeLessThan(1e-12);
    }));
  });

  test('gives nowhere less for more pressure', () => {
    fc.assert(fc.property(layout, between(8, 30), between(0.01, 5), (pipe, head, more) => {
      const still = { ...pipe, velocityHead: false };
      const [less, greater] = [laterals.lateralFromInletHead(still, head), laterals.lateralFromInletHead(still, head + more)];
      less.flows.forEach((flow, i) => expect(greater.flows[i]!).toBeGreaterThanOrEqual(flow * (1 - 1e-6)));
    }));
  });

  test('is one of double length where two are equal', () => {
    fc.assert(fc.property(layout, between(8, 30), ({ firstSpacing: _, ...pipe }, head) => {
      const [one, two] = [{ ...pipe, outlets: 2 * pipe.outlets, furtherReaches: [] }, { ...pipe, furtherReaches: [{ ...pipe }] }].map((each) => laterals.lateralFromInletHead(each, head)) as [laterals.LateralFlow, laterals.LateralFlow];
      one.heads.forEach((at, i) => expect(Math.abs(two.heads[i]! - at)).toBeLessThan(1e-6 * head));
      expect(Math.abs(two.inletFlow / one.inletFlow - 1)).toBeLessThan(1e-6);
    }));
  });

  test('gives less over a hill than on the level and more than all the way up; the reverse through a hollow', () => {
    fc.assert(fc.property(reach, between(0.001, 0.04), between(10, 30), ({ firstSpacing: _, ...half }, slope, head) => {
      const of = (first: number, second: number) => laterals.lateralFromInletHead({ ...half, slope: first, friction: water, furtherReaches: [{ ...half, slope: second }] }, head).inletFlow;
      const rising = [of(slope, slope), of(slope, -slope), of(0, 0), of(-slope, slope), of(-slope, -slope)];
      rising.forEach((flow, i) => expect(flow).toBeGreaterThanOrEqual((rising[i - 1] ?? 0) * (1 - 1e-7)));
    }));
  });

  test('of one emitter is a sum by hand', () => {
    fc.assert(fc.property(plain, between(3, 30), between(0.1, 50), between(0.005, 0.02), between(-0.3, 0.3), between(0, 5), (emitter, head, length, diameter, slope, lossCoefficient) => {
      const flow = emitter.flow * (head / emitter.head) ** emitter.exponent;
      const velocity = flow / ((Math.PI / 4) * diameter ** 2);
      // 10.6668 (Q/C)^1.852 D^-4.871 is 4.727 of the form in feet.
      const inlet = head + length * (4.727 * 0.3048 ** -0.685 * (flow / 140) ** 1.852 * diameter ** -4.871 + slope) + (lossCoefficient * velocity ** 2) / (2 * 9.80665);
      fc.pre(inlet > 0.5);
      const found = laterals.lateralFromInletHead({ outlets: 1, spacing: length, diameter, slope, emitter, connection: { lossCoefficient }, friction: { law: 'Hazen-Williams', coefficient: 140 } }, inlet);
      expect(Math.abs(found.heads[0]! - head)).toBeLessThan(1e-6 * Math.max(head, inlet));
      expect(Math.abs(found.inletFlow / flow - 1)).toBeLessThan(1e-6);
    }));
  });

  test('moves water by the head that it gains as it slows down: the last pressure is higher when that counts', () => {
    fc.assert(fc.property(layout, between(15, 30), (pipe, head) => {
      const still = level({ ...pipe, velocityHead: false, emitter: { flow: 2 * lph, head: 10, exponent: 0.5 } });
      const last = (velocityHead: boolean) => laterals.lateralFromInletHead({ ...still, velocityHead }, head).heads.at(-1)!;
      expect(last(true)).toBeGreaterThan(last(false));
    }));
  });
});

describe('a compensating emitter', () => {
  test('gives its flow between the two heads it regulates from and to, in a lateral as alone', () => {
    fc.assert(fc.property(layout, compensating, (pipe, emitter) => {
      const steady = { ...emitter, exponent: 0, openingHead: 5, highestHead: 100 };
      const { heads, flows } = laterals.lateralFromInletHead({ ...level(pipe), furtherReaches: [], emitter: steady }, 60);
      fc.pre(heads.at(-1)! >= 5);
      flows.forEach((flow) => expect(flow).toBe(steady.flow));
    }));
  });

  test('never gives less for more head, has no step, and its slope is that of its flow', () => {
    fc.assert(fc.property(compensating, between(0, 60), (emitter, head) => {
      const { flow, slope } = laterals.compensatingEmitter(emitter);
      const step = 1e-6 * (head + 1);
      expect(flow(head + step)).toBeGreaterThanOrEqual(flow(head) * (1 - 1e-12));
      for (const edge of [emitter.openingHead, emitter.highestHead]) expect(Math.abs(flow(edge * (1 + 1e-12)) / flow(edge * (1 - 1e-12)) - 1)).toBeLessThan(1e-10);
      fc.pre([emitter.closingHead!, emitter.openingHead, emitter.highestHead].every((edge) => Math.abs(head - edge) > 0.01));
      const risen = (flow(head + step) - flow(head - step)) / (2 * step);
      expect(Math.abs(slope(head) - risen)).toBeLessThan(1e-4 * slope(head) + 1e-9 * emitter.flow);
    }));
  });

  test('is shut at and below its closing head', () => {
    fc.assert(fc.property(compensating, between(0, 1), (emitter, share) => {
      expect(laterals.compensatingEmitter(emitter).flow(share * emitter.closingHead!)).toBe(0);
    }));
  });
});

describe('clogging', () => {
  const flows = fc.array(between(0.5, 8), { minLength: 4, maxLength: 60 });

  test('of none changes nothing, of more leaves the rest less even', () => {
    fc.assert(fc.property(flows, between(0, 0.4), between(0.001, 0.4), (values, share, more) => {
      expect(laterals.christiansenUniformityClogged(values, 0)).toBeCloseTo(laterals.uniformityChristiansen1942(values), 12);
      expect(laterals.lowQuarterUniformityClogged(values, 0)).toBeCloseTo(laterals.lowQuarterUniformityWeighted(values), 12);
      const steady = laterals.statisticalUniformityOfPopulation(values);
      expect(laterals.statisticalUniformityClogged(steady, 0)).toBeCloseTo(steady, 12);
      const worse = Math.min(0.9, share + more);
      expect(laterals.lowQuarterUniformityClogged(values, worse)).toBeLessThanOrEqual(laterals.lowQuarterUniformityClogged(values, share));
      expect(laterals.statisticalUniformityClogged(steady, worse)).toBeLessThan(laterals.statisticalUniformityClogged(steady, share));
    }));
  });
});

describe('flushing', () => {
  test('what is asked of the inlet for a flow at the open end gives that flow', () => {
    fc.assert(fc.property(layout, between(0.1, 2), (pipe, velocity) => {
      const endFlow = velocity * (Math.PI / 4) * (pipe.furtherReaches!.at(-1)?.diameter ?? pipe.diameter) ** 2;
      const needed = laterals.lateralFlushedWith(pipe, endFlow);
      fc.pre(needed.inletHead > 1);
      const found = laterals.lateralFlushedAt(pipe, needed.inletHead);
      expect(Math.abs(found.endFlow / endFlow - 1)).toBeLessThan(1e-6);
      expect(found.inletFlow).toBeGreaterThanOrEqual(found.endFlow);
    }));
  });

  test('more head at the inlet flushes more', () => {
    fc.assert(fc.property(layout, between(3, 30), between(0.1, 5), (pipe, head, more) => {
      expect(laterals.lateralFlushedAt(pipe, head + more).endFlow).toBeGreaterThan(laterals.lateralFlushedAt(pipe, head).endFlow);
    }));
  });
});
