/** What the calculations of this folder have in common: the tank with its switch. */
import type { AddProblem } from '../calculation/problem.js';
import { atmosphericPressureField } from '../calculation/common-fields.js';
import * as field from '../calculation/field.js';
import { flow, pressure, time, volume } from '../units/dimensions.js';
import { acceptanceFactor } from './formulas/drawdown.js';

/** Usual pre-charge below the cut-in: 2 psi, Pa (Water Systems Council 2007). */
const usualMargin = 13790;

/** The switch of the pump, gauge, and the atmosphere of the site. */
export const switchFields = () => ({
  cutIn: field.quantity(pressure, { limits: ['10 kPa', '1.5 MPa'] }),
  cutOut: field.quantity(pressure, { limits: ['20 kPa', '2 MPa'] }),
  atmosphericPressure: atmosphericPressureField(),
});

export const tankVolume = () => field.quantity(volume, { limits: ['0.1 L', '10 m³'] });

export const preCharge = () => field.quantity(pressure, { limits: ['0 kPa', '2 MPa'] });

export const polytropicExponent = () => field.withDefault(field.number({ limits: [1, 1.4] }), 1);

/**
 * Least time that the pump is to run at a stretch. Tanks are sized by it (Water Systems Council 2007); at least a minute between starts,
 * and more for larger pumps, is what Pelikan (2004-2011) asks for.
 */
export const leastRunTime = () => field.withDefault(field.quantity(time, { limits: ['1 s', '1 h'] }), '1 min');

export const pumpFlow = () => field.quantity(flow, { limits: ['1 L/h', '100 m³/h'] });

/** The tank, its pre-charge, gauge, with no water in it, and its switch. */
export const tankFields = () => ({ tankVolume: tankVolume(), preCharge: preCharge(), ...switchFields() });

/** A tank as its calculations see it: m³ and Pa. */
export interface Tank {
  readonly tankVolume: number;
  readonly preCharge: number;
  readonly cutIn: number;
  readonly cutOut: number;
  readonly atmosphericPressure: number;
}

/** Finds a pressure that is not clearly below the cut-out. */
function checkBelowCutOut(name: 'cutIn' | 'preCharge', pressure: number, cutOut: number, problem: AddProblem, hint?: string): void {
  if (pressure >= cutOut) problem([name], 'a pressure at least 2 % below the cut-out', 'one as high or higher', hint);
  else if (cutOut < pressure * 1.02) problem([name], 'a pressure at least 2 % below the cut-out', 'one nearer to it');
}

/** Finds a switch that is the wrong way round, or hardly one. */
export function checkSwitch({ cutIn, cutOut }: Pick<Tank, 'cutIn' | 'cutOut'>, problem: AddProblem): void {
  checkBelowCutOut('cutIn', cutIn, cutOut, problem, 'swap them?');
}

/** Finds a pre-charge that lets no water into the tank. */
export function checkPreCharge({ preCharge, cutOut }: { readonly preCharge?: number | undefined; readonly cutOut: number }, problem: AddProblem): void {
  if (preCharge !== undefined) checkBelowCutOut('preCharge', preCharge, cutOut, problem);
}

/** Pre-charge that a tank usually has, gauge, Pa. */
export const usualPreCharge = (cutIn: number): number => Math.max(0, cutIn - usualMargin);

/** Pressures nearer than this, Pa, are one on a gauge. Common practice, no source. */
export const gaugeError = 1000;

/** A pre-charge further below the cut-in than this, Pa, costs drawdown worth telling. Common practice, no source. */
export const tolerableMargin = 35_000;

/** The pre-charge of a tank where it is right, and the usual one where it is above the cut-in or far below it, gauge, Pa. */
export const rightPreCharge = ({ preCharge, cutIn }: Pick<Tank, 'preCharge' | 'cutIn'>): number =>
  preCharge > cutIn + gaugeError || cutIn - preCharge > tolerableMargin ? usualPreCharge(cutIn) : preCharge;

/** Water that the tank gives between cut-out and cut-in, m³. */
export const drawdownOf = ({ tankVolume, preCharge, cutIn, cutOut, atmosphericPressure }: Tank, exponent = 1): number =>
  tankVolume * acceptanceFactor(Math.min(preCharge, cutOut), cutIn, cutOut, atmosphericPressure, exponent);
