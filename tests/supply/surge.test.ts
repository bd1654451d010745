import { describe, expect, test } from 'vitest';
import { surge } from '../../src/supply/index.js';

const pipe = { flow: '40 L/min', diameter: '13.6 mm', wallThickness: '1.2 mm', length: '20 m', staticPressure: '3 bar', pipeMaterial: 'soft PE' } as const;
const codes = (result: { readonly notes: readonly { readonly code: string }[] }) => result.notes.map(({ code }) => code);

describe('surge', () => {
  test('above the rating names the closing time that keeps to it', () => {
    const rated = { ...pipe, pressureRating: '4 bar' } as const;
    const fast = surge({ ...rated, closingTime: '0 s' });
    expect(codes(fast)).toContain('surge-above-rating');
    const gentle = surge({ ...rated, closingTime: fast.closingTimeForRating! });
    expect(gentle.highestPressure.in('bar')).toBeCloseTo(4, 9);
    expect(codes(surge({ ...rated, closingTime: `${fast.closingTimeForRating!.in('s') * 1.001} s` }))).not.toContain('surge-above-rating');
  });

  test.each(['3.9 m', '20 m', '33 m', '71 m'] as const)('the closing times that it names mend what they are named for, in %s of pipe', (length) => {
    for (const [code, changes] of [['surge-above-rating', { pressureRating: '4 bar' }], ['column-parts', { staticPressure: '0.5 bar' }]] as const) {
      const fast = surge({ ...pipe, ...changes, length, closingTime: '0 s' });
      const time = /in no less than ([\d.]+) s/.exec(fast.notes.find((note) => note.code === code)!.text)![1]!;
      expect(codes(surge({ ...pipe, ...changes, length, closingTime: `${Number(time)} s` }))).not.toContain(code);
      expect(codes(surge({ ...pipe, ...changes, length, closingTime: `${Number(time) * 0.998} s` }))).toContain(code);
    }
  });

  test('without a rating it says that nothing was judged', () => {
    expect(codes(surge({ ...pipe, closingTime: '1 s' }))).toContain('no-rating');
    expect(codes(surge({ ...pipe, closingTime: '1 s', pressureRating: '4 bar' }))).not.toContain('no-rating');
    expect(codes(surge({ ...pipe, closingTime: '1 s', pipeMaterial: 'PE 100' }))).not.toContain('no-rating');
  });

  test('a pipe too weak for its pressure at rest is a danger whatever the closing time', () => {
    const weak = surge({ ...pipe, pressureRating: '2 bar', closingTime: '1 h' });
    expect(codes(weak)).toContain('above-rating');
    expect(weak.closingTimeForRating).toBeUndefined();
  });

  test('the rating of PE follows from its wall, that of other pipes is not guessed', () => {
    const at = (more: object) => surge({ ...pipe, closingTime: '1 s', ...more }).pressureRating;
    expect(at({ pipeMaterial: 'PE 100', diameter: '26 mm', wallThickness: '2.9 mm' })!.in('bar')).toBeCloseTo(160 / (31.8 / 2.9 - 1), 9);
    expect(at({})).toBeUndefined();
  });

  test('a modulus goes before the material', () => {
    const speed = (more: object) => surge({ ...pipe, closingTime: '1 s', ...more }).waveSpeed.si;
    expect(speed({ elasticModulus: '207000 MPa' })).toBe(speed({ pipeMaterial: 'steel' }));
    expect(speed({ pipeMaterial: 'steel' })).toBeGreaterThan(speed({}));
  });

  test('a wave that tears the column apart is told, and the pressure stops at that of vapour', () => {
    const torn = surge({ ...pipe, staticPressure: '0.5 bar', closingTime: '0 s' });
    expect(codes(torn)).toContain('column-parts');
    expect(torn.lowestPressure.in('kPa')).toBeCloseTo(2.339 - 101.325, 2);
  });

  test('warm polyethylene bears less', () => {
    const warm = { ...pipe, pipeMaterial: 'PE 80', closingTime: '1 s', waterTemperature: '35 °C' } as const;
    expect(codes(surge(warm))).toContain('warm-pipe');
    expect(codes(surge({ ...warm, waterTemperature: '20 °C' }))).not.toContain('warm-pipe');
  });

  test('a wall thicker than the bore, and racing water', () => {
    expect(() => surge({ ...pipe, wallThickness: '12 mm', closingTime: '1 s' })).toThrow(/wallThickness/);
    expect(() => surge({ ...pipe, flow: '40 m³/h', closingTime: '1 s' })).toThrow(/runs at/);
  });
});
