import { calculation } from '../calculation/calculation.js';
import { mainsElectricity, pumpSuction } from '../calculation/caution.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { frictionLaw } from '../laterals/formulas/friction-law.js';
import { pipeVelocity } from '../laterals/formulas/head-loss.js';
import { checkRoughness, chosenLaw, diameter, frictionFields, pressureOfHead, refuseRacing } from '../laterals/pipe.js';
import { bracketedRoot } from '../numerics/roots.js';
import { flow, length, pressure } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { fittingFields, totalLossCoefficient } from './fittings.js';
import { pipeLoss } from './formulas/network-losses.js';
import { checkPumpCurve, pumpCurveFields, pumpCurveOf } from './pump-curve-fields.js';

/** Points nearer than this, Pa, are one. */
const leastDifference = 1000;

/**
 * The curve of a pump as its pressure tank and switch see it: flow by the pressure at the tank, with the lift and the suction pipe taken off.
 *
 * Takes the curve of the pump as `pumpDuty` does; how far the gauge at the tank stands above the water that the pump draws (-50 to 50 m, 0 by default);
 * perhaps the pipe of suction and delivery up to the tank, by its inside diameter (1 mm to 1 m), length (0 to 1 km) and fittings (a foot valve, a
 * non-return valve) as `fittingLoss` takes them; the water temperature (20 °C by default) and the friction as in `pipeFriction`; and how many points are
 * wanted (2 to 50; 13 by default). Gives the points as `irrigationCycle` takes them, from the highest pressure down to the end of the curve or to no
 * pressure, the pressure at which the pump gives nothing, and the flow against none. Of points less than 1 kPa apart the last is kept. Whether the pump can
 * draw its water at all, `suction` tells.
 * @throws InputError for input outside these limits, for points out of order, for a pump that does not lift the water to the tank, for a roughness above
 * a twentieth of the diameter, and for water faster than 30 m/s.
 * @example
 * const seen = pumpAtTank({ pumpCurve: [{ flow: '0 L/min', head: '50 m' }, { flow: '15 L/min', head: '42 m' }, { flow: '40 L/min', head: '18 m' }], tankLift: '0.8 m' });
 * seen.shutOffPressure.in('kPa') // => 481.6
 * seen.pumpPoints.length // => 13
 */
export const pumpAtTank = /* @__PURE__ */ calculation({
  id: 'pumpAtTank',
  title: 'Curve of a pump by the pressure at its tank',
  inputs: () => ({
    ...pumpCurveFields(),
    tankLift: field.withDefault(field.quantity(length, { limits: ['-50 m', '50 m'] }), '0 m'),
    suctionLine: field.optional(field.group({ diameter: diameter(), length: field.quantity(length, { limits: ['0 m', '1 km'] }), ...fittingFields() })),
    ...frictionFields(),
    points: field.withDefault(field.count({ limits: [2, 50] }), 13),
  }),
  outputs: () => ({
    pumpPoints: output.list(output.group({ pumpPressure: output.quantity(pressure, 'kPa'), pumpFlow: output.quantity(flow, 'L/min') })),
    shutOffPressure: output.quantity(pressure, 'kPa'),
    mostFlow: output.quantity(flow, 'L/min'),
  }),
  equation: 'p = ρ g (H(Q) − z − J L − ΣK V²/(2 g))',
  sources: ['rossman-2020', 'fritsch-butland-1984', 'colebrook-1939', 'iapws-sr6-08'],
  cautions: [mainsElectricity, pumpSuction],
  example: {
    pumpCurve: [{ flow: '0 L/min', head: '50 m' }, { flow: '15 L/min', head: '42 m' }, { flow: '40 L/min', head: '18 m' }],
    tankLift: '0.8 m', suctionLine: { diameter: '26 mm', length: '2 m', fittings: { 'square entrance': 1, 'swing check valve': 1 } },
  },
  check: (seen, problem) => {
    checkPumpCurve(seen, problem);
    const { suctionLine, roughness } = seen;
    if (suctionLine) checkRoughness({ roughness, diameter: suctionLine.diameter }, problem);
  },
  solve: (seen, { refuse }) => {
    const { pumpCurve, tankLift, suctionLine, waterTemperature, points } = seen;
    const pump = pumpCurveOf(seen);
    const pascals = pressureOfHead(waterTemperature);
    const line = suctionLine && pipeLoss(frictionLaw(chosenLaw(seen))(suctionLine.diameter), suctionLine.length, suctionLine.diameter, totalLossCoefficient(suctionLine));
    const pressureAt = (q: number): number => (pump.head(q) - tankLift - (line?.loss(q) ?? 0)) * pascals;
    const shutOffPressure = pressureAt(0);
    if (shutOffPressure < leastDifference) refuse('tankLift', 'a pump that lifts the water to the tank with pressure to spare', `one that has ${writeNumber(shutOffPressure / 1000)} kPa there at no flow`, 'take a pump with more head, or set the tank lower');

    const last = pumpCurve.length === 1 ? 2 * pumpCurve[0]!.flow : pumpCurve.at(-1)!.flow;
    const mostFlow = pressureAt(last) < 0 ? bracketedRoot(pressureAt, 0, last, { tolerance: 1e-12 * last }).value : last;
    if (suctionLine) refuseRacing(pipeVelocity(mostFlow, suctionLine.diameter), refuse);
    const pumpPoints: { pumpPressure: number; pumpFlow: number }[] = [];
    for (let i = 0; i < points; i++) {
      const pumpFlow = (mostFlow * i) / (points - 1);
      const pumpPressure = Math.max(0, pressureAt(pumpFlow));
      const before = pumpPoints.at(-1)?.pumpPressure ?? Infinity;
      if (pumpPressure > before - leastDifference) pumpPoints.pop();
      pumpPoints.push({ pumpPressure, pumpFlow });
    }
    return { pumpPoints, shutOffPressure, mostFlow };
  },
});
