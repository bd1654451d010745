import type { Constraint } from '../../numerics/nearest-point.js';
import { molarMassOfNutrientForm } from '../../solution/formulas/composition.js';
import { nitrogenOfForms } from '../../solution/formulas/concentration.js';
import { dissolvePortions } from './dissolve.js';
import type { FeedForm } from './label-analysis.js';
import { contentOfProduct, type FormMasses } from './product-content.js';
import type { WeighingTask } from './weigh-out.js';

/** Alkalinity, mol/m3, that acid leaves in the water unless it is asked otherwise. Common practice, no source. */
const usualAlkalinityLeft = 0.5;
/** Alkalinity, mol/m3, that traces of acid in a product may take from any water: it is what pure water has at pH 5. */
const traceOfAcid = 0.01;
/** Alkalinity, mol/m3, that products may add unless it is asked otherwise. Common practice, no source. */
const usualAlkalinityRise = 1;

/** What a mix must keep to, in shares: normal · values ≥ bound. */
export interface MixLimit extends Constraint {
  /** The input that it comes from: `bounds.K.most`, `ammoniumShare`, `alkalinityLeft`, `alkalinityRise`, `mostMass of potassium-nitrate`. */
  readonly name: string;
  /** A limit on a form, and to which side. */
  readonly form?: FeedForm;
  readonly side?: 'least' | 'most';
  /** Whether it gives way where not all limits can be kept. Those that do not give way can always be kept. */
  readonly yields: boolean;
}

/** A task of weighing out as numbers about one: values by product, misses as shares of the targets. */
export interface MixProblem {
  /** Products and forms in the order of their names. */
  readonly names: readonly string[];
  readonly forms: readonly FeedForm[];
  /** kg/kg of every product. */
  readonly contents: readonly FormMasses[];
  /** kg/m3 in the water. */
  readonly before: FormMasses;
  /** kg/m3 of each product that a value of one stands for. */
  readonly units: readonly number[];
  /** kg/m3 of each form. */
  readonly targets: readonly number[];
  readonly weights: readonly number[];
  /** rows · values is to come to right: a row a target, as shares of the target (of the largest, where it is zero) times its weight. */
  readonly rows: readonly (readonly number[])[];
  readonly right: readonly number[];
  readonly limits: readonly MixLimit[];
}

/** Sets the problem up. Its order is that of names, so the answer does not depend on the order in which the task was written. */
export function mixProblem(task: WeighingTask): MixProblem {
  const { targets, products, volume, water = {}, weights = {} } = task;
  const forms = (Object.keys(targets) as FeedForm[]).sort();
  const names = Object.keys(products).sort();
  const contents = names.map((name) => contentOfProduct(products[name]!).forms);
  const before = dissolvePortions([], volume, water).massConcentrations;
  const wanted = forms.map((form) => targets[form]!);
  const largest = Math.max(...wanted, 0) || 1;
  const weighed = forms.map((form) => weights[form] ?? 1);
  const factors = wanted.map((target, i) => weighed[i]! / (target || largest));

  const rows = forms.map((form, i) => contents.map((content) => (content[form] ?? 0) * factors[i]!));
  const right = forms.map((form, i) => (wanted[i]! - (before[form] ?? 0)) * factors[i]!);
  const limits = [...boundLimits(task, contents, before, largest), ...ammoniumLimit(task, contents, before, largest), ...alkalinityLimits(task, contents, before)];
  const effects = names.map((_, j) => Math.hypot(...rows.map((row) => row[j]!)) || Math.hypot(...limits.map(({ normal }) => normal[j]!)));
  const units = effects.map((effect) => Math.min(1 / (effect || 1), Number.MAX_VALUE));
  const scaled = (row: readonly number[]): number[] => row.map((x, j) => x * units[j]!);
  const stocks = names.flatMap((name, j): MixLimit[] => {
    const { mostMass } = products[name]!;
    const normal = names.map((_, k) => (k === j ? -1 : 0));
    return mostMass === undefined ? [] : [{ name: `mostMass of ${name}`, normal, bound: -mostMass / volume / units[j]!, yields: false }];
  });
  return {
    names, forms, contents, before, units, targets: wanted, weights: weighed, right,
    rows: rows.map(scaled),
    limits: [...limits.map((limit) => ({ ...limit, normal: scaled(limit.normal) })), ...stocks],
  };
}

function boundLimits({ targets, bounds = {} }: WeighingTask, contents: readonly FormMasses[], before: FormMasses, largest: number): MixLimit[] {
  return (Object.keys(bounds) as FeedForm[]).sort().flatMap((form) =>
    (['least', 'most'] as const).flatMap((side): MixLimit[] => {
      const bound = bounds[form]![side];
      if (bound === undefined) return [];
      const scale = (side === 'least' ? 1 : -1) / (bound || (targets[form] ?? 0) || largest);
      return [{ name: `bounds.${form}.${side}`, form, side, normal: contents.map((content) => (content[form] ?? 0) * scale), bound: (bound - (before[form] ?? 0)) * scale, yields: true }];
    }));
}

/** Ammonium within its share of the nitrogen whose form is known. */
function ammoniumLimit({ ammoniumShare }: WeighingTask, contents: readonly FormMasses[], before: FormMasses, largest: number): MixLimit[] {
  if (ammoniumShare === undefined) return [];
  const spare = (masses: FormMasses): number => (ammoniumShare * nitrogenOfForms(masses) - (masses['N-NH4'] ?? 0)) / largest;
  return [{ name: 'ammoniumShare', normal: contents.map(spare), bound: -spare(before), yields: true }];
}

/** Acid never takes more alkalinity than there is, and lye and carbonates do not raise it far unless bicarbonate is asked for. */
function alkalinityLimits({ targets, bounds = {}, alkalinityLeft = usualAlkalinityLeft }: WeighingTask, contents: readonly FormMasses[], before: FormMasses): MixLimit[] {
  const perMass = contents.map(({ HCO3 = 0 }) => HCO3 / molarMassOfNutrientForm('HCO3'));
  if (perMass.every((alkalinity) => alkalinity === 0)) return [];
  const asked = [targets.HCO3, bounds.HCO3?.least, bounds.HCO3?.most].flatMap((mass) => (mass === undefined ? [] : [mass / molarMassOfNutrientForm('HCO3')]));
  const there = (before.HCO3 ?? 0) / molarMassOfNutrientForm('HCO3');
  const floor = Math.min(alkalinityLeft, there - traceOfAcid, ...asked);
  const left: MixLimit = { name: 'alkalinityLeft', normal: perMass, bound: floor - there, yields: false };
  const rise: MixLimit = { name: 'alkalinityRise', normal: perMass.map((alkalinity) => -alkalinity), bound: -usualAlkalinityRise, yields: false };
  return asked.length > 0 ? [left] : [left, rise];
}
