import type { SourceKey } from '../sources.js';
import type { AnalyticCoefficients } from './formulas/equilibrium.js';
import type { Ion } from './ions.js';

/** The ions that totals are stated in; every other dissolved species is formed from them. */
export const aqueousComponents = [
  'H+', 'Na+', 'K+', 'NH4+', 'Ca2+', 'Mg2+', 'Fe2+', 'Mn2+', 'Zn2+', 'Cu2+', 'Cl-', 'NO3-', 'HCO3-', 'SO4 2-', 'H2PO4-',
  'C6H6O7 2-',
] as const satisfies readonly Ion[];

/** Key of a component. */
export type Component = (typeof aqueousComponents)[number];

/** How a species forms, and how strongly. */
export interface Formation {
  /** Reactants of one of the species: components, or species of a row above. A negative number is given off; water is left out. */
  readonly from: { readonly [reactant: string]: number };
  /** log10 of the formation constant at 25 °C and zero ionic strength, mol/kg. */
  readonly logK25?: number;
  /** Enthalpy of formation, J/mol. Where it is not given the constant is taken not to change with temperature. */
  readonly enthalpy?: number;
  /** log10 of the formation constant over temperature, in place of the two above. */
  readonly analytic?: AnalyticCoefficients;
  readonly source: SourceKey;
}

/**
 * Acids, bases and ion pairs that form in irrigation water and feeds, a row each. One set of constants, meant to be used together:
 * constants of ion pairs from other collections differ because their activity coefficients do.
 *
 * The enthalpies of hydrogen phosphate and citrate change with temperature themselves, by heat capacities of -226 J/(mol K), from memory, and of -162, -192 and -231
 * for the steps of citric acid; without that pH standards are missed by 0.03 at 5 °C.
 */
export const aqueousSpecies = {
  'OH-': { from: { 'H+': -1 }, analytic: [-283.971, -0.05069842, 13323, 102.24447, -1119669], source: 'ball-nordstrom-1991' },
  'CO3 2-': { from: { 'HCO3-': 1, 'H+': -1 }, analytic: [-107.8871, -0.03252849, 5151.79, 38.92561, -563713.9], source: 'plummer-busenberg-1982' },
  'CO2': { from: { 'CO3 2-': 1, 'H+': 2 }, analytic: [464.1965, 0.09344813, -26986.16, -165.75951, 2248628.9], source: 'plummer-busenberg-1982' },
  'NH3': { from: { 'NH4+': 1, 'H+': -1 }, analytic: [0.6322, -0.001225, -2835.76], source: 'ball-nordstrom-1991' },
  'HSO4-': { from: { 'SO4 2-': 1, 'H+': 1 }, analytic: [-56.889, 0.006473, 2307.9, 19.8858], source: 'ball-nordstrom-1991' },
  'H3PO4': { from: { 'H2PO4-': 1, 'H+': 1 }, logK25: 2.168, enthalpy: 7900, source: 'ball-nordstrom-1991' },
  'HPO4 2-': { from: { 'H2PO4-': 1, 'H+': -1 }, analytic: [72.5821, 0, -3735.848, -27.1816], source: 'ball-nordstrom-1991' },
  'PO4 3-': { from: { 'HPO4 2-': 1, 'H+': -1 }, logK25: -12.346, enthalpy: 14800, source: 'ball-nordstrom-1991' },
  'C6H5O7 3-': { from: { 'C6H6O7 2-': 1, 'H+': -1 }, analytic: [73.7863, 0, -3409.427, -27.7829], source: 'benezeth-1997' },
  'C6H7O7-': { from: { 'C6H6O7 2-': 1, 'H+': 1 }, analytic: [-62.7937, 0, 3105.017, 23.0923], source: 'benezeth-1997' },
  'C6H8O7': { from: { 'C6H7O7-': 1, 'H+': 1 }, analytic: [-54.2643, 0, 2737.057, 19.4841], source: 'benezeth-1997' },
  'NaSO4-': { from: { 'Na+': 1, 'SO4 2-': 1 }, logK25: 0.7, enthalpy: 4690, source: 'ball-nordstrom-1991' },
  'KSO4-': { from: { 'K+': 1, 'SO4 2-': 1 }, analytic: [3.106, 0, -673.6], source: 'ball-nordstrom-1991' },
  'NH4SO4-': { from: { 'NH4+': 1, 'SO4 2-': 1 }, logK25: 1.11, source: 'ball-nordstrom-1991' },
  'CaSO4': { from: { 'Ca2+': 1, 'SO4 2-': 1 }, logK25: 2.3, enthalpy: 6900, source: 'ball-nordstrom-1991' },
  'MgSO4': { from: { 'Mg2+': 1, 'SO4 2-': 1 }, logK25: 2.37, enthalpy: 19040, source: 'ball-nordstrom-1991' },
  'FeSO4': { from: { 'Fe2+': 1, 'SO4 2-': 1 }, logK25: 2.25, enthalpy: 13514, source: 'ball-nordstrom-1991' },
  'MnSO4': { from: { 'Mn2+': 1, 'SO4 2-': 1 }, logK25: 2.25, enthalpy: 14100, source: 'ball-nordstrom-1991' },
  'ZnSO4': { from: { 'Zn2+': 1, 'SO4 2-': 1 }, logK25: 2.37, enthalpy: 5690, source: 'ball-nordstrom-1991' },
  'CuSO4': { from: { 'Cu2+': 1, 'SO4 2-': 1 }, logK25: 2.31, enthalpy: 5104, source: 'ball-nordstrom-1991' },
  'CaHCO3+': { from: { 'Ca2+': 1, 'HCO3-': 1 }, analytic: [1209.12, 0.31294, -34765.05, -478.782], source: 'plummer-busenberg-1982' },
  'MgHCO3+': { from: { 'Mg2+': 1, 'HCO3-': 1 }, analytic: [-59.215, 0, 2537.455, 20.92298], source: 'ball-nordstrom-1991' },
  'NaHCO3': { from: { 'Na+': 1, 'HCO3-': 1 }, logK25: -0.25, source: 'ball-nordstrom-1991' },
  'CaCO3': { from: { 'Ca2+': 1, 'CO3 2-': 1 }, analytic: [-1228.732, -0.299444, 35512.75, 485.818], source: 'plummer-busenberg-1982' },
  'MgCO3': { from: { 'Mg2+': 1, 'CO3 2-': 1 }, analytic: [0.991, 0.00667], source: 'ball-nordstrom-1991' },
  'FeHCO3+': { from: { 'Fe2+': 1, 'HCO3-': 1 }, logK25: 2, source: 'ball-nordstrom-1991' },
  'MnHCO3+': { from: { 'Mn2+': 1, 'HCO3-': 1 }, logK25: 1.95, source: 'ball-nordstrom-1991' },
  'FeCO3': { from: { 'Fe2+': 1, 'CO3 2-': 1 }, logK25: 4.38, source: 'ball-nordstrom-1991' },
  'MnCO3': { from: { 'Mn2+': 1, 'CO3 2-': 1 }, logK25: 4.9, source: 'ball-nordstrom-1991' },
  'CaH2PO4+': { from: { 'Ca2+': 1, 'H2PO4-': 1 }, logK25: 1.408, enthalpy: 14200, source: 'ball-nordstrom-1991' },
  'MgH2PO4+': { from: { 'Mg2+': 1, 'H2PO4-': 1 }, logK25: 1.513, enthalpy: 14200, source: 'ball-nordstrom-1991' },
  'FeH2PO4+': { from: { 'Fe2+': 1, 'H2PO4-': 1 }, logK25: 2.7, source: 'ball-nordstrom-1991' },
  'CaHPO4': { from: { 'Ca2+': 1, 'HPO4 2-': 1 }, logK25: 2.739, enthalpy: 13800, source: 'ball-nordstrom-1991' },
  'MgHPO4': { from: { 'Mg2+': 1, 'HPO4 2-': 1 }, logK25: 2.87, enthalpy: 13800, source: 'ball-nordstrom-1991' },
  'FeHPO4': { from: { 'Fe2+': 1, 'HPO4 2-': 1 }, logK25: 3.6, source: 'ball-nordstrom-1991' },
  'KHPO4-': { from: { 'K+': 1, 'HPO4 2-': 1 }, logK25: 0.29, source: 'ball-nordstrom-1991' },
  'NaHPO4-': { from: { 'Na+': 1, 'HPO4 2-': 1 }, logK25: 0.29, source: 'ball-nordstrom-1991' },
  'CaPO4-': { from: { 'Ca2+': 1, 'PO4 3-': 1 }, logK25: 6.459, enthalpy: 13000, source: 'ball-nordstrom-1991' },
  'MgPO4-': { from: { 'Mg2+': 1, 'PO4 3-': 1 }, logK25: 6.589, enthalpy: 12970, source: 'ball-nordstrom-1991' },
  'CaC6H5O7-': { from: { 'Ca2+': 1, 'C6H5O7 3-': 1 }, logK25: 4.87, enthalpy: -8368, source: 'allison-1991' },
  'MgC6H5O7-': { from: { 'Mg2+': 1, 'C6H5O7 3-': 1 }, logK25: 4.89, enthalpy: 8368, source: 'allison-1991' },
  'CaC6H6O7': { from: { 'Ca2+': 1, 'C6H6O7 2-': 1 }, logK25: 2.864, enthalpy: -4187, source: 'allison-1991' },
  'MgC6H6O7': { from: { 'Mg2+': 1, 'C6H6O7 2-': 1 }, logK25: 2.514, enthalpy: -3, source: 'allison-1991' },
  'CaC6H7O7+': { from: { 'Ca2+': 1, 'C6H7O7-': 1 }, logK25: 1.1, source: 'allison-1991' },
  'MgC6H7O7+': { from: { 'Mg2+': 1, 'C6H7O7-': 1 }, logK25: 1.043, source: 'allison-1991' },
  'CaOH+': { from: { 'Ca2+': 1, 'H+': -1 }, logK25: -12.78, source: 'ball-nordstrom-1991' },
  'MgOH+': { from: { 'Mg2+': 1, 'H+': -1 }, logK25: -11.44, enthalpy: 66743, source: 'ball-nordstrom-1991' },
} as const satisfies Readonly<Record<string, Formation>>;

/** Key of any dissolved species: a component, or one formed from them. */
export type AqueousSpecies = Component | keyof typeof aqueousSpecies;
