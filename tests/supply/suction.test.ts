import { describe, expect, test } from 'vitest';
import { suction } from '../../src/supply/index.js';

const well = { flow: '20 L/min', suctionLift: '3 m', diameter: '26 mm', length: '5 m', requiredSuctionHead: '2.5 m' } as const;
const codes = (result: { readonly notes: readonly { readonly code: string }[] }) => result.notes.map(({ code }) => code);

describe('suction', () => {
  test('water that boils on its way is refused, with the lift that is left', () => {
    expect(() => suction({ ...well, suctionLift: '12 m' })).toThrow(/suctionLift: less than 10\.\d+ m, above which the water boils/);
    expect(() => suction({ ...well, flow: '100 L/min', length: '60 m' })).toThrow(/the suction pipe alone takes/);
  });

  test('a pump that lacks suction head is told how much lower to stand, and standing there is well', () => {
    const high = suction({ ...well, suctionLift: '8 m' });
    expect(codes(high)).toEqual(expect.arrayContaining(['cavitation', 'lift-too-high']));
    const lower = suction({ ...well, suctionLift: high.highestSuctionLift!.as('m') });
    expect(codes(lower)).not.toContain('cavitation');
    expect(lower.spareSuctionHead!.in('m')).toBeCloseTo(0.5, 9);
  });

  test('standing as much lower as it says mends it', () => {
    for (const suctionLift of ['7.13 m', '8 m', '8.777 m'] as const) {
      const text = suction({ ...well, suctionLift }).notes.find(({ code }) => code === 'cavitation' || code === 'little-suction-head')!.text;
      const lower = Number(/stand the pump ([\d.]+) m lower/.exec(text)![1]);
      const stood = codes(suction({ ...well, suctionLift: `${parseFloat(suctionLift) - lower} m` }));
      expect(stood).not.toContain('cavitation');
      expect(stood).not.toContain('little-suction-head');
    }
  });

  test('little to spare is a caution, not a danger', () => {
    const { highestSuctionLift } = suction({ ...well, suctionReserve: '0.1 m' });
    expect(codes(suction({ ...well, suctionLift: highestSuctionLift! }))).toContain('little-suction-head');
  });

  test('height and warmth take lift away', () => {
    const lift = (more: object) => suction({ ...well, suctionLift: '1 m', ...more }).practicalLift.si;
    expect(lift({ atmosphericPressure: '80 kPa' })).toBeLessThan(lift({}));
    expect(lift({ waterTemperature: '45 °C' })).toBeLessThan(lift({}));
    expect(lift({ waterTemperature: '5 °C' })).toBe(lift({}));
  });

  test('a pressure on the water lifts it by its head', () => {
    const spare = (more: object) => suction({ ...well, ...more }).availableSuctionHead.in('m');
    expect(spare({ surfacePressure: '9.80665 kPa' }) - spare({})).toBeCloseTo(1000 / 998.2065, 5);
  });

  test('carries its cautions', () => {
    expect(codes(suction(well))).toEqual(expect.arrayContaining(['mains-electricity', 'pump-suction', 'backflow']));
  });
});
