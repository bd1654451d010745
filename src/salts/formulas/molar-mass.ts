import type { Decimal } from 'decimal.js';
import { atomicWeights, type Element } from '../../solution/atomic-weights.js';
import type { Composition } from '../../solution/ions.js';
import { compositionOfFormula } from '../chemical-formula.js';
import { decimalSum, ExactDecimal } from '../exact-decimal.js';

/** Mass of each element in one mole of a composition, g/mol, exact. */
function elementMasses(composition: Composition): readonly (readonly [Element, Decimal])[] {
  return Object.entries(composition).map(([element, atoms]) =>
    [element as Element, new ExactDecimal(atomicWeights[element as Element]).times(atoms)] as const);
}

/** Mass fraction of each element of a composition, to 40 digits. */
export function exactMassFractions(composition: Composition): readonly (readonly [Element, Decimal])[] {
  const masses = elementMasses(composition);
  const total = decimalSum(masses.map(([, mass]) => mass));
  return masses.map(([element, mass]) => [element, mass.div(total)] as const);
}

/**
 * Molar mass of a chemical formula, kg/mol: the sum of atoms times standard atomic weight, added up in decimals and rounded once.
 *
 * Trusted to about five digits. Throws a SyntaxError for a formula that cannot be read.
 *
 * Source: Prohaska et al. 2022, Standard atomic weights of the elements 2021.
 *
 * @param formula such as `Ca(NO3)2·4H2O`, see `parseChemicalFormula`
 * @example molarMassOfFormula('KNO3'); // => 0.1011023
 */
export function molarMassOfFormula(formula: string): number {
  return decimalSum(elementMasses(compositionOfFormula(formula)).map(([, mass]) => mass)).div(1000).toNumber();
}

/**
 * Mass fraction of each element in a chemical formula, in order of appearance: atoms times atomic weight over molar mass, in decimals and
 * rounded once. Throws a SyntaxError for a formula that cannot be read.
 *
 * @example massFractionsOfFormula('KCl'); // => { K: 0.52447, Cl: 0.47553 }
 */
export function massFractionsOfFormula(formula: string): { readonly [E in Element]?: number } {
  return Object.fromEntries(exactMassFractions(compositionOfFormula(formula)).map(([element, share]) => [element, share.toNumber()]));
}
