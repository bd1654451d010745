/** What the calculations of this folder have in common: inputs, and what is to be said about them. */
import { outsideRange, type AddNote } from '../calculation/note.js';
import * as field from '../calculation/field.js';
import { temperature } from '../units/dimensions.js';
import { zeroCelsius } from '../water/constants.js';
import { hasIceEquation, saturationEquationsOverIce, type IceSaturationCorrelation, type Surface } from '../water/saturation/over-ice.js';
import { saturationEquationOverWater, saturationEquationsOverWater, type SaturationCorrelation, type SaturationEquation } from '../water/saturation/over-water.js';
import { fractionSlip } from './formulas/unit-slips.js';

/** Temperature of air, or of something in it. */
export const airTemperature = () => field.quantity(temperature, { limits: ['-40 °C', '60 °C'] });

/** Relative humidity over liquid water. Sensors in moist air show up to 102 %. */
export const relativeHumidity = () => field.share({ limits: [0, 1.02], valid: [0, 1] });

/** The equation for the saturation vapour pressure, by name. */
export const correlation = () => field.withDefault(field.choice(Object.keys(saturationEquationsOverWater) as SaturationCorrelation[]), 'IAPWS');

/** Where the equations over liquid water come from. */
export const saturationSources = ['iapws-if97', 'murphy-koop-2005', 'fao56', 'hyland-wexler-1983', 'wmo-8', 'buck-1996'] as const;

/** Where those over liquid water and over ice come from. */
export const surfaceSources = ['iapws-if97', 'murphy-koop-2005', 'iapws-r14-08', 'fao56', 'hyland-wexler-1983', 'wmo-8', 'buck-1996'] as const;

/** Where those and the properties of moist air come from. */
export const moistAirSources = ['ashrae-2017', 'iapws-if97', 'murphy-koop-2005', 'iapws-r14-08', 'fao56', 'hyland-wexler-1983', 'wmo-8', 'buck-1996'] as const;

/** Notes on the equation for saturation that an input's lowest and highest temperature (in K) go through: which it is, and where they lie outside its range. */
export function noteEquation({ range: [low, high], name }: SaturationEquation, surface: string, input: string, lowest: number, highest: number, note: AddNote): void {
  note('info', 'saturation-equation', input, `Saturation over ${surface} after ${name}.`);
  if (lowest < low || highest > high) note('caution', 'outside-range', input, outsideRange(input, Math.round(low - zeroCelsius), `${Math.round(high - zeroCelsius)} °C`).text);
}

/** Saturation vapour pressure over liquid water at one of the inputs, with notes on the equation. */
export function saturationAt(input: string, temperature: number, correlation: SaturationCorrelation, note: AddNote): number {
  const equation = saturationEquationOverWater(temperature, correlation);
  noteEquation(equation, 'liquid water', input, temperature, temperature, note);
  return equation.pressure(temperature);
}

/** Saturation vapour pressure over ice at one of the inputs, with notes on the equation. */
export function iceSaturationAt(input: string, temperature: number, correlation: IceSaturationCorrelation, note: AddNote): number {
  noteIce(correlation, input, temperature, note);
  return saturationEquationsOverIce[correlation].pressure(temperature);
}

/** Notes on the equation over ice that something rests on beside the equation over water, at a temperature in K. */
export function noteIce(correlation: SaturationCorrelation, concerned: string, temperature: number, note: AddNote): void {
  if (!hasIceEquation(correlation)) return;
  noteEquation(saturationEquationsOverIce[correlation], 'ice', concerned, temperature, temperature, note);
  noteIceFromMemory(correlation, concerned, note);
}

/** A note where what concerns one of the inputs or outputs rests on the equation over ice whose coefficients are from memory. */
function noteIceFromMemory(correlation: SaturationCorrelation, concerned: string, note: AddNote): void {
  if (correlation === 'WMO') note('info', 'coefficients-from-memory', concerned, 'The coefficients of WMO-No. 8 over ice are from memory and have not been compared with the publication.');
}

/** A caution where a relative humidity in per cent looks like a fraction. */
export function noteFraction(input: string, relativeHumidity: number, note: AddNote): void {
  const slip = fractionSlip(relativeHumidity);
  if (slip) note('caution', 'fraction-as-percent', input, `Hardly any air is that dry: ${slip.hint}.`);
}

/** A note where a wick is liquid below 0 °C. */
export function noteSupercooledWick(wetBulb: number, wick: Surface, note: AddNote): void {
  if (wick === 'water' && wetBulb < zeroCelsius) note('info', 'supercooled-wick', 'wetBulbTemperature', 'The wick is taken as liquid although it is below 0 °C; an iced one reads otherwise.');
}
