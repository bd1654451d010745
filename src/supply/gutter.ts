import { calculation, type Solving } from '../calculation/calculation.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { area, flow, length, share, slope, velocity } from '../units/dimensions.js';
import { litresPerMinute } from '../units/in-words.js';
import { writeNumber } from '../units/write.js';
import { circularSection, criticalDepth, fallForVelocity, flowAtDepth, froudeNumber, normalDepth, trapezoidalSection } from './formulas/open-channel.js';
import { dust, roundedUp } from '../numerics/round-outward.js';

/** A gutter fuller than this may run over at the first leaf in it. Common practice, no source. */
const nearlyFull = 0.8;

/**
 * Depth and speed of the water in a gutter or a drain pipe that is partly full, and how much it can carry.
 *
 * Takes the flow (0.1 L/h to 10 000 m³/h), the fall (0.01 to 50 %), Manning's coefficient (0.006 to 0.1; 0.011, smooth plastic, by default; roots and
 * leaves raise it several times), and the section: the inside diameter of a round pipe (5 mm to 2 m), or the width of the bottom (5 mm to 10 m), the
 * depth of the gutter (2 mm to 5 m) and how far its walls lean outwards for each metre of height (0, upright, to 10). Gives the depth of the water and
 * how full that is, area, wetted perimeter and hydraulic radius, the velocity, the Froude number and the critical depth (absent where the section is too
 * low for it), and the most that it carries. A flow too slow to keep itself clean (below 0.6 m/s unless told otherwise) is noted with the fall that would do.
 * @throws InputError for input outside these limits, for both or neither of the sections, and for a flow that it does not carry, with the fall that would.
 * @example
 * const drain = gutter({ flow: '6 L/min', fall: '1 %', bottomWidth: '100 mm', gutterDepth: '60 mm' });
 * drain.waterDepth.in('mm') // => 4.359
 * drain.velocity.in('m/s') // => 0.2294
 */
export const gutter = /* @__PURE__ */ calculation({
  id: 'gutter',
  title: 'Water in a gutter or a partly full drain pipe',
  inputs: () => ({
    flow: field.quantity(flow, { limits: ['0.1 L/h', '10000 m³/h'] }),
    fall: field.quantity(slope, { limits: ['0.01 %', '50 %'], valid: ['0.01 %', '10 %'] }),
    manningCoefficient: field.withDefault(field.number({ limits: [0.006, 0.1], valid: [0.009, 0.04] }), 0.011),
    diameter: field.optional(field.quantity(length, { limits: ['5 mm', '2 m'] })),
    bottomWidth: field.optional(field.quantity(length, { limits: ['5 mm', '10 m'] })),
    gutterDepth: field.optional(field.quantity(length, { limits: ['2 mm', '5 m'] })),
    wallLean: field.withDefault(field.number({ limits: [0, 10] }), 0),
    selfCleaningVelocity: field.withDefault(field.quantity(velocity, { limits: ['0.01 m/s', '2 m/s'] }), '0.6 m/s'),
  }),
  outputs: () => ({
    waterDepth: output.quantity(length, 'mm'),
    fillShare: output.quantity(share, '%'),
    waterArea: output.quantity(area, 'cm²'),
    wettedPerimeter: output.quantity(length, 'mm'),
    hydraulicRadius: output.quantity(length, 'mm'),
    velocity: output.quantity(velocity, 'm/s'),
    froudeNumber: output.number(),
    criticalDepth: output.optional(output.quantity(length, 'mm')),
    mostFlow: output.quantity(flow, 'L/min'),
    convergence: output.group({ flowResidual: output.quantity(flow, 'L/h'), steps: output.number() }),
  }),
  equation: 'Q = A R^(2/3) S^(1/2)/n; Fr = V/√(g A/T)',
  sources: ['maurer-hydraulics', 'common-practice'],
  example: { flow: '6 L/min', fall: '1 %', bottomWidth: '100 mm', gutterDepth: '60 mm' },
  check: (seen, problem) => {
    expectExactlyOne(seen, ['diameter', 'bottomWidth'], problem);
    if (seen.bottomWidth !== undefined && seen.gutterDepth === undefined) problem(['gutterDepth'], 'the depth of the gutter, beside the width of its bottom', 'none');
    if (seen.diameter !== undefined && seen.gutterDepth !== undefined) problem(['gutterDepth'], 'nothing, beside the diameter of a pipe', 'a depth');
  },
  solve: ({ flow, fall, manningCoefficient, diameter, bottomWidth, gutterDepth, wallLean, selfCleaningVelocity }, solving) => {
    const section = diameter === undefined ? trapezoidalSection(bottomWidth!, wallLean, gutterDepth!) : circularSection(diameter);
    const mostFlow = flowAtDepth(section, section.fullestDepth, fall, manningCoefficient);
    if (flow > mostFlow) {
      solving.refuse('flow', `at most ${litresPerMinute(mostFlow)}, which is all that it carries`, litresPerMinute(flow), `a fall of ${roundedUp(100 * fall * (flow / mostFlow) ** 2)} % would carry it, or a wider section`);
    }
    const { value: waterDepth, residual: flowResidual, steps } = normalDepth(section, flow, fall, manningCoefficient);
    const waterArea = section.area(waterDepth);
    const wettedPerimeter = section.wettedPerimeter(waterDepth);
    const velocity = flow / waterArea;
    const fillShare = waterDepth / (diameter ?? gutterDepth!);
    if (fillShare > nearlyFull) solving.note('caution', 'nearly-full', 'fillShare', `It runs ${writeNumber(100 * fillShare)} % full: twice the fall would carry ${litresPerMinute(mostFlow * Math.SQRT2)} at most instead of ${litresPerMinute(mostFlow)}.`);
    if (velocity < selfCleaningVelocity * (1 - dust)) noteSlow(velocity, selfCleaningVelocity, fallForVelocity(section, flow, selfCleaningVelocity, manningCoefficient), solving);
    return {
      waterDepth, fillShare, waterArea, wettedPerimeter, hydraulicRadius: waterArea / wettedPerimeter, velocity,
      froudeNumber: froudeNumber(section, flow, waterDepth),
      criticalDepth: criticalDepth(section, flow)?.value,
      mostFlow,
      convergence: { flowResidual, steps },
    };
  },
});

/** Gutters are not laid steeper than this. Common practice, no source. */
const steepest = 0.1;

/** Says so where dirt settles, and how much fall would carry it on. */
function noteSlow(velocity: number, wanted: number, fall: number, { note }: Solving): void {
  const remedy = fall > steepest ? 'no usual fall gives so little water: flush it now and then' : `take a fall of ${roundedUp(100 * fall)} %; with less, flush it now and then`;
  note('info', 'dirt-settles', 'velocity', `At ${writeNumber(velocity)} m/s dirt settles; ${writeNumber(wanted)} m/s, which keep a drain clean, ${remedy}.`);
}
