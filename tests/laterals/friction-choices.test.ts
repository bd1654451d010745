/** The lateral with a law of friction that is given as a function. */
import { expect, test } from 'vitest';
import { headGradientDarcyWeisbach, lateralFromInletHead, type LateralLayout } from '../../src/laterals/index.js';

test('water drawn off evenly on the way loses 7386.3 Pa (Massey & Ward-Smith, example 7.5, second part, p. 282)', () => {
  const outlets = 10_000;
  const half: LateralLayout = {
    outlets, spacing: 2250 / outlets, firstSpacing: 1125 / outlets, diameter: 0.1, gravity: 9.81,
    emitter: { flow: 0.00225 / outlets, head: 10, exponent: 0 },
    friction: (diameter) => (flow) => headGradientDarcyWeisbach(flow, diameter, 4 * 0.006, 9.81),
  };
  expect(Math.abs((10 - lateralFromInletHead(half, 10).heads.at(-1)!) * 9810 - 7386.3)).toBeLessThan(0.05);
});
