import { bracketedRoot, type Root } from '../../numerics/roots.js';
import type { Component } from '../../solution/aqueous-species.js';
import { speciate, type ComponentTotals, type Speciation } from '../../solution/formulas/speciation.js';

/** A water that acid goes into, as far as its acidity is concerned, per kg of water. */
export interface TitratedWater {
  /** mol/kg. A closed water has its inorganic carbon among them (as HCO3-), an open one has not. */
  readonly totals: ComponentTotals;
  /** mol of charge per kg, counted from CO2, H2PO4-, NH4+ and hydrogen citrate. */
  readonly alkalinity: number;
  /** K. */
  readonly temperature: number;
  /** Partial pressure, Pa, of the carbon dioxide that an open water stays in balance with; a closed one keeps its carbon. */
  readonly carbonDioxide?: number;
}

/** What a mole of acid brings: one of its anion, and the protons that it has lost when it stands as that. */
export interface TitratingAcid {
  readonly anion: Exclude<Component, 'H+'>;
  readonly protons: number;
}

/** Inorganic carbon beyond the alkalinity, mol/kg, that no open vessel holds: cold water under pure carbon dioxide takes up less. */
const mostDissolvedGas = 0.08;

/**
 * A closed water with the inorganic carbon that its pH and alkalinity (mol of charge per kg) tell of: the total at which its species add up to
 * that alkalinity at that pH.
 *
 * Where they have more without any carbon (hydrogen phosphate at pH 7 brings its own), there is none, and the alkalinity is the one that they
 * have. Undefined where it would take more carbon dioxide than water holds: there is next to no bicarbonate at pH 4.
 *
 * @param others totals without carbon, mol/kg
 * @param temperature K
 * @example closedWater({ 'Ca2+': 0.0015 }, 0.003, 7.5, 293.15)!.totals['HCO3-'] // => 0.0032, of it 0.2 mmol/kg carbon dioxide
 */
export function closedWater(others: ComponentTotals, alkalinity: number, pH: number, temperature: number): TitratedWater | undefined {
  const miss = (carbon: number): number => speciate({ ...others, 'HCO3-': carbon }, { temperature, pH }).alkalinity - alkalinity;
  const without = miss(0);
  if (without >= 0) return { totals: others, alkalinity: alkalinity + without, temperature };
  const most = Math.max(alkalinity, 0) + mostDissolvedGas;
  if (miss(most) < 0) return undefined;
  return { totals: { ...others, 'HCO3-': bracketedRoot(miss, 0, most).value }, alkalinity, temperature };
}

/** The same water with its carbon given over to the air, whose carbon dioxide has a partial pressure in Pa. */
export function airedWater({ totals, alkalinity, temperature }: TitratedWater, carbonDioxide: number): TitratedWater {
  const { 'HCO3-': _given, ...others } = totals;
  return { totals: others, alkalinity, temperature, carbonDioxide };
}

/**
 * The water after a dose of acid (mol per kg of water): its anion comes in, its protons go off the alkalinity.
 *
 * The little volume of the acid itself is not counted: 0.02 % of the water for 3 mmol/kg of a strong one.
 */
export function waterWithAcid(water: TitratedWater, { anion, protons }: TitratingAcid, dose: number): TitratedWater {
  return { ...water, totals: { ...water.totals, [anion]: (water.totals[anion] ?? 0) + dose }, alkalinity: water.alkalinity - protons * dose };
}

/**
 * What is dissolved in a water and at what pH, by its totals and alkalinity.
 *
 * @example speciationOfWater({ totals: { 'NO3-': 0.001 }, alkalinity: -0.001, temperature: 298.15 }).pH // => 3.015
 */
export function speciationOfWater({ totals, alkalinity, temperature, carbonDioxide }: TitratedWater): Speciation & { readonly pH: number } {
  const found = speciate(totals, { temperature, alkalinity, ...(carbonDioxide !== undefined && { carbonDioxide }) });
  return { ...found, pH: found.pH! };
}

/** More acid than this, mol per kg of water, is no water to grow with. */
const mostAcid = 1;

/**
 * Acid for a pH, mol per kg of water; none where the water is at that pH or below; undefined where 1 mol/kg does not reach it.
 *
 * The dose x at which the species that are at equilibrium at that pH have the alkalinity that the acid leaves:
 * alkalinity(totals + x, pH) = alkalinity of the water - protons x. With the pH held, no species but the acid's own depends much on x, so a
 * few steps find the root. Residual in mol of charge per kg.
 *
 * @example
 * const hard = closedWater({ 'Ca2+': 0.0015 }, 0.003, 7.5, 293.15)!;
 * acidForPH(hard, { anion: 'NO3-', protons: 1 }, 5.8)!.value // => 0.0023
 */
export function acidForPH(water: TitratedWater, acid: TitratingAcid, pH: number): Root | undefined {
  const { temperature, carbonDioxide } = water;
  const miss = (dose: number): number => {
    const { totals, alkalinity } = waterWithAcid(water, acid, dose);
    return speciate(totals, { temperature, pH, ...(carbonDioxide !== undefined && { carbonDioxide }) }).alkalinity - alkalinity;
  };
  const before = miss(0);
  if (before >= 0) return { value: 0, residual: before, steps: 0 };
  let high = (-1.1 * before) / acid.protons;
  while (high < mostAcid && miss(high) < 0) high *= 4;
  if (high >= mostAcid) {
    high = mostAcid;
    if (miss(high) < 0) return undefined;
  }
  return bracketedRoot(miss, 0, high);
}

/**
 * Acid for an alkalinity, mol in the volume that the alkalinities (mol of charge) are counted in: x = (alkalinity - alkalinity left) / protons.
 *
 * The hand rule of a milliequivalent of acid for a milliequivalent of alkalinity, exact by the meaning of alkalinity. It says nothing of pH: a
 * fifth left of 1 to 6 meq/L, as growers do for pH 5.8, gives pH 5.65 to 5.77 in closed water that came with pH 7.0 to 8.2 (strong acid, 20 °C),
 * and 7.5 to 8.2 once it has stood in the air. Alkalinity that phosphoric and citric acid leave is partly their own, as HPO4-- and citrate.
 *
 * @example acidForAlkalinity(3, 0.6, 2) // => 1.2 of sulfuric acid
 */
export function acidForAlkalinity(alkalinity: number, alkalinityLeft: number, protons: number): number {
  return (alkalinity - alkalinityLeft) / protons;
}
