import { calculation, type Solving } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { flow, length, pressure, share } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { filterMeshes, type MeshNumber } from './filter-meshes.js';
import { blockedShareFromLoss, filterPressureLoss } from './formulas/filter.js';

/** A clean filter that takes more than this, Pa, is small for its flow. Common practice, no source. */
const usualCleanLoss = 30_000;

/** No filter of a garden stands more than this, Pa. */
const impossibleLoss = 1e6;

const numbers = /* @__PURE__ */ Object.keys(filterMeshes) as MeshNumber[];

/**
 * Pressure that a filter takes, clean and loaded, when to flush it, and whether it is fine enough for the drippers.
 *
 * Takes the flow (0 to 10 000 m³/h) and one point of the data sheet: the clean loss (0.1 to 300 kPa) at a reference flow (1 L/h to 10 000 m³/h), the
 * exponent of the loss (1 to 2; 2, screens and discs, by default), the share of the area that is blocked (0 to 99 %; 0 by default) and the rise over
 * clean at which the filter is flushed (1 to 200 kPa; 30 kPa by default). Where the smallest passage of the drippers is known (0.05 to 10 mm), also the
 * opening of the filter (1 µm to 5 mm), or its mesh, and how many times smaller than the passage it has to be (2 to 20; 7 by default, 10 for much sand
 * or laminar drippers, from memory). Gives the clean loss, the loss as loaded, the loss at which to flush, and how much is blocked then; the opening, the
 * largest that the passage allows, and the coarsest mesh that keeps to it, absent where none of the table is fine enough.
 * @throws InputError for input outside these limits, for both an opening and a mesh, and for a loss above 1 MPa.
 * @example
 * const filter = filterLoss({ flow: '18 L/min', referenceFlow: '2 m³/h', referenceLoss: '15 kPa', mesh: '120', smallestPassage: '1 mm' });
 * filter.cleanLoss.in('kPa') // => 4.374
 * filter.blockedShareAtFlush.in('%') // => 64.3
 * filter.coarsestMesh // => 120
 */
export const filterLoss = /* @__PURE__ */ calculation({
  id: 'filterLoss',
  title: 'Pressure lost in a filter, and when to flush it',
  inputs: () => ({
    flow: field.quantity(flow, { limits: ['0 L/h', '10000 m³/h'] }),
    referenceFlow: field.quantity(flow, { limits: ['1 L/h', '10000 m³/h'] }),
    referenceLoss: field.quantity(pressure, { limits: ['0.1 kPa', '300 kPa'] }),
    lossExponent: field.withDefault(field.number({ limits: [1, 2] }), 2),
    blockedShare: field.withDefault(field.share({ limits: [0, 0.99] }), 0),
    flushRise: field.withDefault(field.quantity(pressure, { limits: ['1 kPa', '200 kPa'] }), '30 kPa'),
    filterOpening: field.optional(field.quantity(length, { limits: ['1 µm', '5 mm'] })),
    mesh: field.optional(field.choice(numbers)),
    smallestPassage: field.optional(field.quantity(length, { limits: ['0.05 mm', '10 mm'] })),
    passageRatio: field.withDefault(field.number({ limits: [2, 20] }), 7),
  }),
  outputs: () => ({
    cleanLoss: output.quantity(pressure, 'kPa'),
    loadedLoss: output.quantity(pressure, 'kPa'),
    flushLoss: output.quantity(pressure, 'kPa'),
    blockedShareAtFlush: output.quantity(share, '%'),
    filterOpening: output.optional(output.quantity(length, 'µm')),
    largestOpening: output.optional(output.quantity(length, 'µm')),
    coarsestMesh: output.optional(output.choice(numbers)),
  }),
  equation: 'Δp = Δp0 (Q/(Q0 (1 − b)))^n; flush at Δp_clean + rise; opening at most passage/7',
  sources: ['astm-e11', 'common-practice'],
  example: { flow: '18 L/min', referenceFlow: '2 m³/h', referenceLoss: '15 kPa', blockedShare: '40 %', mesh: '120', smallestPassage: '1 mm' },
  check: ({ filterOpening, mesh }, problem) => {
    if (filterOpening !== undefined && mesh !== undefined) problem(['mesh'], 'an opening or a mesh', 'both');
  },
  solve: ({ flow, referenceFlow, referenceLoss, lossExponent, blockedShare, flushRise, filterOpening, mesh, smallestPassage, passageRatio }, solving) => {
    const { note, refuse } = solving;
    const cleanLoss = filterPressureLoss(flow, referenceFlow, referenceLoss, lossExponent);
    const loadedLoss = filterPressureLoss(flow, referenceFlow, referenceLoss, lossExponent, blockedShare);
    if (cleanLoss > impossibleLoss) refuse('flow', 'a flow that this filter can pass', `one that would take ${writeNumber(cleanLoss / 1000)} kPa`, 'is the reference flow right?');
    if (loadedLoss > impossibleLoss) refuse('blockedShare', 'a filter that still passes this flow', `one so blocked that it would take ${writeNumber(loadedLoss / 1000)} kPa`, 'flush it');
    const flushLoss = cleanLoss + flushRise;
    if (cleanLoss > usualCleanLoss) {
      note('caution', 'small-filter', 'cleanLoss', `The filter takes ${writeNumber(cleanLoss / 1000)} kPa when clean; ${usualCleanLoss / 1000} kPa are usual, which one with ${writeNumber((cleanLoss / usualCleanLoss) ** (1 / lossExponent))} times the area has.`);
    }
    if (loadedLoss > flushLoss) note('caution', 'flush-now', 'loadedLoss', `The loss has risen by ${writeNumber((loadedLoss - cleanLoss) / 1000)} kPa: flush the filter at ${writeNumber(flushLoss / 1000)} kPa.`);
    const opening = filterOpening ?? (mesh && filterMeshes[mesh].opening);
    const largestOpening = smallestPassage === undefined ? undefined : smallestPassage / passageRatio;
    const coarsestMesh = largestOpening === undefined ? undefined : numbers.find((number) => filterMeshes[number].opening <= largestOpening);
    if (opening !== undefined && largestOpening !== undefined) noteCoarse(opening, largestOpening, coarsestMesh, solving);
    return { cleanLoss, loadedLoss, flushLoss, blockedShareAtFlush: blockedShareFromLoss(cleanLoss, flushLoss, lossExponent), filterOpening: opening, largestOpening, coarsestMesh };
  },
});

const microns = (metres: number): string => `${writeNumber(metres * 1e6)} µm`;

/** Says so where a filter lets through what the drippers may not. */
function noteCoarse(opening: number, largestOpening: number, coarsestMesh: MeshNumber | undefined, { note }: Solving): void {
  if (opening <= largestOpening) return;
  const instead = coarsestMesh === undefined ? '' : `, such as a mesh of ${coarsestMesh}`;
  note('caution', 'coarse-filter', 'filterOpening', `The filter lets through ${microns(opening)} and the drippers call for ${microns(largestOpening)} or finer${instead}.`);
}
