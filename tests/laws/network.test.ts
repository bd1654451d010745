import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { emitterLaw } from '../../src/laterals/formulas/emitter.js';
import { lateralFromInletHead } from '../../src/laterals/formulas/lateral.js';
import { powerLoss, pumpCurveThreePoints, solveNetwork, type Network, type NetworkFlow, type NetworkLink } from '../../src/supply/index.js';
import { randomNetwork } from '../support/random-network.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Gardens: zones of laterals behind a pump, some with a filter, a non-return valve, a regulator; always a ring. */
const gardens = fc.nat(1_000_000).map(randomNetwork);
const solved = (network: Network): NetworkFlow => solveNetwork(network);
const dropOf = ({ heads }: NetworkFlow, { from, to }: NetworkLink): number => heads[from]! - heads[to]!;
const sum = (all: Iterable<number>): number => [...all].reduce((total, one) => total + one, 0);

describe('a network', () => {
  test('keeps its water: what its barrel gives is what its emitters give, and at each node as much comes as goes', () => {
    fc.assert(fc.property(gardens, (network) => {
      const { flows, outflows } = solved(network);
      const scale = Math.abs(outflows[0]!);
      expect(Math.abs(sum(outflows))).toBeLessThan(1e-7 * scale);
      const surplus = new Float64Array(network.nodes.length);
      network.links.forEach(({ from, to }, link) => {
        surplus[from]! -= flows[link]!;
        surplus[to]! += flows[link]!;
      });
      surplus.forEach((value, node) => expect(Math.abs(value - outflows[node]!)).toBeLessThan(1e-7 * scale));
    }), { numRuns: 30 });
  });

  test('keeps its energy: what the pump adds is what pipes, valves and emitters take', () => {
    fc.assert(fc.property(gardens, (network) => {
      const found = solved(network);
      const inLinks = sum(network.links.map((link, i) => found.flows[i]! * dropOf(found, link)));
      const leaving = sum(network.nodes.map((_, node) => found.outflows[node]! * found.heads[node]!));
      expect(Math.abs(inLinks + leaving)).toBeLessThan(1e-6 * Math.abs(found.outflows[0]!) * 10);
      // Water runs down everywhere but through the pump.
      network.links.forEach((link, i) => { if (link.kind !== 'pump') expect(found.flows[i]! * dropOf(found, link)).toBeGreaterThanOrEqual(-1e-6 * Math.abs(found.flows[i]!) - 1e-18); });
    }), { numRuns: 30 });
  });

  test('does not mind how it is counted, which way its pipes point, and where its heights are counted from', () => {
    fc.assert(fc.property(gardens, between(-50, 50), (network, shift) => {
      const count = network.nodes.length;
      const other = (node: number): number => count - 1 - node;
      const turned: Network = {
        ...network,
        nodes: network.nodes.map(({ elevation, head, ...node }) => ({ ...node, elevation: elevation + shift, ...(head !== undefined && { head: head + shift }) })).reverse(),
        links: network.links.map((link) => (link.kind === 'pipe' ? { ...link, from: other(link.to), to: other(link.from) } : { ...link, from: other(link.from), to: other(link.to) })),
      };
      // A ring that hardly flows is met no better than the heads: these to a nanometre, so that its flow is to a hundred-thousandth.
      const finely = { headTolerance: 1e-9, flowTolerance: 1e-9 };
      const [one, two] = [solveNetwork(network, finely), solveNetwork(turned, finely)];
      one.heads.forEach((head, node) => expect(Math.abs(two.heads[other(node)]! - shift - head)).toBeLessThan(1e-4));
      network.links.forEach(({ kind }, link) => expect(Math.abs(one.flows[link]! - (kind === 'pipe' ? -1 : 1) * two.flows[link]!)).toBeLessThan(1e-5 * Math.abs(one.outflows[0]!)));
    }), { numRuns: 20 });
  });

  test('gives no less in sum for a wider pipe, and no less anywhere for a higher barrel', () => {
    fc.assert(fc.property(gardens, between(0.1, 5), (network, more) => {
      const one = solved(network);
      const higher = solved({ ...network, nodes: network.nodes.map((node, i) => (i === 0 ? { ...node, head: node.head! + more } : node)) });
      one.outflows.forEach((flow, node) => { if (node > 0) expect(higher.outflows[node]!).toBeGreaterThanOrEqual(flow * (1 - 1e-7)); });
      const wider = solved({ ...network, links: network.links.map((link) => (link.kind === 'pipe' ? { ...link, diameter: link.diameter * (1 + more / 10) } : link)) });
      expect(-wider.outflows[0]!).toBeGreaterThanOrEqual(-one.outflows[0]! * (1 - 1e-7));
    }), { numRuns: 20 });
  });

  test('does not mind whether its laterals are taken as one emitter each', () => {
    fc.assert(fc.property(gardens, (network) => {
      // What is drawn at their ends, a drop in a hundred thousand years, keeps them from it.
      const last = new Set(network.links.map(({ to }) => to));
      for (const { from } of network.links) last.delete(from);
      const kept = { ...network, nodes: network.nodes.map((node, i) => (last.has(i) ? { ...node, demand: 1e-20 } : node)) };
      const [one, two] = [solved(network), solved(kept)];
      one.heads.forEach((head, node) => expect(Math.abs(two.heads[node]! - head)).toBeLessThan(1e-4));
      one.outflows.forEach((flow, node) => expect(Math.abs(two.outflows[node]! - flow)).toBeLessThan(1e-6 * Math.abs(one.outflows[0]!)));
    }), { numRuns: 30 });
  });

  test('with one lateral is that lateral', () => {
    fc.assert(fc.property(fc.record({ outlets: fc.integer({ min: 2, max: 60 }), slope: between(-0.03, 0.03), exponent: between(0.2, 1), inletHead: between(4, 20), diameter: between(0.01, 0.02) }), ({ outlets, slope, exponent, inletHead, diameter }) => {
      const emitter = { flow: 1e-6, head: 10, exponent };
      const friction = { law: 'Darcy-Weisbach', roughness: 1.5e-6, viscosity: 1e-6 } as const;
      const alone = lateralFromInletHead({ outlets, spacing: 0.3, diameter, slope, emitter, friction }, inletHead);
      const law = emitterLaw(emitter);
      const { outflows } = solved({
        nodes: Array.from({ length: outlets + 1 }, (_, i) => ({ elevation: slope * 0.3 * i, ...(i === 0 ? { head: inletHead } : { emitter: { law } }) })),
        links: Array.from({ length: outlets }, (_, i) => ({ kind: 'pipe', from: i, to: i + 1, length: 0.3, diameter })), friction,
      });
      alone.flows.forEach((flow, i) => expect(Math.abs(outflows[i + 1]! / flow - 1)).toBeLessThan(1e-6));
    }), { numRuns: 50 });
  });
});

describe('what lets water pass one way', () => {
  const emitter = (flow: number) => ({ law: emitterLaw({ flow, head: 10, exponent: 0.5 }) });
  const friction = { law: 'Hazen-Williams', coefficient: 150 } as const;

  test('a regulator never lets more pressure by than it is set to, and none flows back', () => {
    fc.assert(fc.property(between(1, 60), between(1, 60), between(0, 20), between(-5, 5), (before, setting, height, other) => {
      // A second source behind it may hold the pressure above what it is set to.
      const network: Network = {
        nodes: [{ elevation: 0, head: before }, { elevation: height, emitter: emitter(1e-5) }, { elevation: 0, head: before + other }],
        links: [{ kind: 'regulator', from: 0, to: 1, setting }, { kind: 'pipe', from: 2, to: 1, length: 200, diameter: 0.008 }], friction,
      };
      const { heads, flows } = solved(network);
      expect(flows[0]!).toBeGreaterThanOrEqual(0);
      if (flows[0]! > 0) expect(heads[1]! - height).toBeLessThanOrEqual(setting + 1e-6);
      if (flows[0]! > 0) expect(heads[1]!).toBeLessThanOrEqual(before + 1e-6);
      if (flows[0] === 0) expect(heads[1]!).toBeGreaterThanOrEqual(Math.min(before, height + setting) - 1e-6);
    }));
  });

  test('a non-return valve is open or closed, as the heads have it; the same for a pump and its shut-off head', () => {
    const curve = pumpCurveThreePoints(20, { flow: 1e-4, head: 15 }, { flow: 2e-4, head: 5 });
    fc.assert(fc.property(between(0, 40), between(0, 40), fc.constantFrom<'pump' | 'non-return'>('pump', 'non-return'), (one, two, kind) => {
      const link: NetworkLink = kind === 'pump' ? { kind, from: 0, to: 1, curve } : { kind, from: 0, to: 1, law: powerLoss(1e-4, 1) };
      const { heads, flows } = solved({ nodes: [{ elevation: 0, head: one }, { elevation: 0, emitter: emitter(1e-6) }, { elevation: 0, head: two }], links: [link, { kind: 'pipe', from: 1, to: 2, length: 50, diameter: 0.012 }], friction });
      const lift = kind === 'pump' ? 20 : 0;
      expect(flows[0]!).toBeGreaterThanOrEqual(0);
      if (flows[0] === 0) expect(heads[1]!).toBeGreaterThanOrEqual(one + lift - 1e-6);
      else expect(heads[1]!).toBeLessThanOrEqual(one + lift + 1e-6);
    }));
  });

  test('what is shut off lies dry, and the rest does not notice', () => {
    fc.assert(fc.property(gardens, (network) => {
      const size = network.nodes.length;
      const shutOff: Network = { ...network, nodes: [...network.nodes, { elevation: 3, emitter: emitter(1e-6) }, { elevation: 4, demand: 1 }], links: [...network.links, { kind: 'shut', from: 1, to: size }, { kind: 'pipe', from: size, to: size + 1, length: 1, diameter: 0.02 }] };
      const [alone, together] = [solved(network), solved(shutOff)];
      expect([...together.heads.subarray(size)]).toEqual([3, 4]);
      expect([...together.outflows.subarray(size), ...together.flows.subarray(network.links.length)].map(Math.abs)).toEqual([0, 0, 0, 0]);
      alone.heads.forEach((head, node) => expect(Math.abs(together.heads[node]! - head)).toBeLessThan(1e-5));
    }), { numRuns: 10 });
  });
});
