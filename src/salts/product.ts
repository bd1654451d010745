import * as field from '../calculation/field.js';
import type { Field } from '../calculation/field-types.js';
import { nutrientForms, type NutrientFormKey } from '../solution/nutrient-forms.js';
import { oxides, type Oxide } from '../solution/oxides.js';
import { writeNumber } from '../units/write.js';
import { analyseLabel, type LabelItem, type LabelStatement } from './formulas/label-analysis.js';
import type { Product } from './formulas/product-content.js';
import { nearestWords } from './nearest.js';
import { salts, type Salt, type SaltKey } from './salt-table.js';

/** A product as a calculation sees it: a salt or a label. */
export interface SeenProduct {
  readonly salt: SaltKey | undefined;
  readonly label: LabelStatement | undefined;
  readonly purity: number | undefined;
}

/** Adds a problem at a path. */
export type AddProblem = Parameters<field.GroupCheck<unknown>>[1];

/** What a label may state. */
export const labelItems = (): readonly LabelItem[] =>
  ['N', ...(Object.keys(nutrientForms) as NutrientFormKey[]).filter((form) => form !== 'HCO3'), ...(Object.keys(oxides) as Oxide[])];

/** Figures of a label, shares. */
export const labelField = () => field.record(labelItems(), field.share());

/** A salt of the table; for any other text the nearest of its keys are offered. */
function saltField(): Field<SaltKey, SaltKey> {
  const keys = Object.keys(salts) as SaltKey[];
  const read = field.text(60, (written) => {
    if (Object.hasOwn(salts, written)) return undefined;
    const near = nearestWords(written, keys, (key) => [key, salts[key].name, salts[key].formula]).map((key) => `'${key}'`);
    return { expected: "the key of a salt of the table, such as 'potassium-nitrate'", ...(near.length > 0 && { hint: `did you mean ${near.join(' or ')}?` }) };
  });
  return { schema: read.schema, about: { kind: 'choice', choices: keys } };
}

/** What a product is: a salt of the table, with its purity, or the figures of a label. */
export const productFields = () => ({
  salt: field.optional(saltField()),
  label: field.optional(labelField()),
  purity: field.optional(field.share({ limits: [0.01, 1] })),
});

/** Finds a product that is nothing, or two things, or of no known purity. */
export function checkProduct({ salt, label, purity }: SeenProduct, problem: AddProblem): void {
  if (salt === undefined && label === undefined) problem([], 'a salt or a label', 'neither');
  if (salt !== undefined && label !== undefined) problem(['label'], 'either a salt or a label', 'both');
  if (label === undefined) {
    if (salt !== undefined && purity === undefined && usualPurity(salt) === undefined) {
      problem(['purity'], `the purity of ${salts[salt].name}`, 'nothing', "products differ too much to guess: read it off the container, such as '60 %'");
    }
    return;
  }
  if (purity !== undefined) problem(['purity'], 'a label alone', 'a purity', 'a label already states what is in the product');
  checkLabel(label, undefined, problem);
}

/** Finds what cannot be right about a label. */
export function checkLabel(label: LabelStatement, density: number | undefined, problem: AddProblem): void {
  if (Object.keys(label).length === 0) problem(['label'], 'at least one figure', 'none');
  const analysis = analyseLabel(label, density);
  if (analysis.ok) return;
  for (const { item, message } of analysis.problems) {
    const figure = item && label[item];
    problem(item ? ['label', item] : ['label'], 'a label that adds up', figure === undefined ? 'this one' : `${writeNumber(figure * 100)} %`, message);
  }
}

/** The product that was seen; a purity left out is that of a usual product. */
export function productOf({ salt, label, purity }: SeenProduct): Product {
  return salt === undefined ? { label: label ?? {} } : { salt, purity: purity ?? usualPurity(salt) ?? 1 };
}

/** Purity of a usual product, where there is such a thing. */
export function usualPurity(salt: SaltKey): number | undefined {
  return (salts[salt] as Salt).usualPurity;
}
