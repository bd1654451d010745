/** What the calculations of evapotranspiration say beside their numbers, and what they refuse. */
import { describe, expect, test } from 'vitest';
import { isInputError } from '../../src/calculation/index.js';
import * as dosing from '../../src/dosing/index.js';

const codes = ({ notes }: { readonly notes: readonly { readonly code: string }[] }): string[] => notes.map(({ code }) => code);

/** The problems of an attempt that has to fail. */
function problems(attempt: { readonly ok: true } | { readonly ok: false; readonly error: Error }): string {
  if (attempt.ok) throw new Error('was accepted');
  if (!isInputError(attempt.error)) throw attempt.error;
  return attempt.error.message;
}

const day = { latitude: '48 °', dayOfYear: 172, elevation: '300 m', highestAirTemperature: '27 °C', lowestAirTemperature: '14 °C' } as const;
const known = { ...day, meanRelativeHumidity: 0.7, sunshine: '9 h', windSpeed: '2 m/s' } as const;

describe('a day outdoors', () => {
  test('says what it did without', () => {
    expect(codes(dosing.referenceEvapotranspiration(known))).toEqual(['vapour-pressure-equation']);
    expect(codes(dosing.referenceEvapotranspiration(day)).sort()).toEqual(['no-humidity', 'no-radiation', 'no-wind', 'vapour-pressure-equation']);
    expect(codes(dosing.referenceEvapotranspiration({ ...known, windSpeed: '0.2 m/s' }))).toContain('still-air');
  });

  test('takes the humidity in whichever way it is known', () => {
    const vapour = (humidity: object) => dosing.referenceEvapotranspiration({ ...day, ...humidity }).vapourPressure.in('kPa');
    const [saturatedAtNight, saturated] = [1.5984, (3.5653 + 1.5984) / 2];
    expect(vapour({ dewPoint: '14 °C' })).toBeCloseTo(saturatedAtNight, 3);
    expect(vapour({ highestRelativeHumidity: 0.9 })).toBeCloseTo(0.9 * saturatedAtNight, 3);
    expect(vapour({ meanRelativeHumidity: 0.5 })).toBeCloseTo(saturated / 2, 3);
    expect(vapour({ highestRelativeHumidity: 0.9, lowestRelativeHumidity: 0.5, meanRelativeHumidity: 0.6 })).toBeCloseTo((0.9 * 1.5984 + 0.5 * 3.5653) / 2, 3);
    expect(vapour({ vapourPressure: '1.2 kPa' })).toBe(1.2);
    expect(vapour({})).toBeCloseTo(saturatedAtNight, 3);
  });

  test('refuses what cannot be of one day and place', () => {
    const refused = (more: object) => problems(dosing.referenceEvapotranspiration.try({ ...known, ...more }));
    expect(refused({ latitude: '68 °' })).toContain('polar circles');
    expect(refused({ lowestAirTemperature: '30 °C' })).toContain('swapped');
    expect(refused({ sunshine: '18 h' })).toContain('at most the length of the day, 15.');
    expect(refused({ sunshine: undefined, radiationSum: '44 MJ/m²' })).toMatch(/radiationSum: at most 4\d\.\d\d MJ\/m².*hemisphere/);
    expect(refused({ radiationSum: '20 MJ/m²' })).toContain('either the radiation or the hours of sunshine');
    expect(refused({ dewPoint: '12 °C' })).toContain('one way to state the humidity');
    expect(refused({ meanRelativeHumidity: undefined, dewPoint: '28 °C' })).toContain('up to saturation');
    expect(refused({ meanRelativeHumidity: undefined, lowestRelativeHumidity: 0.5 })).toContain('to go with the lowest');
    expect(refused({ highestRelativeHumidity: 0.5, lowestRelativeHumidity: 0.6 })).toContain('lowestRelativeHumidity: at most the highest');
  });

  test('doubts more radiation than a clear sky lets through', () => {
    expect(codes(dosing.referenceEvapotranspiration({ ...known, sunshine: undefined, radiationSum: '38 MJ/m²' }))).toContain('above-clear-sky');
  });

  test('takes wind at 2 m as it is', () => {
    expect(dosing.referenceEvapotranspiration(known).windSpeedAt2m.in('m/s')).toBe(2);
    expect(dosing.referenceEvapotranspiration({ ...known, windHeight: '10 m' }).windSpeedAt2m.in('m/s')).toBeCloseTo(1.4959, 4);
  });
});

describe('an hour outdoors', () => {
  const hour = { latitude: '48 °', longitude: '11 °', hoursAheadOfUtc: 1, dayOfYear: 172, middleOfHour: '12.5 h', airTemperature: '24 °C', relativeHumidity: 0.5, globalRadiation: '800 W/m²', windSpeed: '2 m/s' } as const;

  test('refuses sun before sunrise, as a clock on daylight-saving time makes it', () => {
    expect(problems(dosing.hourlyReferenceEvapotranspiration.try({ ...hour, middleOfHour: '3 h', globalRadiation: '90 W/m²' }))).toContain('daylight-saving');
    expect(codes(dosing.hourlyReferenceEvapotranspiration({ ...hour, middleOfHour: '3 h', globalRadiation: '4 W/m²' }))).toContain('sky-at-night');
  });

  test('at night takes a sky that lets 60 % through where nothing is said', () => {
    const night = { ...hour, middleOfHour: '1 h', globalRadiation: '0 W/m²' } as const;
    expect(dosing.hourlyReferenceEvapotranspiration(night).netLongwave).toEqual(dosing.hourlyReferenceEvapotranspiration({ ...night, relativeRadiation: 0.6 }).netLongwave);
  });

  test('needs longitude and zone together', () => {
    expect(problems(dosing.hourlyReferenceEvapotranspiration.try({ ...hour, longitude: undefined }))).toContain('longitude and hoursAheadOfUtc, or neither');
  });

  test('stores a tenth of the net radiation by day and gives half of it back by night', () => {
    const [noon, night] = [dosing.hourlyReferenceEvapotranspiration(hour), dosing.hourlyReferenceEvapotranspiration({ ...hour, middleOfHour: '1 h', globalRadiation: '0 W/m²' })];
    expect(noon.soilHeat.si / noon.netRadiation.si).toBeCloseTo(0.1, 12);
    expect(night.soilHeat.si / night.netRadiation.si).toBeCloseTo(0.5, 12);
    expect(night.netRadiation.si).toBeLessThan(0);
  });

  test('is the same a day later, on the other side of the date line', () => {
    const east = dosing.hourlyReferenceEvapotranspiration({ ...hour, longitude: '179 °', hoursAheadOfUtc: 12 });
    const west = dosing.hourlyReferenceEvapotranspiration({ ...hour, longitude: '179 °', hoursAheadOfUtc: -12 });
    expect(west.extraterrestrialRadiation.in('MJ/m²')).toBeCloseTo(east.extraterrestrialRadiation.in('MJ/m²'), 2);
  });
});

describe('a house', () => {
  const house = { airTemperature: '21 °C', relativeHumidity: 0.72 } as const;

  test('needs one of the two radiations', () => {
    expect(problems(dosing.indoorEvapotranspiration.try(house))).toContain('exactly one of netRadiation, radiationSum');
    expect(problems(dosing.indoorEvapotranspiration.try({ ...house, netRadiation: '6 MJ/m²', radiationSum: '9 MJ/m²' }))).toContain('exactly one');
    expect(problems(dosing.indoorEvapotranspiration.try({ ...house, netRadiation: '6 MJ/m²', coverTransmission: 0.6 }))).toContain('coverTransmission: no cover beside netRadiation');
    expect(dosing.indoorEvapotranspiration({ ...house, radiationSum: '10 MJ/m²', coverTransmission: 0.5 }).netRadiation.in('MJ/m²')).toBeCloseTo(3.85, 12);
  });

  test('without meters says what the coefficients are worth', () => {
    expect(codes(dosing.plasticHouseEvapotranspiration({ dayOfYear: 110, radiationSum: '18 MJ/m²', coverTransmission: 0.65 }))).toEqual(['coefficients-from-memory']);
  });
});

describe('a crop', () => {
  const need = { referenceEvapotranspiration: '3 mm/d' } as const;

  test('has a coefficient, or a name and a stage', () => {
    expect(problems(dosing.cropWaterNeed.try(need))).toContain('either a coefficient or a crop and its stage');
    expect(problems(dosing.cropWaterNeed.try({ ...need, crop: 'strawberry' }))).toContain('cropStage: a crop and its stage');
    expect(problems(dosing.cropWaterNeed.try({ ...need, crop: 'strawberry', cropStage: 'mid', cropCoefficient: 1 }))).toContain('both');
    expect(problems(dosing.cropWaterNeed.try({ ...need, crop: 'strawberry', cropStage: 'mid on stakes' }))).toContain('initial, mid or end for strawberry');
    expect(codes(dosing.cropWaterNeed({ ...need, crop: 'aubergine', cropStage: 'end' }))).toEqual(['field-coefficient']);
    expect(codes(dosing.cropWaterNeed({ ...need, cropCoefficient: 0.9, drainShare: 0.2 }))).toEqual(['discharge']);
  });

  test('without plants to a square metre has no volume per plant', () => {
    expect(dosing.cropWaterNeed({ ...need, cropCoefficient: 0.9 })).not.toHaveProperty('volumePerPlant');
  });

  test('of the two-term model is nobody in particular until it is calibrated', () => {
    const now = { globalRadiation: '400 W/m²', vapourPressureDeficit: '1.2 kPa', leafAreaIndex: 3 } as const;
    const uncalibrated = (changes: object) => {
      const attempt = dosing.transpirationByRadiationAndDeficit.try({ ...now, ...changes });
      return attempt.ok && attempt.value.notes.map(({ code, field }) => `${code} ${field}`);
    };
    expect(uncalibrated({})).toEqual(['uncalibrated radiationCoefficient', 'uncalibrated deficitCoefficient']);
    expect(uncalibrated({ radiationCoefficient: 0.5 })).toEqual(['uncalibrated deficitCoefficient']);
    expect(uncalibrated({ deficitCoefficient: '20 W/(m²·kPa)' })).toEqual(['uncalibrated radiationCoefficient']);
    expect(uncalibrated({ radiationCoefficient: 0.5, deficitCoefficient: '20 W/(m²·kPa)' })).toEqual([]);
    const dark = { ...now, globalRadiation: '0 W/m²', vapourPressureDeficit: '5 kPa', radiationCoefficient: 0.5 } as const;
    expect(codes(dosing.transpirationByRadiationAndDeficit({ ...dark, deficitCoefficient: '30 W/(m²·kPa)' }))).toEqual(['more-than-radiation']);
    // 30 W/(m²·kPa) on a leaf area index of 3: 135 W/m² at 1.5 kPa, 180 at 2.
    const inAir = (deficit: number) => codes(dosing.transpirationByRadiationAndDeficit({ ...dark, vapourPressureDeficit: `${deficit} kPa`, deficitCoefficient: '30 W/(m²·kPa)' }));
    expect([inAir(1.5), inAir(2)]).toEqual([[], ['more-than-radiation']]);
    expect(problems(dosing.transpirationByRadiationAndDeficit.try({ ...dark, deficitCoefficient: '60 W/(m²·kPa)', leafAreaIndex: 4 }))).toContain('1200 W/m² more than the radiation');
  });

  test('through a day tells of gaps, and has a night of its own', () => {
    const course = {
      readingTime: { unit: 'h', values: [0, 1, 2, 6, 7] }, globalRadiation: { unit: 'W/m²', values: [0, 0, null, 300, 300] }, vapourPressureDeficit: { unit: 'kPa', values: [1, 1, 1, 1, 1] },
      leafAreaIndex: 2, radiationCoefficient: 0, deficitCoefficient: '20 W/(m²·kPa)',
    } as const;
    const gappy = dosing.transpirationThroughDay(course);
    expect(codes(gappy)).toEqual(['gaps']);
    expect(gappy.coveredTime.in('h')).toBe(2);
    expect(codes(dosing.transpirationThroughDay({ ...course, globalRadiation: { unit: 'W/m²', values: [0, 0, 100, 300, 300] }, longestGap: '4 h' }))).toEqual([]);
    const single = dosing.transpirationThroughDay({ ...course, readingTime: { unit: 'h', values: [12] }, globalRadiation: { unit: 'W/m²', values: [300] }, vapourPressureDeficit: { unit: 'kPa', values: [1] } });
    expect(codes(single)).toEqual(['gaps']);
    expect(gappy.transpirationRate.at(2)!.si).toBeNaN();
    const [sameAtNight, halfAtNight] = [gappy, dosing.transpirationThroughDay({ ...course, nightDeficitCoefficient: '10 W/(m²·kPa)' })];
    expect(halfAtNight.transpiration.si / sameAtNight.transpiration.si).toBeCloseTo(0.75, 12);
    const sensor = dosing.transpirationThroughDay({ ...course, globalRadiation: { unit: 'W/m²', values: [-3, -3, null, 300, 300] }, vapourPressureDeficit: { unit: 'kPa', values: [-0.01, -0.01, 1, 1, 1] } });
    expect(sensor.transpirationRate.at(0)!.si).toBe(0);
    const hourly = { ...course, globalRadiation: { unit: 'W/m²', values: [0, 0, 100, 300, 300] }, readingTime: { unit: 'h', values: [0, 1.001, 2, 3.001, 4.002] } } as const;
    expect(codes(dosing.transpirationThroughDay(hourly))).toEqual([]);
    expect(problems(dosing.transpirationThroughDay.try({ ...course, readingTime: { unit: 'h', values: [0, 1, 1, 6, 7] } }))).toContain('row 3 is not after');
    expect(problems(dosing.transpirationThroughDay.try({ ...course, vapourPressureDeficit: { unit: 'kPa', values: [1] } }))).toContain('vapourPressureDeficit: 5 values');
  });

  test('by the radiation rule takes no more than the sun can evaporate', () => {
    const rule = (millilitres: number) => codes(dosing.transpirationByRadiationSum({ radiationSum: '1500 J/cm²', waterPerRadiation: `${millilitres} mL·cm²/(J·m²)` }));
    expect(rule(1.7)).toEqual([]);
    expect(rule(3.5)).toEqual(['unusual-factor']);
    expect(rule(4.2)).toEqual(['more-than-radiation-evaporates']);
    expect(problems(dosing.transpirationByRadiationSum.try({ radiationSum: '1500 J/cm²', waterPerRadiation: '17 mL·cm²/(J·m²)' }))).toContain('waterPerRadiation');
  });

  test('by leaf area says whose coefficients those are', () => {
    expect(codes(dosing.dailyUptakeByRadiation({ radiationSum: '10 MJ/m²', leafAreaIndex: 3 }))).toEqual(['coefficients-from-memory']);
    // 1 MJ/m² evaporates 0.408 L/m².
    const dull = (uptakeInTheDark: '0.1 L/m²' | '2 L/m²') => codes(dosing.dailyUptakeByRadiation({ radiationSum: '1 MJ/m²', leafAreaIndex: 3, uptakeCoefficient: 0.9, extinctionCoefficient: 0.6, uptakeInTheDark }));
    expect([dull('0.1 L/m²'), dull('2 L/m²')]).toEqual([[], ['more-than-radiation-evaporates']]);
    const own = { radiationSum: '10 MJ/m²', leafAreaIndex: 3, uptakeCoefficient: 0.8, extinctionCoefficient: 0.6, uptakeInTheDark: '0.1 L/m²' } as const;
    expect(codes(dosing.dailyUptakeByRadiation(own))).toEqual([]);
    for (const left of ['uptakeCoefficient', 'extinctionCoefficient', 'uptakeInTheDark']) expect(codes(dosing.dailyUptakeByRadiation({ ...own, [left]: undefined }))).toEqual(['coefficients-from-memory']);
  });
});
