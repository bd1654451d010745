/** How the way of the water is described: pump, tank, what is between it and the valves, and each zone behind its valve. */
import { expectExactlyOne } from '../calculation/exactly-one.js';
import type { WrittenFields } from '../calculation/field-types.js';
import * as field from '../calculation/field.js';
import { runTime } from '../dosing/index.js';
import { lateral, pipeFriction } from '../laterals/index.js';
import { irrigationCycle } from '../pressure-tank/index.js';
import { filterLoss, fittingLoss, gutter, pumpAtTank, suction, sumpCycle, surge, valveLoss } from '../supply/index.js';
import { length, pressure } from '../units/dimensions.js';
import { rootZoneFields } from './zone-day.js';

/** What drives the water: a pump that draws from the barrel and fills the tank, and the way from there to the valves of the zones. */
export function supplyFields() {
  const { tankVolume, preCharge, cutIn, cutOut, motorPower, leastRunTime } = irrigationCycle.inputs;
  const { pumpCurve, curveShape } = pumpAtTank.inputs;
  const { suctionLift, requiredSuctionHead, suctionReserve, diameter: suctionDiameter, length: suctionLength, fittings: suctionFittings, lossCoefficient: suctionLoss } = suction.inputs;
  const { flow: _flow, ...filter } = filterLoss.inputs;
  const { wallThickness, pipeMaterial, closingTime, pressureRating } = surge.inputs;
  const { inflow: _inflow, ...sump } = sumpCycle.inputs;
  const { diameter, length } = pipeFriction.inputs;
  const { fittings, lossCoefficient } = fittingLoss.inputs;
  const pump = { pumpFlow: field.optional(sumpCycle.inputs.pumpFlow), pumpCurve: field.optional(pumpCurve), curveShape, motorPower, leastRunTime };
  return {
    pump: field.asWritten(field.group(pump, (seen, problem) => expectExactlyOne(seen, ['pumpFlow', 'pumpCurve'], problem))),
    suctionLine: field.optional(field.asWritten(field.group({ suctionLift, diameter: suctionDiameter, length: suctionLength, fittings: suctionFittings, lossCoefficient: suctionLoss, requiredSuctionHead, suctionReserve }))),
    tank: field.asWritten(field.group({ tankVolume, preCharge, cutIn, cutOut })),
    filter: field.optional(field.asWritten(field.group(filter))),
    main: field.optional(field.asWritten(field.group({ length, diameter, fittings, lossCoefficient, wallThickness: field.optional(wallThickness), pipeMaterial, closingTime: field.optional(closingTime), pressureRating }))),
    sump: field.optional(field.asWritten(field.group(sump))),
  };
}

/** A zone: its plants and their dose, its laterals, and the pipe from its valve to them. */
export function zoneFields() {
  // The plants of a zone say how many emitters each has; the rest is nobody's to say of a whole greenhouse.
  const { waterTemperature: _temperature, emittersPerPlant: _emitters, velocityHeadCounts: _velocity, cloggedShare: _clogged, ...lateralFields } = lateral.inputs;
  const { volumePerPlant, drainShare } = runTime.inputs;
  const { flow: _flow, ...channel } = gutter.inputs;
  const { diameter, length: pipeLength } = pipeFriction.inputs;
  const { flowCoefficient } = valveLoss.inputs;
  const { fittings, lossCoefficient } = fittingLoss.inputs;
  const branch = {
    setPressure: field.optional(field.quantity(pressure, { limits: ['1 kPa', '1 MPa'] })),
    flowCoefficient: field.optional(flowCoefficient),
    length: pipeLength, diameter, fittings, lossCoefficient,
    height: field.withDefault(field.quantity(length, { limits: ['-50 m', '50 m'] }), '0 m'),
    lateralSpacing: field.withDefault(field.quantity(length, { limits: ['0 m', '100 m'] }), '0 m'),
  };
  return {
    name: field.text(60),
    plants: field.count({ limits: [1, 100_000] }),
    shotsPerDay: field.withDefault(field.count({ limits: [1, 100] }), 1),
    laterals: field.withDefault(field.count({ limits: [1, 10_000] }), 1),
    volumePerPlant: field.asWritten(volumePerPlant),
    drainShare: field.asWritten(drainShare),
    drainsBetweenShots: field.withDefault(field.flag(), false),
    branch: field.optional(field.asWritten(field.group(branch))),
    lateral: field.asWritten(field.group(lateralFields)),
    gutter: field.optional(field.asWritten(field.group(channel))),
    rootZone: field.optional(field.asWritten(field.group(rootZoneFields()))),
  };
}

export type DescribedSupply = WrittenFields<ReturnType<typeof supplyFields>>;
export type DescribedZone = WrittenFields<ReturnType<typeof zoneFields>> & { readonly laterals: number; readonly shotsPerDay: number };
