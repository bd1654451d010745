import { describe, expect, test } from 'vitest';
import { compositionOfFormula, parseChemicalFormula } from '../../src/salts/index.js';

describe('a chemical formula', () => {
  test.each([
    ['Ca(NO3)2·4H2O', { Ca: 1, N: 2, O: 10, H: 8 }, 4],
    ['Ca(NO₃)₂·4H₂O', { Ca: 1, N: 2, O: 10, H: 8 }, 4],
    ['5Ca(NO3)2·NH4NO3·10H2O', { Ca: 5, N: 12, O: 43, H: 24 }, 10],
    ['5Ca(NO3)2.NH4NO3.10H2O', { Ca: 5, N: 12, O: 43, H: 24 }, 10],
    ['5 Ca(NO3)2 * NH4NO3 * 10 H2O', { Ca: 5, N: 12, O: 43, H: 24 }, 10],
    [' MgSO4.7H2O ', { Mg: 1, S: 1, O: 11, H: 14 }, 7],
    ['CaSO4·0.5H2O', { Ca: 1, S: 1, O: 4.5, H: 1 }, 0.5],
    ['CaSO4.0.5H2O', { Ca: 1, S: 1, O: 4.5, H: 1 }, 0.5],
    ['K2CO3.1.5H2O', { K: 2, C: 1, O: 4.5, H: 3 }, 1.5],
    ['[Co(NH3)6]Cl3', { Co: 1, N: 6, H: 18, Cl: 3 }, 0],
    ['K3{Fe[(C)(N)]6}', { K: 3, Fe: 1, C: 6, N: 6 }, 0],
    ['CO(NH2)2', { C: 1, O: 1, N: 2, H: 4 }, 0],
    ['Co', { Co: 1 }, 0],
    ['H2O', { H: 2, O: 1 }, 0],
  ])('%s', (text, composition, water) => {
    expect(parseChemicalFormula(text)).toEqual({ ok: true, composition, water });
  });

  test.each([
    ['', 0, 'missing'],
    ['   ', 3, 'missing'],
    ['kno3', 0, 'capital'],
    ['KNo3', 1, "'No'"],
    ['NaCl·', 5, 'missing'],
    ['NaCl··H2O', 5, "'·'"],
    ['·H2O', 0, "'·'"],
    ['4', 1, 'missing'],
    ['Ca(NO3', 2, 'not closed'],
    ['Ca(NO3]2', 6, "']'"],
    ['CaNO3)2', 5, "')'"],
    ['Ca()2', 3, "')'"],
    ['Ca0', 2, 'at least 1'],
    ['0Ca', 0, 'at least 1'],
    ['Ca99999', 2, 'at most 9999'],
    ['NO3-', 3, 'charge'],
    ['Ca+2', 2, 'charge'],
    ['K N', 2, "'N'"],
    ['Ca😀', 2, "'😀'"],
    ['constructor', 0, 'capital'],
    ['C'.repeat(201), 200, 'at most 200'],
    ['('.repeat(11), 10, 'at most 10'],
  ])('%s is refused at %i: %s', (text, position, message) => {
    const reading = parseChemicalFormula(text);
    expect(reading).toMatchObject({ ok: false, position });
    if (!reading.ok) expect(reading.message).toContain(message);
  });

  test('says where it is wrong when it is taken to be right', () => {
    expect(() => compositionOfFormula('KnO3')).toThrow(new SyntaxError("formula 'KnO3', character 1: there is no atomic weight for 'Kn'"));
  });
});
