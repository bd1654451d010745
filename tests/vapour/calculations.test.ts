/** What the calculations of air say beside their numbers, and what they refuse. */
import { describe, expect, test } from 'vitest';
import { isInputError } from '../../src/calculation/index.js';
import * as vapour from '../../src/vapour/index.js';

interface Noted {
  readonly notes: readonly { readonly code: string; readonly field?: string | undefined; readonly text: string }[];
}
const codes = ({ notes }: Noted): string[] => notes.map(({ code, field }) => `${code} ${field}`);
const texts = ({ notes }: Noted): string => notes.map(({ text }) => text).join('\n');

/** The problems of an attempt that has to fail. */
function problems(attempt: { readonly ok: true } | { readonly ok: false; readonly error: Error }): string {
  if (attempt.ok) throw new Error('was accepted');
  if (!isInputError(attempt.error)) throw attempt.error;
  return attempt.error.message;
}

describe('the equation for saturation', () => {
  test('is named with the surface it is for', () => {
    expect(texts(vapour.vapourPressureDeficit({ airTemperature: '24 °C', relativeHumidity: 0.65 }))).toBe('Saturation over liquid water after IAPWS-IF97.');
    expect(texts(vapour.vapourPressureDeficit({ airTemperature: '-4 °C', relativeHumidity: 0.65 }))).toContain('over liquid water after Murphy-Koop 2005');
    expect(texts(vapour.vapourPressureDeficit({ airTemperature: '24 °C', relativeHumidity: 0.65, correlation: 'WMO' }))).toContain('after WMO');
    expect(texts(vapour.saturationVapourPressure({ temperature: '-4 °C', surface: 'ice' }))).toBe('Saturation over ice after IAPWS R14-08.');
  });

  test('has a range, and a note says where it ends', () => {
    const frost = vapour.vapourPressureDeficit({ airTemperature: '-4 °C', relativeHumidity: 0.65, correlation: 'FAO-56' });
    expect(codes(frost)).toEqual(['saturation-equation airTemperature', 'outside-range airTemperature']);
    expect(texts(frost)).toContain('airTemperature is outside 0 to 50 °C');
    expect(codes(vapour.saturationVapourPressure({ temperature: '-90 °C', surface: 'ice', correlation: 'Buck 1996' }))).toContain('outside-range temperature');
  });

  test('over ice by WMO is from memory, and every calculation that it moves says so', () => {
    const frost = { airTemperature: '-8 °C', relativeHumidity: '60 %' } as const;
    const calculations = (correlation: 'WMO' | 'Buck 1996') => [
      vapour.saturationVapourPressure({ temperature: '-8 °C', surface: 'ice', correlation }), vapour.dewPoint({ ...frost, correlation }), vapour.wetBulb({ ...frost, correlation }),
      vapour.airState({ ...frost, correlation }), vapour.humidityFromWetBulb({ airTemperature: '-8 °C', wetBulbTemperature: '-9 °C', correlation }),
    ].map((result) => result.notes.some(({ code }) => code === 'coefficients-from-memory'));
    expect(calculations('WMO')).toEqual([true, true, true, true, true]);
    expect(calculations('Buck 1996')).toEqual([false, false, false, false, false]);
  });

  test('over ice ends at 0.01 °C, and is none of FAO-56', () => {
    expect(problems(vapour.saturationVapourPressure.try({ temperature: '1 °C', surface: 'ice', correlation: 'FAO-56' }))).toMatch(/temperature: .*0.01 °C[^]*correlation: one that has an equation over ice.*not FAO-56/);
  });
});

describe('humidity above 100 %', () => {
  test('is taken as a sensor gives it, with a note, and refused beyond what sensors give', () => {
    const moist = vapour.vapourPressureDeficit({ airTemperature: '20 °C', relativeHumidity: '101 %' });
    expect(codes(moist)).toContain('outside-range relativeHumidity');
    expect(moist.vapourPressureDeficit.in('kPa')).toBeLessThan(0);
    expect(problems(vapour.vapourPressureDeficit.try({ airTemperature: '20 °C', relativeHumidity: '103 %' }))).toContain('relativeHumidity');
    expect(problems(vapour.vapourPressureDeficit.try({ airTemperature: '20 °C', relativeHumidity: 65 }))).toContain("did you mean '65 %'?");
  });

  test('has no wet bulb', () => {
    expect(problems(vapour.wetBulb.try({ airTemperature: '20 °C', relativeHumidity: '101 %' }))).toContain('relativeHumidity');
  });
});

describe('leaf', () => {
  test('below the dew point gets wet', () => {
    const air = { airTemperature: '20 °C', relativeHumidity: '90 %' } as const;
    expect(codes(vapour.leafVapourPressureDeficit({ ...air, leafTemperature: '18 °C' }))).toContain('dew-on-leaf leafTemperature');
    expect(codes(vapour.leafVapourPressureDeficit({ ...air, leafTemperature: '19 °C' }))).not.toContain('dew-on-leaf leafTemperature');
  });

  test('cannot have every deficit', () => {
    const leaf = { airTemperature: '20 °C', leafTemperature: '24 °C' } as const;
    expect(problems(vapour.humidityForDeficit.try({ ...leaf, vapourPressureDeficit: '0.5 kPa' }))).toContain('at least 0.6464 kPa');
    expect(problems(vapour.humidityForDeficit.try({ ...leaf, vapourPressureDeficit: '3 kPa' }))).toContain('at most 2.986 kPa');
  });
});

describe('dew and frost', () => {
  test('a frost point comes only below 0.01 °C, and where there is an equation for it', () => {
    expect(vapour.dewPoint({ airTemperature: '20 °C', relativeHumidity: '50 %' })).not.toHaveProperty('frostPoint');
    expect(vapour.dewPoint({ airTemperature: '4 °C', relativeHumidity: '50 %' })).toHaveProperty('frostPoint');
    expect(vapour.dewPoint({ airTemperature: '4 °C', relativeHumidity: '50 %', correlation: 'FAO-56' })).not.toHaveProperty('frostPoint');
  });

  test('dry air has none', () => {
    expect(problems(vapour.dewPoint.try({ airTemperature: '20 °C', relativeHumidity: 0 }))).toContain('a share from 0.1 % to 102 %');
  });

  test('a cold surface gathers hoar frost, a warm one nothing', () => {
    const air = { airTemperature: '2 °C', relativeHumidity: '80 %' } as const;
    const frosty = vapour.condensation({ ...air, surfaceTemperature: '-5 °C' });
    expect(frosty.wet).toBe(true);
    expect(codes(frosty)).toContain('hoar-frost surfaceTemperature');
    const warm = vapour.condensation({ ...air, surfaceTemperature: '9 °C' });
    expect(warm.wet).toBe(false);
    expect(warm).not.toHaveProperty('condensationHumidity');
    expect(warm.convergence.vapourPressureResidual.in('Pa')).toBeLessThan(1e-3);
  });

  test('a surface between dew and frost point counts as frosted', () => {
    const air = { airTemperature: '0.5 °C', relativeHumidity: '50 %' } as const;
    const { dewPoint, frostPoint } = vapour.dewPoint(air);
    const between = (dewPoint.in('°C') + frostPoint!.in('°C')) / 2;
    const { wet, margin } = vapour.condensation({ ...air, surfaceTemperature: `${between} °C` });
    expect(wet).toBe(true);
    expect(margin.in('K')).toBeCloseTo(between - frostPoint!.in('°C'), 9);
  });
});

describe('wet bulb', () => {
  const frost = { airTemperature: '-6 °C', relativeHumidity: '70 %' } as const;

  test('is iced in frost, liquid in nearly saturated frost and by FAO-56, with a note', () => {
    expect(vapour.wetBulb(frost).wick).toBe('ice');
    for (const air of [{ ...frost, relativeHumidity: '99 %' }, { ...frost, correlation: 'FAO-56' }] as const) {
      const { wick, wetBulbTemperature, notes } = vapour.wetBulb(air);
      expect(wick).toBe('water');
      expect(wetBulbTemperature.in('°C')).toBeLessThan(-6);
      expect(codes({ notes })).toContain('supercooled-wick wetBulbTemperature');
    }
  });

  test('above the air or below that of dry air is refused', () => {
    const read = (wet: `${number} °C`, psychrometer: 'thermodynamic' | 'indoor') => problems(vapour.humidityFromWetBulb.try({ airTemperature: '25 °C', wetBulbTemperature: wet, psychrometer }));
    expect(read('26 °C', 'thermodynamic')).toContain('are the two swapped?');
    expect(read('5 °C', 'thermodynamic')).toContain('at least the wet bulb of perfectly dry air');
    expect(read('10 °C', 'indoor')).toContain('at least the wet bulb of perfectly dry air');
  });

  test('a still wet bulb means drier air than an aspirated one of the same reading', () => {
    const humidity = (psychrometer: 'aspirated' | 'naturally ventilated' | 'indoor') =>
      vapour.humidityFromWetBulb({ airTemperature: '25 °C', wetBulbTemperature: '18 °C', psychrometer }).relativeHumidity.in('%');
    expect(humidity('aspirated')).toBeGreaterThan(humidity('naturally ventilated'));
    expect(humidity('naturally ventilated')).toBeGreaterThan(humidity('indoor'));
  });
});

describe('a day', () => {
  const day = { highestAirTemperature: '25 °C', lowestAirTemperature: '18 °C' } as const;

  test.each([
    [17, { highestRelativeHumidity: 0.82, lowestRelativeHumidity: 0.54, meanRelativeHumidity: 0.68 }],
    [18, { highestRelativeHumidity: 0.82, meanRelativeHumidity: 0.68 }],
    [19, { lowestRelativeHumidity: 0.54, meanRelativeHumidity: 0.68 }],
    [48, {}],
  ])('goes by equation %i', (equation, humidity) => {
    expect(texts(vapour.dailyVapourPressure({ ...day, ...humidity }))).toContain(`equation ${equation} of FAO-56`);
  });

  test('without humidity is a guess, and says so', () => {
    expect(codes(vapour.dailyVapourPressure(day))).toContain('no-humidity vapourPressure');
  });

  test('refuses what cannot be', () => {
    expect(problems(vapour.dailyVapourPressure.try({ highestAirTemperature: '18 °C', lowestAirTemperature: '25 °C', highestRelativeHumidity: 0.5, lowestRelativeHumidity: 0.8 }))).toMatch(/lowestAirTemperature[^]*lowestRelativeHumidity/);
    expect(problems(vapour.dailyVapourPressure.try({ ...day, lowestRelativeHumidity: 0.5 }))).toContain('highestRelativeHumidity');
  });
});

describe('columns', () => {
  const column = (values: (number | null)[], humidity: (number | null)[]) =>
    vapour.vapourPressureDeficitColumn({ airTemperature: { unit: '°C', values }, relativeHumidity: { unit: '%', values: humidity } });

  test('give row by row what the single calculation gives', () => {
    for (const correlation of ['IAPWS', 'FAO-56', 'ASHRAE', 'WMO', 'Buck 1996'] as const) {
      const [temperatures, humidities] = [[-12, -0.001, 0.005, 3, 21, 49], [70, 80, 90, 100, 55, 12]];
      const { vapourPressureDeficit } = vapour.vapourPressureDeficitColumn({ airTemperature: { unit: '°C', values: temperatures }, relativeHumidity: { unit: '%', values: humidities }, correlation });
      temperatures.forEach((t, i) => {
        const one = vapour.vapourPressureDeficit({ airTemperature: `${t} °C`, relativeHumidity: `${humidities[i]!} %`, correlation });
        expect(vapourPressureDeficit.in('kPa')[i]).toBeCloseTo(one.vapourPressureDeficit.in('kPa'), 12);
      });
    }
  });

  test('keep gaps and count them', () => {
    const found = column([20, null, 22, NaN], [60, 60, null, 60]);
    expect([...found.vapourPressureDeficit.in('kPa')].map(Number.isNaN)).toEqual([false, true, true, true]);
    expect(texts(found)).toContain('3 of 4 rows lack a reading');
    expect(codes(column([null], [null]))).toEqual(['gaps vapourPressureDeficit']);
  });

  test('name the equations they went through, and what lies outside', () => {
    expect(codes(column([-3, 4], [90, 101]))).toEqual(['saturation-equation airTemperature', 'saturation-equation airTemperature', 'outside-range relativeHumidity']);
    expect(texts(column([-3, 4], [90, 101]))).toContain('1 of 2 rows are above 100 %');
    expect(codes(column([4, 30], [90, 50]))).toEqual(['saturation-equation airTemperature']);
  });

  test('of different lengths, or with a value that cannot be, are refused', () => {
    expect(() => column([20, 21], [60])).toThrow('2 values, as many as in airTemperature');
    expect(() => column([20, 210], [60, 60])).toThrow('airTemperature');
    expect(() => column([20, 21], [60, 130])).toThrow('relativeHumidity');
  });
});

describe('units that were mixed up', () => {
  const slip = (result: Noted): string[] => codes(result).filter((code) => /fraction-as-percent|fahrenheit-as-celsius/.test(code));
  const column = <const Unit extends string>(unit: Unit, ...values: (number | null)[]) => ({ unit, values });

  test.each<[string, (relativeHumidity: '0.65 %' | '65 %' | '1.1 %') => Noted]>([
    ['dewPoint', (relativeHumidity) => vapour.dewPoint({ airTemperature: '20 °C', relativeHumidity })],
    ['wetBulb', (relativeHumidity) => vapour.wetBulb({ airTemperature: '20 °C', relativeHumidity })],
    ['airState', (relativeHumidity) => vapour.airState({ airTemperature: '20 °C', relativeHumidity })],
    ['condensation', (relativeHumidity) => vapour.condensation({ airTemperature: '20 °C', relativeHumidity, surfaceTemperature: '10 °C' })],
    ['coverCondensation', (relativeHumidity) => vapour.coverCondensation({ airTemperature: '20 °C', relativeHumidity, outsideTemperature: '0 °C', coverHeatTransfer: '6 W/(m²·K)' })],
    ['leafVapourPressureDeficit', (relativeHumidity) => vapour.leafVapourPressureDeficit({ airTemperature: '20 °C', relativeHumidity, leafTemperature: '19 °C' })],
  ])('%s asks whether 0.65 % is 65 %', (_, of) => {
    expect(slip(of('0.65 %'))).toEqual(['fraction-as-percent relativeHumidity']);
    expect(texts(of('0.65 %'))).toContain('0.65 as a fraction is 65 %.');
    expect([slip(of('65 %')), slip(of('1.1 %'))]).toEqual([[], []]);
  });

  test('each humidity of a day is looked at', () => {
    const day = { highestAirTemperature: '25 °C', lowestAirTemperature: '12 °C' } as const;
    expect(slip(vapour.dailyVapourPressure({ ...day, highestRelativeHumidity: '0.9 %', lowestRelativeHumidity: '0.5 %' }))).toEqual(['fraction-as-percent highestRelativeHumidity', 'fraction-as-percent lowestRelativeHumidity']);
    expect(slip(vapour.dailyVapourPressure({ ...day, meanRelativeHumidity: '70 %' }))).toEqual([]);
  });

  test.each([['wetBulbColumn', vapour.wetBulbColumn], ['vapourPressureDeficitColumn', vapour.vapourPressureDeficitColumn]] as const)('%s looks at whole columns', (_, of) => {
    const both = of({ airTemperature: column('°C', 50, null, 55), relativeHumidity: column('%', 0.8, 0.6, null) });
    expect(slip(both)).toEqual(['fahrenheit-as-celsius airTemperature', 'fraction-as-percent relativeHumidity']);
    expect(texts(both)).toMatch(/no reading below 50 °C: is the column in °F\? 50 °F is 10.0 °C\.[^]*no reading above 0.8 %: .*0.8 as a fraction is 80 %\./);
    expect(slip(of({ airTemperature: column('°F', 50, null, 55), relativeHumidity: column('fraction', 0.8, 0.6, null) }))).toEqual([]);
    expect(slip(of({ airTemperature: column('°C', 45, 39), relativeHumidity: column('%', 0.8, 20) }))).toEqual([]);
    expect(slip(of({ airTemperature: column('°C', null), relativeHumidity: column('%', null) }))).toEqual([]);
  });
});

describe('a cover that fogs', () => {
  const advised = (input: Parameters<typeof vapour.coverCondensation>[0]): [text: string, isDryThen: boolean] => {
    const text = vapour.coverCondensation(input).notes.find(({ code }) => code === 'cover-fogs')!.text;
    const humidity = Number(/below ([\d.]+) %/.exec(text)![1]);
    return [text, !vapour.coverCondensation({ ...input, relativeHumidity: humidity / 100 }).wet];
  };

  test('freezes below 0 °C, and does not drip', () => {
    const [text, isDryThen] = advised({ airTemperature: '-2 °C', relativeHumidity: '95 %', outsideTemperature: '-15 °C', coverHeatTransfer: '6 W/(m²·K)' });
    expect(text).toMatch(/below the frost point: hoar frost grows on it/);
    expect(text).not.toContain('water runs');
    expect(isDryThen).toBe(true);
  });

  test('is dry at the humidity that is advised', () => {
    // At 7 °C 65.57 % is the limit of a cover at 1 °C.
    const [text, isDryThen] = advised({ airTemperature: '7 °C', relativeHumidity: '65.8 %', outsideTemperature: '-5 °C', coverHeatTransfer: '4 W/(m²·K)' });
    expect(text).toMatch(/less than 0.1 K below the dew point: water runs .* below 65.5 %\.$/);
    expect(isDryThen).toBe(true);
  });
});
