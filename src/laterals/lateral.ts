import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import { flow, head, length, pressure, share, velocity } from '../units/dimensions.js';
import { inletPressure } from './design.js';
import { evennessOf, flowsToCompare } from './evenness.js';
import { flushingOf, flushingOutputs } from './flushing.js';
import { pipeVelocity } from './formulas/head-loss.js';
import { outletDistances } from './formulas/pieces.js';
import { designUniformityKellerKarmeli1974, lowestAndHighest, mean } from './formulas/uniformity.js';
import { checkLateral, lateralFields, mostOfCompensating, reachesOf } from './lateral-fields.js';
import { layoutOf, pressuresOf, solved } from './lateral-layout.js';
import { noteClogged, noteCompensation, noteFlowVariation, notePipes, noteUneven, noteVelocityHead } from './lateral-notes.js';
import { pressureOfHead } from './pipe.js';

/**
 * Pressure and flow at every emitter of one drip lateral, level, uphill or downhill, and how even they are.
 *
 * Takes the number of outlets (1 to 100 000), their spacing and that of the first one, the inside diameter, the slope (positive uphill, -50 to 50
 * %), and the emitter by its nominal flow, the pressure that it is nominal at, and its exponent (0 pressure compensating, 0.5 turbulent, 1 laminar).
 * Then the pressure at the inlet, or the mean flow that is wanted of the emitters, one of the two. Everything else may be left out:
 * - compensation: the pressures from and to which a compensating emitter regulates (up to 400 kPa by default), and below which an anti-drain one is shut.
 *   Below the range it gives like a plain turbulent emitter, above it rises again;
 * - furtherReaches: pipe that follows, each reach with its own number of outlets and, where it differs from the one before, spacing, diameter, slope,
 *   emitter and connection;
 * - the water temperature (20 °C), and the temperature that the flow of the emitters is stated at, where that is to be allowed for: laminar
 *   emitters give more of warmer water, turbulent ones do not;
 * - the friction law (Darcy-Weisbach with Colebrook-White and 0.0015 mm of roughness);
 * - the loss at each connection: a coefficient of the velocity head (which also stands in where a formula's own numbers do not suit), a length of pipe, a size of barb (Watters & Keller), the area of a barb (formulas of
 *   Bagarello or UNESP), or the passage of an in-line emitter (Provenzano & Pumo);
 * - whether the velocity head counts, the manufacturing variation and the emitters of a plant for the design uniformity, the share of emitters that
 *   is clogged, and the velocity that the end is to be flushed with.
 *
 * Gives pressures, flows and distances of the outlets from the inlet on as columns; the pressure and flow at the inlet; mean, lowest and highest flow;
 * the measures of uniformity; what flushing takes; and how well the inlet head was met. Emitters of different nominal flow are compared by the share of it
 * that they give. Flows are those of emitters that run, and so are the flow variation and the design uniformity; the mean flow, the low quarter, Christiansen's
 * and the statistical uniformity allow for the clogged ones. The low quarter is N/4 of the emitters rounded down, one at least; with clogged ones it is
 * exactly N/4. What flushing reaches holds if the inlet keeps its pressure at that flow.
 *
 * Pressures become heads by the density of the water at its temperature: a metre of water at 20 °C is 9.789 kPa.
 * @throws InputError for input outside these limits, where not exactly one of inletPressure and meanEmitterFlow is given, for a compensating emitter
 * whose flow is stated outside its range, where pressure would not reach every emitter, and for water faster than 30 m/s.
 * @example
 * const row = lateral({ outlets: 28, spacing: '25 cm', diameter: '13.6 mm', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5, inletPressure: '1 bar' });
 * row.inletFlow.in('L/h') // => 55.99
 * row.lowQuarterUniformity.in('%') // => 99.99
 */
export const lateral = /* @__PURE__ */ calculation({
  id: 'lateral',
  title: 'Pressure and flow along a drip lateral',
  inputs: () => ({
    ...lateralFields(),
    inletPressure: field.optional(inletPressure()),
    meanEmitterFlow: field.optional(field.quantity(flow, { limits: ['0.05 L/h', '500 L/h'] })),
    velocityHeadCounts: field.withDefault(field.flag(), false),
    manufacturingVariation: field.optional(field.share({ limits: [0, 0.5] })),
    emittersPerPlant: field.withDefault(field.number({ limits: [1, 100] }), 1),
    cloggedShare: field.withDefault(field.share({ limits: [0, 0.9] }), 0),
    flushingVelocity: field.optional(field.quantity(velocity, { limits: ['0.05 m/s', '3 m/s'] })),
  }),
  outputs: () => ({
    pressures: output.column(pressure, 'kPa'),
    flows: output.column(flow, 'L/h'),
    distances: output.column(length, 'm'),
    inletPressure: output.quantity(pressure, 'kPa'),
    endPressure: output.quantity(pressure, 'kPa'),
    inletFlow: output.quantity(flow, 'L/h'),
    inletVelocity: output.quantity(velocity, 'm/s'),
    meanFlow: output.quantity(flow, 'L/h'),
    lowestFlow: output.quantity(flow, 'L/h'),
    highestFlow: output.quantity(flow, 'L/h'),
    flowVariation: output.quantity(share, '%'),
    lowQuarterUniformity: output.quantity(share, '%'),
    christiansenUniformity: output.quantity(share, '%'),
    statisticalUniformity: output.quantity(share, '%'),
    emissionUniformity: output.optional(output.quantity(share, '%')),
    flushing: output.optional(flushingOutputs()),
    convergence: output.group({ headResidual: output.quantity(head, 'm'), steps: output.number() }),
  }),
  equation: 'q = k hˣ at each outlet; h and Q grow from the plugged end to the inlet by friction, connections and rise',
  sources: ['clamond-2009', 'colebrook-1939', 'keller-karmeli-1974', 'merriam-keller-1978', 'wu-gitlin-1974', 'iapws-sr6-08', 'watters-keller-1978', 'bagarello-1997', 'bioeng-19', 'provenzano-pumo-2004', 'uc-flushing'],
  example: {
    outlets: 28, spacing: '25 cm', diameter: '13.6 mm', slope: '1 %', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5, inletPressure: '1 bar',
    furtherReaches: [{ outlets: 6, spacing: '40 cm', diameter: '10.2 mm', emitter: { emitterFlow: '4 L/h', emitterPressure: '1 bar', emitterExponent: 0.5 } }],
  },
  check: (seen, problem) => {
    checkLateral(seen, problem);
    expectExactlyOne(seen, ['inletPressure', 'meanEmitterFlow'], problem);
    if (seen.meanEmitterFlow !== undefined && (seen.emitterExponent <= mostOfCompensating || seen.compensation)) problem(['meanEmitterFlow'], 'inletPressure for pressure-compensating emitters', 'a mean flow', 'they give their flow at any pressure');
  },
  solve: (seen, solving) => {
    const { cloggedShare, manufacturingVariation, emittersPerPlant } = seen;
    const pascals = pressureOfHead(seen.waterTemperature);
    const reaches = reachesOf(seen);
    const layout = layoutOf(seen, pascals);
    const { heads, flows, inletHead, inletFlow, residual, steps } = solved(layout, seen, pascals, solving);
    // Clogged emitters took their share out of all flows alike: those that run give more.
    if (cloggedShare > 0) for (let i = 0; i < flows.length; i++) flows[i]! /= 1 - cloggedShare;
    const compared = flowsToCompare(flows, reaches);
    const { flowVariation, lowQuarterUniformity, christiansenUniformity, statisticalUniformity } = evennessOf(compared, cloggedShare);
    const [lowestFlow, highestFlow] = lowestAndHighest(flows);
    const inletVelocity = pipeVelocity(inletFlow, seen.diameter);
    const pressures = pressuresOf(heads, pascals);
    notePipes(inletFlow, flows, reaches, seen, solving);
    noteUneven(lowQuarterUniformity, cloggedShare > 0.05 ? 'clean or replace what is clogged first' : 'a larger pipe, shorter laterals or compensating emitters even it out', solving);
    noteFlowVariation(flowVariation, solving);
    noteClogged(cloggedShare, solving);
    if (!seen.velocityHeadCounts) noteVelocityHead(inletVelocity, inletHead, solving);
    noteCompensation(pressures, reaches, solving);
    return {
      pressures, flows,
      distances: outletDistances(reaches),
      inletPressure: inletHead * pascals,
      endPressure: pressures.at(-1)!,
      inletFlow, inletVelocity,
      meanFlow: inletFlow / flows.length,
      lowestFlow, highestFlow, flowVariation, lowQuarterUniformity, christiansenUniformity, statisticalUniformity,
      emissionUniformity: manufacturingVariation === undefined ? undefined : designUniformityKellerKarmeli1974(manufacturingVariation, emittersPerPlant, lowestAndHighest(compared)[0], mean(compared)),
      flushing: seen.flushingVelocity === undefined ? undefined : flushingOf(layout, seen.flushingVelocity, inletHead, pascals, solving),
      convergence: { headResidual: residual, steps },
    };
  },
});
