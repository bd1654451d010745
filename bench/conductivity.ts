import type * as conductivity from '../src/conductivity/index.js';
import { speciatedByBisection } from './bisection.js';
import { agreeWithin, built, type Comparison } from './comparison.js';

const { conductivityOfSolution, ionicConductivitiesMcCleskey2012, ionicConductivitiesOwn, ionicConductivitiesRefitted, molalConductivityMcCleskey2012 } = await built<typeof conductivity>('conductivity');

/** The teaching garden's feed in its tap water, mol/kg. */
const feed = {
  'Na+': 0.0006, 'K+': 0.0046, 'NH4+': 0.0005, 'Ca2+': 0.0031, 'Mg2+': 0.0012, 'Cl-': 0.0006, 'NO3-': 0.0087, 'HCO3-': 0.0006, 'SO4 2-': 0.0013, 'H2PO4-': 0.0012,
};
const rows: conductivity.IonicConductivityTable = { ...ionicConductivitiesMcCleskey2012, ...ionicConductivitiesRefitted, ...ionicConductivitiesOwn };

function byBisection(): number {
  const { molalities, strength } = speciatedByBisection(feed, 298.15, 5.8);
  let sum = 0;
  for (const [name, molality] of molalities) if (rows[name]) sum += molality * molalConductivityMcCleskey2012(rows[name], 298.15, strength);
  return sum;
}

export const conductivityComparisons = (): Comparison[] => [{
  name: 'conductivity of a feed with ion pairs',
  ours: { name: 'conductivityOfSolution', run: () => conductivityOfSolution(feed, { temperature: 298.15, pH: 5.8 }) },
  theirs: { name: 'the same equations by bisection', run: byBisection },
  limit: { atLeast: 100 },
  median: 50,
  agree: () => agreeWithin(1e-6, conductivityOfSolution(feed, { temperature: 298.15, pH: 5.8 }).value, byBisection()),
}];
