import type { WrittenFields } from '../calculation/field-types.js';
import { designUniformityKellerKarmeli1974, lateral } from '../laterals/index.js';
import { pipeNetwork } from '../supply/index.js';
import { quantity } from '../units/by-name.js';
import type { Quantity, QuantityInput, ShareInput } from '../units/quantity.js';
import type { Assessor } from './attempt.js';
import { kilopascals, percent } from './measures.js';
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
}

/** The same of a zone by the way of its water, with pressures on that way, Pa. */
export interface WaterOnItsWay extends ZoneWater {
  /** Before the pipe that leads to the laterals, behind valve and regulator. */
  readonly branchPressure: number;
  /** That the tank must have for a regulator to have something to regulate. */
  readonly neededPressure: number | undefined;
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

/** A zone by the whole way of its water from the tank, at a pressure there, Pa; `run` tells whether what is to be said of it is kept. */
export function waterFromTank(place: ZonePlace, tankPressure: number, run: Assessor['run'], path: string): WaterOnItsWay | undefined {
  const { zone: { lateral: { manufacturingVariation } }, where, emittersPerPlant } = place;
  const network = run(pipeNetwork, `${where}.${path}`, zoneNetwork(place, kilopascals(tankPressure)));
  if (!network) return undefined;
  const { meanFlow, flowVariation, lowestShare, lowQuarterUniformity, zoneFlow } = network.zones[0]!;
  const [regulator] = network.regulators;
  return {
    inletPressure: network.dripLaterals[0]!.inletPressure,
    endPressure: network.dripLaterals.at(-1)!.endPressure,
    meanFlow, flowVariation, lowQuarterUniformity,
    uniformity: manufacturingVariation === undefined ? lowQuarterUniformity : percent(designUniformityKellerKarmeli1974(shareOf(manufacturingVariation), emittersPerPlant, lowestShare.si, 1)),
    zoneFlow: zoneFlow.si,
    branchPressure: network.nodes.find(({ name }) => name === beforeBranch(place))!.pressure.si,
    neededPressure: regulator && tankPressure - Math.max(0, regulator.pressureDrop.si),
  };
}

const shareOf = (written: ShareInput): number => (typeof written === 'number' ? written : quantity(written, 'share').si);

type DescribedNetwork = WrittenFields<typeof pipeNetwork.inputs>;

/** The node that the branch of a zone starts from. */
const beforeBranch = ({ zone: { branch } }: ZonePlace): string =>
  branch?.setPressure ? 'behind the regulator' : branch?.flowCoefficient ? 'behind the valve' : 'end of the main';

/** From the tank through filter and main to the valve of a zone and its laterals. Valve and regulator stand at the height of the tank. */
function zoneNetwork({ zone, supply: { main, filter }, waterTemperature }: ZonePlace, keptPressure: QuantityInput<'pressure'>): DescribedNetwork {
  const { name: zoneName, laterals, branch } = zone;
  const { friction, frictionFactor, roughness, hazenWilliamsCoefficient, inletPressure: _pressure, meanEmitterFlow: _flow, manufacturingVariation: _variation, flushingVelocity: _flushing, ...pipe } = zone.lateral;
  const nodes: DescribedNetwork['nodes'][number][] = [{ name: 'tank', keptPressure }];
  const on = (name: string, height?: QuantityInput<'length'>): { readonly from: string; readonly to: string } => {
    const from = nodes.at(-1)!.name;
    nodes.push({ name, height });
    return { from, to: name };
  };
  const { referenceFlow, referenceLoss, lossExponent, blockedShare } = filter ?? {};
  const { setPressure, flowCoefficient, lateralSpacing, height, diameter, length, lossCoefficient, fittings } = branch ?? {};
  const filters = filter && [{ name: 'filter', ...on('behind the filter'), referenceFlow: referenceFlow!, referenceLoss: referenceLoss!, lossExponent, blockedShare }];
  const pipes: NonNullable<DescribedNetwork['pipes']>[number][] = [{ name: 'main', ...on('end of the main'), length: main!.length, diameter: main!.diameter, fittings: main!.fittings, lossCoefficient: main!.lossCoefficient }];
  const valves = flowCoefficient && [{ name: 'valve', ...on('behind the valve'), flowCoefficient }];
  const regulators = setPressure && [{ name: 'regulator', ...on('behind the regulator'), setPressure }];
  if (branch) pipes.push({ name: 'branch', ...on('lateral 1', height), length: length!, diameter: diameter!, fittings, lossCoefficient });
  const heads = [nodes.at(-1)!.name];
  for (let i = 2; branch && lateralSpacing && i <= laterals; i++) {
    const ends = on(`lateral ${i}`, height);
    pipes.push({ name: `branch to lateral ${i}`, ...ends, length: lateralSpacing, diameter: diameter! });
    heads.push(ends.to);
  }
  const dripLaterals = Array.from({ length: laterals }, (_, i) => ({ name: `lateral ${i + 1}`, from: heads[i] ?? heads[0]!, zone: zoneName, ...pipe }));
  return { nodes, filters, pipes, valves, regulators, dripLaterals, waterTemperature, friction, frictionFactor, roughness, hazenWilliamsCoefficient };
}

/** The most, m³/s, that can come to the laterals of a zone while they are empty: the way of its water with an open end. */
export function openEndFlow(place: ZonePlace, tankPressure: number, run: Assessor['run']): number | undefined {
  const { nodes, dripLaterals: _none, ...way } = zoneNetwork({ ...place, zone: { ...place.zone, laterals: 1 } }, kilopascals(tankPressure));
  const open = nodes.map((node, i) => (i === nodes.length - 1 ? { ...node, keptPressure: kilopascals(0) } : node));
  return run(pipeNetwork, `${place.where}.shot`, { ...way, nodes: open })?.pipes[0]!.flow.si;
}
