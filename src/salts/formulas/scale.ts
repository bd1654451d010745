import { ExactDecimal, writtenDecimal } from '../exact-decimal.js';

/** A scale: what it shows in steps of, and what it carries, kg. */
export interface WeighingScale {
  readonly division: number;
  /** Left out: enough for anything. */
  readonly maximumLoad?: number | undefined;
}

/**
 * A mass as a scale of that division shows it, kg: the nearest multiple, a half upwards, in decimals: 0.1 · 3 reads 0.3.
 *
 * @example roundToDivision(0.15605, 0.0001); // => 0.1561
 */
export function roundToDivision(mass: number, division: number): number {
  const steps = writtenDecimal(mass).div(writtenDecimal(division)).toDecimalPlaces(0, ExactDecimal.ROUND_HALF_UP);
  return steps.times(writtenDecimal(division)).toNumber();
}

/** The finest scale that carries a mass, kg; the one that carries most, for several portions, where none does. */
export function scaleForMass<Scale extends WeighingScale>(mass: number, scales: readonly Scale[]): Scale | undefined {
  const carries = ({ maximumLoad = Infinity }: WeighingScale) => maximumLoad;
  const able = scales.filter((scale) => carries(scale) >= mass).sort((a, b) => a.division - b.division);
  return able[0] ?? [...scales].sort((a, b) => carries(b) - carries(a))[0];
}

/** A mass as read on the scale for it, kg. Without any scale the mass stays as it is. */
export function readOnScales(mass: number, scales: readonly WeighingScale[]): number {
  const scale = scaleForMass(mass, scales);
  return scale === undefined ? mass : roundToDivision(mass, scale.division);
}

/** A mass as read on the scale for it, kg: the step below where the nearest would be more than there is. */
export function readWithin(mostMass: number, mass: number, scales: readonly WeighingScale[]): number {
  const read = readOnScales(mass, scales);
  const scale = scaleForMass(mass, scales);
  return scale === undefined || read <= mostMass ? read : roundToDivision(Math.max(0, mostMass - scale.division / 2), scale.division);
}
