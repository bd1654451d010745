/** What is to be said about the pre-charge of a tank, and how pressures and volumes are said. */
import type { AddNote } from '../calculation/note.js';
import { writeNumber } from '../units/write.js';
import { drawdownOf, gaugeError, tolerableMargin, usualPreCharge, type Tank } from './tank.js';

/** A pressure in both units that gauges and switches are marked in. */
export const inWords = (pascals: number): string => `${Math.round(pascals / 1000)} kPa (${writeNumber(Math.round(pascals / 689.4757) / 10)} psi)`;

/** A volume or flow to two digits, or to its last whole unit. */
const twoDigits = (value: number): string => writeNumber(value >= 100 ? Math.round(value) : Number(value.toPrecision(2)));
export const litres = (cubicMetres: number): string => `${twoDigits(cubicMetres * 1000)} L`;
export const litresPerMinute = (flow: number): string => `${twoDigits(flow * 60_000)} L/min`;

/** A tank at least as large, in whole litres. */
export const tankOf = (cubicMetres: number): string => `a tank of ${Math.ceil(cubicMetres * 1000)} L`;

/** What a change does to the drawdown, in words. */
export const drawdownMoves = (from: number, to: number): string => `drawdown ${to > from ? 'rises' : 'falls'} from ${litres(from)} to ${litres(to)}`;

/** Says what the pre-charge does where it is not as it should be, and what another would do. */
export function notePreCharge(tank: Tank, note: AddNote): void {
  const { preCharge, cutIn, cutOut } = tank;
  const usual = usualPreCharge(cutIn);
  const advice = `set ${inWords(usual)} with no water in the tank; ${drawdownMoves(drawdownOf(tank), drawdownOf({ ...tank, preCharge: usual }))}`;
  const subject = `The pre-charge of ${inWords(preCharge)} is`;
  if (preCharge >= cutOut) note('danger', 'pre-charge-above-cut-out', 'preCharge', `${subject} not below the cut-out, so no water enters the tank and the pump stutters: ${advice}.`);
  else if (preCharge > cutIn + gaugeError) note('danger', 'pre-charge-above-cut-in', 'preCharge', `${subject} ${inWords(preCharge - cutIn)} above the cut-in, so the tank is empty before the pump starts and the pressure drops away in between: ${advice}.`);
  else if (cutIn - preCharge > tolerableMargin) note('caution', 'pre-charge-low', 'preCharge', `${subject} ${inWords(cutIn - preCharge)} below the cut-in: ${advice}.`);
}
