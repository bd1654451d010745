import type { IonAmounts } from '../../solution/formulas/concentration.js';
import type { Ion } from '../../solution/ions.js';
import { nutrientForms } from '../../solution/nutrient-forms.js';
import type { Portion } from './dissolve.js';
import type { FeedForm } from './label-analysis.js';
import { contentOfProduct, type FormMasses, type Product, type ProductContent } from './product-content.js';

/** What a concentration may be off by: the reading of a scale, the purity of a salt, a figure of a label, the volume of the feed. */
export type UncertaintySource = 'scale' | 'purity' | 'label' | 'volume';

/** A product, and how well it is known. */
export type UncertainProduct = Product & {
  /** Least and most pure substance in a salt, fractions. Left out: its purity is exact. */
  readonly purityRange?: readonly [least: number, most: number];
  /** By what share of itself each figure of a label may be off. Left out: they are exact. */
  readonly labelTolerance?: number;
};

/** Such a product, and how well it is weighed. */
export type UncertainPortion = UncertainProduct & Portion & {
  /** Step of the scale, kg. Left out: the mass is exact. */
  readonly division?: number;
};

/** Something about a feed that may be other than stated: by at most `below` downwards and `above` upwards. */
export interface UncertainInput {
  readonly source: UncertaintySource;
  /** What a change of one does to the concentrations, kg/m3. */
  readonly forms: FormMasses;
  /** The same for ions, mol/m3. `HCO3-` is alkalinity, below zero where an acid takes it away. */
  readonly ions: IonAmounts;
  readonly below: number;
  readonly above: number;
}

/**
 * What is uncertain about a feed, each independent of the others.
 *
 * A scale of division d shows m for anything from m - d/2 to m + d/2, and so moves all that the portion brings; its purity does too. The figures
 * of a label move each by itself, and nitrogen of every form moves with its forms where no total is stated. The volume (`volumeTolerance`, a
 * fraction of it, either way) moves everything that was weighed in. Exact are what the water brings, and what was not weighed: a mass of zero.
 *
 * @param volume m3
 * @example uncertainInputs([{ salt: 'potassium-chloride', purity: 1, mass: 0.05, division: 0.001 }], 0.1)[0].above // => 0.005, half a gram in 100 L
 */
export function uncertainInputs(portions: readonly UncertainPortion[], volume: number, volumeTolerance = 0): UncertainInput[] {
  const inputs: UncertainInput[] = [];
  const add = (source: UncertaintySource, { forms, ions }: ProductContent, below: number, above = below): void => {
    if (below + above > 0) inputs.push({ source, forms, ions, below, above });
  };
  let weighed: ProductContent = { forms: {}, ions: {} };
  for (const portion of portions) {
    if (portion.mass === 0) continue;
    const content = contentOfProduct(portion);
    const strength = portion.mass / volume;
    weighed = { forms: plus(weighed.forms, content.forms, strength), ions: plus(weighed.ions, content.ions, strength) };

    const half = (portion.division ?? 0) / 2 / volume;
    add('scale', content, Math.min(strength, half), half);
    if ('salt' in portion) {
      const [least, most] = portion.purityRange ?? [portion.purity, portion.purity];
      add('purity', content, strength * (1 - least / portion.purity), strength * (most / portion.purity - 1));
    } else {
      for (const figure of figuresOf(content, 'N' in portion.label)) add('label', figure, strength * (portion.labelTolerance ?? 0));
    }
  }
  add('volume', weighed, volumeTolerance);
  return inputs;
}

/** What each figure of a label stands for in the content of the product. */
function figuresOf({ forms, ions }: ProductContent, hasTotal: boolean): ProductContent[] {
  return (Object.entries(forms) as [FeedForm, number][]).flatMap(([form, share]): ProductContent[] => {
    if (form === 'N') return hasTotal ? [{ forms: { N: share }, ions: {} }] : [];
    const { carrier } = nutrientForms[form];
    const total = form.startsWith('N-') && !hasTotal ? { N: share } : {};
    return [{ forms: { [form]: share, ...total }, ions: { [carrier]: ions[carrier] } }];
  });
}

function plus<Key extends Ion | FeedForm>(sum: { readonly [K in Key]?: number }, added: { readonly [K in Key]?: number }, times: number): { readonly [K in Key]?: number } {
  const total: { [K in Key]?: number } = { ...sum };
  for (const [key, value] of Object.entries(added) as [Key, number][]) total[key] = (total[key] ?? 0) + value * times;
  return total;
}

