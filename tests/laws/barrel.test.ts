import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  amountsBetween, blendForConductivity, conductivityOfIons, conductivityOfPotassiumChloride, conductivityPotassiumChloridePratt2001,
  diluteToConductivity, meterCheck, strengthFromConductivity, strengthFromReading, waterForConductivityProportional, type PrimaryStandard,
} from '../../src/conductivity/index.js';
import { correctFeed, dissolve, topUp, topUpByRecipe } from '../../src/salts/index.js';
import { alkalinityOfIons, blend, blendAmounts, blendTemperature, nutrientMassesOfIons, type Ion, type IonAmounts } from '../../src/solution/index.js';

const logUniform = (low: number, high: number) => fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);
const close = (a: number, b: number, scale = Math.max(Math.abs(a), Math.abs(b))) => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-12 * scale);
const litres = logUniform(0.5, 2000);

/** A feed of salts, mmol/L, whose charges balance. */
const feed = fc.tuple(logUniform(0.1, 12), logUniform(0.1, 12), logUniform(0.05, 4), logUniform(0.05, 2), logUniform(0.01, 3)).map(([calciumNitrate, potassiumNitrate, magnesiumSulfate, potassiumPhosphate, sodiumChloride]) => ({
  'Ca2+': calciumNitrate, 'K+': potassiumNitrate + potassiumPhosphate, 'Mg2+': magnesiumSulfate, 'Na+': sodiumChloride,
  'NO3-': 2 * calciumNitrate + potassiumNitrate, 'SO4 2-': magnesiumSulfate, 'H2PO4-': potassiumPhosphate, 'Cl-': sodiumChloride,
}));
const tapWater = fc.tuple(logUniform(0.1, 2), logUniform(0.05, 1)).map(([hardness, salt]) => ({ 'Ca2+': hardness, 'HCO3-': 2 * hardness, 'Na+': salt, 'Cl-': salt }));
/** A feed made with a water: that water and salts in it. */
const made = fc.tuple(tapWater, feed).map(([water, salts]) => {
  const ions = [...new Set([...Object.keys(water), ...Object.keys(salts)])] as Ion[];
  return { water: water, recipe: Object.fromEntries(ions.map((ion) => [ion, ((water as IonAmounts)[ion] ?? 0) + ((salts as IonAmounts)[ion] ?? 0)])) };
});
const inMillimoles = (amounts: IonAmounts) => Object.fromEntries(Object.entries(amounts).map(([ion, amount]) => [ion, `${amount} mmol/L`] as const));
const scaled = (amounts: IonAmounts, factor: number): IonAmounts => Object.fromEntries(Object.entries(amounts).map(([ion, amount]) => [ion, amount * factor]));

describe('blending', () => {
  const parts = fc.array(fc.record({ volume: litres, amounts: fc.oneof(feed, tapWater) }), { minLength: 2, maxLength: 6 });

  test('keeps the amount of every ion, and the mass of every nutrient', () => {
    fc.assert(fc.property(parts, (given) => {
      const { volume, ions, nutrients, alkalinity } = blend({ parts: given.map((part) => ({ volume: `${part.volume} L` as const, ions: inMillimoles(part.amounts) })) });
      const total = (of: (amounts: IonAmounts) => number) => given.reduce((sum, part) => sum + part.volume * of(part.amounts), 0);
      close(volume.in('L'), total(() => 1));
      for (const [ion, amount] of Object.entries(ions)) close(amount.in('mmol/L') * volume.in('L'), total((amounts) => amounts[ion as Ion] ?? 0));
      for (const form of ['K', 'Ca', 'N-NO3', 'P', 'S'] as const) close((nutrients[form]?.si ?? 0) * volume.in('L'), total((amounts) => nutrientMassesOfIons(amounts)[form] ?? 0));
      close(alkalinity.in('meq/L') * volume.in('L'), total(alkalinityOfIons));
    }));
  });

  test('does not depend on the order, nor on what is poured together first', () => {
    fc.assert(fc.property(parts, (given) => {
      const [first, second, ...rest] = given as [typeof given[0], typeof given[0], ...typeof given];
      const pair = { volume: first.volume + second.volume, amounts: blendAmounts([first, second]) };
      const at = (some: readonly { volume: number; amounts: IonAmounts }[], ion: Ion) => blendAmounts(some)[ion] ?? 0;
      for (const ion of ['Ca2+', 'K+', 'NO3-', 'HCO3-'] as const) {
        close(at(given, ion), at([...given].reverse(), ion));
        close(at(given, ion), at([pair, ...rest], ion));
      }
    }));
  });

  test('lies between its parts, in temperature too', () => {
    fc.assert(fc.property(fc.array(fc.record({ volume: litres, temperature: fc.double({ min: 274, max: 320, noNaN: true }) }), { minLength: 1 }), (given) => {
      const blended = blendTemperature(given);
      expect(blended).toBeGreaterThanOrEqual(Math.min(...given.map(({ temperature }) => temperature)) * (1 - 1e-14));
      expect(blended).toBeLessThanOrEqual(Math.max(...given.map(({ temperature }) => temperature)) * (1 + 1e-14));
    }));
  });
});

describe('strength from a reading', () => {
  const temperature = fc.double({ min: 275, max: 308, noNaN: true });
  const strength = fc.double({ min: 0.02, max: 3, noNaN: true });

  test('gives back the strength that the reading was worked out from', () => {
    fc.assert(fc.property(made, temperature, strength, ({ water, recipe }, t, s) => {
      const found = strengthFromConductivity(water, recipe, conductivityOfIons(amountsBetween(water, recipe, s), t), t, 0.02)!;
      expect(Math.abs(found.strength / s - 1)).toBeLessThan(1e-9);
      expect(found.low).toBeLessThan(s);
      expect(found.high).toBeGreaterThan(s);
    }));
  });

  test('rises with the reading, and its interval with the doubt in the meter', () => {
    fc.assert(fc.property(made, strength, fc.double({ min: 1.001, max: 1.5, noNaN: true }), ({ water, recipe }, s, more) => {
      const reading = conductivityOfIons(amountsBetween(water, recipe, s), 298.15);
      const at = (value: number, accuracy: number) => strengthFromConductivity(water, recipe, value, 298.15, accuracy)!;
      expect(at(reading * more, 0.02).strength).toBeGreaterThan(at(reading, 0.02).strength);
      expect(at(reading, 0.1).high).toBeGreaterThan(at(reading, 0.02).high);
      expect(at(reading, 0.1).low).toBeLessThanOrEqual(at(reading, 0.02).low);
    }));
  });

  test('is the same for a meter that compensates and one that does not, each told what it is', () => {
    fc.assert(fc.property(made, fc.integer({ min: 5, max: 35 }), strength, ({ water, recipe }, celsius, s) => {
      const here = 10 * conductivityOfIons(amountsBetween(water, recipe, s), celsius + 273.15);
      const seen = { waterTemperature: `${celsius} °C`, recipe: { ions: inMillimoles(recipe) }, sourceWater: { ions: inMillimoles(water) } } as const;
      const plain = strengthFromReading({ ...seen, reading: `${here} mS/cm`, temperatureCompensation: 'none' });
      const linear = strengthFromReading({ ...seen, reading: `${here / (1 + 0.02 * (celsius - 25))} mS/cm`, temperatureCompensation: 'linear' });
      expect(Math.abs(linear.strength.si / plain.strength.si - 1)).toBeLessThan(1e-9);
    }), { numRuns: 30 });
  });
});

describe('dilution', () => {
  const part = fc.double({ min: 0.1, max: 0.95, noNaN: true });

  test('to the conductivity of a known blend takes the water of that blend, and keeps the salt', () => {
    fc.assert(fc.property(made, part, litres, ({ water, recipe }, share, size) => {
      const target = 10 * conductivityOfIons(amountsBetween(water, recipe, share), 298.15);
      const { freshWaterVolume, finalVolume, proportionalVolume, proportionalConductivity } = diluteToConductivity({
        volume: `${size} L`, ions: inMillimoles(recipe), sourceWater: { ions: inMillimoles(water) }, targetConductivity: `${target} mS/cm`,
      });
      expect(Math.abs(finalVolume.in('L') / (size / share) - 1)).toBeLessThan(1e-9);
      close(finalVolume.in('L'), size + freshWaterVolume.in('L'));
      // A thinner feed conducts more per ion, so the rule of proportion falls short.
      expect(proportionalVolume.si).toBeLessThanOrEqual(freshWaterVolume.si * (1 + 1e-9));
      expect(proportionalConductivity.in('mS/cm')).toBeGreaterThanOrEqual(target * (1 - 1e-9));
    }));
  });

  test('by proportion keeps conductivity times volume', () => {
    fc.assert(fc.property(litres, logUniform(0.1, 1), part, fc.double({ min: 0, max: 0.9, noNaN: true }), (size, conductivity, share, plain) => {
      const water = conductivity * plain;
      const target = water + share * (conductivity - water);
      const added = waterForConductivityProportional(size, conductivity, target, water);
      expect(Math.abs(((size * conductivity + added * water) / (size + added)) / target - 1)).toBeLessThan(1e-9);
    }));
  });

  test('in a blend of two feeds finds the share that it was made with, whichever is named first', () => {
    fc.assert(fc.property(feed, part, fc.double({ min: 0.1, max: 0.8, noNaN: true }), (strong, share, factor) => {
      const weak = scaled(strong, factor);
      const target = `${10 * conductivityOfIons(amountsBetween(weak, strong, share), 298.15)} mS/cm` as const;
      fc.pre(Number(target.split(' ')[0]) <= 50 && Number(target.split(' ')[0]) >= 0.01);
      const [one, other] = [{ ions: inMillimoles(strong) }, { ions: inMillimoles(weak) }];
      const found = blendForConductivity({ firstFeed: one, secondFeed: other, targetConductivity: target });
      expect(Math.abs(found.firstShare.si - share)).toBeLessThan(1e-9);
      close(found.firstShare.si + found.secondShare.si, 1);
      expect(Math.abs(blendForConductivity({ firstFeed: other, secondFeed: one, targetConductivity: target }).secondShare.si - share)).toBeLessThan(1e-9);
    }));
  });
});

describe('a meter in a standard', () => {
  const columns = ['molal001', 'molal01', 'molal1'] as const satisfies readonly PrimaryStandard[];
  const kelvin = fc.double({ min: 273.15, max: 323.15, noNaN: true });

  test('standards rise smoothly with temperature and strength', () => {
    fc.assert(fc.property(fc.constantFrom(...columns), kelvin, (column, t) => {
      const at = (shift: number) => conductivityPotassiumChloridePratt2001(column, t + shift);
      expect(at(0.5)).toBeGreaterThan(at(0));
      expect(Math.abs(at(-1) + at(1) - 2 * at(0))).toBeLessThan(3e-4 * at(0));
      const column25 = conductivityPotassiumChloridePratt2001(column, 298.15);
      expect(Math.abs(conductivityOfPotassiumChloride(column25, t) / at(0) - 1)).toBeLessThan(1e-12);
    }));
    fc.assert(fc.property(logUniform(0.0074, 10), kelvin, (strength, t) => {
      expect(conductivityOfPotassiumChloride(1.05 * strength, t)).toBeGreaterThan(conductivityOfPotassiumChloride(strength, t));
      expect(conductivityOfPotassiumChloride(strength, 298.15) / strength).toBeCloseTo(1, 12);
    }));
  });

  test('a meter set to the corrected cell constant shows what it should', () => {
    fc.assert(fc.property(logUniform(0.1, 100), fc.integer({ min: 0, max: 50 }), logUniform(0.3, 3), (reading, celsius, cellConstant) => {
      const set = { standard: '0.01 mol/L', waterTemperature: `${celsius} °C` } as const;
      const { correctedCellConstant, expectedReading, readingError } = meterCheck({ ...set, reading: `${reading} mS/cm`, cellConstant });
      const after = (reading * correctedCellConstant!) / cellConstant;
      close(after, expectedReading.in('mS/cm'));
      close((1 + readingError.si) * expectedReading.in('mS/cm'), reading, 10 * reading);
      expect(meterCheck({ ...set, reading: `${after} mS/cm` }).verdict).toBe('fine');
    }));
  });
});

describe('at the barrel', () => {
  const products = [{ salt: 'calcium-nitrate-tetrahydrate' }, { salt: 'potassium-nitrate' }, { salt: 'monopotassium-phosphate' }, { salt: 'magnesium-sulfate-heptahydrate' }] as const;
  const grams = fc.tuple(...products.map(() => fc.integer({ min: 1, max: 900 }).map((tenths) => tenths / 10)));
  const inBarrel = fc.record({ K: fc.double({ min: 80, max: 200, noNaN: true }), Ca: fc.double({ min: 60, max: 150, noNaN: true }), 'N-NO3': fc.double({ min: 80, max: 150, noNaN: true }), S: fc.double({ min: 1, max: 60, noNaN: true }) });
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const milligrams = (masses: Readonly<Record<string, number>>) => Object.fromEntries(Object.entries(masses).map(([form, mass]) => [form, `${mass} mg/L`] as const));

  test('a top-up keeps the mass of what was in it, what was poured in and what was weighed in', () => {
    fc.assert(fc.property(inBarrel, litres, share, (held, size, full) => {
      const present = size * full;
      const water = { Ca: 30, Mg: 5, 'N-NO3': 20, S: 10 };
      const { freshWaterVolume, portions, nutrients } = topUp({
        presentVolume: `${present} L`, nutrients: milligrams(held), finalVolume: `${size} L`, water: milligrams(water),
        targets: { K: '200 mg/L', Ca: '120 mg/L', P: '30 mg/L', Mg: '30 mg/L' }, salts: products, scales: [{ division: '0.1 g' }],
      });
      close(present + freshWaterVolume.in('L'), size, size);
      const weighed = dissolve({ volume: `${size} L`, portions: products.map((product, i) => ({ ...product, mass: portions[i]!.mass })) }).nutrients;
      for (const form of ['K', 'Ca', 'Mg', 'P', 'S', 'N-NO3'] as const) {
        const brought = present * ((held as Record<string, number>)[form] ?? 0) + (size - present) * ((water as Record<string, number>)[form] ?? 0) + size * (weighed[form]?.in('mg/L') ?? 0);
        close(nutrients[form]!.in('mg/L') * size, brought);
      }
    }), { numRuns: 60 });
  });

  test('a refill by recipe makes the whole barrel the recipe', () => {
    fc.assert(fc.property(grams, litres, share, fc.double({ min: 0, max: 1, noNaN: true }), (masses, size, full, strength) => {
      const present = size * full;
      const { portions, freshWaterVolume } = topUpByRecipe({
        presentVolume: `${present} L`, strength, finalVolume: `${size} L`, recipe: { volume: '100 L', portions: masses.map((mass, i) => ({ name: products[i]!.salt, mass: `${mass} g` as const })) },
      });
      close(present + freshWaterVolume.in('L'), size, size);
      masses.forEach((mass, i) => close(portions[i]!.mass.in('g') + (strength * present * mass) / 100, (size * mass) / 100));
    }));
  });

  test('two refills in a row take as much as one', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 99 }), fc.integer({ min: 1, max: 99 }), (a, b) => {
      const [low, high] = [Math.min(a, b), Math.max(a, b)];
      const portion = (presentVolume: number, finalVolume: number) =>
        topUpByRecipe({ presentVolume: `${presentVolume} L`, finalVolume: `${finalVolume} L`, recipe: { volume: '100 L', portions: [{ name: 'saltpetre', mass: '38.5 g' }] } }).portions[0]!.mass.in('g');
      close(portion(0, low) + portion(low, high), portion(0, high));
    }));
  });

  test('a correction brings the salt in the barrel to that of the recipe', () => {
    const recipe = { volume: '100 L', portions: [{ salt: 'potassium-nitrate', purity: 1, mass: '80 g' }, { salt: 'magnesium-sulfate-heptahydrate', purity: 1, mass: '30 g' }] } as const;
    const full = [80, 30];
    fc.assert(fc.property(litres, logUniform(0.2, 6), fc.double({ min: 1, max: 3, noNaN: true }), (size, reading, room) => {
      const { strength, lowStrength, highStrength, portions, freshWaterVolume, drainVolume, finalVolume, notes } =
        correctFeed({ presentVolume: `${size} L`, barrelVolume: `${size * room} L`, recipe, reading: `${reading} mS/cm` });
      const s = strength.in('fraction');
      close(finalVolume.in('L'), size - drainVolume.in('L') + freshWaterVolume.in('L'), size);
      expect(finalVolume.in('L')).toBeLessThanOrEqual(size * room * (1 + 1e-12));
      if (lowStrength.si <= 1 && highStrength.si >= 1) {
        expect([freshWaterVolume.si, drainVolume.si, ...portions.map(({ mass }) => mass.si)]).toEqual([0, 0, 0, 0]);
        expect(notes.map(({ code }) => code)).toContain('within-uncertainty');
        return;
      }
      full.forEach((mass, i) => close(s * (size - drainVolume.in('L')) * mass + 100 * portions[i]!.mass.in('g'), finalVolume.in('L') * mass, (s + 1) * size * mass));
    }), { numRuns: 60 });
  });
});
