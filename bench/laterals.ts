import type * as laterals from '../src/laterals/index.js';
import type * as units from '../src/units/index.js';
import { agreeWithin, built, type Comparison } from './comparison.js';
import { networkSolver } from './pipe-network.js';

const { lateral } = await built<typeof laterals>('laterals');
const { quantity } = await built<typeof units>('units');

/** A level lateral of 100 emitters, 4 L/h each at 10 m of water at 19.25 °C, which has the solver's viscosity, on the bench of strawberry troughs. */
export async function lateralComparisons(): Promise<Comparison[]> {
  const outlets = 100;
  const network = await networkSolver({ outlets, spacing: 0.5, diameter: 13.6, roughness: 0.0015, inletHead: 10, emitterCoefficient: 0.004 / Math.sqrt(10) });
  const tenMetres = quantity('97.9055 kPa', 'pressure');
  const input = {
    outlets,
    spacing: quantity('0.5 m', 'length'),
    diameter: quantity('13.6 mm', 'length'),
    emitterFlow: quantity('4 L/h', 'flow'),
    emitterPressure: tenMetres,
    emitterExponent: 0.5,
    inletPressure: tenMetres,
    waterTemperature: quantity('19.25 °C', 'temperature'),
  };
  const ours = () => lateral(input);
  const agree = () => network.whole().forEach((flow, i) => agreeWithin(0.001, ours().flows.in('m³/h')[i]!, flow));
  return [
    {
      name: 'lateral of 100 emitters',
      ours: { name: 'lateral, checked', run: ours },
      theirs: { name: 'epanet-js, network read and solved', run: network.whole },
      limit: { atLeast: 20 },
      agree,
    },
    {
      name: 'the same, network read before',
      ours: { name: 'lateral, checked', run: ours },
      theirs: { name: 'epanet-js, solved only', run: network.solve },
      agree,
    },
  ];
}
