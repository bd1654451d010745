/** The equations for saturation against IAPWS-95, and how exactly their inverses invert. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as vapour from '../../src/vapour/index.js';
import * as water from '../../src/water/index.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const celsius = (low: number, high: number) => within(low + 273.15, high + 273.15);
const names = Object.keys(water.saturationEquationsOverWater) as water.SaturationCorrelation[];
const correlation = fc.constantFrom(...names);
/** Where IAPWS changes its equation, two temperatures a millionth of a kelvin apart share a pressure. */
const awayFromTriplePoint = (temperature: number) => fc.pre(Math.abs(temperature - 273.16) > 1e-5);

/** Saturation pressure in Pa by IAPWS-95 (Wagner and Pruss 2002), worked out apart from this code, by temperature in °C. */
const iapws95: Readonly<Record<number, number>> = {
  0.01: 611.655, 1: 657.086, 2: 705.986, 5: 872.575, 6: 935.355, 7: 1002.091, 9: 1148.288, 10: 1228.199, 13: 1498.096, 14: 1598.984, 17: 1938.358, 18: 2064.735, 20: 2339.318,
  21: 2488.219, 22: 2645.344, 23: 2811.072, 24: 2985.798, 26: 3363.888, 30: 4246.971, 31: 4496.931, 33: 5035.433, 34: 5325.058, 36: 5947.893, 40: 7384.938, 42: 8209.563, 45: 9594.999,
  50: 12351.946, 55: 15762.102, 60: 19946.434, 70: 31200.93, 75: 38595.396, 80: 47414.474, 85: 57866.972, 90: 70181.766, 95: 84608.466,
};
const missOf = (pressure: (temperature: number) => number, t: number) => (pressure(t + 273.15) / iapws95[t]! - 1) * 100;

/** Error of each equation against IAPWS-95 in %, worked out apart from this code, at these temperatures in °C and at its worst from 0 to 50 °C. */
const at = [0.01, 10, 20, 30, 40, 50, 80];
const errors: readonly (readonly [name: string, pressure: (temperature: number) => number, errors: readonly number[], atBoiling: number, worst: number])[] = [
  ['IF97', water.saturationPressureIapws1997, [0.0004, -0.0012, -0.0044, -0.0067, -0.0069, -0.0055, 0.0005], 0, -0.0070],
  ['Wagner-Pruss 1993', water.saturationPressureWagnerPruss1993, [0.0004, -0.0071, -0.0053, -0.0012, 0.0023, 0.0043, 0.0028], 0, -0.0072],
  ['Hyland-Wexler 1983', water.saturationPressureHylandWexler1983, [0.0004, -0.0166, -0.0220, -0.0221, -0.0200, -0.0169, -0.0060], 0.0007, -0.0225],
  ['Sonntag 1990', water.saturationPressureSonntag1990, [0.0004, -0.0053, -0.0030, 0.0014, 0.0048, 0.0065, 0.0023], 0.0010, 0.0065],
  ['Buck 1996', water.saturationPressureBuck1996, [-0.0001, -0.0276, -0.0418, -0.0434, -0.0349, -0.0206, -0.0089], -0.1087, -0.0442],
  ['Murphy-Koop 2005', water.saturationPressureMurphyKoop2005, [0.0004, 0.0048, 0.0035, -0.0037, -0.0086, 0.0003, 0.2170], 0.5958, -0.0086],
  ['FAO-56', water.saturationPressureFao56, [-0.0670, -0.0192, -0.0443, -0.0920, -0.1263, -0.1229, 0.2328], 0.7866, -0.1305],
  ['Buck 1981', water.saturationPressureBuck1981, [-0.0001, -0.0489, -0.0870, -0.0815, -0.0103, 0.1399, 1.1096], 2.1669, 0.1399],
  ['Alduchov-Eskridge 1996', water.saturationPressureAlduchovEskridge1996, [-0.0444, -0.1774, -0.2513, -0.2430, -0.1384, 0.0699, 1.3187], 2.6215, -0.2588],
  ['WMO', water.saturationPressureWmo, [-0.0019, -0.1766, -0.2874, -0.3119, -0.2367, -0.0550, 1.1270], 2.3930, -0.3147],
  ['Bolton 1980', water.saturationPressureBolton1980, [-0.0018, -0.0838, -0.1014, -0.0329, 0.1349, 0.4085, 1.8619], 3.3058, 0.4085],
];
// Half a unit of the last digit of the error, and of the pressure it is against.
const digit = (t: number) => 0.00005 + 0.05 / iapws95[t]! + 1e-9;

describe.each(errors)('%s', (_, pressure, expected, atBoiling, worst) => {
  test.each(at.map((t, i) => [t, expected[i]!] as const))('misses IAPWS-95 at %d °C by %d %%', (t, error) => {
    expect(Math.abs(missOf(pressure, t) - error)).toBeLessThanOrEqual(digit(t));
  });

  test('misses it at 100 °C, where IF97 meets it to the digit, as it should', () => {
    const miss = (pressure(373.15) / water.saturationPressureIapws1997(373.15) - 1) * 100;
    expect(Math.abs(miss - atBoiling)).toBeLessThanOrEqual(0.0001);
  });

  test('is from 0 to 50 °C no further off than its worst, and nearly so somewhere', () => {
    const misses = Object.keys(iapws95).map(Number).filter((t) => t <= 50).map((t) => ({ t, miss: missOf(pressure, t) }));
    for (const { t, miss } of misses) expect(Math.abs(miss), `${t} °C`).toBeLessThanOrEqual(Math.abs(worst) + digit(t));
    expect(Math.max(...misses.map(({ miss }) => miss * Math.sign(worst)))).toBeGreaterThan(0.95 * Math.abs(worst));
  });
});

test('the default is within 0.01 % of IAPWS-95 from 0.01 to 100 °C', () => {
  for (const t of Object.keys(iapws95).map(Number)) expect(Math.abs(missOf((T) => water.saturationPressureOverWater(T), t)), `${t} °C`).toBeLessThan(0.01);
  // ASHRAE Handbook Fundamentals 2017, chapter 1, Table 3.
  expect(Math.abs(water.saturationPressureOverWater(373.15) / 101418 - 1)).toBeLessThan(1e-4);
});

describe('to a billionth of a kelvin, by every correlation and over all that is taken in', () => {
  test('a dew point comes back from its pressure', () => {
    fc.assert(fc.property(celsius(-95, 70), correlation, (T, name) => {
      awayFromTriplePoint(T);
      expect(Math.abs(water.saturationTemperatureOverWater(water.saturationPressureOverWater(T, name), name).value - T)).toBeLessThan(1e-9);
    }));
  });

  test('a frost point comes back from its pressure', () => {
    fc.assert(fc.property(celsius(-95, 0), fc.constantFrom(...names.filter(water.hasIceEquation)), (T, name) => {
      expect(Math.abs(water.saturationTemperatureOverIce(water.saturationPressureOverIce(T, name), name).value - T)).toBeLessThan(1e-9);
    }));
  });

  test('a column of dew and frost points is what they are one by one', () => {
    fc.assert(fc.property(celsius(-60, 70), within(0.001, 1), correlation, (T, rh, name) => {
      const e = vapour.vapourPressureFromRelativeHumidity(T, rh, name);
      const [point] = vapour.dewOrFrostPoints(Float64Array.of(e), name);
      const { value } = e < 611.657 && water.hasIceEquation(name) ? water.saturationTemperatureOverIce(e, name) : water.saturationTemperatureOverWater(e, name);
      expect(Math.abs(point! - value)).toBeLessThan(1e-9);
    }));
  });

  const air = fc.record({ T: celsius(-40, 60), pressure: within(50e3, 110e3), name: correlation });

  test('a wet bulb comes back from the humidity ratio that it makes', () => {
    fc.assert(fc.property(air, within(0, 30), ({ T, pressure, name }, lower) => {
      const wetBulb = T - lower;
      awayFromTriplePoint(wetBulb);
      const wick = wetBulb < 273.15 && water.hasIceEquation(name) ? 'ice' : 'water';
      const ratio = vapour.humidityRatioFromWetBulb(T, wetBulb, pressure, name, wick);
      fc.pre(ratio >= 0);
      expect(Math.abs(vapour.wetBulbFromHumidityRatio(T, ratio, pressure, name, wick).value - wetBulb)).toBeLessThan(1e-9);
    }));
  });

  test('every air up to saturation has a wet bulb, and a column of them is what they are one by one', () => {
    fc.assert(fc.property(air, fc.oneof(within(0, 1), fc.constantFrom(0, 1, 1 - 1e-9, 0.999)), ({ T, pressure, name }, rh) => {
      const ratio = vapour.humidityRatioFromVapourPressure(vapour.vapourPressureFromRelativeHumidity(T, rh, name), pressure);
      const { value } = vapour.wetBulbFromHumidityRatio(T, ratio, pressure, name);
      const { wetBulbs } = vapour.wetBulbsFromRelativeHumidity(Float64Array.of(T), Float64Array.of(rh), pressure, name);
      expect(Math.abs(wetBulbs[0]! - value)).toBeLessThan(1e-9);
    }), { numRuns: 2000 });
  });
});
