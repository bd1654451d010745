import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { dailyLight, photonFlux, time } from '../units/dimensions.js';
import { sumsOfDays } from './formulas/sums-of-days.js';
import { refuseBadTimes } from './reading-times.js';

/**
 * Daily light of each day from the readings of a quantum sensor.
 *
 * Takes a column of times since the first midnight, rising (up to 400 days), and one of fluxes (-5 to 5000 µmol/(m²·s): sensors read a little below zero in the
 * dark), at any steps; and the longest time between two readings that is no gap (90 min unless given). Gives for each day that has readings its
 * light and the time that they cover; a note names days with gaps, whose light is what was seen and no more, and days between them without any reading.
 * @throws InputError for input outside these limits, columns of different lengths, a time that is missing, and times that do not rise.
 * @example
 * dailyLightOfReadings({ readingTime: { unit: 'h', values: [0, 8, 8.5, 20, 20.5, 24] }, photonFlux: { unit: 'µmol/(m²·s)', values: [0, 0, 200, 200, 0, 0] }, longestGap: '12 h' }).lightOfDays[0].dailyLight.in('mol/(m²·d)') // => 8.64
 */
export const dailyLightOfReadings = /* @__PURE__ */ calculation({
  id: 'dailyLightOfReadings',
  title: 'Daily light from readings of a sensor',
  inputs: () => ({
    readingTime: field.column(time, { limits: ['0 s', '400 d'] }),
    photonFlux: field.column(photonFlux, { limits: ['-5 µmol/(m²·s)', '5000 µmol/(m²·s)'] }),
    longestGap: field.withDefault(field.quantity(time, { limits: ['1 s', '1 d'] }), '90 min'),
  }),
  outputs: () => ({ lightOfDays: output.list(output.group({ dayNumber: output.number(), dailyLight: output.quantity(dailyLight, 'mol/(m²·d)'), coveredTime: output.quantity(time, 'h') })) }),
  equation: 'DLI = Σ (PPFD₁ + PPFD₂)/2 Δt',
  sources: ['definition'],
  example: {
    readingTime: { unit: 'h', values: [0, 3, 6, 9, 12, 15, 18, 21, 24] }, photonFlux: { unit: 'µmol/(m²·s)', values: [0, 0, 40, 310, 520, 350, 60, 0, 0] }, longestGap: '3 h',
  },
  check: ({ readingTime, photonFlux }, problem) => {
    refuseBadTimes(readingTime.si, 'photonFlux', photonFlux.length, problem);
  },
  solve: ({ readingTime, photonFlux, longestGap }, { note }) => {
    const sums = sumsOfDays(readingTime.si, photonFlux.si.map((x) => Math.max(0, x)), longestGap);
    const covered = new Map(sums.map((sum) => [sum.day, sum.covered]));
    const [first = 0, last = -1] = [sums[0]?.day, sums.at(-1)?.day];
    const short = Array.from({ length: last - first + 1 }, (_, i) => first + i).filter((day) => (covered.get(day) ?? 0) < 86400 - longestGap).map((day) => day + 1);
    if (short.length > 0) note('caution', 'gaps', 'lightOfDays', `Readings do not cover the whole of ${short.length === 1 ? 'day' : 'days'} ${short.slice(0, 10).join(', ')}${short.length > 10 ? ' and more' : ''}: the light is that of the time covered only.`);
    if (sums.length === 0) note('caution', 'gaps', 'lightOfDays', 'No two readings are close enough to add up: it takes more of them, or a longer longestGap.');
    return { lightOfDays: sums.map(({ day, sum, covered }) => ({ dayNumber: day + 1, dailyLight: sum / 86400, coveredTime: covered })) };
  },
});
