import type * as laterals from '../src/laterals/index.js';
import { agreeWithin, built, type Comparison } from './comparison.js';
import { networkSolver } from './pipe-network.js';

const { lateralFromInletHead } = await built<typeof laterals>('laterals');

/** A level lateral of 100 emitters, 4 L/h each at 10 m, on the bench of strawberry troughs. */
export async function lateralComparisons(): Promise<Comparison[]> {
  const outlets = 100;
  const network = await networkSolver({ outlets, spacing: 0.5, diameter: 13.6, roughness: 0.0015, inletHead: 10, emitterCoefficient: 0.004 / Math.sqrt(10) });
  const ours = () => lateralFromInletHead({
    outlets, spacing: 0.5, diameter: 0.0136,
    emitter: { flow: 4 / 3.6e6, head: 10, exponent: 0.5 },
    friction: { law: 'Darcy-Weisbach', roughness: 1.5e-6, viscosity: 1.02193e-6 },
  }, 10);
  const agree = () => network.whole().forEach((flow, i) => agreeWithin(0.001, ours().flows[i]! * 3600, flow));
  return [
    {
      name: 'lateral of 100 emitters',
      ours: { name: 'lateral', run: ours },
      theirs: { name: 'epanet-js, network read and solved', run: network.whole },
      limit: { atLeast: 20 },
      agree,
    },
    {
      name: 'the same, network read before',
      ours: { name: 'lateral', run: ours },
      theirs: { name: 'epanet-js, solved only', run: network.solve },
      agree,
    },
  ];
}
