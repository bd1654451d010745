import { aqueousComponents, aqueousSpecies, type AqueousSpecies, type Component, type Formation } from '../aqueous-species.js';
import { ions } from '../ions.js';
import { logConstantOf } from './equilibrium.js';

/** A dissolved species in terms of the components. */
export interface DissolvedSpecies {
  readonly name: AqueousSpecies;
  /** Components in one of the species; given-off hydrogen ions are negative, water is left out. */
  readonly parts: readonly { readonly component: Component; readonly order: number }[];
  readonly charge: number;
  /** Charge it adds to the alkalinity, counted from CO2, H2PO4- and NH4+. */
  readonly alkalinity: number;
  /** How it forms; a component does not. */
  readonly formation?: Formation;
  /** Its reactants by their place in the list of species. */
  readonly reactants: readonly { readonly place: number; readonly number: number }[];
}

/** Every dissolved species in terms of the components: first the components themselves, then the table of formations in its order. */
export const dissolvedSpecies: readonly DissolvedSpecies[] = /* @__PURE__ */ inComponents();

function inComponents(): DissolvedSpecies[] {
  const list: DissolvedSpecies[] = [];
  const add = (name: AqueousSpecies, orders: ReadonlyMap<Component, number>, rest: Pick<DissolvedSpecies, 'formation' | 'reactants'>): void => {
    const parts = [...orders].map(([component, order]) => ({ component, order })).filter(({ order }) => order !== 0);
    const charge = parts.reduce((sum, { component, order }) => sum + order * ions[component].charge, 0);
    list.push({ name, parts, charge, alkalinity: (orders.get('HCO3-') ?? 0) - (orders.get('H+') ?? 0), ...rest });
  };
  for (const component of aqueousComponents) add(component, new Map([[component, 1]]), { reactants: [] });
  for (const [name, formation] of Object.entries<Formation>(aqueousSpecies)) {
    const reactants = Object.entries(formation.from).map(([reactant, number]) => ({ place: list.findIndex((other) => other.name === reactant), number }));
    const orders = new Map<Component, number>();
    for (const { place, number } of reactants) {
      for (const { component, order } of list[place]!.parts) orders.set(component, (orders.get(component) ?? 0) + number * order);
    }
    add(name as AqueousSpecies, orders, { formation, reactants });
  }
  return list;
}

/** Natural logarithms of the constants that form each of `dissolvedSpecies` from the components, at a temperature in K. */
export function lnFormationConstants(temperature: number): number[] {
  const lns: number[] = [];
  for (const { formation, reactants } of dissolvedSpecies) {
    let ln = formation ? logConstantOf(formation, temperature) * Math.LN10 : 0;
    for (const { place, number } of reactants) ln += number * lns[place]!;
    lns.push(ln);
  }
  return lns;
}

/**
 * log10 of the constant that forms a species from the reactants of its row in `aqueousSpecies`, at a temperature (K) and zero ionic strength.
 *
 * The pKa of an acid is this for the acid where its row adds one H+, and minus this for the base where its row gives one off.
 *
 * @example logFormationConstant('CO3 2-', 298.15) // => -10.3289, the second pKa of carbonic acid with a minus sign
 */
export function logFormationConstant(species: keyof typeof aqueousSpecies, temperature: number): number {
  return logConstantOf(aqueousSpecies[species], temperature);
}
