/** Networks as gardens have them, made up from a seed. */
import { plainEmitter, type PlainEmitter } from '../../src/laterals/formulas/emitter.js';
import { frictionLaw } from '../../src/laterals/formulas/friction-law.js';
import type { NetworkLink, NetworkNode } from '../../src/supply/formulas/network.js';
import { pipeLoss } from '../../src/supply/formulas/network-losses.js';
import { pumpCurveThreePoints } from '../../src/supply/formulas/pump-curve.js';
import { epanetGravity, epanetViscosity, type FittedPipe, type PlainNetwork } from './epanet.js';

/** Numbers from 0 to 1, the same for the same seed (mulberry32). */
function randomNumbers(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/**
 * Two to four zones of laterals on sloping manifolds, up to 400 emitters, behind a pump that lifts from a barrel, with a pipe that closes a loop
 * from the head of the main to the end of the last zone. Behind the pump there is a non-return valve in half of them, a filter in half and a regulator in half.
 */
export function randomNetwork(seed: number): PlainNetwork {
  const random = randomNumbers(seed);
  const between = (low: number, high: number): number => low + (high - low) * random();
  const whole = (low: number, high: number): number => Math.floor(between(low, high + 1));
  const friction = random() < 0.5
    ? { law: 'Hazen-Williams', coefficient: between(120, 150) } as const
    : { law: 'Darcy-Weisbach', frictionFactor: 'Swamee-Jain', roughness: 1.5e-6, viscosity: epanetViscosity, gravity: epanetGravity } as const;
  const nodes: NetworkNode[] = [{ elevation: 0, head: between(-1, 2) }, { elevation: between(0, 1) }];
  const links: NetworkLink[] = [];
  const emitters = new Map<number, PlainEmitter>();
  const fitted = new Map<number, FittedPipe>();
  const exponent = between(0.3, 1);
  const lossOf = ({ length, diameter, lossCoefficient }: FittedPipe) => pipeLoss(frictionLaw(friction)(diameter), length, diameter, lossCoefficient, epanetGravity);

  let head = 1;
  const behindPump = (link: (from: number, to: number) => NetworkLink, parts?: FittedPipe): void => {
    if (random() < 0.5) return;
    const to = nodes.push({ elevation: nodes[1]!.elevation }) - 1;
    if (parts) fitted.set(links.length, parts);
    links.push(link(head, to));
    head = to;
  };
  const check = { length: 1, diameter: between(0.02, 0.033), lossCoefficient: between(1, 5) };
  behindPump((from, to) => ({ kind: 'non-return', from, to, law: lossOf(check) }), check);
  const filter = { length: 0, diameter: between(0.02, 0.033), lossCoefficient: between(5, 50) };
  behindPump((from, to) => ({ kind: 'valve', from, to, law: lossOf(filter) }), filter);
  const setting = between(10, 30);
  behindPump((from, to) => ({ kind: 'regulator', from, to, setting }));

  const add = (before: number, rise: number, pipe: { length: number; diameter: number; lossCoefficient?: number }, emitter?: PlainEmitter): number => {
    const elevation = nodes[before]!.elevation + rise;
    const node = nodes.push({ elevation, ...(emitter && { emitter: { law: plainEmitter(emitter) } }) }) - 1;
    if (emitter) emitters.set(node, emitter);
    links.push({ kind: 'pipe', from: before, to: node, ...pipe });
    return node;
  };
  let end = head;
  const zones = whole(2, 4);
  for (let zone = 0; zone < zones; zone++) {
    end = add(end, between(-0.5, 1), { length: between(3, 15), diameter: between(0.02, 0.033), lossCoefficient: between(0, 10) });
    const [laterals, outlets] = [whole(2, 5), whole(5, 20)];
    const manifold = { length: between(0.5, 1.5), diameter: between(0.016, 0.026) };
    const row = { length: between(0.2, 0.5), diameter: between(0.011, 0.018), lossCoefficient: between(0, 1) };
    const [across, along] = [between(-0.03, 0.03), between(-0.03, 0.03)];
    const emitter = { flow: between(1, 8) / 3.6e6, head: 10, exponent };
    for (let lateral = 0; lateral < laterals; lateral++) {
      end = add(end, across * manifold.length, manifold);
      let outlet = end;
      for (let i = 0; i < outlets; i++) outlet = add(outlet, along * row.length, row, emitter);
    }
  }
  links.push({ kind: 'pipe', from: head, to: end, length: between(10, 40), diameter: between(0.012, 0.02) });
  const total = [...emitters.values()].reduce((sum, { flow }) => sum + flow, 0);
  const [shutOff, flow] = [between(20, 50), total * between(0.8, 2)];
  const pumpPoints = [{ flow: 0, head: shutOff }, { flow, head: shutOff * between(0.7, 0.9) }, { flow: 2 * flow, head: shutOff * between(0, 0.5) }];
  links.push({ kind: 'pump', from: 0, to: 1, curve: pumpCurveThreePoints(shutOff, pumpPoints[1]!, pumpPoints[2]!) });
  return { nodes, links, friction, emitters, pumpPoints, fitted, gravity: epanetGravity };
}
