import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  acidDose, acidForAlkalinity, acidForPH, acidKeys, airedWater, closedWater, liquidDensities, liquidProductDensity, speciationOfWater, strengthFromDensity, titratingAcid, titrationCurve, waterWithAcid,
  type AcidKey, type LiquidKey, type TitratedWater,
} from '../../src/salts/index.js';
import { aqueousSpecies, ions, type Formation, type Ion, type Speciation } from '../../src/solution/index.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const logUniform = (low: number, high: number) => between(Math.log(low), Math.log(high)).map(Math.exp);
const anyAcid = fc.constantFrom(...acidKeys).map(titratingAcid);
const temperature = between(278.15, 308.15);
const others = fc.record({
  'Ca2+': logUniform(1e-5, 4e-3), 'Mg2+': logUniform(1e-5, 2e-3), 'Na+': logUniform(1e-5, 5e-3), 'K+': logUniform(1e-5, 5e-3),
  'SO4 2-': logUniform(1e-5, 2e-3), 'NO3-': logUniform(1e-5, 5e-3), 'NH4+': logUniform(1e-6, 2e-3), 'H2PO4-': logUniform(1e-6, 5e-4),
}, { requiredKeys: [] });
const closed = fc.tuple(others, logUniform(8e-4, 8e-3), between(6.4, 8.3), temperature).map(([some, alkalinity, pH, t]) => closedWater(some, alkalinity, pH, t)!);
const air = logUniform(20, 1000);
const open = fc.tuple(closed, air).map(([water, gas]) => airedWater(water, gas));
const anyWater = fc.oneof(closed, open);
const pHOf = (water: TitratedWater): number => speciationOfWater(water).pH;
/** A dose that takes away a part of the alkalinity, or more than all of it. */
const doseOf = (water: TitratedWater, protons: number, part: number): number => (part * water.alkalinity) / protons;

/** Charge of a dissolved species, followed down the table of formations. */
function charge(species: string): number {
  const row = (aqueousSpecies as Record<string, Formation>)[species];
  return row ? Object.entries(row.from).reduce((sum, [reactant, number]) => sum + number * charge(reactant), 0) : ions[species as Ion].charge;
}
const chargeOf = ({ molalities }: Speciation): number => Object.entries(molalities).reduce((sum, [species, molality]) => sum + charge(species) * molality, 0);

describe('acid in water', () => {
  test('more acid never raises pH', () => {
    fc.assert(fc.property(anyWater, anyAcid, between(0, 1.3), between(1e-3, 0.3), (water, acid, part, more) => {
      const dose = (share: number) => waterWithAcid(water, acid, doseOf(water, acid.protons, share));
      expect(pHOf(dose(part + more))).toBeLessThan(pHOf(dose(part)));
    }));
  });

  test('pH comes back from the dose, and the dose from the pH', () => {
    fc.assert(fc.property(anyWater, anyAcid, between(0.01, 1.2), (water, acid, part) => {
      const dose = doseOf(water, acid.protons, part);
      const found = acidForPH(water, acid, pHOf(waterWithAcid(water, acid, dose)))!;
      expect(Math.abs(found.value / dose - 1)).toBeLessThan(1e-8);
      expect(found.residual).toBeLessThan(1e-12);
    }));
    fc.assert(fc.property(anyWater, anyAcid, between(3.5, 6), (water, acid, pH) => {
      const found = acidForPH(water, acid, pH);
      if (found && found.value > 0) expect(pHOf(waterWithAcid(water, acid, found.value))).toBeCloseTo(pH, 8);
    }));
  });

  test('acid brings no charge: what the species carry together stays', () => {
    fc.assert(fc.property(anyWater, anyAcid, between(0, 1.3), (water, acid, part) => {
      const after = waterWithAcid(water, acid, doseOf(water, acid.protons, part));
      expect(chargeOf(speciationOfWater(after))).toBeCloseTo(chargeOf(speciationOfWater(water)), 13);
    }));
  });

  test('a water that loses carbon dioxide to the air ends higher in pH, one that takes it up lower', () => {
    fc.assert(fc.property(closed, anyAcid, between(0, 0.9), air, (water, acid, part, gas) => {
      const shut = waterWithAcid(water, acid, doseOf(water, acid.protons, part));
      const openedUp = speciationOfWater(airedWater(shut, gas));
      const before = speciationOfWater(shut);
      const loses = before.molalities.CO2! > openedUp.molalities.CO2!;
      if (loses) expect(openedUp.pH).toBeGreaterThanOrEqual(before.pH);
      else expect(openedUp.pH).toBeLessThanOrEqual(before.pH);
    }));
  });

  test('no less dissolves with more carbon dioxide in the air, and pH is no higher', () => {
    fc.assert(fc.property(closed, air, between(1.01, 10), (water, gas, more) => {
      const [less, rich] = [speciationOfWater(airedWater(water, gas)), speciationOfWater(airedWater(water, gas * more))];
      expect(rich.molalities.CO2!).toBeGreaterThan(less.molalities.CO2!);
      expect(rich.pH).toBeLessThan(less.pH);
    }));
  });

  test('a closed water comes back from its own pH and alkalinity', () => {
    fc.assert(fc.property(closed, (water) => {
      const { 'HCO3-': carbon, ...rest } = water.totals;
      const again = closedWater(rest, water.alkalinity, pHOf(water), water.temperature)!;
      expect(Math.abs(again.totals['HCO3-']! / carbon! - 1)).toBeLessThan(1e-7);
    }));
  });

  test('the hand rule leaves the alkalinity that is wanted, whatever the acid', () => {
    fc.assert(fc.property(closed, anyAcid, between(0, 1), (water, acid, part) => {
      const left = part * water.alkalinity;
      const { alkalinity } = speciationOfWater(waterWithAcid(water, acid, acidForAlkalinity(water.alkalinity, left, acid.protons)));
      expect(alkalinity).toBeCloseTo(left, 12);
    }));
  });
});

describe('the calculations', () => {
  const water = { alkalinity: '4 meq/L', pH: 7.4, waterTemperature: '14 °C', purity: '50 %' } as const;
  const acids = fc.constantFrom<AcidKey>(...acidKeys);

  test('the dose grows with the volume and shrinks with the strength', () => {
    fc.assert(fc.property(acids, between(0.1, 1000), between(0.1, 1), (acid, litres, purity) => {
      const dose = acidDose({ ...water, acid, targetPH: 5.8, volume: '1 L', purity: 1 });
      const scaled = acidDose({ ...water, acid, targetPH: 5.8, volume: `${litres} L`, purity });
      expect((scaled.mass.si * purity) / (dose.mass.si * litres)).toBeCloseTo(1, 10);
      expect(scaled.acidConcentration.si).toBeCloseTo(dose.acidConcentration.si, 10);
    }));
  });

  test('the curve falls all the way and meets the dose at its end', () => {
    fc.assert(fc.property(acids, fc.constantFrom('closed', 'open'), between(4, 6.5), (acid, exposure, pH) => {
      const asked = { ...water, acid, exposure, volume: '10 L' } as const;
      const curve = titrationCurve({ ...asked, lowestPH: pH, points: 12 });
      curve.pHValues.slice(1).forEach((value, i) => expect(value).toBeLessThan(curve.pHValues[i]!));
      expect(curve.pHValues.at(-1)).toBeCloseTo(pH, 7);
      expect(curve.productMasses.at(-1)!.si / acidDose({ ...asked, targetPH: pH }).mass.si).toBeCloseTo(1, 10);
    }), { numRuns: 30 });
  });
});

describe('density of acids', () => {
  const liquids = Object.keys(liquidDensities) as LiquidKey[];

  test.each(liquids)('%s without anything in it is water, and gets denser all the way', (liquid) => {
    fc.assert(fc.property(between(0, 0.96), between(0.001, 0.01), between(283.15, 313.15), (w, more, t) => {
      const [less, dense] = [liquidProductDensity(liquid, w, t), liquidProductDensity(liquid, w + more, t)];
      if (!Number.isNaN(dense)) expect(dense).toBeGreaterThan(less);
    }));
    expect(liquidProductDensity(liquid, 0, 293.15)).toBeCloseTo(998.207, 2);
  });

  test.each(liquids)('the strength of %s comes back from its density', (liquid) => {
    fc.assert(fc.property(between(0.01, 0.5), between(278.15, 313.15), (w, t) => {
      expect(strengthFromDensity(liquid, liquidProductDensity(liquid, w, t), t).value).toBeCloseTo(w, 9);
    }));
  });
});
