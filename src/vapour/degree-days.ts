import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { temperatureTime } from '../units/dimensions.js';
import { airTemperature } from './common.js';
import { baseTemperature, checkUpperTemperature, noteUpperTemperature, upperTemperature } from './degree-day-fields.js';
import { degreeDaysLimitedMcMasterWilhelm1997, degreeDaysMeanMcMasterWilhelm1997 } from './formulas/degree-days.js';

/**
 * Growing degree-days of one day from its highest and lowest temperature: how far a day brought a crop on.
 *
 * Takes both temperatures (-40 to 60 °C), the base below which the crop stands still (-10 to 40 °C; ask who stated the sum for your crop), where there is
 * one the upper limit (up to 60 °C), and the method, for a sum is worth only what its method says: 'limited' brings each temperature between base and
 * upper limit before the mean is taken, 'mean' takes the mean as it is, knows no upper limit, and gives less on days with cold nights. With
 * a logger take airRecord, which adds up every hour.
 * @throws InputError for input outside these limits, a lowest above the highest, and an upper limit that is not above the base.
 * @example
 * degreeDays({ highestAirTemperature: '18 °C', lowestAirTemperature: '6 °C', baseTemperature: '10 °C', degreeDayMethod: 'limited' }).degreeDays.in('K·d') // => 4
 */
export const degreeDays = /* @__PURE__ */ calculation({
  id: 'degreeDays',
  title: 'Growing degree-days of a day',
  inputs: () => ({
    highestAirTemperature: airTemperature(),
    lowestAirTemperature: airTemperature(),
    baseTemperature: baseTemperature(),
    upperTemperature: upperTemperature(),
    degreeDayMethod: field.choice(['limited', 'mean']),
  }),
  outputs: () => ({ degreeDays: output.quantity(temperatureTime, 'K·d') }),
  equation: "mean: max(0, (tmax + tmin)/2 - tbase); limited: (t'max + t'min)/2 - tbase, t' = min(max(t, tbase), tupper)",
  sources: ['mcmaster-wilhelm-1997'],
  example: { highestAirTemperature: '24 °C', lowestAirTemperature: '9 °C', baseTemperature: '12 °C', degreeDayMethod: 'limited' },
  check: ({ highestAirTemperature, lowestAirTemperature, baseTemperature, upperTemperature }, problem) => {
    if (lowestAirTemperature > highestAirTemperature) problem(['lowestAirTemperature'], 'at most the highest', 'one above it', 'are the two swapped?');
    checkUpperTemperature(baseTemperature, upperTemperature, problem);
  },
  solve: (seen, { note }) => {
    const { highestAirTemperature, lowestAirTemperature, baseTemperature, upperTemperature, degreeDayMethod } = seen;
    noteUpperTemperature(seen, note);
    if (degreeDayMethod === 'limited') {
      return { degreeDays: degreeDaysLimitedMcMasterWilhelm1997(highestAirTemperature, lowestAirTemperature, baseTemperature, upperTemperature) };
    }
    return { degreeDays: degreeDaysMeanMcMasterWilhelm1997(highestAirTemperature, lowestAirTemperature, baseTemperature) };
  },
});
