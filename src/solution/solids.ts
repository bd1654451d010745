import type { SourceKey } from '../sources.js';
import type { AqueousSpecies } from './aqueous-species.js';
import type { AnalyticCoefficients } from './formulas/equilibrium.js';

/** A solid that can settle out of a water, a feed or a stock. */
export interface Solid {
  readonly name: string;
  readonly formula: string;
  /** Dissolved species that one formula unit gives; a negative number is taken up. */
  readonly gives: { readonly [S in AqueousSpecies]?: number };
  /** Molecules of water that one formula unit gives. */
  readonly water?: number;
  /** log10 of the constant of dissolution at 25 °C and zero ionic strength, mol/kg. */
  readonly logK25?: number;
  /** Enthalpy of dissolution, J/mol. Where it is not given the constant at 25 °C stands for every temperature. */
  readonly enthalpy?: number;
  /** log10 of the constant over temperature, in place of the two above. */
  readonly analytic?: AnalyticCoefficients;
  /** Readily: within hours of being mixed. Slowly: in weeks, if at all, so that a feed may hold more of it than its constant allows. Common practice, no source. */
  readonly forms: 'readily' | 'slowly';
  readonly source: SourceKey;
}

/**
 * Solids that settle out of water, feeds and stocks, a row each. Constants go with the ion pairs of `aqueousSpecies`: those of WATEQ4F where it has
 * the solid. Of brushite and monetite the enthalpy is worked out from their constants at 25 and 37 °C.
 *
 * Iron stands as iron(II) only; iron(III) phosphate and hydroxide cannot be told, because the iron(III) of a feed is held by its chelate.
 * The constant of manganese hydrogen phosphate is doubtful: most feeds would be supersaturated with it, and stay clear.
 */
export const solids = {
  'gypsum': { name: 'gypsum', formula: 'CaSO4·2H2O', gives: { 'Ca2+': 1, 'SO4 2-': 1 }, water: 2, analytic: [68.2401, 0, -3221.51, -25.0627], forms: 'readily', source: 'ball-nordstrom-1991' },
  'anhydrite': { name: 'anhydrite', formula: 'CaSO4', gives: { 'Ca2+': 1, 'SO4 2-': 1 }, analytic: [197.52, 0, -8669.8, -69.835], forms: 'slowly', source: 'ball-nordstrom-1991' },
  'calcite': { name: 'calcite', formula: 'CaCO3', gives: { 'Ca2+': 1, 'CO3 2-': 1 }, analytic: [-171.9065, -0.077993, 2839.319, 71.595], forms: 'readily', source: 'plummer-busenberg-1982' },
  'aragonite': { name: 'aragonite', formula: 'CaCO3', gives: { 'Ca2+': 1, 'CO3 2-': 1 }, analytic: [-171.9773, -0.077993, 2903.293, 71.595], forms: 'slowly', source: 'plummer-busenberg-1982' },
  'dolomite': { name: 'dolomite', formula: 'CaMg(CO3)2', gives: { 'Ca2+': 1, 'Mg2+': 1, 'CO3 2-': 2 }, logK25: -17.09, enthalpy: -39480, forms: 'slowly', source: 'ball-nordstrom-1991' },
  'brushite': { name: 'brushite', formula: 'CaHPO4·2H2O', gives: { 'Ca2+': 1, 'HPO4 2-': 1 }, water: 2, logK25: -6.59, enthalpy: -5900, forms: 'readily', source: 'dorozhkin-2010' },
  'monetite': { name: 'monetite', formula: 'CaHPO4', gives: { 'Ca2+': 1, 'HPO4 2-': 1 }, logK25: -6.9, enthalpy: -17700, forms: 'slowly', source: 'dorozhkin-2010' },
  'octacalcium-phosphate': { name: 'octacalcium phosphate', formula: 'Ca4H(PO4)3·3H2O', gives: { 'Ca2+': 4, 'H+': 1, 'PO4 3-': 3 }, water: 3, logK25: -47.08, forms: 'slowly', source: 'allison-1991' },
  'beta-tricalcium-phosphate': { name: 'beta-tricalcium phosphate', formula: 'Ca3(PO4)2', gives: { 'Ca2+': 3, 'PO4 3-': 2 }, logK25: -28.92, forms: 'slowly', source: 'allison-1991' },
  'hydroxyapatite': { name: 'hydroxyapatite', formula: 'Ca5(PO4)3OH', gives: { 'Ca2+': 5, 'HPO4 2-': 3, 'H+': -4 }, water: 1, logK25: -3.421, enthalpy: -151270, forms: 'slowly', source: 'ball-nordstrom-1991' },
  'struvite': { name: 'struvite', formula: 'MgNH4PO4·6H2O', gives: { 'Mg2+': 1, 'NH4+': 1, 'PO4 3-': 1 }, water: 6, logK25: -13.26, enthalpy: 22600, forms: 'readily', source: 'ronteltap-2007' },
  'newberyite': { name: 'newberyite', formula: 'MgHPO4·3H2O', gives: { 'Mg2+': 1, 'H+': 1, 'PO4 3-': 1 }, water: 3, logK25: -18.175, forms: 'slowly', source: 'allison-1991' },
  'vivianite': { name: 'vivianite', formula: 'Fe3(PO4)2·8H2O', gives: { 'Fe2+': 3, 'PO4 3-': 2 }, water: 8, logK25: -36, forms: 'slowly', source: 'ball-nordstrom-1991' },
  'siderite': { name: 'siderite', formula: 'FeCO3', gives: { 'Fe2+': 1, 'CO3 2-': 1 }, logK25: -10.89, enthalpy: -10376, forms: 'slowly', source: 'ball-nordstrom-1991' },
  'manganese-hydrogen-phosphate': { name: 'manganese hydrogen phosphate', formula: 'MnHPO4', gives: { 'Mn2+': 1, 'HPO4 2-': 1 }, logK25: -12.947, forms: 'slowly', source: 'ball-nordstrom-1991' },
  'rhodochrosite': { name: 'rhodochrosite', formula: 'MnCO3', gives: { 'Mn2+': 1, 'CO3 2-': 1 }, logK25: -11.13, enthalpy: -5983, forms: 'slowly', source: 'ball-nordstrom-1991' },
  'zinc-phosphate-tetrahydrate': { name: 'zinc phosphate tetrahydrate', formula: 'Zn3(PO4)2·4H2O', gives: { 'Zn2+': 3, 'PO4 3-': 2 }, water: 4, logK25: -32.04, forms: 'slowly', source: 'ball-nordstrom-1991' },
} as const satisfies Readonly<Record<string, Solid>>;

/** Key of a solid of the table. */
export type SolidKey = keyof typeof solids;
