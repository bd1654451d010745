/** What the calculations of this folder have in common: the tank with its switch, and what is to be said about its pre-charge. */
import { atmosphericPressureField } from '../calculation/common-fields.js';
import type { AddNote } from '../calculation/note.js';
import * as field from '../calculation/field.js';
import { flow, pressure, time, volume } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { acceptanceFactor } from './formulas/drawdown.js';

/** Usual pre-charge below the cut-in: 2 psi, Pa (Water Systems Council 2007). */
export const usualMargin = 13790;

/** Pressures nearer than this, Pa, are one on a gauge. Common practice, no source. */
const gaugeError = 1000;

/** A pre-charge further below the cut-in than this, Pa, costs drawdown worth telling. Common practice, no source. */
const tolerableMargin = 35_000;

/** The switch of the pump, gauge, and the atmosphere of the site. */
export const switchFields = () => ({
  cutIn: field.quantity(pressure, { limits: ['10 kPa', '1.5 MPa'] }),
  cutOut: field.quantity(pressure, { limits: ['20 kPa', '2 MPa'] }),
  atmosphericPressure: atmosphericPressureField(),
});

export const tankVolume = () => field.quantity(volume, { limits: ['0.1 L', '10 m³'] });

/**
 * Least time that the pump is to run at a stretch. Tanks are sized by it (Water Systems Council 2007); at least a minute between starts,
 * and more for larger pumps, is what Pelikan (2004-2011) asks for.
 */
export const leastRunTime = () => field.withDefault(field.quantity(time, { limits: ['1 s', '1 h'] }), '1 min');

export const pumpFlow = () => field.quantity(flow, { limits: ['1 L/h', '100 m³/h'] });

/** The tank, its pre-charge, gauge, with no water in it, and its switch. */
export const tankFields = () => ({ tankVolume: tankVolume(), preCharge: field.quantity(pressure, { limits: ['0 kPa', '2 MPa'] }), ...switchFields() });

/** A tank as its calculations see it: m³ and Pa. */
export interface Tank {
  readonly tankVolume: number;
  readonly preCharge: number;
  readonly cutIn: number;
  readonly cutOut: number;
  readonly atmosphericPressure: number;
}

/** Finds a switch that is the wrong way round. */
export const checkSwitch: field.GroupCheck<Pick<Tank, 'cutIn' | 'cutOut'>> = ({ cutIn, cutOut }, problem) => {
  if (cutOut < cutIn * 1.02) problem(['cutIn'], 'a pressure below the cut-out', 'one as high or higher', 'swap them?');
};

/** Water that the tank gives between cut-out and cut-in, m³. */
export const drawdownOf = ({ tankVolume, preCharge, cutIn, cutOut, atmosphericPressure }: Tank, exponent = 1): number =>
  tankVolume * acceptanceFactor(Math.min(preCharge, cutOut), cutIn, cutOut, atmosphericPressure, exponent);

/** A pressure in both units that gauges and switches are marked in. */
const kilopascals = (pascals: number): string => `${writeNumber(pascals / 1000)} kPa (${writeNumber(Math.round(pascals / 689.4757) / 10)} psi)`;
const litres = (cubicMetres: number): string => `${writeNumber(cubicMetres * 1000)} L`;

/** Says what the pre-charge does where it is not as it should be, and what another would do. */
export function notePreCharge(tank: Tank, note: AddNote): void {
  const { preCharge, cutIn, cutOut } = tank;
  const usual = Math.max(0, cutIn - usualMargin);
  const advice = `set ${kilopascals(usual)}, with the tank empty of water: drawdown goes from ${litres(drawdownOf(tank))} to ${litres(drawdownOf({ ...tank, preCharge: usual }))}`;
  if (preCharge >= cutOut) note('danger', 'pre-charge-above-cut-out', 'preCharge', `The pre-charge is not below the cut-out, so no water enters the tank and the pump stutters: ${advice}.`);
  else if (preCharge > cutIn + gaugeError) note('danger', 'pre-charge-above-cut-in', 'preCharge', `The pre-charge is ${kilopascals(preCharge - cutIn)} above the cut-in, so the tank is empty before the pump starts and the pressure drops away in between: ${advice}.`);
  else if (cutIn - preCharge > tolerableMargin) note('caution', 'pre-charge-low', 'preCharge', `The pre-charge is ${kilopascals(cutIn - preCharge)} below the cut-in: ${advice}.`);
}
