import { standardGravity } from '../../laterals/formulas/head-loss.js';

/**
 * Flow out of a hole under a head of water: Q = Cd a √(2 g h).
 *
 * Source: Torricelli (1644), with a discharge coefficient.
 *
 * @param head h above the middle of the hole, m
 * @param area a of the hole, m²
 * @param dischargeCoefficient Cd: 0.6 for a sharp edge, 0.8 for a short stub, near 1 for a rounded mouth
 * @returns m³/s
 */
export function flowThroughOrifice(head: number, area: number, dischargeCoefficient: number, gravity = standardGravity): number {
  return dischargeCoefficient * area * Math.sqrt(2 * gravity * head);
}

/**
 * Time in which an upright tank empties through a hole from one head to a lower one: t = 2 A (√h1 − √h2)/(Cd a √(2 g)).
 *
 * @param tankArea A of the water's surface, m²
 * @param startHead h1, m
 * @param endHead h2, m; 0 to empty it down to the hole
 * @param area a of the hole, m²
 * @param dischargeCoefficient Cd
 * @returns s
 */
export function emptyingTimeThroughOrifice(
  tankArea: number, startHead: number, endHead: number, area: number, dischargeCoefficient: number, gravity = standardGravity,
): number {
  return (2 * tankArea * (Math.sqrt(startHead) - Math.sqrt(endHead))) / (dischargeCoefficient * area * Math.sqrt(2 * gravity));
}

/** Steps of the sum that stands for the integral; twice as many change the time by less than a millionth. */
const steps = 512;

/**
 * Time in which an upright tank empties through whatever takes a head h(Q) at a flow Q: t = A ∫ dh/Q, by parts A (h1/Q1 − h2/Q2 + ∫ (h/Q) d ln Q).
 *
 * So the head is asked for at a flow, never the flow at a head, and no step needs a root. Simpson's rule over equal steps of ln Q.
 *
 * @param tankArea A of the water's surface, m²
 * @param headAtFlow h(Q), m, rising with Q
 * @param startFlow Q1, m³/s, at the first head
 * @param endFlow Q2, m³/s, at the last; above zero
 * @returns s
 */
export function emptyingTimeThrough(tankArea: number, headAtFlow: (flow: number) => number, startFlow: number, endFlow: number): number {
  const perFlow = (flow: number) => headAtFlow(flow) / flow;
  const step = Math.log(startFlow / endFlow) / steps;
  let sum = perFlow(startFlow) + perFlow(endFlow);
  for (let i = 1; i < steps; i++) sum += (i % 2 === 1 ? 4 : 2) * perFlow(endFlow * Math.exp(i * step));
  return tankArea * (perFlow(startFlow) - perFlow(endFlow) + (sum * step) / 3);
}
