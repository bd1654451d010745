import { describe, expect, test } from 'vitest';
import { isInputError } from '../../src/calculation/problem.js';
import type { FrictionLaw } from '../../src/laterals/formulas/friction-law.js';
import { headGradientDarcyWeisbach } from '../../src/laterals/formulas/head-loss.js';
import { NetworkConvergenceError, pipeNetwork, regulatorRing, solveNetwork, type NetworkLink } from '../../src/supply/index.js';
import { randomNetwork } from '../support/random-network.js';

type Input = Parameters<typeof pipeNetwork>[0];
type Codes = { readonly notes: readonly { readonly code: string; readonly text: string }[] };
const codes = ({ notes }: Codes) => notes.map(({ code }) => code);
const noted = ({ notes }: Codes, code: string) => notes.find((note) => note.code === code)?.text;

const drippers = { emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5 } as const;
const row = { outlets: 28, spacing: '25 cm', diameter: '13.6 mm', ...drippers } as const;
const pumpCurve = [{ flow: '0 L/min', head: '28 m' }, { flow: '12 L/min', head: '22 m' }, { flow: '24 L/min', head: '9 m' }] as const;

/** A barrel and a pump, and from its outlet a valve to each of two zones. */
const garden = (more: Partial<Input> = {}): Input => ({
  nodes: [{ name: 'barrel', keptPressure: '0 kPa' }, { name: 'pump outlet' }, { name: 'troughs', height: '1 m' }, { name: 'bags' }],
  pumps: [{ name: 'pump', from: 'barrel', to: 'pump outlet', pumpCurve }],
  valves: [{ name: 'to the troughs', from: 'pump outlet', to: 'troughs', flowCoefficient: '3 Kv' }, { name: 'to the bags', from: 'pump outlet', to: 'bags', flowCoefficient: '3 Kv' }],
  dripLaterals: [{ name: 'trough row', from: 'troughs', zone: 'strawberries', ...row }, { name: 'bag row', from: 'bags', zone: 'aubergines', ...row, outlets: 12 }],
  ...more,
});
/** The same with something drawn at a place of its own. */
const drawing = (demand: `${number} L/min`, more: Partial<Input> = {}): Input =>
  garden({ nodes: [...garden().nodes, { name: 'tap', demand }], pipes: [{ name: 'hose', from: 'pump outlet', to: 'tap', length: '2 m', diameter: '20 mm' }], ...more });

describe('what is open and what is shut', () => {
  const shut = (troughs: boolean, bags: boolean) => pipeNetwork(garden({ valves: garden().valves!.map((valve, i) => ({ ...valve, isOpen: [troughs, bags][i]! })) }));

  test('a closed valve shuts off its zone as if it were not there', () => {
    const [one, alone] = [shut(true, false), pipeNetwork(garden({ valves: garden().valves!.slice(0, 1), dripLaterals: garden().dripLaterals!.slice(0, 1), nodes: garden().nodes.slice(0, 3) }))];
    expect(one.pumps[0]!.flow.si).toBeCloseTo(alone.pumps[0]!.flow.si, 12);
    expect(one.zones.map(({ name }) => name)).toEqual(['strawberries']);
    expect(one.dripLaterals[1]!.inletFlow.si).toBe(0);
    expect(one.nodes[3]!.pressure.si).toBe(0);
    expect(one.worstEmitter!.name).toBe('trough row');
    expect(codes(one)).not.toContain('idle-emitters');
  });

  test('several zones share the pump', () => {
    const [both, troughs, bags] = [shut(true, true), shut(true, false), shut(false, true)].map(({ pumps }) => pumps[0]!.flow.si) as [number, number, number];
    expect(both).toBeLessThan(troughs + bags);
    expect(both).toBeGreaterThan(Math.max(troughs, bags));
  });

  test('with all shut the pump stands at its shut-off head, and is told so', () => {
    const none = shut(false, false);
    expect(none.pumps[0]!.flow.si).toBe(0);
    expect(none.pumps[0]!.head.in('m')).toBeCloseTo(28, 6);
    expect(noted(none, 'pump-too-weak')).toMatch(/every way from it is shut, or what lies against it is more than the 28 m/);
  });

  test('a demand that only closed valves lead to is refused by name', () => {
    const nodes = garden().nodes.map((node, i) => (i === 3 ? { ...node, demand: '1 L/min' as const } : node));
    expect(() => pipeNetwork(garden({ nodes, valves: garden().valves!.map((valve) => ({ ...valve, isOpen: false })) }))).toThrow(/valves: open valves on a way to all that is drawn.*"bags"/);
  });
});

describe('what has no solution is named', () => {
  test('parts that nothing joins to a kept pressure', () => {
    expect(() => pipeNetwork(garden({ valves: garden().valves!.slice(0, 1) }))).toThrow(/nodes: every node joined by some way to one with a kept pressure.*"bags"/);
    expect(() => pipeNetwork(garden({ nodes: garden().nodes.map(({ name }) => ({ name })) }))).toThrow(/at least one node with a kept pressure/);
  });

  test('a ring of regulators', () => {
    const ring = ['a', 'b', 'c'].map((name, i, all) => ({ name: `regulator ${name}`, from: name, to: all[(i + 1) % 3]!, setPressure: '1 bar' }) as const);
    const nodes = [{ name: 'main', keptPressure: '3 bar' }, { name: 'a' }, { name: 'b' }, { name: 'c' }] as const;
    const pipes = [{ name: 'inlet', from: 'main', to: 'a', length: '1 m', diameter: '20 mm' }] as const;
    expect(() => pipeNetwork({ nodes, pipes, regulators: ring })).toThrow(/regulators: no regulators that feed one another in a ring.*"regulator a", "regulator b", "regulator c"/);
    expect(pipeNetwork.try({ nodes, pipes, regulators: ring.slice(0, 2) }).ok).toBe(true);
    expect(regulatorRing({ nodes: [{ elevation: 0 }, { elevation: 0 }], links: [{ kind: 'regulator', from: 0, to: 1, setting: 1 }, { kind: 'pipe', from: 1, to: 0, length: 1, diameter: 1 }] })).toEqual([]);
  });

  test('pipes that lose nothing between kept pressures, or in a ring', () => {
    const lossless = (name: string, from: string, to: string) => ({ name, from, to, length: '0 m', diameter: '20 mm' }) as const;
    expect(() => pipeNetwork({ nodes: [{ name: 'main', keptPressure: '3 bar' }, { name: 'barrel', keptPressure: '0 kPa' }], pipes: [lossless('hose', 'main', 'barrel')] })).toThrow(/pipes\[0\]\.length: a length or a loss coefficient.*"hose"/);
    const nodes = [{ name: 'main', keptPressure: '3 bar' }, { name: 'a' }, { name: 'b', demand: '1 L/min' }] as const;
    const ring = [lossless('one', 'main', 'a'), lossless('two', 'a', 'b'), lossless('three', 'b', 'main')];
    expect(() => pipeNetwork({ nodes, pipes: ring })).toThrow(/pipes\[2\]\.length.*"three"/);
    expect(pipeNetwork.try({ nodes, pipes: [...ring.slice(0, 2), { ...ring[2]!, fittings: { exit: 1 } }] }).ok).toBe(true);
  });

  test('names given twice or not at all', () => {
    const { nodes, pumps } = garden();
    expect(() => pipeNetwork(garden({ nodes: [...nodes, { name: 'bags' }] }))).toThrow(/nodes\[4\]\.name: a name of its own is needed.*"bags" once more/);
    expect(() => pipeNetwork(garden({ pumps: [...pumps!, { ...pumps![0]!, name: 'to the bags' }] }))).toThrow(/name: a name of its own.*"to the bags" once more/);
    expect(() => pipeNetwork(garden({ pumps: [{ ...pumps![0]!, to: 'Pump-outlet' }] }))).toThrow(/pumps\[0\]\.to: the name of a node.*did you mean "pump outlet"\?/);
    for (const to of ['pump outlets', 'pump otlet']) expect(() => pipeNetwork(garden({ pumps: [{ ...pumps![0]!, to }] }))).toThrow(/did you mean "pump outlet"\?/);
    expect(() => pipeNetwork(garden({ pumps: [{ ...pumps![0]!, to: 'kettle' }] }))).not.toThrow(/did you mean/);
    expect(() => pipeNetwork(garden({ pumps: [{ ...pumps![0]!, to: 'barrel' }] }))).toThrow(/another node than it starts from/);
  });

  test.each(['0 mm', '-20 mm', '0.5 mm', '2 m'] as const)('a pipe of %s', (diameter) => {
    expect(() => pipeNetwork(drawing('1 L/min', { pipes: [{ name: 'hose', from: 'pump outlet', to: 'tap', length: '2 m', diameter }] }))).toThrow(/pipes\[0\]\.diameter: 1 mm to 1 m/);
  });

  test('a valve larger than physical, and none at all', () => {
    const valve = (flowCoefficient: `${number} Kv`) => () => pipeNetwork(garden({ valves: [{ ...garden().valves![0]!, flowCoefficient }, garden().valves![1]!] }));
    expect(valve('1000000 Kv')).toThrow(/valves\[0\]\.flowCoefficient: .* to /);
    expect(valve('0 Kv')).toThrow(/valves\[0\]\.flowCoefficient/);
  });

  test('more than 100 000 emitters, laterals and places together', () => {
    const dripLaterals = [{ ...garden().dripLaterals![0]!, outlets: 100_000 }, garden().dripLaterals![1]!];
    expect(() => pipeNetwork(garden({ dripLaterals }))).toThrow(/at most 100000 emitters in all.*100012/);
    expect(() => pipeNetwork(garden({ dripLaterals: [{ ...garden().dripLaterals![0]!, outlets: 100_001 }] }))).toThrow(/outlets/);
  });
});

describe('what the pump cannot do', () => {
  test('lift the water: no water is told with what is lacking, and the emitters that give nothing', () => {
    const nodes = garden().nodes.map((node, i) => (i > 1 ? { ...node, height: '40 m' as const } : node));
    const result = pipeNetwork(garden({ nodes }));
    expect(result.pumps[0]!.flow.si).toBe(0);
    expect(codes(result)).toEqual(expect.arrayContaining(['pump-too-weak', 'no-water', 'idle-emitters']));
    // 40 m less the 28 m of the pump, of water of 998.2 kg/m³.
    expect(noted(result, 'no-water')).toMatch(/at least 117\.5 kPa more/);
    expect(noted(result, 'idle-emitters')).toMatch(/40 of 40 places/);
  });

  test('give what is drawn: its pressure sinks below nought, and it holds the water back', () => {
    const result = pipeNetwork(drawing('36 L/min'));
    expect(noted(result, 'negative-pressure')).toMatch(/down to -\d.* kPa at "tap".*more would end it/);
    expect(noted(result, 'outside-curve')).toMatch(/at 36 L\/min, faster than it can push: more is drawn than it gives/);
  });

  test('give more than its curve shows: told by how much to throttle it', () => {
    expect(noted(pipeNetwork(drawing('26 L/min')), 'outside-curve')).toMatch(/its curve ends at 24 L\/min: it may overload its motor. Throttle it by [23]/);
  });

  test.each(['60 L/min', '16000 L/min'] as const)('give %s: refused, as no water column holds', (demand) => {
    expect(() => pipeNetwork(drawing(demand))).toThrow(/nodes: a network that can give what is drawn is needed/);
  });

  test('run against pressure from elsewhere: nothing flows back', () => {
    const result = pipeNetwork(garden({ nodes: garden().nodes.map((node, i) => (i === 1 ? { ...node, keptPressure: '5 bar' as const } : node)) }));
    expect(result.pumps[0]!.flow.si).toBe(0);
    expect(codes(result)).toContain('pump-too-weak');
  });

  test('draw from too deep: told with the lift, and where to look', () => {
    const lift = (height: `${number} m`) => pipeNetwork(garden({
      nodes: [...garden().nodes, { name: 'inlet' }].map((node, i) => (i === 0 ? { ...node, height } : node)),
      pumps: [{ ...garden().pumps![0]!, from: 'inlet' }], pipes: [{ name: 'suction pipe', from: 'barrel', to: 'inlet', length: '1 m', diameter: '32 mm' }],
    }));
    expect(noted(lift('-7.5 m'), 'lift-too-high')).toMatch(/"inlet".*lift of 7\.5.* m.*manage 6\.7 m.*`suction`/);
    expect(codes(lift('-3 m'))).toContain('draws');
    expect(codes(lift('-3 m'))).not.toContain('negative-pressure');
    expect(codes(lift('1 m'))).not.toContain('draws');
  });
});

describe('what stands in the way of the water', () => {
  const { example } = pipeNetwork;
  const high = (names: readonly string[], height: `${number} m`): Input => ({ ...example, nodes: example.nodes.map((node) => (names.includes(node.name) ? { ...node, height } : node)) });

  test('a regulator, a non-return valve, a pump that are turned round are named, and the pump stands at the end of its curve', () => {
    const { from, to, name } = example.regulators![0]!;
    const turned = pipeNetwork({ ...example, regulators: [{ ...example.regulators![0]!, from: to, to: from }] });
    expect(turned.pumps[0]!.head.in('m')).toBeCloseTo(28, 6);
    expect(noted(turned, 'against-the-way')).toMatch(/"regulator" lets water pass from "head of the main" to "after the filter" only.*turn it round/);
    const flap = pipeNetwork({ ...example, regulators: [], nonReturnValves: [{ name, from: to, to: from, flowCoefficient: '3 Kv' }] });
    expect(flap.notes.find(({ code }) => code === 'against-the-way')!.field).toBe('nonReturnValves[0].from');
    expect(codes(pipeNetwork({ ...example, pumps: [{ ...example.pumps![0]!, from: 'pump outlet', to: 'barrel' }] }))).toContain('against-the-way');
    expect(codes(pipeNetwork(example))).not.toContain('against-the-way');
    // A closed valve before a pump is no pump turned round.
    expect(codes(pipeNetwork({
      nodes: [{ name: 'barrel', keptPressure: '0 kPa' }, { name: 'inlet' }, { name: 'tap', keptPressure: '1 bar' }], valves: [{ name: 'foot', from: 'barrel', to: 'inlet', flowCoefficient: '3 Kv', isOpen: false }],
      pumps: [{ name: 'pump', from: 'inlet', to: 'tap', pumpCurve }],
    }))).not.toContain('against-the-way');
  });

  test('laterals too high for a regulator: told what to set it to, and nothing of how even nothing is', () => {
    const result = pipeNetwork(high(['troughs', 'bags', 'basil'], '20 m'));
    // 19 m of water of 998.2 kg/m³ above the regulator.
    expect(noted(result, 'regulator-too-low')).toMatch(/set it to at least 186 kPa\.$/);
    expect(codes(result)).not.toEqual(expect.arrayContaining(['regulator-closed']));
    for (const code of ['uneven', 'not-compensating', 'below-nominal']) expect(codes(result)).not.toContain(code);
  });

  test('nothing drawn behind a regulator, and pressure from elsewhere', () => {
    const regulators = [{ name: 'regulator', from: 'main', to: 'zone', setPressure: '1 bar' }] as const;
    expect(noted(pipeNetwork({ nodes: [{ name: 'main', keptPressure: '3 bar' }, { name: 'zone' }], regulators }), 'regulator-closed')).toMatch(/nothing is drawn behind it/);
    const other = pipeNetwork({ nodes: [{ name: 'main', keptPressure: '3 bar' }, { name: 'zone' }, { name: 'other', keptPressure: '2 bar' }], regulators, pipes: [{ name: 'pipe', from: 'other', to: 'zone', length: '1 m', diameter: '20 mm' }] });
    expect(noted(other, 'regulator-closed')).toMatch(/comes from elsewhere/);
  });

  test('a place of a ring that lies too high gets nothing, and the rest goes on', () => {
    const result = pipeNetwork(high(['basil'], '30 m'));
    // 120 kPa at 1 m: 29 m of water less that.
    expect(noted(result, 'no-water')).toBe('No water reaches "basil": at least 163.9 kPa more pressure would have to come to "basil".');
    expect(result.pipes[2]!.flow.si).toBe(0);
    expect(result.zones.find(({ name }) => name === 'strawberries')!.meanFlow.in('L/h')).toBeGreaterThan(2);
  });

  test('emitters that hold the water back are told what opens them', () => {
    const result = pipeNetwork({
      nodes: [{ name: 'barrel', height: '1.2 m', keptPressure: '0 kPa' }, { name: 'bench', zone: 'basil', emitters: { ...drippers, emitterExponent: 0, compensation: { openingPressure: '50 kPa', closingPressure: '30 kPa' } } }],
      pipes: [{ name: 'hose', from: 'barrel', to: 'bench', length: '1 m', diameter: '20 mm' }],
    });
    // 30 kPa less 1.2 m of water of 998.2 kg/m³.
    expect(noted(result, 'idle-emitters')).toMatch(/18\.25 kPa more before they open, and wider pipes do not help/);
  });
});

describe('zones far from what their emitters are said to give', () => {
  const fed = (keptPressure: `${number} kPa`, more: Partial<Input>): ReturnType<typeof pipeNetwork> =>
    pipeNetwork({ nodes: [{ name: 'inlet', keptPressure }, { name: 'bench', zone: 'basil', emitters: { ...drippers, emitterCount: 100, emitterFlow: '4 L/h' } }], ...more });
  const wide = { valves: [{ name: 'tap', from: 'inlet', to: 'bench', flowCoefficient: '1000 Kv' }] } as const;

  test('too little and too much, with the pressure that mends it', () => {
    // √0.09 and √2.89 of what they give at 100 kPa.
    expect(noted(fed('9 kPa', wide), 'below-nominal')).toBe('The emitters of "basil" give 30 % of what they are said to give: raise the pressure before them by 91 kPa, or water longer.');
    expect(noted(fed('289 kPa', wide), 'above-nominal')).toBe('The emitters of "basil" give 170 % of what they are said to give: lower the pressure before them by 189 kPa, or water shorter.');
    for (const kPa of ['50 kPa', '190 kPa'] as const) expect(codes(fed(kPa, wide))).toEqual(['backflow']);
  });

  test('the part that takes the pressure is named', () => {
    // Δp = 0.9982 (0.4 √p/0.1)² bar and Δp + p = 3 bar: p = 17.68 kPa.
    const result = fed('300 kPa', { valves: [{ name: 'tap', from: 'inlet', to: 'bench', flowCoefficient: '0.1 Kv' }] });
    expect(noted(result, 'largest-loss')).toMatch(/"tap" takes 282\.3 kPa of 300 kPa: take a larger one/);
  });

  test('a pipe that takes it is told the width that takes less than a tenth at what is wanted', () => {
    const pipes = (diameter: `${number} mm`) => [{ name: 'hose', from: 'inlet', to: 'bench', length: '30 m', diameter }] as const;
    const width = Number(/"hose" takes .* of 300 kPa: from (\d+) mm on/.exec(noted(fed('300 kPa', { pipes: pipes('5 mm') }), 'largest-loss')!)![1]);
    const drop = (mm: number) => pipeNetwork({ nodes: [{ name: 'inlet', keptPressure: '300 kPa' }, { name: 'bench', demand: '400 L/h' }], pipes: pipes(`${mm} mm`) }).pipes[0]!.pressureDrop.in('kPa');
    expect(drop(width)).toBeLessThan(30);
    expect(drop(width - 1)).toBeGreaterThan(30);
  });
});

test('water that runs fast is told once, with the width that slows it', () => {
  const drawn = (diameter: `${number} mm`) => pipeNetwork({ nodes: [{ name: 'inlet', keptPressure: '3 bar' }, { name: 'tap', demand: '20 L/min' }], pipes: [{ name: 'hose', from: 'inlet', to: 'tap', length: '2 m', diameter }] });
  // 20 L/min through 12 mm run at 2.947 m/s; 12 √(2.947/1.5) = 16.82 mm.
  expect(noted(drawn('12 mm'), 'fast-water')).toMatch(/2\.947 m\/s in "hose", 12 mm wide inside; .* from 16\.9 mm on/);
  expect(codes(drawn('12 mm'))).toEqual(['fast-water', 'backflow']);
  expect(codes(drawn('16.9 mm'))).toEqual(['backflow']);
});

test('a search that does not end is an error with both residuals', () => {
  const network = randomNetwork(1);
  const attempt = () => solveNetwork(network, { steps: 1 });
  expect(attempt).toThrow(NetworkConvergenceError);
  expect(attempt).toThrow(/heads miss by up to [\d.]{1,6}(e[+-]\d+)? m and flows by up to [\d.]{1,7}(e-\d+)? m3\/s after 10 steps/);
  try {
    attempt();
  } catch (error) {
    expect(isInputError(error)).toBe(false);
    expect((error as NetworkConvergenceError).headResidual).toBeGreaterThan(0);
    expect((error as NetworkConvergenceError).flowResidual).toBeGreaterThanOrEqual(0);
  }
  expect(solveNetwork(network).headResidual).toBeLessThan(1e-6);
});

describe('what is stated of pipes and emitters', () => {
  test('fittings by name cost what their coefficients do, beside others', () => {
    const hose = { name: 'hose', from: 'barrel', to: 'can', length: '0 m', diameter: '20 mm' } as const;
    const nodes = [{ name: 'barrel', height: '1 m', keptPressure: '0 kPa' }, { name: 'can', keptPressure: '0 kPa' }] as const;
    // 1 m of water for 0.5 + 2 · 0.9 + 0.7 = 3 velocity heads: √(2 · 9.80665/3) m/s.
    const { pipes } = pipeNetwork({ nodes, pipes: [{ ...hose, fittings: { 'square entrance': 1, 'short elbow': 2 }, lossCoefficient: 0.7 }] });
    expect(pipes[0]!.velocity.in('m/s')).toBeCloseTo(Math.sqrt((2 * 9.80665) / 3), 5);
  });

  test('long-path emitters give more than they are said to in warm water', () => {
    // Viscosity of water: 1.0034e-6 m²/s at 20 °C over 6.578e-7 at 40 °C, by the tables of IAPWS; x = 1 takes it to the first power.
    const dripping = (more: object) => pipeNetwork({
      nodes: [{ name: 'inlet', keptPressure: '100 kPa' }], waterTemperature: '40 °C',
      dripLaterals: [{ name: 'row', from: 'inlet', zone: 'bags', ...row, outlets: 1, spacing: '1 cm', emitterExponent: 1, ...more }],
    });
    expect(dripping({}).zones[0]!.meanFlow.in('L/h')).toBeCloseTo(2, 3);
    const warm = dripping({ emitterTemperature: '20 °C' });
    expect(warm.zones[0]!.meanFlow.in('L/h') / 2).toBeCloseTo(1.0034 / 0.6578, 2);
    expect(warm.worstEmitter!.nominalShare.si).toBeCloseTo(1.0034 / 0.6578, 2);
  });

  test('a flow stated outside the range that emitters regulate in is refused, at a node, in a lateral, and further on', () => {
    const compensation = { openingPressure: '50 kPa', regulatedUpTo: '90 kPa' } as const;
    const [nodes, dripLaterals] = [garden().nodes, garden().dripLaterals!];
    expect(() => pipeNetwork(garden({ nodes: [...nodes.slice(0, 3), { name: 'bags', emitters: { ...drippers, compensation } }] }))).toThrow(/nodes\[3\]\.emitters\.emitterPressure: a pressure that it regulates at, 50 to 90 kPa/);
    expect(() => pipeNetwork(garden({ dripLaterals: [{ ...dripLaterals[0]!, compensation }] }))).toThrow(/dripLaterals\[0\]\.emitterPressure/);
    expect(() => pipeNetwork(garden({ dripLaterals: [{ ...dripLaterals[0]!, furtherReaches: [{ outlets: 2, emitter: { ...drippers, compensation } }] }] }))).toThrow(/dripLaterals\[0\]\.furtherReaches\[0\]\.emitter\.emitterPressure/);
  });

  test('how even they are, by hand: a zone of four emitters of 100 %, 100 %, 90 % and 60 %', () => {
    // At the root of the pressure: 100, 100, 81 and 36 kPa. (100 - 60)/100; 60/87.5, which is the quarter with the least too.
    const places = [100, 100, 81, 36].map((kPa, i) => ({ name: `${i}`, kPa }));
    const { zones } = pipeNetwork({
      nodes: [...places.map(({ name, kPa }) => ({ name: `kept ${name}`, keptPressure: `${kPa} kPa` as const })), ...places.map(({ name }) => ({ name, zone: 'basil', emitters: drippers }))],
      valves: places.map(({ name }) => ({ name: `to ${name}`, from: `kept ${name}`, to: name, flowCoefficient: '500 Kv' })),
    });
    expect(zones[0]!.flowVariation.si).toBeCloseTo(0.4, 6);
    expect(zones[0]!.lowestShare.si).toBeCloseTo(0.6 / 0.875, 6);
    expect(zones[0]!.lowQuarterUniformity.si).toBeCloseTo(0.6 / 0.875, 6);
  });
});

describe('textbook examples with one friction factor for all pipes', () => {
  const factor = (f: number): FrictionLaw => (diameter) => (flow) => headGradientDarcyWeisbach(flow, diameter, f, 9.81);
  const pipe = (from: number, to: number, length: number, diameter: number): NetworkLink => ({ kind: 'pipe', from, to, length, diameter });

  test('three pipes in a row carry as much as one', () => {
    // Subramanya, example 11.4: 1800 m of 50 cm, 1200 m of 40 cm and 600 m of 30 cm are 4318.2 m of 40 cm.
    const nodes = [{ elevation: 0, head: 20 }, { elevation: 0 }, { elevation: 0 }, { elevation: 0, head: 0 }];
    const { flows } = solveNetwork({ nodes, links: [pipe(0, 1, 1800, 0.5), pipe(1, 2, 1200, 0.4), pipe(2, 3, 600, 0.3), pipe(0, 3, 4318.2, 0.4)], friction: factor(0.02) });
    expect(Math.abs(flows[0]! / flows[3]! - 1)).toBeLessThan(0.05 / 4318.2);
    // The same: 3600 m of them are one pipe of 38.57 cm.
    const whole = solveNetwork({ nodes: nodes.slice(2).map(({ elevation }, i) => ({ elevation, head: 20 - 20 * i })), links: [pipe(0, 1, 3600, 0.3857)], friction: factor(0.02) });
    expect(Math.abs(whole.flows[0]! / flows[0]! - 1)).toBeLessThan(2.5 * (0.005 / 38.57));
  });

  test('three pipes side by side carry as much as one', () => {
    // The same example: side by side they are 377.34 m of 50 cm, by Σ √(D⁵/L); the book's 377.37 comes of roots rounded on the way.
    const nodes = [{ elevation: 0, head: 5 }, { elevation: 0, head: 0 }];
    const { flows } = solveNetwork({ nodes, links: [pipe(0, 1, 1800, 0.5), pipe(0, 1, 1200, 0.4), pipe(0, 1, 600, 0.3), pipe(0, 1, 377.34, 0.5)], friction: factor(0.02) });
    expect(Math.abs((flows[0]! + flows[1]! + flows[2]!) / flows[3]! - 1)).toBeLessThan(0.005 / 377.34);
  });

  test('one reservoir feeds two lower ones', () => {
    // Douglas, example 14.4, as worked in the FOSSEE Python Textbook Companions: Fanning's f = 0.01; 0.0206, 0.0105 and 0.0101 m³/s.
    const nodes = [{ elevation: 0, head: 0 }, { elevation: -30 }, { elevation: 0, head: -16 }, { elevation: 0, head: -24 }];
    const { flows } = solveNetwork({ nodes, links: [pipe(0, 1, 120, 0.12), pipe(1, 2, 60, 0.075), pipe(1, 3, 40, 0.06)], friction: factor(0.04) });
    [0.0206, 0.0105, 0.0101].forEach((printed, i) => expect(Math.abs(flows[i]! - printed)).toBeLessThan(0.00005));
  });
});
