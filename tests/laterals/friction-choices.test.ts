/**
 * The lateral with laws of friction that are given as a function. Expected heads of the first two rows: independent calculation, a march from the dead
 * end with the end head found by halving, in a program that shares nothing with this one; to half of the last digit shown.
 */
import { describe, expect, test } from 'vitest';
import {
  frictionFactorChurchill1977, frictionFactorColebrook1939, frictionFactorLaminar, headGradientDarcyWeisbach, headGradientWattersKeller1978, lateralFromInletHead,
  pipeReynoldsNumber, type FrictionLaw, type LateralLayout,
} from '../../src/laterals/index.js';

const litrePerHour = 1e-3 / 3600;
type Factor = (reynolds: number, relativeRoughness: number) => number;

/** Darcy-Weisbach in a wall of 0.0015 mm, or a smooth one, with 64/Re up to Re 2000 and a step there. */
const stepping = (turbulent: Factor, viscosity: number, roughness: number): FrictionLaw => (diameter) => (flow) => {
  const reynolds = pipeReynoldsNumber(flow, diameter, viscosity);
  return headGradientDarcyWeisbach(flow, diameter, reynolds < 2000 ? frictionFactorLaminar(reynolds) : turbulent(reynolds, roughness / diameter));
};
const power = (factor: number): Factor => (reynolds) => factor * reynolds ** -0.25;

describe('a level row of 100 turbulent emitters of 4 L/h in 13.6 mm, 10 m at the inlet', () => {
  const row = { outlets: 100, spacing: 0.5, diameter: 0.0136, emitter: { flow: 4 * litrePerHour, head: 10, exponent: 0.5 } };
  const law = (turbulent: Factor): FrictionLaw => stepping(turbulent, 1.02193e-6, 1.5e-6);
  test.each<[string, FrictionLaw, number, number?]>([
    ['Colebrook-White', law(frictionFactorColebrook1939), 8.85111, 382.631],
    ['f = 0.32 Re^-0.25', law(power(0.32)), 8.82853],
    ['f = 0.302 Re^-0.25', law(power(0.302)), 8.88805],
    ['Watters & Keller', (diameter) => (flow) => headGradientWattersKeller1978(flow, diameter), 8.83121, 382.282],
  ])('%s', (_, friction, endHead, inletFlow) => {
    const { heads, inletFlow: found } = lateralFromInletHead({ ...row, friction }, 10);
    expect(Math.abs(heads.at(-1)! - endHead)).toBeLessThan(1e-5);
    if (inletFlow !== undefined) expect(Math.abs(found / litrePerHour - inletFlow)).toBeLessThan(5e-4);
  });
});

describe('50 emitters that give 2 L/h at any pressure, 0.3 m apart in 13.6 mm, lose', () => {
  const row = { outlets: 50, spacing: 0.3, diameter: 0.0136, emitter: { flow: 2 * litrePerHour, head: 10, exponent: 0 } };
  const smooth = (turbulent: Factor): FrictionLaw => stepping(turbulent, 1.0034e-6, 0);
  const churchill: FrictionLaw = (diameter) => (flow) => {
    return headGradientDarcyWeisbach(flow, diameter, frictionFactorChurchill1977(pipeReynoldsNumber(flow, diameter, 1.0034e-6), 0));
  };
  test.each<[string, LateralLayout['friction'], number]>([
    ['Blasius', smooth(power(0.3164)), 0.03297],
    ['f = 0.302 Re^-0.25', smooth(power(0.302)), 0.03215],
    ['Colebrook-White', smooth(frictionFactorColebrook1939), 0.03358],
    ['Churchill', churchill, 0.02795],
    ['Churchill by name', { law: 'Darcy-Weisbach', frictionFactor: 'Churchill', viscosity: 1.0034e-6, roughness: 0 }, 0.02795],
    ['Watters & Keller', { law: 'Watters-Keller' }, 0.0345],
  ])('%s', (_, friction, lost) => {
    expect(Math.abs(10 - lateralFromInletHead({ ...row, friction }, 10).heads.at(-1)! - lost)).toBeLessThan(5e-6);
  });
});

test('water drawn off evenly on the way loses 7386.3 Pa (Massey & Ward-Smith, example 7.5, second part, p. 282)', () => {
  const outlets = 10_000;
  const half: LateralLayout = {
    outlets, spacing: 2250 / outlets, firstSpacing: 1125 / outlets, diameter: 0.1, gravity: 9.81,
    emitter: { flow: 0.00225 / outlets, head: 10, exponent: 0 },
    friction: (diameter) => (flow) => headGradientDarcyWeisbach(flow, diameter, 4 * 0.006, 9.81),
  };
  expect(Math.abs((10 - lateralFromInletHead(half, 10).heads.at(-1)!) * 9810 - 7386.3)).toBeLessThan(0.05);
});
