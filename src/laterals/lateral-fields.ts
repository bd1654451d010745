/** What the calculations of laterals ask for in the same way: the pipe reach by reach, its emitters and their connections. */
import type { AddProblem } from '../calculation/problem.js';
import { expectExactlyOne } from '../calculation/exactly-one.js';
import type { SeenFields } from '../calculation/field-types.js';
import * as field from '../calculation/field.js';
import { area, flow, length, pressure, slope, temperature } from '../units/dimensions.js';
import { writeNumber } from '../units/write.js';
import { checkRoughness, diameter, frictionFields } from './pipe.js';

/** Most emitters of one lateral. */
export const mostOutlets = 100_000;

const outlets = () => field.count({ limits: [1, mostOutlets] });
const spacing = () => field.quantity(length, { limits: ['1 cm', '20 m'] });
const firstSpacing = () => field.optional(field.quantity(length, { limits: ['0 m', '100 m'] }));
const slopeField = () => field.quantity(slope, { limits: ['-50 %', '50 %'] });

/** Highest exponent of an emitter that compensates. Common practice, no source. */
export const mostOfCompensating = 0.1;

/** Emitters that regulate their flow between two pressures, and perhaps hold the water back below a third. */
const compensation = () => field.group({
  openingPressure: field.quantity(pressure, { limits: ['5 kPa', '300 kPa'] }),
  regulatedUpTo: field.withDefault(field.quantity(pressure, { limits: ['50 kPa', '1 MPa'] }), '400 kPa'),
  closingPressure: field.withDefault(field.quantity(pressure, { limits: ['0 kPa', '150 kPa'] }), '0 kPa'),
}, ({ openingPressure, regulatedUpTo, closingPressure }, problem) => {
  if (regulatedUpTo < 1.1 * openingPressure) problem(['regulatedUpTo'], 'a pressure above the opening pressure by a tenth at least', 'a lower one');
  if (closingPressure > 0.9 * openingPressure) problem(['closingPressure'], 'a pressure below the opening pressure by a tenth at least', 'a higher one');
});

/** An emitter by its flow at one pressure. */
export const emitterFields = () => ({
  emitterFlow: field.quantity(flow, { limits: ['0.05 L/h', '500 L/h'] }),
  emitterPressure: field.quantity(pressure, { limits: ['5 kPa', '600 kPa'] }),
  emitterExponent: field.number({ limits: [0, 1] }),
  compensation: field.optional(compensation()),
});

/** Ways to say what a connection loses; one of them. */
const connectionWays = ['lossCoefficient', 'equivalentLength', 'barb', 'barbArea', 'passageDiameter'] as const;

const connection = () => field.optional(field.group({
  lossCoefficient: field.optional(field.number({ limits: [0, 100] })),
  equivalentLength: field.optional(field.quantity(length, { limits: ['0 m', '10 m'] })),
  barb: field.optional(field.choice(['large', 'standard', 'small'])),
  barbArea: field.optional(field.quantity(area, { limits: ['1 mm²', '1000 mm²'] })),
  barbFormula: field.withDefault(field.choice(['Bagarello', 'UNESP']), 'UNESP'),
  passageDiameter: field.optional(field.quantity(length, { limits: ['1 mm', '1 m'] })),
}, (seen, problem) => expectExactlyOne(seen, connectionWays, problem)));

/** One reach of pipe with equal emitters, and its water and friction. */
export const reachFields = () => ({
  spacing: spacing(),
  firstSpacing: firstSpacing(),
  slope: field.withDefault(slopeField(), '0 %'),
  ...emitterFields(),
  emitterTemperature: field.optional(field.quantity(temperature, { limits: ['0 °C', '60 °C'] })),
  ...frictionFields(),
  connection: connection(),
});

/** A whole lateral: a reach from the inlet on, and what follows it. */
export const lateralFields = () => ({
  outlets: outlets(),
  diameter: diameter(),
  ...reachFields(),
  furtherReaches: field.optional(field.list(field.group({
    outlets: outlets(),
    spacing: field.optional(spacing()),
    firstSpacing: firstSpacing(),
    diameter: field.optional(diameter()),
    slope: field.optional(slopeField()),
    emitter: field.optional(field.group(emitterFields())),
    connection: connection(),
  }), { limits: [0, 100] })),
});

/** What calculations see of a lateral. */
export type SeenLateral = SeenFields<ReturnType<typeof lateralFields>>;

/** A reach with nothing left open. */
export type SeenReach = Pick<SeenLateral, 'outlets' | 'spacing' | 'diameter' | 'slope' | 'emitterFlow' | 'emitterPressure' | 'emitterExponent' | 'compensation' | 'connection' | 'firstSpacing'>;

/** What is seen of an emitter. */
export type SeenEmitter = Pick<SeenReach, 'emitterFlow' | 'emitterPressure' | 'emitterExponent' | 'compensation'>;

/** The reaches of a lateral: what one leaves out is as in the one before. */
export function reachesOf(seen: SeenReach & Pick<SeenLateral, 'furtherReaches'>): readonly SeenReach[] {
  const reaches: SeenReach[] = [seen];
  for (const { outlets, firstSpacing, emitter, ...changes } of seen.furtherReaches ?? []) {
    const before = reaches.at(-1)!;
    const { emitterFlow, emitterPressure, emitterExponent, compensation } = emitter ?? before;
    reaches.push({
      outlets, firstSpacing, emitterFlow, emitterPressure, emitterExponent, compensation,
      spacing: changes.spacing ?? before.spacing,
      diameter: changes.diameter ?? before.diameter,
      slope: changes.slope ?? before.slope,
      connection: changes.connection ?? before.connection,
    });
  }
  return reaches;
}

/** Finds a connection that does not fit into its pipe. */
export function checkConnection({ diameter, connection }: Pick<SeenReach, 'diameter' | 'connection'>, path: readonly PropertyKey[], problem: AddProblem): void {
  const { barbArea = 0, passageDiameter = diameter } = connection ?? {};
  const blocked = barbArea / ((Math.PI / 4) * diameter ** 2);
  if (blocked > 0.8) problem([...path, 'connection', 'barbArea'], 'at most four fifths of the cross-section of the pipe', `${writeNumber(blocked)} of it`, 'are the units right?');
  if (passageDiameter > diameter || passageDiameter < 0.7 * diameter) problem([...path, 'connection', 'passageDiameter'], 'from seven tenths of the diameter of the pipe to all of it', `${writeNumber(passageDiameter / diameter)} of it`);
}

/** Finds an emitter whose flow is stated at a pressure that it does not regulate at. */
export function checkCompensation({ emitterPressure, compensation }: Pick<SeenReach, 'emitterPressure' | 'compensation'>, path: readonly PropertyKey[], problem: AddProblem): void {
  if (compensation === undefined) return;
  const { openingPressure, regulatedUpTo } = compensation;
  if (emitterPressure < openingPressure || emitterPressure > regulatedUpTo) {
    problem([...path, 'emitterPressure'], `a pressure that it regulates at, ${writeNumber(openingPressure / 1000)} to ${writeNumber(regulatedUpTo / 1000)} kPa`, `${writeNumber(emitterPressure / 1000)} kPa`, 'give the flow inside the range');
  }
}

/** Finds what does not go together in a lateral. */
export function checkLateral(seen: SeenLateral, problem: AddProblem): void {
  checkCompensation(seen, [], problem);
  seen.furtherReaches?.forEach(({ emitter }, i) => emitter && checkCompensation(emitter, ['furtherReaches', i, 'emitter'], problem));
  const reaches = reachesOf(seen);
  const further = (i: number): readonly PropertyKey[] => (i === 0 ? [] : ['furtherReaches', i - 1]);
  reaches.forEach((reach, i) => {
    checkConnection(reach, further(i), problem);
    checkRoughness({ roughness: seen.roughness, diameter: reach.diameter }, problem);
  });
  const all = reaches.reduce((sum, reach) => sum + reach.outlets, 0);
  if (all > mostOutlets) problem(['furtherReaches'], `at most ${mostOutlets} outlets in all`, String(all));
}
