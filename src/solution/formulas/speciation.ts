import { bracketedRoot } from '../../numerics/roots.js';
import { standardAtmosphere } from '../../water/constants.js';
import { aqueousComponents, type AqueousSpecies, type Component } from '../aqueous-species.js';
import { logHenryConstantPlummerBusenberg1982 } from './equilibrium.js';
import { logFormationConstant } from './formation.js';
import { massActionSolver, type Equilibrium } from './mass-action.js';

/** Total amounts, mol per kg of water; what is not named is absent, and what is no component is not looked at. Phosphate of all kinds counts as H2PO4-, inorganic carbon as HCO3-. */
export type ComponentTotals = { readonly [C in Exclude<Component, 'H+'>]?: number };

/**
 * Temperature, and what fixes acidity: pH, or alkalinity, which gives the pH; pH with alkalinity gives the inorganic carbon, which must then
 * not be among the totals. With neither pH nor alkalinity no proton changes hands: every total stays the ion it is named after, or pairs as that ion.
 * In water that is open to the air, its carbon dioxide gives the inorganic carbon, beside a pH or an alkalinity.
 */
export interface SpeciationConditions {
  /** K. */
  readonly temperature: number;
  readonly pH?: number;
  /** Mol of charge per kg of water, counted from CO2, H2PO4-, NH4+ and hydrogen citrate (end point near pH 4.5). */
  readonly alkalinity?: number;
  /** Partial pressure, Pa, of the carbon dioxide that the water is at equilibrium with. Not given: the water is closed. */
  readonly carbonDioxide?: number;
}

/** Dissolved species at equilibrium. */
export interface Speciation {
  /** Mol per kg of water; absent species are not listed. */
  readonly molalities: { readonly [S in AqueousSpecies]?: number };
  /** Activities on the molal scale; absent species are not listed. */
  readonly activities: { readonly [S in AqueousSpecies]?: number };
  /** Mol/kg, of the free ions and charged pairs. */
  readonly ionicStrength: number;
  /** Mol of charge per kg. */
  readonly alkalinity: number;
  /** Minus log10 of the activity of H+; undefined where no proton changes hands. */
  readonly pH: number | undefined;
  /** Largest miss of a balance, as a fraction of its total. */
  readonly residual: number;
  /** Newton steps in all. */
  readonly steps: number;
}

/**
 * Free ions, acids, bases and ion pairs of a solution at equilibrium, from total amounts.
 *
 * m_i g_i = K_i Π (m_j g_j)^n_ij over the components j, with a mass balance for every component; ions take activity coefficients after
 * Davies (1962), neutral species 10^(0.1 I), both at the ionic strength of the free species. Given alkalinity, pH or carbon is searched for
 * around that until the alkalinity of the species is the one given. For ionic strengths up to about 0.5 mol/kg and 0 to 50 °C; above, the
 * coefficients stay what they are at 0.5, which is rough.
 *
 * Throws RangeError for a negative total, carbon given twice, or, with a pH, alkalinity below what is there without any carbon (hydrogen
 * phosphate has some at pH 7); ConvergenceError where no pH from -2 to 16 gives the alkalinity.
 *
 * Source: Parkhurst and Appelo 2013 for the equations, here with one activity model for all ions; constants in `aqueousSpecies`.
 *
 * @example speciate({ 'Ca2+': 0.005, 'SO4 2-': 0.005 }, { temperature: 298.15 }).molalities.CaSO4 // => 0.0011, a fifth of the calcium
 */
export function speciate(totals: ComponentTotals, { temperature, pH, alkalinity, carbonDioxide }: SpeciationConditions): Speciation {
  const { components, amounts } = presentIn(totals);
  const lnCarbon = carbonDioxide === undefined ? undefined : lnBicarbonateTimesProton(carbonDioxide, temperature);
  const carbonGivenBy = [totals['HCO3-'] !== undefined, carbonDioxide !== undefined, pH !== undefined && alkalinity !== undefined];
  if (carbonGivenBy.filter(Boolean).length > 1) throw new RangeError('inorganic carbon is given once: as a total, by the air, or by pH with alkalinity');
  if (pH === undefined && alkalinity === undefined) return told(massActionSolver(components, [], temperature)(amounts, []), undefined);

  const solver = massActionSolver(components, lnCarbon === undefined ? ['H+'] : ['H+', 'HCO3-'], temperature);
  const atAcidity = (acidity: number, start?: readonly number[]): Equilibrium => {
    const lnProton = -acidity * Math.LN10;
    return solver(amounts, lnCarbon === undefined ? [lnProton] : [lnProton, lnCarbon - lnProton], start);
  };
  if (alkalinity === undefined) return told(atAcidity(pH!), pH);

  const miss = (found: Equilibrium): number => found.alkalinity - alkalinity;
  if (pH === undefined) {
    const search = searching(atAcidity, miss);
    const { value } = bracketedRoot(search.miss, ...acidityAround(search.miss), { tolerance: 1e-12 });
    return told(search.at(value), value, alkalinity);
  }

  const without = atAcidity(pH);
  const missing = -miss(without);
  if (missing === 0) return told(without, pH, alkalinity);
  if (!(missing > 0)) throw new RangeError(`at pH ${pH} the alkalinity is ${without.alkalinity} without any carbon, above the ${alkalinity} given`);
  const withCarbon = massActionSolver([...components, 'HCO3-'], ['H+'], temperature);
  const search = searching((carbon, start) => withCarbon([...amounts, carbon], [-pH * Math.LN10], start), miss);
  let most = missing;
  while (search.miss(most) < 0) most *= 4;
  return told(search.at(bracketedRoot((carbon) => (carbon === 0 ? -missing : search.miss(carbon)), 0, most).value), pH, alkalinity);
}

/** Natural logarithm of the activity of HCO3- times that of H+ in water at equilibrium with carbon dioxide of a partial pressure in Pa. */
function lnBicarbonateTimesProton(carbonDioxide: number, temperature: number): number {
  const logConstant = logHenryConstantPlummerBusenberg1982(temperature) - logFormationConstant('CO2', temperature) - logFormationConstant('CO3 2-', temperature);
  return Math.log(carbonDioxide / standardAtmosphere) + logConstant * Math.LN10;
}

/** Two acidities that the right one lies between, found in growing strides from pH 6; what an acidity makes the alkalinity miss rises with it. */
function acidityAround(miss: (pH: number) => number): readonly [low: number, high: number] {
  const isAbove = miss(6) < 0;
  let [low, high] = [6, 6];
  for (let stride = 1; (isAbove ? high < 16 && miss(high) < 0 : low > -2 && miss(low) > 0) || low === high; stride *= 2) {
    [low, high] = isAbove ? [high, Math.min(16, high + stride)] : [Math.max(-2, low - stride), low];
  }
  return [low, high];
}

/** A search for one number by what it makes the alkalinity miss. Every solution starts from the one before, and a number asked for again misses as before. */
function searching(solve: (x: number, start?: readonly number[]) => Equilibrium, miss: (found: Equilibrium) => number) {
  let last: Equilibrium | undefined;
  let steps = 0;
  const at = (x: number): Equilibrium => {
    last = solve(x, last?.logs);
    steps += last.steps;
    return { ...last, steps };
  };
  const misses = new Map<number, number>();
  const missAt = (x: number): number => {
    const known = misses.get(x) ?? miss(at(x));
    misses.set(x, known);
    return known;
  };
  return { at, miss: missAt };
}

/** Less is none, mol/kg: no analysis and no balance would notice. */
const nothing = 1e-18;

/** Components that are there, and how much of each. */
function presentIn(totals: ComponentTotals): { readonly components: readonly Component[]; readonly amounts: readonly number[] } {
  const components: Component[] = [];
  const amounts: number[] = [];
  for (const component of aqueousComponents) {
    const amount = component === 'H+' ? 0 : (totals[component] ?? 0);
    if (!(amount >= 0)) throw new RangeError(`the total of ${component} is zero or more, not ${amount}`);
    if (amount <= nothing) continue;
    components.push(component);
    amounts.push(amount);
  }
  return { components, amounts };
}

function told({ species, ionicStrength, alkalinity, residual, steps }: Equilibrium, pH: number | undefined, wanted = alkalinity): Speciation {
  const molalities: Record<string, number> = {};
  const activities: Record<string, number> = {};
  for (const { species: { name }, molality, activity } of species) {
    molalities[name] = molality;
    activities[name] = activity;
  }
  const miss = Math.abs(alkalinity - wanted) / Math.max(Math.abs(wanted), 1e-6);
  return { molalities, activities, ionicStrength, alkalinity, pH, residual: Math.max(residual, miss), steps };
}
