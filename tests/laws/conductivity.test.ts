import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  conductivityFromDissolvedSolids, conductivityLimitingSum, conductivityMcCleskey2012, conductivityOfSolution, conductivityStandardMethods2510, dissolvedSolidsFromConductivity,
  dissolvedSolidsScales, ionicConductivitiesOwn, limitingMolalConductivityMcCleskey2012, molalConductivityMcCleskey2012, potassiumChlorideMeterStandards25,
  potassiumChlorideStandards, temperatureFactorIso7888, temperatureFactorLinear, temperatureFactorOfSolution, temperatureFactorPotassiumChloride, type DissolvedSolidsScale,
} from '../../src/conductivity/index.js';

const logUniform = (low: number, high: number) => fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);
const temperature = fc.double({ min: 273.15, max: 313.15, noNaN: true });

/** Feeds whose charges balance: salts in mol/kg, a full-strength feed at the upper end. */
const feed = fc.tuple(logUniform(1e-4, 8e-3), logUniform(1e-4, 0.01), logUniform(1e-5, 3e-3), logUniform(1e-5, 2e-3), logUniform(1e-6, 2e-3), logUniform(1e-6, 2e-3))
  .map(([calciumNitrate, potassiumNitrate, magnesiumSulfate, potassiumPhosphate, ammoniumNitrate, sodiumChloride]) => ({
    'Ca2+': calciumNitrate, 'K+': potassiumNitrate + potassiumPhosphate, 'Mg2+': magnesiumSulfate, 'NH4+': ammoniumNitrate, 'Na+': sodiumChloride,
    'NO3-': 2 * calciumNitrate + potassiumNitrate + ammoniumNitrate, 'SO4 2-': magnesiumSulfate, 'H2PO4-': potassiumPhosphate, 'Cl-': sodiumChloride,
  }));
const scaled = <T extends Readonly<Record<string, number>>>(some: T, factor: number) => Object.fromEntries(Object.entries(some).map(([ion, amount]) => [ion, amount * factor])) as T;

describe('conductivity of a solution', () => {
  test('is the sum of positive contributions', () => {
    fc.assert(fc.property(feed, temperature, (some, t) => {
      const { value, contributions } = conductivityOfSolution(some, { temperature: t });
      const parts = Object.values(contributions);
      expect(Math.min(...parts)).toBeGreaterThan(0);
      expect(parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(value, 12);
    }));
  });

  test('falls with dilution, by less than the dilution', () => {
    fc.assert(fc.property(feed, temperature, fc.double({ min: 0.05, max: 0.98, noNaN: true }), (some, t, share) => {
      const whole = conductivityOfSolution(some, { temperature: t }).value;
      const part = conductivityOfSolution(scaled(some, share), { temperature: t }).value;
      expect(part).toBeLessThan(whole);
      expect(part).toBeGreaterThan(share * whole);
    }));
  });

  test('goes to nothing, and to the sum of limiting conductivities, at infinite dilution', () => {
    fc.assert(fc.property(temperature, (t) => {
      const amount = 1e-8;
      const { value } = conductivityMcCleskey2012({ 'K+': amount, 'NO3-': amount }, { temperature: t });
      const limit = limitingMolalConductivityMcCleskey2012('K+', t) + limitingMolalConductivityMcCleskey2012('NO3-', t);
      expect(value / (amount * limit)).toBeCloseTo(1, 3);
      expect(conductivityOfSolution({}, { temperature: t }).value).toBe(0);
    }));
  });

  test('rises with temperature, so that the factor to 25 °C falls through 1', () => {
    fc.assert(fc.property(feed, fc.double({ min: 273.15, max: 308.15, noNaN: true }), fc.double({ min: 0.5, max: 5, noNaN: true }), (some, t, more) => {
      expect(temperatureFactorOfSolution(some, { temperature: t + more })).toBeLessThan(temperatureFactorOfSolution(some, { temperature: t }));
      expect(temperatureFactorOfSolution(some, { temperature: 298.15 })).toBe(1);
    }));
  });

  test('lies within 12 % of the hand calculation in dilute feeds', () => {
    fc.assert(fc.property(feed, (some) => {
      const dilute = scaled(some, 0.1);
      const ratio = conductivityStandardMethods2510(scaled(dilute, 997.047)) / conductivityOfSolution(dilute, { temperature: 298.15 }).value;
      expect(Math.abs(ratio - 1)).toBeLessThan(0.12);
    }));
  });

  test('an override takes the place of a row', () => {
    const phosphate = { 'K+': 0.01, 'H2PO4-': 0.01 };
    const conditions = { temperature: 298.15 };
    const row = ionicConductivitiesOwn['H2PO4-'];
    const own = conductivityOfSolution(phosphate, conditions);
    expect(conductivityOfSolution(phosphate, conditions, { 'H2PO4-': row })).toEqual(own);
    const { contributions, ionicStrength } = conductivityOfSolution(phosphate, conditions, { 'H2PO4-': [0, 0, 36, 0, 0, 0, 1] });
    expect(contributions['H2PO4-']).toBeCloseTo(0.036, 12);
    expect(own.contributions['H2PO4-']).toBeCloseTo(0.01 * molalConductivityMcCleskey2012(row, 298.15, ionicStrength), 12);
  });
});

describe('quick rules', () => {
  test('the limiting sum is above every other', () => {
    fc.assert(fc.property(feed, (some) => {
      const amounts = scaled(some, 997.047);
      const limit = conductivityLimitingSum(amounts);
      expect(limit).toBeGreaterThan(conductivityStandardMethods2510(amounts));
      expect(limit).toBeGreaterThan(conductivityOfSolution(some, { temperature: 298.15 }).value);
    }));
  });
});

describe('temperature reference', () => {
  test('every factor is 1 at 25 °C and falls as it gets warmer', () => {
    expect(temperatureFactorLinear(298.15)).toBe(1);
    expect(temperatureFactorIso7888(298.15)).toBeCloseTo(1, 3);
    fc.assert(fc.property(temperature, fc.double({ min: 0.01, max: 5, noNaN: true }), (t, more) => {
      expect(temperatureFactorLinear(t + more)).toBeLessThan(temperatureFactorLinear(t));
      expect(temperatureFactorIso7888(t + more)).toBeLessThan(temperatureFactorIso7888(t));
      expect(temperatureFactorPotassiumChloride(t + more)).toBeLessThan(temperatureFactorPotassiumChloride(t));
    }));
  });

  test('a feed changes as potassium chloride does, within 0.5 %', () => {
    const hoagland = { 'K+': 0.006, 'Ca2+': 0.004, 'Mg2+': 0.002, 'NH4+': 0.001, 'NO3-': 0.014, 'SO4 2-': 0.002, 'H2PO4-': 0.001 };
    fc.assert(fc.property(fc.double({ min: 278.15, max: 308.15, noNaN: true }), (t) => {
      expect(Math.abs(temperatureFactorOfSolution(hoagland, { temperature: t }) / temperatureFactorPotassiumChloride(t) - 1)).toBeLessThan(0.005);
    }));
  });
});

describe('dissolved solids', () => {
  test('come back on every scale', () => {
    const scales = Object.keys(dissolvedSolidsScales) as DissolvedSolidsScale[];
    fc.assert(fc.property(fc.constantFrom(...scales), logUniform(1e-4, 2), (scale, conductivity) => {
      expect(conductivityFromDissolvedSolids(dissolvedSolidsFromConductivity(conductivity, scale), scale) / conductivity).toBeCloseTo(1, 13);
    }));
  });
});

describe('potassium chloride standards', () => {
  test('rise with temperature and strength', () => {
    potassiumChlorideStandards.forEach((row, i) => {
      const before = potassiumChlorideStandards[i - 1];
      if (before) for (const key of ['molal001', 'molal01', 'molal1'] as const) expect(row[key]).toBeGreaterThan(before[key]);
      expect(row.molal01).toBeLessThan(10 * row.molal001);
      expect(row.molal1).toBeLessThan(10 * row.molal01);
    });
  });

  test('conduct less for each mole the stronger they are', () => {
    const perMole = potassiumChlorideMeterStandards25.map(({ molar, conductivity }) => conductivity / molar);
    expect(perMole).toEqual([...perMole].sort((a, b) => b - a));
  });
});
