import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allocateToTanks, conflictsBetween, salts, stockConflicts, stockTanks, type SaltKey, type StockPortion, type StockTrait } from '../../src/salts/index.js';
import { saturationIndices, speciate, type ComponentTotals } from '../../src/solution/index.js';

describe('saturation', () => {
  const amount = fc.double({ min: 1e-5, max: 2e-3, noNaN: true });
  const totals = fc.record({ 'Ca2+': amount, 'Mg2+': amount, 'K+': amount, 'NH4+': amount, 'NO3-': amount, 'SO4 2-': amount, 'H2PO4-': amount });
  const celsius = fc.double({ min: 0, max: 45, noNaN: true });
  const times = (amounts: ComponentTotals, factor: number): ComponentTotals => Object.fromEntries(Object.entries(amounts).map(([ion, one]) => [ion, one * factor]));
  const indices = (amounts: ComponentTotals, t: number, pH = 6.5) => saturationIndices(speciate(amounts, { temperature: t + 273.15, pH }), t + 273.15);

  test('of a solid of two ions rises by log10 4 at most when everything is doubled, and by not much less', () => {
    fc.assert(fc.property(totals, celsius, (amounts, t) => {
      const [once, twice] = [indices(amounts, t), indices(times(amounts, 2), t)];
      for (const solid of ['gypsum', 'anhydrite', 'brushite', 'monetite'] as const) {
        const rise = twice[solid]! - once[solid]!;
        expect(rise).toBeLessThanOrEqual(Math.log10(4) + 1e-9);
        expect(rise).toBeGreaterThan(0.3);
      }
    }));
  });

  test('with gypsum falls when a solution is thinned, at any strength', () => {
    fc.assert(fc.property(totals, celsius, fc.double({ min: 1, max: 500, noNaN: true }), fc.double({ min: 1.05, max: 3, noNaN: true }), (amounts, t, strength, thinner) => {
      expect(indices(times(amounts, strength / thinner), t).gypsum!).toBeLessThan(indices(times(amounts, strength), t).gypsum!);
    }));
  });

  test('of phosphates rises with pH, up to 7.5', () => {
    fc.assert(fc.property(totals, celsius, fc.double({ min: 4.5, max: 7.2, noNaN: true }), (amounts, t, pH) => {
      for (const solid of ['brushite', 'hydroxyapatite', 'struvite'] as const) expect(indices(amounts, t, pH + 0.3)[solid]!).toBeGreaterThan(indices(amounts, t, pH)[solid]!);
    }));
  });
});

const traits: readonly StockTrait[] = [...new Set(stockConflicts.flatMap((conflict) => conflict.traits)), 'boron'];
const portion = fc.record({ traits: fc.subarray([...traits], { maxLength: 2 }), share: fc.double({ min: 0, max: 1.5, noNaN: true }) });
const portions = fc.array(portion, { minLength: 1, maxLength: 12 }).map((list) => list.map((one, i): StockPortion => ({ name: `product ${i}`, traits: new Set(one.traits), share: one.share })));
const clashes = (one: StockPortion, other: StockPortion) => conflictsBetween(one.traits, other.traits).length > 0;
const loadsOf = (given: readonly StockPortion[], tanks: ReturnType<typeof allocateToTanks>) =>
  tanks.map((placements) => placements.reduce((sum, { name, fraction }) => sum + fraction * given.find((one) => one.name === name)!.share, 0));

describe('an allocation', () => {
  test('puts all of everything somewhere, and nothing beside what it must not meet', () => {
    fc.assert(fc.property(portions, fc.integer({ min: 1, max: 4 }), (given, available) => {
      const tanks = allocateToTanks(given, available);
      for (const { name } of given) {
        const fractions = tanks.flatMap((placements) => placements.filter((one) => one.name === name)).map(({ fraction }) => fraction);
        for (const fraction of fractions) expect(fraction).toBeGreaterThanOrEqual(0);
        expect(Math.abs(fractions.reduce((sum, one) => sum + one, 0) - 1)).toBeLessThan(1e-12);
      }
      for (const placements of tanks) {
        const inside = placements.map(({ name }) => given.find((one) => one.name === name)!);
        inside.forEach((one, i) => inside.slice(i + 1).forEach((other) => expect(clashes(one, other)).toBe(false)));
      }
    }));
  });

  test('is the same for any order', () => {
    fc.assert(fc.property(portions.chain((given) => fc.tuple(fc.constant(given), fc.shuffledSubarray(given, { minLength: given.length }))), fc.integer({ min: 1, max: 4 }), ([given, shuffled], available) => {
      expect(allocateToTanks(shuffled, available)).toEqual(allocateToTanks(given, available));
    }));
  });

  test('takes the fewest tanks that conflicts allow where everything dissolves', () => {
    const fits = portions.map((list) => list.slice(0, 7).map((one) => ({ ...one, share: 0.01 })));
    fc.assert(fc.property(fits, (given) => {
      const colourable = (count: number, colours: readonly number[] = []): boolean => colours.length === given.length
        || Array.from({ length: count }, (_, colour) => colour).some((colour) => !colours.some((other, i) => other === colour && clashes(given[i]!, given[colours.length]!)) && colourable(count, [...colours, colour]));
      const fewest = [1, 2, 3, 4, 5, 6, 7].find((count) => colourable(count))!;
      expect(allocateToTanks(given, 1).length).toBe(fewest);
    }));
  });

  test('is never fuller with more tanks at hand', () => {
    fc.assert(fc.property(portions, fc.integer({ min: 1, max: 3 }), (given, available) => {
      const fullest = (count: number) => Math.max(...loadsOf(given, allocateToTanks(given, count)));
      expect(fullest(available + 1)).toBeLessThanOrEqual(fullest(available) + 1e-9);
    }));
  });

  test('of fifty products is found at once', () => {
    const many = fc.array(fc.subarray([...traits]), { minLength: 50, maxLength: 50 }).map((list) => list.map((some, i): StockPortion => ({ name: `product ${i}`, traits: new Set(some), share: 0.1 })));
    fc.assert(fc.property(many, fc.integer({ min: 8, max: 50 }), (all, some) => {
      const given = all.slice(0, some);
      const start = performance.now();
      allocateToTanks(given, 4);
      expect(performance.now() - start).toBeLessThan(500);
    }), { numRuns: 20, endOnFailure: true });
  });
});

describe('stock tanks', () => {
  const keys = Object.keys(salts) as SaltKey[];
  const recipe = fc.uniqueArray(fc.constantFrom(...keys), { minLength: 1, maxLength: 10 }).chain((chosen) =>
    fc.tuple(...chosen.map((salt) => fc.integer({ min: 1, max: 300 }).map((grams) => ({ salt, purity: 0.9, mass: `${grams} g` as const })))));
  const setting = { volume: '1000 L', dilution: '1:100', stockVolume: '20 L', tankTemperature: '10 °C', tanksAvailable: 3 } as const;

  test('hold every gram of the recipe, and no calcium beside sulfate or phosphate', () => {
    fc.assert(fc.property(recipe, (given) => {
      const { tanks, notes } = stockTanks({ ...setting, portions: given });
      for (const { salt, mass } of given) {
        const weighed = tanks.flatMap(({ portions: inside }) => inside.filter(({ name }) => name === salt)).reduce((sum, one) => sum + one.mass.in('g'), 0);
        expect(Math.abs(weighed / (Number(mass.split(' ')[0]) * 2) - 1)).toBeLessThan(1e-12);
      }
      for (const { portions: inside } of tanks) {
        const ions = new Set(inside.flatMap(({ name }) => Object.keys(salts[name as SaltKey].ions)));
        if (ions.has('Ca2+')) for (const ion of ['SO4 2-', 'H2PO4-', 'HPO4 2-']) expect(ions.has(ion)).toBe(false);
      }
      expect(notes.filter(({ code }) => code.includes('-with-'))).toEqual([]);
    }));
  });

  test('are the same for any order of the recipe', () => {
    fc.assert(fc.property(recipe.chain((given) => fc.tuple(fc.constant(given), fc.shuffledSubarray(given, { minLength: given.length }))), ([given, shuffled]) => {
      const told = (portions: typeof given) => JSON.stringify(stockTanks({ ...setting, portions }).tanks);
      expect(told(shuffled)).toBe(told(given));
    }), { numRuns: 50 });
  });
});
