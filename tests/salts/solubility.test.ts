import { describe, expect, test } from 'vitest';
import { phosphateSolubilityVogel1963, roughSolubilities, saturatedMassPercents, salts, solubility, solubilityOfSalt, solubilityTemperatures, strengthOfSaturatedSolution, type SaltKey } from '../../src/salts/index.js';

const kelvin = (celsius: number) => celsius + 273.15;

test('every row of the handbook is that of a salt of the table', () => {
  const anhydrous = Object.values(salts).map(({ formula }) => formula.replace(/·\d*H2O$/, ''));
  for (const [formula, percents] of Object.entries(saturatedMassPercents)) {
    expect(anhydrous).toContain(formula);
    expect(percents).toHaveLength(solubilityTemperatures.length);
  }
});

test('liquids, silicate and chelates have none; everything else has', () => {
  const without = (Object.keys(salts) as SaltKey[]).filter((salt) => solubilityOfSalt(salt, kelvin(20)) === undefined);
  expect(without.sort()).toEqual(['iron-dtpa', 'iron-eddha', 'iron-edta-anhydrous', 'iron-edta-trihydrate', 'iron-hbed', 'manganese-chloride-tetrahydrate', 'nitric-acid', 'phosphoric-acid', 'potassium-metasilicate', 'sulfuric-acid']);
  expect(solubility.try({ salt: 'nitric-acid', temperature: '10 °C' })).toMatchObject({ ok: false, error: { problems: [{ path: 'salt', hint: 'it mixes with water as it is' }] } });
});

// Fits of Vogel et al. 1963 and the handbook are two independent sources for the phosphates.
test.each(['monoammonium-phosphate', 'diammonium-phosphate', 'monopotassium-phosphate'] as const)('two sources agree on %s from 10 to 40 °C', (salt) => {
  for (const celsius of [10, 20, 25, 30, 40]) {
    expect(Math.abs(phosphateSolubilityVogel1963(salt, kelvin(celsius)) / solubilityOfSalt(salt, kelvin(celsius))! - 1)).toBeLessThan(0.04);
  }
});

// Mass per cent and density, kg/m3, of strong solutions at 20 °C: handbook figures, from memory.
describe('the strength of a saturated solution is on the safe side of handbook densities', () => {
  test.each([['NaCl', 26, 1197], ['KNO3', 24, 1163], ['K2SO4', 10, 1082], ['MgSO4', 26, 1296], ['CaCl2', 40, 1396], ['(NH4)2SO4', 40, 1228], ['urea', 46, 1127]])('%s %i %%', (_, percent, density) => {
    const stated = (percent / 100) * density;
    const strength = strengthOfSaturatedSolution(percent / (100 - percent), kelvin(20));
    expect(strength).toBeLessThan(stated);
    expect(strength).toBeGreaterThan(0.75 * stated);
  });
});

test('figures without a handbook say so', () => {
  for (const salt of Object.keys(roughSolubilities) as SaltKey[]) {
    expect(solubility({ salt, temperature: '15 °C' }).notes.map(({ code }) => code)).toEqual(['rough-solubility']);
  }
  expect(solubility(solubility.example).notes).toEqual([]);
});
