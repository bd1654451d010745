/** What must and must not compile as the analysis of a water. Checked by `npm run types`. */
import { waterAnalysis } from '../../src/salts/index.js';
import { quantity } from '../../src/units/index.js';

type Input = Parameters<typeof waterAnalysis>[0];

const stated: Input = { water: { Ca: '80 mg/L', Mg: '2 mmol/L', Na: '4 meq/L', NO3: quantity('11 mg/L', 'massConcentration') }, waterAlkalinity: '9 °dH', hardness: '14 °dH' };
const fedBack: Input = { water: waterAnalysis(stated).nutrients };
const byAmount: Input = { hardness: '2.5 mmol/L' };

// @ts-expect-error hardness is no concentration of calcium
const hardnessOfCalcium: Input = { water: { Ca: '14 °dH' } };
// @ts-expect-error a bare number has no unit
const bare: Input = { water: { Ca: 80 } };
// @ts-expect-error no item of an analysis
const unknownItem: Input = { water: { Nitrate: '11 mg/L' } };
// @ts-expect-error the mass of calcium is not the hardness
const massForHardness: Input = { hardness: '80 mg/L' };

export { bare, byAmount, fedBack, hardnessOfCalcium, massForHardness, stated, unknownItem };
