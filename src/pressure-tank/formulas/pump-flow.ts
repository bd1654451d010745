/** A point of a pump's curve: gauge pressure at the tank, Pa, and the flow that the pump gives there, m3/s. */
export interface PumpPressurePoint {
  readonly pressure: number;
  readonly flow: number;
}

/**
 * Flow of a pump at a pressure, from points of its curve: the square of the flow goes straight from point to point.
 *
 *   q² = q1² + (q2² - q1²) (p - p1)/(p2 - p1), that is p = a - c q² between two points
 *
 * Exact for a curve p = a - c q², which is the usual form of a centrifugal pump's; against p = 35 - 0.041 q^1.72 through three points far apart it
 * is off by up to 7 %. Below the lowest pressure the flow there is kept, which is on the safe side; above the highest the last piece goes on to
 * no flow. A single point is a pump that gives its flow at any pressure.
 *
 * @param points in the order of rising pressure, no flow above the one before
 * @param pressure gauge, Pa
 * @returns m3/s
 * @example pumpFlowFromPoints([{ pressure: 0, flow: 2 }, { pressure: 400, flow: 0 }], 300) // => 1
 */
export function pumpFlowFromPoints(points: readonly PumpPressurePoint[], pressure: number): number {
  const [first] = points;
  if (!first || points.length === 1 || pressure <= first.pressure) return first?.flow ?? 0;
  let i = 1;
  while (i < points.length - 1 && points[i]!.pressure < pressure) i++;
  const [low, high] = [points[i - 1]!, points[i]!];
  const share = (pressure - low.pressure) / (high.pressure - low.pressure);
  return Math.sqrt(Math.max(0, low.flow ** 2 + share * (high.flow ** 2 - low.flow ** 2)));
}
