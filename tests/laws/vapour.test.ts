import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as vapour from '../../src/vapour/index.js';
import {
  saturationEquationsOverWater, saturationPressureFao56, saturationPressureOverIce, saturationPressureOverWater, saturationTemperatureOverIce,
  saturationTemperatureOverWater,
} from '../../src/water/index.js';
import type { SaturationCorrelation } from '../../src/water/index.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const celsius = (low: number, high: number) => within(low + 273.15, high + 273.15);
const names = Object.keys(saturationEquationsOverWater) as SaturationCorrelation[];
const correlation = fc.constantFrom(...names);
const pressure = within(60e3, 106e3);
const humidity = within(0.01, 1);

const humidityRatio = (temperature: number, relativeHumidity: number, air: number) =>
  vapour.humidityRatioFromVapourPressure(vapour.vapourPressureFromRelativeHumidity(temperature, relativeHumidity), air);

describe('deficit', () => {
  test('is nothing at saturation and the whole saturation pressure in dry air', () => {
    fc.assert(fc.property(celsius(-30, 60), correlation, (T, name) => {
      expect(vapour.deficitFromRelativeHumidity(T, 1, name)).toBe(0);
      expect(vapour.deficitFromRelativeHumidity(T, 0, name)).toBe(saturationPressureOverWater(T, name));
    }));
  });

  test('and actual pressure make the saturation pressure', () => {
    fc.assert(fc.property(celsius(-30, 60), humidity, correlation, (T, rh, name) => {
      const sum = vapour.deficitFromRelativeHumidity(T, rh, name) + vapour.vapourPressureFromRelativeHumidity(T, rh, name);
      expect(sum / saturationPressureOverWater(T, name)).toBeCloseTo(1, 12);
    }));
  });

  test('of a leaf as warm as the air is that of the air', () => {
    fc.assert(fc.property(celsius(0, 50), humidity, (T, rh) => {
      expect(vapour.leafDeficitFromRelativeHumidity(T, T, rh)).toBeCloseTo(vapour.deficitFromRelativeHumidity(T, rh), 8);
    }));
  });

  test('of a leaf at the dew point is nothing, and negative below it', () => {
    fc.assert(fc.property(celsius(5, 50), within(0.1, 1), (T, rh) => {
      const dew = vapour.dewPointFromRelativeHumidity(T, rh).value;
      fc.pre(Math.abs(dew - 273.16) > 1e-5);
      expect(Math.abs(vapour.leafDeficitFromRelativeHumidity(dew, T, rh))).toBeLessThan(1e-8);
      expect(vapour.leafDeficitFromRelativeHumidity(dew - 0.01, T, rh)).toBeLessThan(0);
    }));
  });

  test('gives back the humidity that makes it', () => {
    fc.assert(fc.property(celsius(0, 50), celsius(0, 50), humidity, correlation, (leaf, air, rh, name) => {
      const deficit = vapour.leafDeficitFromRelativeHumidity(leaf, air, rh, name);
      expect(vapour.relativeHumidityFromLeafDeficit(leaf, air, deficit, name)).toBeCloseTo(rh, 9);
    }));
  });
});

describe('dew and frost point', () => {
  test('a surface is at its limit of condensation when it is at the dew point', () => {
    fc.assert(fc.property(celsius(1, 50), within(0.1, 40), correlation, (air, colder, name) => {
      fc.pre(Math.abs(air - colder - 273.16) > 1e-5);
      const limit = vapour.condensationHumidity(air, air - colder, name);
      expect(limit).toBeLessThan(1);
      expect(vapour.dewPointFromRelativeHumidity(air, limit, name).value).toBeCloseTo(air - colder, 8);
    }));
  });

  test('frost point lies above dew point below 0 °C, and neither above the air but in air saturated over ice', () => {
    fc.assert(fc.property(celsius(-30, 0), within(0.05, 1), (T, rh) => {
      const frost = vapour.frostPointFromRelativeHumidity(T, rh).value;
      const dew = vapour.dewPointFromRelativeHumidity(T, rh).value;
      expect(frost).toBeGreaterThanOrEqual(dew);
      expect(dew).toBeLessThanOrEqual(T + 1e-9);
      expect(frost > T).toBe(vapour.vapourPressureFromRelativeHumidity(T, rh) > saturationPressureOverIce(T));
    }));
  });

  test('dew point of saturated air is the temperature of the air', () => {
    fc.assert(fc.property(celsius(0.02, 50), correlation, (T, name) => {
      expect(vapour.dewPointFromRelativeHumidity(T, 1, name).value).toBeCloseTo(T, 9);
    }));
  });

  test('the printed FAO-56 dew point is 0.05 K from the inverse of its own equation', () => {
    fc.assert(fc.property(celsius(0, 50), (T) => {
      expect(Math.abs(vapour.dewPointFao56(saturationPressureFao56(T)) - T)).toBeLessThan(0.05);
    }));
  });
});

describe('wet bulb', () => {
  test('lies between dew point and dry bulb', () => {
    fc.assert(fc.property(celsius(1, 60), humidity, pressure, (T, rh, air) => {
      const { value, wick } = vapour.wetBulbFromHumidityRatio(T, humidityRatio(T, rh, air), air);
      const vapourPressure = vapour.vapourPressureFromRelativeHumidity(T, rh);
      const { value: lowest } = wick === 'ice' ? saturationTemperatureOverIce(vapourPressure) : saturationTemperatureOverWater(vapourPressure);
      expect(value).toBeGreaterThanOrEqual(lowest - 1e-9);
      expect(value).toBeLessThanOrEqual(T);
    }));
  });

  test('comes back from the humidity ratio it makes, wet or iced', () => {
    fc.assert(fc.property(celsius(-25, 60), within(0, 20), pressure, fc.constantFrom('water' as const, 'ice' as const), (T, lower, air, wick) => {
      fc.pre(wick === 'water' || T - lower <= 273.15);
      // Where IAPWS changes its equation, two temperatures a millionth of a kelvin apart share a pressure.
      fc.pre(Math.abs(T - lower - 273.16) > 1e-5);
      const ratio = vapour.humidityRatioFromWetBulb(T, T - lower, air, 'IAPWS', wick);
      fc.pre(ratio >= 0);
      const root = vapour.wetBulbFromHumidityRatio(T, ratio, air, 'IAPWS', wick);
      expect(Math.abs(root.value - (T - lower))).toBeLessThan(1e-9);
      expect(root.wick).toBe(wick);
      expect(root.residual).toBeLessThan(1e-12);
    }));
  });

  test('of saturated air is the dry bulb', () => {
    fc.assert(fc.property(celsius(0.02, 60), pressure, correlation, (T, air, name) => {
      const ratio = vapour.humidityRatioFromVapourPressure(saturationPressureOverWater(T, name), air);
      expect(vapour.wetBulbFromHumidityRatio(T, ratio, air, name).value).toBeCloseTo(T, 8);
    }));
  });

  test('rises with humidity, but for the step where the wick freezes', () => {
    fc.assert(fc.property(celsius(8, 60), within(0.01, 0.98), pressure, (T, rh, air) => {
      const [drier, moister] = [rh, rh + 0.01].map((one) => vapour.wetBulbFromHumidityRatio(T, humidityRatio(T, one, air), air).value);
      expect(moister).toBeGreaterThan(drier!);
    }));
  });

  test('stays below boiling in air hotter than that', () => {
    fc.assert(fc.property(celsius(101, 150), within(0, 1), (T, ratio) => {
      expect(vapour.wetBulbFromHumidityRatio(T, ratio, 101325).value).toBeLessThan(373.124);
    }));
  });

  test.each([
    ['no equation over ice', () => vapour.humidityRatioFromWetBulb(283.15, 272.15, 101325, 'FAO-56', 'ice')],
    ['moister than saturated over water', () => vapour.wetBulbFromHumidityRatio(293.15, 0.02, 101325)],
    ['moister than saturated over ice', () => vapour.wetBulbFromHumidityRatio(263.15, humidityRatio(263.15, 1, 101325), 101325, 'IAPWS', 'ice')],
    ['melts an iced wick', () => vapour.wetBulbFromHumidityRatio(283.15, 0.005, 101325, 'IAPWS', 'ice')],
  ])('refuses what cannot be: %s', (message, call) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(message);
  });

  test('below that of dry air has no humidity', () => {
    expect(vapour.humidityRatioFromWetBulb(303.15, 274.15, 101325)).toBeLessThan(0);
  });

  test('of a psychrometer gives back the vapour pressure', () => {
    fc.assert(fc.property(celsius(1, 50), within(0.05, 1), pressure, fc.constantFrom(...Object.values(vapour.psychrometerCoefficientsFao56)), (T, rh, air, a) => {
      const e = vapour.vapourPressureFromRelativeHumidity(T, rh, 'FAO-56');
      const { value } = vapour.wetBulbOfPsychrometer(T, e, air, a, 'FAO-56');
      expect(value).toBeLessThanOrEqual(T);
      expect(vapour.vapourPressureFromPsychrometer(T, value, air, a, 'FAO-56')).toBeCloseTo(e, 8);
    }));
  });

  test('by Stull is within what he claims, away from hot dry air', () => {
    fc.assert(fc.property(celsius(0, 35), within(0.15, 0.99), (T, rh) => {
      const { value, wick } = vapour.wetBulbFromHumidityRatio(T, humidityRatio(T, rh, 101325), 101325);
      fc.pre(wick === 'water');
      const error = vapour.wetBulbStull2011(T, rh) - value;
      expect(error).toBeGreaterThan(-1);
      expect(error).toBeLessThan(0.65);
    }));
  });
});

describe('moist air', () => {
  test('humidity ratio and absolute humidity give back the vapour pressure', () => {
    fc.assert(fc.property(celsius(-20, 60), humidity, pressure, (T, rh, air) => {
      const e = vapour.vapourPressureFromRelativeHumidity(T, rh);
      const back = vapour.vapourPressureFromHumidityRatio(vapour.humidityRatioFromVapourPressure(e, air), air);
      expect(back / e).toBeCloseTo(1, 12);
      expect(vapour.vapourPressureFromAbsoluteHumidity(T, vapour.absoluteHumidityFromVapourPressure(T, e)) / e).toBeCloseTo(1, 12);
      expect(vapour.relativeHumidityFromVapourPressure(T, e)).toBeCloseTo(rh, 12);
    }));
  });

  test('absolute humidity over density is specific humidity', () => {
    fc.assert(fc.property(celsius(-20, 50), humidity, pressure, (T, rh, air) => {
      const ratio = humidityRatio(T, rh, air);
      const absolute = vapour.absoluteHumidityFromVapourPressure(T, vapour.vapourPressureFromRelativeHumidity(T, rh));
      expect(absolute / vapour.moistAirDensity(T, ratio, air) / vapour.specificHumidityFromHumidityRatio(ratio)).toBeCloseTo(1, 4);
    }));
  });

  test('lacks nothing at saturation and something below', () => {
    fc.assert(fc.property(celsius(-20, 60), within(0.01, 0.99), pressure, (T, rh, air) => {
      expect(vapour.saturationDeficitFromHumidityRatio(T, humidityRatio(T, 1, air), air)).toBe(0);
      expect(vapour.saturationDeficitFromHumidityRatio(T, humidityRatio(T, rh, air), air)).toBeGreaterThan(0);
    }));
  });

  test('is lighter and richer in heat the more vapour it holds', () => {
    fc.assert(fc.property(celsius(0, 60), within(0, 0.1), within(1e-6, 0.01), pressure, (T, ratio, more, air) => {
      expect(vapour.moistAirDensity(T, ratio + more, air)).toBeLessThan(vapour.moistAirDensity(T, ratio, air));
      expect(vapour.moistAirEnthalpy(T, ratio + more)).toBeGreaterThan(vapour.moistAirEnthalpy(T, ratio));
    }));
  });

  test('keeps its enthalpy at the wet bulb, but for the water it takes up', () => {
    fc.assert(fc.property(celsius(5, 50), within(0.05, 1), pressure, (T, rh, air) => {
      const ratio = humidityRatio(T, rh, air);
      const { value, wick } = vapour.wetBulbFromHumidityRatio(T, ratio, air);
      fc.pre(wick === 'water');
      const saturated = vapour.humidityRatioFromVapourPressure(saturationPressureOverWater(value), air);
      const water = (saturated - ratio) * 4186 * (value - 273.15);
      const left = vapour.moistAirEnthalpy(T, ratio) + water;
      expect(Math.abs(left - vapour.moistAirEnthalpy(value, saturated))).toBeLessThan(1e-6 * left);
    }));
  });

  test('enhancement factors are a little above one and near each other', () => {
    fc.assert(fc.property(celsius(15, 27), within(60e3, 106e3), (T, air) => {
      const factors = [vapour.enhancementFactorCipm2007(T, air), vapour.enhancementFactorBuck1981(air), vapour.enhancementFactorWmo(air)];
      for (const factor of factors) expect(factor).toBeGreaterThan(1.002);
      expect(Math.max(...factors) - Math.min(...factors)).toBeLessThan(0.0015);
    }));
  });
});

test('air pressure falls with altitude, and the two formulas stay within 1 %', () => {
  expect(vapour.pressureAtAltitudeAshrae(0)).toBe(101325);
  fc.assert(fc.property(within(-400, 4000), within(1, 100), (z, up) => {
    for (const at of [vapour.pressureAtAltitudeAshrae, vapour.pressureAtAltitudeFao56]) expect(at(z + up)).toBeLessThan(at(z));
    expect(Math.abs(vapour.pressureAtAltitudeAshrae(z) / vapour.pressureAtAltitudeFao56(z) - 1)).toBeLessThan(0.01);
  }));
});

test('the mean of two saturation pressures lies above that of the mean temperature', () => {
  fc.assert(fc.property(celsius(5, 45), within(0.1, 20), (highest, span) => {
    const lowest = highest - span;
    expect(vapour.dailySaturationPressureFao56(highest, lowest)).toBeGreaterThan(saturationPressureFao56((highest + lowest) / 2));
    const rh = 0.6;
    const mean = vapour.dailyVapourPressureFromMeanHumidityFao56(highest, lowest, rh);
    expect(vapour.dailyVapourPressureFao56(highest, lowest, rh, rh)).toBeCloseTo(mean, 8);
    expect(vapour.dailyVapourPressureFromHighestHumidityFao56(lowest, 1)).toBe(saturationPressureFao56(lowest));
  }));
});

test('the psychrometric constant is 0.665e-3 of the pressure at 20 °C', () => {
  fc.assert(fc.property(pressure, (air) => {
    const constant = vapour.psychrometricConstantFromLatentHeat(air, 2.45e6);
    expect(constant / vapour.psychrometricConstantFao56(air)).toBeCloseTo(1, 3);
  }));
});

describe('the calculations agree with one another', () => {
  const air = fc.record({
    airTemperature: within(-40, 60).map((t) => `${t} °C` as const),
    relativeHumidity: within(0.001, 1),
    correlation: fc.constantFrom(...names),
  });
  const atmosphericPressure = pressure.map((p) => `${p} Pa` as const);

  test('humidity comes back from its deficit, of air and of leaf', () => {
    fc.assert(fc.property(air, within(-40, 60), ({ airTemperature, relativeHumidity, correlation }, leaf) => {
      const leafTemperature = `${leaf} °C` as const;
      const { vapourPressureDeficit, leafVapourPressureDeficit } = vapour.leafVapourPressureDeficit({ airTemperature, relativeHumidity, leafTemperature, correlation });
      expect(vapour.humidityForDeficit({ airTemperature, vapourPressureDeficit, correlation }).relativeHumidity.si).toBeCloseTo(relativeHumidity, 9);
      fc.pre(leafVapourPressureDeficit.si >= 0);
      expect(vapour.humidityForDeficit({ airTemperature, vapourPressureDeficit: leafVapourPressureDeficit, leafTemperature, correlation }).relativeHumidity.si).toBeCloseTo(relativeHumidity, 9);
    }));
  });

  test('humidity comes back from its wet bulb, unless the wick is supercooled', () => {
    fc.assert(fc.property(air, atmosphericPressure, ({ airTemperature, relativeHumidity, correlation }, atmosphericPressure) => {
      const { wetBulbTemperature, notes } = vapour.wetBulb({ airTemperature, relativeHumidity, atmosphericPressure, correlation });
      fc.pre(correlation === 'FAO-56' || notes.every(({ code }) => code !== 'supercooled-wick'));
      // At 0 °C sharp the reading does not say whether the wick is iced; at 0.01 °C IAPWS changes its equation.
      fc.pre(Math.abs(wetBulbTemperature.si - 273.15) > 1e-9 && Math.abs(wetBulbTemperature.si - 273.16) > 1e-5);
      const back = vapour.humidityFromWetBulb({ airTemperature, wetBulbTemperature, atmosphericPressure, correlation });
      expect(back.relativeHumidity.si).toBeCloseTo(relativeHumidity, 8);
    }));
  });

  test('dew point, wet bulb and air temperature lie in this order, whatever the wick', () => {
    fc.assert(fc.property(air, atmosphericPressure, (input, atmosphericPressure) => {
      const { dewPoint, wetBulbTemperature, airDensity, specificVolume, humidityRatio } = vapour.airState({ ...input, atmosphericPressure });
      expect(dewPoint.si).toBeLessThanOrEqual(wetBulbTemperature.si + 2e-6);
      expect(wetBulbTemperature.in('°C')).toBeLessThanOrEqual(parseFloat(input.airTemperature) + 1e-9);
      expect(airDensity.si * specificVolume.si).toBeCloseTo(1 + humidityRatio.si, 12);
    }));
  });

  test('a surface gets wet below the dew point, above its limit of humidity', () => {
    fc.assert(fc.property(air, within(-40, 60), ({ airTemperature, relativeHumidity }, surface) => {
      const surfaceTemperature = `${surface} °C` as const;
      const { wet, condensationHumidity, margin } = vapour.condensation({ airTemperature, relativeHumidity, surfaceTemperature });
      const { dewPoint, frostPoint } = vapour.dewPoint({ airTemperature, relativeHumidity });
      expect(margin.si).toBeCloseTo(surface + 273.15 - (frostPoint ?? dewPoint).si, 9);
      fc.pre(Math.abs(margin.si) > 1e-5);
      expect(wet).toBe(margin.si < 0);
      expect(wet).toBe(condensationHumidity !== undefined && relativeHumidity > condensationHumidity.si);
    }));
  });
});
