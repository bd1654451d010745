import { calculation } from '../calculation/calculation.js';
import { backflow, mainsElectricity, pumpSuction } from '../calculation/caution.js';
import * as output from '../calculation/output.js';
import { pressureOfHead } from '../laterals/pipe.js';
import { flow, head, pressure, share, velocity } from '../units/dimensions.js';
import { checkNetwork, networkFields } from './network-fields.js';
import { networkPlan } from './network-layout.js';
import { noteEmitters, noteFastest, notePumps, noteTurned, noteZone } from './network-notes.js';
import { pressuresOf, refuseUnsolvable, solved, unreachedBy } from './network-pressures.js';
import { byZone, leastFlow, partsOf, worstOf, zoneOf } from './network-results.js';
import { noteLargestLoss, noteNominal, noteRegulators, zoneSupply } from './network-shortage.js';

const flowAndDrop = () => ({ name: output.text(), flow: output.quantity(flow, 'L/min'), pressureDrop: output.quantity(pressure, 'kPa') });
const evenness = () => ({
  meanFlow: output.quantity(flow, 'L/h'),
  lowestFlow: output.quantity(flow, 'L/h'),
  highestFlow: output.quantity(flow, 'L/h'),
  flowVariation: output.quantity(share, '%'),
  lowestShare: output.quantity(share, '%'),
  lowQuarterUniformity: output.quantity(share, '%'),
});

/**
 * Pressures and flows everywhere in a network: pumps, filters, valves, regulators, pipes in branches and rings, zones of drip laterals.
 *
 * Takes, each by a name of its own and all but the nodes only where there are any:
 * - nodes, where parts meet: the height above a level that is the same for all (-200 to 200 m; 0 by default), and perhaps the pressure that is kept there
 *   (-50 kPa to 1 MPa; 0 for the water in an open barrel), the flow that is drawn whatever the pressure (0 to 1000 m³/h), or emitters as `lateral`
 *   takes them. At least one pressure has to be kept;
 * - pipes between two nodes: length (0 to 10 km), inside diameter (1 mm to 1 m), and their fittings as `fittingLoss` takes them: by name
 *   and number, as a loss coefficient, or both;
 * - drip laterals from a node, each as `lateral` takes it, with a zone;
 * - valves and non-return valves by their Kv or Cv; filters as `filterLoss` takes them; pumps by their curve as `pumpDuty` takes it; regulators by the
 *   pressure that they are set to, with a Kv where they lose some of it to the flow;
 * - the water temperature and the friction law, the same for all, as in `lateral`.
 * A valve with `isOpen: false` shuts off what lies behind it. At most 100 000 emitters, nodes, and parts of a kind.
 *
 * Gives the pressure and the outflow of every node; flow and pressure drop (height included) of every part, the velocity in pipes, the head
 * of pumps, what regulators and non-return valves do; each lateral outlet by outlet; each zone with its uniformity, emitters of different nominal flow compared by the share of it that
 * they give, but zones that are shut off left out; the emitter that gets least; and how well heads and flows were met. Flow is positive from `from` to `to`.
 * Where water does not reach, the pressure is 0; so it is where pipes run higher than any water column holds and nothing drawn depends on them. In the
 * first millimetre of head above their opening emitters are taken to give in proportion to it. Velocity head is left out.
 * @throws InputError for input outside these limits, for names that are unknown or given twice, for nodes that nothing feeds, rings of regulators
 * and pipes that lose nothing in a ring or between kept pressures (all named), for what is drawn where no water column
 * holds, and for water faster than 30 m/s; ConvergenceError with both residuals where no solution is found.
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
    const { found, broken } = solved(plan, pascals, solving);
    const unreached = unreachedBy(plan, found);
    const { pressures, lacks } = pressuresOf(plan, found, broken, unreached, pascals, solving);
    noteTurned(plan, unreached, solving);
    noteFastest(plan, found.flows, seen, solving);
    const fed = plan.runs.filter(({ firstNode }) => !plan.dry.has(firstNode));
    noteEmitters(fed, pressures, found.outflows, pascals, solving);
    const parts = partsOf(seen, plan, found, pressures, pascals);
    notePumps(seen, parts.pumps, solving);
    noteRegulators(seen, plan, found, lacks, unreached, parts.regulators, pascals, solving);
    const together = [...byZone(fed)];
    const zones = together.map(([name, own]) => zoneOf(name, own, found.outflows));
    const supplies = together.map(([name, own]) => zoneSupply(name, own, pressures, found.outflows, pascals));
    supplies.forEach((supply, i) => {
      noteNominal(supply, i, solving);
      noteZone(supply, zones[i]!.lowQuarterUniformity, i, solving);
    });
    noteLargestLoss(supplies, plan, found, pascals, solving);
    if (seen.pumps?.length) for (const { severity, code, field, text } of [mainsElectricity, pumpSuction]) solving.note(severity, code, field, text);
    const { headResidual, flowResidual, steps } = found;
    return {
      nodes: seen.nodes.map(({ name, height }, node) => ({ name, pressure: pressures[node]!, hydraulicHead: height + pressures[node]! / pascals, outflow: Math.abs(found.outflows[node]!) < leastFlow ? 0 : found.outflows[node]! })),
      ...parts,
      zones,
      worstEmitter: worstOf(fed, found.outflows, pressures),
      convergence: { headResidual, flowResidual, steps },
    };
  },
});
