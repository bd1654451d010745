/** What the lateral says beside its numbers, and what it refuses. */
import { describe, expect, test } from 'vitest';
import { compensatingEmitter, lateral } from '../../src/laterals/index.js';

/** A row of strawberry troughs. */
const row = { outlets: 28, spacing: '25 cm', diameter: '13.6 mm', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5 } as const;
const codes = (changes: object): string[] => {
  const attempt = lateral.try({ ...row, inletPressure: '1 bar', ...changes });
  if (!attempt.ok) throw attempt.error;
  return attempt.value.notes.map(({ code }) => code);
};
const problems = (input: object) => {
  const attempt = lateral.try({ ...row, ...input });
  if (attempt.ok) throw new Error('was accepted');
  return attempt.error;
};

describe('too little pressure', () => {
  test('is refused, with the pressure that the end takes; and that pressure does it', () => {
    const uphill = { ...row, slope: '10 %' } as const;
    const { message } = problems({ ...uphill, inletPressure: '2 kPa' });
    const [, needed] = /half the nominal pressure at its end takes ([\d.]+) kPa at the inlet/.exec(message)!;
    expect(lateral({ ...uphill, inletPressure: `${Number(needed)} kPa` }).endPressure.in('kPa')).toBeCloseTo(50, 1);
  });

  test('names a pressure that opens anti-drain emitters, and that does it', () => {
    const antiDrain = { ...row, emitterPressure: '120 kPa', emitterExponent: 0, compensation: { openingPressure: '100 kPa', closingPressure: '80 kPa' } } as const;
    const { outlets, spacing, diameter, ...emitter } = antiDrain;
    for (const line of [antiDrain, { ...row, furtherReaches: [{ outlets: 5, emitter }] }]) {
      const { message } = problems({ ...line, inletPressure: '30 kPa' });
      const [, needed] = /the pressure that its last emitters open at takes ([\d.]+) kPa at the inlet/.exec(message)!;
      expect(lateral({ ...line, inletPressure: `${Number(needed)} kPa` }).endPressure.in('kPa')).toBeCloseTo(100, 0);
    }
  });

  test('is refused where a long run starves compensating emitters', () => {
    expect(problems({ outlets: 400, emitterExponent: 0, inletPressure: '20 kPa' })).toMatchObject({ problems: [{ path: 'inletPressure', received: 'too little: some emitter would have none' }] });
  });

  test('is refused where a thin lateral falls so steeply that it runs dry on the way', () => {
    const steep = problems({ outlets: 200, diameter: '4 mm', slope: '-50 %', inletPressure: '2 kPa' });
    expect(steep).toMatchObject({ problems: [{ path: 'inletPressure', hint: 'take a larger pipe, or a shorter or less steep lateral' }] });
  });

  test('for a wanted mean flow is refused there', () => {
    expect(problems({ slope: '10 %', meanEmitterFlow: '0.1 L/h' })).toMatchObject({ problems: [{ path: 'meanEmitterFlow' }] });
    expect(problems({ meanEmitterFlow: '50 L/h' })).toMatchObject({ problems: [{ path: 'meanEmitterFlow', expected: 'a flow that up to 1000 kPa at the inlet gives' }] });
  });
});

test.each<[string, object, string]>([
  ['neither inlet pressure nor mean flow', {}, ''],
  ['both', { inletPressure: '1 bar', meanEmitterFlow: '2 L/h' }, 'meanEmitterFlow'],
  ['a mean flow of compensating emitters', { meanEmitterFlow: '2 L/h', emitterExponent: 0 }, 'meanEmitterFlow'],
  ['no emitter', { inletPressure: '1 bar', outlets: 0 }, 'outlets'],
  ['half an emitter', { inletPressure: '1 bar', outlets: 2.5 }, 'outlets'],
  ['two kinds of connection', { inletPressure: '1 bar', connection: { barb: 'small', lossCoefficient: 0.4 } }, 'connection.barb'],
  ['a connection of no kind', { inletPressure: '1 bar', connection: {} }, 'connection'],
  ['a wall rougher than any friction law knows', { inletPressure: '1 bar', roughness: '2 mm' }, 'roughness'],
  ['a diameter of nought', { inletPressure: '1 bar', diameter: '0 mm' }, 'diameter'],
  ['a diameter below nought', { inletPressure: '1 bar', diameter: '-13.6 mm' }, 'diameter'],
  ['more outlets than are computed', { inletPressure: '1 bar', outlets: 100_001 }, 'outlets'],
  ['more outlets than are computed, in two reaches', { inletPressure: '1 bar', outlets: 60_000, furtherReaches: [{ outlets: 60_000 }] }, 'furtherReaches'],
  ['a range of regulation that ends where it begins', { inletPressure: '1 bar', compensation: { openingPressure: '80 kPa', regulatedUpTo: '80 kPa' } }, 'compensation.regulatedUpTo'],
  ['a seal that shuts above the opening pressure', { inletPressure: '1 bar', compensation: { openingPressure: '80 kPa', closingPressure: '90 kPa' } }, 'compensation.closingPressure'],
  ['a mean flow of emitters that regulate', { meanEmitterFlow: '2 L/h', compensation: { openingPressure: '80 kPa' } }, 'meanEmitterFlow'],
  ['a barb wider than a further reach', { inletPressure: '1 bar', furtherReaches: [{ outlets: 4, diameter: '10.2 mm', connection: { barbArea: '80 mm²' } }] }, 'furtherReaches[0].connection.barbArea'],
  ['a passage wider than its pipe', { inletPressure: '1 bar', connection: { passageDiameter: '15 mm' } }, 'connection.passageDiameter'],
  ['a diameter in the wrong unit', { inletPressure: '10 bar', diameter: '1.36 mm', spacing: '1 cm', emitterFlow: '500 L/h', outlets: 1 }, 'diameter'],
])('%s is refused', (_, input, path) => {
  expect(problems(input)).toMatchObject({ problems: [{ path }] });
});

test('a mean flow and the inlet pressure that it takes say the same', () => {
  const { inletPressure, flows } = lateral({ ...row, meanEmitterFlow: '1.8 L/h' });
  lateral({ ...row, inletPressure }).flows.in('L/h').forEach((flow, i) => expect(flow).toBeCloseTo(flows.in('L/h')[i]!, 6));
});

test('barbs lose what their length of pipe does', () => {
  const barb = lateral({ ...row, diameter: '12 mm', inletPressure: '1 bar', connection: { barb: 'large' } });
  const pipe = lateral({ ...row, diameter: '12 mm', inletPressure: '1 bar', connection: { equivalentLength: '0.23812 m' } });
  expect(barb.endPressure.in('Pa')).toBeCloseTo(pipe.endPressure.in('Pa'), 1);
});

test('design uniformity needs the variation of the maker', () => {
  expect(lateral({ ...row, inletPressure: '1 bar' }).emissionUniformity).toBeUndefined();
  const { emissionUniformity, lowestFlow, meanFlow } = lateral({ ...row, inletPressure: '1 bar', manufacturingVariation: '5 %', emittersPerPlant: 4 });
  expect(emissionUniformity!.in('%')).toBeCloseTo((1 - (1.27 * 0.05) / 2) * (lowestFlow.si / meanFlow.si) * 100, 10);
});

describe('notes', () => {
  test('none for an even row', () => expect(codes({})).toEqual([]));
  test('flow that is good by one class and not by another', () => {
    const long = lateral({ ...row, outlets: 480, inletPressure: '1 bar' });
    expect(long.lowQuarterUniformity.in('%')).toBeGreaterThan(80);
    expect(long.lowQuarterUniformity.in('%')).toBeLessThan(90);
    expect(long.notes).toMatchObject([{ code: 'flow-variation', severity: 'caution', text: expect.stringContaining('not acceptable by customary classes') }]);
  });
  test('uneven flow', () => expect(codes({ outlets: 800 })).toEqual(['uneven', 'flow-variation']));
  test('fast water', () => expect(codes({ emitterFlow: '60 L/h', outlets: 16 })).toContain('fast-water'));
  test('velocity head', () => expect(codes({ emitterFlow: '500 L/h', outlets: 4, spacing: '1 cm', inletPressure: '20 kPa' })).toContain('velocity-head'));
  test('compensating emitters below their range', () => expect(codes({ emitterExponent: 0.05, inletPressure: '30 kPa' })).toEqual(['not-compensating']));
  test('Hazen-Williams in drip tubing', () => expect(codes({ friction: 'Hazen-Williams' })).toEqual(['small-pipe']));
  test('Watters-Keller where flow is laminar', () => expect(codes({ friction: 'Watters-Keller', outlets: 5 })).toEqual(['not-turbulent']));
  test('emitters above the range that they regulate in, and below it', () => {
    const compensating = { emitterExponent: 0.02, compensation: { openingPressure: '60 kPa', regulatedUpTo: '150 kPa' } };
    expect(codes({ ...compensating })).toEqual([]);
    expect(codes({ ...compensating, inletPressure: '2 bar' })).toEqual(['above-range']);
    expect(codes({ ...compensating, inletPressure: '50 kPa' })).toEqual(['not-compensating']);
  });
  test('of several reaches, the one that is furthest off', () => {
    const emitter = { emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.02 } as const;
    const two = { ...emitter, compensation: { openingPressure: '60 kPa' }, furtherReaches: [{ outlets: 5, emitter: { ...emitter, compensation: { openingPressure: '80 kPa' } } }] } as const;
    const { notes } = lateral({ ...row, ...two, inletPressure: '50 kPa' });
    expect(notes.filter(({ code }) => code === 'not-compensating')).toMatchObject([{ text: expect.stringContaining('these need 80 kPa') }]);
  });
  test('clogged emitters', () => {
    expect(codes({ cloggedShare: '2 %' })).toEqual(['clogged']);
    expect(codes({ cloggedShare: '8 %' })).toEqual(['uneven', 'clogged']);
  });
  test('a flush that is too weak, until the pressure that it names', () => {
    const weak = { outlets: 280, diameter: '10.2 mm', flushingVelocity: '1 m/s' } as const;
    expect(codes(weak)).toContain('weak-flush');
    const { flushing } = lateral({ ...row, ...weak, inletPressure: '1 bar' });
    const stronger = (share: number) => codes({ ...weak, inletPressure: `${flushing!.flushingInletPressure!.in('kPa') * share} kPa` });
    expect(stronger(0.99)).toContain('weak-flush');
    expect(stronger(1.01)).not.toContain('weak-flush');
  });
});

test('a compensating emitter that is laminar outside its range gives in proportion to the head there', () => {
  const { flow } = compensatingEmitter({ flow: 4, head: 15, exponent: 0, openingHead: 10, highestHead: 30, closingHead: 2, unregulatedExponent: 1 });
  // By hand: half way from 2 to 10 m half the flow, at twice 30 m twice the flow.
  expect([flow(2), flow(6), flow(20), flow(60)]).toEqual([0, 2, 4, 8]);
});

test('a number without a unit is told a unit in which it can be', () => {
  const attempt = lateral.try({ outlets: 28, spacing: '25 cm', diameter: 16, emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5, inletPressure: 1 });
  expect(attempt).toMatchObject({ ok: false, error: { problems: [{ path: 'diameter', hint: "the unit is missing, as in '16 mm'" }, { path: 'inletPressure', hint: "the unit is missing, as in '1 kPa'" }] } });
});
