/** What calculations over the rows of a logger have in common. */
import type { AddProblem } from '../calculation/problem.js';
import type { AddNote } from '../calculation/note.js';
import { saturationEquationOverWater, type SaturationCorrelation } from '../water/saturation/over-water.js';
import { noteEquation } from './common.js';
import { fahrenheitSlip, fractionSlip, type UnitSlip } from './formulas/unit-slips.js';

/** What is wrong where a temperature and a humidity are not of the same rows. */
export function checkRows(
  { airTemperature, relativeHumidity }: { readonly airTemperature: { readonly length: number }; readonly relativeHumidity: { readonly length: number } },
  problem: AddProblem,
): void {
  if (airTemperature.length !== relativeHumidity.length) problem(['relativeHumidity'], `${airTemperature.length} values, as many as in airTemperature`, `${relativeHumidity.length}`);
}

/** The lowest and the highest of readings, of which some may lack. */
function rangeOf(readings: Float64Array): readonly [lowest: number, highest: number] {
  let [lowest, highest] = [Infinity, -Infinity];
  for (let i = 0; i < readings.length; i++) {
    const x = readings[i]!;
    if (x < lowest) lowest = x;
    if (x > highest) highest = x;
  }
  return [lowest, highest];
}

/** Cautions where columns of temperatures in K and relative humidities look as if they were in other units. */
export function noteUnits(temperatures: Float64Array, humidities: Float64Array, note: AddNote): void {
  const caution = (code: string, input: string, slip: UnitSlip | undefined): void => {
    if (slip) note('caution', code, input, `There is ${slip.received}: ${slip.hint}.`);
  };
  caution('fahrenheit-as-celsius', 'airTemperature', fahrenheitSlip(rangeOf(temperatures)[0]));
  caution('fraction-as-percent', 'relativeHumidity', fractionSlip(rangeOf(humidities)[1]));
}

/** Notes on the equations over liquid water that a column of temperatures in K goes through. */
export function noteEquations(temperatures: Float64Array, correlation: SaturationCorrelation, note: AddNote): void {
  const [coldest, warmest] = rangeOf(temperatures);
  if (coldest > warmest) return;
  const cold = saturationEquationOverWater(coldest, correlation);
  const warm = saturationEquationOverWater(warmest, correlation);
  noteEquation(cold, 'liquid water', 'airTemperature', coldest, cold === warm ? warmest : coldest, note);
  if (cold !== warm) noteEquation(warm, 'liquid water', 'airTemperature', warmest, warmest, note);
}
