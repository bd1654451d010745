import type { Ion } from '../solution/ions.js';

/** A pure substance that feeds are made from. */
export interface Salt {
  readonly name: string;
  readonly formula: string;
  /**
   * What one formula unit gives to plenty of water. With the water of crystallisation it adds up to the formula; borax and silicate take
   * water up. Acids count the protons that they lose by pH 6. Nitrogen inside a chelate stays there and feeds nothing.
   */
  readonly ions: { readonly [I in Ion]?: number };
  /**
   * Pure substance in a usual product, a fraction. Common practice, no source: the label of the bag goes before it. Left out where
   * products differ too much to guess (acids, liquids, chelates of varying strength).
   */
  readonly usualPurity?: number;
}

/**
 * Salts, acids, bases and chelates of the trade, a row each.
 *
 * Where small parts count, the label of the bag goes before the formula: of greenhouse-grade calcium nitrate it states 1.1 % of ammonium nitrogen, the
 * double salt has 1.3 %.
 */
export const salts = {
  'calcium-nitrate-tetrahydrate': { name: 'calcium nitrate tetrahydrate', formula: 'Ca(NO3)2·4H2O', ions: { 'Ca2+': 1, 'NO3-': 2 }, usualPurity: 0.99 },
  'calcium-nitrate-anhydrous': { name: 'calcium nitrate, anhydrous', formula: 'Ca(NO3)2', ions: { 'Ca2+': 1, 'NO3-': 2 } },
  'calcium-ammonium-nitrate-decahydrate': { name: 'calcium ammonium nitrate decahydrate (greenhouse grade)', formula: '5Ca(NO3)2·NH4NO3·10H2O', ions: { 'Ca2+': 5, 'NH4+': 1, 'NO3-': 11 }, usualPurity: 0.997 },
  'potassium-nitrate': { name: 'potassium nitrate', formula: 'KNO3', ions: { 'K+': 1, 'NO3-': 1 }, usualPurity: 0.99 },
  'monopotassium-phosphate': { name: 'monopotassium phosphate', formula: 'KH2PO4', ions: { 'K+': 1, 'H2PO4-': 1 }, usualPurity: 0.99 },
  'dipotassium-phosphate': { name: 'dipotassium phosphate', formula: 'K2HPO4', ions: { 'K+': 2, 'HPO4 2-': 1 }, usualPurity: 0.98 },
  'potassium-sulfate': { name: 'potassium sulfate', formula: 'K2SO4', ions: { 'K+': 2, 'SO4 2-': 1 }, usualPurity: 0.96 },
  'potassium-chloride': { name: 'potassium chloride', formula: 'KCl', ions: { 'K+': 1, 'Cl-': 1 }, usualPurity: 0.97 },
  'magnesium-sulfate-heptahydrate': { name: 'magnesium sulfate heptahydrate', formula: 'MgSO4·7H2O', ions: { 'Mg2+': 1, 'SO4 2-': 1 }, usualPurity: 0.99 },
  'magnesium-nitrate-hexahydrate': { name: 'magnesium nitrate hexahydrate', formula: 'Mg(NO3)2·6H2O', ions: { 'Mg2+': 1, 'NO3-': 2 }, usualPurity: 0.98 },
  'ammonium-nitrate': { name: 'ammonium nitrate', formula: 'NH4NO3', ions: { 'NH4+': 1, 'NO3-': 1 }, usualPurity: 0.97 },
  'monoammonium-phosphate': { name: 'monoammonium phosphate', formula: 'NH4H2PO4', ions: { 'NH4+': 1, 'H2PO4-': 1 }, usualPurity: 0.985 },
  'diammonium-phosphate': { name: 'diammonium phosphate', formula: '(NH4)2HPO4', ions: { 'NH4+': 2, 'HPO4 2-': 1 }, usualPurity: 0.98 },
  'ammonium-sulfate': { name: 'ammonium sulfate', formula: '(NH4)2SO4', ions: { 'NH4+': 2, 'SO4 2-': 1 }, usualPurity: 0.99 },
  'urea': { name: 'urea', formula: 'CO(NH2)2', ions: { 'CO(NH2)2': 1 }, usualPurity: 0.985 },
  'calcium-chloride-anhydrous': { name: 'calcium chloride, anhydrous', formula: 'CaCl2', ions: { 'Ca2+': 1, 'Cl-': 2 }, usualPurity: 0.955 },
  'calcium-chloride-dihydrate': { name: 'calcium chloride dihydrate', formula: 'CaCl2·2H2O', ions: { 'Ca2+': 1, 'Cl-': 2 }, usualPurity: 1 },
  'sodium-chloride': { name: 'sodium chloride', formula: 'NaCl', ions: { 'Na+': 1, 'Cl-': 1 }, usualPurity: 0.99 },
  'sodium-nitrate': { name: 'sodium nitrate', formula: 'NaNO3', ions: { 'Na+': 1, 'NO3-': 1 }, usualPurity: 0.98 },
  'sodium-dihydrogen-phosphate-dihydrate': { name: 'sodium dihydrogen phosphate dihydrate', formula: 'NaH2PO4·2H2O', ions: { 'Na+': 1, 'H2PO4-': 1 } },
  'potassium-hydroxide': { name: 'potassium hydroxide', formula: 'KOH', ions: { 'K+': 1, 'OH-': 1 } },
  'potassium-bicarbonate': { name: 'potassium bicarbonate', formula: 'KHCO3', ions: { 'K+': 1, 'HCO3-': 1 }, usualPurity: 0.99 },
  'potassium-carbonate': { name: 'potassium carbonate', formula: 'K2CO3', ions: { 'K+': 2, 'CO3 2-': 1 }, usualPurity: 0.99 },
  'potassium-metasilicate': { name: 'potassium metasilicate', formula: 'K2SiO3', ions: { 'K+': 2, 'H4SiO4': 1, 'OH-': 2 } },
  'phosphoric-acid': { name: 'phosphoric acid', formula: 'H3PO4', ions: { 'H+': 1, 'H2PO4-': 1 } },
  'nitric-acid': { name: 'nitric acid', formula: 'HNO3', ions: { 'H+': 1, 'NO3-': 1 } },
  'sulfuric-acid': { name: 'sulfuric acid', formula: 'H2SO4', ions: { 'H+': 2, 'SO4 2-': 1 } },
  'citric-acid-anhydrous': { name: 'citric acid, anhydrous', formula: 'C6H8O7', ions: { 'H+': 2, 'C6H6O7 2-': 1 }, usualPurity: 0.995 },
  'citric-acid-monohydrate': { name: 'citric acid monohydrate', formula: 'C6H8O7·H2O', ions: { 'H+': 2, 'C6H6O7 2-': 1 } },
  'iron-sulfate-heptahydrate': { name: 'iron(II) sulfate heptahydrate', formula: 'FeSO4·7H2O', ions: { 'Fe2+': 1, 'SO4 2-': 1 }, usualPurity: 0.98 },
  'manganese-sulfate-monohydrate': { name: 'manganese sulfate monohydrate', formula: 'MnSO4·H2O', ions: { 'Mn2+': 1, 'SO4 2-': 1 }, usualPurity: 0.98 },
  'manganese-sulfate-tetrahydrate': { name: 'manganese sulfate tetrahydrate', formula: 'MnSO4·4H2O', ions: { 'Mn2+': 1, 'SO4 2-': 1 }, usualPurity: 1 },
  'manganese-chloride-tetrahydrate': { name: 'manganese chloride tetrahydrate', formula: 'MnCl2·4H2O', ions: { 'Mn2+': 1, 'Cl-': 2 } },
  'zinc-sulfate-heptahydrate': { name: 'zinc sulfate heptahydrate', formula: 'ZnSO4·7H2O', ions: { 'Zn2+': 1, 'SO4 2-': 1 }, usualPurity: 1 },
  'zinc-sulfate-monohydrate': { name: 'zinc sulfate monohydrate', formula: 'ZnSO4·H2O', ions: { 'Zn2+': 1, 'SO4 2-': 1 }, usualPurity: 0.97 },
  'copper-sulfate-pentahydrate': { name: 'copper sulfate pentahydrate', formula: 'CuSO4·5H2O', ions: { 'Cu2+': 1, 'SO4 2-': 1 }, usualPurity: 0.98 },
  'boric-acid': { name: 'boric acid', formula: 'H3BO3', ions: { 'H3BO3': 1 }, usualPurity: 0.995 },
  'borax-decahydrate': { name: 'borax decahydrate', formula: 'Na2B4O7·10H2O', ions: { 'Na+': 2, 'H3BO3': 4, 'OH-': 2 }, usualPurity: 0.997 },
  'sodium-molybdate-dihydrate': { name: 'sodium molybdate dihydrate', formula: 'Na2MoO4·2H2O', ions: { 'Na+': 2, 'MoO4 2-': 1 }, usualPurity: 0.98 },
  'ammonium-heptamolybdate-tetrahydrate': { name: 'ammonium heptamolybdate tetrahydrate', formula: '(NH4)6Mo7O24·4H2O', ions: { 'NH4+': 6, 'MoO4 2-': 7, 'H+': 8 }, usualPurity: 0.994 },
  'iron-edta-anhydrous': { name: 'sodium iron(III) EDTA, anhydrous', formula: 'C10H12FeN2NaO8', ions: { 'Na+': 1, 'FeEDTA-': 1 } },
  'iron-edta-trihydrate': { name: 'sodium iron(III) EDTA trihydrate', formula: 'C10H12FeN2NaO8·3H2O', ions: { 'Na+': 1, 'FeEDTA-': 1 }, usualPurity: 0.98 },
  'iron-dtpa': { name: 'sodium hydrogen iron(III) DTPA', formula: 'C14H19FeN3NaO10', ions: { 'Na+': 1, 'FeHDTPA-': 1 } },
  'iron-eddha': { name: 'sodium iron(III) EDDHA', formula: 'C18H16FeN2NaO6', ions: { 'Na+': 1, 'FeEDDHA-': 1 } },
  'iron-hbed': { name: 'sodium iron(III) HBED', formula: 'C20H20FeN2NaO6', ions: { 'Na+': 1, 'FeHBED-': 1 } },
} as const satisfies Readonly<Record<string, Salt>>;

/** Key of a salt of the table. */
export type SaltKey = keyof typeof salts;
