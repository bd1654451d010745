import { calculation, type Solving } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { ConvergenceError } from '../numerics/convergence-error.js';
import { flow, head, length, pressure, share, slope, velocity } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { barbEquivalentLengthWattersKeller1978 } from './formulas/barb.js';
import { pipeVelocity } from './formulas/head-loss.js';
import { lateralFromEndHead, lateralFromInletHead, lateralFromMeanFlow, type LateralFlow, type LateralLayout } from './formulas/lateral.js';
import { designUniformityKellerKarmeli1974, flowVariationWuGitlin1974, lowQuarterUniformityWhole, statisticalUniformityOfPopulation, uniformityChristiansen1942 } from './formulas/uniformity.js';
import { chosenLaw, diameter, frictionFields, pressureOfHead, type SeenFriction } from './pipe.js';
import { uniformityClass } from './uniformity-classes.js';

/** Above this, m/s, small plastic pipes surge and wear. Common practice, no source. */
const fastWater = 1.5;

/**
 * Pressure and flow at every emitter of one drip lateral, level, uphill or downhill, and how even they are.
 *
 * Takes the number of outlets (1 to 5000), their spacing and that of the first one, the inside diameter, the slope (positive uphill, -50 to 50 %), the emitter by its nominal flow,
 * the pressure that it is nominal at, and its exponent (0 pressure compensating, 0.5 turbulent, 1 laminar); the pressure at the inlet, or
 * the mean flow that is wanted of the emitters, one of the two; the water temperature (20 °C by default); the friction law (Darcy-Weisbach with
 * Colebrook-White and 0.0015 mm of roughness by default); and perhaps the loss at each connection, as a coefficient of the velocity head, a length of pipe, or a size of barb.
 * With the manufacturer's variation and the emitters of a plant it gives the design emission uniformity as well.
 * Gives pressures, flows and distances of the outlets from the inlet on as columns; the pressure and flow at the inlet; mean, lowest and highest flow; the measures of
 * uniformity; and how well the inlet head was met.
 *
 * Pressures become heads by the density of the water at its temperature: a metre of water at 20 °C is 9.789 kPa. Velocity head is left out.
 * @throws InputError for input outside these limits, where not exactly one of inletPressure and meanEmitterFlow is given, and where pressure would not reach the last emitter.
 * @example
 * const row = lateral({ outlets: 28, spacing: '25 cm', diameter: '13.6 mm', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5, inletPressure: '1 bar' });
 * row.inletFlow.in('L/h') // => 55.9
 * row.lowQuarterUniformity.in('%') // => 99.9
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
    })),
    manufacturersVariation: field.optional(field.share({ limits: [0, 0.5] })),
    emittersPerPlant: field.withDefault(field.number({ limits: [0.1, 100] }), 1),
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
  check: ({ inletPressure, meanEmitterFlow, emitterExponent, connection }, problem) => {
    if ((inletPressure === undefined) === (meanEmitterFlow === undefined)) problem(['inletPressure'], 'either inletPressure or meanEmitterFlow', inletPressure === undefined ? 'neither' : 'both');
    if (meanEmitterFlow !== undefined && emitterExponent < 0.05) problem(['meanEmitterFlow'], 'inletPressure for pressure-compensating emitters', 'a mean flow', 'they give their flow at any pressure');
    if (connection && Object.values(connection).filter((way) => way !== undefined).length !== 1) problem(['connection'], 'one of lossCoefficient, equivalentLength and barb', 'none or several');
  },
  solve: (seen, solving) => {
    const { outlets, spacing, firstSpacing = spacing, manufacturersVariation, emittersPerPlant } = seen;
    const pascals = pressureOfHead(seen.waterTemperature);
    const layout = layoutOf(seen, pascals);
    const found = solved(layout, seen, pascals, solving);
    const { heads, flows, inletHead, inletFlow } = found;
    const meanFlow = inletFlow / outlets;
    const lowestFlow = flows.reduce((least, q) => Math.min(least, q), Infinity);
    const inletVelocity = pipeVelocity(inletFlow, seen.diameter);
    const flowVariation = flowVariationWuGitlin1974(flows);
    const lowQuarterUniformity = lowQuarterUniformityWhole(flows);
    noteEvenness(lowQuarterUniformity, flowVariation, solving);
    if (inletVelocity > fastWater) solving.note('caution', 'fast-water', 'inletVelocity', `The water enters at ${writeNumber(inletVelocity)} m/s; above ${fastWater} m/s small pipes surge and wear: take a larger one.`);
    return {
      pressures: heads.map((h) => h * pascals),
      flows,
      distances: Float64Array.from({ length: outlets }, (_, i) => firstSpacing + i * spacing),
      inletPressure: inletHead * pascals,
      endPressure: heads.at(-1)! * pascals,
      inletFlow, inletVelocity, meanFlow, lowestFlow,
      highestFlow: flows.reduce((most, q) => Math.max(most, q), 0),
      flowVariation, lowQuarterUniformity,
      christiansenUniformity: uniformityChristiansen1942(flows),
      statisticalUniformity: statisticalUniformityOfPopulation(flows),
      emissionUniformity: manufacturersVariation === undefined ? undefined : designUniformityKellerKarmeli1974(manufacturersVariation, emittersPerPlant, lowestFlow, meanFlow),
      convergence: { headResidual: found.residual, steps: found.steps },
    };
  },
});

interface SeenLateral extends SeenFriction {
  readonly outlets: number;
  readonly spacing: number;
  readonly firstSpacing: number | undefined;
  readonly diameter: number;
  readonly slope: number;
  readonly emitterFlow: number;
  readonly emitterPressure: number;
  readonly emitterExponent: number;
  readonly inletPressure: number | undefined;
  readonly meanEmitterFlow: number | undefined;
  readonly connection: { readonly lossCoefficient: number | undefined; readonly equivalentLength: number | undefined; readonly barb: 'large' | 'standard' | 'small' | undefined } | undefined;
}

function layoutOf(seen: SeenLateral, pascals: number): LateralLayout {
  const { outlets, spacing, firstSpacing = spacing, diameter, slope, emitterFlow, emitterPressure, emitterExponent } = seen;
  const { lossCoefficient = 0, equivalentLength, barb } = seen.connection ?? {};
  return {
    outlets, spacing, firstSpacing, diameter, slope,
    emitter: { flow: emitterFlow, head: emitterPressure / pascals, exponent: emitterExponent },
    friction: chosenLaw(seen),
    connection: { lossCoefficient, equivalentLength: barb === undefined ? (equivalentLength ?? 0) : barbEquivalentLengthWattersKeller1978(diameter, barb) },
  };
}

/** Least head at the last outlet, as a share of the nominal head, that counts as pressure. */
const leastEndShare = 1e-3;

/** Heads and flows, or a refusal where pressure does not reach every emitter. */
function solved(layout: LateralLayout, { inletPressure, meanEmitterFlow }: SeenLateral, pascals: number, { refuse }: Solving): LateralFlow {
  const path = inletPressure === undefined ? 'meanEmitterFlow' : 'inletPressure';
  const starved = (): never => {
    const least = lateralFromEndHead(layout, layout.emitter.head / 2).inletHead * pascals;
    const advice = Number.isFinite(least) ? `half the nominal pressure there takes ${writeNumber(least / 1000)} kPa at the inlet` : 'the pipe is far too thin or too long';
    return refuse(path, 'enough pressure to reach every emitter', 'too little: some emitter would have none', `${advice}; or take a larger pipe, or a shorter or less steep lateral`);
  };
  try {
    const found = inletPressure === undefined ? lateralFromMeanFlow(layout, meanEmitterFlow!) : lateralFromInletHead(layout, inletPressure / pascals);
    return found.heads.every((h) => h >= leastEndShare * layout.emitter.head) ? found : starved();
  } catch (error) {
    if (error instanceof ConvergenceError) return starved();
    throw error;
  }
}

/** Says how even the flows are, by customary classes. */
function noteEvenness(lowQuarterUniformity: number, flowVariation: number, { note }: Solving): void {
  const percent = (fraction: number): string => `${writeNumber(fraction * 100)} %`;
  const called = uniformityClass('low-quarter uniformity', lowQuarterUniformity)?.called;
  if (lowQuarterUniformity < 0.9) note('caution', 'uneven', 'lowQuarterUniformity', `The quarter with the least gets ${percent(lowQuarterUniformity)} of the mean, ${called} by the customary classes: a larger pipe, shorter laterals or compensating emitters even it out.`);
  if (flowVariation > 0.1) note(flowVariation > 0.2 ? 'caution' : 'info', 'flow-variation', 'flowVariation', `Flow varies by ${percent(flowVariation)} along the lateral; up to 10 % counts as good, above 20 % as not acceptable.`);
}
