/** What decides whether a surface in the air gets wet; shared by the calculations that ask it. */
import type { AddNote } from '../calculation/note.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { absolutePressure, share, temperatureDifference } from '../units/dimensions.js';
import { triplePointPressure, triplePointTemperature } from '../water/constants.js';
import { saturationTemperatureOverIce, saturationTemperatureOverWater } from '../water/saturation/temperature.js';
import { iceSaturationAt, noteFraction, saturationAt } from './common.js';

/** Relative humidity of air that has a dew point. */
export const dewyHumidity = () => field.share({ limits: [0.001, 1.02], valid: [0.001, 1] });

/** What there is to say about a surface. */
export const wetnessOutputs = () => ({
  wet: output.flag(),
  condensationHumidity: output.optional(output.quantity(share, '%')),
  margin: output.quantity(temperatureDifference, 'K'),
  convergence: output.group({ vapourPressureResidual: output.quantity(absolutePressure, 'Pa'), steps: output.number() }),
});

/** Whether a surface of a temperature in K, known by a name, gets wet in the air; and the temperature in K below which any surface does. */
export function wetnessOf(surface: string, surfaceTemperature: number, airTemperature: number, relativeHumidity: number, note: AddNote) {
  const saturation = saturationAt('airTemperature', airTemperature, 'IAPWS', note);
  const vapourPressure = relativeHumidity * saturation;
  noteFraction('relativeHumidity', relativeHumidity, note);
  const frost = surfaceTemperature <= triplePointTemperature;
  const surfaceSaturation = (frost ? iceSaturationAt : saturationAt)(surface, surfaceTemperature, 'IAPWS', note);
  const wet = vapourPressure > surfaceSaturation;
  if (wet && frost) note('caution', 'hoar-frost', surface, 'What settles on the surface is hoar frost, or dew that freezes.');
  const condensationHumidity = surfaceSaturation / saturation;
  const { value, residual, steps } = (vapourPressure < triplePointPressure ? saturationTemperatureOverIce : saturationTemperatureOverWater)(vapourPressure);
  return {
    frost,
    limitTemperature: value,
    outputs: {
      wet,
      condensationHumidity: condensationHumidity > 1 ? undefined : condensationHumidity,
      margin: surfaceTemperature - value,
      convergence: { vapourPressureResidual: residual, steps },
    },
  };
}
