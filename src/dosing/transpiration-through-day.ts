import { calculation } from '../calculation/calculation.js';
import * as field from '../calculation/field.js';
import * as output from '../calculation/output.js';
import { refuseBadTimes } from '../light/reading-times.js';
import { evaporationRate, irradiance, pressure, time, waterPerArea } from '../units/dimensions.js';
import { hours } from '../units/in-words.js';
import { deficitTermBaille1994, evaporationFromLatentHeat, radiationTermBaille1994 } from './formulas/crop-transpiration.js';
import { deficitCoefficientField, noteExcess, noteUncalibrated, twoTermFields } from './two-term-fields.js';

/** Radiation below which it is night, W/m2. */
const night = 5;

/**
 * What a crop under cover transpires through a day, by radiation and the dryness of the air: for irrigation by what the plants have used.
 *
 * Takes columns of rising times since midnight (up to 31 days), of solar radiation (-50 to 1500 W/m²) and of vapour pressure deficit (-0.5 to 6 kPa; of both, what a sensor shows below zero counts as 0) and the crop as
 * transpirationByRadiationAndDeficit does; where it is known, another coefficient for the deficit at night; and the longest time between two readings that is no gap
 * (90 min unless given). Gives the rate at each reading, the sum up to it, and the whole. A row that lacks a reading has no rate; gaps add nothing, and a note tells
 * how long they are.
 * @throws InputError for input outside these limits, columns of different lengths, a time that is missing, times that do not rise, and a crop that
 * would take more than 1000 W/m² from the air.
 * @example
 * transpirationThroughDay({ readingTime: { unit: 'h', values: [12, 13] }, globalRadiation: { unit: 'W/m²', values: [400, 400] }, vapourPressureDeficit: { unit: 'kPa', values: [1.2, 1.2] }, leafAreaIndex: 3 }).transpiration.in('L/m²') // => 0.37501
 */
export const transpirationThroughDay = /* @__PURE__ */ calculation({
  id: 'transpirationThroughDay',
  title: 'Transpiration through a day by radiation and deficit',
  inputs: () => ({
    readingTime: field.column(time, { limits: ['0 s', '31 d'] }),
    globalRadiation: field.column(irradiance, { limits: ['-50 W/m²', '1500 W/m²'] }),
    vapourPressureDeficit: field.column(pressure, { limits: ['-0.5 kPa', '6 kPa'] }),
    ...twoTermFields(),
    nightDeficitCoefficient: field.optional(deficitCoefficientField()),
    longestGap: field.withDefault(field.quantity(time, { limits: ['1 s', '1 d'] }), '90 min'),
  }),
  outputs: () => ({
    transpirationRate: output.column(evaporationRate, 'L/(m²·h)'),
    transpirationSoFar: output.column(waterPerArea, 'L/m²'),
    transpiration: output.quantity(waterPerArea, 'L/m²'),
    coveredTime: output.quantity(time, 'h'),
  }),
  equation: 'λE = A (1 − exp(−k LAI)) τ G + B LAI D; T = Σ (E₁ + E₂)/2 Δt',
  sources: ['baille-1994', 'katsoulas-kittas-2011'],
  example: {
    readingTime: { unit: 'h', values: [5, 7, 9, 11, 13, 15, 17, 19] }, globalRadiation: { unit: 'W/m²', values: [0, 120, 380, 620, 690, 520, 240, 20] },
    vapourPressureDeficit: { unit: 'kPa', values: [0.1, 0.2, 0.5, 0.9, 1.2, 1.1, 0.7, 0.3] }, coverTransmission: '65 %', leafAreaIndex: 2.5, radiationCoefficient: 0.5, deficitCoefficient: '20 W/(m²·kPa)', longestGap: '2 h',
  },
  check: ({ readingTime, globalRadiation, vapourPressureDeficit }, problem) => {
    refuseBadTimes(readingTime.si, 'globalRadiation', globalRadiation.length, problem);
    if (vapourPressureDeficit.length !== readingTime.length) problem(['vapourPressureDeficit'], `${readingTime.length} values, as many as in readingTime`, `${vapourPressureDeficit.length}`);
  },
  solve: (seen, { note, refuse }) => {
    const { coverTransmission, leafAreaIndex, radiationCoefficient, deficitCoefficient, nightDeficitCoefficient = deficitCoefficient, extinctionCoefficient, longestGap } = seen;
    noteUncalibrated(seen, note);
    const times = seen.readingTime.si;
    const deficits = seen.vapourPressureDeficit.si;
    let excess = 0;
    const transpirationRate = seen.globalRadiation.si.map((reading, i) => {
      const outside = Math.max(0, reading);
      const inside = coverTransmission * outside;
      const heat = radiationTermBaille1994(inside, leafAreaIndex, radiationCoefficient, extinctionCoefficient)
        + deficitTermBaille1994(Math.max(0, deficits[i]!), leafAreaIndex, outside < night ? nightDeficitCoefficient : deficitCoefficient);
      if (heat - inside > excess) excess = heat - inside;
      return evaporationFromLatentHeat(heat);
    });
    noteExcess(excess, note, refuse);
    let [transpiration, coveredTime, before] = [0, 0, -1];
    const transpirationSoFar = transpirationRate.map((rate, i) => {
      if (Number.isNaN(rate)) return transpiration;
      const step = times[i]! - (times[before] ?? NaN);
      if (step <= longestGap) {
        transpiration += (rate + transpirationRate[before]!) / 2 * step;
        coveredTime += step;
      }
      before = i;
      return transpiration;
    });
    const gaps = times.length > 1 ? times.at(-1)! - times[0]! - coveredTime : 0;
    if (gaps > 1) note('caution', 'gaps', 'transpiration', `Readings are missing for ${hours(gaps)}, for which nothing is added: the plants have used more than this.`);
    if (times.length < 2) note('caution', 'gaps', 'transpiration', 'It takes two readings for anything to add up.');
    return { transpirationRate, transpirationSoFar, transpiration, coveredTime };
  },
});
