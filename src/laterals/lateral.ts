import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import { flow, head, length, pressure, share, slope, velocity } from '../units/dimensions.js';
import { pipeVelocity } from './formulas/head-loss.js';
import { designUniformityKellerKarmeli1974, flowVariationWuGitlin1974, lowestAndHighest, lowQuarterUniformityWhole, statisticalUniformityOfPopulation, uniformityChristiansen1942 } from './formulas/uniformity.js';
import { layoutOf, solved } from './lateral-layout.js';
import { noteCompensation, noteFlowVariation, noteUneven, noteVelocityHead } from './lateral-notes.js';
import { checkRoughness, diameter, frictionFields, noteFlow, pressureOfHead, reynoldsNumberOf } from './pipe.js';

/**
 * Pressure and flow at every emitter of one drip lateral, level, uphill or downhill, and how even they are.
 *
 * Takes the number of outlets (1 to 5000), their spacing and that of the first one, the inside diameter, the slope (positive uphill, -50 to 50
 * %), the emitter by its nominal flow, the pressure that it is nominal at, and its exponent (0 pressure compensating, 0.5 turbulent, 1 laminar);
 * the pressure at the inlet, or the mean flow that is wanted of the emitters, one of the two; the water temperature (20 °C by default); the
 * friction law (Darcy-Weisbach with Colebrook-White and 0.0015 mm of roughness by default); and perhaps the loss at each connection, as a
 * coefficient of the velocity head, a length of pipe, or a size of barb. With the manufacturing variation and the emitters of a plant it gives
 * the design emission uniformity as well. Gives pressures, flows and distances of the outlets from the inlet on as columns; the pressure and flow
 * at the inlet; mean, lowest and highest flow; the measures of uniformity; and how well the inlet head was met.
 *
 * Pressures become heads by the density of the water at its temperature: a metre of water at 20 °C is 9.789 kPa. Velocity head is left out.
 * @throws InputError for input outside these limits, where not exactly one of inletPressure and meanEmitterFlow is given, where pressure would
 * not reach every emitter, and for water faster than 30 m/s.
 * @example
 * const row = lateral({ outlets: 28, spacing: '25 cm', diameter: '13.6 mm', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5, inletPressure: '1 bar' });
 * row.inletFlow.in('L/h') // => 55.99
 * row.lowQuarterUniformity.in('%') // => 99.99
 */
export const lateral = /* @__PURE__ */ calculation({
  id: 'lateral',
  title: 'Pressure and flow along a drip lateral',
  inputs: () => ({
    outlets: field.count({ limits: [1, 5000] }),
    spacing: field.quantity(length, { limits: ['1 cm', '20 m'] }),
    firstSpacing: field.optional(field.quantity(length, { limits: ['0 m', '100 m'] })),
    diameter: diameter(),
    slope: field.withDefault(field.quantity(slope, { limits: ['-50 %', '50 %'] }), '0 %'),
    emitterFlow: field.quantity(flow, { limits: ['0.05 L/h', '500 L/h'] }),
    emitterPressure: field.quantity(pressure, { limits: ['5 kPa', '600 kPa'] }),
    emitterExponent: field.number({ limits: [0, 1] }),
    inletPressure: field.optional(field.quantity(pressure, { limits: ['1 kPa', '1 MPa'] })),
    meanEmitterFlow: field.optional(field.quantity(flow, { limits: ['0.05 L/h', '500 L/h'] })),
    ...frictionFields(),
    connection: field.optional(field.group({
      lossCoefficient: field.optional(field.number({ limits: [0, 100] })),
      equivalentLength: field.optional(field.quantity(length, { limits: ['0 m', '10 m'] })),
      barb: field.optional(field.choice(['large', 'standard', 'small'])),
    }, (seen, problem) => expectExactlyOne(seen, ['lossCoefficient', 'equivalentLength', 'barb'], problem))),
    manufacturingVariation: field.optional(field.share({ limits: [0, 0.5] })),
    emittersPerPlant: field.withDefault(field.number({ limits: [1, 100] }), 1),
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
    convergence: output.group({ headResidual: output.quantity(head, 'm'), steps: output.number() }),
  }),
  equation: 'q = k hˣ at each outlet; h and Q grow from the plugged end to the inlet by friction, connections and rise',
  sources: ['clamond-2009', 'colebrook-1939', 'keller-karmeli-1974', 'merriam-keller-1978', 'wu-gitlin-1974', 'iapws-sr6-08', 'watters-keller-1978'],
  example: { outlets: 28, spacing: '25 cm', diameter: '13.6 mm', slope: '1 %', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5, inletPressure: '1 bar' },
  check: (seen, problem) => {
    checkRoughness(seen, problem);
    expectExactlyOne(seen, ['inletPressure', 'meanEmitterFlow'], problem);
    if (seen.meanEmitterFlow !== undefined && seen.emitterExponent < 0.05) problem(['meanEmitterFlow'], 'inletPressure for pressure-compensating emitters', 'a mean flow', 'they give their flow at any pressure');
  },
  solve: (seen, solving) => {
    const { outlets, spacing, firstSpacing = spacing, manufacturingVariation, emittersPerPlant } = seen;
    const pascals = pressureOfHead(seen.waterTemperature);
    const layout = layoutOf(seen, pascals);
    const found = solved(layout, seen, pascals, solving);
    const { heads, flows, inletHead, inletFlow } = found;
    const meanFlow = inletFlow / outlets;
    const [lowestFlow, highestFlow] = lowestAndHighest(flows);
    const inletVelocity = pipeVelocity(inletFlow, seen.diameter);
    const flowVariation = flowVariationWuGitlin1974(flows);
    const lowQuarterUniformity = lowQuarterUniformityWhole(flows);
    noteUneven(lowQuarterUniformity, 'a larger pipe, shorter laterals or compensating emitters even it out', solving);
    noteFlowVariation(flowVariation, solving);
    noteFlow('inletVelocity', inletVelocity, reynoldsNumberOf(inletFlow, seen.diameter, seen.waterTemperature), seen, solving);
    noteVelocityHead(inletVelocity, inletHead, solving);
    noteCompensation(seen.emitterExponent, lowestAndHighest(heads)[0] * pascals, solving);
    const pressures = new Float64Array(outlets);
    const distances = new Float64Array(outlets);
    for (let i = 0; i < outlets; i++) {
      pressures[i] = heads[i]! * pascals;
      distances[i] = firstSpacing + i * spacing;
    }
    return {
      pressures, flows, distances,
      inletPressure: inletHead * pascals,
      endPressure: heads.at(-1)! * pascals,
      inletFlow, inletVelocity, meanFlow, lowestFlow, highestFlow,
      flowVariation, lowQuarterUniformity,
      christiansenUniformity: uniformityChristiansen1942(flows),
      statisticalUniformity: statisticalUniformityOfPopulation(flows),
      emissionUniformity: manufacturingVariation === undefined ? undefined : designUniformityKellerKarmeli1974(manufacturingVariation, emittersPerPlant, lowestFlow, meanFlow),
      convergence: { headResidual: found.residual, steps: found.steps },
    };
  },
});
