import { solveQP } from 'quadprog';
import type * as salts from '../src/salts/index.js';
import type { FormMasses, Product, SaltKey } from '../src/salts/index.js';
import { agreeWithin, built, type Comparison } from './comparison.js';

const { weighOut, contentOfProduct } = await built<typeof salts>('salts');

/** 12 targets, mg/L. */
const targets = { 'N-NO3': 190, 'N-NH4': 12, 'P': 45, 'K': 280, 'Ca': 170, 'Mg': 40, 'S': 60, 'Fe': 2, 'Mn': 0.6, 'Zn': 0.3, 'Cu': 0.05, 'B': 0.3 } as const;
/** 14 salts. */
const keys = ['calcium-nitrate-tetrahydrate', 'calcium-ammonium-nitrate-decahydrate', 'potassium-nitrate', 'monopotassium-phosphate', 'potassium-sulfate', 'magnesium-sulfate-heptahydrate', 'magnesium-nitrate-hexahydrate',
  'ammonium-nitrate', 'monoammonium-phosphate', 'iron-edta-trihydrate', 'manganese-sulfate-monohydrate', 'zinc-sulfate-heptahydrate', 'copper-sulfate-pentahydrate', 'boric-acid'] as const satisfies readonly SaltKey[];
const volume = 0.2;

const input = {
  volume: '200 L',
  targets: Object.fromEntries(Object.entries(targets).map(([form, target]) => [form, `${target} mg/L` as const])),
  salts: keys.map((salt) => ({ salt, purity: 0.98 })),
} as const;

/** The same fit by a general solver: contents looked up, matrices set up with 1e-8 of the identity, solved. */
function general(): readonly number[] {
  const forms = Object.keys(targets) as (keyof typeof targets)[];
  const contents = keys.map((salt): FormMasses => contentOfProduct({ salt, purity: 0.98 } satisfies Product).forms);
  const columns = contents.map((content) => forms.map((form) => ((content[form] ?? 0) * 1000) / targets[form]));
  const units = columns.map((column) => 1 / Math.hypot(...column));
  const from1 = <T>(list: readonly T[], zeroth: T): T[] => [zeroth, ...list];
  const product = (j: number, k: number) => columns[j]!.reduce((sum, x, i) => sum + x * columns[k]![i]!, 0) * units[j]! * units[k]!;
  const identity = (j: number, k: number) => (j === k ? 1 : 0);
  const matrix = (entry: (j: number, k: number) => number) => from1(keys.map((_, j) => from1(keys.map((_, k) => entry(j, k)), 0)), []);
  const { solution } = solveQP(matrix((j, k) => product(j, k) + 1e-8 * identity(j, k)), from1(columns.map((column, j) => column.reduce((sum, x) => sum + x, 0) * units[j]!), 0), matrix(identity), from1(keys.map(() => 0), 0));
  return solution.slice(1).map((value, j) => value * units[j]! * volume * 1000);
}

/** Sum of the squares of the misses of a mix, g of each salt, and a thousandth, so that two fits that are all but exact agree. */
function misses(grams: readonly number[]): number {
  const forms = Object.keys(targets) as (keyof typeof targets)[];
  const reached = (form: keyof typeof targets) => keys.reduce((sum, salt, j) => sum + ((contentOfProduct({ salt, purity: 0.98 }).forms[form] ?? 0) * grams[j]!) / volume, 0);
  return forms.reduce((sum, form) => sum + (reached(form) / targets[form] - 1) ** 2, 0.001);
}

/** A weigh sheet for 14 salts and 12 targets: the whole checked calculation beside the bare fit of a general solver. */
export function weighOutComparisons(): Comparison[] {
  const ours = () => weighOut(input).portions;
  return [{
    name: 'weigh sheet of 14 salts and 12 targets',
    ours: { name: 'weighOut, checked, with notes and intervals', run: ours },
    theirs: { name: 'quadprog, the fit alone', run: general },
    median: 1000,
    agree: () => agreeWithin(1e-6, misses(ours().map(({ mass }) => mass.in('g'))), misses(general())),
  }];
}
