import type { AddProblem } from '../calculation/problem.js';
import * as field from '../calculation/field.js';
import type { Field } from '../calculation/field-types.js';
import type { AddNote } from '../calculation/note.js';
import { Refusal, single, type SingleField } from '../calculation/single-field.js';
import { nutrientForms, type NutrientFormKey } from '../solution/nutrient-forms.js';
import { oxides, type Oxide } from '../solution/oxides.js';
import type { ShareInput } from '../units/quantity.js';
import { analyseLabel, type LabelItem, type LabelStatement } from './formulas/label-analysis.js';
import type { UncertainProduct } from './formulas/weighing-uncertainty.js';
import { nearestHint } from './nearest.js';
import { salts, type Salt, type SaltKey } from './salt-table.js';
import { percent } from '../units/in-words.js';

/** A product as a calculation sees it: a salt or a label. */
export interface SeenProduct {
  readonly salt: SaltKey | undefined;
  readonly label: LabelStatement | undefined;
  readonly purity: number | undefined;
  readonly purityRange: readonly number[] | undefined;
  readonly labelTolerance: number | undefined;
}

/** Adds a problem at a path. */
/** What a label may state. */
const labelItems = (): readonly LabelItem[] =>
  ['N', ...(Object.keys(nutrientForms) as NutrientFormKey[]).filter((form) => form !== 'HCO3'), ...(Object.keys(oxides) as Oxide[])];

/** Figures of a label, shares. */
export const labelField = () => field.record(labelItems(), field.share());

/** A salt of the table; for any other text the nearest of its keys are offered. */
export function saltField(): Field<SaltKey, SaltKey> {
  const keys = Object.keys(salts) as SaltKey[];
  const read = field.text(60, (written) => {
    if (Object.hasOwn(salts, written)) return undefined;
    return { expected: "the key of a salt of the table, such as 'potassium-nitrate'", hint: nearestHint(written, keys, (key) => [key, salts[key].name, salts[key].formula]) };
  });
  return { schema: read.schema, about: { kind: 'choice', choices: keys } };
}

/** The purity of a salt. */
function purityField(): SingleField<ShareInput, number> {
  const { about, read } = field.share({ limits: [0.01, 1] });
  return single(about, (written) => {
    const seen = read(written);
    return seen instanceof Refusal ? new Refusal({ ...seen.problem, hint: seen.problem.hint ?? "read it off the container, such as '98 %'" }) : seen;
  });
}

/**
 * What a product is: a salt of the table, with its purity, or the figures of a label; and how well that is known: the least and the most that the
 * purity may be, or by what share of itself each figure of the container (of the label, or the purity) may be off.
 */
export const productFields = () => ({
  salt: field.optional(saltField()),
  label: field.optional(labelField()),
  purity: field.optional(purityField()),
  purityRange: field.optional(field.list(purityField(), { limits: [2, 2] })),
  labelTolerance: field.optional(field.share({ limits: [0, 0.5] })),
});

/** Finds a product that is nothing, or two things, or of no known purity. */
export function checkProduct({ salt, label, purity, purityRange, labelTolerance }: SeenProduct, problem: AddProblem): void {
  if (salt === undefined && label === undefined) problem([], 'a salt or a label', 'neither');
  if (salt !== undefined && label !== undefined) problem(['label'], 'either a salt or a label', 'both');
  if (purityRange !== undefined && labelTolerance !== undefined) problem(['labelTolerance'], 'either a range of purity or a tolerance', 'both');
  if (label === undefined) {
    if (purityRange !== undefined) checkPurityRange(purityRange, purity, problem);
    else if (salt !== undefined && purity === undefined && usualPurity(salt) === undefined) {
      problem(['purity'], `the purity of ${salts[salt].name}`, 'nothing', "products differ too much to guess: read it off the container, such as '60 %'");
    }
    return;
  }
  for (const [name, stated] of Object.entries({ purity, purityRange })) {
    if (stated !== undefined) problem([name], 'a label alone', 'a purity', 'a label already states what is in the product');
  }
  checkLabel(label, undefined, problem);
}

function checkPurityRange([least, most]: readonly number[], purity: number | undefined, problem: AddProblem): void {
  const range = `${percent(least!)} to ${percent(most!)}`;
  if (least! > most!) problem(['purityRange'], 'the least purity before the most', range, 'swap them?');
  else if (purity !== undefined && (purity < least! || purity > most!)) {
    problem(['purity'], `a purity of ${range}`, percent(purity), 'the range has to hold the purity: leave one of them out');
  }
}

/** Finds what cannot be right about a label. */
export function checkLabel(label: LabelStatement, density: number | undefined, problem: AddProblem): void {
  if (Object.keys(label).length === 0) problem(['label'], 'at least one figure', 'none');
  const analysis = analyseLabel(label, density);
  if (analysis.ok) return;
  for (const { item, message } of analysis.problems) {
    const figure = item && label[item];
    problem(item ? ['label', item] : ['label'], 'a label that adds up', figure === undefined ? 'this one' : percent(figure), message);
  }
}

/** The purity that is stated, or the middle of the range that is. */
export function statedPurity({ purity, purityRange }: SeenProduct): number | undefined {
  return purity ?? (purityRange && (purityRange[0]! + purityRange[1]!) / 2);
}

/** The product that was seen, and how well it is known. A purity that is not stated is that of a usual product. */
export function productOf(seen: SeenProduct): UncertainProduct {
  const { salt, label, purityRange, labelTolerance = 0 } = seen;
  if (salt === undefined) return { label: label ?? {}, labelTolerance };
  const purity = statedPurity(seen) ?? usualPurity(salt) ?? 1;
  const [least = purity * (1 - labelTolerance), most = Math.min(1, purity * (1 + labelTolerance))] = purityRange ?? [];
  return { salt, purity, purityRange: [least, most] };
}

/** Says which purities were taken as usual in the trade. */
export function noteUsualPurity(taken: readonly SaltKey[], path: string, note: AddNote): void {
  const texts = taken.map((salt) => `${salts[salt].name} ${percent(usualPurity(salt) ?? 1)}`);
  if (texts.length > 0) note('info', 'usual-purity', path, `Taken as usual in the trade, because no purity is given: ${[...new Set(texts)].sort().join(', ')}.`);
}

/** Purity of a usual product, where there is such a thing. */
export function usualPurity(salt: SaltKey): number | undefined {
  return (salts[salt] as Salt).usualPurity;
}
