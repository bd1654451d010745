import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  dissolve, dissolvePortions, massesForTargets, massFractionsOfFormula, molarMass, molarMassOfFormula, parseChemicalFormula, salts, stockTank, weighOut,
  type Feed, type FormMasses, type Portion, type Product, type SaltKey,
} from '../../src/salts/index.js';
import { atomicWeights } from '../../src/solution/index.js';

const keys = Object.keys(salts) as SaltKey[];
const portion = fc.record({ salt: fc.constantFrom(...keys), purity: fc.double({ min: 0.3, max: 1, noNaN: true }), mass: fc.double({ min: 0.0001, max: 5, noNaN: true }) });
const portions = fc.array(portion, { maxLength: 8 });
const volume = fc.double({ min: 0.01, max: 10, noNaN: true });
/** Concentrations that a water or a feed may have, kg/m3. */
const share = fc.double({ min: 1e-6, max: 0.3, noNaN: true });
const water = fc.record({ 'N-NO3': share, 'Ca': share, 'Mg': share, 'Na': share, 'Cl': share, 'S': share, 'HCO3': share }, { requiredKeys: [] });

const close = (a: number, b: number, scale = Math.max(Math.abs(a), Math.abs(b))) => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-12 * scale + 1e-300);
const largest = ({ massConcentrations }: Feed) => Math.max(1, ...Object.values(massConcentrations));

describe('dissolving', () => {
  test('keeps the mass of every element', () => {
    fc.assert(fc.property(portions, volume, (given, size) => {
      const { massConcentrations } = dissolvePortions(given, size);
      for (const element of ['N', 'P', 'K', 'Ca', 'Mg', 'S', 'Cl', 'Na', 'Fe', 'Mn', 'Zn', 'Cu', 'B', 'Mo', 'Si'] as const) {
        const mass = given
          .filter(({ salt }) => !(element === 'N' && salt.startsWith('iron-')))
          .reduce((sum, { salt, purity, mass: weighed }) => sum + weighed * purity * (massFractionsOfFormula(salts[salt].formula)[element] ?? 0), 0);
        close((massConcentrations[element] ?? 0) * size, mass);
      }
    }));
  });

  test('splits nitrogen into its forms without loss', () => {
    fc.assert(fc.property(portions, volume, water, (given, size, before) => {
      const { N = 0, 'N-NO3': nitrate = 0, 'N-NH4': ammonium = 0, 'N-urea': urea = 0 } = dissolvePortions(given, size, before).massConcentrations;
      close(N, nitrate + ammonium + urea);
    }));
  });

  test('adds up: two lots together are the first lot in plain water and the second in what came of it', () => {
    fc.assert(fc.property(portions, portions, volume, water, (first, second, size, before) => {
      const together = dissolvePortions([...first, ...second], size, before);
      const one = dissolvePortions(first, size, before);
      const other = dissolvePortions(second, size);
      for (const form of Object.keys(together.massConcentrations) as (keyof FormMasses)[]) {
        if (form === 'HCO3') continue;
        close(together.massConcentrations[form]!, (one.massConcentrations[form] ?? 0) + (other.massConcentrations[form] ?? 0));
      }
      close(together.alkalinity, one.alkalinity + other.alkalinity, 1000 * largest(together));
    }));
  });

  test('goes up with the mass and down with the volume', () => {
    fc.assert(fc.property(portions, volume, fc.double({ min: 1.1, max: 50, noNaN: true }), (given, size, factor) => {
      const weak = dissolvePortions(given, size * factor);
      const strong = dissolvePortions(given, size);
      for (const [ion, amount] of Object.entries(strong.amountConcentrations)) close(amount, factor * (weak.amountConcentrations as Record<string, number>)[ion]!, factor * largest(strong) * 1000);
    }));
  });

  test('of salts leaves the charge of the water as it was', () => {
    fc.assert(fc.property(portions, volume, water, (given, size, before) => {
      const feed = dissolvePortions(given, size, before);
      close(feed.chargeBalance.imbalance, dissolvePortions([], size, before).chargeBalance.imbalance, 1e3 * largest(feed));
    }));
  });

  test('never leaves a negative amount, and acid or alkalinity but not both', () => {
    fc.assert(fc.property(portions, volume, water, (given, size, before) => {
      const { amountConcentrations, massConcentrations } = dissolvePortions(given, size, before);
      for (const value of [...Object.values(amountConcentrations), ...Object.values(massConcentrations)]) expect(value).toBeGreaterThanOrEqual(0);
      expect((amountConcentrations['H+'] ?? 0) * (amountConcentrations['HCO3-'] ?? 0)).toBe(0);
    }));
  });
});

describe('weighing out', () => {
  const macro = ['calcium-nitrate-tetrahydrate', 'calcium-ammonium-nitrate-decahydrate', 'potassium-nitrate', 'monopotassium-phosphate', 'potassium-sulfate',
    'magnesium-sulfate-heptahydrate', 'magnesium-nitrate-hexahydrate', 'ammonium-nitrate', 'monoammonium-phosphate', 'boric-acid'] as const;
  const atHand = fc.uniqueArray(fc.constantFrom(...macro), { minLength: 1 });
  const targets = fc.record({ 'N-NO3': share, 'N-NH4': share, 'P': share, 'K': share, 'Ca': share, 'Mg': share, 'S': share, 'B': share }, { requiredKeys: ['N-NO3', 'K'] });
  const pure = (names: readonly SaltKey[]): Record<string, Product> => Object.fromEntries(names.map((salt) => [salt, { salt, purity: 0.98 }]));

  test('reaches a target that can be reached', () => {
    fc.assert(fc.property(atHand, fc.array(fc.double({ min: 0.001, max: 1, noNaN: true }), { minLength: 10, maxLength: 10 }), volume, water, (names, weighed, size, before) => {
      const given: Portion[] = names.map((salt, i) => ({ salt, purity: 0.98, mass: weighed[i]! * size }));
      const { HCO3: _alkalinity, N: _nitrogen, ...wanted } = dissolvePortions(given, size, before).massConcentrations;
      const sheet = massesForTargets({ targets: wanted, products: pure(names), volume: size, water: before });
      const { massConcentrations } = dissolvePortions(names.map((salt) => ({ salt, purity: 0.98, mass: sheet.masses[salt]! })), size, before);
      for (const [form, target] of Object.entries(wanted)) expect(Math.abs(massConcentrations[form as keyof FormMasses]! - target)).toBeLessThanOrEqual(1e-9 * target);
    }));
  });

  test('gives the same sheet for any order of products and targets', () => {
    fc.assert(fc.property(atHand.chain((names) => fc.tuple(fc.constant(names), fc.shuffledSubarray(names, { minLength: names.length }))), targets, volume, ([names, shuffled], wanted, size) => {
      const turned = Object.fromEntries(Object.entries(wanted).reverse());
      const sheet = massesForTargets({ targets: wanted, products: pure(names), volume: size, scales: [{ division: 1e-5 }] });
      expect(massesForTargets({ targets: turned, products: pure(shuffled), volume: size, scales: [{ division: 1e-5 }] })).toEqual(sheet);
    }));
  });

  test('never weighs less than nothing, and scales with the volume', () => {
    fc.assert(fc.property(atHand, targets, volume, (names, wanted, size) => {
      const one = massesForTargets({ targets: wanted, products: pure(names), volume: 1 });
      const other = massesForTargets({ targets: wanted, products: pure(names), volume: size });
      for (const name of names) {
        expect(one.masses[name]).toBeGreaterThanOrEqual(0);
        close(other.masses[name]!, one.masses[name]! * size);
      }
    }));
  });

  test('another product at hand never makes the fit worse', () => {
    fc.assert(fc.property(atHand, fc.constantFrom(...macro), targets, (names, more, wanted) => {
      const miss = (list: readonly SaltKey[]) =>
        Object.values(massesForTargets({ targets: wanted, products: pure(list), volume: 1 }).misfits).reduce((sum, one) => sum + (one.relativeDifference ?? 0) ** 2, 0);
      expect(miss([...names, more])).toBeLessThanOrEqual(miss(names) + 1e-9);
    }));
  });
});

describe('weighing out within limits', () => {
  const keysAtHand = ['calcium-nitrate-tetrahydrate', 'potassium-nitrate', 'potassium-sulfate', 'monopotassium-phosphate', 'ammonium-nitrate', 'ammonium-sulfate', 'magnesium-sulfate-heptahydrate', 'nitric-acid', 'phosphoric-acid', 'potassium-carbonate', 'urea'] as const;
  const task = fc.record({
    products: fc.uniqueArray(fc.constantFrom(...keysAtHand), { minLength: 1 }).chain((names) => fc.tuple(...names.map((salt) =>
      fc.record({ salt: fc.constant(salt), purity: fc.double({ min: 0.5, max: 1, noNaN: true }), mostMass: fc.option(fc.double({ min: 0, max: 1, noNaN: true }), { nil: undefined }), pricePerKilogram: fc.double({ min: 0.1, max: 9, noNaN: true }) })))),
    targets: fc.record({ 'N-NO3': share, 'N-NH4': share, 'P': share, 'K': share, 'Ca': share, 'S': share }, { requiredKeys: ['K'] }),
    bounds: fc.record({ 'N': share, 'S': share, 'K': share }, { requiredKeys: [] }).map((most) => Object.fromEntries(Object.entries(most).map(([form, bound]) => [form, { most: bound }]))),
    ammoniumShare: fc.double({ min: 0, max: 1, noNaN: true }),
    water: fc.record({ HCO3: share }),
    volume,
  });
  const named = (list: readonly { readonly salt: SaltKey }[]) => Object.fromEntries(list.map((product) => [product.salt, product])) as Record<string, Product & { mostMass?: number; pricePerKilogram: number }>;

  test('keeps every limit that can be kept, and never uses alkalinity up', () => {
    fc.assert(fc.property(task, ({ products, ...rest }) => {
      const { exactMasses, feed, missedLimits } = massesForTargets({ ...rest, products: named(products) });
      expect(missedLimits).toEqual([]);
      for (const { salt, mostMass = Infinity } of products) expect(exactMasses[salt]).toBeLessThanOrEqual(mostMass * (1 + 1e-9) + 1e-12);
      const { 'N-NO3': nitrate = 0, 'N-NH4': ammonium = 0, 'N-urea': urea = 0, ...forms } = feed.massConcentrations;
      for (const [form, { most }] of Object.entries(rest.bounds)) expect(forms[form as 'N']! ?? 0).toBeLessThanOrEqual(most * (1 + 1e-9) + 1e-12);
      expect(ammonium).toBeLessThanOrEqual(rest.ammoniumShare * (nitrate + ammonium + urea) + 1e-9);
      const before = rest.water.HCO3 / 0.061016;
      expect(feed.alkalinity).toBeGreaterThan(Math.min(0.5, before - 0.01) - 1e-9);
      expect(feed.alkalinity).toBeLessThan(before + 1 + 1e-9);
    }), { numRuns: 300 });
  });

  test('is the same to the last bit in any order', () => {
    const turned = <T extends object>(record: T): T => Object.fromEntries(Object.entries(record).reverse()) as T;
    fc.assert(fc.property(task, ({ products, ...rest }) => {
      const one = massesForTargets({ ...rest, products: named(products), costTolerance: 0.1 });
      const other = massesForTargets({ ...rest, products: named([...products].reverse()), targets: turned(rest.targets), bounds: turned(rest.bounds), costTolerance: 0.1 });
      expect(other.exactMasses).toEqual(one.exactMasses);
      expect(other.conflicts).toEqual(one.conflicts);
    }), { numRuns: 200 });
  });

  test('a wider tolerance never costs more', () => {
    fc.assert(fc.property(task, fc.double({ min: 0, max: 0.3, noNaN: true }), ({ products, ...rest }, tolerance) => {
      const cost = (costTolerance: number) => massesForTargets({ ...rest, products: named(products), costTolerance }).cost!;
      expect(cost(tolerance + 0.1)).toBeLessThanOrEqual(cost(tolerance) * (1 + 1e-9) + 1e-12);
    }), { numRuns: 200 });
  });
});

describe('the weigh sheet', () => {
  const macro = ['calcium-nitrate-tetrahydrate', 'calcium-ammonium-nitrate-decahydrate', 'potassium-nitrate', 'monopotassium-phosphate', 'potassium-sulfate', 'magnesium-sulfate-heptahydrate', 'boric-acid'] as const;
  const atHand = fc.uniqueArray(fc.constantFrom(...macro), { minLength: 1 }).map((keys) => keys.map((salt) => ({ salt })));
  const concentration = fc.double({ min: 0.01, max: 300, noNaN: true }).map((x) => `${x} mg/L` as const);
  const targets = fc.record({ 'N-NO3': concentration, 'P': concentration, 'K': concentration, 'Ca': concentration, 'Mg': concentration, 'B': concentration }, { requiredKeys: ['K'] });
  const barrel = fc.integer({ min: 1, max: 2000 }).map((size) => `${size} L` as const);

  test('makes again what has been dissolved, also when it went through JSON', () => {
    const masses = fc.array(fc.integer({ min: 1, max: 500 }), { minLength: macro.length, maxLength: macro.length });
    fc.assert(fc.property(atHand, masses, fc.integer({ min: 1, max: 50 }), (products, grams, size) => {
      const volume = `${100 * size} L` as const;
      const { nutrients } = dissolve({ volume, portions: products.map((product, i) => ({ ...product, mass: `${grams[i]! * size} g` as const })), water: { Na: '20 mg/L' } });
      const sheet = weighOut.try(JSON.parse(JSON.stringify({ volume, targets: nutrients, salts: products, water: { Na: '20 mg/L' } })));
      if (!sheet.ok) throw sheet.error;
      for (const { relativeDifference } of Object.values(sheet.value.misfits)) expect(Math.abs(relativeDifference?.in('fraction') ?? 0)).toBeLessThan(1e-9);
      expect(sheet.value.unavailable).toEqual([]);
    }));
  });

  test('is the same for any order of products and targets', () => {
    fc.assert(fc.property(atHand.chain((all) => fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length }))), targets, barrel, ([products, shuffled], wanted, volume) => {
      const sheet = (salts: typeof products, given: typeof wanted) => {
        const { portions: weighed, ...rest } = weighOut({ volume, targets: given, salts, scales: [{ division: '0.01 g' }] });
        return { ...rest, weighed: Object.fromEntries(weighed.map(({ name, mass }) => [name, mass.toJSON()])) };
      };
      expect(JSON.parse(JSON.stringify(sheet(shuffled, Object.fromEntries(Object.entries(wanted).reverse()) as typeof wanted)))).toEqual(JSON.parse(JSON.stringify(sheet(products, wanted))));
    }));
  });

  test('reads whole divisions in the unit of the scale, to the last decimal', () => {
    const division = fc.constantFrom('0.1 g', '0.01 g', '2 g', '0.5 oz', '0.01 lb', '0.2 mg', '0.001 kg', '7 g' as const);
    fc.assert(fc.property(atHand, targets, barrel, division, (products, wanted, volume, step) => {
      for (const { mass } of weighOut({ volume, targets: wanted, salts: products, scales: [{ division: step }] }).portions) {
        const [value, unit] = mass.toJSON().split(' ') as [string, string];
        expect(unit).toBe(step.split(' ')[1]);
        expect(new Decimal(value).mod(step.split(' ')[0]!).toNumber(), `${value} in steps of ${step}`).toBe(0);
      }
    }));
  });
});

test('a stock diluted by its injector is the feed that was wanted', () => {
  const positive = (max: number) => fc.double({ min: 0.01, max, noNaN: true });
  fc.assert(fc.property(positive(300), fc.double({ min: 0.05, max: 0.6, noNaN: true }), fc.integer({ min: 1, max: 200 }), positive(500), (wanted, share, parts, litres) => {
    fc.pre((wanted * parts) / share < 1.9e6);
    const { mass } = stockTank({ massConcentration: `${wanted} mg/L`, massFraction: share, dilution: `1:${parts}`, stockVolume: `${litres} L` });
    const feed = dissolve({ volume: `${litres * parts} L`, portions: [{ label: { K: share }, mass }] });
    close(feed.nutrients.K!.in('mg/L'), wanted, 10 * wanted);
  }));
});

describe('chemical formulas', () => {
  const symbols = Object.keys(atomicWeights);
  const piece = fc.constantFrom(...symbols, '(', ')', '[', ']', '{', '}', '2', '3', '10', '₂', '·', '.', '*', ' ', '0.5', '-', 'x');
  const anyText = fc.oneof(fc.string(), fc.string({ unit: 'grapheme' }), fc.array(piece, { maxLength: 60 }).map((pieces) => pieces.join('')), fc.string({ minLength: 190, maxLength: 260 }));

  test('are read, or refused with a place and a reason, whatever the text', () => {
    fc.assert(fc.property(anyText, (text) => {
      const reading = parseChemicalFormula(text);
      if (reading.ok) {
        expect(Object.values(reading.composition).every((count) => count > 0 && count * 2 === Math.round(count * 2))).toBe(true);
      } else {
        expect(reading.position).toBeGreaterThanOrEqual(0);
        expect(reading.position).toBeLessThanOrEqual(text.length);
        expect(reading.message).not.toBe('');
      }
    }), { numRuns: 5000 });
  });

  test('and salts of any name end in a result or a problem with its place', () => {
    fc.assert(fc.property(anyText, (text) => {
      const given = [molarMass.try({ formula: text }), weighOut.try({ volume: '1 L', targets: { K: '1 mg/L' }, salts: [{ salt: text, purity: 1 }] }), weighOut.try({ volume: '1 L', targets: { K: '1 mg/L' }, salts: [{ name: text, label: { K: 0.1 } }] })];
      for (const attempt of given) expect(attempt.ok || attempt.error.name).toSatisfy((seen) => seen === true || seen === 'InputError');
    }), { numRuns: 1000 });
  });

  test('weigh the sum of their parts, in shares that make one', () => {
    const part = fc.array(fc.tuple(fc.constantFrom(...symbols), fc.integer({ min: 1, max: 20 })), { minLength: 1, maxLength: 5 }).map((atoms) => atoms.map(([symbol, count]) => `${symbol}${count}`).join(''));
    fc.assert(fc.property(part, part, fc.integer({ min: 1, max: 20 }), (first, second, times) => {
      close(molarMassOfFormula(`${first}·${times}${second}`), molarMassOfFormula(first) + times * molarMassOfFormula(second));
      close(molarMassOfFormula(`(${first})${times}${second}`), times * molarMassOfFormula(first) + molarMassOfFormula(second));
      close(Object.values(massFractionsOfFormula(first)).reduce((sum, one) => sum + one, 0), 1);
    }));
  });
});
