import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as light from '../../src/light/index.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const degree = Math.PI / 180;
const latitude = within(-66.5, 66.5).map((x) => x * degree);
const dayOfYear = fc.integer({ min: 1, max: 366 });

/** Mean of max(0, cos zenith) over a turn of the earth, by the midpoint rule. */
function meanCosine(latitude: number, declination: number): number {
  const n = 20000;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const cosine = Math.sin(latitude) * Math.sin(declination) + Math.cos(latitude) * Math.cos(declination) * Math.cos((i + 0.5) / n * 2 * Math.PI);
    if (cosine > 0) sum += cosine;
  }
  return sum / n;
}

/**
 * Declination (rad) and distance (astronomical units) of the sun at noon of a day of 2025, and how much earlier than on average it stands highest (s),
 * by the short formulas of the Astronomical Almanac, from memory.
 */
function almanac(day: number): { readonly declination: number; readonly distance: number; readonly early: number } {
  const since = (Date.UTC(2025, 0, day, 12) - Date.UTC(2000, 0, 1, 12)) / 86400e3;
  const anomaly = (357.529 + 0.98560028 * since) * degree;
  const longitude = (280.459 + 0.98564736 * since + 1.915 * Math.sin(anomaly) + 0.02 * Math.sin(2 * anomaly)) * degree;
  const mean = (280.459 + 0.98564736 * since) * degree;
  const ahead = mean - Math.atan2(Math.cos(23.439 * degree) * Math.sin(longitude), Math.cos(longitude));
  const early = Math.atan2(Math.sin(ahead), Math.cos(ahead)) / (2 * Math.PI) * 86400;
  return { early, declination: Math.asin(Math.sin(23.439 * degree) * Math.sin(longitude)), distance: 1.00014 - 0.01671 * Math.cos(anomaly) - 0.00014 * Math.cos(2 * anomaly) };
}

describe('radiation outside the atmosphere', () => {
  test('is the integral of the height of the sun over the day', () => {
    fc.assert(fc.property(within(-89, 89).map((x) => x * degree), dayOfYear, (phi, J) => {
      const expected = 86400 * 82000 / 60 * light.inverseRelativeDistanceFao56(J) * meanCosine(phi, light.solarDeclinationFao56(J));
      expect(Math.abs(light.extraterrestrialRadiationFao56(phi, J) - expected)).toBeLessThan(50);
    }), { numRuns: 50 });
  });

  test('lies as near to that of the almanac as it says', () => {
    for (let J = 1; J <= 365; J += 7) {
      const { declination, distance } = almanac(J);
      expect(Math.abs(light.solarDeclinationFao56(J) - declination)).toBeLessThan(0.018);
      for (const degrees of [-50, -40, -20, 0, 20, 40, 50]) {
        const expected = 86400 * 82000 / 60 / distance ** 2 * meanCosine(degrees * degree, declination);
        expect(Math.abs(light.extraterrestrialRadiationFao56(degrees * degree, J) - expected)).toBeLessThan(0.9e6);
      }
    }
  });

  test('of the parts of a day adds up to the day, however it is cut and wherever it starts', () => {
    fc.assert(fc.property(latitude, dayOfYear, fc.array(within(0, 2 * Math.PI), { maxLength: 12 }), within(-10, 10), (phi, J, cuts, start) => {
      const edges = [0, ...cuts.sort((a, b) => a - b), 2 * Math.PI].map((angle) => start + angle);
      const parts = edges.slice(1).map((edge, i) => light.extraterrestrialRadiationBetween(phi, J, edges[i]!, edge));
      for (const part of parts) expect(part).toBeGreaterThanOrEqual(0);
      const whole = light.extraterrestrialRadiationFao56(phi, J);
      expect(Math.abs(parts.reduce((a, b) => a + b) - whole)).toBeLessThan(1e-9 * whole + 1e-6);
    }));
  });

  test('is none in the polar night, and there all day in the polar day', () => {
    expect(light.extraterrestrialRadiationFao56(80 * degree, 355)).toBe(0);
    expect(light.sunsetHourAngle(80 * degree, light.solarDeclinationFao56(172))).toBe(Math.PI);
    expect(light.extraterrestrialRadiationBetween(80 * degree, 172, -Math.PI, -3)).toBeGreaterThan(0);
  });
});

describe('length of day', () => {
  const daylight = (phi: number, J: number) => light.daylightFromSunsetAngle(light.sunsetHourAngle(phi, light.solarDeclinationFao56(J)));

  test('is 24 h together with that of the other hemisphere, and 12 h at the equator', () => {
    fc.assert(fc.property(latitude, dayOfYear, (phi, J) => {
      expect(daylight(phi, J) + daylight(-phi, J)).toBeCloseTo(86400, 5);
      expect(daylight(0, J)).toBeCloseTo(43200, 6);
    }));
  });

  test('is longer in summer the farther from the equator', () => {
    fc.assert(fc.property(within(1, 60), within(0.1, 5), (phi, more) => {
      expect(daylight((phi + more) * degree, 172)).toBeGreaterThan(daylight(phi * degree, 172));
      expect(daylight((phi + more) * degree, 355)).toBeLessThan(daylight(phi * degree, 355));
    }));
  });
});

describe('solar noon', () => {
  test('comes 4 min earlier for each degree to the east', () => {
    fc.assert(fc.property(within(-170, 170), dayOfYear, (east, J) => {
      expect(light.solarNoonFao56(east, 0, J) - light.solarNoonFao56(east + 1, 0, J)).toBeCloseTo(240, 0);
    }));
  });

  test('comes as early and late as the almanac has it, within what it says', () => {
    const off = Array.from({ length: 365 }, (_, i) => Math.abs(light.seasonalCorrectionFao56(i + 1) - almanac(i + 1).early));
    expect(Math.max(...off)).toBeLessThan(63);
  });

  test('wanders by a quarter of an hour through the year, as sundials do', () => {
    const corrections = Array.from({ length: 365 }, (_, i) => light.seasonalCorrectionFao56(i + 1) / 60);
    // Equation of time: about -14 min in mid February, +16 min at the start of November.
    expect(Math.min(...corrections)).toBeCloseTo(-14.3, 0);
    expect(Math.max(...corrections)).toBeCloseTo(16.4, 0);
  });
});

describe('radiation through the day', () => {
  test('adds up to the day, is even about noon and never below zero', () => {
    fc.assert(fc.property(latitude, dayOfYear, within(1e3, 40e6), within(36000, 50400), fc.constantFrom(4, 24, 96), (phi, J, sum, noon, steps) => {
      const course = light.irradianceThroughDay(phi, J, noon, sum, steps);
      expect(Math.min(...course)).toBeGreaterThanOrEqual(0);
      expect(Math.abs(course.reduce((a, b) => a + b) * 86400 / steps - sum)).toBeLessThanOrEqual(1e-9 * sum);
      const [before, after] = [light.radiationShareBetween(phi, J, noon, noon - 5000, noon), light.radiationShareBetween(phi, J, noon, noon, noon + 5000)];
      expect(before).toBeCloseTo(after, 9);
    }));
  });
});

describe('radiation at the ground', () => {
  test('rises with sunshine from a quarter to three quarters, which is a clear sky at sea level', () => {
    fc.assert(fc.property(within(1e6, 45e6), within(0, 0.9), within(0.01, 0.1), (Ra, share, more) => {
      expect(light.radiationFromSunshineAngstrom(Ra, share + more)).toBeGreaterThan(light.radiationFromSunshineAngstrom(Ra, share));
      expect(light.radiationFromSunshineAngstrom(Ra, 0)).toBe(Ra / 4);
      expect(light.radiationFromSunshineAngstrom(Ra, 1)).toBe(light.clearSkyRadiationFao56(Ra, 0));
    }));
  });
});

describe('sums of readings', () => {
  test('do not depend on further readings on the lines between them', () => {
    fc.assert(fc.property(fc.array(within(0, 2e-3), { minLength: 3, maxLength: 20 }), within(600, 7200), within(0, 86400), (fluxes, step, start) => {
      const times = fluxes.map((_, i) => start + i * step);
      const finer = times.flatMap((t, i) => (i === 0 ? [t] : [t - step / 2, t]));
      const between = fluxes.flatMap((x, i) => (i === 0 ? [x] : [(x + fluxes[i - 1]!) / 2, x]));
      const [coarse, fine] = [light.sumsOfDays(times, fluxes, 7200), light.sumsOfDays(finer, between, 7200)];
      expect(fine.length).toBe(coarse.length);
      for (const [i, { day, sum, covered }] of fine.entries()) {
        expect(day).toBe(coarse[i]!.day);
        expect(sum).toBeCloseTo(coarse[i]!.sum, 9);
        expect(covered).toBeCloseTo(coarse[i]!.covered, 6);
      }
    }));
  });

  test('cover no gap, and a reading that is missing is none', () => {
    const [day] = light.sumsOfDays([0, 600, 1200, 9000, 9600], [1, NaN, 1, 5, 5], 1200);
    expect(day).toEqual({ day: 0, sum: 1200 + 3000, covered: 1800 });
    expect(light.sumsOfDays([0, 600], [NaN, 1], 1200)).toEqual([]);
    expect(light.sumsOfDays([0, 4 * 86400], [1, 1], 5 * 86400).map(({ day, sum }) => [day, sum])).toEqual([[0, 86400], [1, 86400], [2, 86400], [3, 86400]]);
  });
});
