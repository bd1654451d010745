/** Weighing, purity, labels and the volume against 100 000 feeds drawn at random, and laws that hold for any weigh sheet. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { conductivityOfSolution } from '../../src/conductivity/index.js';
import { dissolvePortions, feedUncertainty, salts, uncertainInputs, weighSheetInterval, type SaltKey, type UncertainPortion } from '../../src/salts/index.js';
import { conductivitySlopes } from '../../src/conductivity/index.js';
import type { IonAmounts } from '../../src/solution/formulas/concentration.js';
import { speciationTask } from '../../src/solution/formulas/stated-solution.js';
import { waterDensityIapws2008 } from '../../src/water/density.js';

/** Random numbers from 0 to 1, the same in every run (a linear congruential generator of 48 bits). */
function randomNumbers(seed: bigint): () => number {
  let state = seed;
  return () => {
    state = (state * 0x5deece66dn + 0xbn) & ((1n << 48n) - 1n);
    return Number(state >> 16n) / 2 ** 32;
  };
}

function standardDeviation(values: Float64Array): number {
  const mean = values.reduce((sum, x) => sum + x, 0) / values.length;
  return Math.sqrt(values.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (values.length - 1));
}

function conductivityOf(amounts: IonAmounts): number {
  const { totals, conditions } = speciationTask(amounts, undefined, 298.15, waterDensityIapws2008(298.15));
  return conductivityOfSolution(totals, conditions).value;
}

describe('feeds drawn at random', () => {
  const volume = 0.12;
  const volumeTolerance = 0.02;
  const water = { Ca: 0.04, S: 0.008, HCO3: 0.1 };
  const portions: readonly UncertainPortion[] = [
    { salt: 'calcium-nitrate-tetrahydrate', purity: 0.98, purityRange: [0.96, 1], mass: 0.064, division: 0.001 },
    { salt: 'magnesium-sulfate-heptahydrate', purity: 0.99, purityRange: [0.97, 0.995], mass: 0.03, division: 0.001 },
    { salt: 'potassium-sulfate', purity: 0.96, purityRange: [0.94, 0.98], mass: 0.012, division: 0.0005 },
    { label: { 'N-NO3': 0.1, 'N-NH4': 0.04, P: 0.05, K: 0.2, Fe: 0.004 }, labelTolerance: 0.05, mass: 0.05, division: 0.001 },
  ];
  // g/mol, as any table has them
  const [calciumNitrate, epsomSalt, potassiumSulfate] = [236.146, 246.466, 174.253];
  const [N, P, K, Ca, Mg, S, Fe, HCO3] = [14.007, 30.974, 39.098, 40.078, 24.305, 32.06, 55.845, 61.016];

  /** Nutrients, kg/m3, and ions, mol/m3, of one such feed; `off` draws from -1 to 1. */
  function drawn(off: () => number): { nutrients: Readonly<Record<string, number>>; amounts: IonAmounts } {
    const between = (least: number, most: number): number => (least + most) / 2 + ((most - least) / 2) * off();
    const size = volume * (1 + volumeTolerance * off());
    const nitrate = ((0.064 + 0.0005 * off()) * between(0.96, 1)) / size / (calciumNitrate / 1000);
    const epsom = ((0.03 + 0.0005 * off()) * between(0.97, 0.995)) / size / (epsomSalt / 1000);
    const sulfate = ((0.012 + 0.00025 * off()) * between(0.94, 0.98)) / size / (potassiumSulfate / 1000);
    const blend = (0.05 + 0.0005 * off()) / size;
    const figure = (stated: number): number => blend * stated * (1 + 0.05 * off());
    const [no3, nh4, p, k, fe] = [figure(0.1), figure(0.04), figure(0.05), figure(0.2), figure(0.004)];
    const amounts = {
      'Ca2+': nitrate + 40 / Ca, 'NO3-': 2 * nitrate + (no3 / N) * 1000, 'NH4+': (nh4 / N) * 1000, 'H2PO4-': (p / P) * 1000, 'K+': 2 * sulfate + (k / K) * 1000,
      'Mg2+': epsom, 'SO4 2-': epsom + sulfate + 8 / S, 'HCO3-': 100 / HCO3, 'FeEDTA-': (fe / Fe) * 1000,
    };
    const kg = (amount: number, molarMass: number): number => (amount * molarMass) / 1000;
    const nutrients = {
      'N-NO3': kg(amounts['NO3-'], N), 'N-NH4': nh4, N: kg(amounts['NO3-'], N) + nh4, P: p, K: kg(amounts['K+'], K), Ca: kg(amounts['Ca2+'], Ca),
      Mg: kg(epsom, Mg), S: kg(amounts['SO4 2-'], S), Fe: fe,
    };
    return { nutrients, amounts };
  }

  const known = feedUncertainty(dissolvePortions(portions, volume, water), portions, volume, volumeTolerance);

  test('spread as the first order says, within 2 %, and never past least and most', () => {
    const random = randomNumbers(12n);
    const draws = 100_000;
    const columns: Record<string, Float64Array> = {};
    for (let i = 0; i < draws; i++) {
      for (const [form, value] of Object.entries(drawn(() => 2 * random() - 1).nutrients)) (columns[form] ??= new Float64Array(draws))[i] = value;
    }
    for (const [form, values] of Object.entries(columns)) {
      const { standardUncertainty, low, high, least, most, value } = known.nutrients[form as 'N']!;
      expect(Math.abs(standardUncertainty / standardDeviation(values) - 1), form).toBeLessThan(0.02);
      expect(values.filter((x) => x >= low && x <= high).length / draws, `${form} in its interval`).toBeGreaterThan(0.94);
      // What products of small shifts add is of second order.
      const secondOrder = 0.003 * value;
      for (const x of values) if (x < least - secondOrder || x > most + secondOrder) throw new Error(`${form}: ${x} is not within ${least} to ${most}`);
    }
    expect(Object.keys(columns).length).toBe(9);
  });

  test('spread in conductivity as the slopes say, within 2 %', { timeout: 30_000 }, () => {
    const random = randomNumbers(3n);
    const draws = 20_000; // a standard deviation to 0.5 %
    const values = Float64Array.from({ length: draws }, () => conductivityOf(drawn(() => 2 * random() - 1).amounts));
    expect(Math.abs(known.conductivity!.standardUncertainty / standardDeviation(values) - 1)).toBeLessThan(0.02);
    expect(values.filter((x) => x >= known.conductivity!.low && x <= known.conductivity!.high).length / draws).toBeGreaterThan(0.94);
  });
});

describe('any weigh sheet', () => {
  const anySalt = fc.constantFrom(...(Object.keys(salts) as SaltKey[]).filter((key) => !key.includes('acid') && !key.includes('hydroxide') && !key.includes('silicate')));
  const portion = fc.record({ salt: anySalt, purity: fc.double({ min: 0.5, max: 0.9, noNaN: true }), mass: fc.double({ min: 1e-5, max: 0.1, noNaN: true }), division: fc.double({ min: 1e-6, max: 1e-3, noNaN: true }) });
  const sheet = fc.array(portion, { minLength: 1, maxLength: 8 });
  const known = (portions: readonly UncertainPortion[], volumeTolerance = 0) => feedUncertainty(dissolvePortions(portions, 0.1, { HCO3: 0.1, Cl: 0.01 }), portions, 0.1, volumeTolerance);

  test('is known no worse on a finer scale', () => {
    fc.assert(fc.property(sheet, fc.double({ min: 0, max: 1, noNaN: true }), (portions, finer) => {
      const [coarse, fine] = [known(portions), known(portions.map((one) => ({ ...one, division: one.division * finer })))];
      for (const [form, { standardUncertainty, least, most, low, high }] of Object.entries(fine.nutrients)) {
        const before = coarse.nutrients[form as 'N']!;
        const rounding = 1e-12 * before.most;
        expect(standardUncertainty).toBeLessThanOrEqual(before.standardUncertainty + rounding);
        expect(most - least).toBeLessThanOrEqual(before.most - before.least + rounding);
        expect(high - low).toBeLessThanOrEqual(before.high - before.low + rounding);
      }
      expect(fine.conductivity!.standardUncertainty).toBeLessThanOrEqual(coarse.conductivity!.standardUncertainty * (1 + 1e-9));
    }));
  });

  test('without tolerances has only the rounding of the scale, and without a scale nothing', () => {
    fc.assert(fc.property(sheet, (portions) => {
      expect(uncertainInputs(portions, 0.1).every(({ source }) => source === 'scale')).toBe(true);
      expect(uncertainInputs(portions.map(({ division: _, ...rest }) => rest), 0.1)).toEqual([]);
      for (const { value, low, high, least, most, mainSource } of Object.values(known(portions.map(({ division: _, ...rest }) => rest)).nutrients)) {
        expect([low, high, least, most, mainSource]).toEqual([value, value, value, value, undefined]);
      }
    }));
  });

  test('has its value within low and high, and those within least and most, none below zero', () => {
    fc.assert(fc.property(sheet, fc.double({ min: 0, max: 0.2, noNaN: true }), (portions, volumeTolerance) => {
      const { nutrients, ions, conductivity } = known(portions, volumeTolerance);
      for (const { least, low, value, high, most } of [...Object.values(nutrients), ...Object.values(ions), conductivity!]) {
        const inOrder = [0, least, low, value, high, most];
        expect([...inOrder].sort((a, b) => a - b)).toEqual(inOrder);
      }
    }));
  });

  test('moves the ions as it moves the nutrients that they carry', () => {
    fc.assert(fc.property(sheet, fc.double({ min: 0, max: 0.2, noNaN: true }), (portions, volumeTolerance) => {
      const { nutrients, ions } = known(portions, volumeTolerance);
      for (const [form, ion] of [['K', 'K+'], ['Ca', 'Ca2+'], ['S', 'SO4 2-'], ['P', 'H2PO4-']] as const) {
        if (!nutrients[form]?.value) continue;
        expect(ions[ion]!.standardUncertainty / ions[ion]!.value).toBeCloseTo(nutrients[form].standardUncertainty / nutrients[form].value, 12);
      }
    }));
  });
});

test('slopes of the conductivity are what a little more of each ion does to it', () => {
  const amount = fc.double({ min: 0.05, max: 15, noNaN: true });
  const feed = fc.record({ 'Ca2+': amount, 'Mg2+': amount, 'K+': amount, 'NH4+': amount, 'NO3-': amount, 'SO4 2-': amount, 'H2PO4-': amount, 'HCO3-': amount });
  const acidFeed = fc.record({ 'Ca2+': amount, 'K+': amount, 'SO4 2-': amount, 'H2PO4-': amount, 'H+': amount });
  fc.assert(fc.property(fc.oneof(feed, acidFeed), (amounts: IonAmounts) => {
    const { value, slopes } = conductivitySlopes(amounts, 298.15);
    expect(value).toBeCloseTo(conductivityOf(amounts), 12);
    for (const [ion, slope] of Object.entries(slopes)) {
      const step = 1e-3 * amounts[ion as 'K+']!;
      const [less, more] = [-step, step].map((change) => conductivityOf({ ...amounts, [ion]: amounts[ion as 'K+']! + change }));
      expect(Math.abs(slope - (more! - less!) / (2 * step)), ion).toBeLessThan(1e-3 * 0.008);
    }
  }), { numRuns: 50 });
});

describe('the calculation', () => {
  const saltpetre = { salt: 'potassium-nitrate', purity: '99 %' } as const;
  const codes = (input: Parameters<typeof weighSheetInterval>[0]) => weighSheetInterval(input).notes.map(({ code, field }) => [code, field]);

  test('names what may be off by more than a tenth, and what helps', () => {
    const sheet = { volume: '100 L', portions: [{ salt: 'sodium-molybdate-dihydrate', purity: '99 %', mass: '0.1 g' }], scales: [{ division: '0.1 g' }] } as const;
    expect(codes(sheet)).toEqual([['wide-interval', 'nutrientIntervals.Na'], ['wide-interval', 'nutrientIntervals.Mo']]);
    expect(weighSheetInterval(sheet).notes[0]!.text).toContain('from the scale: weigh a larger amount');
    expect(codes({ ...sheet, scales: [{ division: '1 mg' }] })).toEqual([]);
  });

  test('reads each portion on the finest scale that carries it', () => {
    const relative = (mass: '10 g' | '500 g') => {
      const { K } = weighSheetInterval({ volume: '100 L', portions: [{ ...saltpetre, mass }], scales: [{ division: '0.01 g', maximumLoad: '100 g' }, { division: '1 g' }] }).nutrientIntervals;
      return K!.mostConcentration.si / K!.massConcentration.si - 1;
    };
    expect(relative('10 g')).toBeCloseTo(0.005 / 10, 12);
    expect(relative('500 g')).toBeCloseTo(0.5 / 500, 12);
    const { K } = weighSheetInterval({ volume: '100 L', portions: [{ ...saltpetre, mass: '10 g', division: '2 g' }], scales: [{ division: '0.01 g' }] }).nutrientIntervals;
    expect(K!.mostConcentration.si / K!.massConcentration.si - 1).toBeCloseTo(1 / 10, 12);
  });

  test('takes the middle of a range for the purity, and says nothing of a usual one', () => {
    const ranged = { volume: '100 L', portions: [{ salt: 'potassium-nitrate', purityRange: ['96 %', '98 %'], mass: '50 g' }] } as const;
    expect(weighSheetInterval(ranged).nutrientIntervals.K!.massConcentration.in('mg/L')).toBeCloseTo((500 * 0.97 * 39.0983) / 101.1023, 10);
    expect(codes(ranged)).toEqual([]);
    expect(codes({ ...ranged, portions: [{ salt: 'potassium-nitrate', mass: '50 g' }] })).toEqual([['usual-purity', 'portions']]);
  });

  test('takes the tolerance of a label for that of a stated purity, which ends at the pure substance', () => {
    const { K } = weighSheetInterval({ volume: '100 L', portions: [{ ...saltpetre, labelTolerance: '5 %', mass: '50 g' }] }).nutrientIntervals;
    expect(K!.leastConcentration.si / K!.massConcentration.si).toBeCloseTo(0.95, 12);
    expect(K!.mostConcentration.si / K!.massConcentration.si).toBeCloseTo(1 / 0.99, 12);
    expect(K!.mainSource).toBe('purity');
  });

  test('moves total nitrogen by its own figure where a label states one, and by its forms where not', () => {
    const nitrogen = (label: object) => weighSheetInterval({ volume: '100 L', portions: [{ label, labelTolerance: '6 %', mass: '100 g' }] }).nutrientIntervals.N!;
    expect(nitrogen({ N: 0.2, 'N-NO3': 0.1, 'N-NH4': 0.1 }).standardUncertainty.in('mg/L')).toBeCloseTo((200 * 0.06) / Math.sqrt(3), 10);
    expect(nitrogen({ 'N-NO3': 0.1, 'N-NH4': 0.1 }).standardUncertainty.in('mg/L')).toBeCloseTo((100 * 0.06 * Math.SQRT2) / Math.sqrt(3), 10);
  });

  test('tells the acid that is left, and how far alkalinity may go', () => {
    const sheet = { volume: '100 L', portions: [{ salt: 'nitric-acid', purityRange: ['59 %', '61 %'], mass: '30 g' }], waterAlkalinity: '3 meq/L' } as const;
    const { HCO3 } = weighSheetInterval(sheet).nutrientIntervals;
    const left = (purity: number) => (3 - (300 * purity) / 63.012) * 61.016;
    expect(HCO3!.leastConcentration.in('mg/L')).toBeCloseTo(left(0.61), 2);
    expect(HCO3!.mostConcentration.in('mg/L')).toBeCloseTo(left(0.59), 2);
    expect(codes(sheet).map(([code]) => code)).toContain('acid');
  });

  test('has no conductivity for a stock too strong for it, and says so', () => {
    const stock = { volume: '1 L', portions: [{ ...saltpetre, mass: '150 g' }] } as const;
    expect(weighSheetInterval(stock)).not.toHaveProperty('conductivityInterval');
    expect(codes(stock)).toContainEqual(['too-strong-for-conductivity', 'conductivityInterval']);
  });

  test('leaves what was not weighed out of the uncertainty', () => {
    const { nutrientIntervals } = weighSheetInterval({ volume: '100 L', volumeTolerance: 0.1, portions: [{ ...saltpetre, mass: '0 g' }], scales: [{ division: '1 g' }], water: { K: '2 mg/L' } });
    expect(nutrientIntervals.K!.standardUncertainty.si).toBe(0);
  });
});
