import { calculation, type Solving } from '../calculation/calculation.js';
import { backflow, mainsElectricity, pumpSuction } from '../calculation/caution.js';
import * as output from '../calculation/output.js';
import { pressureOfHead } from '../laterals/pipe.js';
import { flow, head, pressure, share, velocity } from '../units/dimensions.js';
import { quoted } from '../units/quoted.js';
import { writeNumber } from '../units/write.js';
import { NetworkConvergenceError, solveNetwork, type NetworkFlow } from './formulas/network.js';
import { regulatorRing, unfedNodes } from './formulas/network-unfed.js';
import { checkNetwork, networkFields, type SeenNetwork } from './network-fields.js';
import { networkPlan, type NetworkPlan } from './network-layout.js';
import { noteDry, noteEmitters, noteFastest, noteMachines, noteSuction, noteZone } from './network-notes.js';
import { partsOf, worstOf, zonesOf } from './network-results.js';

/** Less than this, m³/s, is no flow: 4 mL/h. */
const leastFlow = 1e-9;

const flowAndDrop = () => ({ name: output.text(), flow: output.quantity(flow, 'L/min'), pressureDrop: output.quantity(pressure, 'kPa') });
const evenness = () => ({
  meanFlow: output.quantity(flow, 'L/h'),
  lowestFlow: output.quantity(flow, 'L/h'),
  highestFlow: output.quantity(flow, 'L/h'),
  lowQuarterUniformity: output.quantity(share, '%'),
});

/**
 * Pressures and flows everywhere in a network: pumps, filters, valves, regulators, pipes in branches and rings, zones of drip laterals.
 *
 * Takes, each by a name of its own and all but the nodes only where there are any:
 * - nodes, where parts meet: the height above a level that is the same for all (-200 to 200 m; 0 by default), and perhaps the pressure that is kept there
 *   (-50 kPa to 1 MPa; 0 for the water in an open barrel), the flow that is drawn whatever the pressure (0 to 1000 m³/h), or emitters as `lateral`
 *   takes them. At least one pressure has to be kept;
 * - pipes between two nodes: length (0 to 10 km), inside diameter (1 mm to 1 m), and the loss coefficient of all their fittings together;
 * - drip laterals from a node, each as `lateral` takes it, with a zone;
 * - valves and non-return valves by their Kv or Cv; filters as `filterLoss` takes them; pumps by their curve as `pumpDuty` takes it; regulators by the
 *   pressure that they are set to, with a Kv where they lose some of it to the flow;
 * - the water temperature and the friction law, the same for all, as in `lateral`.
 * A valve with `isOpen: false` shuts off what lies behind it. At most 100 000 emitters, nodes, and parts of a kind.
 *
 * Gives the pressure and the outflow of every node; flow and pressure drop of every part, the velocity in pipes, the head of pumps, what regulators and
 * non-return valves do; each lateral outlet by outlet; each zone with its uniformity, emitters of different nominal flow compared by the share of it that
 * they give, but zones that are shut off left out; the emitter that gets least; and how well heads and flows were met. Flow is positive from `from` to `to`.
 * Where water does not reach, the pressure is 0. In the first millimetre of head above their opening emitters are taken to give in proportion to it. Velocity head is left out.
 * @throws InputError for input outside these limits, for names that are unknown or given twice, for nodes that nothing feeds and rings of regulators
 * (both named), for what is drawn where no water column holds, and for water faster than 30 m/s; ConvergenceError with both residuals where no
 * solution is found.
 * @example
 * const garden = pipeNetwork({
 *   nodes: [{ name: 'barrel', keptPressure: '0 kPa' }, { name: 'pump outlet' }, { name: 'bench' }],
 *   pumps: [{ name: 'pump', from: 'barrel', to: 'pump outlet', pumpCurve: [{ flow: '12 L/min', head: '18 m' }] }],
 *   pipes: [{ name: 'riser', from: 'pump outlet', to: 'bench', length: '8 m', diameter: '20.4 mm' }],
 *   dripLaterals: [{ name: 'row', from: 'bench', zone: 'strawberries', outlets: 28, spacing: '25 cm', diameter: '13.6 mm', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5 }],
 * });
 * garden.pumps[0].flow.in('L/min') // => 1.428
 */
export const pipeNetwork = /* @__PURE__ */ calculation({
  id: 'pipeNetwork',
  title: 'Pressures and flows in a network of pipes, pumps and drip laterals',
  inputs: networkFields,
  outputs: () => ({
    nodes: output.list(output.group({ name: output.text(), pressure: output.quantity(pressure, 'kPa'), hydraulicHead: output.quantity(head, 'm'), outflow: output.quantity(flow, 'L/min') })),
    pipes: output.list(output.group({ ...flowAndDrop(), velocity: output.quantity(velocity, 'm/s') })),
    dripLaterals: output.list(output.group({
      name: output.text(), inletPressure: output.quantity(pressure, 'kPa'), endPressure: output.quantity(pressure, 'kPa'), inletFlow: output.quantity(flow, 'L/h'), ...evenness(),
      pressures: output.column(pressure, 'kPa'), flows: output.column(flow, 'L/h'),
    })),
    valves: output.list(output.group(flowAndDrop())),
    filters: output.list(output.group(flowAndDrop())),
    pumps: output.list(output.group({ name: output.text(), flow: output.quantity(flow, 'L/min'), head: output.quantity(head, 'm') })),
    regulators: output.list(output.group({ ...flowAndDrop(), outletPressure: output.quantity(pressure, 'kPa'), regulatorState: output.choice(['regulating', 'open', 'closed']) })),
    nonReturnValves: output.list(output.group({ ...flowAndDrop(), isOpen: output.flag() })),
    zones: output.list(output.group({ name: output.text(), zoneFlow: output.quantity(flow, 'L/min'), ...evenness() })),
    worstEmitter: output.optional(output.group({ name: output.text(), outlet: output.optional(output.number()), emittedFlow: output.quantity(flow, 'L/h'), nominalShare: output.quantity(share, '%'), pressure: output.quantity(pressure, 'kPa') })),
    convergence: output.group({ headResidual: output.quantity(head, 'm'), flowResidual: output.quantity(flow, 'L/h'), steps: output.number() }),
  }),
  equation: 'Σ Q = q + demand at each node; h_from − h_to = h(Q) along each link; q = k hˣ',
  sources: ['todini-pilati-1988', 'rossman-2020', 'colebrook-1939', 'clamond-2009', 'fritsch-butland-1984', 'merriam-keller-1978', 'iapws-sr6-08'],
  cautions: [backflow],
  example: {
    nodes: [
      { name: 'barrel', height: '0.4 m', keptPressure: '0 kPa' }, { name: 'pump outlet', height: '0.2 m' }, { name: 'after the filter', height: '0.2 m' }, { name: 'head of the main', height: '1 m' },
      { name: 'troughs', height: '1 m' }, { name: 'bags', height: '0.3 m' }, { name: 'basil', height: '0.9 m', zone: 'basil', emitters: { emitterCount: 24, emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5 } },
    ],
    pumps: [{ name: 'pump', from: 'barrel', to: 'pump outlet', pumpCurve: [{ flow: '0 L/min', head: '28 m' }, { flow: '12 L/min', head: '22 m' }, { flow: '24 L/min', head: '9 m' }], curveShape: 'power law' }],
    filters: [{ name: 'screen', from: 'pump outlet', to: 'after the filter', referenceFlow: '2 m³/h', referenceLoss: '15 kPa', blockedShare: '30 %' }],
    regulators: [{ name: 'regulator', from: 'after the filter', to: 'head of the main', setPressure: '1.2 bar' }],
    pipes: [
      { name: 'main to the troughs', from: 'head of the main', to: 'troughs', length: '4 m', diameter: '20.4 mm', lossCoefficient: 3 },
      { name: 'main to the bags', from: 'troughs', to: 'bags', length: '3 m', diameter: '16 mm', lossCoefficient: 2 },
      { name: 'main to the basil', from: 'bags', to: 'basil', length: '3 m', diameter: '16 mm', lossCoefficient: 2 },
      { name: 'back to the head', from: 'basil', to: 'head of the main', length: '6 m', diameter: '16 mm' },
    ],
    dripLaterals: [
      { name: 'trough 1', from: 'troughs', zone: 'strawberries', outlets: 28, spacing: '25 cm', diameter: '13.6 mm', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5 },
      { name: 'trough 2', from: 'troughs', zone: 'strawberries', outlets: 28, spacing: '25 cm', diameter: '13.6 mm', emitterFlow: '2 L/h', emitterPressure: '1 bar', emitterExponent: 0.5 },
      { name: 'row of bags', from: 'bags', zone: 'aubergines', outlets: 12, spacing: '50 cm', diameter: '13.6 mm', emitterFlow: '4 L/h', emitterPressure: '1 bar', emitterExponent: 0.05, compensation: { openingPressure: '0.5 bar' } },
    ],
  },
  check: checkNetwork,
  solve: (seen, solving) => {
    const pascals = pressureOfHead(seen.waterTemperature);
    const plan = networkPlan(seen, pascals);
    refuseUnsolvable(seen, plan, solving);
    const found = solved(plan, solving);
    const pressures = pressuresOf(seen, plan, found, pascals, solving);
    noteFastest(plan, found.flows, seen, solving);
    const fed = plan.places.filter(({ node }) => !plan.dry.has(node));
    noteEmitters(fed, pressures, found.outflows, pascals, solving);
    const parts = partsOf(seen, plan, found, pressures, pascals);
    noteMachines(seen, parts.pumps, parts.regulators, solving);
    const zones = zonesOf(fed, found.outflows);
    zones.forEach(({ name, lowQuarterUniformity }, i) => noteZone(name, lowQuarterUniformity, i, solving));
    if (seen.pumps?.length) for (const { severity, code, field, text } of [mainsElectricity, pumpSuction]) solving.note(severity, code, field, text);
    const { headResidual, flowResidual, steps } = found;
    return {
      nodes: seen.nodes.map(({ name, height }, node) => ({ name, pressure: pressures[node]!, hydraulicHead: height + pressures[node]! / pascals, outflow: found.outflows[node]! })),
      ...parts,
      zones,
      worstEmitter: worstOf(fed, found.outflows, pressures),
      convergence: { headResidual, flowResidual, steps },
    };
  },
});

/** Refuses what has no solution, by name. */
function refuseUnsolvable({ nodes, regulators }: SeenNetwork, { network, dry }: NetworkPlan, { refuse }: Solving): void {
  const unfed = (dry.size === 0 ? [] : unfedNodes(network, () => true)).flatMap((node) => nodes[node]?.name ?? []);
  if (unfed.length > 0) refuse('nodes', 'every node joined by some way to one with a kept pressure', `${unfed.slice(0, 5).map(quoted).join(', ')}${unfed.length > 5 ? ' and others' : ''} without`, 'is a pipe missing, or a name another?');
  const drawn = nodes.find(({ demand }, node) => demand > 0 && dry.has(node));
  if (drawn) refuse('valves', 'open valves on a way to all that is drawn', `none open on any way to ${quoted(drawn.name)}`, 'open one, or leave out what is drawn there');
  const ring = regulatorRing(network);
  if (ring.length > 0) {
    const first = network.links.findIndex(({ kind }) => kind === 'regulator');
    refuse('regulators', 'no regulators that feed one another in a ring', ring.map((link) => quoted(regulators![link - first]!.name)).join(', '));
  }
}

/** A search that came to a pressure head below this, m, was after more water than can come. */
const hopelessHead = -20;

/** Heads and flows, or a refusal where the search for them ran off below what a water column holds. */
function solved({ network }: NetworkPlan, { refuse }: Solving): NetworkFlow {
  try {
    return solveNetwork(network);
  } catch (error) {
    if (!(error instanceof NetworkConvergenceError)) throw error;
    const lowest = error.heads.reduce((least, head, node) => Math.min(least, head - network.nodes[node]!.elevation), 0);
    if (!(lowest < hopelessHead)) throw error;
    return refuse('nodes', 'a network that can give what is drawn', `one in which a search for the pressures came to ${writeNumber(lowest)} m of water, where no water column holds`, 'take wider pipes, more pressure, less demand, or lay it lower');
  }
}

/** Pressures of all nodes, Pa; 0 where no water comes. */
function pressuresOf({ nodes }: SeenNetwork, { network, places }: NetworkPlan, { heads, flows }: NetworkFlow, pascals: number, solving: Solving): Float64Array {
  const names = nodes.map(({ name }) => name);
  for (const { node, name } of places) names[node] ??= name;
  const flowing = new Uint8Array(network.nodes.length);
  network.links.forEach(({ from, to }, link) => {
    if (Math.abs(flows[link]!) > leastFlow) flowing[from] = flowing[to] = 1;
  });
  const pressures = heads.map((one, node) => (one - network.nodes[node]!.elevation) * pascals);
  const lacking: { name: string; lack: number }[] = [];
  network.nodes.forEach(({ head: kept }, node) => {
    if (flowing[node] || kept !== undefined || pressures[node]! >= 0) return;
    if (pressures[node]! < -1) lacking.push({ name: names[node]!, lack: -pressures[node]! });
    pressures[node] = 0;
  });
  noteDry(lacking, solving);
  noteSuction(pressures, names, new Set(network.links.flatMap(({ kind, from }) => (kind === 'pump' ? from : []))), pascals, solving);
  return pressures;
}
