/** The curve of a pump as the calculations of this folder take it: points of pressure at the tank and flow. */
import type { AddProblem } from '../calculation/problem.js';
import * as field from '../calculation/field.js';
import { flow, pressure } from '../units/dimensions.js';
import type { PumpPressurePoint } from './formulas/pump-flow.js';

interface SeenPoint {
  readonly pumpPressure: number;
  readonly pumpFlow: number;
}

/** Least difference of pressure between two points, Pa. */
const leastDifference = 1000;

const inOrder = (points: readonly SeenPoint[]): readonly SeenPoint[] => [...points].sort((a, b) => a.pumpPressure - b.pumpPressure);

/** Points of the curve in any order; one alone is a pump that gives its flow at any pressure. */
export const pumpPoints = () =>
  field.list(field.group({
    pumpPressure: field.quantity(pressure, { limits: ['0 kPa', '3 MPa'] }),
    pumpFlow: field.quantity(flow, { limits: ['0 L/h', '100 m³/h'] }),
  }), { limits: [1, 50] });

/** Finds a curve on which the flow rises with the pressure, or that gives nothing. */
export function checkPumpPoints(points: readonly SeenPoint[], problem: AddProblem): void {
  const sorted = inOrder(points);
  const isAmiss = sorted.some(({ pumpPressure, pumpFlow }, i) => i > 0 && (pumpPressure < sorted[i - 1]!.pumpPressure + leastDifference || pumpFlow > sorted[i - 1]!.pumpFlow));
  if (isAmiss) problem(['pumpPoints'], 'points at least 1 kPa apart, with no more flow at a higher pressure', 'others', 'a pump gives less against more pressure');
  else if (sorted[0]!.pumpFlow < 1e-3 / 3600) problem(['pumpPoints'], 'a flow of at least 1 L/h at the lowest pressure', 'less');
}

/** The points as the formula takes them. */
export const curveOf = (points: readonly SeenPoint[]): readonly PumpPressurePoint[] => inOrder(points).map(({ pumpPressure, pumpFlow }) => ({ pressure: pumpPressure, flow: pumpFlow }));
