import { calculation } from '../calculation/calculation.js';
import { mainsElectricity, pumpSuction } from '../calculation/caution.js';
import { atmosphericPressureField } from '../calculation/common-fields.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { frictionLaw } from '../laterals/formulas/friction-law.js';
import { pipeVelocity } from '../laterals/formulas/head-loss.js';
import { checkRoughness, chosenLaw, diameter, frictionFields, pressureOfHead, refuseRacing } from '../laterals/pipe.js';
import { bracketedRoot } from '../numerics/roots.js';
import { flow, length, pressure } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { waterDensityIapws2008 } from '../water/density.js';
import { saturationPressureOverWater } from '../water/saturation/over-water.js';
import { fittingFields, totalLossCoefficient } from './fittings.js';
import { pipeLoss } from './formulas/network-losses.js';
import { netPositiveSuctionHead } from './formulas/suction.js';
import { checkPumpCurve, pumpCurveFields, pumpCurveOf } from './pump-curve-fields.js';

/** Points nearer than this, Pa, are one. */
const leastDifference = 1000;

/**
 * The curve of a pump as its pressure tank and switch see it: flow by the pressure at the tank, with the lift and the suction pipe taken off.
 *
 * Takes the curve of the pump as `pumpDuty` does; how far the gauge at the tank stands above the water that the pump draws (-50 to 50 m, 0 by default);
 * perhaps the pipe of suction and delivery up to the tank, by its inside diameter (1 mm to 1 m), length (0 to 1 km) and fittings (a foot valve, a
 * non-return valve) as `fittingLoss` takes them; the water temperature (20 °C by default) and the friction as in `pipeFriction`; and how many points are
 * wanted (2 to 50; 13 by default). With a pipe of suction the points end where the atmosphere (50 to 110 kPa) pushes no more water up it: the pump is
 * taken to stand as high as the tank unless its own height above the water is given (-50 to 15 m), and the whole pipe to be before it.
 * Whether the pump draws well up to there, `suction` tells. Gives the points as `irrigationCycle` takes them, from the highest pressure down to the end
 * of the curve, of the suction or of the pressure, the pressure at which the pump gives nothing, and the most that it gives. Points less than 1 kPa from
 * their neighbours are left out, but never the first and the last.
 * @throws InputError for input outside these limits, for points out of order, for a pump that does not lift the water to the tank or whose curve is
 * flat, for a suction that breaks before any water flows, for its lift without its pipe, for a roughness above a twentieth of the diameter, and for water
 * faster than 30 m/s.
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
    suctionLift: field.optional(field.quantity(length, { limits: ['-50 m', '15 m'] })),
    ...frictionFields(),
    atmosphericPressure: atmosphericPressureField(),
    points: field.withDefault(field.count({ limits: [2, 50] }), 13),
  }),
  outputs: () => ({
    pumpPoints: output.list(output.group({ pumpPressure: output.quantity(pressure, 'kPa'), pumpFlow: output.quantity(flow, 'L/min') })),
    shutOffPressure: output.quantity(pressure, 'kPa'),
    mostFlow: output.quantity(flow, 'L/min'),
  }),
  equation: 'p = ρ g (H(Q) − z − J L − ΣK V²/(2 g))',
  sources: ['rossman-2020', 'fritsch-butland-1984', 'colebrook-1939', 'bachus-custodio-2003', 'iapws-if97', 'iapws-sr6-08'],
  cautions: [mainsElectricity, pumpSuction],
  example: {
    pumpCurve: [{ flow: '0 L/min', head: '50 m' }, { flow: '15 L/min', head: '42 m' }, { flow: '40 L/min', head: '18 m' }],
    tankLift: '0.8 m', suctionLine: { diameter: '26 mm', length: '2 m', fittings: { 'square entrance': 1, 'swing check valve': 1 } },
  },
  check: (seen, problem) => {
    checkPumpCurve(seen, problem);
    const { suctionLine, suctionLift, roughness } = seen;
    if (suctionLift !== undefined && !suctionLine) problem(['suctionLine'], 'the pipe that it is the lift of', 'none');
    if (suctionLine) checkRoughness({ roughness, diameter: suctionLine.diameter }, problem);
  },
  solve: (seen, { note, refuse }) => {
    const { pumpCurve, tankLift, suctionLine, suctionLift = tankLift, waterTemperature, atmosphericPressure, points } = seen;
    const pump = pumpCurveOf(seen);
    const pascals = pressureOfHead(waterTemperature);
    const line = suctionLine && pipeLoss(frictionLaw(chosenLaw(seen))(suctionLine.diameter), suctionLine.length, suctionLine.diameter, totalLossCoefficient(suctionLine));
    const pressureAt = (q: number): number => (pump.head(q) - tankLift - (line?.loss(q) ?? 0)) * pascals;
    const shutOffPressure = pressureAt(0);
    if (shutOffPressure < leastDifference) refuse('tankLift', 'a pump that lifts the water to the tank with pressure to spare', `one that has ${writeNumber(shutOffPressure / 1000)} kPa there at no flow`, 'take a pump with more head, or set the tank lower');

    const last = pumpCurve.length === 1 ? 2 * pumpCurve[0]!.flow : pumpCurve.at(-1)!.flow;
    const whereNone = (left: (q: number) => number, end: number): number => (left(end) < 0 ? bracketedRoot(left, 0, end, { tolerance: 1e-12 * end }).value : end);
    const unbroken = whereNone(pressureAt, last);
    const suctionHead = (q: number): number => netPositiveSuctionHead(atmosphericPressure, saturationPressureOverWater(waterTemperature), suctionLift, line?.loss(q) ?? 0, waterDensityIapws2008(waterTemperature));
    const mostFlow = !line ? unbroken : suctionHead(0) > 0 ? whereNone(suctionHead, unbroken) : 0;
    const leastPressure = Math.max(0, pressureAt(mostFlow));
    if (mostFlow < unbroken && shutOffPressure - leastPressure < leastDifference) {
      refuse(seen.suctionLift === undefined ? 'tankLift' : 'suctionLift', `less than ${writeNumber(suctionLift + suctionHead(0))} m, as far as the atmosphere pushes water up`, `${writeNumber(suctionLift)} m`, 'where the pump stands nearer to the water than the tank, give its suctionLift');
    }
    if (mostFlow < unbroken) note('caution', 'suction-breaks', 'mostFlow', `From ${writeNumber(mostFlow * 60_000)} L/min on the suction takes all that the atmosphere pushes and the water boils in it, so the points end there: stand the pump lower, or take a wider or shorter pipe.`);
    if (shutOffPressure - leastPressure < leastDifference) refuse('pumpCurve', 'a curve that falls by 1 kPa at least', `one that falls by ${writeNumber((shutOffPressure - leastPressure) / 1000)} kPa`);
    if (suctionLine) refuseRacing(pipeVelocity(mostFlow, suctionLine.diameter), refuse, 'suctionLine.diameter');
    if (pumpCurve.length > 1 && pumpCurve[0]!.flow > 0) note('caution', 'outside-curve', 'shutOffPressure', 'The curve does not start at no flow: what the pump has there is a guess, straight on from the first points.');

    const pumpPoints = [{ pumpPressure: shutOffPressure, pumpFlow: 0 }];
    for (let i = 1; i < points - 1; i++) {
      const pumpFlow = (mostFlow * i) / (points - 1);
      const pumpPressure = pressureAt(pumpFlow);
      const isApart = Math.min(pumpPoints.at(-1)!.pumpPressure - pumpPressure, pumpPressure - leastPressure) >= leastDifference;
      if (isApart) pumpPoints.push({ pumpPressure, pumpFlow });
    }
    pumpPoints.push({ pumpPressure: leastPressure, pumpFlow: mostFlow });
    return { pumpPoints, shutOffPressure, mostFlow };
  },
});
