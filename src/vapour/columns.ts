/** What calculations over the rows of a logger have in common. */
import type { AddNote } from '../calculation/note.js';
import { saturationEquationOverWater, type SaturationCorrelation } from '../water/saturation/over-water.js';
import { noteEquation } from './common.js';

/** What is wrong where a temperature and a humidity are not of the same rows. */
export function checkRows(
  { airTemperature, relativeHumidity }: { readonly airTemperature: { readonly length: number }; readonly relativeHumidity: { readonly length: number } },
  problem: (path: readonly PropertyKey[], expected: string, received: string) => void,
): void {
  if (airTemperature.length !== relativeHumidity.length) problem(['relativeHumidity'], `${airTemperature.length} values, as many as in airTemperature`, `${relativeHumidity.length}`);
}

/** Notes on the equations over liquid water that a column of temperatures in K goes through. */
export function noteEquations(temperatures: Float64Array, correlation: SaturationCorrelation, note: AddNote): void {
  let [coldest, warmest] = [Infinity, -Infinity];
  for (let i = 0; i < temperatures.length; i++) {
    const x = temperatures[i]!;
    if (x < coldest) coldest = x;
    if (x > warmest) warmest = x;
  }
  if (coldest > warmest) return;
  const cold = saturationEquationOverWater(coldest, correlation);
  const warm = saturationEquationOverWater(warmest, correlation);
  noteEquation(cold, 'liquid water', 'airTemperature', coldest, cold === warm ? warmest : coldest, note);
  if (cold !== warm) noteEquation(warm, 'liquid water', 'airTemperature', warmest, warmest, note);
}
