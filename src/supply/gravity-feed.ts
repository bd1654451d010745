import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { frictionLaw } from '../laterals/formulas/friction-law.js';
import { fittingHeadLoss, pipeVelocity } from '../laterals/formulas/head-loss.js';
import { checkRoughness, chosenLaw, diameter, frictionFields, noteFlow, pressureOfHead, reynoldsNumberOf } from '../laterals/pipe.js';
import { flow, head, length, pressure, share, time, volume } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { emptyingTimeThrough } from './formulas/emptying.js';
import { checkLevels, flowAtHead, refuseDregs, tankFields } from './upright-tank.js';

/** Flow that falls by more than this while the barrel empties gives late shots clearly less. Common practice, no source. */
const tolerableVariation = 0.2;

/**
 * A barrel that feeds a zone by its height alone: flow and pressure when full and when low, and how long it takes.
 *
 * Takes the barrel as `emptyingTime` does, with how far the drippers lie below its outlet (0 to 30 m), the flow of the whole zone (0.1 L/h to 100 m³/h) at
 * the pressure that the drippers are rated at (1 kPa to 1 MPa) and their exponent (0.3 to 1; those that compensate need more pressure than a barrel has), and
 * the pipe from the barrel to the zone: inside diameter (1 mm to 1 m), length (0 to 1 km), a loss coefficient for entrance and fittings (1.5 by default)
 * and friction as `pipeFriction` does. Pressure within the zone is taken as even. Gives flow and pressure at the drippers at both levels, by how much the
 * flow falls, the time and the volume.
 * @throws InputError for input outside these limits, for a level that does not fall, for a head below 5 mm, for a roughness above a twentieth of the
 * diameter, and for water faster than 30 m/s.
 * @example
 * const barrel = gravityFeed({ tankArea: '0.26 m²', startLevel: '80 cm', endLevel: '10 cm', outletDrop: '50 cm', zoneFlow: '80 L/h', emitterPressure: '100 kPa', diameter: '13.6 mm', length: '6 m' });
 * barrel.startFlow.in('L/h') // => 28.47
 * barrel.endFlow.in('L/h') // => 19.32
 */
export const gravityFeed = /* @__PURE__ */ calculation({
  id: 'gravityFeed',
  title: 'Barrel that feeds a zone by gravity',
  inputs: () => ({
    ...tankFields(),
    zoneFlow: field.quantity(flow, { limits: ['0.1 L/h', '100 m³/h'] }),
    emitterPressure: field.quantity(pressure, { limits: ['1 kPa', '1 MPa'] }),
    emitterExponent: field.withDefault(field.number({ limits: [0.3, 1] }), 0.5),
    diameter: diameter(),
    length: field.quantity(length, { limits: ['0 m', '1 km'] }),
    lossCoefficient: field.withDefault(field.number({ limits: [0, 10_000] }), 1.5),
    ...frictionFields(),
  }),
  outputs: () => ({
    startFlow: output.quantity(flow, 'L/h'),
    endFlow: output.quantity(flow, 'L/h'),
    startPressure: output.quantity(pressure, 'kPa'),
    finalPressure: output.quantity(pressure, 'kPa'),
    flowFall: output.quantity(share, '%'),
    emptyingTime: output.quantity(time, 'h'),
    drainedVolume: output.quantity(volume, 'L'),
    convergence: output.group({ headResidual: output.quantity(head, 'm'), steps: output.number() }),
  }),
  equation: 'h = (p_r/(ρ g)) (Q/Q_r)^(1/x) + J L + ΣK V²/(2 g); t = A ∫ dh/Q',
  sources: ['clamond-2009', 'common-practice'],
  example: { tankArea: '0.26 m²', startLevel: '80 cm', endLevel: '10 cm', outletDrop: '50 cm', zoneFlow: '80 L/h', emitterPressure: '100 kPa', diameter: '13.6 mm', length: '6 m' },
  check: (seen, problem) => {
    checkLevels(seen, problem);
    checkRoughness(seen, problem);
  },
  solve: (seen, solving) => {
    const { tankArea, startLevel, endLevel, outletDrop, zoneFlow, emitterPressure, emitterExponent, diameter, length, lossCoefficient, waterTemperature } = seen;
    refuseDregs(endLevel + outletDrop, solving);
    const pressurePerHead = pressureOfHead(waterTemperature);
    const ratedHead = emitterPressure / pressurePerHead;
    const gradient = frictionLaw(chosenLaw(seen))(diameter);
    const emitterHead = (flow: number) => ratedHead * (flow / zoneFlow) ** (1 / emitterExponent);
    const headAtFlow = (flow: number) => emitterHead(flow) + gradient(flow) * length + fittingHeadLoss(lossCoefficient, pipeVelocity(flow, diameter));
    const at = (level: number) => flowAtHead(headAtFlow, level + outletDrop, zoneFlow * ((level + outletDrop) / ratedHead) ** emitterExponent);
    const [start, end] = [at(startLevel), at(endLevel)];
    const velocity = pipeVelocity(start.value, diameter);
    noteFlow('velocity', velocity, reynoldsNumberOf(end.value, diameter, waterTemperature), seen, solving);
    const flowFall = 1 - end.value / start.value;
    if (flowFall > tolerableVariation) {
      solving.note('caution', 'flow-falls', 'flowFall', `The flow falls by ${writeNumber(100 * flowFall)} % as the barrel empties: give late shots ${writeNumber(start.value / end.value)} times as long, refill earlier, or raise the barrel.`);
    }
    const startPressure = emitterHead(start.value) * pressurePerHead;
    if (startPressure < emitterPressure / 2) {
      solving.note('info', 'low-pressure', 'startPressure', `The drippers get ${writeNumber(startPressure / 1000)} kPa at most, of the ${writeNumber(emitterPressure / 1000)} kPa that they are rated at, and give ${writeNumber((100 * start.value) / zoneFlow)} % of their rated flow: run them ${writeNumber(zoneFlow / start.value)} times as long.`);
    }
    return {
      startFlow: start.value, endFlow: end.value, startPressure, finalPressure: emitterHead(end.value) * pressurePerHead, flowFall,
      emptyingTime: emptyingTimeThrough(tankArea, headAtFlow, start.value, end.value),
      drainedVolume: tankArea * (startLevel - endLevel),
      convergence: { headResidual: Math.max(start.residual, end.residual), steps: start.steps + end.steps },
    };
  },
});
