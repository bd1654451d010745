/** What a day brings to the ground, never more than the sky lets through. */
import type { Solving } from '../calculation/calculation.js';
import { hours } from '../units/in-words.js';
import { writeNumber } from '../units/write.js';
import { radiationFromSunshineAngstrom, radiationFromTemperatureRangeHargreaves } from './formulas/global-radiation.js';

/** How much longer than the day, in s, sunshine may have been read: the sun is seen a little before it rises, and recorders are read by eye. */
const tolerated = 900;

/** Radiation from hours of sunshine, which count up to the length of the day (both s); refuses more. */
export function radiationBySunshine(extraterrestrial: number, sunshine: number, daylight: number, refuse: Solving['refuse']): number {
  if (sunshine > daylight + tolerated) refuse('sunshine', `at most the length of the day, ${hours(daylight)}`, hours(sunshine), 'check day and hemisphere (south is negative)');
  return radiationFromSunshineAngstrom(extraterrestrial, Math.min(1, sunshine / daylight));
}

/** Radiation from the swing of the temperature, K, at most that of a clear sky, and then with a note. */
export function radiationBySwing(extraterrestrial: number, clearSky: number, swing: number, coefficient: number, note: Solving['note']): number {
  const radiation = radiationFromTemperatureRangeHargreaves(extraterrestrial, swing, coefficient);
  if (radiation > clearSky) note('caution', 'clear-sky-taken', 'radiationSum', 'The swing of the temperature asks for more radiation than a clear sky lets through: that of the clear sky is taken.');
  return Math.min(radiation, clearSky);
}

/** Refuses a day's radiation above what arrives outside the atmosphere, both J/m². */
export function refuseMoreThanSun(radiationSum: number, extraterrestrial: number, refuse: Solving['refuse']): void {
  if (radiationSum <= extraterrestrial) return;
  refuse('radiationSum', `at most ${Math.floor(extraterrestrial / 1e4) / 100} MJ/m², what arrives outside the atmosphere`, `${writeNumber(radiationSum / 1e6)} MJ/m²`, 'check day, hemisphere (south is negative) and unit: 1 MJ/m² is 100 J/cm²');
}
