import { bracketedRoot, type Root } from '../../numerics/roots.js';

/** Head, m, at a flow, m³/s. */
export type HeadAtFlow = (flow: number) => number;

/** Head, m, that a system takes at a flow, m³/s: h = hs + h1 (Q/Q1)^m, from the head at no flow and the loss at one flow. */
export function systemHead(flow: number, staticHead: number, referenceFlow: number, referenceLoss: number, exponent = 2): number {
  return staticHead + referenceLoss * (flow / referenceFlow) ** exponent;
}

/**
 * The flow at which a pump gives just the head that its system takes; the residual is in m.
 *
 * Throws ConvergenceError where the system takes more than the pump gives even at no flow, or less at a billion times the first guess.
 *
 * @param near a flow of the size that is to be expected, m³/s
 */
export function dutyFlow(pumpHead: HeadAtFlow, takenHead: HeadAtFlow, near: number): Root {
  const spare = (q: number) => pumpHead(q) - takenHead(q);
  let most = near;
  for (let doublings = 0; doublings < 30 && spare(most) > 0; doublings++) most *= 2;
  return bracketedRoot(spare, 0, most);
}

/** Speed, as a share of that of its curve, at which a pump gives a flow against a head: s² h(Q/s) = H. Speeds from a hundredth to tenfold are looked through. */
export function speedForFlow(pumpHead: HeadAtFlow, flow: number, head: number): Root {
  return bracketedRoot((share) => share * share * pumpHead(flow / share) - head, 0.01, 10);
}
