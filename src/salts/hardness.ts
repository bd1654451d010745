import * as field from '../calculation/field.js';
import type { AddNote } from '../calculation/note.js';
import type { IonAmounts } from '../solution/formulas/concentration.js';
import * as dimensions from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';

interface SeenHardness {
  /** Mol of charge per m3. */
  readonly hardness: number | undefined;
  readonly calciumShare: number;
}

/** Total hardness, and how it is split where neither calcium nor magnesium is stated. */
export const hardnessFields = () => ({
  hardness: field.optional(field.quantity(dimensions.hardness, { limits: ['0 °dH', '560 °dH'] })),
  // Common practice, no source: four moles of calcium to one of magnesium.
  calciumShare: field.withDefault(field.share(), 0.8),
});

/** Amounts (mol/m3) of the ions of a water with calcium or magnesium, where one or both are not stated, from its hardness. */
export function filledFromHardness(amounts: IonAmounts, { hardness, calciumShare }: SeenHardness): IonAmounts {
  if (hardness === undefined) return amounts;
  const total = hardness / 2;
  const { 'Ca2+': calcium, 'Mg2+': magnesium } = amounts;
  if (calcium === undefined && magnesium === undefined) return { ...amounts, 'Ca2+': total * calciumShare, 'Mg2+': total * (1 - calciumShare) };
  return {
    ...amounts,
    ...(calcium === undefined && magnesium! <= total && { 'Ca2+': total - magnesium! }),
    ...(magnesium === undefined && calcium! <= total && { 'Mg2+': total - calcium! }),
  };
}

/** Hardness of a water (mol of charge per m3) from the amounts of its ions (mol/m3): 2 Ca + 2 Mg. */
export const hardnessOfIons = ({ 'Ca2+': calcium = 0, 'Mg2+': magnesium = 0 }: IonAmounts): number => 2 * (calcium + magnesium);

/** A difference between hardness and calcium with magnesium that has to be told: mol/m3, and as a share. Common practice, no source. */
const tellingDifference = { amount: 0.1, share: 0.05 } as const;

/** Says what was taken from the hardness, and where it contradicts the ions. */
export function noteHardness(stated: IonAmounts, { hardness, calciumShare }: SeenHardness, note: AddNote): void {
  if (hardness === undefined) return;
  const total = hardness / 2;
  const { 'Ca2+': calcium, 'Mg2+': magnesium } = stated;
  if (calcium === undefined && magnesium === undefined) {
    note('caution', 'hardness-split', 'calciumShare', `Only the hardness is known: ${writeNumber(calciumShare * 100)} % of it is taken as calcium and the rest as magnesium. Have both measured before you rely on either.`);
    return;
  }
  const sum = (calcium ?? 0) + (magnesium ?? 0);
  const [filled] = calcium === undefined ? ['Calcium'] : magnesium === undefined ? ['Magnesium'] : [];
  if (filled !== undefined && sum <= total) {
    note('info', 'from-hardness', 'hardness', `${filled} is not stated and taken as the rest of the hardness, ${writeNumber(total - sum)} mmol/L.`);
    return;
  }
  const difference = Math.abs(total - sum);
  if (difference <= tellingDifference.amount || difference <= tellingDifference.share * Math.max(total, sum)) return;
  note('caution', 'hardness-contradiction', 'hardness', `The hardness tells of ${writeNumber(total)} mmol/L of calcium and magnesium, their own figures of ${writeNumber(sum)} mmol/L: ${writeNumber(difference)} mmol/L apart. One of them is wrong; the figures of the ions are taken.`);
}
