import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { density, share } from '../units/dimensions.js';
import type { Quantity } from '../units/quantity.js';
import { decimalQuantity } from './decimal-quantity.js';
import { formsOfLabel, type FeedForm } from './formulas/label-analysis.js';
import { checkLabel, labelField } from './product.js';

/**
 * What is really in a product, from the figures of its label: oxides turned into elements, nitrogen by form.
 *
 * In: `label`, shares by item: `N`, its forms `N-NO3`, `N-NH4`, `N-urea`, elements, and oxides (`P2O5`, `K2O`, `CaO`, `MgO`, `SO3`, …);
 * `productDensity` only for a liquid whose label states mass per volume (10 % w/v is 100 g/L).
 * Out: `nutrientShares`, the share of the product's mass; they can stand as a `label` themselves. `N` is nitrogen of every form.
 * A label that states a nutrient twice, whose forms of nitrogen pass the total, or that comes to more than the product is an InputError.
 *
 * Source: Prohaska et al. 2022, Standard atomic weights of the elements 2021.
 * @example
 * labelAnalysis({ label: { N: '13 %', K2O: '46 %' } }).nutrientShares.K.in('%') // => 38.187
 */
export const labelAnalysis = /* @__PURE__ */ calculation({
  id: 'labelAnalysis',
  title: 'Elements in a product from its label',
  inputs: () => ({
    label: labelField(),
    productDensity: field.optional(field.quantity(density, { limits: ['0.5 kg/L', '2.5 kg/L'] })),
  }),
  outputs: () => ({
    nutrientShares: output.record<Exclude<FeedForm, 'HCO3'>, number, Quantity<'share'>>(decimalQuantity(share, '%')),
  }),
  equation: 'element = oxide × atoms × atomic weight / molar mass of the oxide; % w/w = % w/v × 1 kg/L / density',
  sources: ['prohaska-2022'],
  example: { label: { N: '15.5 %', 'N-NO3': '14.4 %', 'N-NH4': '1.1 %', CaO: '26.3 %' } },
  check: ({ label, productDensity }, problem) => checkLabel(label, productDensity, problem),
  solve: ({ label, productDensity }) => ({ nutrientShares: formsOfLabel(label, productDensity) }),
});
