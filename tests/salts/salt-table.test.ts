import { describe, expect, test } from 'vitest';
import { compositionOfFormula, contentOfProduct, parseChemicalFormula, salts, type SaltKey } from '../../src/salts/index.js';
import { ions, type Ion } from '../../src/solution/index.js';

const keys = Object.keys(salts) as SaltKey[];

describe.each(keys)('%s', (key) => {
  const salt = salts[key];
  const given = Object.entries(salt.ions) as [Ion, number][];

  test('comes apart into its ions and water, and nothing else', () => {
    const left: Record<string, number> = { H: 0, O: 0, ...compositionOfFormula(salt.formula) };
    for (const [ion, count] of given) {
      for (const [element, atoms] of Object.entries(ions[ion].composition)) left[element] = (left[element] ?? 0) - atoms * count;
    }
    const { H, O, ...others } = left;
    expect(H).toBe(2 * O!);
    expect(Object.entries(others).filter(([, atoms]) => atoms !== 0)).toEqual([]);
  });

  test('gives charges that balance', () => {
    expect(given.reduce((sum, [ion, count]) => sum + ions[ion].charge * count, 0)).toBe(0);
    const { ions: settled } = contentOfProduct({ salt: key, purity: 1 });
    const sum = Object.entries(settled).reduce((total, [ion, amount]) => total + ions[ion as Ion].charge * amount, 0);
    expect(Math.abs(sum)).toBeLessThan(1e-12);
  });

  test('has a name in its key, and its water of crystallisation in its name', () => {
    expect(key).toMatch(/^[a-z]+(-[a-z]+)*$/);
    const reading = parseChemicalFormula(salt.formula);
    const named = { monohydrate: 1, dihydrate: 2, trihydrate: 3, tetrahydrate: 4, pentahydrate: 5, hexahydrate: 6, heptahydrate: 7, decahydrate: 10 };
    const [, water = 0] = Object.entries(named).find(([word]) => key.endsWith(word)) ?? [];
    expect(reading).toMatchObject({ ok: true, water });
  });
});

test('acids and lyes leave their strength to be stated', () => {
  for (const key of ['nitric-acid', 'phosphoric-acid', 'sulfuric-acid', 'potassium-hydroxide'] as const) expect(salts[key]).not.toHaveProperty('usualPurity');
});

test('gives all its nutrient elements, chelate nitrogen apart', () => {
  for (const key of keys) {
    const { forms } = contentOfProduct({ salt: key, purity: 1 });
    for (const element of Object.keys(compositionOfFormula(salts[key].formula))) {
      if (['H', 'O', 'C'].includes(element) || (element === 'N' && key.startsWith('iron-'))) continue;
      expect(forms, key).toHaveProperty(element);
    }
  }
});
