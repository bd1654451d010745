import { describe, expect, test } from 'vitest';
import { stockTanks } from '../../src/salts/index.js';

type Input = Parameters<typeof stockTanks>[0];
type Portions = Input['portions'];

const tunnel = { volume: '1000 L', dilution: '1:100', stockVolume: '20 L', tankTemperature: '8 °C' } as const;
const run = (portions: Portions, more: Partial<Input> = {}) => stockTanks({ ...tunnel, portions, ...more });
const named = (result: ReturnType<typeof stockTanks>) => result.tanks.map(({ portions }) => portions.map(({ name }) => name));
const codes = (result: ReturnType<typeof stockTanks>, severity?: string) => result.notes.filter((note) => severity === undefined || note.severity === severity).map(({ code }) => code);

const calcium = { salt: 'calcium-nitrate-tetrahydrate', mass: '700 g' } as const;
const nitrate = { salt: 'potassium-nitrate', mass: '300 g' } as const;
const phosphate = { salt: 'monopotassium-phosphate', mass: '160 g' } as const;
const epsom = { salt: 'magnesium-sulfate-heptahydrate', mass: '250 g' } as const;
const nitric = { salt: 'nitric-acid', purity: '60 %', mass: '100 g' } as const;
const chelate = { salt: 'iron-edta-trihydrate', mass: '12 g', solubility: '90 g/L' } as const;
const silicate = { salt: 'potassium-metasilicate', purity: '30 %', mass: '50 g' } as const;
const manganese = { salt: 'manganese-sulfate-monohydrate', mass: '1.7 g' } as const;
const boric = { salt: 'boric-acid', mass: '1.4 g' } as const;
const molybdate = { salt: 'sodium-molybdate-dihydrate', mass: '0.1 g' } as const;

// What goes together is common practice, no source.
describe('a proposal', () => {
  test('keeps calcium from sulfate and phosphate, acid from the chelate, trace elements with the sulfates', () => {
    const result = run([calcium, nitrate, phosphate, epsom, nitric, chelate, manganese, boric, molybdate]);
    expect(named(result)).toEqual([
      ['potassium-nitrate', 'calcium-nitrate-tetrahydrate', 'iron-edta-trihydrate'],
      ['nitric-acid', 'monopotassium-phosphate', 'magnesium-sulfate-heptahydrate', 'boric-acid', 'manganese-sulfate-monohydrate', 'sodium-molybdate-dihydrate'],
    ]);
    expect(codes(result, 'danger')).toEqual([]);
    expect(codes(result)).toEqual(expect.arrayContaining(['backflow', 'acid', 'dissolving-order', 'cools-as-it-dissolves', 'rough-saturation-indices']));
  });

  test('needs one tank where nothing is in the way', () => {
    expect(named(run([phosphate, epsom, nitrate]))).toHaveLength(1);
    expect(named(run([calcium, nitrate, chelate]))).toHaveLength(1);
  });

  test('gives silicate a tank of its own, and says so where there is none', () => {
    const result = run([calcium, nitrate, epsom, silicate, chelate]);
    expect(named(result).at(-1)).toEqual(['potassium-metasilicate']);
    expect(result.notes.find(({ code }) => code === 'too-few-tanks')).toMatchObject({ severity: 'danger', field: 'tanksAvailable' });
    expect(codes(run([calcium, nitrate, epsom, silicate, chelate], { tanksAvailable: 3 }), 'danger')).toEqual([]);
    expect(codes(run([calcium, epsom], { tanksAvailable: 1 }), 'danger')).toEqual(['too-few-tanks']);
  });

  // 12 °C: about 188 g of potassium nitrate dissolve in a litre of stock; 200 g/L of feed strength asks for 250 g/L.
  test('splits what one tank does not hold', () => {
    const much = { salt: 'potassium-nitrate', purity: 1, mass: '2500 g' } as const;
    const result = run([{ ...calcium, mass: '300 g' }, much, { ...epsom, mass: '200 g' }], { tankTemperature: '12 °C' });
    expect(named(result)).toEqual([['potassium-nitrate', 'calcium-nitrate-tetrahydrate'], ['magnesium-sulfate-heptahydrate', 'potassium-nitrate']].map((names) => expect.arrayContaining(names) as string[]));
    const parts = result.tanks.map(({ portions }) => portions.find(({ name }) => name === 'potassium-nitrate')!.mass.in('g'));
    expect(parts[0]! + parts[1]!).toBeCloseTo(2500 * 100 / 1000 * 20, 9);
    expect(result.tanks[0]!.solubilityShare.si).toBeCloseTo(result.tanks[1]!.solubilityShare.si, 12);
    expect(codes(result, 'danger')).toEqual([]);
  });

  test('says at what dilution a salt would dissolve that does not', () => {
    const sulfate = { salt: 'potassium-sulfate', purity: 1, mass: '1500 g' } as const;
    const { notes, tanks } = run([calcium, sulfate]);
    const share = tanks[1]!.portions[0]!.solubilityShare!.si;
    expect(share).toBeGreaterThan(1);
    const told = notes.find(({ code }) => code === 'does-not-dissolve')!;
    expect(told.severity).toBe('danger');
    const dilution = /1:(\d+)/.exec(told.text)![1]!;
    expect(codes(run([calcium, sulfate], { dilution: `1:${dilution}` as '1:66' }), 'danger')).toEqual([]);
    expect(codes(run([calcium, sulfate], { dilution: `1:${Number(dilution) + 2}` as '1:68' }), 'danger')).toEqual(['does-not-dissolve']);
    // A third tank takes half of it.
    expect(codes(run([calcium, sulfate], { tanksAvailable: 3 }), 'danger')).toEqual([]);
  });

  test('warns where salts crowd each other', () => {
    expect(codes(run([phosphate, { salt: 'potassium-sulfate', mass: '700 g' }, nitrate]))).toContain('crowded-tank');
    expect(codes(run([phosphate, epsom]))).not.toContain('crowded-tank');
  });

  test('leaves out what is not weighed', () => {
    expect(named(run([calcium, { ...epsom, mass: '0 g' }]))).toEqual([['calcium-nitrate-tetrahydrate']]);
    expect(run([{ ...calcium, mass: '0 g' }]).tanks).toEqual([]);
  });
});

describe('an allocation that is given', () => {
  const both = (...portions: Portions) => run(portions.map((portion) => ({ ...portion, intoTank: 'A' as const })));

  test.each([
    ['calcium-with-sulfate', 'danger', both(calcium, epsom)],
    ['calcium-with-phosphate', 'danger', both(calcium, phosphate)],
    ['calcium-with-sulfate', 'danger', both({ ...calcium, mass: '1 g' }, manganese)],
    ['alkali-with-acid', 'danger', both(silicate, nitric)],
    ['alkali-with-calcium', 'caution', both(silicate, calcium)],
    ['alkali-with-trace-metal', 'caution', both(silicate, manganese)],
    ['acid-with-chelate', 'caution', both(nitric, chelate)],
    ['calcium-with-molybdate', 'caution', both(calcium, molybdate)],
    ['calcium-with-phosphate', 'danger', run([{ name: 'all in one', label: { Ca: '5 %', P2O5: '10 %' }, mass: '100 g', intoTank: 'B' }])],
  ])('%s is a %s', (code, severity, { notes }) => {
    expect(notes).toEqual(expect.arrayContaining([expect.objectContaining({ code, severity, field: 'tanks[0]' })]));
  });

  test('stays as it is', () => {
    const result = run([{ ...calcium, intoTank: 'C' }, { ...nitrate, intoTank: 'A' }, { ...epsom, intoTank: 'A' }]);
    expect(result.tanks.map(({ name }) => name)).toEqual(['A', 'C']);
    expect(codes(result, 'danger')).toEqual([]);
  });

  test('is given for all or for none', () => {
    expect(stockTanks.try({ ...tunnel, portions: [{ ...calcium, intoTank: 'A' }, epsom] })).toMatchObject({ ok: false, error: { problems: [{ path: 'portions[1].intoTank' }] } });
  });
});

test('a product without a known solubility asks for its data sheet', () => {
  const { solubility: _, ...unknown } = chelate;
  expect(run([unknown]).notes.find(({ code }) => code === 'unknown-solubility')!.text).toContain('iron-edta-trihydrate');
  expect(codes(run([chelate]))).not.toContain('unknown-solubility');
  expect(codes(run([{ salt: 'urea', mass: '100 g' }]))).toContain('rough-solubility');
  expect(codes(run([{ salt: 'urea', mass: '100 g', solubility: '700 g/L' }]))).not.toContain('rough-solubility');
});

test('the diluted feed is the recipe in its water, whatever the tanks', () => {
  const portions = [calcium, phosphate, epsom];
  const water = { Ca: '60 mg/L', S: '20 mg/L' } as const;
  expect(run(portions, { water }).saturationIndices).toEqual(run(portions, { water, dilution: '1:50', stockVolume: '5 L', tanksAvailable: 4 }).saturationIndices);
  expect(run(portions, { pH: 7.5 }).notes.find(({ code, field }) => code === 'settles-out' && field === 'saturationIndices')!.text).toContain('brushite');
  expect(codes(run(portions, { pH: 5.8 }))).not.toContain('settles-out');
});

test('two portions of one name, or a label without one, are problems', () => {
  expect(stockTanks.try({ ...tunnel, portions: [calcium, calcium] })).toMatchObject({ ok: false, error: { problems: [{ path: 'portions[1].name' }] } });
  expect(stockTanks.try({ ...tunnel, portions: [{ label: { Fe: '6 %' }, mass: '1 g' }] })).toMatchObject({ ok: false, error: { problems: [{ path: 'portions[0].name' }] } });
  expect(stockTanks.try({ ...tunnel, portions: [{ ...calcium, mass: '100 kg' }] })).toMatchObject({ ok: false, error: { problems: [{ path: 'dilution' }] } });
});
