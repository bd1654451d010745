/** Random tasks of weighing, set up from the contents of the products alone for solvers that are not ours, and how far our mixes are from theirs. */
import fc from 'fast-check';
import loadHighs, { type Highs } from 'highs';
import type { Constraint } from '../../src/numerics/nearest-point.js';
import { contentOfProduct, massesForTargets, type FormMasses, type Product, type SaltKey, type WeighingTask } from '../../src/salts/index.js';
import { molarMassOfNutrientForm } from '../../src/solution/index.js';
import { halfSquares, independentFit } from '../numerics/independent-fit.js';

type Form = keyof FormMasses;
const feedSalts = ['calcium-nitrate-tetrahydrate', 'calcium-ammonium-nitrate-decahydrate', 'potassium-nitrate', 'monopotassium-phosphate', 'potassium-sulfate', 'potassium-chloride',
  'magnesium-sulfate-heptahydrate', 'magnesium-nitrate-hexahydrate', 'ammonium-nitrate', 'monoammonium-phosphate', 'ammonium-sulfate', 'urea', 'calcium-chloride-dihydrate', 'nitric-acid', 'phosphoric-acid',
  'potassium-bicarbonate', 'iron-edta-trihydrate', 'manganese-sulfate-monohydrate', 'zinc-sulfate-heptahydrate', 'copper-sulfate-pentahydrate', 'boric-acid', 'borax-decahydrate', 'sodium-molybdate-dihydrate'] as const satisfies readonly SaltKey[];
/** Usual ranges of feeds, mg/L. */
const usual = { 'N-NO3': [50, 250], 'N-NH4': [5, 30], 'P': [15, 60], 'K': [100, 400], 'Ca': [60, 250], 'Mg': [15, 70], 'S': [20, 120], 'Fe': [1, 4], 'Mn': [0.3, 1], 'Zn': [0.1, 0.5], 'Cu': [0.03, 0.15], 'B': [0.2, 0.5], 'Mo': [0.03, 0.1], 'Cl': [10, 80] } as const;

/** Evenly from 0 to 1: doubles drawn by their bits are nearly all next to nothing, and no feed. */
const share = fc.noBias(fc.integer({ min: 0, max: 10_000 }).map((n) => n / 10_000));
const between = ([low, high]: readonly [number, number], at: number): number => (low + (high - low) * at) / 1000;

/** 6 to 14 salts, 5 to 12 targets; half with stocks, bounds and a share of ammonium that a mix in between can keep. */
const tasks = fc.noBias(fc.record({
  names: fc.uniqueArray(fc.constantFrom(...feedSalts), { minLength: 6, maxLength: 14 }),
  forms: fc.uniqueArray(fc.constantFrom(...(Object.keys(usual) as (keyof typeof usual)[])), { minLength: 5, maxLength: 12 }),
  at: fc.array(share, { minLength: 60, maxLength: 60 }),
  isLimited: fc.boolean(),
}).map(({ names, forms, at, isLimited }) => {
  const products: Record<string, Product & { mostMass?: number; pricePerKilogram: number }> = Object.fromEntries(names.map((salt, j) => [salt, {
    salt, purity: salt.endsWith('acid') && salt !== 'boric-acid' ? 0.6 : 0.98, pricePerKilogram: 0.5 + 5 * at[j]!, ...(isLimited && at[j + 14]! < 0.3 && { mostMass: 0.1 * at[j + 20]! }),
  }]));
  const targets: FormMasses = Object.fromEntries(forms.map((form, i) => [form, between(usual[form], at[30 + i]!)]));
  const weights: FormMasses = Object.fromEntries(forms.slice(0, 3).map((form, i) => [form, 0.5 + 4 * at[45 + i]!]));
  const bounds: WeighingTask['bounds'] = isLimited ? Object.fromEntries(forms.slice(0, 3).map((form, i) => [form, { most: targets[form]! * (0.7 + 0.5 * at[50 + i]!) }])) : {};
  return { targets, products, volume: 0.2, water: { Ca: 0.02, Mg: 0.004, Cl: 0.009, S: 0.004, HCO3: 0.12 * at[58]! }, weights, bounds, ammoniumShare: isLimited ? 0.05 + 0.2 * at[59]! : undefined } satisfies WeighingTask;
}).filter(({ bounds, water }) => Object.entries(bounds ?? {}).every(([form, { most }]) => most! >= ((water as FormMasses)[form as Form] ?? 0))));

export const weighingCases = fc.sample(tasks, { numRuns: 50, seed: 1 });

type WeighingCase = (typeof weighingCases)[number];

/** Rows a target, columns a product (kg/m3), and everything that must hold. */
function matrices({ targets, products, volume, water, weights, bounds, ammoniumShare }: WeighingCase) {
  const names = Object.keys(products);
  const contents = names.map((name) => contentOfProduct(products[name]!).forms);
  const column = (form: Form) => contents.map((content) => content[form] ?? 0);
  const there = (form: Form) => (water as FormMasses)[form] ?? 0;
  const forms = Object.keys(targets) as Form[];
  const factors = forms.map((form) => (weights[form] ?? 1) / targets[form]!);
  const rows = forms.map((form, i) => column(form).map((x) => x * factors[i]!));
  const right = forms.map((form, i) => (targets[form]! - there(form)) * factors[i]!);
  const unit = (j: number, sign: number) => names.map((_, k) => (j === k ? sign : 0));
  const alkalinity = column('HCO3').map((x) => x / molarMassOfNutrientForm('HCO3'));
  const before = water.HCO3 / molarMassOfNutrientForm('HCO3');
  const constraints: Constraint[] = [
    ...names.map((_, j) => ({ normal: unit(j, 1), bound: 0 })),
    ...names.flatMap((name, j) => (products[name]!.mostMass === undefined ? [] : [{ normal: unit(j, -1), bound: -products[name]!.mostMass / volume }])),
    ...Object.entries(bounds ?? {}).map(([form, { most }]) => ({ normal: column(form as Form).map((x) => -x), bound: there(form as Form) - most! })),
    ...(ammoniumShare === undefined ? [] : [{ normal: contents.map((content) => ammoniumShare * ((content['N-NO3'] ?? 0) + (content['N-NH4'] ?? 0) + (content['N-urea'] ?? 0)) - (content['N-NH4'] ?? 0)), bound: 0 }]),
    { normal: alkalinity, bound: Math.min(0.5, before - 0.01) - before },
    { normal: alkalinity.map((x) => -x), bound: -1 },
  ];
  return { names, forms, rows, right, constraints };
}

/** Our best fit beside that of quadprog, and what our mix must keep. */
export function fitAgainstQuadprog(task: WeighingCase) {
  const { names, rows, right, constraints } = matrices(task);
  const { exactMasses, residual } = massesForTargets(task);
  const ours = names.map((name) => exactMasses[name]! / task.volume);
  const theirs = halfSquares(rows, right, independentFit(rows, right, constraints));
  const breach = Math.max(...constraints.map(({ normal, bound }) => bound - normal.reduce((sum, x, j) => sum + x * ours[j]!, 0)));
  return { ours: halfSquares(rows, right, ours), theirs, breach, residual };
}

const highs = await (loadHighs as unknown as () => Promise<Highs>)();

/** The programme in the LP format, numbers in full. */
function leastCost(prices: readonly number[], constraints: readonly Constraint[]): number {
  const sum = (row: readonly number[]) => row.flatMap((x, j) => (x === 0 ? [] : [`${x < 0 ? '-' : '+'} ${Math.abs(x)} x${j}`])).join(' ') || '0 x0';
  const text = `Minimize\n cost: ${sum(prices)}\nSubject To\n${constraints.map(({ normal, bound }, k) => ` r${k}: ${sum(normal)} >= ${bound}`).join('\n')}\nEnd`;
  const { Status, ObjectiveValue } = highs.solve(text, { primal_feasibility_tolerance: 1e-10, dual_feasibility_tolerance: 1e-10 });
  if (Status !== 'Optimal') throw new Error(Status);
  return ObjectiveValue;
}

/** Our least cost within a tolerance beside that of HiGHS, and the cost of the best fit. */
export function costAgainstHighs(task: WeighingCase, costTolerance: number) {
  const { names, forms, rows, right, constraints } = matrices(task);
  const fit = massesForTargets(task);
  const { cost } = massesForTargets({ ...task, costTolerance });
  const missed = rows.map((row, k) => Math.abs(names.reduce((sum, name, j) => sum + (row[j]! * fit.exactMasses[name]!) / task.volume, -right[k]!)));
  const corridor = rows.flatMap((row, k) => {
    const allowed = Math.max(costTolerance * (task.weights[forms[k]!] ?? 1), missed[k]!);
    return [{ normal: row, bound: right[k]! - allowed }, { normal: row.map((x) => -x), bound: -right[k]! - allowed }];
  });
  const theirs = leastCost(names.map((name) => task.products[name]!.pricePerKilogram * task.volume), [...constraints, ...corridor]);
  return { ours: cost!, theirs, ofFit: fit.cost! };
}

/** Tolerances that costs are compared at, one after the other. */
export const costTolerances = [0.02, 0.1, 0.3] as const;
