/** What is stated ion by ion, in mmol/L or, of the whole ion, in mg/L. */
import * as field from '../calculation/field.js';
import { amountFromIonMass, type IonAmounts } from '../solution/formulas/concentration.js';
import { ions, type Ion } from '../solution/ions.js';
import { waterItem, waterItemKeys } from '../solution/water-items.js';
import { amountConcentration, massConcentration } from '../units/dimensions.js';
import type { Quantity } from '../units/quantity.js';
import { suggest } from '../units/read.js';

/** Keys of the table of ions. */
export const ionKeys = (): readonly Ion[] => Object.keys(ions) as Ion[];

/** For a name that is none, the ion that carries what an analysis states by it. */
export const ionHint = (written: string): string | undefined => {
  const key = waterItemKeys().find((one) => one.toLowerCase() === written.toLowerCase());
  return suggest(key === undefined ? [] : [waterItem(key).carrier]);
};

/** Concentrations by ion. */
export const ionRecord = (most: '200 mmol/L' | '2 mol/L' = '2 mol/L', mostMass: '20 g/L' | '200 g/L' = '200 g/L') =>
  field.withNameHints(field.record(ionKeys(), field.either(
    field.writtenQuantity(amountConcentration, { limits: ['0 mmol/L', most] }),
    field.writtenQuantity(massConcentration, { limits: ['0 mg/L', mostMass] }),
  )), ionHint);

/** Concentrations by ion as calculations see them. */
export type StatedIons = { readonly [I in Ion]?: Quantity<'amountConcentration'> | Quantity<'massConcentration'> };

/** The same as amounts, mol/m3; none where nothing is stated. */
export const amountsStated = (stated: StatedIons = {}): IonAmounts =>
  Object.fromEntries((Object.entries(stated) as [Ion, NonNullable<StatedIons[Ion]>][]).map(([ion, { dimension, si }]) => [ion, dimension === 'massConcentration' ? amountFromIonMass(ion, si) : si]));
