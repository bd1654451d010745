import { calculation } from '../calculation/calculation.js';
import { atmosphericPressureField } from '../calculation/common-fields.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { share, temperature } from '../units/dimensions.js';
import { checkRows, noteEquations, noteUnits } from './columns.js';
import { correlation, moistAirSources, noteIce } from './common.js';
import { wetBulbsFromRelativeHumidity } from './formulas/wet-bulb-column.js';

/**
 * Wet bulb temperature for many rows of a logger at once: how far evaporation could have cooled the air, row by row.
 *
 * Takes a column of air temperatures (-40 to 60 °C) and one of relative humidities (0 to 102 %) of the same length, and one pressure of the atmosphere
 * (50 to 110 kPa; 101.325 kPa unless given). Each row is what wetBulb gives. A row that lacks a reading has none; above 100 %, which only a sensor shows,
 * the wet bulb is the air temperature. Notes count those rows, and the rows whose wick is iced; cautions say where a whole column looks like
 * °F or fractions.
 * @throws InputError for input outside these limits and for columns of different lengths.
 * @example
 * wetBulbColumn({ airTemperature: { unit: '°C', values: [25, null] }, relativeHumidity: { unit: '%', values: [60, 70] } }).wetBulbTemperature.in('°C')[0] // => 19.471
 */
export const wetBulbColumn = /* @__PURE__ */ calculation({
  id: 'wetBulbColumn',
  title: 'Wet bulb temperature of many readings',
  inputs: () => ({
    airTemperature: field.column(temperature, { limits: ['-40 °C', '60 °C'] }),
    relativeHumidity: field.column(share, { limits: ['0 %', '102 %'] }),
    atmosphericPressure: atmosphericPressureField(),
    correlation: correlation(),
  }),
  outputs: () => ({ wetBulbTemperature: output.column(temperature, '°C') }),
  equation: 'as wetBulb, by Newton steps',
  sources: moistAirSources,
  example: { airTemperature: { unit: '°C', values: [16.5, 19, 24.5, 27] }, relativeHumidity: { unit: '%', values: [92, 84, 66, 58] } },
  check: checkRows,
  solve: ({ airTemperature, relativeHumidity, atmosphericPressure, correlation }, { note }) => {
    const { wetBulbs, iced, supercooled, moist } = wetBulbsFromRelativeHumidity(airTemperature.si, relativeHumidity.si, atmosphericPressure, correlation);
    const rows = wetBulbs.length;
    let [gaps, coldest] = [0, Infinity];
    for (let i = 0; i < rows; i++) {
      const x = wetBulbs[i]!;
      if (Number.isNaN(x)) gaps++;
      else if (x < coldest) coldest = x;
    }
    noteEquations(airTemperature.si, correlation, note);
    noteUnits(airTemperature.si, relativeHumidity.si, note);
    if (gaps > 0) note('info', 'gaps', 'wetBulbTemperature', `${gaps} of ${rows} rows lack a reading and have no wet bulb.`);
    if (moist > 0) note('caution', 'outside-range', 'relativeHumidity', `${moist} of ${rows} rows are above 100 %: their wet bulb is the air temperature.`);
    if (iced > 0) {
      noteIce(correlation, 'wetBulbTemperature', coldest, note);
      note('info', 'iced-wick', 'wetBulbTemperature', `${iced} of ${rows} rows have an iced wick.`);
    }
    if (supercooled > 0) note('info', 'supercooled-wick', 'wetBulbTemperature', `${supercooled} of ${rows} rows have a wick that is taken as liquid although it is below 0 °C; an iced one reads otherwise.`);
    return { wetBulbTemperature: wetBulbs };
  },
});
