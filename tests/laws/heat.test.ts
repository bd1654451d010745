import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  archedHouse, balancedRise, barrelCourse, barrelTransfer, barrelWarmUp, flatHouse, gableHouse, heaterForBarrel, houseHeatLoss, houseTemperature, lumpedTemperature,
  lumpedTemperatureInRamp, lumpedTemperatureInSwing, lumpedTimeToReach, mixWaters, readAir, shading, steadyAir, swingingAir, ventArea, ventilationForRise, naturalVentilation, waterEnthalpyIapws2008, waterSpecificHeatIapws2008,
} from '../../src/heat/index.js';
import { InputError } from '../../src/calculation/problem.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const close = (a: number, b: number, relative: number, absolute = 0) => expect(Math.abs(a - b)).toBeLessThanOrEqual(relative * Math.max(Math.abs(a), Math.abs(b)) + absolute);
const kelvin = within(275, 320);
const constant = within(600, 1e6);

describe('a body of one temperature', () => {
  test('stays as it is over no time, or one so short that doubles have none of it', () => {
    for (const time of [0, 5e-324]) expect(lumpedTemperatureInRamp(time, 281, 280, 290, 1e4)).toBe(281);
  });

  test('time to reach is the inverse of temperature at a time', () => {
    fc.assert(fc.property(kelvin, kelvin, constant, within(0.001, 6), (start, air, timeConstant, turns) => {
      fc.pre(Math.abs(start - air) > 0.1);
      const there = lumpedTemperature(turns * timeConstant, start, air, timeConstant);
      const time = lumpedTimeToReach(there, start, air, timeConstant)!;
      // A temperature near that of the air tells little of the time: its last digit counts for more.
      close(time, turns * timeConstant, 1e-9, (4 * Number.EPSILON * 320 * timeConstant * Math.exp(turns)) / Math.abs(start - air));
      close(lumpedTemperature(time, start, air, timeConstant), there, 1e-12);
    }));
  });

  test('never gets to where the air is, nor beyond it', () => {
    fc.assert(fc.property(kelvin, kelvin, constant, within(0, 1e6), (start, air, timeConstant, time) => {
      const there = lumpedTemperature(time, start, air, timeConstant);
      expect(there).toBeGreaterThanOrEqual(Math.min(start, air) * (1 - 1e-14));
      expect(there).toBeLessThanOrEqual(Math.max(start, air) * (1 + 1e-14));
      if (start !== air) expect(lumpedTimeToReach(air + (air - start), start, air, timeConstant)).toBeUndefined();
    }));
  });

  test('in a ramp or a swing is the same in one step as in many, and in steady air as in one of no swing', () => {
    fc.assert(fc.property(kelvin, kelvin, kelvin, constant, within(60, 2e5), within(0, 86400), fc.integer({ min: 2, max: 9 }), (start, first, last, timeConstant, time, clock, parts) => {
      const swing = { mean: first, amplitude: 8, timeOfHighest: 54_000 };
      let [ramped, swung] = [start, start];
      for (let i = 0; i < parts; i++) {
        const at = (step: number) => first + ((last - first) * step) / parts;
        ramped = lumpedTemperatureInRamp(time / parts, ramped, at(i), at(i + 1), timeConstant);
        swung = lumpedTemperatureInSwing(time / parts, swung, swing, clock + (i * time) / parts, timeConstant);
      }
      close(ramped, lumpedTemperatureInRamp(time, start, first, last, timeConstant), 1e-12);
      close(swung, lumpedTemperatureInSwing(time, start, swing, clock, timeConstant), 1e-11);
      close(lumpedTemperatureInRamp(time, start, first, first, timeConstant), lumpedTemperature(time, start, first, timeConstant), 1e-13);
      close(lumpedTemperatureInSwing(time, start, { ...swing, amplitude: 0 }, clock, timeConstant), lumpedTemperature(time, start, first, timeConstant), 1e-12);
    }));
  });
});

const wall = fc.record({
  height: within(0.1, 2), diameter: within(0.1, 2), insideFilm: within(50, 1000), emissivity: within(0.05, 1), windSpeed: fc.oneof(fc.constant(0), within(0, 20)),
  layers: fc.tuple(within(0.001, 0.01), within(0, 0.1)).map(([plastic, foam]) => [{ thickness: plastic, conductivity: 0.5 }, { thickness: foam, conductivity: 0.04 }]),
});

describe('a barrel', () => {
  test('passes as much through its wall as its films carry off', () => {
    fc.assert(fc.property(wall, kelvin, kelvin, (barrel, water, air) => {
      const { transfer, convection, radiation } = barrelTransfer(barrel, water, air);
      const inner = 1 / barrel.insideFilm + barrel.layers.reduce((sum, { thickness, conductivity }) => sum + thickness / conductivity, 0);
      close(transfer, 1 / (inner + 1 / (convection + radiation)), 1e-9);
      expect(barrelTransfer({ ...barrel, windSpeed: barrel.windSpeed + 1 }, water, air).transfer).toBeGreaterThan(transfer);
      expect(barrelTransfer({ ...barrel, emissivity: barrel.emissivity / 2 }, water, air).transfer).toBeLessThan(transfer);
      expect(barrelTransfer({ ...barrel, layers: [...barrel.layers, { thickness: 0.01, conductivity: 0.04 }] }, water, air).transfer).toBeLessThan(transfer);
    }));
  });

  test('keeps its energy: what the water gained is what came through the wall and from the heater', () => {
    fc.assert(fc.property(wall, within(278, 310), within(280, 310), within(0, 500), (barrel, start, air, power) => {
      const [heatCapacity, area] = [4e5, 1.2];
      const transfer = (water: number, around: number) => barrelTransfer(barrel, water, around).transfer;
      const times = Array.from({ length: 361 }, (_, i) => i * 40);
      const { temperatures, residual } = barrelCourse({ start, heatCapacity, area, power, air: steadyAir(air), transfer }, times, 1e-4);
      const gained = heatCapacity * (temperatures.at(-1)! - start);
      let came = power * times.at(-1)!;
      for (let i = 1; i < times.length; i++) {
        const middle = (temperatures[i - 1]! + temperatures[i]!) / 2;
        came += 40 * area * transfer(middle, air) * (air - middle);
      }
      expect(residual).toBeLessThanOrEqual(1e-4);
      close(gained, came, 1e-5, 50 + heatCapacity * 1e-4);
    }), { numRuns: 25 });
  });

  test('stays between start and air without heater and sun, and comes the nearer the longer', () => {
    fc.assert(fc.property(within(1, 90), within(0, 60), within(1, 3000), wall, (start, air, mass, { windSpeed, emissivity }) => {
      const result = barrelWarmUp.try({ waterMass: `${mass} kg`, waterTemperature: `${start} °C`, airTemperature: `${air} °C`, windSpeed: `${windSpeed} m/s`, emissivity, lookAhead: '24 h', stepLength: '1 h' });
      if (!result.ok) {
        expect(result.error).toBeInstanceOf(InputError);
        return;
      }
      const course = result.value.waterTemperatures.in('°C');
      for (let i = 1; i < course.length; i++) {
        expect(Math.abs(course[i]! - air)).toBeLessThanOrEqual(Math.abs(course[i - 1]! - air) + 1e-9);
        expect((course[i]! - air) * (start - air)).toBeGreaterThanOrEqual(-1e-9);
      }
    }), { numRuns: 60 });
  });

  test('is at the wanted temperature when it says so', () => {
    fc.assert(fc.property(within(2, 30), within(0, 1), within(8, 30), within(1, 12), within(0, 24), fc.boolean(), (start, share, mean, amplitude, clock, byFilms) => {
      const given = {
        waterMass: '150 kg', waterTemperature: `${start} °C`, highestAirTemperature: `${mean + amplitude} °C`, lowestAirTemperature: `${mean - amplitude} °C`, startTime: `${clock} h`,
        barrelHeatTransfer: byFilms ? undefined : '8 W/(m²·K)',
      } as const;
      const { waterTemperatures } = barrelWarmUp({ ...given, lookAhead: '30 h' });
      const course = waterTemperatures.in('°C');
      const wanted = start + share * (course[Math.floor(course.length * 0.7)]! - start);
      const { timeToReach } = barrelWarmUp({ ...given, lookAhead: '30 h', wantedTemperature: `${wanted} °C` });
      expect(timeToReach).toBeDefined();
      if (timeToReach!.in('min') < 5) return;
      close(barrelWarmUp({ ...given, lookAhead: timeToReach! }).endTemperature.in('°C'), wanted, 0, byFilms ? 3e-3 : 1e-9);
    }), { numRuns: 40 });
  });

  test('follows readings as it follows the swing that they were taken from', () => {
    fc.assert(fc.property(within(5, 25), within(1, 8), within(0, 24), within(5, 25), (mean, amplitude, clock, start) => {
      const swing = { mean: mean + 273.15, amplitude, timeOfHighest: 54_000 };
      const times = Array.from({ length: 289 }, (_, i) => i * 300);
      const barrel = { start: start + 273.15, heatCapacity: 837_200, area: 1.64, power: 0, transfer: 8 };
      const exact = barrelCourse({ ...barrel, air: swingingAir(swing, clock * 3600) }, times);
      const read = barrelCourse({ ...barrel, air: readAir(times, times.map((t) => swingingAir(swing, clock * 3600).at(t))) }, times);
      times.forEach((_, i) => close(exact.temperatures[i]!, read.temperatures[i]!, 0, amplitude * 2e-4));
    }), { numRuns: 30 });
  });

  test('gives a finite course, or one clear error, for any air, wall, heater and sun', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const between = (low: number, high: number) => share.map((x) => low + (high - low) * x ** 2);
    fc.assert(fc.property(
      fc.record({ mass: between(0.1, 10_000), start: between(0, 95), air: between(-40, 60), swing: between(0, 40), wanted: between(0, 95), power: between(0, 20_000), sun: between(0, 1400), hours: between(0.1, 720), wind: between(0, 40), foam: between(0, 0.5), emissivity: between(0.02, 1), film: between(20, 5000), clock: between(0, 24), kind: fc.constantFrom('steady', 'swing', 'read') }),
      ({ mass, start, air, swing, wanted, power, sun, hours, wind, foam, emissivity, film, clock, kind }) => {
        const top = Math.min(60, air + swing);
        const result = barrelWarmUp.try({
          waterMass: `${mass} kg`, waterTemperature: `${start} °C`, wantedTemperature: `${wanted} °C`, heaterPower: `${power} W`, globalRadiation: `${sun} W/m²`, windSpeed: `${wind} m/s`, insulationThickness: `${foam} m`,
          emissivity, insideFilm: `${film} W/(m²·K)`, lookAhead: `${hours} h`, stepLength: `${Math.max(1 / 60, hours / 100)} h`,
          ...(kind === 'steady' ? { airTemperature: `${air} °C` } : kind === 'swing' ? { highestAirTemperature: `${top} °C`, lowestAirTemperature: `${air} °C`, startTime: `${clock} h` }
            : { readingTime: { unit: 'h', values: [0, clock / 30, 100, 800] }, airTemperatures: { unit: '°C', values: [air, top, null, air] } }),
        });
        if (!result.ok) {
          expect(result.error, result.error.message).toBeInstanceOf(InputError);
          return;
        }
        const { waterTemperatures, times, timeToReach, convergence } = result.value;
        expect(times.length).toBe(waterTemperatures.length);
        expect(waterTemperatures.si.every((t) => t >= 273.15 && t <= 373.15)).toBe(true);
        expect(convergence.temperatureResidual.si).toBeLessThanOrEqual(1e-3);
        if (timeToReach) expect(timeToReach.in('h')).toBeLessThanOrEqual(hours * (1 + 1e-12));
      }), { numRuns: 200 });
  });

  test('with the power for a time is warm in that time', () => {
    fc.assert(fc.property(within(1, 40), within(1, 50), within(-10, 30), within(0.2, 48), (start, rise, air, hours) => {
      const given = { waterMass: '120 kg', waterTemperature: `${start} °C`, wantedTemperature: `${start + rise} °C`, barrelArea: '1.2 m²', barrelHeatTransfer: '8 W/(m²·K)', airTemperature: `${air} °C` } as const;
      const { heaterPower } = heaterForBarrel({ ...given, heatingTime: `${hours} h` });
      if (heaterPower.si < 1 || heaterPower.si > 1e5) return;
      close(heaterForBarrel({ ...given, heaterPower }).heatingTime.in('h'), hours, 1e-7);
    }));
  });
});

describe('waters poured together', () => {
  const waters = fc.array(fc.record({ volume: within(0.1, 500), temperature: within(0, 100) }), { minLength: 2, maxLength: 10 });
  const written = (given: readonly { volume: number; temperature: number }[]) => given.map(({ volume, temperature }) => ({ volume: `${volume} L` as const, waterTemperature: `${temperature} °C` as const }));

  test('keep their heat, and lie between the coldest and the hottest', () => {
    fc.assert(fc.property(waters, (given) => {
      const { mixedTemperature, temperatureByHeatContent } = mixWaters({ waters: written(given) });
      const volume = given.reduce((sum, one) => sum + one.volume, 0);
      close(mixedTemperature.in('°C') * volume, given.reduce((sum, one) => sum + one.volume * one.temperature, 0), 1e-9, 1e-9 * volume);
      for (const mixed of [mixedTemperature, temperatureByHeatContent]) {
        expect(mixed.in('°C')).toBeGreaterThanOrEqual(Math.min(...given.map(({ temperature }) => temperature)) - 1e-9);
        expect(mixed.in('°C')).toBeLessThanOrEqual(Math.max(...given.map(({ temperature }) => temperature)) + 1e-9);
      }
    }));
  });

  test('take the volume that makes the wanted temperature', () => {
    fc.assert(fc.property(within(0.1, 500), within(0, 40), within(45, 100), within(0.01, 0.99), (volume, cold, hot, share) => {
      const wanted = cold + share * (hot - cold);
      const { addedVolume } = mixWaters({ waters: [{ volume: `${volume} L`, waterTemperature: `${cold} °C` }, { waterTemperature: `${hot} °C` }], wantedTemperature: `${wanted} °C` });
      close(mixWaters({ waters: written([{ volume, temperature: cold }, { volume: addedVolume!.in('L'), temperature: hot }]) }).mixedTemperature.in('°C'), wanted, 1e-9, 1e-9);
    }));
  });

  test('heat content rises by the specific heat', () => {
    fc.assert(fc.property(within(260, 380), (t) => {
      close((waterEnthalpyIapws2008(t + 0.01) - waterEnthalpyIapws2008(t - 0.01)) / 0.02, waterSpecificHeatIapws2008(t), 1e-6);
    }));
  });
});

describe('a house', () => {
  const side = within(2, 50);

  test('of no slope is flat, of a half circle half a cylinder, and never smaller than its floor', () => {
    fc.assert(fc.property(side, side, within(0.5, 5), within(0, 1), (width, length, eaves, share) => {
      const flat = flatHouse(width, length, eaves);
      for (const make of [gableHouse, archedHouse]) {
        const low = make(width, length, eaves, eaves + 1e-9 * width);
        for (const key of ['floorArea', 'coverArea', 'volume'] as const) close(low[key], flat[key], 1e-7);
        const house = make(width, length, eaves, eaves + (share * width) / 2);
        expect(house.coverArea).toBeGreaterThanOrEqual(house.floorArea);
        expect(house.volume).toBeGreaterThanOrEqual(flat.volume * (1 - 1e-12));
      }
      expect(archedHouse(width, length, eaves, eaves + width / 4).volume).toBeGreaterThan(gableHouse(width, length, eaves, eaves + width / 4).volume);
      const angle = 0.05 * width / 8;
      close(archedHouse(width, length, 0, angle * 0.999999).volume, archedHouse(width, length, 0, angle * 1.000001).volume, 1e-5);
    }));
  });

  test('loses in proportion to the difference, between its lowest and highest, more under one layer than two', () => {
    fc.assert(fc.property(within(1, 20), within(5, 20), (difference, start) => {
      const given = { houseShape: 'arch', houseWidth: '5 m', houseLength: '8 m', eavesHeight: '0 m', ridgeHeight: '2.5 m', construction: 'new single film', outsideTemperature: `${start - difference} °C` } as const;
      const at = (inside: number, cover: 'single film' | 'inflated double film') => houseHeatLoss({ ...given, cover, houseTemperature: `${inside} °C` });
      const [one, half] = [at(start, 'single film'), at(start - difference / 2, 'single film')];
      close(one.heatLoss.si, 2 * half.heatLoss.si, 1e-9);
      close(one.heatLoss.si, one.houseConductance.si * difference, 1e-9);
      close(one.heatLoss.si, one.transmissionLoss.si + one.infiltrationLoss.si, 1e-12);
      expect(one.lowestHeatLoss.si).toBeLessThanOrEqual(one.heatLoss.si);
      expect(one.highestHeatLoss.si).toBeGreaterThanOrEqual(one.heatLoss.si);
      expect(at(start, 'inflated double film').heatLoss.si).toBeLessThan(one.heatLoss.si);
    }));
  });

  const sunny = fc.record({ sun: within(10, 1200), floor: within(5, 500), more: within(1, 3), transfer: within(1, 8), outside: within(-5, 35), shade: within(0, 0.9) });

  test('in balance loses what the sun brings, by cover and by air', () => {
    fc.assert(fc.property(sunny, within(0, 30), within(0.1, 4), within(0, 5), ({ sun, floor, more, transfer, outside, shade }, vents, height, wind) => {
      const result = houseTemperature.try({
        globalRadiation: `${sun} W/m²`, floorArea: `${floor} m²`, coverArea: `${floor * more} m²`, coverHeatTransfer: `${transfer} W/(m²·K)`, outsideTemperature: `${outside} °C`, shadingShare: shade,
        ventArea: `${vents} m²`, heightBetweenVents: `${height} m`, windSpeed: `${wind} m/s`,
      });
      if (!result.ok) {
        expect(result.error).toBeInstanceOf(InputError);
        return;
      }
      const { solarGain, transmissionLoss, ventilationLoss, temperatureRise } = result.value;
      close(solarGain.si, transmissionLoss.si + ventilationLoss.si, 1e-9);
      expect(temperatureRise.si).toBeGreaterThan(0);
    }));
  });

  test('the air for a rise, put through, makes that rise; the shade for a temperature, put up, makes that temperature', () => {
    fc.assert(fc.property(sunny, within(1, 15), within(0.05, 0.95), ({ sun, floor, more, transfer, outside }, rise, part) => {
      const house = { globalRadiation: `${sun} W/m²`, floorArea: `${floor} m²`, coverArea: `${floor * more} m²`, coverHeatTransfer: `${transfer} W/(m²·K)` } as const;
      const { ventilationFlow } = ventilationForRise({ ...house, temperatureRise: `${rise} K` });
      fc.pre(ventilationFlow.si > 1e-6);
      const outsideTemperature = `${outside} °C` as const;
      close(houseTemperature({ ...house, outsideTemperature, fanFlow: ventilationFlow }).temperatureRise.si, rise, 1e-9);
      const less = `${part * ventilationFlow.si} m³/s` as const;
      const { shadingShare } = shading({ ...house, outsideTemperature, ventilationFlow: less, wantedTemperature: `${outside + rise} °C` });
      close(houseTemperature({ ...house, outsideTemperature, fanFlow: less, shadingShare }).temperatureRise.si, rise, 1e-8);
    }));
  });

  test('vents of the area for a flow let that flow through', () => {
    fc.assert(fc.property(within(0.05, 20), within(0.2, 5), within(1, 15), within(0, 6), (wanted, height, rise, wind) => {
      const place = { heightBetweenVents: `${height} m`, windSpeed: `${wind} m/s`, houseTemperature: `${20 + rise} °C`, outsideTemperature: '20 °C' } as const;
      const found = ventArea({ ...place, wantedVentilation: `${wanted} m³/s` });
      close(naturalVentilation({ ...place, ventArea: found.ventArea }).ventilationFlow.si, wanted, 1e-9);
      expect(found.ventAreaInCalm!.si).toBeGreaterThanOrEqual(found.ventArea.si * (1 - 1e-12));
    }));
  });

  test('balances whatever drives the air', () => {
    fc.assert(fc.property(within(0.001, 1e6), within(0.1, 1e4), within(0, 100), within(0, 10), (gain, conductance, fan, stack) => {
      const flow = (rise: number) => fan + stack * Math.sqrt(rise);
      const { value, residual } = balancedRise(gain, conductance, flow);
      const perKelvin = conductance + 1.5 * 1207.2 * flow(value);
      close((conductance + 1207.2 * flow(value)) * value, gain, 1e-12, 1e-12 * perKelvin);
      expect(residual).toBeLessThanOrEqual(1e-12 * (gain + perKelvin));
    }));
  });
});
