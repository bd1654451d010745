/** What must hold of doses, days and barrels whatever the input. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { barrelPlan, drainCheck, drainStrength, irrigationDay, runTime, substrateByWeight, substrateLeaching, substrateWater, waterGiven } from '../../src/dosing/index.js';
import { sumUntil, runningSum, timeOfSum } from '../../src/dosing/formulas/running-sum.js';
import { timeOfUse, usedUntil } from '../../src/dosing/formulas/barrel-use.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const close = (a: number, b: number, share: number, scale = Math.max(Math.abs(a), Math.abs(b))): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(share * scale);

test('run time and water given undo each other, with filling, losses, drain and uniformity', () => {
  fc.assert(fc.property(between(0.01, 3), between(0, 0.8), between(0.3, 1), between(1, 8), fc.integer({ min: 1, max: 20 }), between(0, 120), (litres, drainShare, uniformity, flow, shotsPerDay, fill) => {
    const zone = { drainShare, uniformity, dripperFlow: `${flow} L/h`, shotsPerDay, fillTime: `${fill} s`, lostPerShot: '10 mL' } as const;
    const run = runTime({ volumePerPlant: `${litres} L`, ...zone });
    fc.pre(run.runTime.in('d') <= 1);
    const back = waterGiven({ runTime: run.runTime, ...zone });
    close(back.volumePerPlant.in('L'), litres, 1e-12);
    for (const name of ['appliedVolume', 'drawnPerPlant', 'runTimePerShot'] as const) close(back[name].si, run[name].si, 1e-12);
  }));
});

test('drain for a strength and strength for a drain undo each other, and a tray under the bag finds the uptake', () => {
  fc.assert(fc.property(between(0.5, 5), between(0.05, 0.95), between(0.05, 0.9), (feed, share, taken) => {
    const input = { feedConductivity: `${feed} mS/cm`, uptakeConductivity: `${feed * taken} mS/cm` } as const;
    const { drainConductivity } = drainStrength({ ...input, drainShare: share });
    fc.pre(drainConductivity.in('mS/cm') <= 40);
    close(substrateLeaching({ ...input, drainConductivity }).drainShare.si, share, 1e-9);
    const { uptakeConductivity } = drainCheck({ appliedVolume: '1 L', drainCaught: `${share} L`, feedConductivity: input.feedConductivity, drainConductivity });
    close(uptakeConductivity!.in('mS/cm'), feed * taken, 1e-9, feed);
  }));
});

test('a substrate is pores and solids, and weighing gives what it was made of', () => {
  fc.assert(fc.property(between(1, 30), between(0.2, 0.7), between(0.02, 0.2), (litres, water, density) => {
    const { containerWater, airVolume } = substrateWater({ substrateVolume: `${litres} L`, waterHoldingShare: water, poreShare: 0.9 });
    close(containerWater.in('L') + airVolume!.in('L'), 0.9 * litres, 1e-12);
    const dry = density * litres;
    const weighed = substrateByWeight({ dryMass: `${dry} kg`, drainedMass: `${dry + 0.9982 * litres * water} kg`, substrateVolume: `${litres} L` });
    close(weighed.waterHoldingShare.si, water, 1e-4);
    // The formulas count water at 1 kg/L.
    close(weighed.airShare.si, weighed.poreShare.si - 0.9982 * water, 1e-9, 1);
  }));
});

/** Readings of a day: rising times with light and transpiration. */
const readings = fc.array(fc.tuple(between(0.05, 3), between(0, 1000), between(0, 0.8)), { minLength: 2, maxLength: 30 }).map((rows) => {
  const whole = rows.reduce((sum, [step]) => sum + step, 0);
  let at = 0;
  const times = rows.map(([step]) => Math.min(24, ((at += step) * 24) / whole));
  return { times, light: rows.map((row) => row[1]), rates: rows.map((row) => row[2]) };
});

const plan = fc.oneof(
  between(20, 400).map((step) => ({ radiationStep: `${step} J/cm²` }) as const),
  between(20, 400).map((step) => ({ uptakeStep: `${step} mL` }) as const),
  fc.uniqueArray(fc.integer({ min: 60, max: 220 }), { minLength: 1, maxLength: 10 }).map((times) => ({ shotTimes: { unit: 'h', values: times.sort((a, b) => a - b).map((x) => x / 10) } }) as const),
);

const day = fc.record({ readings, plan, shot: between(50, 600), start: between(0, 1), bag: between(0.5, 20), flow: between(1, 8), fill: between(0, 60) });

describe('a day of irrigation', () => {
  const run = ({ readings: { times, light, rates }, plan: shotPlan, shot, start, bag, flow, fill }: typeof day extends fc.Arbitrary<infer T> ? T : never) => irrigationDay.try({
    dayReadings: { readingTime: { unit: 'h', values: times }, globalRadiation: { unit: 'W/m²', values: light }, transpirationRate: { unit: 'mm/h', values: rates } },
    plantDensity: 2.5, substrateVolume: `${bag} L`, waterHoldingShare: 0.6, startingShare: start,
    shotVolume: `${shot} mL`, dripperFlow: `${flow} L/h`, fillTime: `${fill} s`, shotPlan,
  });

  test('balances: given is taken up, drained, or in the bag, at every row', () => {
    let worked = 0;
    fc.assert(fc.property(day, (input) => {
      const attempt = run(input);
      if (!attempt.ok) return;
      worked++;
      const { givenVolumes, uptakeVolumes, drainedVolumes, waterVolumes, readingTime, shots, appliedVolume, drainPerPlant } = attempt.value;
      const [given, taken, drained, held, times] = [givenVolumes.si, uptakeVolumes.si, drainedVolumes.si, waterVolumes.si, readingTime.si];
      const most = 0.6e-3 * input.bag;
      for (let i = 1; i < given.length; i++) {
        expect(times[i]!).toBeGreaterThan(times[i - 1]!);
        close(given[i]!, taken[i]! + drained[i]! + held[i]! - held[0]!, 1e-12, given.at(-1)! + most);
        for (const sums of [given, taken, drained]) expect(sums[i]!).toBeGreaterThanOrEqual(sums[i - 1]!);
        expect(held[i]!).toBeGreaterThanOrEqual(0);
        expect(held[i]!).toBeLessThanOrEqual(most * (1 + 1e-15));
      }
      close(shots.reduce((sum, { shotDrain }) => sum + shotDrain.si, 0), drainPerPlant.si, 1e-12, appliedVolume.si);
      close(appliedVolume.si, shots.length * input.shot * 1e-6, 1e-12);
    }));
    expect(worked).toBeGreaterThan(50);
  });

  test('shots never overlap, and between them the sum has come to the step or they had to wait', () => {
    fc.assert(fc.property(day, (input) => {
      const attempt = run(input);
      if (!attempt.ok) return;
      const { shots, runTimePerShot } = attempt.value;
      const { readings: { times, light, rates }, plan } = input;
      const seconds = Float64Array.from(times, (x) => x * 3600);
      const signal = 'radiationStep' in plan ? runningSum(seconds, Float64Array.from(light)) : runningSum(seconds, Float64Array.from(rates, (x) => x / 3.6e6 / 2.5));
      const step = 'radiationStep' in plan ? Number.parseFloat(plan.radiationStep) * 1e4 : 'uptakeStep' in plan ? Number.parseFloat(plan.uptakeStep) * 1e-6 : undefined;
      let [counted, last] = [0, -Infinity];
      for (const { shotTime: { si: now } } of shots) {
        const pause = now - last;
        expect(pause).toBeGreaterThanOrEqual(runTimePerShot.si * (1 - 1e-9));
        if (step !== undefined) {
          const sum = sumUntil(signal, now) - counted;
          expect(sum).toBeGreaterThanOrEqual(step * (1 - 1e-9));
          if (pause > runTimePerShot.si * (1 + 1e-9)) close(sum, step, 1e-9, sumUntil(signal, now));
          counted += sum;
        }
        last = now;
      }
    }));
  });

  test('more readings on the same straight lines change nothing', () => {
    fc.assert(fc.property(day, (input) => {
      const coarse = run(input);
      const { times, light, rates } = input.readings;
      const halves = (values: readonly number[]): number[] => values.flatMap((x, i) => (i === 0 ? [x] : [(values[i - 1]! + x) / 2, x]));
      const fine = run({ ...input, readings: { times: halves(times), light: halves(light), rates: halves(rates) } });
      fc.pre(coarse.ok && fine.ok);
      if (!coarse.ok || !fine.ok) return;
      expect(fine.value.shots.length).toBe(coarse.value.shots.length);
      close(fine.value.uptakeVolume.si, coarse.value.uptakeVolume.si, 1e-9);
      coarse.value.shots.forEach(({ shotTime }, i) => close(fine.value.shots[i]!.shotTime.si, shotTime.si, 1e-9));
    }));
  });
});

test('the time at which a sum is reached is where it has that sum', () => {
  fc.assert(fc.property(readings, between(0, 1), ({ times, light }, share) => {
    const course = runningSum(Float64Array.from(times, (x) => x * 3600), Float64Array.from(light));
    const all = course.sums.at(-1)!;
    fc.pre(all > 1e-3);
    const at = timeOfSum(course, share * all);
    close(sumUntil(course, at), share * all, 1e-12, all);
    expect(timeOfSum(course, all * 1.001 + 1)).toBe(Infinity);
  }));
});

describe('barrels', () => {
  const use = fc.record({ volumes: fc.array(between(0, 0.2), { minLength: 1, maxLength: 6 }), from: between(0, 11), until: between(12, 24) });

  test('use up to the moment of a use is that use', () => {
    fc.assert(fc.property(use, between(0.001, 2), ({ volumes, from, until }, wanted) => {
      const pattern = { times: [from * 3600, until * 3600], shares: [0, 1] };
      const at = timeOfUse(wanted, volumes, pattern);
      fc.pre(Number.isFinite(at) && at < 1e9);
      close(usedUntil(at, volumes, pattern), wanted, 1e-9);
    }));
  });

  test('two in turn give without a break what they hold, where there is time to warm', () => {
    fc.assert(fc.property(between(20, 300), between(20, 90), between(0, 20), (litres, daily, warm) => {
      const plan = barrelPlan({ barrelVolume: `${litres} L`, zones: [{ dailyVolumes: { unit: 'L', values: [daily] } }], warmUpTime: `${warm} h`, days: 30 });
      const lasts = (litres / daily) * 24;
      if (warm > lasts) {
        expect(plan.notes.map(({ code }) => code)).toContain('mix-at-once');
        return;
      }
      close(plan.timeWithoutFeed.in('h'), 0, 1, 1e-6);
      plan.fills.forEach(({ emptyTime, mixBy }, i) => {
        close(emptyTime.in('h'), lasts * (i + 1), 1e-9);
        close(mixBy!.in('h'), lasts * (i + 1) - warm, 1e-6, lasts);
      });
    }));
  });
});
