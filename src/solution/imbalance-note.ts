import type { AddNote } from '../calculation/note.js';
import { writeNumber } from '../units/write.js';
import type { ChargeBalance } from './formulas/concentration.js';

/** Charge, mol/m3, within which cations and anions of a very dilute water may miss each other; from memory, of standard methods of water analysis. */
export const negligibleImbalance = 0.2;

/** Says so where cations and anions miss each other by more than those of a complete analysis; `field` is what they were stated by, or the balance. */
export function noteImbalance({ cations, anions, imbalance, relativeImbalance }: ChargeBalance, field: string, note: AddNote): void {
  const size = Math.abs(relativeImbalance);
  if (size <= 0.05 || Math.abs(imbalance) <= negligibleImbalance) return;
  const charges = `Cations come to ${writeNumber(cations)} meq/L and anions to ${writeNumber(anions)} meq/L`;
  if (size <= 0.1) note('info', 'charge-imbalance', field, `${charges}, more than 5 % apart: a complete analysis is closer.`);
  else note('caution', 'charge-imbalance', field, `${charges}, more than 10 % apart: an ion is missing, or a figure or its unit is wrong.`);
}
