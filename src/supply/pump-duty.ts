import { calculation, type Solving } from '../calculation/calculation.js';
import { mainsElectricity, pumpSuction } from '../calculation/caution.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { bracketedRoot } from '../numerics/roots.js';
import { waterTemperature } from '../laterals/pipe.js';
import { flow, head, power, share } from '../units/dimensions.js';
import { litresPerMinute } from '../units/in-words.js';
import { writeNumber } from '../units/write.js';
import { waterDensityIapws2008 } from '../water/density.js';
import { hydraulicPower } from './formulas/pump.js';
import { pumpCurveThroughPoints, type PumpCurvePoint } from './formulas/pump-curve.js';
import { dutyFlow, speedForFlow, systemHead, type HeadAtFlow } from './formulas/pump-duty.js';
import { checkCurveOrder, checkPumpCurve, curvePoint, pumpCurveFields, pumpCurveOf } from './pump-curve-fields.js';
import { roundedUp } from '../numerics/round-outward.js';

/** Where the affinity laws hold, as shares of the speed of the curve. Common practice, no source. */
const usualSpeeds = [0.6, 1.2] as const;

/** A pump that gives less than this share of the most on its curve churns the same water and warms it. Common practice, no source. */
const nearShutOff = 0.1;

/**
 * What a pump gives in its system: flow, head and power, and the speed for another flow.
 *
 * Takes the curve of the pump as one to fifty points of flow (0 to 10 000 m³/h) and head (0 to 1000 m), in rising order of flow with falling heads: one
 * point, away from both ends, is taken as a good point of an ordinary centrifugal pump; of three with the first at no flow `power law` makes a - b Q^c; else
 * a smooth curve goes through them. Takes the system as the head at no flow (-100 to 500 m: the lift and the pressure wanted) and the loss at
 * one flow (1 mm to 1000 m, growing with the square unless told otherwise), or as two to fifty points in rising order. With the efficiency of the pump
 * (5 to 95 %), and of the motor (20 to 100 %), it gives the power at the shaft and from the mains, and with a wanted flow the speed, as a share of that of the
 * curve, that it takes in the same system.
 * @throws InputError for input outside these limits, for points out of order, for both or neither form of the system, and for a system that takes more
 * head than the pump has, or none.
 * @example
 * const duty = pumpDuty({ pumpCurve: [{ flow: '0 L/min', head: '35 m' }, { flow: '20 L/min', head: '28 m' }, { flow: '40 L/min', head: '12 m' }], system: { staticHead: '12 m', referenceFlow: '20 L/min', referenceHeadLoss: '9 m' }, pumpEfficiency: '40 %' });
 * duty.flow.in('L/min') // => 24.45
 * duty.head.in('m') // => 25.45
 * duty.shaftPower?.in('W') // => 253.9
 */
export const pumpDuty = /* @__PURE__ */ calculation({
  id: 'pumpDuty',
  title: 'What a pump gives in its system',
  inputs: () => ({
    ...pumpCurveFields(),
    system: field.optional(field.group({
      staticHead: field.quantity(head, { limits: ['-100 m', '500 m'] }),
      referenceFlow: field.quantity(flow, { limits: ['1 L/h', '10000 m³/h'] }),
      referenceHeadLoss: field.quantity(head, { limits: ['0.001 m', '1000 m'] }),
      lossExponent: field.withDefault(field.number({ limits: [1, 2] }), 2),
    })),
    systemCurve: field.optional(field.list(curvePoint('-100 m'), { limits: [2, 50] })),
    wantedFlow: field.optional(field.quantity(flow, { limits: ['1 L/h', '10000 m³/h'] })),
    pumpEfficiency: field.optional(field.share({ limits: [0.05, 0.95] })),
    motorEfficiency: field.optional(field.share({ limits: [0.2, 1] })),
    waterTemperature: waterTemperature(),
  }),
  outputs: () => ({
    flow: output.quantity(flow, 'L/min'),
    head: output.quantity(head, 'm'),
    hydraulicPower: output.quantity(power, 'W'),
    shaftPower: output.optional(output.quantity(power, 'W')),
    electricPower: output.optional(output.quantity(power, 'W')),
    speedForWantedFlow: output.optional(output.quantity(share, '%')),
    convergence: output.group({ headResidual: output.quantity(head, 'm'), steps: output.number() }),
  }),
  equation: 'h_pump(Q) = h_s + h_1 (Q/Q_1)^m; P = ρ g Q h/η; Q ∝ N, h ∝ N²',
  sources: ['rossman-2020', 'maurer-hydraulics', 'fritsch-butland-1984', 'iapws-sr6-08'],
  cautions: [mainsElectricity, pumpSuction],
  example: {
    pumpCurve: [{ flow: '0 L/min', head: '35 m' }, { flow: '20 L/min', head: '28 m' }, { flow: '40 L/min', head: '12 m' }],
    system: { staticHead: '12 m', referenceFlow: '20 L/min', referenceHeadLoss: '9 m' },
    wantedFlow: '18 L/min', pumpEfficiency: '40 %', motorEfficiency: '70 %',
  },
  check: (seen, problem) => {
    expectExactlyOne(seen, ['system', 'systemCurve'], problem);
    checkPumpCurve(seen, problem);
    const { systemCurve, pumpEfficiency, motorEfficiency } = seen;
    if (systemCurve) checkCurveOrder(systemCurve, 'systemCurve', 'rises', problem);
    if (motorEfficiency !== undefined && pumpEfficiency === undefined) problem(['pumpEfficiency'], 'the efficiency of the pump, beside that of the motor', 'none');
  },
  solve: (seen, solving) => {
    const { pumpCurve, system, systemCurve, wantedFlow, pumpEfficiency, motorEfficiency, waterTemperature } = seen;
    const { refuse } = solving;
    const pump = pumpCurveOf(seen);
    const pumpHead: HeadAtFlow = (q) => pump.head(q);
    const path = system ? 'system' : 'systemCurve';
    const takes = system
      ? (q: number) => systemHead(q, system.staticHead, system.referenceFlow, system.referenceHeadLoss, system.lossExponent)
      : headThroughRising(systemCurve!);
    const shutOff = pumpHead(0);
    if (takes(0) >= shutOff) refuse(path, `a head below the ${writeNumber(shutOff)} m that the pump has at no flow`, `${writeNumber(takes(0))} m`, 'water in it would stand still or run back: take a pump with more head');
    const { value, residual, steps } = dutyFlow(pumpHead, takes, pumpCurve.at(-1)!.flow);
    const head = pumpHead(value);
    if (head <= 0) refuse(path, 'a head that asks for a pump', `${writeNumber(takes(0))} m at no flow, down which the water runs by itself faster than the pump can push`);
    noteDuty(value, pumpCurve, pumpHead, takes, solving);
    const inWater = hydraulicPower(value, head, waterDensityIapws2008(waterTemperature));
    const shaftPower = pumpEfficiency && inWater / pumpEfficiency;
    return {
      flow: value, head, hydraulicPower: inWater, shaftPower,
      electricPower: shaftPower && motorEfficiency && shaftPower / motorEfficiency,
      speedForWantedFlow: wantedFlow && speedFor(wantedFlow, pumpHead, takes(wantedFlow), solving),
      convergence: { headResidual: residual, steps },
    };
  },
});

/** A smooth curve through points with rising heads: that of a pump, upside down. */
function headThroughRising(points: readonly PumpCurvePoint[]): HeadAtFlow {
  const fallen = pumpCurveThroughPoints(points.map(({ flow, head }) => ({ flow, head: -head })));
  return (q) => -fallen.head(q);
}

/** Says so where the pump runs outside its curve, or near the end of it where it warms the water. */
function noteDuty(flow: number, points: readonly PumpCurvePoint[], pumpHead: HeadAtFlow, takes: HeadAtFlow, { note }: Solving): void {
  const [first, last] = [points[0]!, points.at(-1)!];
  if (points.length > 1 && flow > last.flow) {
    note('caution', 'outside-curve', 'flow', `The pump gives more than its curve shows, which ends at ${litresPerMinute(last.flow)}: it may overload its motor. Throttle it by ${writeNumber(pumpHead(last.flow) - takes(last.flow))} m, or take a smaller one.`);
  } else if (points.length > 1 && flow < first.flow) {
    note('caution', 'outside-curve', 'flow', `The pump gives less than its curve shows, which starts at ${litresPerMinute(first.flow)}: take the result with care.`);
  }
  const most = points.length > 1 ? last.flow : 2 * first.flow;
  if (flow < nearShutOff * most) note('caution', 'near-shut-off', 'flow', `The pump gives ${writeNumber((100 * flow) / most)} % of what it could and churns the same water, which warms: ${remedyNearShutOff(nearShutOff * most, pumpHead, takes)}.`);
}

/** What to do about a pump that gives less than is good for it: some run back where it still lifts the rest, or more head. */
function remedyNearShutOff(least: number, pumpHead: HeadAtFlow, takes: HeadAtFlow): string {
  const head = pumpHead(least);
  if (takes(0) >= head) return `its head hardly carries the water up; take one with more head, at least ${roundedUp(takes(least))} m at ${litresPerMinute(least)}`;
  const { value } = bracketedRoot((flow) => head - takes(flow), 0, least);
  return `take a smaller one, or let ${litresPerMinute(least - value)} run back to the barrel, which leaves ${litresPerMinute(value)}`;
}

/** Speed for a wanted flow as a share of that of the curve; says so where the laws behind it no longer hold. */
function speedFor(flow: number, pumpHead: HeadAtFlow, head: number, { note, refuse }: Solving): number {
  if (head <= 0) refuse('wantedFlow', 'a flow that asks for a pump', `${litresPerMinute(flow)}, which runs by itself`);
  const spare = (share: number) => share * share * pumpHead(flow / share) - head;
  if (spare(0.01) >= 0 || spare(10) <= 0) refuse('wantedFlow', 'a flow for which the pump takes between a hundredth and ten times its speed', litresPerMinute(flow));
  const { value } = speedForFlow(pumpHead, flow, head);
  const [low, high] = usualSpeeds;
  if (value < low || value > high) note('caution', 'far-from-curve', 'speedForWantedFlow', `${writeNumber(100 * value)} % of its speed is outside ${100 * low} to ${100 * high} %, where the affinity laws hold${value > high ? '; ask the maker before running it faster' : ''}.`);
  return value;
}
