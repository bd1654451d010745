import { standardGravity } from '../../laterals/formulas/head-loss.js';

/**
 * Power that a pump puts into the water: P = ρ g Q H.
 *
 * Divided by the pump's efficiency it is the power at the shaft, and by the motor's the power from the mains.
 *
 * @param flow Q, m³/s
 * @param head H gained, m
 * @param density ρ, kg/m³
 * @param gravity g, m/s²
 * @returns W
 * @example hydraulicPower(0.01, 20, 1000) // => 1961.33
 */
export function hydraulicPower(flow: number, head: number, density: number, gravity = standardGravity): number {
  return density * gravity * flow * head;
}

/** Flow, head and shaft power of a pump: m³/s, m, W. */
export interface PumpPoint {
  readonly flow: number;
  readonly head: number;
  readonly power: number;
}

/**
 * A point of a pump's curve at another speed: Q goes with the speed, H with its square, P with its cube (affinity laws).
 *
 * Range: some 60 to 120 % of the speed that the point was measured at; further down the efficiency falls and P comes out low.
 * Source: the affinity laws of turbomachines, as in any textbook of hydraulics.
 *
 * @param speedShare new speed over the old one
 */
export function pumpPointAtSpeed({ flow, head, power }: PumpPoint, speedShare: number): PumpPoint {
  return { flow: flow * speedShare, head: head * speedShare ** 2, power: power * speedShare ** 3 };
}

/**
 * Speed at which a pump gives another head, by the square law alone: N2 = N1 √(H2/H1).
 *
 * The shortcut of textbooks. It leaves out that the flow moves along with the speed, and so errs by some percent where flow and head do not change
 * along one parabola through the origin; `pumpDuty` follows both.
 *
 * @param speed N1, any unit
 * @param head H1, m, at that speed
 * @param wantedHead H2, m
 */
export function pumpSpeedForHead(speed: number, head: number, wantedHead: number): number {
  return speed * Math.sqrt(wantedHead / head);
}
