import { describe, expect, test } from 'vitest';
import { gutter, sumpCycle } from '../../src/supply/index.js';

const noted = ({ notes }: { readonly notes: readonly { readonly code: string; readonly text: string }[] }, code: string) => notes.find((note) => note.code === code)?.text;

describe('gutter', () => {
  const trough = { flow: '6 L/min', fall: '1 %', bottomWidth: '100 mm', gutterDepth: '60 mm' } as const;

  test('a flow that it does not carry is refused, with a fall that would carry it', () => {
    const flow = '600 L/min';
    let message = '';
    try {
      gutter({ ...trough, flow });
    } catch (error) {
      message = (error as Error).message;
    }
    const fall = Number(/a fall of ([\d.]+) % would carry it/.exec(message)![1]);
    expect(gutter({ ...trough, flow, fall: `${fall} %` }).fillShare.in('%')).toBeGreaterThan(99);
  });

  test('slow water is told the fall at which it keeps the gutter clean', () => {
    const busy = { ...trough, flow: '20 L/min' } as const;
    const fall = Number(/take a fall of ([\d.]+) %/.exec(noted(gutter(busy), 'dirt-settles')!)![1]);
    expect(Math.abs(gutter({ ...busy, fall: `${fall} %` }).velocity.in('m/s') - 0.6)).toBeLessThan(0.001);
    expect(noted(gutter(trough), 'dirt-settles')).toMatch(/no usual fall/);
  });

  test('nearly full says so', () => {
    expect(noted(gutter({ ...trough, flow: '260 L/min' }), 'nearly-full')).toMatch(/419\.\d L\/min/);
  });

  test('one section, whole', () => {
    const { bottomWidth, gutterDepth, ...bare } = trough;
    expect(() => gutter(bare)).toThrow(/exactly one of diameter, bottomWidth/);
    expect(() => gutter({ ...bare, bottomWidth })).toThrow(/gutterDepth/);
    expect(() => gutter({ ...bare, diameter: '50 mm', gutterDepth })).toThrow(/gutterDepth/);
  });

  test('a section too low for its critical depth has none', () => {
    expect(gutter({ flow: '380 L/min', fall: '20 %', bottomWidth: '60 mm', gutterDepth: '60 mm' }).criticalDepth).toBeUndefined();
  });
});

describe('sumpCycle', () => {
  const sump = { sumpArea: '0.25 m²', floatSpan: '150 mm', freeboard: '100 mm', inflow: '3 L/min', pumpFlow: '40 L/min', motorPower: '250 W' } as const;

  test('a pump that does not keep up never stops, and the sump runs over: 25 L at 10 L/min too much', () => {
    const run = sumpCycle({ ...sump, inflow: '50 L/min' });
    expect(run.runTime).toBeUndefined();
    expect(run.startsPerHour.si).toBe(0);
    expect(noted(run, 'inflow-above-pump')).toMatch(/runs over, 2\.5 min after it starts.*more than 50 L\/min/);
    expect(noted(sumpCycle({ ...sump, inflow: '40 L/min' }), 'inflow-above-pump')).toMatch(/runs over\./);
  });

  test('without inflow it never starts, and never runs over', () => {
    const run = sumpCycle({ ...sump, inflow: '0 L/min' });
    expect(run.restTime).toBeUndefined();
    expect(run.timeToOverflow).toBeUndefined();
  });

  test('starts too near each other name the floats that would do', () => {
    const few = sumpCycle({ ...sump, inflow: '20 L/min' });
    const span = Number(/Floats (\d+) mm apart/.exec(noted(few, 'too-many-starts')!)![1]);
    expect(sumpCycle({ ...sump, inflow: '20 L/min', floatSpan: `${span} mm` }).cycleTime!.in('min')).toBeCloseTo(10, 9);
    expect(noted(sumpCycle(sump), 'too-many-starts')).toBeUndefined();
    expect(noted(sumpCycle(sump), 'too-many-starts-at-worst')).toBeDefined();
    expect(sumpCycle({ ...sump, motorPower: undefined }).leastWorkingVolume).toBeUndefined();
  });

  test('floats set as it says mend it, and a smaller pump is advised only where it keeps up', () => {
    const run = (more: object) => sumpCycle({ ...sump, inflow: '20 L/min', pumpFlow: '38.75 L/min', ...more });
    // V = 10 min · 38.75 L/min / 4 = 96.875 L over 0.25 m² is 387.5 mm; 37.5 L between the floats would do for 15 L/min.
    const text = noted(run({ sumpArea: '0.2501 m²' }), 'too-many-starts')!;
    const span = /Floats ([\d.]+) mm/.exec(text)![1]!;
    expect(noted(run({ sumpArea: '0.2501 m²', floatSpan: `${Number(span)} mm` }), 'too-many-starts')).toBeUndefined();
    expect(noted(run({}), 'too-many-starts')).toMatch(/Floats 387\.5 mm apart would do\.$/);
    const small = /or a pump of ([\d.]+) L\/min/.exec(noted(run({ inflow: '14 L/min' }), 'too-many-starts')!)![1]!;
    expect(small).toBe('15');
    expect(noted(run({ inflow: '14 L/min', pumpFlow: '15 L/min' }), 'too-many-starts')).toBeUndefined();
  });

  test('carries its cautions', () => {
    expect(sumpCycle(sump).notes.map(({ code }) => code)).toEqual(expect.arrayContaining(['mains-electricity', 'pump-suction', 'discharge']));
  });
});
