import type { TitratingAcid } from './formulas/acid-titration.js';
import { molarMassOfComposition } from '../solution/formulas/composition.js';
import { compositionOfFormula } from './chemical-formula.js';
import { salts, type SaltKey } from './salt-table.js';

/** Acids that take alkalinity away, by their keys in the table of salts. */
export const acidKeys = ['nitric-acid', 'phosphoric-acid', 'sulfuric-acid', 'citric-acid-anhydrous', 'citric-acid-monohydrate'] as const satisfies readonly SaltKey[];

/** Key of an acid. */
export type AcidKey = (typeof acidKeys)[number];

/** Whether a salt of the table is an acid. */
export const isAcid = (salt: SaltKey): salt is AcidKey => (acidKeys as readonly SaltKey[]).includes(salt);

/** An acid as titrations see it, by its row in the table of salts. */
export function titratingAcid(key: AcidKey): TitratingAcid {
  const { 'H+': protons, ...anions } = salts[key].ions;
  const [anion] = Object.keys(anions) as [TitratingAcid['anion']];
  return { anion, protons };
}

/** Molar mass of an acid with its water of crystallisation, kg/mol. */
export const molarMassOfAcid = (key: AcidKey): number => molarMassOfComposition(compositionOfFormula(salts[key].formula));
