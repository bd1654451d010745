import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fittingHeadLoss, frictionLaw, headGradientDarcyWeisbach, pipeVelocity } from '../../src/laterals/index.js';
import {
  blockedShareFromLoss, circularSection, criticalDepth, dutyFlow, emptyingTimeThrough, emptyingTimeThroughOrifice, fallForVelocity, filterPressureLoss,
  flowAtDepth, flowCoefficientFromLossCoefficient, flowThroughOrifice, froudeNumber, headOfPressure, hydraulicPower,
  lossCoefficientFromFlowCoefficient, netPositiveSuctionHead, normalDepth, partFullPipe, practicalSuctionLift, pressureAltitude,
  pressureLossAtFlowCoefficient, pressureWaveSpeed, pumpCurveOnePoint, pumpCurveThreePoints, pumpCurveThroughPoints, pumpPointAtSpeed, speedForFlow, sumpCycle, surgePressure,
  surgePressureJoukowsky, systemHead, trapezoidalSection, waveReturnTime,
} from '../../src/supply/index.js';
import type { PumpCurvePoint } from '../../src/supply/index.js';
import { pressureAtAltitudeAshrae } from '../../src/vapour/index.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const near = (a: number, b: number, share = 1e-9) => expect(Math.abs(a - b), `${a} and ${b}`).toBeLessThanOrEqual(share * Math.max(Math.abs(a), Math.abs(b)));

describe('a pump', () => {
  const headOf = (point: PumpCurvePoint) => {
    const curve = pumpCurveOnePoint(point);
    return (flow: number) => curve.head(flow);
  };
  const pump = fc.record({ flow: between(1e-5, 1e-1), head: between(1, 200) });

  test('and its system agree on the head', () => {
    fc.assert(fc.property(pump, between(-0.5, 1.2), between(0.01, 5), between(1, 2), (point, lift, loss, exponent) => {
      const takes = (q: number) => systemHead(q, lift * point.head, point.flow, loss * point.head, exponent);
      const duty = dutyFlow(headOf(point), takes, point.flow);
      near(pumpCurveOnePoint(point).head(duty.value), takes(duty.value), 1e-9 + 1e-12 * point.head / Math.abs(takes(duty.value)));
    }));
  });

  test('gives less against more', () => {
    fc.assert(fc.property(pump, between(0, 1), between(0.1, 2), (point, lift, loss) => {
      const flowAgainst = (more: number) => dutyFlow(headOf(point), (q) => systemHead(q, more * lift * point.head, point.flow, more * loss * point.head), point.flow).value;
      expect(flowAgainst(1.1)).toBeLessThan(flowAgainst(1));
    }));
  });

  test('takes its own speed for its own flow, and in a system of friction alone gives in proportion to speed', () => {
    fc.assert(fc.property(pump, between(0.1, 2), between(0.3, 2), (point, loss, share) => {
      const head = headOf(point);
      const takes = (q: number) => systemHead(q, 0, point.flow, loss * point.head);
      const { value } = dutyFlow(head, takes, point.flow);
      near(speedForFlow(head, value, takes(value)).value, 1, 1e-7);
      near(speedForFlow(head, share * value, takes(share * value)).value, share, 1e-7);
    }));
  });

  test('keeps its efficiency at another speed', () => {
    fc.assert(fc.property(pump, between(0.5, 1.5), (point, share) => {
      const at = pumpPointAtSpeed({ ...point, power: hydraulicPower(point.flow, point.head, 998) / 0.6 }, share);
      near(hydraulicPower(at.flow, at.head, 998) / at.power, 0.6);
    }));
  });

  const falling = fc.array(fc.tuple(between(0.01, 1), between(0.01, 1)), { minLength: 2, maxLength: 12 }).map((stepsDown) => {
    let [flow, head] = [0, 20];
    return [{ flow, head }, ...stepsDown.map(([forward, down]) => ({ flow: (flow += forward), head: (head -= down) }))];
  });
  test('has a curve through its points that never rises between them', () => {
    fc.assert(fc.property(falling, (points) => {
      const curve = pumpCurveThroughPoints(points);
      const head = (flow: number) => curve.head(flow);
      for (const point of points) near(head(point.flow), point.head, 1e-12);
      const last = points.at(-1)!.flow;
      for (let i = 0; i < 200; i++) expect(head(((i + 1) / 200) * last)).toBeLessThanOrEqual(head((i / 200) * last) + 1e-12);
    }));
  });

  test('by a power law goes through its three points', () => {
    fc.assert(fc.property(between(0.1, 0.9), between(0.05, 0.95), (middle, drop) => {
      const points = [{ flow: 0, head: 30 }, { flow: middle, head: 30 - 20 * drop }, { flow: 1, head: 10 }] as const;
      for (const { flow, head } of points) near(pumpCurveThreePoints(30, points[1], points[2]).head(flow), head, 1e-12);
    }));
  });
});

describe('suction', () => {
  test('gives up a metre of head for a metre of lift', () => {
    fc.assert(fc.property(between(6e4, 3e5), between(600, 2e4), between(-5, 5), between(0, 3), between(0, 5), (surface, vapour, lift, loss, more) => {
      expect(netPositiveSuctionHead(surface, vapour, lift, loss, 998) - netPositiveSuctionHead(surface, vapour, lift + more, loss, 998)).toBeCloseTo(more, 9);
    }));
  });

  test('altitude and pressure of the standard atmosphere are found from each other', () => {
    fc.assert(fc.property(between(-400, 5000), (altitude) => {
      expect(Math.abs(pressureAltitude(pressureAtAltitudeAshrae(altitude)) - altitude)).toBeLessThan(1e-6);
    }));
  });

  test('in practice stays below what the atmosphere can do, and falls with altitude', () => {
    fc.assert(fc.property(between(0, 5000), between(1, 500), (altitude, more) => {
      expect(practicalSuctionLift(altitude)).toBeLessThan(0.7 * headOfPressure(pressureAtAltitudeAshrae(altitude), 1000));
      expect(practicalSuctionLift(altitude + more)).toBeLessThan(practicalSuctionLift(altitude));
    }));
  });
});

describe('valves and filters', () => {
  test('flow coefficient and loss coefficient tell the same loss', () => {
    fc.assert(fc.property(between(0.1, 500), between(0.005, 0.3), between(1e-5, 1e-2), (kv, diameter, flow) => {
      const k = lossCoefficientFromFlowCoefficient(kv, diameter);
      near(flowCoefficientFromLossCoefficient(k, diameter), kv);
      near(pressureLossAtFlowCoefficient(flow, kv, 998), 998 * 9.80665 * fittingHeadLoss(k, pipeVelocity(flow, diameter)));
    }));
  });

  test('a filter tells by its loss how much of it is blocked', () => {
    fc.assert(fc.property(between(0, 0.95), between(1, 2), between(0.1, 3), (blocked, exponent, flow) => {
      const [clean, loaded] = [filterPressureLoss(flow, 1, 1e4, exponent), filterPressureLoss(flow, 1, 1e4, exponent, blocked)];
      expect(Math.abs(blockedShareFromLoss(clean, loaded, exponent) - blocked)).toBeLessThan(1e-12);
      near(filterPressureLoss(flow * (1 - blocked), 1, 1e4, exponent, blocked), clean);
    }));
  });
});

describe('surge', () => {
  const pipe = fc.record({ diameter: between(0.01, 0.3), wall: between(0.001, 0.02), modulus: between(1e8, 2e11), length: between(1, 1000), velocity: between(0.1, 3) });

  test('is slower in a softer, wider or thinner pipe, and slower than in a rigid one', () => {
    fc.assert(fc.property(pipe, between(1.01, 3), ({ diameter, wall, modulus }, times) => {
      const speed = pressureWaveSpeed(2.18e9, 998, diameter, wall, modulus);
      expect(pressureWaveSpeed(2.18e9, 998, diameter, wall, modulus / times)).toBeLessThan(speed);
      near(pressureWaveSpeed(2.18e9, 998, diameter * times, wall, modulus), pressureWaveSpeed(2.18e9, 998, diameter, wall / times, modulus));
      expect(speed).toBeLessThan(Math.sqrt(2.18e9 / 998));
    }));
  });

  test('is that of Joukowsky up to the return of the wave, then falls with the closing time whatever the wave', () => {
    fc.assert(fc.property(pipe, between(0, 1), between(1, 50), ({ diameter, wall, modulus, length, velocity }, early, late) => {
      const speed = pressureWaveSpeed(2.18e9, 998, diameter, wall, modulus);
      const returned = waveReturnTime(length, speed);
      expect(surgePressure(998, speed, length, velocity, early * returned)).toBe(surgePressureJoukowsky(998, speed, velocity));
      near(surgePressure(998, speed, length, velocity, late * returned), (2 * 998 * length * velocity) / (late * returned));
    }));
  });
});

describe('a channel', () => {
  const section = fc.oneof(
    between(0.01, 2).map(circularSection),
    fc.tuple(between(0.01, 2), between(0, 3), between(0.01, 1)).map((drawn) => trapezoidalSection(...drawn)),
  );

  test('widens at the surface as its area grows', () => {
    fc.assert(fc.property(section, between(0.05, 0.95), (one, share) => {
      const depth = share * one.fullestDepth;
      const step = 1e-5 * depth;
      near((one.area(depth + step) - one.area(depth - step)) / (2 * step), one.surfaceWidth(depth), 1e-6);
      expect(one.wettedPerimeter(depth)).toBeGreaterThan(one.surfaceWidth(depth) * (one.surfaceWidth(0) > 0 ? 0 : 1));
    }));
  });

  test('runs at a depth that carries its flow, deeper for more', () => {
    fc.assert(fc.property(section, between(0.001, 0.99), between(1e-4, 0.1), between(0.009, 0.03), (one, share, fall, n) => {
      const flow = share * flowAtDepth(one, one.fullestDepth, fall, n);
      const { value } = normalDepth(one, flow, fall, n);
      near(flowAtDepth(one, value, fall, n), flow);
      expect(normalDepth(one, 0.9 * flow, fall, n).value).toBeLessThan(value);
    }));
  });

  test('that is round carries most at its fullest depth', () => {
    fc.assert(fc.property(between(0.01, 2), between(0.001, 1), (diameter, share) => {
      const pipe = circularSection(diameter);
      expect(flowAtDepth(pipe, share * diameter, 0.01, 0.012)).toBeLessThanOrEqual(flowAtDepth(pipe, pipe.fullestDepth, 0.01, 0.012) * (1 + 1e-12));
    }));
  });

  test('runs as fast as was asked at the fall that does it', () => {
    fc.assert(fc.property(section, between(0.01, 0.9), between(1.01, 5), (one, share, faster) => {
      const flow = share * flowAtDepth(one, one.fullestDepth, 0.005, 0.012);
      const velocity = (faster * flow) / one.area(normalDepth(one, flow, 0.005, 0.012).value);
      const fall = fallForVelocity(one, flow, velocity, 0.012);
      near(flow / one.area(normalDepth(one, flow, fall, 0.012).value), velocity, 1e-7);
    }));
  });

  test('has the least energy at its critical depth', () => {
    fc.assert(fc.property(section, between(0.01, 0.9), between(0.9, 1.1), (one, share, other) => {
      const depth = share * one.fullestDepth;
      const flow = 1 / froudeNumber(one, 1, depth);
      near(criticalDepth(one, flow)!.value, depth, 1e-7);
      const energy = (y: number) => y + (flow / one.area(y)) ** 2 / (2 * 9.80665);
      expect(energy(other * depth)).toBeGreaterThanOrEqual(energy(depth) * (1 - 1e-12));
    }));
  });

  test('that is full is itself, and half full runs as fast', () => {
    expect(partFullPipe(1)).toEqual({ area: 1, hydraulicRadius: 1, velocity: 1, flow: 1 });
    near(partFullPipe(0.5).velocity, 1);
    near(partFullPipe(0.5).flow, 0.5);
  });
});

test('a sump gives to its pump in a cycle what has run into it', () => {
  fc.assert(fc.property(between(0.05, 10), between(0.01, 2), between(1e-5, 1e-2), between(0.01, 0.99), (area, span, pumpFlow, share) => {
    const run = sumpCycle({ sumpArea: `${area} m²`, floatSpan: `${span} m`, inflow: `${share * pumpFlow * 3600} m³/h`, pumpFlow: `${pumpFlow * 3600} m³/h` });
    near(pumpFlow * run.runTime!.si, share * pumpFlow * run.cycleTime!.si);
    near(run.cycleTime!.si, run.runTime!.si + run.restTime!.si);
    expect(run.startsPerHour.si).toBeLessThanOrEqual(run.mostStartsPerHour.si * (1 + 1e-12));
  }));
});

describe('a tank that empties', () => {
  test('through a hole by the sum takes the time of the formula', () => {
    fc.assert(fc.property(between(0.01, 10), between(0.5, 5), between(0.001, 0.99), between(1e-5, 1e-2), between(0.4, 1), (tank, start, share, area, cd) => {
      const headAtFlow = (flow: number) => (flow / (cd * area)) ** 2 / (2 * 9.80665);
      const flowAt = (head: number) => flowThroughOrifice(head, area, cd);
      near(emptyingTimeThrough(tank, headAtFlow, flowAt(start), flowAt(share * start)), emptyingTimeThroughOrifice(tank, start, share * start, area, cd), 1e-7);
    }));
  });

  test('through a hose that turns laminar takes as long in one go as in two', () => {
    fc.assert(fc.property(between(0.005, 0.05), between(0.2, 100), between(1.5, 500), between(0.2, 0.8), (diameter, length, ratio, share) => {
      const gradient = frictionLaw({ law: 'Darcy-Weisbach', viscosity: 1e-6, roughness: 1.5e-6 })(diameter);
      const headAtFlow = (flow: number) => length * gradient(flow) + headGradientDarcyWeisbach(flow, diameter, 1.5) * diameter;
      const first = 2 * diameter;
      const flow = (Math.PI / 4) * diameter ** 2 * first;
      const time = (a: number, b: number) => emptyingTimeThrough(1, headAtFlow, a, b);
      const between = flow * ratio ** -share;
      near(time(flow, between) + time(between, flow / ratio), time(flow, flow / ratio), 1e-6);
    }));
  });
});
