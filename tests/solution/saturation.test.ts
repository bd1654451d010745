import { describe, expect, test } from 'vitest';
import { compositionOfFormula } from '../../src/salts/index.js';
import { aqueousSpecies, ions, saturation, saturationIndices, solids, speciate, type Solid, type SolidKey } from '../../src/solution/index.js';

const codes = (result: { readonly notes: readonly { readonly code: string; readonly severity: string }[] }) => result.notes.map(({ code, severity }) => `${severity} ${code}`);

describe('the table of solids', () => {
  /** Atoms and charge of a dissolved species, by what it forms from. */
  const partsOf = (species: string): Record<string, number> => {
    const own = (ions as Readonly<Record<string, { readonly charge: number; readonly composition: object } | undefined>>)[species];
    if (own) return { ...own.composition, charge: own.charge };
    const formation = (aqueousSpecies as unknown as Readonly<Record<string, { readonly from: Readonly<Record<string, number>> }>>)[species]!;
    const sum: Record<string, number> = {};
    for (const [part, order] of Object.entries(formation.from)) for (const [atom, count] of Object.entries(partsOf(part))) sum[atom] = (sum[atom] ?? 0) + order * count;
    return sum;
  };

  test.each(Object.entries<Solid>(solids))('%s dissolves into what it is made of, without charge', (_, { formula, gives, water = 0 }) => {
    const sum: Record<string, number> = { H: 2 * water, O: water, charge: 0 };
    for (const [species, order] of Object.entries(gives)) for (const [atom, count] of Object.entries(partsOf(species))) sum[atom] = (sum[atom] ?? 0) + order * count;
    expect(Object.fromEntries(Object.entries(sum).filter(([, count]) => count !== 0))).toEqual(compositionOfFormula(formula));
  });
});

// Three public data bases let 14.9, 15.7 and 16.0 mmol/kg of gypsum dissolve at 25 °C.
test('gypsum comes into balance where public data bases have it', () => {
  const gypsum = (molality: number) => saturationIndices(speciate({ 'Ca2+': molality, 'SO4 2-': molality }, { temperature: 298.15 }), 298.15).gypsum!;
  expect(gypsum(0.0149)).toBeLessThan(0);
  expect(gypsum(0.01605)).toBeGreaterThan(0);
});

describe('what a grower is told', () => {
  const water = { 'Ca2+': '2.4 mmol/L', 'Mg2+': '0.6 mmol/L', 'HCO3-': '4.8 mmol/L', 'Cl-': '1.2 mmol/L' } as const;

  test('a feed in balance is told nothing but slow solids', () => {
    expect(codes(saturation(saturation.example))).toEqual(['info slow-solids']);
  });

  test('hard water scales when it is warm and its pH rises', () => {
    expect(codes(saturation({ ions: water, pH: 7.2, waterTemperature: '12 °C' }))).not.toContain('caution settles-out');
    expect(codes(saturation({ ions: water, pH: 7.5, waterTemperature: '12 °C' }))).toContain('info close-to-saturation');
    expect(codes(saturation({ ions: water, pH: 8.2, waterTemperature: '25 °C' }))).toContain('caution settles-out');
  });

  test('a concentrate is told to be rough', () => {
    const strong = saturation({ ions: { 'Ca2+': '0.3 mol/L', 'NO3-': '0.6 mol/L', 'K+': '0.4 mol/L', 'SO4 2-': '0.2 mol/L' }, pH: 5 });
    expect(codes(strong)).toContain('caution rough-saturation-indices');
    expect(codes(strong)).toContain('caution settles-out');
  });

  test('solids that form slowly never ask for action', () => {
    const { saturationIndices: indices, notes } = saturation({ nutrients: { Ca: '160 mg/L', P: '45 mg/L', K: '200 mg/L' }, pH: 6.5 });
    expect(indices.hydroxyapatite).toBeGreaterThan(2);
    const slow = (Object.entries(solids) as [SolidKey, Solid][]).filter(([, { forms }]) => forms === 'slowly').map(([, { name }]) => name);
    for (const { severity, text } of notes) if (slow.some((name) => text.includes(name))) expect(severity).toBe('info');
  });
});

test('what forms no solid, or is stronger than a solution can be, is refused', () => {
  expect(saturation.try({ ions: { 'K+': '1 mmol/L', 'NO3-': '1 mmol/L' }, pH: 6 })).toMatchObject({ ok: false, error: { problems: [{ path: 'ions' }] } });
  expect(saturation.try({ ions: { 'Ca2+': '2 mol/L', 'Mg2+': '2 mol/L', 'SO4 2-': '2 mol/L' }, pH: 6 })).toMatchObject({ ok: false, error: { problems: [{ path: 'ions' }] } });
});
