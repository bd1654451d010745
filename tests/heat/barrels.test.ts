import { describe, expect, test } from 'vitest';
import { barrelWarmUp, heaterForBarrel, heatStore, mixWaters, wallMaterials } from '../../src/heat/index.js';
import type { InputError } from '../../src/calculation/problem.js';

const problems = (attempt: { ok: boolean; error?: Error }) => (attempt.ok ? [] : (attempt as unknown as { error: InputError }).error.problems.map(({ path, hint }) => `${path}${hint === undefined ? '' : `: ${hint}`}`));
const codes = ({ notes }: { notes: readonly { code: string }[] }) => notes.map(({ code }) => code);
const wattsIn = (told: string): number => Number(/about ([\d.]+) W/.exec(told)![1]);
const garden = { barrelVolume: '200 L', waterTemperature: '9 °C' } as const;
const readings = (hours: (number | null)[], values: (number | null)[]) => ({ readingTime: { unit: 'h', values: hours }, airTemperatures: { unit: '°C', values } }) as const;

describe('the air around a barrel', () => {
  test('is told in one way, and wholly', () => {
    expect(problems(barrelWarmUp.try(garden))).toEqual(['airTemperature']);
    expect(problems(barrelWarmUp.try({ ...garden, airTemperature: '15 °C', highestAirTemperature: '20 °C', lowestAirTemperature: '8 °C' }))).toEqual(['airTemperature']);
    expect(problems(barrelWarmUp.try({ ...garden, highestAirTemperature: '20 °C' }))).toEqual(['lowestAirTemperature']);
    expect(problems(barrelWarmUp.try({ ...garden, highestAirTemperature: '8 °C', lowestAirTemperature: '20 °C' }))).toEqual(['lowestAirTemperature: are the two swapped?']);
    expect(problems(barrelWarmUp.try({ ...garden, readingTime: { unit: 'h', values: [0, 60] } }))).toEqual(['airTemperatures']);
  });

  test('is read for as long as the barrel is followed, in times that rise', () => {
    expect(problems(barrelWarmUp.try({ ...garden, ...readings([0, 10], [5, 9]) }))).toEqual(['airTemperatures: start within the readings, or look ahead less far']);
    expect(problems(barrelWarmUp.try({ ...garden, ...readings([0, 30, 20, 60], [5, 9, 9, 9]) }))[0]).toMatch(/^readingTime: sort/);
    expect(problems(barrelWarmUp.try({ ...garden, ...readings([0, 60], [5, 9, 9]) }))).toContain('airTemperatures');
    expect(problems(barrelWarmUp.try({ ...garden, ...readings([0, 60], [null, null]) }))).toEqual(['airTemperatures']);
    expect(problems(barrelWarmUp.try({ ...garden, startTime: '3 h', lookAhead: '2 h', ...readings([0, 4, 6], [5, null, 9]) }))).toEqual([]);
    expect(problems(barrelWarmUp.try({ ...garden, startTime: '3 h', lookAhead: '2 h', ...readings([0, 4, 6], [5, 7, null]) }))).toHaveLength(1);
  });

  test('a gap is bridged, and said', () => {
    const bridged = barrelWarmUp({ ...garden, lookAhead: '5 h', ...readings([0, 2, 6], [6, null, 12]) });
    expect(codes(bridged)).toContain('gaps');
    expect(bridged.endTemperature.in('°C')).toBeCloseTo(barrelWarmUp({ ...garden, lookAhead: '5 h', ...readings([0, 6], [6, 12]) }).endTemperature.in('°C'), 4);
  });

  test('readings between the rows count', () => {
    const given = { ...garden, barrelHeatTransfer: '8 W/(m²·K)', lookAhead: '6 h', ...readings([0, 2.9, 3, 3.1, 6], [9, 9, 60, 9, 9]) } as const;
    const course = barrelWarmUp({ ...given, stepLength: '2 h' });
    expect([...course.times.in('h')]).toEqual([0, 2, 4, 6]);
    expect(course.endTemperature.in('°C')).toBeCloseTo(barrelWarmUp({ ...given, stepLength: '1 min' }).endTemperature.in('°C'), 10);
    expect(course.endTemperature.in('°C')).toBeGreaterThan(9.02);
  });
});

describe('a barrel', () => {
  test('that never comes to the temperature says so, and what heater would do it', () => {
    const cold = barrelWarmUp({ ...garden, airTemperature: '14 °C', wantedTemperature: '16 °C', barrelHeatTransfer: '8 W/(m²·K)', barrelArea: '1.64 m²' });
    expect(cold.timeToReach).toBeUndefined();
    const told = cold.notes.find(({ code }) => code === 'not-reached')!.text;
    const watts = wattsIn(told);
    const heated = barrelWarmUp({ ...garden, airTemperature: '14 °C', barrelHeatTransfer: '8 W/(m²·K)', barrelArea: '1.64 m²', heaterPower: `${watts} W` });
    expect(Math.abs(heated.endTemperature.in('°C') - 16)).toBeLessThan(0.05);
    expect(codes(heated)).toContain('mains-electricity');
  });

  test.each([
    { airTemperature: '14 °C', wantedTemperature: '16 °C' },
    { airTemperature: '5 °C', wantedTemperature: '60 °C' },
    { airTemperature: '5 °C', wantedTemperature: '45 °C', heaterPower: '300 W', lookAhead: '5 d' },
    { highestAirTemperature: '15 °C', lowestAirTemperature: '2 °C', wantedTemperature: '18 °C', lookAhead: '12 h' },
    { highestAirTemperature: '15 °C', lowestAirTemperature: '2 °C', wantedTemperature: '25 °C', windSpeed: '8 m/s' },
    { airTemperature: '20 °C', wantedTemperature: '25 °C', lookAhead: '5 d' },
    { highestAirTemperature: '24 °C', lowestAirTemperature: '12 °C', wantedTemperature: '25 °C', emissivity: 0.2, wallMaterial: 'steel' },
  ] as const)('with the heater that it is told of in %j comes to the temperature, and not far beyond', (air) => {
    const told = barrelWarmUp({ ...garden, ...air }).notes.find(({ code }) => code === 'not-reached')!.text;
    const withShare = (part: number) => barrelWarmUp({ ...garden, ...air, heaterPower: `${part * wattsIn(told) + ('heaterPower' in air ? Number.parseFloat(air.heaterPower) : 0)} W` });
    const heated = withShare(1);
    expect(heated.timeToReach).toBeDefined();
    expect(withShare(0.98).timeToReach).toBeUndefined();
    expect(heated.endTemperature.in('°C') - heated.waterTemperatures.in('°C')[0]!).toBeLessThan(1.1 * (Number.parseFloat(air.wantedTemperature) - 9));
  });

  test('that no heater warms in the time is told so', () => {
    const told = barrelWarmUp({ barrelVolume: '10 m³', waterTemperature: '9 °C', airTemperature: '14 °C', wantedTemperature: '60 °C', lookAhead: '2 h' }).notes.find(({ code }) => code === 'not-reached')!.text;
    expect(told).toContain('no heater does that in the time');
    // 10 t by 51 K in 2 h is 296 kW; 100 kW does it in 6 h, with what is lost in less than 7 h.
    expect(barrelWarmUp({ barrelVolume: '10 m³', waterTemperature: '9 °C', airTemperature: '14 °C', wantedTemperature: '60 °C', lookAhead: '7 h', heaterPower: '100 kW' }).timeToReach).toBeDefined();
  });

  test('that comes to be too warm for roots, or scalds, says so, and asks whether °F was meant', () => {
    const wanting = (wantedTemperature: '28 °C' | '35 °C' | '50 °C' | '64 °C' | '90 °C') => barrelWarmUp({ ...garden, airTemperature: '20 °C', wantedTemperature });
    const warned = (result: ReturnType<typeof barrelWarmUp>) => result.notes.filter(({ code }) => code === 'too-warm-for-roots' || code === 'hot-water').map(({ severity, code }) => `${severity} ${code}`);
    expect(warned(wanting('28 °C'))).toEqual([]);
    expect([warned(wanting('35 °C')), warned(wanting('50 °C'))]).toEqual([['caution too-warm-for-roots'], ['caution too-warm-for-roots']]);
    expect(warned(wanting('64 °C'))).toEqual(['danger hot-water']);
    const textOf = (result: ReturnType<typeof barrelWarmUp>) => result.notes.find(({ code }) => code === 'too-warm-for-roots' || code === 'hot-water')!.text;
    // (64 - 32)/1.8; 35 °F is hardly above frost, and 90 °F too warm as well.
    expect(textOf(wanting('64 °C'))).toContain('Where 64 °F was meant, write the unit: it is 17.8 °C.');
    for (const wanted of ['35 °C', '90 °C'] as const) expect(textOf(wanting(wanted))).not.toContain('°F');
    // A heater of one horsepower, with nothing wanted.
    expect(warned(barrelWarmUp({ ...garden, airTemperature: '20 °C', heaterPower: '746 W' }))).toEqual(['danger hot-water']);
    expect(codes(heaterForBarrel({ waterMass: '120 kg', waterTemperature: '8 °C', wantedTemperature: '64 °C', heaterPower: '1 kW' }))).toContain('hot-water');
  });

  test('freezes and is warm at times between its rows too', () => {
    const swing = { barrelVolume: '2 L', waterTemperature: '9 °C', highestAirTemperature: '20 °C', startTime: '15 h', lookAhead: '3 d', stepLength: '1 d' } as const;
    const frost = barrelWarmUp({ ...swing, lowestAirTemperature: '-12 °C', wantedTemperature: '15 °C' });
    expect(codes(frost)).toContain('freezes');
    expect(frost.notes.find(({ code }) => code === 'not-reached')!.text).toMatch(/lag it and keep a heater in it\.$/);
    const mild = { ...swing, lowestAirTemperature: '2 °C', wantedTemperature: '15 °C', barrelHeatTransfer: '8 W/(m²·K)' } as const;
    expect(mild.stepLength).toBe('1 d');
    expect(barrelWarmUp(mild).timeToReach!.in('h')).toBeCloseTo(barrelWarmUp({ ...mild, stepLength: '5 min' }).timeToReach!.in('h'), 9);
  });

  test('that freezes stays at 0 °C, with a note of danger', () => {
    const frost = barrelWarmUp({ ...garden, airTemperature: '-15 °C', lookAhead: '5 d', windSpeed: '5 m/s', wantedTemperature: '20 °C' });
    expect(frost.endTemperature.si).toBe(273.15);
    expect(frost.notes.find(({ code }) => code === 'freezes')!.severity).toBe('danger');
    expect(frost.timeToReach).toBeUndefined();
  });

  test('that would boil is refused', () => {
    expect(problems(barrelWarmUp.try({ ...garden, airTemperature: '20 °C', heaterPower: '5 kW' }))).toEqual(['heaterPower: take a smaller heater, or a shorter time']);
    expect(problems(barrelWarmUp.try({ barrelVolume: '0.5 L', waterTemperature: '90 °C', airTemperature: '40 °C', globalRadiation: '1400 W/m²', sunlitArea: '1 m²' }))).toEqual(['globalRadiation: check sunlitArea and the amount of water']);
  });

  test('of an impossible depth, twice told or with too many rows is refused', () => {
    expect(problems(barrelWarmUp.try({ ...garden, airTemperature: '20 °C', barrelDiameter: '10 cm' }))).toEqual(['barrelDiameter']);
    expect(problems(barrelWarmUp.try({ ...garden, waterMass: '200 kg', airTemperature: '20 °C' }))).toHaveLength(1);
    expect(problems(barrelWarmUp.try({ ...garden, airTemperature: '20 °C', lookAhead: '30 d', stepLength: '5 min' }))).toEqual(['stepLength: take longer steps']);
  });

  test('hardly minds what its wall is made of, but minds lagging and bright metal', () => {
    const at = (more: object) => barrelWarmUp({ ...garden, airTemperature: '20 °C', ...more }).barrelHeatTransfer.in('W/(m²·K)');
    expect(at({ wallMaterial: 'steel', wallThickness: '1 mm' }) / at({})).toBeLessThan(1.1);
    expect(at({ insulationThickness: '5 cm' }) / at({})).toBeLessThan(0.15);
    expect(at({ wallMaterial: 'steel', emissivity: 0.2 }) / at({ wallMaterial: 'steel' })).toBeLessThan(0.7);
  });

  test('has side and lid of its water, one and a half diameters high where nothing else is said', () => {
    const wide = barrelWarmUp({ ...garden, airTemperature: '20 °C', barrelDiameter: '0.6 m', globalRadiation: '500 W/m²' });
    // The side is four volumes over the diameter, the lid π/4 of its square; what is seen from aside is the side over π.
    expect(wide.barrelArea.in('m²')).toBeCloseTo((4 * 0.2) / 0.6 + (Math.PI / 4) * 0.36, 9);
    expect(wide.solarGain.in('W')).toBeCloseTo((0.5 * 500 * 4 * 0.2) / 0.6 / Math.PI, 9);
    const diameter = Math.cbrt((4 * 0.2) / (1.5 * Math.PI));
    expect(barrelWarmUp({ ...garden, airTemperature: '20 °C' }).barrelArea.in('m²')).toBeCloseTo((4 * 0.2) / diameter + (Math.PI / 4) * diameter ** 2, 9);
  });

  test('is filled at eight in the morning where nothing else is said', () => {
    const swing = { ...garden, highestAirTemperature: '24 °C', lowestAirTemperature: '12 °C' } as const;
    expect(barrelWarmUp(swing).endTemperature.si).toBe(barrelWarmUp({ ...swing, startTime: '8 h' }).endTemperature.si);
  });

  test('of still water lags behind at its middle', () => {
    expect(codes(barrelWarmUp({ ...garden, airTemperature: '20 °C', windSpeed: '10 m/s', insideFilm: '60 W/(m²·K)' }))).toContain('not-of-one-temperature');
  });

  test('the end is the last row also where the rows do not fit', () => {
    const { times, waterTemperatures, endTemperature } = barrelWarmUp({ ...garden, airTemperature: '20 °C', lookAhead: '1.6 h', stepLength: '1 h' });
    expect([...times.in('h')]).toEqual([0, 1, 1.6]);
    expect(waterTemperatures.si[2]).toBe(endTemperature.si);
    expect([...barrelWarmUp({ ...garden, airTemperature: '20 °C', lookAhead: '30 min', stepLength: '1 h' }).times.in('min')]).toEqual([0, 30]);
  });
});

describe('heaters, waters and stores', () => {
  const loss = { barrelArea: '1.64 m²', barrelHeatTransfer: '8 W/(m²·K)', airTemperature: '5 °C' } as const;
  test('a heater too weak is told what the barrel loses', () => {
    const attempt = heaterForBarrel.try({ waterMass: '200 kg', waterTemperature: '8 °C', wantedTemperature: '20 °C', heaterPower: '150 W', ...loss });
    expect(String(!attempt.ok && attempt.error.message)).toMatch(/196\.8 W/);
    expect(problems(heaterForBarrel.try({ waterMass: '200 kg', waterTemperature: '8 °C', wantedTemperature: '20 °C', heaterPower: '1 kW', barrelArea: '1 m²' }))).toEqual(['barrelHeatTransfer', 'airTemperature']);
    expect(problems(heaterForBarrel.try({ waterMass: '200 kg', waterTemperature: '20 °C', wantedTemperature: '8 °C', heaterPower: '1 kW' }))).toEqual(['wantedTemperature: are the two swapped?']);
  });

  test('no heater is asked for where the air is enough', () => {
    const warm = heaterForBarrel({ waterMass: '100 kg', waterTemperature: '8 °C', wantedTemperature: '10 °C', heatingTime: '30 h', ...loss, airTemperature: '25 °C' });
    expect([warm.heaterPower.si, warm.heaterEnergy.si]).toEqual([0, 0]);
    expect(codes(warm)).toContain('no-heater-needed');
    expect(codes(heaterForBarrel({ waterMass: '100 kg', waterTemperature: '8 °C', wantedTemperature: '10 °C', heatingTime: '1 h', ...loss, airTemperature: '25 °C' }))).not.toContain('no-heater-needed');
  });

  test('waters that cannot make a temperature are refused, scalding ones cautioned', () => {
    const cold = { volume: '180 L', waterTemperature: '8 °C' } as const;
    expect(problems(mixWaters.try({ waters: [cold, { waterTemperature: '20 °C' }], wantedTemperature: '25 °C' }))).toEqual(['wantedTemperature: take hotter water']);
    expect(problems(mixWaters.try({ waters: [cold, { waterTemperature: '20 °C' }], wantedTemperature: '5 °C' }))).toEqual(['wantedTemperature: take colder water']);
    expect(problems(mixWaters.try({ waters: [cold, { waterTemperature: '20 °C' }], wantedTemperature: '20 °C' }))).toEqual(['wantedTemperature: take water further from the wanted temperature']);
    expect(problems(mixWaters.try({ waters: [cold, { waterTemperature: '20 °C' }] }))).toEqual(['waters[1].volume']);
    expect(problems(mixWaters.try({ waters: [cold, cold], wantedTemperature: '20 °C' }))).toEqual(['waters']);
    expect(mixWaters({ waters: [cold, { waterTemperature: '60 °C' }], wantedTemperature: '8 °C' }).addedVolume!.si).toBe(0);
    expect(codes(mixWaters({ waters: [cold, { volume: '20 L', waterTemperature: '60 °C' }] }))).toContain('hot-water');
    expect(codes(mixWaters({ waters: [cold, { volume: '20 L', waterTemperature: '90 °C' }] }))).toContain('hot-water-is-lighter');
    expect(codes(mixWaters({ waters: [cold, { volume: '20 L', waterTemperature: '40 °C' }] }))).toEqual([]);
  });

  test('a store that gives less than a tenth of the loss is said to be little', () => {
    // It gives 186.044 W.
    const night = { waterMass: '200 kg', temperatureDrop: '8 K', nightLength: '10 h' } as const;
    expect(codes(heatStore({ ...night, heatLoss: '1.86 kW' }))).toEqual([]);
    const little = heatStore({ ...night, heatLoss: '1.87 kW' });
    expect([codes(little), little.barrelsForLoss]).toEqual([['little-of-the-loss'], 11]);
  });

  test('a store cools no further than the house it stands in', () => {
    const store = { waterMass: '200 kg', waterTemperature: '20 °C', heatLoss: '500 W', houseTemperature: '14 °C' } as const;
    const told = heatStore({ ...store, temperatureDrop: '8 K' }).notes;
    expect([told.length, told[0]!.code, told[0]!.text]).toEqual([1, 'colder-than-house', expect.stringContaining('falls by 6 K at most')]);
    expect(codes(heatStore({ ...store, temperatureDrop: '6 K' }))).toEqual([]);
    expect(heatStore({ ...store, temperatureDrop: '2 K', houseTemperature: '25 °C' }).notes[0]!.text).toContain('gives no heat');
  });

  test('a store that would freeze is refused', () => {
    expect(problems(heatStore.try({ waterMass: '200 kg', waterTemperature: '5 °C', temperatureDrop: '8 K' }))[0]).toMatch(/^temperatureDrop/);
  });

  test('materials hold what the standard prints of them', () => {
    const printed = { 'HDPE': [980, 1800], 'polycarbonate': [1200, 1200], 'steel': [7800, 450], 'glass': [2500, 750] } as const;
    for (const [name, [density, specificHeat]] of Object.entries(printed)) expect(wallMaterials[name as keyof typeof printed]).toMatchObject({ density, specificHeat });
  });
});
