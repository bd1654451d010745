/** What `pipeNetwork` asks for: where pipes meet, and everything between. */
import type { SeenFields } from '../calculation/field-types.js';
import * as field from '../calculation/field.js';
import { checkCompensation, checkConnection, emitterFields, lateralFields, mostOutlets, reachesOf, type SeenLateral } from '../laterals/lateral-fields.js';
import { checkRoughness, diameter, frictionFields } from '../laterals/pipe.js';
import { flow, length, pressure } from '../units/dimensions.js';
import { quoted } from '../units/quoted.js';
import { filterLoss } from './filter-loss.js';
import { fittingFields } from './fittings.js';
import { checkPumpCurve, pumpCurveFields } from './pump-curve-fields.js';
import { valveLoss } from './valve-loss.js';

/** Most nodes, most links of a kind, and most emitters in all. */
const most = mostOutlets;

const name = () => field.text(60);
const ends = () => ({ name: name(), from: name(), to: name() });
const some = <F extends Parameters<typeof field.list>[0]>(item: F) => field.optional(field.list(item, { limits: [0, most] }));

/** The pipe of a lateral and its emitters, without the water in it and friction, which are the same for all. */
function ofLateral() {
  const { outlets, diameter, spacing, firstSpacing, slope, emitterFlow, emitterPressure, emitterExponent, compensation, emitterTemperature, connection, furtherReaches } = lateralFields();
  return { outlets, diameter, spacing, firstSpacing, slope, emitterFlow, emitterPressure, emitterExponent, compensation, emitterTemperature, connection, furtherReaches };
}

export function networkFields() {
  const { flowCoefficient } = valveLoss.inputs;
  const { referenceFlow, referenceLoss, lossExponent, blockedShare } = filterLoss.inputs;
  return {
    nodes: field.list(field.group({
      name: name(),
      height: field.withDefault(field.quantity(length, { limits: ['-200 m', '200 m'] }), '0 m'),
      keptPressure: field.optional(field.quantity(pressure, { limits: ['-50 kPa', '1 MPa'] })),
      demand: field.withDefault(field.quantity(flow, { limits: ['0 L/h', '1000 m³/h'] }), '0 L/h'),
      emitters: field.optional(field.group({ emitterCount: field.withDefault(field.count({ limits: [1, most] }), 1), ...emitterFields() })),
      zone: field.optional(name()),
    }), { limits: [1, most] }),
    pipes: some(field.group({
      ...ends(),
      length: field.quantity(length, { limits: ['0 m', '10 km'] }),
      diameter: diameter(),
      ...fittingFields(),
    })),
    dripLaterals: some(field.group({ name: name(), from: name(), zone: field.optional(name()), ...ofLateral() })),
    valves: some(field.group({ ...ends(), flowCoefficient, isOpen: field.withDefault(field.flag(), true) })),
    filters: some(field.group({ ...ends(), referenceFlow, referenceLoss, lossExponent, blockedShare })),
    pumps: some(field.group({ ...ends(), ...pumpCurveFields() }, checkPumpCurve)),
    regulators: some(field.group({ ...ends(), setPressure: field.quantity(pressure, { limits: ['1 kPa', '1 MPa'] }), flowCoefficient: field.optional(flowCoefficient) })),
    nonReturnValves: some(field.group({ ...ends(), flowCoefficient })),
    ...frictionFields(),
  };
}

export type SeenNetwork = SeenFields<ReturnType<typeof networkFields>>;

export type SeenDripLateral = NonNullable<SeenNetwork['dripLaterals']>[number];

/** A lateral with the water and friction of its network, as calculations of laterals see it. */
export function wholeLateral(lateral: SeenDripLateral, { waterTemperature, friction, frictionFactor, roughness, hazenWilliamsCoefficient }: SeenNetwork): SeenLateral {
  return { ...lateral, waterTemperature, friction, frictionFactor, roughness, hazenWilliamsCoefficient };
}

/** The kinds of links, in the order that they are counted in. */
const linkKinds = ['pipes', 'valves', 'filters', 'pumps', 'regulators', 'nonReturnValves'] as const;

export type LinkKind = (typeof linkKinds)[number];

/** Finds names that are given twice or stand for nothing, and what no friction law or pipe can be. */
export const checkNetwork: field.GroupCheck<SeenNetwork> = (seen, problem) => {
  const { nodes, dripLaterals = [], roughness } = seen;
  const known = new Set<string>();
  const once = (given: Set<string>, one: string, path: readonly PropertyKey[]): void => {
    if (given.has(one)) problem([...path, 'name'], 'a name of its own', `${quoted(one)} once more`);
    given.add(one);
  };
  nodes.forEach(({ name, keptPressure, demand, emitters }, i) => {
    once(known, name, ['nodes', i]);
    if (emitters) checkCompensation(emitters, ['nodes', i, 'emitters'], problem);
    if (keptPressure !== undefined && (demand > 0 || emitters)) problem(['nodes', i, 'keptPressure'], 'no emitters and no demand where the pressure is kept', 'some', 'give them a node of their own and a pipe');
  });
  const meets = (one: string, path: readonly PropertyKey[]): void => {
    if (!known.has(one)) problem(path, 'the name of a node', quoted(one), nearest(one, known));
  };
  const named = new Set<string>();
  for (const kind of linkKinds) {
    seen[kind]?.forEach(({ name, from, to }, i) => {
      once(named, name, [kind, i]);
      meets(from, [kind, i, 'from']);
      meets(to, [kind, i, 'to']);
      if (from === to) problem([kind, i, 'to'], 'another node than it starts from', quoted(to));
    });
  }
  seen.pipes?.forEach(({ diameter }, i) => checkRoughness({ roughness, diameter }, (path, ...rest) => problem(['pipes', i, ...path], ...rest)));
  let emitters = nodes.reduce((sum, node) => sum + (node.emitters?.emitterCount ?? 0), 0);
  dripLaterals.forEach((lateral, i) => {
    once(named, lateral.name, ['dripLaterals', i]);
    meets(lateral.from, ['dripLaterals', i, 'from']);
    checkCompensation(lateral, ['dripLaterals', i], problem);
    lateral.furtherReaches?.forEach(({ emitter }, k) => emitter && checkCompensation(emitter, ['dripLaterals', i, 'furtherReaches', k, 'emitter'], problem));
    reachesOf(lateral).forEach((reach, k) => {
      emitters += reach.outlets;
      const path = ['dripLaterals', i, ...(k === 0 ? [] : ['furtherReaches', k - 1])];
      checkConnection(reach, path, problem);
      checkRoughness({ roughness, diameter: reach.diameter }, (_, ...rest) => problem([...path, 'diameter'], ...rest));
    });
  });
  if (!nodes.some(({ keptPressure }) => keptPressure !== undefined)) problem(['nodes'], 'at least one node with a kept pressure: the water in a barrel, which has 0 kPa, or a main', 'none');
  if (emitters > most) problem(['dripLaterals'], `at most ${most} emitters in all`, String(emitters));
};

/** Whether one of two names is the other with a letter more. */
function isLetterMore(longer: string, shorter: string): boolean {
  if (longer.length !== shorter.length + 1) return false;
  let same = 0;
  while (same < shorter.length && longer[same] === shorter[same]) same++;
  return longer.slice(same + 1) === shorter.slice(same);
}

/** The same name written otherwise, or with a letter more or less, where there is one. */
function nearest(name: string, known: ReadonlySet<string>): string | undefined {
  const plain = (text: string): string => text.toLowerCase().replace(/[\s_-]/g, '');
  const wanted = plain(name);
  const all = [...known].map((one) => ({ one, written: plain(one) }));
  const found = all.find(({ written }) => written === wanted) ?? all.find(({ written }) => isLetterMore(written, wanted) || isLetterMore(wanted, written));
  return found && `did you mean ${quoted(found.one)}?`;
}
