/** What the calculations that design a lateral have in common: the limit that it has to keep, and what is told of the one found. */
import type { AddProblem } from '../calculation/problem.js';
import type { Solving } from '../calculation/calculation.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import type { SeenFields } from '../calculation/field-types.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { flow, head, length, pressure, share, velocity } from '../units/dimensions.js';
import { pipeVelocity } from './formulas/head-loss.js';
import type { LateralFlow } from './formulas/lateral.js';
import type { LateralLayout } from './formulas/stretch.js';
import { designUniformityKellerKarmeli1974, flowVariationWuGitlin1974, lowestAndHighest } from './formulas/uniformity.js';
import { checkCompensation, reachFields } from './lateral-fields.js';
import { flowAt, layoutOf, pressuresOf } from './lateral-layout.js';
import { noteCompensation } from './lateral-notes.js';
import { noteFlow, pressureOfHead, reynoldsNumberOf } from './pipe.js';

export const inletPressure = () => field.quantity(pressure, { limits: ['1 kPa', '1 MPa'] });

/** One pipe with equal emitters, but its length, diameter or pressure, and how evenly it is to give. */
export const designFields = () => ({
  ...reachFields(),
  mostFlowVariation: field.optional(field.share({ limits: [0.001, 0.9] })),
  leastEmissionUniformity: field.optional(field.share({ limits: [0.1, 0.999] })),
  manufacturingVariation: field.withDefault(field.share({ limits: [0, 0.5] }), 0),
  emittersPerPlant: field.withDefault(field.number({ limits: [1, 100] }), 1),
});

/** A design with its length, diameter and pressure settled. */
export type SeenDesign = SeenFields<ReturnType<typeof designFields>> & { readonly outlets: number; readonly diameter: number };

export function checkDesign(seen: Pick<SeenDesign, 'mostFlowVariation' | 'leastEmissionUniformity' | 'emitterPressure' | 'compensation'>, problem: AddProblem): void {
  expectExactlyOne(seen, ['mostFlowVariation', 'leastEmissionUniformity'], problem);
  checkCompensation(seen, [], problem);
}

/** A lateral on trial: what it gives, and its distance from even as a share of the one allowed; undefined where water does not reach every emitter. */
export interface Trial {
  readonly found: LateralFlow;
  readonly unevenness: number;
}

/** What to ask of a design: whether it keeps its limit. */
export function trying(seen: SeenDesign, inletPressureGiven: number): Trial | undefined {
  const pascals = pressureOfHead(seen.waterTemperature);
  const layout: LateralLayout = layoutOf({ ...seen, furtherReaches: undefined }, pascals);
  const found = flowAt(layout, inletPressureGiven / pascals);
  if (!found) return undefined;
  const { mostFlowVariation, leastEmissionUniformity } = seen;
  const unevenness = mostFlowVariation === undefined ? (1 - emissionUniformityOf(found, seen)) / (1 - leastEmissionUniformity!) : flowVariationWuGitlin1974(found.flows) / mostFlowVariation;
  return { found, unevenness };
}

/** Whether a trial keeps its limit. */
export const keeps = (trial: Trial | undefined): boolean => trial !== undefined && trial.unevenness <= 1;

const emissionUniformityOf = ({ flows, inletFlow }: LateralFlow, { manufacturingVariation, emittersPerPlant }: SeenDesign): number =>
  designUniformityKellerKarmeli1974(manufacturingVariation, emittersPerPlant, lowestAndHighest(flows)[0], inletFlow / flows.length);

export const designOutputs = () => ({
  length: output.quantity(length, 'm'),
  inletFlow: output.quantity(flow, 'L/h'),
  inletVelocity: output.quantity(velocity, 'm/s'),
  endPressure: output.quantity(pressure, 'kPa'),
  lowestFlow: output.quantity(flow, 'L/h'),
  highestFlow: output.quantity(flow, 'L/h'),
  flowVariation: output.quantity(share, '%'),
  emissionUniformity: output.quantity(share, '%'),
  convergence: output.group({ headResidual: output.quantity(head, 'm'), steps: output.number() }),
});

/** What is told of the design that was found, with the notes that a lateral has. */
export function described({ found }: Trial, seen: SeenDesign, solving: Solving) {
  const { outlets, spacing, firstSpacing = spacing, diameter, waterTemperature } = seen;
  const { heads, flows, inletFlow, residual, steps } = found;
  const pascals = pressureOfHead(waterTemperature);
  const pressures = pressuresOf(heads, pascals);
  const inletVelocity = pipeVelocity(inletFlow, diameter);
  noteFlow('inletVelocity', inletVelocity, reynoldsNumberOf(inletFlow, diameter, waterTemperature), seen, solving);
  noteCompensation(pressures, [seen], solving);
  const [lowestFlow, highestFlow] = lowestAndHighest(flows);
  return {
    length: firstSpacing + (outlets - 1) * spacing,
    inletFlow, inletVelocity,
    endPressure: pressures.at(-1)!,
    lowestFlow, highestFlow,
    flowVariation: flowVariationWuGitlin1974(flows),
    emissionUniformity: emissionUniformityOf(found, seen),
    convergence: { headResidual: residual, steps },
  };
}
