import type { AddNote } from '../calculation/note.js';
import { writeNumber } from '../units/write.js';
import type { ChargeBalance } from './formulas/concentration.js';

/**
 * Says so where cations and anions miss each other by more than a complete analysis does.
 *
 * @param negligible charge, mol/m3, within which the ions of a very dilute water may miss each other; from memory, of standard methods of water
 * analysis
 */
export function noteImbalance({ cations, anions, imbalance, relativeImbalance }: ChargeBalance, note: AddNote, negligible = 0.2): void {
  const size = Math.abs(relativeImbalance);
  if (size <= 0.05 || Math.abs(imbalance) <= negligible) return;
  const charges = `Cations come to ${writeNumber(cations)} meq/L and anions to ${writeNumber(anions)} meq/L`;
  if (size <= 0.1) note('info', 'charge-imbalance', 'relativeImbalance', `${charges}, more than 5 % apart: a complete analysis is closer.`);
  else note('caution', 'charge-imbalance', 'relativeImbalance', `${charges}, more than 10 % apart: an ion is missing, or a figure or its unit is wrong.`);
}
