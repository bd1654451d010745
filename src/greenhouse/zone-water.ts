import type { WrittenFields } from '../calculation/field-types.js';
import { lateral } from '../laterals/index.js';
import { pipeNetwork } from '../supply/index.js';
import { pressure, share } from '../units/dimensions.js';
import { quantityFromSI, unitOf, type Quantity, type QuantityInput } from '../units/quantity.js';
import type { Assessor } from './attempt.js';
import type { DescribedSupply, DescribedZone } from './water-fields.js';

/** What the laterals of a zone get and give. */
export interface ZoneWater {
  /** Of the first lateral. */
  readonly inletPressure: Quantity<'pressure'>;
  /** Of the last emitter. */
  readonly endPressure: Quantity<'pressure'>;
  readonly meanFlow: Quantity<'flow'>;
  readonly flowVariation: Quantity<'share'>;
  readonly lowQuarterUniformity: Quantity<'share'>;
  /** Design emission uniformity where the variation of the emitters is known, the low-quarter uniformity where it is not. */
  readonly uniformity: Quantity<'share'>;
  /** m³/s */
  readonly zoneFlow: number;
  /** Pressure that the tank must have for its regulator to have something to regulate, Pa. */
  readonly neededPressure?: number;
}

/** A zone with what it stands on. */
export interface ZonePlace {
  readonly zone: DescribedZone;
  readonly where: string;
  readonly supply: Pick<DescribedSupply, 'main' | 'filter'>;
  readonly waterTemperature: QuantityInput<'temperature'>;
  readonly emittersPerPlant: number;
}

/** A zone whose laterals are said to get a pressure or a mean flow. */
export function waterAtInlet({ zone, where, waterTemperature, emittersPerPlant }: ZonePlace, { run }: Assessor): ZoneWater | undefined {
  const pipe = run(lateral, `${where}.lateral`, { ...zone.lateral, waterTemperature, emittersPerPlant });
  return pipe && { ...pipe, uniformity: pipe.emissionUniformity ?? pipe.lowQuarterUniformity, zoneFlow: zone.laterals * pipe.inletFlow.si };
}

/** A zone by the whole way of its water from the tank, at a pressure there, Pa; `way` tells whether what is to be said of it is kept. */
export function waterFromTank(place: ZonePlace, tankPressure: number, way: Assessor['run'], path: string): ZoneWater | undefined {
  const { zone, where, waterTemperature, emittersPerPlant } = place;
  const network = way(pipeNetwork, `${where}.${path}`, zoneNetwork(place, quantityFromSI(pressure, tankPressure, unitOf(pressure, 'kPa'))));
  if (!network) return undefined;
  const { meanFlow, lowestFlow, highestFlow, lowQuarterUniformity, zoneFlow } = network.zones[0]!;
  const [regulator] = network.regulators;
  const [first, last] = [network.dripLaterals[0]!, network.dripLaterals.at(-1)!];
  const poorest = network.dripLaterals.reduce((least, one) => (one.inletPressure.si < least.inletPressure.si ? one : least));
  const pipe = way(lateral, `${where}.lateral`, { ...zone.lateral, inletPressure: poorest.inletPressure, waterTemperature, emittersPerPlant });
  if (!pipe) return undefined;
  // The design uniformity of the poorest lateral is by its own mean flow; that of the zone is by the mean of them all.
  const { emissionUniformity } = pipe;
  const fraction = (si: number): Quantity<'share'> => quantityFromSI(share, si, unitOf(share, '%'));
  return {
    inletPressure: first.inletPressure, endPressure: last.endPressure, meanFlow,
    flowVariation: fraction(1 - lowestFlow.si / highestFlow.si),
    lowQuarterUniformity,
    uniformity: emissionUniformity ? fraction(emissionUniformity.si * (pipe.meanFlow.si / meanFlow.si)) : lowQuarterUniformity,
    zoneFlow: zoneFlow.si,
    ...(regulator && { neededPressure: tankPressure - Math.max(0, regulator.pressureDrop.si) }),
  };
}

type DescribedNetwork = WrittenFields<typeof pipeNetwork.inputs>;

/** From the tank through filter and main to the valve of a zone and its laterals. Valve and regulator stand at the height of the tank. */
function zoneNetwork({ zone, supply: { main, filter }, waterTemperature }: ZonePlace, keptPressure: QuantityInput<'pressure'>): DescribedNetwork {
  const { name: zoneName, laterals, branch } = zone;
  const { friction, frictionFactor, roughness, hazenWilliamsCoefficient, inletPressure: _pressure, meanEmitterFlow: _flow, manufacturingVariation: _variation, emitterTemperature: _temperature, flushingVelocity: _flushing, ...pipe } = zone.lateral;
  const nodes: DescribedNetwork['nodes'][number][] = [{ name: 'tank', keptPressure }];
  const on = (name: string, height?: QuantityInput<'length'>): { readonly from: string; readonly to: string } => {
    const from = nodes.at(-1)!.name;
    nodes.push({ name, height });
    return { from, to: name };
  };
  const { setPressure, flowCoefficient, lateralSpacing, height, diameter, length, lossCoefficient } = branch ?? {};
  const filters = filter && [{ name: 'filter', ...on('behind the filter'), referenceFlow: filter.referenceFlow, referenceLoss: filter.referenceLoss, lossExponent: filter.lossExponent, blockedShare: filter.blockedShare }];
  const pipes = [{ name: 'main', ...on('end of the main'), length: main!.length, diameter: main!.diameter, lossCoefficient: main!.lossCoefficient }];
  const valves = flowCoefficient && [{ name: 'valve', ...on('behind the valve'), flowCoefficient }];
  const regulators = setPressure && [{ name: 'regulator', ...on('behind the regulator'), setPressure }];
  if (branch) pipes.push({ name: 'branch', ...on('lateral 1', height), length: length!, diameter: diameter!, lossCoefficient });
  const heads = [nodes.at(-1)!.name];
  for (let i = 2; branch && lateralSpacing && i <= laterals; i++) {
    const ends = on(`lateral ${i}`, height);
    pipes.push({ name: `branch to lateral ${i}`, ...ends, length: lateralSpacing, diameter: diameter!, lossCoefficient: 0 });
    heads.push(ends.to);
  }
  const dripLaterals = Array.from({ length: laterals }, (_, i) => ({ name: `lateral ${i + 1}`, from: heads[i] ?? heads[0]!, zone: zoneName, ...pipe }));
  return { nodes, filters, pipes, valves, regulators, dripLaterals, waterTemperature, friction, frictionFactor, roughness, hazenWilliamsCoefficient };
}
