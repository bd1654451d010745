import type { Element } from './atomic-weights.js';
import type { Composition } from './ions.js';

/** The oxides in which labels and analyses state an element, a row each. */
export const oxides = {
  'P2O5': { element: 'P', composition: { P: 2, O: 5 } },
  'K2O': { element: 'K', composition: { K: 2, O: 1 } },
  'CaO': { element: 'Ca', composition: { Ca: 1, O: 1 } },
  'MgO': { element: 'Mg', composition: { Mg: 1, O: 1 } },
  'SO3': { element: 'S', composition: { S: 1, O: 3 } },
  'SiO2': { element: 'Si', composition: { Si: 1, O: 2 } },
  'Na2O': { element: 'Na', composition: { Na: 2, O: 1 } },
  'B2O3': { element: 'B', composition: { B: 2, O: 3 } },
  'MnO': { element: 'Mn', composition: { Mn: 1, O: 1 } },
  'Fe2O3': { element: 'Fe', composition: { Fe: 2, O: 3 } },
  'CuO': { element: 'Cu', composition: { Cu: 1, O: 1 } },
  'ZnO': { element: 'Zn', composition: { Zn: 1, O: 1 } },
  'MoO3': { element: 'Mo', composition: { Mo: 1, O: 3 } },
} as const satisfies Readonly<Record<string, { readonly element: Element; readonly composition: Composition }>>;

/** Key of an oxide of the table. */
export type Oxide = keyof typeof oxides;
