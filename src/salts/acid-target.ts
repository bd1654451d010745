import type { Solving } from '../calculation/calculation.js';
import type { Root } from '../numerics/roots.js';
import { writeNumber } from '../units/write.js';
import type { AcidWater } from './acid-water.js';
import { acidForAlkalinity, acidForPH, type TitratingAcid } from './formulas/acid-titration.js';

/** The dose that leaves an alkalinity (mol/m3), mol per kg of water; one that the water does not have is refused. */
export function doseForAlkalinity({ alkalinity, density }: AcidWater, { protons }: TitratingAcid, target: number, { refuse }: Solving): Pick<Root, 'value' | 'steps'> {
  const present = alkalinity * density;
  if (target > present) refuse('targetAlkalinity', `an alkalinity below the ${writeNumber(present)} meq/L of the water`, `${writeNumber(target)} meq/L`, 'acid only lowers it');
  return { value: acidForAlkalinity(alkalinity, target / density, protons), steps: 0 };
}

/** The dose that brings a pH, mol per kg of water; one that the water is below, or that the acid does not reach, is refused. */
export function doseForPH(water: AcidWater, acid: TitratingAcid, target: number, path: string, { refuse }: Solving): Root {
  const { presentPH, carbonDioxide } = water;
  if (target > presentPH) refuse(path, `a pH of at most the ${writeNumber(presentPH)} of the water${carbonDioxide === undefined ? '' : ' in balance with the air'}`, String(target), 'acid only lowers it');
  return acidForPH(water, acid, target) ?? refuse(path, 'a pH that 1 mol/L of this acid reaches', String(target));
}
