import type * as supply from '../src/supply/index.js';
import { inEpanet, type PlainNetwork } from '../tests/support/epanet.js';
import { agreeWithin, built, type Comparison } from './comparison.js';

const { pipeNetwork, pumpCurveThreePoints } = await built<typeof supply>('supply');

const perHour = 3600;
/** Pressure of a metre of water at 19.25 °C, which has the viscosity of the other solver, kPa. */
const metre = 9.79055;

const alongLateral = 100;
const emitterFlow = 2;
const main = { length: 1, diameter: 0.05 } as const;
const row = { spacing: 0.3, diameter: 0.0136 } as const;

/** A pump for so many laterals: 30 m at 1.5 times their nominal flow, m³/h. */
const pumpPoints = (laterals: number) => {
  const flow = (1.5 * laterals * alongLateral * emitterFlow) / 1000;
  return [{ flow: 0, head: 40 }, { flow, head: 30 }, { flow: 2 * flow, head: 5 }] as const;
};
/** Width of the main, m, that keeps its water at the speed it has for twenty laterals. */
const mainWidth = (laterals: number): number => main.diameter * Math.sqrt(laterals / 20);

/** Laterals of 100 emitters along a main that a ring closes, behind a pump. */
function gardenOf(laterals: number): Parameters<typeof pipeNetwork>[0] {
  const diameter = `${mainWidth(laterals) * 1000} mm` as const;
  const places = Array.from({ length: laterals }, (_, i) => `row ${i + 1}`);
  const length = `${main.length} m` as const;
  return {
    nodes: [{ name: 'barrel', keptPressure: '0 kPa' }, { name: 'row 0' }, ...places.map((name) => ({ name }))],
    pumps: [{ name: 'pump', from: 'barrel', to: 'row 0', curveShape: 'power law', pumpCurve: pumpPoints(laterals).map(({ flow, head }) => ({ flow: `${flow} m³/h`, head: `${head} m` } as const)) }],
    pipes: [
      ...places.map((to, i) => ({ name: `main ${i}`, from: `row ${i}`, to, length, diameter })),
      { name: 'ring', from: 'row 0', to: `row ${laterals}`, length: '10 m', diameter },
    ],
    dripLaterals: places.map((from) => ({
      name: from, from, outlets: alongLateral, spacing: `${row.spacing} m`, diameter: `${row.diameter * 1000} mm`, emitterFlow: `${emitterFlow} L/h`, emitterPressure: `${10 * metre} kPa`, emitterExponent: 0.5,
    } as const)),
    waterTemperature: '19.25 °C', frictionFactor: 'Swamee-Jain',
  };
}

/** The same for the other solver. */
function plainGarden(laterals: number): PlainNetwork {
  const emitter = { flow: emitterFlow / 1000 / perHour, head: 10, exponent: 0.5 };
  const size = laterals * alongLateral;
  const points = pumpPoints(laterals).map(({ flow, head }) => ({ flow: flow / perHour, head }));
  const width = mainWidth(laterals);
  const places = Array.from({ length: laterals }, (_, i) => i);
  const outlet = (lateral: number, i: number): number => 2 + laterals + lateral * alongLateral + i;
  return {
    nodes: Array.from({ length: 2 + laterals + size }, (_, i) => ({ elevation: 0, ...(i === 0 && { head: 0 }) })),
    links: [
      { kind: 'pump', from: 0, to: 1, curve: pumpCurveThreePoints(points[0]!.head, points[1]!, points[2]!) },
      ...places.map((i) => ({ kind: 'pipe', from: 1 + i, to: 2 + i, length: main.length, diameter: width }) as const),
      { kind: 'pipe', from: 1, to: 1 + laterals, length: 10, diameter: width },
      ...places.flatMap((lateral) => Array.from({ length: alongLateral }, (_, i) =>
        ({ kind: 'pipe', from: i === 0 ? 2 + lateral : outlet(lateral, i - 1), to: outlet(lateral, i), length: row.spacing, diameter: row.diameter }) as const)),
    ],
    friction: { law: 'Darcy-Weisbach', frictionFactor: 'Swamee-Jain', roughness: 1.5e-6, viscosity: 1.02193e-6 },
    emitters: new Map(Array.from({ length: size }, (_, i) => [outlet(0, i), emitter])),
    pumpPoints: points, fitted: new Map(),
  };
}

/** Networks of 2,000 and of 100,000 emitters. */
export async function networkComparisons(): Promise<Comparison[]> {
  const [garden, small, large] = [gardenOf(20), gardenOf(10), gardenOf(1000)];
  const epanet = await inEpanet(plainGarden(20), 0.001);
  const solveOnly = epanet.read();
  const ours = { name: 'pipeNetwork, checked', run: () => pipeNetwork(garden) };
  const agree = () => {
    const { outflows } = epanet.readAndSolve()!;
    pipeNetwork(garden).dripLaterals.forEach(({ flows }, lateral) => flows.in('m³/h').forEach((flow, i) => agreeWithin(0.001, flow, outflows[22 + lateral * alongLateral + i]! * perHour)));
  };
  return [
    { name: 'network of 2,000 emitters', ours, theirs: { name: 'epanet-js, network read and solved', run: epanet.readAndSolve }, limit: { atLeast: 10 }, agree },
    { name: 'the same, network read before', ours, theirs: { name: 'epanet-js, solved only', run: solveOnly }, agree },
    {
      // 100 to the power of 1.1 is 158.
      name: 'network of 100,000 emitters', ours: { name: 'pipeNetwork, checked', run: () => pipeNetwork(large) }, theirs: { name: 'itself with 1,000', run: () => pipeNetwork(small) },
      limit: { atMost: 158 }, median: 2_000_000, agree: () => undefined,
    },
  ];
}
