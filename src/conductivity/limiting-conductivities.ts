import type { Ion } from '../solution/ions.js';

/** Limiting molar conductivities, S cm2 per mole of ion. */
export type LimitingConductivityTable = { readonly [I in Ion]?: number };

/** Limiting molar conductivities in water at 25 °C, S cm2 per mole of ion. Source: CRC Handbook, table of ionic conductivities at infinite dilution. */
export const limitingConductivities25 = {
  'H+': 349.65, 'Na+': 50.08, 'K+': 73.48, 'NH4+': 73.5, 'Ca2+': 118.94, 'Mg2+': 106.0, 'Fe2+': 108.0, 'Mn2+': 107.0, 'Zn2+': 105.6, 'Cu2+': 107.2,
  'OH-': 198, 'F-': 55.4, 'Cl-': 76.31, 'NO2-': 71.8, 'NO3-': 71.42, 'HCO3-': 44.5, 'CO3 2-': 138.6, 'HSO4-': 52, 'SO4 2-': 160.0,
  'H2PO4-': 36, 'HPO4 2-': 114, 'PO4 3-': 278.4, 'MoO4 2-': 149.0,
} as const satisfies LimitingConductivityTable;

/**
 * Limiting conductivities at 25 °C of the hand calculation of Standard Methods 2510, S cm2 per mole of ion (printed there per equivalent).
 * From memory: pass a table of your own where the last digit matters.
 */
export const limitingConductivitiesStandardMethods2510 = {
  'H+': 350, 'Na+': 50.1, 'K+': 73.5, 'NH4+': 73.5, 'Ca2+': 119.0, 'Mg2+': 106.2,
  'OH-': 198.6, 'Cl-': 76.4, 'NO3-': 71.4, 'HCO3-': 44.5, 'CO3 2-': 144, 'SO4 2-': 160.0, 'H2PO4-': 33, 'HPO4 2-': 114,
} as const satisfies LimitingConductivityTable;
