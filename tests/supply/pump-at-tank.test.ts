import { describe, expect, test } from 'vitest';
import { pumpAtTank } from '../../src/supply/index.js';

describe('the pump as its tank sees it', () => {
  const flat = { pumpCurve: [{ flow: '0 L/min', head: '5 m' }, { flow: '10 L/min', head: '0.5 m' }] } as const;

  test.each([2, 5, 13, 50])('keeps both ends of its curve with %s points', (points) => {
    const { pumpPoints, shutOffPressure, mostFlow } = pumpAtTank({ ...flat, points });
    // 5 m and 0.5 m of water of 998.207 kg/m³.
    expect(shutOffPressure.in('kPa')).toBeCloseTo(48.9455, 3);
    expect(pumpPoints[0]!.pumpFlow.si).toBe(0);
    expect(pumpPoints.at(-1)!.pumpPressure.in('kPa')).toBeCloseTo(4.89455, 4);
    expect(mostFlow.in('L/min')).toBeCloseTo(10, 9);
    const pressures = pumpPoints.map(({ pumpPressure }) => pumpPressure.in('kPa'));
    pressures.slice(1).forEach((pressure, i) => expect(pressures[i]! - pressure).toBeGreaterThanOrEqual(1));
  });

  test('draws no more than the atmosphere pushes up its suction', () => {
    const high = { pumpCurve: [{ flow: '0 L/min', head: '50 m' }, { flow: '15 L/min', head: '42 m' }, { flow: '40 L/min', head: '18 m' }], tankLift: '7 m', suctionLine: { diameter: '20 mm', length: '0 m', lossCoefficient: 20 } } as const;
    const seen = pumpAtTank(high);
    // (101325 - 2339.3) Pa is 10.1119 m of water of 998.207 kg/m³; less 7 m, 3.1119 m = 20 V²/(2 g): V = 1.74705 m/s, 32.931 L/min in 20 mm.
    expect(seen.mostFlow.in('L/min')).toBeCloseTo(32.931, 2);
    expect(seen.pumpPoints.at(-1)!.pumpFlow.si).toBe(seen.mostFlow.si);
    expect(seen.notes.find(({ code }) => code === 'suction-breaks')).toMatchObject({ severity: 'caution', text: expect.stringContaining('From 32.93 L/min on') as unknown });
    expect(pumpAtTank({ ...high, atmosphericPressure: '90 kPa' }).mostFlow.si).toBeLessThan(seen.mostFlow.si);
    const inTheWater = pumpAtTank({ ...high, suctionLift: '0 m' });
    expect(inTheWater.notes.map(({ code }) => code)).not.toContain('suction-breaks');
    expect(inTheWater.mostFlow.si).toBeGreaterThan(seen.mostFlow.si);
    expect(() => pumpAtTank({ ...high, tankLift: '12 m' })).toThrow(/tankLift: less than 10\.11 m.*give its suctionLift/);
    expect(() => pumpAtTank({ ...high, suctionLine: undefined, suctionLift: '1 m' })).toThrow(/suctionLine: the pipe that it is the lift of/);
  });

  test('what cannot be', () => {
    expect(() => pumpAtTank({ ...flat, tankLift: '6 m' })).toThrow(/tankLift: a pump that lifts the water to the tank/);
    expect(() => pumpAtTank({ pumpCurve: [{ flow: '0 L/min', head: '5 m' }, { flow: '1 L/min', head: '4.95 m' }] })).toThrow(/falls by 1 kPa at least/);
    expect(() => pumpAtTank({ ...flat, suctionLine: { diameter: '1 mm', length: '0 m' } })).toThrow(/suctionLine\.diameter/);
    expect(pumpAtTank({ pumpCurve: [{ flow: '5 L/min', head: '40 m' }, { flow: '20 L/min', head: '30 m' }] }).notes.map(({ code }) => code)).toContain('outside-curve');
  });
});
