/** What growers get wrong about salts, bags and formulas: one InputError each, with its place and what was perhaps meant. */
import { describe, expect, test } from 'vitest';
import { isInputError } from '../../src/calculation/index.js';
import { dissolve, labelAnalysis, molarMass, weighOut, weighSheetInterval } from '../../src/salts/index.js';

/** Path and hint of every problem. */
function problemsOf(attempt: ReturnType<typeof dissolve.try | typeof labelAnalysis.try | typeof molarMass.try | typeof weighOut.try | typeof weighSheetInterval.try>): readonly (readonly [string, string | undefined])[] {
  if (attempt.ok || !isInputError(attempt.error)) throw new Error('was taken');
  return attempt.error.problems.map(({ path, hint }) => [path, hint]);
}

const hinting = (text: string): unknown => expect.stringContaining(text);

describe.each([
  ['dissolve', (product: object) => dissolve.try({ volume: '10 L', portions: [{ mass: '5 g', ...product }] }), 'portions[0]'],
  ['weighSheetInterval', (product: object) => weighSheetInterval.try({ volume: '10 L', portions: [{ mass: '5 g', ...product }] }), 'portions[0]'],
  ['weighOut', (product: object) => weighOut.try({ volume: '10 L', targets: { K: '100 mg/L' }, salts: [{ name: 'bag', ...product }] }), 'salts[0]'],
] as const)('%s', (_, attempt, at) => {
  const saltpetre = { salt: 'potassium-nitrate' };
  test.each([
    ['a salt that nobody knows', { salt: 'unobtainium' }, '.salt', undefined],
    ['a salt by a slip of the pen', { salt: 'pottasium-nitrate' }, '.salt', "did you mean 'potassium-nitrate'"],
    ['a salt by its formula', { salt: 'KNO3' }, '.salt', "did you mean 'potassium-nitrate'"],
    ['a purity of zero', { ...saltpetre, purity: 0 }, '.purity', 'read it off the container'],
    ['a purity of zero in words', { ...saltpetre, purity: '0 %' }, '.purity', 'read it off the container'],
    ['a purity in percent without the sign', { ...saltpetre, purity: 98 }, '.purity', "did you mean '98 %'"],
    ['a purity past the pure substance', { ...saltpetre, purity: '101 %' }, '.purity', 'read it off the container'],
    ['a range upside down', { ...saltpetre, purityRange: ['99 %', '97 %'] }, '.purityRange', 'swap them?'],
    ['a range of one end', { ...saltpetre, purityRange: ['99 %'] }, '.purityRange', undefined],
    ['a range from zero', { ...saltpetre, purityRange: [0, 0.98] }, '.purityRange[0]', 'read it off the container'],
    ['a purity outside its range', { ...saltpetre, purity: '95 %', purityRange: ['97 %', '99 %'] }, '.purity', 'leave one of them out'],
    ['two statements of what is open', { ...saltpetre, purityRange: ['97 %', '99 %'], labelTolerance: '5 %' }, '.labelTolerance', undefined],
    ['a tolerance of more than half', { label: { K2O: '46 %' }, labelTolerance: '51 %' }, '.labelTolerance', undefined],
    ['a label past the whole', { label: { N: '46 %', K2O: '70 %' } }, '.label', 'the elements come to 104.1 %'],
    ['oxides past the whole', { label: { P2O5: '60 %', K2O: '60 %' } }, '.label', 'the figures come to 120 %'],
    ['a label in percent without the sign', { label: { K2O: 46 } }, '.label.K2O', "did you mean '46 %'"],
    ['a label that states a nutrient twice', { label: { K: '38 %', K2O: '46 %' } }, '.label.K2O', 'state the same nutrient'],
    ['a purity beside a label', { label: { K2O: '46 %' }, purity: '98 %' }, '.purity', 'a label already states'],
    ['a range beside a label', { label: { K2O: '46 %' }, purityRange: ['97 %', '99 %'] }, '.purityRange', 'a label already states'],
    ['an acid of no known strength', { salt: 'phosphoric-acid' }, '.purity', 'read it off the container'],
  ])('refuses %s', (_what, product, place, hint) => {
    expect(problemsOf(attempt(product))).toEqual([[`${at}${place}`, hint === undefined ? undefined : hinting(hint)]]);
  });

  test('takes the range of an acid for its strength', () => {
    expect(attempt({ salt: 'phosphoric-acid', purityRange: ['74 %', '76 %'] }).ok).toBe(true);
  });
});

test.each([
  ['K2(SO4', 'character 3: this bracket is not closed'],
  ['KNo3', "character 2: there is no atomic weight for 'No'"],
  ['kNO3', 'character 1'],
  ['Ca(NO3)2·', 'character 10'],
  ['SO4 2-', 'character 5'],
  ['KNO3 0.5', 'character 6'],
])('a formula such as %s is refused with the place', (formula, hint) => {
  expect(problemsOf(molarMass.try({ formula }))).toEqual([['formula', hinting(hint)]]);
});

test('a label past the whole is refused by its analysis', () => {
  expect(problemsOf(labelAnalysis.try({ label: { N: '60 %', P2O5: '60 %', K2O: '60 %' } }))).toEqual([['label', hinting('the elements come to')]]);
});
