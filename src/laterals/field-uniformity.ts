import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import { flow, share, time, volume } from '../units/dimensions.js';
import { flowVariationWuGitlin1974, lowQuarterUniformityWhole, statisticalUniformityOfSample, uniformityChristiansen1942 } from './formulas/uniformity.js';
import { noteUneven } from './lateral-notes.js';
import { uniformityClass } from './uniformity-classes.js';

/** Fewer measured emitters than this say little of a zone. Common practice, no source. */
const usualSample = 16;

/**
 * How evenly a zone waters, from emitters measured in the field.
 *
 * Takes one of three: the volumes caught in one and the same time (0 to 1 m³ each), the flows (0 to 10 m³/h), or the times that one and the same
 * vessel took to fill (0.1 s to 1 d). Sixteen emitters or more, spread over the zone from the first lateral to the last, tell something; a
 * blocked one counts, as a volume of nought. Gives the low-quarter uniformity (the lowest quarter is N/4 of them, rounded down, one at least),
 * Christiansen's and the statistical uniformity (of a sample), the variation from the highest to the lowest, and what the first and the third of
 * them are customarily called. For very uneven flows a measure falls below nought.
 * @throws InputError for input outside these limits, where not exactly one of the three is given, for fewer than two readings, and where nothing
 * flows.
 * @example
 * fieldUniformity({ volumes: { unit: 'mL', values: [100, 96, 104, 88] } }).lowQuarterUniformity.in('%') // => 90.7
 */
export const fieldUniformity = /* @__PURE__ */ calculation({
  id: 'fieldUniformity',
  title: 'Uniformity of a zone from measured emitters',
  inputs: () => ({
    volumes: field.optional(field.column(volume, { limits: ['0 mL', '1 m³'] })),
    flows: field.optional(field.column(flow, { limits: ['0 L/h', '10 m³/h'] })),
    fillTimes: field.optional(field.column(time, { limits: ['0.1 s', '1 d'] })),
  }),
  outputs: () => ({
    lowQuarterUniformity: output.quantity(share, '%'),
    lowQuarterClass: output.text(),
    christiansenUniformity: output.quantity(share, '%'),
    statisticalUniformity: output.quantity(share, '%'),
    statisticalClass: output.optional(output.text()),
    flowVariation: output.quantity(share, '%'),
  }),
  equation: 'DU = mean of the lowest quarter / mean; CU = 1 − Σ|q − q̄|/(N q̄); Us = 1 − s/q̄; (q_max − q_min)/q_max',
  sources: ['merriam-keller-1978', 'christiansen-1942', 'asae-ep458', 'wu-gitlin-1974'],
  example: { fillTimes: { unit: 's', values: [71, 68, 70, 74, 69, 73, 72, 70, 75, 77, 71, 76, 73, 79, 78, 74] } },
  check: (seen, problem) => expectExactlyOne(seen, ['volumes', 'flows', 'fillTimes'], problem),
  solve: ({ volumes, flows, fillTimes }, solving) => {
    const { note, refuse } = solving;
    const path = volumes ? 'volumes' : flows ? 'flows' : 'fillTimes';
    const all = (volumes ?? flows)?.si ?? fillTimes!.si.map((seconds) => 1 / seconds);
    const measured = all.filter((q) => !Number.isNaN(q));
    if (measured.length < 2) refuse(path, 'at least two readings', String(measured.length));
    const mean = measured.reduce((sum, q) => sum + q, 0) / measured.length;
    if (mean === 0) refuse(path, 'at least one emitter that flows', 'none');
    if (measured.length < all.length) note('info', 'missing-readings', path, `${all.length - measured.length} of ${all.length} readings are missing and left out; ${fillTimes ? 'where an emitter gives nothing, measure volumes in one and the same time instead, with a 0 for it' : 'write 0 for an emitter that gives nothing'}.`);
    if (measured.length < usualSample) note('info', 'few-readings', path, `${measured.length} readings say little of a zone: ${usualSample} or more are usual.`);
    const weak = [...all.keys()].filter((i) => all[i]! < mean / 2);
    if (weak.length > 0) note('caution', 'weak-emitters', path, `${weak.length === 1 ? 'Emitter' : 'Emitters'} ${weak.slice(0, 8).map((i) => i + 1).join(', ')}${weak.length > 8 ? ' …' : ''} in the order given: less than half the mean of ${measured.length}. Look for clogging, air or a kink.`);
    const lowQuarterUniformity = lowQuarterUniformityWhole(measured);
    const statisticalUniformity = statisticalUniformityOfSample(measured);
    const lowQuarterClass = uniformityClass('low-quarter uniformity', lowQuarterUniformity)!.called;
    noteUneven(lowQuarterUniformity, 'look for clogging, and for pressure that differs from one lateral to another', solving);
    return {
      lowQuarterUniformity, lowQuarterClass,
      christiansenUniformity: uniformityChristiansen1942(measured),
      statisticalUniformity,
      statisticalClass: uniformityClass('statistical uniformity', statisticalUniformity)?.called,
      flowVariation: flowVariationWuGitlin1974(measured),
    };
  },
});
