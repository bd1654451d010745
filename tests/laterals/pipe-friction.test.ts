import { expect, test } from 'vitest';
import { pipeFriction } from '../../src/laterals/index.js';

const pipe = (flow: `${number} L/min`, more: object = {}) => {
  const attempt = pipeFriction.try({ flow, diameter: '20.4 mm', length: '10 m', ...more });
  if (!attempt.ok) throw attempt.error;
  return attempt.value;
};

test('the regime follows the Reynolds number', () => {
  expect([1, 2.5, 12].map((flow) => pipe(`${flow} L/min`).regime)).toEqual(['laminar', 'in transition', 'turbulent']);
  expect(pipe('2.5 L/min').notes).toMatchObject([{ code: 'in-transition', severity: 'info' }]);
  expect(pipe('1 L/min').darcyFrictionFactor).toBeCloseTo(64 / pipe('1 L/min').reynoldsNumber, 12);
});

test('no flow loses nothing and has no friction factor', () => {
  const still = pipe('0 L/min');
  expect(still.pressureLoss.si).toBe(0);
  expect(still).not.toHaveProperty('darcyFrictionFactor');
});

test('the factor of the other laws is the one that loses as much', () => {
  const { darcyFrictionFactor, headGradient, velocity } = pipe('12 L/min', { friction: 'Hazen-Williams' });
  expect((darcyFrictionFactor! * velocity.si ** 2) / (2 * 9.80665 * 0.0204)).toBeCloseTo(headGradient.si, 12);
});

test('high velocity is noted, an impossible one refused', () => {
  expect(pipe('40 L/min').notes).toMatchObject([{ code: 'fast-water', field: 'velocity' }]);
  expect(() => pipe('40 L/min', { diameter: '2.04 mm' })).toThrow(/diameter: .*are the units right\?/);
});

test('warm water loses less pressure than cold', () => {
  expect(pipe('12 L/min', { waterTemperature: '30 °C' }).pressureLoss.si).toBeLessThan(pipe('12 L/min', { waterTemperature: '8 °C' }).pressureLoss.si);
});
