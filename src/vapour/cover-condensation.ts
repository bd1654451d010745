import { calculation } from '../calculation/calculation.js';
import * as output from '../calculation/output.js';
import { roundedDown } from '../numerics/round-outward.js';
import { temperature } from '../units/dimensions.js';
import { percent } from '../units/in-words.js';
import { triplePointTemperature } from '../water/constants.js';
import { airTemperature } from './common.js';
import { checkFilm, coverHeatTransfer, insideFilmCoefficient } from './cover-fields.js';
import { innerCoverTemperature, outsideTemperatureForCover } from './formulas/cover.js';
import { dewyHumidity, wetnessOf, wetnessOutputs } from './surface-wetness.js';

/** No weather is colder or warmer, in K. */
const weather = [183.15, 333.15] as const;

/**
 * Whether the cover of a house fogs on its inner side, and at what weather and what humidity it starts to.
 *
 * Takes temperature (-40 to 60 °C) and relative humidity (0.1 to 102 %) of the air inside, the temperature outside (-40 to 60 °C), the U-value of the
 * cover (0.1 to 15 W/(m²·K)) and the film coefficient between the air inside and the cover (8 W/(m²·K) unless given; 7 to 9 in still air, from
 * memory). Gives the temperature of the cover inside, whether it gets wet, its margin above the dew point (negative when wet), the humidity of this
 * air above which it does, and the temperature outside below which it does; there is none of these where only fog, or no weather on Earth, would wet it.
 * Under a clear sky a cover gets colder than this. On frost see condensation.
 * @throws InputError for input outside these limits, and for a film coefficient that is not above the U-value.
 * @example
 * coverCondensation({ airTemperature: '15 °C', relativeHumidity: '85 %', outsideTemperature: '0 °C', coverHeatTransfer: '6 W/(m²·K)' }).coverTemperature.in('°C') // => 3.75
 */
export const coverCondensation = /* @__PURE__ */ calculation({
  id: 'coverCondensation',
  title: 'Condensation on the cover',
  inputs: () => ({
    airTemperature: airTemperature(),
    relativeHumidity: dewyHumidity(),
    outsideTemperature: airTemperature(),
    coverHeatTransfer: coverHeatTransfer(),
    insideFilmCoefficient: insideFilmCoefficient(),
  }),
  outputs: () => ({
    coverTemperature: output.quantity(temperature, '°C'),
    condensationOutsideTemperature: output.optional(output.quantity(temperature, '°C')),
    ...wetnessOutputs(),
  }),
  equation: 'ts = ti - U/h (ti - to), wet where φ > es(ts)/es(ti); from to = ti - h/U (ti - td) down',
  sources: ['definition', 'iapws-if97', 'murphy-koop-2005', 'iapws-r14-08'],
  example: { airTemperature: '12 °C', relativeHumidity: '92 %', outsideTemperature: '4 °C', coverHeatTransfer: '6.5 W/(m²·K)' },
  check: ({ coverHeatTransfer, insideFilmCoefficient }, problem) => checkFilm(coverHeatTransfer, insideFilmCoefficient, problem),
  solve: ({ airTemperature, relativeHumidity, outsideTemperature, coverHeatTransfer, insideFilmCoefficient }, { note }) => {
    const coverTemperature = innerCoverTemperature(airTemperature, outsideTemperature, coverHeatTransfer, insideFilmCoefficient);
    const { frost, limitTemperature, outputs } = wetnessOf('coverTemperature', coverTemperature, airTemperature, relativeHumidity, note);
    const limit = outsideTemperatureForCover(airTemperature, limitTemperature, coverHeatTransfer, insideFilmCoefficient);
    if (outputs.wet) {
      const below = outputs.margin < -0.1 ? (-outputs.margin).toFixed(1) : 'less than 0.1';
      const point = limitTemperature < triplePointTemperature ? 'frost' : 'dew';
      const happens = frost ? 'hoar frost grows on it, and drips when it thaws' : 'water runs and drips from it';
      note('caution', 'cover-fogs', 'coverTemperature', `The cover is ${below} K below the ${point} point: ${happens}. Vent a little with some heat, or bring the air below ${percent(roundedDown(outputs.condensationHumidity ?? 1, 3))}.`);
    }
    note('info', 'clear-sky', 'coverTemperature', 'Under a clear night sky the cover is some kelvins colder than this, and fogs sooner.');
    return { coverTemperature, condensationOutsideTemperature: limit < weather[0] || limit > weather[1] ? undefined : limit, ...outputs };
  },
});
