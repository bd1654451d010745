import type * as laterals from '../src/laterals/index.js';
import type * as units from '../src/units/index.js';
import { agreeWithin, built, type Comparison } from './comparison.js';
import { longestByNetwork, networkSolver } from './pipe-network.js';

const { lateral, longestLateral } = await built<typeof laterals>('laterals');
const { quantity } = await built<typeof units>('units');

/** Ten metres of water at 19.25 °C, which has the solver's viscosity. */
const tenMetres = quantity('97.9055 kPa', 'pressure');
const waterTemperature = quantity('19.25 °C', 'temperature');
const row = { spacing: quantity('0.5 m', 'length'), emitterFlow: quantity('4 L/h', 'flow'), emitterPressure: tenMetres, emitterExponent: 0.5, inletPressure: tenMetres, waterTemperature };
const plainRow = { spacing: 0.5, diameter: 13.6, roughness: 0.0015, inletHead: 10, emitterCoefficient: 0.004 / Math.sqrt(10) };

/** A level lateral as wide as keeps its end about as full with any number of emitters. */
const wide = (outlets: number) => ({ ...row, outlets, diameter: quantity(`${13.6 * (outlets / 100) ** 0.6} mm`, 'length') });

/** Level laterals of emitters that give 4 L/h each at 10 m of water, on the bench of strawberry troughs. */
export async function lateralComparisons(): Promise<Comparison[]> {
  const network = await networkSolver({ ...plainRow, outlets: 100 });
  const hundred = wide(100);
  const ours = { name: 'lateral, checked', run: () => lateral(hundred) };
  const agree = () => {
    const flows = lateral(hundred).flows.in('m³/h');
    network.whole().forEach((flow, i) => agreeWithin(0.001, flows[i]!, flow));
  };
  const [small, large] = [wide(1_000), wide(100_000)];
  const limited = { ...row, diameter: hundred.diameter, mostFlowVariation: 0.1 };
  const longest = await longestByNetwork(plainRow, 0.1);
  return [
    { name: 'lateral of 100 emitters', ours, theirs: { name: 'epanet-js, network read and solved', run: network.whole }, limit: { atLeast: 50 }, agree },
    { name: 'the same, network read before', ours, theirs: { name: 'epanet-js, solved only', run: network.solve }, agree },
    {
      name: 'longest lateral', ours: { name: 'longestLateral, checked', run: () => longestLateral(limited) }, theirs: { name: 'epanet-js, lengths by halving', run: longest },
      median: 5000, agree: () => agreeWithin(0.01, longestLateral(limited).outlets, longest()),
    },
    {
      // 100 to the power of 1.1 is 158.
      name: 'lateral of 100,000 emitters', ours: { name: 'lateral, checked', run: () => lateral(large) }, theirs: { name: 'itself with 1,000', run: () => lateral(small) },
      limit: { atMost: 158 }, agree: () => undefined,
    },
  ];
}
