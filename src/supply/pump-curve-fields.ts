/** How calculations are told the curve of a pump. */
import type { AddProblem } from '../calculation/problem.js';
import type { SeenFields } from '../calculation/field-types.js';
import * as field from '../calculation/field.js';
import { flow, head } from '../units/dimensions.js';
import { pumpCurveOnePoint, pumpCurveThreePoints, pumpCurveThroughPoints, type PumpCurve, type PumpCurvePoint } from './formulas/pump-curve.js';

/** Points of a curve nearer than this, m³/s and m, are one: 4 mL/h and a tenth of a millimetre. */
const leastStep = { flow: 1e-9, head: 1e-4 } as const;

/** A point of a curve of head over flow. */
export const curvePoint = (lowest: '0 m' | '-100 m') => field.group({
  flow: field.quantity(flow, { limits: ['0 L/h', '10000 m³/h'] }),
  head: field.quantity(head, { limits: [lowest, '1000 m'] }),
});

export const pumpCurveFields = () => ({
  pumpCurve: field.list(curvePoint('0 m'), { limits: [1, 50] }),
  curveShape: field.withDefault(field.choice(['through the points', 'power law']), 'through the points'),
});

/** What a calculation sees of it. */
export type SeenPumpCurve = SeenFields<ReturnType<typeof pumpCurveFields>>;

/** Finds points out of order: flows rise from each to the next, heads rise or fall. */
export function checkCurveOrder(points: readonly PumpCurvePoint[], path: string, heads: 'rises' | 'falls', problem: AddProblem): void {
  const [way, wanted, got] = heads === 'rises' ? [1, 'above', 'higher'] as const : [-1, 'below', 'lower'] as const;
  points.forEach(({ flow, head }, i) => {
    const before = points[i - 1];
    if (before && flow - before.flow < leastStep.flow) problem([path, i, 'flow'], 'a flow above that of the point before', 'one no higher');
    if (before && way * (head - before.head) < leastStep.head) problem([path, i, 'head'], `a head ${wanted} that of the point before`, `one no ${got}`);
  });
}

/** Finds points that make no curve. */
export const checkPumpCurve: field.GroupCheck<SeenPumpCurve> = ({ pumpCurve, curveShape }, problem) => {
  const [first] = pumpCurve;
  checkCurveOrder(pumpCurve, 'pumpCurve', 'falls', problem);
  if (pumpCurve.length === 1 && (first!.flow < leastStep.flow || first!.head < leastStep.head)) problem(['pumpCurve', 0], 'a point with flow and head, where there is only one', 'one without');
  if (curveShape === 'power law' && (pumpCurve.length !== 3 || first!.flow > 0)) problem(['curveShape'], 'three points, the first at no flow, for a power law', 'others');
};

/** The curve that was told: one point is taken as a good point of an ordinary centrifugal pump. */
export function pumpCurveOf({ pumpCurve, curveShape }: SeenPumpCurve): PumpCurve {
  const [first, middle, last] = pumpCurve;
  if (pumpCurve.length === 1) return pumpCurveOnePoint(first!);
  return curveShape === 'power law' ? pumpCurveThreePoints(first!.head, middle!, last!) : pumpCurveThroughPoints(pumpCurve);
}
