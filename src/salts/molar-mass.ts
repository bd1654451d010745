import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import type { Element } from '../solution/atomic-weights.js';
import { molarMass as molarMassDimension, share } from '../units/dimensions.js';
import type { Quantity } from '../units/quantity.js';
import { parseChemicalFormula, type FormulaReading } from './chemical-formula.js';
import { decimalQuantity } from './decimal-quantity.js';
import { massFractionsOfFormula, molarMassOfFormula } from './formulas/molar-mass.js';

/**
 * Molar mass of a salt and what it is made of, from its chemical formula, water of crystallisation and all.
 *
 * In: `formula`, such as `Ca(NO3)2·4H2O` or `5Ca(NO3)2·NH4NO3·10H2O`: brackets nest, the dot may be a `.` or `*`, subscripts plain or lowered.
 * Out: `molarMass` in g/mol; `elements`, the share of the mass that each is; `waterOfCrystallisation`, the share that is water.
 * A formula that cannot be read is an InputError that says at which character. Trusted to about five digits, as atomic weights are.
 *
 * Source: Prohaska et al. 2022, Standard atomic weights of the elements 2021.
 * @example
 * const epsomSalt = molarMass({ formula: 'MgSO4·7H2O' });
 * epsomSalt.molarMass.in('g/mol') // => 246.466
 * epsomSalt.elements.Mg.in('%') // => 9.861
 * epsomSalt.waterOfCrystallisation.in('%') // => 51.17
 */
export const molarMass = /* @__PURE__ */ calculation({
  id: 'molarMass',
  title: 'Molar mass and elements of a chemical formula',
  inputs: () => ({
    formula: field.text(200, (formula) => {
      const reading = parseChemicalFormula(formula);
      return reading.ok ? undefined : { expected: "a chemical formula, such as 'Ca(NO3)2·4H2O'", hint: `character ${reading.position + 1}: ${reading.message}` };
    }),
  }),
  outputs: () => ({
    molarMass: decimalQuantity(molarMassDimension, 'g/mol'),
    elements: output.record<Element, number, Quantity<'share'>>(decimalQuantity(share, '%')),
    waterOfCrystallisation: decimalQuantity(share, '%'),
  }),
  equation: 'M = Σ atoms × atomic weight; share of an element = its part of that sum',
  sources: ['prohaska-2022'],
  example: { formula: '5Ca(NO3)2·NH4NO3·10H2O' },
  solve: ({ formula }) => {
    const { water } = parseChemicalFormula(formula) as FormulaReading;
    const whole = molarMassOfFormula(formula);
    return { molarMass: whole, elements: massFractionsOfFormula(formula), waterOfCrystallisation: (water * molarMassOfFormula('H2O')) / whole };
  },
});
