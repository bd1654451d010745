import { describe, expect, test } from 'vitest';
import { pumpDuty } from '../../src/supply/index.js';

const pumpCurve = [{ flow: '0 L/min', head: '35 m' }, { flow: '20 L/min', head: '28 m' }, { flow: '40 L/min', head: '12 m' }] as const;
const system = { staticHead: '12 m', referenceFlow: '20 L/min', referenceHeadLoss: '9 m' } as const;
const noted = ({ notes }: { readonly notes: readonly { readonly code: string; readonly text: string }[] }, code: string) => notes.find((note) => note.code === code)?.text;

describe('pumpDuty', () => {
  test('a lift that the pump does not reach is refused, and says how high it reaches', () => {
    expect(() => pumpDuty({ pumpCurve, system: { ...system, staticHead: '36 m' } })).toThrow(/system: a head below the 35 m that the pump has at no flow/);
  });

  test('water that runs by itself asks for no pump', () => {
    expect(() => pumpDuty({ pumpCurve, system: { ...system, staticHead: '-80 m' } })).toThrow(/runs by itself/);
  });

  test('points out of order, a lone shut-off head, a power law without its points', () => {
    const of = (points: readonly { readonly flow: `${number} L/min`; readonly head: `${number} m` }[], more = {}) => () => pumpDuty({ pumpCurve: points, system, ...more });
    expect(of([pumpCurve[1], pumpCurve[0]])).toThrow(/pumpCurve\[1\]\.flow: a flow above/);
    expect(of([pumpCurve[0], { flow: '10 L/min', head: '36 m' }])).toThrow(/pumpCurve\[1\]\.head: a head below/);
    expect(of([pumpCurve[0]])).toThrow(/pumpCurve\[0\]: a point with flow and head/);
    expect(of(pumpCurve.slice(0, 2), { curveShape: 'power law' })).toThrow(/curveShape: three points/);
    expect(() => pumpDuty({ pumpCurve, systemCurve: [{ flow: '0 L/min', head: '12 m' }, { flow: '20 L/min', head: '11 m' }] })).toThrow(/systemCurve\[1\]\.head: a head above/);
    expect(() => pumpDuty({ pumpCurve, system, motorEfficiency: 0.8 })).toThrow(/pumpEfficiency/);
    expect(() => pumpDuty({ pumpCurve })).toThrow(/exactly one of system, systemCurve/);
  });

  test('past the end of its curve says by how much to throttle: 12 m at 40 L/min less 2 m + 1 m × 4', () => {
    const duty = pumpDuty({ pumpCurve, system: { staticHead: '2 m', referenceFlow: '20 L/min', referenceHeadLoss: '1 m' } });
    expect(duty.flow.in('L/min')).toBeGreaterThan(40);
    expect(noted(duty, 'outside-curve')).toMatch(/ends at 40 L\/min.* Throttle it by 6 m/);
    expect(noted(pumpDuty({ pumpCurve, system }), 'outside-curve')).toBeUndefined();
  });

  test('near its shut-off says so', () => {
    expect(noted(pumpDuty({ pumpCurve, system: { ...system, staticHead: '34.8 m' } }), 'near-shut-off')).toMatch(/churns/);
  });

  test('near its shut-off for lack of head, more head is advised: 34.9 m + 9 m (4/20)² at a tenth of 40 L/min', () => {
    const hardly = noted(pumpDuty({ pumpCurve, system: { ...system, staticHead: '34.9 m' } }), 'near-shut-off');
    expect(hardly).toMatch(/take one with more head, at least 35\.26 m at 4 L\/min\.$/);
    const higher = [{ flow: '0 L/min', head: '36 m' }, { flow: '4 L/min', head: '35.26 m' }, { flow: '40 L/min', head: '12 m' }] as const;
    expect(noted(pumpDuty({ pumpCurve: higher, system: { ...system, staticHead: '34.9 m' } }), 'near-shut-off')).toBeUndefined();
  });

  test('near its shut-off with head to spare, what may run back leaves the flow that the head at 4 L/min drives: 12 m + 9 m Q²', () => {
    const straight = [{ flow: '0 L/min', head: '40 m' }, { flow: '40 L/min', head: '10 m' }] as const;
    const spared = noted(pumpDuty({ pumpCurve: straight, system: { ...system, referenceFlow: '1 L/min' } }), 'near-shut-off');
    // 37 m at 4 L/min: √(25/9) = 1.667 L/min, and 2.333 L/min back.
    expect(spared).toMatch(/let 2\.333 L\/min run back to the barrel, which leaves 1\.667 L\/min\.$/);
  });

  test('a speed far from that of the curve is told, and one that no pump makes is refused', () => {
    expect(noted(pumpDuty({ pumpCurve, system, wantedFlow: '40 L/min' }), 'far-from-curve')).toMatch(/outside 60 to 120 %/);
    expect(() => pumpDuty({ pumpCurve, system, wantedFlow: '5000 L/min' })).toThrow(/wantedFlow/);
  });

  test('power from the mains is the power in the water over both efficiencies', () => {
    const { hydraulicPower, electricPower } = pumpDuty({ pumpCurve, system, pumpEfficiency: '40 %', motorEfficiency: '70 %' });
    expect(hydraulicPower.si / electricPower!.si).toBeCloseTo(0.28, 12);
  });

  test('carries the cautions of mains electricity and of the pump’s suction', () => {
    expect(pumpDuty({ pumpCurve, system }).notes.map(({ code }) => code)).toEqual(expect.arrayContaining(['mains-electricity', 'pump-suction']));
  });
});
