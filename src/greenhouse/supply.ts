import type { WrittenFields } from '../calculation/field-types.js';
import * as output from '../calculation/output.js';
import { pumpFlowFromPoints, type irrigationCycle } from '../pressure-tank/index.js';
import { filterLoss, pumpAtTank, suction, sumpCycle, surge } from '../supply/index.js';
import { quantity } from '../units/by-name.js';
import type { QuantityInput } from '../units/quantity.js';
import type { Assessor } from './attempt.js';
import { litresPerMinute } from './measures.js';
import type { DescribedSupply } from './water-fields.js';

type Event = WrittenFields<typeof irrigationCycle.inputs>;

/** Pump, tank and switch as an irrigation event takes them, and the switch in Pa. */
export interface Driver {
  readonly event: Omit<Event, 'demand' | 'demandPressure' | 'demandExponent' | 'duration'>;
  readonly cutIn: number;
  readonly cutOut: number;
  /** Flow of the pump by the pressure at the tank, m³/s over Pa. */
  readonly flowAt: (pressure: number) => number;
}

/** The pump with its tank; undefined where the curve of the pump comes to nothing there. */
export function driverOf({ pump, suctionLine, tank }: DescribedSupply, atmosphericPressure: QuantityInput<'absolutePressure'> | undefined, waterTemperature: QuantityInput<'temperature'>, { run }: Assessor): Driver | undefined {
  const { pumpFlow, pumpCurve, curveShape, motorPower, leastRunTime } = pump;
  const { suctionLift: tankLift, length, diameter, fittings, lossCoefficient } = suctionLine ?? {};
  const line = length && diameter && { length, diameter, fittings, lossCoefficient };
  const seen = pumpCurve && run(pumpAtTank, 'pump', { pumpCurve, curveShape, tankLift, suctionLine: line, atmosphericPressure, waterTemperature });
  const pumpPoints = pumpFlow === undefined ? seen?.pumpPoints : [{ pumpPressure: tank.cutIn, pumpFlow }];
  if (!pumpPoints) return undefined;
  const curve = pumpPoints.map(({ pumpPressure, pumpFlow: gives }) => ({ pressure: quantity(pumpPressure, 'pressure').si, flow: quantity(gives, 'flow').si })).sort((a, b) => a.pressure - b.pressure);
  return {
    event: { ...tank, pumpPoints, motorPower, leastRunTime, atmosphericPressure },
    cutIn: quantity(tank.cutIn, 'pressure').si,
    cutOut: quantity(tank.cutOut, 'pressure').si,
    flowAt: (pressure) => pumpFlowFromPoints(curve, pressure),
  };
}

/** What the parts have to bear that all zones have in common. */
export function supplyOutputs() {
  const { availableSuctionHead, spareSuctionHead, practicalLift, highestSuctionLift } = suction.outputs;
  const { cleanLoss, loadedLoss, flushLoss, coarsestMesh } = filterLoss.outputs;
  const { waveSpeed, highestPressure, pressureRating, closingTimeForRating } = surge.outputs;
  const { runTime, restTime, startsPerHour, timeToOverflow } = sumpCycle.outputs;
  return {
    suction: output.optional(output.group(output.passedOn({ availableSuctionHead, spareSuctionHead, practicalLift, highestSuctionLift }))),
    filter: output.optional(output.group(output.passedOn({ cleanLoss, loadedLoss, flushLoss, coarsestMesh }))),
    surge: output.optional(output.group(output.passedOn({ waveSpeed, highestPressure, pressureRating, closingTimeForRating }))),
    sump: output.optional(output.group(output.passedOn({ runTime, restTime, startsPerHour, timeToOverflow }))),
  };
}

/** The most that flows of a zone, and of its drain, m³/s. */
interface MostFlows {
  readonly most: number;
  readonly drain: number;
}

/** Suction, filter, surge and sump at the flow of the zone that takes most of each. */
export function assessSupply({ suctionLine, filter, main, sump, tank }: DescribedSupply, driver: Driver | undefined, zones: readonly MostFlows[], waterTemperature: QuantityInput<'temperature'>, { run }: Assessor) {
  const most = zones.reduce((flow, zone) => Math.max(flow, zone.most), 0);
  const drain = zones.reduce((flow, zone) => Math.max(flow, zone.drain), 0);
  const { wallThickness, closingTime, lossCoefficient: _loss, fittings: _fittings, ...pipe } = main ?? {};
  // A pump gives most when the tank is at its cut-in.
  const pumped = driver?.flowAt(driver.cutIn);
  return {
    suction: driver && suctionLine && pumped ? run(suction, 'suctionLine', { ...suctionLine, flow: litresPerMinute(pumped), waterTemperature, atmosphericPressure: driver.event.atmosphericPressure }) : undefined,
    filter: filter && most > 0 ? run(filterLoss, 'filter', { ...filter, flow: litresPerMinute(most) }) : undefined,
    surge: main && wallThickness && closingTime && most > 0 ? run(surge, 'main', { ...pipe, length: main.length, diameter: main.diameter, wallThickness, closingTime, flow: litresPerMinute(most), staticPressure: tank.cutOut, waterTemperature }) : undefined,
    sump: sump && drain > 0 ? run(sumpCycle, 'sump', { ...sump, inflow: litresPerMinute(drain) }) : undefined,
  };
}
