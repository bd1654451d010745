import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { massConcentration, temperature } from '../units/dimensions.js';
import { waterDensityIapws2008 } from '../water/density.js';
import { solubilityOfSalt, strengthOfSaturatedSolution } from './formulas/solubility.js';
import { saltField } from './product.js';
import { salts } from './salt-table.js';
import { soldAsLiquids, roughSolubilities } from './solubility-table.js';

/** What has to be said of a solubility that no handbook backs. */
export const roughSolubilityText = 'of common practice or from memory, not from a handbook: what the data sheet of the product says goes before it';

/**
 * How much of a pure salt cold or warm water dissolves.
 *
 * In: the `salt` of the table, hydrates with their water; the `temperature` (0 to 40 °C).
 * Out: `solubility`, the mass that a litre of water dissolves; `saturatedStrength`, the mass that a litre of the finished solution holds at least, from
 * the volume that dissolved salts take at most (0.76 L/kg, from memory). Both are for one salt alone: together, salts with an ion in common dissolve less.
 * An InputError for liquids, which mix with water, and for salts whose solubility is in no table (chelates).
 *
 * Handbook figures between 0, 10, 20, 25, 30 and 40 °C; urea, the double salt of calcium and ammonium nitrate, citric acid and ammonium molybdate
 * from a trade table or from memory, with a note.
 *
 * Source: CRC Handbook of Chemistry and Physics, 98th edition.
 * @example
 * const cold = solubility({ salt: 'potassium-sulfate', temperature: '10 °C' });
 * cold.solubility.in('g/L') // => 92.4
 * cold.saturatedStrength.in('g/L') // => 86.3
 */
export const solubility = /* @__PURE__ */ calculation({
  id: 'solubility',
  title: 'How much of a salt dissolves',
  inputs: () => ({ salt: saltField(), temperature: field.quantity(temperature, { limits: ['0 °C', '40 °C'] }) }),
  outputs: () => ({ solubility: output.quantity(massConcentration, 'g/L'), saturatedStrength: output.quantity(massConcentration, 'g/L') }),
  equation: 'h = r w/(1 − r w), w the mass fraction of the anhydrous salt at saturation, r the molar mass of the hydrate over its own',
  sources: ['crc-handbook', 'common-practice'],
  example: { salt: 'potassium-nitrate', temperature: '12 °C' },
  solve: ({ salt, temperature: at }, { note, refuse }) => {
    const perMass = solubilityOfSalt(salt, at);
    if (perMass === undefined) {
      return refuse('salt', 'a salt of known solubility', `'${salt}'`, soldAsLiquids.includes(salt) ? 'it mixes with water as it is' : 'see the data sheet of the product');
    }
    if (salt in roughSolubilities) note('caution', 'rough-solubility', 'solubility', `The solubility of ${salts[salt].name} is ${roughSolubilityText}.`);
    return { solubility: perMass * waterDensityIapws2008(at), saturatedStrength: strengthOfSaturatedSolution(perMass, at) };
  },
});
