import { standardGravity } from '../../laterals/formulas/head-loss.js';
import { bracketedRoot, type Root } from '../../numerics/roots.js';

/** The cross-section of a gutter or drain, by the depth of the water in it: m and m². */
export interface ChannelSection {
  readonly area: (depth: number) => number;
  /** Length of wall that the water touches. */
  readonly wettedPerimeter: (depth: number) => number;
  readonly surfaceWidth: (depth: number) => number;
  /** Depth at which it carries most: brimful where it is open, 0.9382 of the diameter in a round pipe. */
  readonly fullestDepth: number;
}

/** Where a round pipe carries most: y/D = (1 − cos(θ/2))/2 at the angle with 3 θ − 5 θ cos θ + 2 sin θ = 0. */
const fullestShare = 0.93818121616;

/** Half the angle that the water's surface spans at the centre of a round pipe. */
const halfAngle = (depth: number, diameter: number): number => Math.acos(Math.min(1, Math.max(-1, 1 - (2 * depth) / diameter)));

/** A round pipe of an inside diameter, m. */
export function circularSection(diameter: number): ChannelSection {
  return {
    area: (depth) => {
      const half = halfAngle(depth, diameter);
      return (diameter * diameter * (half - Math.sin(half) * Math.cos(half))) / 4;
    },
    wettedPerimeter: (depth) => diameter * halfAngle(depth, diameter),
    surfaceWidth: (depth) => diameter * Math.sin(halfAngle(depth, diameter)),
    fullestDepth: fullestShare * diameter,
  };
}

/** An open gutter with a flat bottom: its width, how far its walls lean outwards for each metre of height (0: upright), and its depth, m. */
export function trapezoidalSection(bottomWidth: number, wallLean: number, depth: number): ChannelSection {
  return {
    area: (y) => (bottomWidth + wallLean * y) * y,
    wettedPerimeter: (y) => bottomWidth + 2 * y * Math.hypot(1, wallLean),
    surfaceWidth: (y) => bottomWidth + 2 * wallLean * y,
    fullestDepth: depth,
  };
}

/**
 * Flow in an open channel or a pipe that is partly full, running evenly: Q = A R^(2/3) S^(1/2)/n, R = A/P.
 *
 * Source: Manning (1891), as in Maurer, chapter 5.
 *
 * @param area A of the water, m²
 * @param wettedPerimeter P, m
 * @param fall S, m per m
 * @param manningCoefficient n: 0.011 to 0.015 for plastic
 * @returns m³/s
 */
export function flowManning1891(area: number, wettedPerimeter: number, fall: number, manningCoefficient: number): number {
  return (area * (area / wettedPerimeter) ** (2 / 3) * Math.sqrt(fall)) / manningCoefficient;
}

/** Flow of a section at a depth of water, after Manning, m³/s. */
export function flowAtDepth({ area, wettedPerimeter }: ChannelSection, depth: number, fall: number, manningCoefficient: number): number {
  return depth > 0 ? flowManning1891(area(depth), wettedPerimeter(depth), fall, manningCoefficient) : 0;
}

/**
 * Depth at which a flow runs evenly in a section (normal depth), m.
 *
 * A round pipe passes a flow near its most at two depths; this is the lower. Throws ConvergenceError for a flow that the section does not carry.
 */
export function normalDepth(section: ChannelSection, flow: number, fall: number, manningCoefficient: number): Root {
  return bracketedRoot((depth) => flowAtDepth(section, depth, fall, manningCoefficient) - flow, 0, section.fullestDepth);
}

/**
 * Fall at which a flow runs evenly at a velocity faster than it does now: the depth follows from A = Q/V, the fall from Manning's formula.
 *
 * @param velocity V, m/s; for one so slow that the section would have to be larger, ConvergenceError
 * @returns m per m
 */
export function fallForVelocity(section: ChannelSection, flow: number, velocity: number, manningCoefficient: number): number {
  const { value: depth } = bracketedRoot((y) => section.area(y) - flow / velocity, 0, section.fullestDepth);
  return (flow / flowAtDepth(section, depth, 1, manningCoefficient)) ** 2;
}

/** Froude number of a flow at a depth: V/√(g A/T); above 1 the water shoots, and piles up where it is slowed. */
export function froudeNumber({ area, surfaceWidth }: ChannelSection, flow: number, depth: number, gravity = standardGravity): number {
  return flow / Math.sqrt((gravity * area(depth) ** 3) / surfaceWidth(depth));
}

/** Depth at which a flow has a Froude number of one (critical depth), m; undefined where that is above the fullest depth. */
export function criticalDepth(section: ChannelSection, flow: number, gravity = standardGravity): Root | undefined {
  const excess = (depth: number) => (depth > 0 ? Math.log(froudeNumber(section, flow, depth, gravity)) : Infinity);
  const least = section.fullestDepth * 1e-9;
  if (excess(section.fullestDepth) >= 0 || excess(least) <= 0) return undefined;
  return bracketedRoot(excess, least, section.fullestDepth);
}

/** A round pipe that is partly full, as shares of the same pipe just full. */
export interface PartFull {
  readonly area: number;
  readonly hydraulicRadius: number;
  readonly velocity: number;
  readonly flow: number;
}

/**
 * Area, hydraulic radius, velocity and flow of a round pipe that is partly full, as shares of the same pipe just full; one Manning coefficient for
 * all depths.
 *
 * @param fillShare depth over inside diameter, above 0 to 1
 * @example partFullPipe(0.25).flow // => 0.1370
 */
export function partFullPipe(fillShare: number): PartFull {
  const section = circularSection(1);
  const area = section.area(fillShare) / (Math.PI / 4);
  const hydraulicRadius = (4 * section.area(fillShare)) / section.wettedPerimeter(fillShare);
  const velocity = hydraulicRadius ** (2 / 3);
  return { area, hydraulicRadius, velocity, flow: area * velocity };
}
