import fc from 'fast-check';
import { expect, test } from 'vitest';
import { emitterFit, lateral } from '../../src/laterals/index.js';

const measured = { lowerPressure: '0.5 bar', flowAtLowerPressure: '1.4 L/h', higherPressure: '2 bar', flowAtHigherPressure: '2.8 L/h' } as const;

test('what it gives is what a lateral takes: one emitter, next to the inlet, flows as measured', () => {
  const emitter = { outlets: 1, spacing: '1 cm', firstSpacing: '0 m', diameter: '13.6 mm' } as const;
  fc.assert(fc.property(fc.double({ min: 0.3, max: 1, noNaN: true }), fc.double({ min: 40, max: 300, noNaN: true }), (share, pressure) => {
    const { emitterExponent, emitterFlow } = emitterFit({ ...measured, flowAtLowerPressure: `${2.8 * share} L/h`, emitterPressure: `${pressure} kPa` });
    const at = (inletPressure: `${number} bar`) => lateral({ ...emitter, emitterFlow, emitterPressure: `${pressure} kPa`, emitterExponent, inletPressure }).inletFlow.in('L/h');
    expect(at('0.5 bar')).toBeCloseTo(2.8 * share, 6);
    expect(at('2 bar')).toBeCloseTo(2.8, 6);
  }));
});

test.each<[string, object, string]>([
  ['pressures the wrong way round', { lowerPressure: '2 bar', higherPressure: '0.5 bar' }, 'higherPressure'],
  ['pressures too near each other', { lowerPressure: '1.9 bar' }, 'higherPressure'],
  ['a flow that no emitter gives', { flowAtHigherPressure: '28 L/h' }, 'flowAtHigherPressure'],
])('%s is refused', (_, changes, path) => {
  expect(emitterFit.try({ ...measured, ...changes })).toMatchObject({ ok: false, error: { problems: [{ path }] } });
});

test('an exponent just outside nought to one is noted, and a pressure far from those measured', () => {
  expect(emitterFit({ ...measured, flowAtLowerPressure: '2.9 L/h' }).notes).toMatchObject([{ code: 'unusual-exponent' }]);
  expect(emitterFit({ ...measured, emitterPressure: '5 bar' }).notes).toMatchObject([{ code: 'far-from-measured' }]);
  expect(emitterFit(measured).notes).toEqual([]);
});
