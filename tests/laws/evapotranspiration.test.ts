import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as dosing from '../../src/dosing/index.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const air = fc.record({ temperature: within(273.15, 318.15), deficit: within(1, 4000), pressure: within(70e3, 104e3), windSpeed: within(0.5, 8) });
const energy = within(0, 25e6);

describe('reference evapotranspiration', () => {
  test('rises with deficit and energy, and is linear in both', () => {
    fc.assert(fc.property(air, energy, within(100, 1000), within(0.1e6, 5e6), (above, net, drier, more) => {
      const evapotranspiration = (deficit: number, radiation: number) => dosing.referenceEvapotranspirationFao56({ ...above, deficit }, radiation) * 86400e3;
      const here = evapotranspiration(above.deficit, net);
      expect(evapotranspiration(above.deficit + drier, net)).toBeGreaterThan(here);
      expect(evapotranspiration(above.deficit, net + more)).toBeGreaterThan(here);
      expect(evapotranspiration(above.deficit, net) - evapotranspiration(above.deficit, 0)).toBeCloseTo(evapotranspiration(0, net), 9);
    }));
  });

  test('rises with wind where the air is dry, and falls with it where it is saturated', () => {
    fc.assert(fc.property(air, energy, within(0.2, 3), (above, net, more) => {
      const wind = (deficit: number, windSpeed: number) => dosing.referenceEvapotranspirationFao56({ ...above, deficit, windSpeed }, net);
      expect(wind(0, above.windSpeed + more)).toBeLessThanOrEqual(wind(0, above.windSpeed));
      expect(dosing.referenceEvapotranspirationFao56({ ...above, windSpeed: above.windSpeed + more }, 0)).toBeGreaterThanOrEqual(dosing.referenceEvapotranspirationFao56(above, 0));
    }));
  });

  test('of still, saturated air takes Δ/(Δ + γ) of the energy, and never more than all of it', () => {
    fc.assert(fc.property(air, energy, (above, net) => {
      const depth = dosing.referenceEvapotranspirationFao56({ ...above, deficit: 0, windSpeed: 0 }, net) * 86400e3;
      expect(depth).toBeLessThanOrEqual(0.408e-6 * net);
      expect(depth).toBeGreaterThanOrEqual(0.3 * 0.408e-6 * net);
    }));
  });

  test('of an hour is that of a day with the same air and a twenty-fourth of the energy, but for the rounding of 900/24 to 37', () => {
    fc.assert(fc.property(air, energy, (above, net) => {
      const [day, hour] = [dosing.referenceEvapotranspirationFao56(above, net), dosing.hourlyReferenceEvapotranspirationFao56(above, net / 24, 0)];
      expect(hour).toBeLessThanOrEqual(day * (1 + 1e-12));
      expect(hour).toBeGreaterThanOrEqual(day * (37 * 24 / 900) * (1 - 1e-12));
    }));
  });

  test('comes to nothing where dew falls, with a note', () => {
    const polar = dosing.referenceEvapotranspiration({ latitude: '66 °', dayOfYear: 355, highestAirTemperature: '-5 °C', lowestAirTemperature: '-9 °C', highestRelativeHumidity: 1, lowestRelativeHumidity: 1, sunshine: '0 h', windSpeed: '1 m/s' });
    expect(polar.referenceEvapotranspiration.si).toBe(0);
    expect(polar.notes.map(({ code }) => code)).toContain('dew');
  });
});

describe('the air of a day', () => {
  const share = within(0, 1);
  const day = { latitude: '48 °', dayOfYear: 172, highestAirTemperature: '27 °C', lowestAirTemperature: '14 °C', sunshine: '9.5 h', windSpeed: '2 m/s' } as const;

  test('gives an evapotranspiration whatever its humidities, and humidities out of order are pointed out', () => {
    fc.assert(fc.property(share, share, share, (one, other, meanRelativeHumidity) => {
      const [lowestRelativeHumidity, highestRelativeHumidity] = [Math.min(one, other), Math.max(one, other)];
      const { referenceEvapotranspiration, notes } = dosing.referenceEvapotranspiration({ ...day, lowestRelativeHumidity, meanRelativeHumidity, highestRelativeHumidity });
      expect(referenceEvapotranspiration.in('mm/d')).toBeGreaterThan(0);
      expect(referenceEvapotranspiration.in('mm/d')).toBeLessThan(15);
      expect(notes.some(({ code }) => code === 'humidities-out-of-order')).toBe(meanRelativeHumidity < lowestRelativeHumidity || meanRelativeHumidity > highestRelativeHumidity);
    }));
  });
});

describe('net longwave radiation', () => {
  const kelvin = within(263.15, 313.15);

  test('grows with a clearer sky and shrinks with moister air, and never turns round', () => {
    fc.assert(fc.property(kelvin, kelvin, within(0, 8000), within(0, 1), within(0.01, 0.3), (highest, lowest, vapour, clear, more) => {
      const loss = (pressure: number, relative: number) => dosing.netLongwaveFao56(highest, lowest, pressure, relative);
      expect(loss(vapour, clear)).toBeGreaterThanOrEqual(0);
      expect(loss(vapour, clear + more)).toBeGreaterThanOrEqual(loss(vapour, clear));
      expect(loss(vapour + 100, clear)).toBeLessThanOrEqual(loss(vapour, clear));
      expect(loss(vapour, 1 + more)).toBe(loss(vapour, 1));
    }));
  });

  test('of an hour is a twenty-fourth of that of a day with one temperature, to the rounding of the constants', () => {
    fc.assert(fc.property(kelvin, within(0, 4000), within(0.3, 1), (T, vapour, clear) => {
      expect(dosing.hourlyNetLongwaveFao56(T, vapour, clear) * 24 / dosing.netLongwaveFao56(T, T, vapour, clear)).toBeCloseTo(1, 4);
    }));
  });
});

test('heat into the soil from the month before is that from both neighbours where months warm alike', () => {
  fc.assert(fc.property(within(-20, 30), within(-8, 8), (previous, step) => {
    expect(dosing.monthlySoilHeatSoFarFao56(previous, previous + step)).toBeCloseTo(dosing.monthlySoilHeatFao56(previous, previous + 2 * step), 6);
  }));
});

describe('transpiration by radiation and deficit', () => {
  test('is linear in radiation and in deficit', () => {
    fc.assert(fc.property(within(0, 700), within(0, 3), within(0, 8), within(0, 1), within(0, 60), (G, D, leafAreaIndex, A, B) => {
      const heat = (radiation: number, deficit: number) => dosing.transpirationByRadiationAndDeficit({
        globalRadiation: `${radiation} W/m²`, vapourPressureDeficit: `${deficit} kPa`, leafAreaIndex, radiationCoefficient: A, deficitCoefficient: `${B} W/(m²·kPa)`,
      }).latentHeatFlux.in('W/m²');
      expect(heat(G, D)).toBeCloseTo(heat(G, 0) + heat(0, D), 7);
      expect(heat(2 * G, 2 * D)).toBeCloseTo(2 * heat(G, D), 7);
      expect(heat(G, 0)).toBeLessThanOrEqual(G);
    }));
  });

  test('through a day is the same at each moment, and adds up', () => {
    fc.assert(fc.property(fc.array(fc.tuple(within(0, 1000), within(0, 4)), { minLength: 2, maxLength: 20 }), within(0.1, 8), (rows, leafAreaIndex) => {
      const day = dosing.transpirationThroughDay({
        readingTime: { unit: 'h', values: rows.map((_, i) => i) }, globalRadiation: { unit: 'W/m²', values: rows.map(([G]) => G) }, vapourPressureDeficit: { unit: 'kPa', values: rows.map(([, D]) => D) }, leafAreaIndex,
      });
      const rates = rows.map(([G, D]) => dosing.transpirationByRadiationAndDeficit({ globalRadiation: `${G} W/m²`, vapourPressureDeficit: `${D} kPa`, leafAreaIndex }).transpirationRate.in('L/(m²·h)'));
      for (const [i, rate] of rates.entries()) expect(day.transpirationRate.in('L/(m²·h)')[i]).toBeCloseTo(rate, 9);
      const sum = rates.reduce((a, b) => a + b) - (rates[0]! + rates.at(-1)!) / 2;
      expect(day.transpiration.in('L/m²')).toBeCloseTo(sum, 9);
      expect(day.transpirationSoFar.at(-1)!.si).toBe(day.transpiration.si);
      const soFar = day.transpirationSoFar.si;
      expect(soFar.every((x, i) => i === 0 || x >= soFar[i - 1]!)).toBe(true);
    }));
  });
});

describe('water for radiation', () => {
  test('is within the energy exactly where the evaporated share says so', () => {
    fc.assert(fc.property(within(0.1, 10), within(1, 45), (millilitres, megajoules) => {
      const { transpiration, evaporatedShare, notes } = dosing.transpirationByRadiationSum({ radiationSum: `${megajoules} MJ/m²`, waterPerRadiation: `${millilitres} mL·cm²/(J·m²)` });
      const heat = transpiration.in('L/m²') * 2.45;
      expect(heat / megajoules).toBeCloseTo(evaporatedShare.in('fraction'), 9);
      expect(notes.some(({ severity }) => severity === 'danger')).toBe(heat > megajoules);
    }));
  });

  test('by leaf area never takes more than the radiation, but for what is taken up in the dark', () => {
    fc.assert(fc.property(within(0, 30e6), within(0, 10), (radiation, leafAreaIndex) => {
      expect((dosing.waterUptakeCarmassi2007(radiation, leafAreaIndex) - 0.188e-3) * 2.45e9).toBeLessThanOrEqual(radiation);
    }));
  });

  test('in a plastic house hardly jumps between its two lines', () => {
    const depth = (day: number) => dosing.plasticHouseEvapotranspirationFernandez2009(day, 20e6, 0.65) * 86400e3;
    expect(Math.abs(depth(221) - depth(220))).toBeLessThan(0.1);
    // The first line holds up to day 220: (0.288 + 0.0019 · 220) · 20 · 0.65/2.45 mm.
    expect(depth(220)).toBeCloseTo(0.706 * 13 / 2.45, 12);
    expect(depth(1)).toBeGreaterThan(0);
    expect(depth(366)).toBeGreaterThan(0);
  });
});
