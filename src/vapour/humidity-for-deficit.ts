import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { pressure, share } from '../units/dimensions.js';
import { airTemperature, correlation, saturationAt, saturationSources } from './common.js';

/**
 * Relative humidity to aim at for a wanted vapour pressure deficit.
 *
 * Takes the air temperature (-40 to 60 °C) and the deficit (0 to 20 kPa): of the air, or from the leaf where a leaf temperature is given.
 * @throws InputError for input outside these limits, and where no air is dry enough, or none moist enough, for the deficit.
 * @example
 * humidityForDeficit({ airTemperature: '24 °C', vapourPressureDeficit: '0.9 kPa' }).relativeHumidity.in('%') // => 69.86
 */
export const humidityForDeficit = /* @__PURE__ */ calculation({
  id: 'humidityForDeficit',
  title: 'Humidity for a wanted vapour pressure deficit',
  inputs: () => ({
    airTemperature: airTemperature(),
    vapourPressureDeficit: field.quantity(pressure, { limits: ['0 kPa', '20 kPa'] }),
    leafTemperature: field.optional(airTemperature()),
    correlation: correlation(),
  }),
  outputs: () => ({ relativeHumidity: output.quantity(share, '%') }),
  equation: 'φ = (es(t leaf) - D)/es(t air)',
  sources: saturationSources,
  example: { airTemperature: '24 °C', vapourPressureDeficit: '0.9 kPa' },
  solve: ({ airTemperature, vapourPressureDeficit, leafTemperature, correlation }, { note, refuse }) => {
    const saturation = saturationAt('airTemperature', airTemperature, correlation, note);
    const leaf = leafTemperature === undefined ? saturation : saturationAt('leafTemperature', leafTemperature, correlation, note);
    const relativeHumidity = (leaf - vapourPressureDeficit) / saturation;
    const rounding = 1e-9;
    const written = (pascal: number): string => `${Number((pascal / 1000).toPrecision(4))} kPa`;
    if (relativeHumidity < -rounding) refuse('vapourPressureDeficit', `at most ${written(leaf)}, the deficit in dry air`, written(vapourPressureDeficit), 'warmer air or leaves make a larger deficit possible');
    if (relativeHumidity > 1 + rounding) refuse('vapourPressureDeficit', `at least ${written(leaf - saturation)}, the deficit in saturated air`, written(vapourPressureDeficit), 'the leaf is too warm for a smaller one');
    return { relativeHumidity: Math.min(1, Math.max(0, relativeHumidity)) };
  },
});
