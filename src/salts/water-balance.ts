import type { AddProblem } from '../calculation/problem.js';
import type { AddNote } from '../calculation/note.js';
import { chargeBalanceOfIons, type ChargeBalance, type IonAmounts } from '../solution/formulas/concentration.js';
import { negligibleImbalance } from '../solution/imbalance-note.js';
import { ions, type Ion } from '../solution/ions.js';
import { writeNumber } from '../units/write.js';

/** Ions that most of the salt in any natural water is made of: a full analysis states them. */
const usualIons: readonly Ion[] = ['Ca2+', 'Mg2+', 'Na+', 'K+', 'HCO3-', 'Cl-', 'SO4 2-', 'NO3-'];

/** Names of the usual ions that an analysis says nothing of. */
export const unstatedIons = (amounts: IonAmounts): readonly string[] => usualIons.filter((ion) => !Object.hasOwn(amounts, ion)).map((ion) => ions[ion].name);

/** The usual ions of the side that is missing, of which nothing is said. */
const notStated = (amounts: IonAmounts, missing: 1 | -1): string | undefined => {
  const names = usualIons.filter((ion) => !Object.hasOwn(amounts, ion) && Math.sign(ions[ion].charge) === missing).map((ion) => ions[ion].name);
  return names.length > 0 ? `not stated: ${names.join(', ')}` : undefined;
};

/** Whether only cations or only anions are stated: a part of an analysis, which cannot balance. */
const isPart = ({ cations, anions }: ChargeBalance): boolean => cations === 0 || anions === 0;

const charges = ({ cations, anions, relativeImbalance }: ChargeBalance): string =>
  `${writeNumber(cations)} meq/L of cations and ${writeNumber(anions)} meq/L of anions, ${writeNumber(Math.abs(relativeImbalance) * 100)} % apart`;

/** Finds an analysis whose cations and anions are more than 50 % apart. */
export function checkWaterBalance(amounts: IonAmounts, problem: AddProblem): void {
  const balance = chargeBalanceOfIons(amounts);
  if (isPart(balance) || Math.abs(balance.relativeImbalance) <= 0.5 || Math.abs(balance.imbalance) <= negligibleImbalance) return;
  problem(['water'], 'an analysis whose cations and anions balance', charges(balance), notStated(amounts, balance.imbalance > 0 ? -1 : 1) ?? 'are the units right?');
}

/** Says by how much the cations and anions of a water miss each other, and what may be missing. */
export function noteWaterBalance(amounts: IonAmounts, note: AddNote): void {
  const balance = chargeBalanceOfIons(amounts);
  const size = Math.abs(balance.relativeImbalance);
  if (size <= 0.05 || Math.abs(balance.imbalance) <= negligibleImbalance) return;
  const [stated, missing] = balance.imbalance > 0 ? ['cations', 'anions'] : ['anions', 'cations'];
  const missingCharge = `${writeNumber(Math.abs(balance.imbalance))} meq/L of ${missing}`;
  const ending = notStated(amounts, balance.imbalance > 0 ? -1 : 1) ?? 'a figure or its unit is wrong, or an ion that is rarely looked for is missing';
  if (isPart(balance)) note('caution', 'part-of-analysis', 'water', `Only ${stated} of the water are stated: ${missingCharge} go with them unseen, so what they bring is not counted (${ending}).`);
  else note(size > 0.1 ? 'caution' : 'info', 'water-imbalance', 'water', `The water has ${charges(balance)}: ${missingCharge} are missing (${ending}).`);
}
