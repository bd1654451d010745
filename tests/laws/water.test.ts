import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as water from '../../src/water/index.js';
import type { SaturationCorrelation, SaturationEquation } from '../../src/water/index.js';

const names = Object.keys(water.saturationEquationsOverWater) as SaturationCorrelation[];
const withIce = names.filter(water.hasIceEquation);
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const inside = ({ range: [low, high] }: SaturationEquation) => within(low, high);

describe.each(names)('%s', (name) => {
  const [low] = water.saturationEquationOverWater(0, name).range;
  const temperature = within(low, water.saturationEquationsOverWater[name].range[1]);

  test('vapour pressure over water rises with temperature', () => {
    fc.assert(fc.property(temperature, temperature, (a, b) => {
      fc.pre(b - a > 1e-5);
      expect(water.saturationPressureOverWater(b, name)).toBeGreaterThan(water.saturationPressureOverWater(a, name));
    }));
  });

  test('the temperature comes back from the pressure over water', () => {
    fc.assert(fc.property(temperature, (T) => {
      // Where IAPWS changes its equation, two temperatures a millionth of a kelvin apart share a pressure.
      fc.pre(name !== 'IAPWS' || Math.abs(T - water.triplePointTemperature) > 2e-6);
      const root = water.saturationTemperatureOverWater(water.saturationPressureOverWater(T, name), name);
      expect(Math.abs(root.value - T)).toBeLessThan(1e-9);
      expect(root.residual).toBeLessThanOrEqual(1e-11 * water.saturationPressureOverWater(T, name));
    }));
  });
});

describe.each(withIce)('%s over ice', (name) => {
  const ice = water.saturationEquationsOverIce[name];

  test('vapour pressure rises with temperature', () => {
    fc.assert(fc.property(inside(ice), inside(ice), (a, b) => {
      fc.pre(b - a > 1e-6);
      expect(water.saturationPressureOverIce(b, name)).toBeGreaterThan(water.saturationPressureOverIce(a, name));
    }));
  });

  test('the temperature comes back from the pressure', () => {
    fc.assert(fc.property(inside(ice), (T) => {
      expect(Math.abs(water.saturationTemperatureOverIce(water.saturationPressureOverIce(T, name), name).value - T)).toBeLessThan(1e-9);
    }));
  });

  test('is below that over water, and meets it at the triple point', () => {
    fc.assert(fc.property(within(Math.max(ice.range[0], 233.15), 273.1), (T) => {
      expect(water.saturationPressureOverIce(T, name)).toBeLessThan(water.saturationPressureOverWater(T, name));
    }));
    expect(water.saturationPressureOverIce(273.16, name) / water.saturationPressureOverWater(273.16, name)).toBeCloseTo(1, 3);
  });

  test('is within 0.1 % of IAPWS from -35 to 0 °C', () => {
    fc.assert(fc.property(within(238.15, 273.15), (T) => {
      expect(Math.abs(water.saturationPressureOverIce(T, name) / water.saturationPressureOverIce(T) - 1)).toBeLessThan(1e-3);
    }));
  });
});

// Worst distance from IAPWS-95 between 0 and 50 °C, in %; IF97 itself is 0.007 % from it.
test.each([
  ['FAO-56', 0.1305, water.saturationPressureFao56],
  ['Hyland-Wexler 1983', 0.0225, water.saturationPressureHylandWexler1983],
  ['WMO', 0.3147, water.saturationPressureWmo],
  ['Buck 1996', 0.0442, water.saturationPressureBuck1996],
  ['Buck 1981', 0.1399, water.saturationPressureBuck1981],
  ['Wagner-Pruss 1993', 0.0072, water.saturationPressureWagnerPruss1993],
  ['Murphy-Koop 2005', 0.0086, water.saturationPressureMurphyKoop2005],
  ['Alduchov-Eskridge 1996', 0.2588, water.saturationPressureAlduchovEskridge1996],
  ['Bolton 1980', 0.4085, water.saturationPressureBolton1980],
  ['Sonntag 1990', 0.0065, water.saturationPressureSonntag1990],
])('%s is as near to IAPWS from 0.01 to 50 °C as published', (_, worst, pressure) => {
  fc.assert(fc.property(within(273.16, 323.15), (T) => {
    expect(100 * Math.abs(pressure(T) / water.saturationPressureOverWater(T) - 1)).toBeLessThanOrEqual(worst + 0.0075);
  }));
});

test.each([
  ['Wagner 1994', water.saturationPressureOverIceWagner1994, water.saturationPressureOverWater],
  ['Murphy-Koop 2005', water.saturationPressureOverIceMurphyKoop2005, water.saturationPressureMurphyKoop2005],
])('%s over ice is near IAPWS, and below that over water', (_, overIce, overWater) => {
  fc.assert(fc.property(within(238.15, 273.1), (T) => {
    expect(Math.abs(overIce(T) / water.saturationPressureOverIce(T) - 1)).toBeLessThan(1e-3);
    expect(overIce(T)).toBeLessThan(overWater(T));
  }));
});

test('IF97 and Murphy-Koop meet at the triple point', () => {
  expect(Math.abs(water.saturationPressureIapws1997(273.16) - water.saturationPressureMurphyKoop2005(273.16))).toBeLessThan(5e-5);
  expect(Math.abs(water.saturationPressureIapws1997(water.triplePointTemperature) - water.triplePointPressure)).toBeLessThan(1e-4);
});

test('the equation over water is named, also below the triple point', () => {
  expect(water.saturationEquationOverWater(273.16).name).toBe('IAPWS-IF97');
  expect(water.saturationEquationOverWater(273.15).name).toBe('Murphy-Koop 2005');
  expect(water.saturationEquationOverWater(263.15, 'ASHRAE').name).toBe('Hyland-Wexler 1983');
});

test('there is no frost point above the triple point', () => {
  expect(() => water.saturationTemperatureOverIce(612)).toThrow('no sign change');
});

test('the slope of FAO-56 is the derivative', () => {
  fc.assert(fc.property(within(273.15, 323.15), (T) => {
    const derivative = (water.saturationPressureFao56(T + 1e-3) - water.saturationPressureFao56(T - 1e-3)) / 2e-3;
    expect(water.saturationPressureSlopeFao56(T) / derivative).toBeCloseTo(1, 4);
  }));
});

test('the slope of any equation, added up, is the rise of the pressure', () => {
  fc.assert(fc.property(within(235, 320), within(0.1, 1), fc.constantFrom(...names), (T, rise, name) => {
    const equation = water.saturationEquationsOverWater[name];
    // Simpson's rule.
    const slope = (share: number) => water.saturationPressureSlope(T + share * rise, equation);
    const sum = (rise / 6) * (slope(0) + 4 * slope(0.5) + slope(1));
    expect(sum / (equation.pressure(T + rise) - equation.pressure(T))).toBeCloseTo(1, 6);
  }));
});

test('water is densest at 4 °C', () => {
  const densest = water.waterDensityIapws2008(277.13);
  fc.assert(fc.property(within(253.15, 383.15), (T) => {
    expect(water.waterDensityIapws2008(T)).toBeLessThan(densest + 1e-5);
  }));
});

test('the two density equations agree from 0 to 50 °C', () => {
  fc.assert(fc.property(within(273.15, 323.15), (T) => {
    expect(Math.abs(water.waterDensityKell1975(T) - water.waterDensityIapws2008(T))).toBeLessThan(0.005);
  }));
});

test('warm water flows more easily and shields charges less', () => {
  fc.assert(fc.property(within(253.15, 383), within(1e-3, 1), (T, step) => {
    expect(water.waterViscosityIapws2008(T + step)).toBeLessThan(water.waterViscosityIapws2008(T));
    expect(water.waterKinematicViscosity(T + step)).toBeLessThan(water.waterKinematicViscosity(T));
    expect(water.waterPermittivityIapws2008(T + step)).toBeLessThan(water.waterPermittivityIapws2008(T));
    expect(water.debyeHuckelSlope(T + step)).toBeGreaterThan(water.debyeHuckelSlope(T));
  }));
});

test('the older permittivity and slope stay near the present ones from 0 to 40 °C', () => {
  fc.assert(fc.property(within(273.15, 313.15), (T) => {
    expect(Math.abs(water.waterPermittivityHarnedOwen1958(T) / water.waterPermittivityIapws2008(T) - 1)).toBeLessThan(0.002);
    expect(Math.abs(water.debyeHuckelSlopeTrussell1998(T) / water.debyeHuckelSlope(T) - 1)).toBeLessThan(0.003);
  }));
});
