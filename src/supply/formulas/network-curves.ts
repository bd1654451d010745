/** The curves of a network's links. */
import { frictionLaw } from '../../laterals/formulas/friction-law.js';
import type { Network, NetworkLink } from './network.js';
import type { EmittersLaw } from './network-emitters.js';
import { pipeLoss, type HeadLossLaw } from './network-losses.js';

/** A link as a curve: the head it takes, which a pump makes less than none, against its flow. */
export interface LinkCurve extends HeadLossLaw {
  readonly isOneWay: boolean;
  /** Head at its inlet above which it takes no more of it. */
  readonly highestInlet: number;
  /** Flow to start from. */
  readonly start: number;
  /** Head over flow by which the two are weighed against each other when it opens and closes. */
  readonly weight: number;
  /** Flow below which its slope is taken to be what it is there. */
  readonly least: number;
}

/** The head that a link takes at a flow, with the sign of the flow. */
export const lossAt = ({ loss }: LinkCurve, flow: number): number => (flow < 0 ? -loss(-flow) : loss(flow));

/** How fast the loss of a link grows with a flow (not negative) at which it takes so much. */
export const slopeAt = ({ slope, least }: LinkCurve, flow: number, loss: number): number => (flow < least ? slope(least) : slope(flow, loss));

/** The search starts from this velocity in pipes, m/s, and where there is no pipe from this flow, m3/s, but nowhere from more loss than this, m. */
const [startVelocity, startFlow, startLoss] = [0.3, 1e-4, 30];

/** Slopes are not followed down to nothing: below this share of the flow at the start, and this loss, m, they are taken to be what they are there. */
const [leastShare, leastLoss] = [1e-3, 1e-7];

/** The first of a flow, a quarter of it, and so on, that loses no more than it should beside what is lost at no flow. */
function flowWithin(most: number, flow: number, { loss }: HeadLossLaw): number {
  let within = flow;
  while (loss(within) - loss(0) > most && within > 1e-15) within /= 4;
  return within;
}

/** A loss of an ideal regulator that is none, m at 1 m3/s: a tenth of a millimetre at 10 L/s. */
const idealSlope = 0.01;
const ideal: HeadLossLaw = { loss: (flow) => idealSlope * flow, slope: () => idealSlope };

const area = (diameter: number): number => (Math.PI / 4) * diameter * diameter;

/** A link that stays closed, as no head at its inlet counts. */
export const shut: LinkCurve = { loss: () => 0, slope: () => 1, isOneWay: true, highestInlet: -Infinity, start: 0, weight: 1, least: 0 };

/** Flow of the size that is to be expected: all that is drawn and that emitters usually give, or where there is nothing of these what the widest pipe carries. */
function expectedFlow({ nodes, links }: Network, emitters: readonly (EmittersLaw | undefined)[]): number {
  const drawn = nodes.reduce((sum, { demand = 0 }, node) => sum + Math.abs(demand) + (emitters[node]?.usualFlow ?? 0), 0);
  const widest = links.reduce((most, link) => (link.kind === 'pipe' ? Math.max(most, link.diameter) : most), 0);
  return drawn || area(widest) * startVelocity || startFlow;
}

/** The curves of all links. */
export function linkCurves(network: Network, emitters: readonly (EmittersLaw | undefined)[]): readonly LinkCurve[] {
  const { nodes, links, friction, gravity } = network;
  const law = typeof friction === 'function' ? friction : frictionLaw(friction);
  const gradients = new Map<number, (flow: number) => number>();
  const gradientIn = (diameter: number): ((flow: number) => number) => {
    const known = gradients.get(diameter);
    if (known) return known;
    const made = law(diameter);
    gradients.set(diameter, made);
    return made;
  };
  const expected = expectedFlow(network, emitters);
  let last: { readonly pipe: NetworkLink & { readonly kind: 'pipe' }; readonly curve: LinkCurve } | undefined;
  const pipeCurve = (pipe: NetworkLink & { readonly kind: 'pipe' }): LinkCurve => {
    const { length, diameter, lossCoefficient } = pipe;
    if (last?.pipe.length === length && last.pipe.diameter === diameter && last.pipe.lossCoefficient === lossCoefficient) return last.curve;
    last = { pipe, curve: curve(pipeLoss(gradientIn(diameter), length, diameter, lossCoefficient, gravity), Math.min(expected, area(diameter) * startVelocity), false) };
    return last.curve;
  };
  const curve = ({ loss, slope }: HeadLossLaw, flow: number, isOneWay: boolean, highestInlet = Infinity): LinkCurve => {
    const start = flowWithin(startLoss, flow, { loss, slope });
    return { loss, slope, isOneWay, highestInlet, start, weight: (loss(start) - loss(0) + 1) / start, least: flowWithin(leastLoss, start * leastShare, { loss, slope }) };
  };
  const curveOf = (link: NetworkLink): LinkCurve => {
    switch (link.kind) {
      case 'pipe': return pipeCurve(link);
      case 'valve': return curve(link.law, expected, false);
      case 'non-return': return curve(link.law, expected, true);
      case 'pump': return curve({ loss: (flow) => -link.curve.head(flow), slope: (flow) => -link.curve.slope(flow) }, expected, true);
      case 'shut': return shut;
      case 'regulator': return curve(link.law ?? ideal, expected, true, nodes[link.to]!.elevation + link.setting);
    }
  };
  return links.map(curveOf);
}
