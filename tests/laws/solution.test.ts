import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  alkalinityFromBicarbonate, alkalinityFromCalciumCarbonate, alkalinityOfIons, amountFromIonMass, amountFromNutrientMass, aqueousComponents, aqueousSpecies,
  bicarbonateFromAlkalinity, calciumCarbonateFromAlkalinity, chargeBalanceOfIons, chargeFromIonAmount, chargeLeftOut, componentTotalsOf, elementFractionOfOxide,
  ionAmountFromCharge, ionAmountsOfNutrients, ionMassFromAmount, ions, logActivityCoefficientDavies1962, logFormationConstant, nutrientForms, nutrientMassFromAmount, oxides, speciate,
  type Component, type ComponentTotals, type Formation, type Ion, type NutrientFormKey, type Oxide, type Speciation,
} from '../../src/solution/index.js';
import { ConvergenceError } from '../../src/numerics/convergence-error.js';
import { debyeHuckelSlope } from '../../src/water/permittivity.js';

const keys = <T extends object>(table: T) => Object.keys(table) as (keyof T)[];
const logUniform = (low: number, high: number) => fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);
const temperature = fc.double({ min: 273.15, max: 313.15, noNaN: true });
const dissolved = aqueousComponents.filter((component): component is Exclude<Component, 'H+'> => component !== 'H+');
const totalsTo = (most: number) =>
  fc.record(Object.fromEntries(dissolved.map((component) => [component, logUniform(1e-7, most)])), { requiredKeys: [] }) as fc.Arbitrary<ComponentTotals>;
const totals = totalsTo(0.05);
const pH = fc.double({ min: 3, max: 10.5, noNaN: true });

/** Components in one of a species, followed down the table of formations. */
function parts(species: string, count = 1): [string, number][] {
  const row = (aqueousSpecies as Record<string, Formation>)[species];
  return row ? Object.entries(row.from).flatMap(([reactant, number]) => parts(reactant, count * number)) : [[species, count]];
}
const total = ({ molalities }: Speciation, component: string): number =>
  Object.entries(molalities).reduce((sum, [species, molality]) => sum + molality * parts(species).reduce((n, [one, order]) => n + (one === component ? order : 0), 0), 0);

describe('conversions', () => {
  test('mass and amount of a nutrient form come back', () => {
    fc.assert(fc.property(fc.constantFrom(...keys(nutrientForms)), logUniform(1e-6, 10), (form: NutrientFormKey, mass) => {
      expect(nutrientMassFromAmount(form, amountFromNutrientMass(form, mass)) / mass).toBeCloseTo(1, 13);
    }));
  });

  test('mass, amount and charge of an ion come back', () => {
    fc.assert(fc.property(fc.constantFrom(...keys(ions)), logUniform(1e-6, 10), (ion: Ion, mass) => {
      const amount = amountFromIonMass(ion, mass);
      expect(ionMassFromAmount(ion, amount) / mass).toBeCloseTo(1, 13);
      if (ions[ion].charge === 0) expect(ionAmountFromCharge(ion, 1)).toBeNaN();
      else expect(ionAmountFromCharge(ion, chargeFromIonAmount(ion, amount)) / amount).toBeCloseTo(1, 13);
    }));
  });

  test('both statements of alkalinity come back', () => {
    fc.assert(fc.property(logUniform(1e-3, 100), (alkalinity) => {
      expect(alkalinityFromBicarbonate(bicarbonateFromAlkalinity(alkalinity)) / alkalinity).toBeCloseTo(1, 13);
      expect(alkalinityFromCalciumCarbonate(calciumCarbonateFromAlkalinity(alkalinity)) / alkalinity).toBeCloseTo(1, 13);
    }));
  });

  test.each(keys(oxides))('%s is more than its element', (oxide: Oxide) => {
    expect(elementFractionOfOxide(oxide)).toBeGreaterThan(0.2);
    expect(elementFractionOfOxide(oxide)).toBeLessThan(0.9);
  });

  test.each(keys(nutrientForms))('the carrier of %s holds what the form counts', (form: NutrientFormKey) => {
    const { counted, carrier } = nutrientForms[form];
    for (const [element, atoms] of Object.entries(counted)) expect((ions[carrier].composition as Record<string, number>)[element]).toBe(atoms);
  });
});

describe('charge balance', () => {
  const amounts = fc.dictionary(fc.constantFrom(...keys(ions)), logUniform(1e-6, 0.1));

  test('the imbalance is the sum of all charges', () => {
    fc.assert(fc.property(amounts, (some) => {
      const { cations, anions, imbalance, relativeImbalance } = chargeBalanceOfIons(some);
      const sum = Object.entries(some).reduce((charge, [ion, amount]) => charge + amount * ions[ion as Ion].charge, 0);
      expect(imbalance).toBeCloseTo(sum, 14);
      expect(cations - anions).toBe(imbalance);
      expect(Math.abs(relativeImbalance)).toBeLessThanOrEqual(1);
    }));
  });
});

describe('totals of ions', () => {
  const amounts = fc.dictionary(fc.constantFrom(...keys(ions)), logUniform(1e-3, 50));

  test('keep every element of an ion that exchanges protons or pairs', () => {
    fc.assert(fc.property(amounts, (some) => {
      const kept = Object.entries(componentTotalsOf(some, 1000)) as [Ion, number][];
      const phosphorus = (one: Ion) => (ions[one].composition as Record<string, number>)['P'] ?? 0;
      const carbon = (one: Ion) => (['HCO3-', 'CO3 2-'].includes(one) ? 1 : 0);
      for (const count of [phosphorus, carbon]) {
        const before = Object.entries(some).reduce((sum, [ion, amount]) => sum + amount * count(ion as Ion), 0);
        expect(kept.reduce((sum, [ion, total]) => sum + 1000 * total * count(ion), 0)).toBeCloseTo(before, 9);
      }
    }));
  });

  test('their charge, the protons given off and what is left out make up the charge of the ions', () => {
    fc.assert(fc.property(amounts, (some) => {
      const given = chargeBalanceOfIons(some);
      const kept = chargeBalanceOfIons(componentTotalsOf(some, 1));
      const carbon = (some['HCO3-'] ?? 0) + (some['CO3 2-'] ?? 0);
      const protonsTaken = alkalinityOfIons(some) - carbon;
      expect(given.imbalance).toBeCloseTo(kept.imbalance - protonsTaken - chargeLeftOut(some), 9);
    }));
  });

  test('a feed of nutrients has nothing but chelate, molybdate and neutral molecules left out', () => {
    const feed = ionAmountsOfNutrients(Object.fromEntries(keys(nutrientForms).map((form) => [form, 0.01])));
    const charged = keys(ions).filter((ion) => feed[ion] !== undefined && ions[ion].charge !== 0);
    expect(charged.filter((ion) => chargeLeftOut({ [ion]: 1 }) > 0)).toEqual(['MoO4 2-', 'FeEDTA-']);
  });
});

describe('speciation', () => {
  test('every total is found again among the species', () => {
    fc.assert(fc.property(totals, temperature, fc.option(pH, { nil: undefined }), (some, t, acidity) => {
      const result = speciate(some, acidity === undefined ? { temperature: t } : { temperature: t, pH: acidity });
      for (const [component, amount] of Object.entries(some)) expect(Math.abs(total(result, component) / amount - 1)).toBeLessThan(1e-10);
      for (const molality of Object.values(result.molalities)) expect(molality).toBeGreaterThanOrEqual(0);
      expect(result.residual).toBeLessThan(1e-10);
    }), { numRuns: 300 });
  });

  test('every reaction of the table is at equilibrium', () => {
    fc.assert(fc.property(totals, temperature, pH, (some, t, acidity) => {
      const { activities, molalities, ionicStrength } = speciate(some, { temperature: t, pH: acidity });
      for (const species of keys(aqueousSpecies)) {
        const activity = activities[species];
        if (activity === undefined) continue;
        const product = Object.entries<number>(aqueousSpecies[species].from).reduce((sum, [reactant, order]) => sum + order * Math.log10((activities as Record<string, number>)[reactant]!), 0);
        expect(Math.log10(activity) - product).toBeCloseTo(logFormationConstant(species, t), 9);
      }
      const coefficient = logActivityCoefficientDavies1962(1, Math.min(ionicStrength, 0.5), debyeHuckelSlope(t));
      expect(Math.log10(activities['H+']! / molalities['H+']!)).toBeCloseTo(coefficient, 10);
      expect(-Math.log10(activities['H+']!)).toBeCloseTo(acidity, 10);
    }));
  });

  test('ion pairs move no charge', () => {
    fc.assert(fc.property(totals, temperature, (some, t) => {
      const { molalities } = speciate(some, { temperature: t });
      const charge = Object.entries(molalities).reduce((sum, [species, molality]) => sum + molality * parts(species).reduce((z, [ion, order]) => z + order * ions[ion as Ion].charge, 0), 0);
      expect(charge).toBeCloseTo(chargeBalanceOfIons(some).imbalance, 12);
    }));
  });

  test.each([-1, 0, 1, 2, 3, 6, 7, 11, 12, 14])('a pH of %d, where a search may begin, comes back from its alkalinity', (acidity) => {
    fc.assert(fc.property(totalsTo(0.1), temperature, (some, t) => {
      const { alkalinity } = speciate(some, { temperature: t, pH: acidity });
      expect(speciate(some, { temperature: t, alkalinity }).pH).toBeCloseTo(acidity, 5);
    }));
  });

  test('pH comes back from alkalinity and carbon, and carbon from alkalinity and pH', () => {
    fc.assert(fc.property(totalsTo(0.1), logUniform(3e-4, 0.1), temperature, fc.double({ min: 5, max: 9, noNaN: true }), ({ 'HCO3-': _, ...others }, carbon, t, acidity) => {
      const given = { ...others, 'HCO3-': carbon };
      const { alkalinity } = speciate(given, { temperature: t, pH: acidity });
      const withCarbon = speciate(given, { temperature: t, alkalinity });
      expect(-Math.log10(withCarbon.activities['H+']!)).toBeCloseTo(acidity, 6);
      const withAcidity = speciate(others, { temperature: t, pH: acidity, alkalinity });
      expect(Math.abs(total(withAcidity, 'HCO3-') / carbon - 1)).toBeLessThan(1e-6);
    }), { numRuns: 300 });
  });

  test('strong acid lowers pH', () => {
    fc.assert(fc.property(temperature, logUniform(1e-4, 0.01), fc.double({ min: 0, max: 1.2, noNaN: true }), fc.double({ min: 0.001, max: 0.2, noNaN: true }), (t, carbon, share, more) => {
      const acidity = (acid: number) => -Math.log10(speciate({ 'Ca2+': carbon / 2, 'NO3-': acid, 'HCO3-': carbon }, { temperature: t, alkalinity: carbon - acid }).activities['H+']!);
      expect(acidity((share + more) * carbon)).toBeLessThan(acidity(share * carbon));
    }));
  });

  test('strong acid and base alone give the pH of their molality', () => {
    fc.assert(fc.property(temperature, logUniform(1e-5, 0.05), (t, strength) => {
      const acid = speciate({ 'Cl-': strength }, { temperature: t, alkalinity: -strength });
      expect(acid.molalities['H+']! / strength).toBeCloseTo(1, 3);
      const base = speciate({ 'K+': strength }, { temperature: t, alkalinity: strength });
      expect(base.molalities['OH-']! / strength).toBeCloseTo(1, 3);
    }));
  });

  test('pairs vanish with dilution', () => {
    fc.assert(fc.property(temperature, (t) => {
      const { molalities } = speciate({ 'Ca2+': 1e-9, 'SO4 2-': 1e-9 }, { temperature: t });
      expect(molalities.CaSO4! / 1e-9).toBeLessThan(1e-6);
    }));
  });

  test('what cannot be is refused', () => {
    expect(() => speciate({ 'K+': -1 }, { temperature: 298.15 })).toThrow(RangeError);
    expect(() => speciate({ 'K+': NaN }, { temperature: 298.15 })).toThrow(RangeError);
    expect(() => speciate({ 'HCO3-': 1e-3 }, { temperature: 298.15, alkalinity: 1e-3, pH: 7 })).toThrow(RangeError);
    expect(() => speciate({ 'H2PO4-': 2e-3 }, { temperature: 298.15, pH: 8, alkalinity: 1e-4 })).toThrow(/without any carbon/);
    expect(() => speciate({}, { temperature: 298.15, alkalinity: 1000 })).toThrow(ConvergenceError);
    expect(speciate({}, { temperature: 298.15 }).molalities).toEqual({});
  });

  test('pure water is neutral at half of pKw', () => {
    const { molalities } = speciate({}, { temperature: 298.15, pH: 7 });
    expect(Math.log10(molalities['H+']!)).toBeCloseTo(-7, 3);
    expect(Math.log10(molalities['OH-']!)).toBeCloseTo(-7, 2);
  });
});
