/** Speciation as a spreadsheet would do it: one component after the other by bisection, round and round until nothing moves. The same equations as ours. */
import type * as solution from '../src/solution/index.js';
import type * as water from '../src/water/index.js';
import { built } from './comparison.js';

const { aqueousComponents, aqueousSpecies, ions, logActivityCoefficientDavies1962, logFormationConstant } = await built<typeof solution>('solution');
const { debyeHuckelSlope } = await built<typeof water>('water');

interface Species {
  readonly name: string;
  readonly logK: number;
  readonly charge: number;
  readonly orders: Readonly<Record<string, number>>;
}

function speciesAt(temperature: number): Species[] {
  const list: Species[] = aqueousComponents.map((name) => ({ name, logK: 0, charge: ions[name].charge, orders: { [name]: 1 } }));
  for (const name of Object.keys(aqueousSpecies) as (keyof typeof aqueousSpecies)[]) {
    let logK = logFormationConstant(name, temperature);
    const orders: Record<string, number> = {};
    for (const [reactant, number] of Object.entries<number>(aqueousSpecies[name].from)) {
      const parent = list.find((one) => one.name === reactant)!;
      logK += number * parent.logK;
      for (const [component, order] of Object.entries(parent.orders)) orders[component] = (orders[component] ?? 0) + number * order;
    }
    const charge = Object.entries(orders).reduce((sum, [component, order]) => sum + order * ions[component as keyof typeof ions].charge, 0);
    list.push({ name, logK, charge, orders });
  }
  return list;
}

/** Molalities by species and ionic strength, from totals in mol/kg at a pH. */
export function speciatedByBisection(totals: Readonly<Record<string, number>>, temperature: number, pH: number): { readonly molalities: ReadonlyMap<string, number>; readonly strength: number } {
  const slope = debyeHuckelSlope(temperature);
  const names = Object.keys(totals);
  const list = speciesAt(temperature).filter(({ orders }) => Object.entries(orders).every(([name, order]) => order === 0 || name === 'H+' || names.includes(name)));
  const logActivities = new Map<string, number>(names.map((name) => [name, Math.log10(totals[name]!)]));
  logActivities.set('H+', -pH);
  let strength = 0.01;
  const molality = ({ logK, charge, orders }: Species): number => {
    const logCoefficient = charge === 0 ? 0.1 * strength : logActivityCoefficientDavies1962(charge, strength, slope);
    return 10 ** (Object.entries(orders).reduce((log, [name, order]) => log + order * logActivities.get(name)!, logK) - logCoefficient);
  };
  for (let moved = 1; moved > 1e-11; ) {
    moved = 0;
    for (const name of names) {
      const its = list.filter(({ orders }) => (orders[name] ?? 0) !== 0);
      const before = logActivities.get(name)!;
      let [low, high] = [-40, 1];
      for (let step = 0; step < 55; step++) {
        const middle = (low + high) / 2;
        logActivities.set(name, middle);
        const total = its.reduce((sum, one) => sum + one.orders[name]! * molality(one), 0);
        if (total > totals[name]!) high = middle;
        else low = middle;
      }
      moved = Math.max(moved, Math.abs(logActivities.get(name)! - before));
    }
    const next = list.reduce((sum, one) => sum + 0.5 * one.charge ** 2 * molality(one), 0);
    moved = Math.max(moved, Math.abs(next / strength - 1));
    strength = next;
  }
  return { molalities: new Map(list.map((one) => [one.name, molality(one)])), strength };
}
