import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { pressure, share, temperature } from '../units/dimensions.js';
import { triplePointTemperature } from '../water/constants.js';
import { saturationEquationOverWater, saturationEquationsOverWater } from '../water/saturation/over-water.js';
import { checkRows, noteEquations, noteUnits } from './columns.js';
import { correlation, saturationSources } from './common.js';

/**
 * Vapour pressure deficit of the air for many rows of a logger at once.
 *
 * Takes a column of air temperatures (-40 to 60 °C) and one of relative humidities (0 to 102 %) of the same length. A row that lacks either has
 * no deficit. Notes count the rows that lack one, and those outside the range of the equation or above 100 %, where the deficit is below zero; cautions say where
 * a whole column looks like °F or fractions.
 * @throws InputError for input outside these limits and for columns of different lengths.
 * @example
 * vapourPressureDeficitColumn({ airTemperature: { unit: '°C', values: [24, null] }, relativeHumidity: { unit: '%', values: [65, 70] } }).vapourPressureDeficit.in('kPa')[0] // => 1.04497
 */
export const vapourPressureDeficitColumn = /* @__PURE__ */ calculation({
  id: 'vapourPressureDeficitColumn',
  title: 'Vapour pressure deficit of many readings',
  inputs: () => ({
    airTemperature: field.column(temperature, { limits: ['-40 °C', '60 °C'] }),
    relativeHumidity: field.column(share, { limits: ['0 %', '102 %'] }),
    correlation: correlation(),
  }),
  outputs: () => ({ vapourPressureDeficit: output.column(pressure, 'kPa') }),
  equation: 'D = es(t) (1 - φ)',
  sources: saturationSources,
  example: { airTemperature: { unit: '°C', values: [16.5, 19, 24.5, 27] }, relativeHumidity: { unit: '%', values: [92, 84, 66, 58] } },
  check: checkRows,
  solve: ({ airTemperature, relativeHumidity, correlation }, { note }) => {
    const { pressure: above } = saturationEquationsOverWater[correlation];
    const { pressure: below } = saturationEquationOverWater(0, correlation);
    const [t, humidity] = [airTemperature.si, relativeHumidity.si];
    const rows = t.length;
    const deficits = new Float64Array(rows);
    let [gaps, moist] = [0, 0];
    for (let i = 0; i < rows; i++) {
      const x = t[i]!;
      const deficit = (x < triplePointTemperature ? below : above)(x) * (1 - humidity[i]!);
      deficits[i] = deficit;
      if (Number.isNaN(deficit)) gaps++;
      else if (deficit < 0) moist++;
    }
    noteEquations(t, correlation, note);
    noteUnits(t, humidity, note);
    if (gaps > 0) note('info', 'gaps', 'vapourPressureDeficit', `${gaps} of ${rows} rows lack a reading and have no deficit.`);
    if (moist > 0) note('caution', 'outside-range', 'relativeHumidity', `${moist} of ${rows} rows are above 100 % and have a deficit below zero.`);
    return { vapourPressureDeficit: deficits };
  },
});
