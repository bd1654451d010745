import { emitterLaw } from './emitter.js';
import { countOutlets, type Stretch } from './stretch.js';

/** Most lumps that stand for the outlets of a reach. */
const lumpsToAReach = 8;

/** Whether lumps would be half as many as the outlets, or fewer: never so of lumps. */
export const isWorthLumping = (stretches: readonly Stretch[]): boolean => countOutlets(stretches) >= 2 * lumpsToAReach * stretches.length;

/** By how much n lumps lose more than their outlets, as a share of the loss and times n^2: seen in laterals of all kinds. It moves the speed only, not what is found. */
const excessOfLumps = 0.3;

/** The same reaches with few outlets, each of which gives as much as the many in whose middle it sits; and how high the end lies above the last of them. */
export function lumped(stretches: readonly Stretch[]): { readonly lumps: readonly Stretch[]; readonly rest: number } {
  let tail = 0;
  let rest = 0;
  const lumps = stretches.map(({ outlets, spacing, firstSpacing, slope, equivalentLength, connectionLoss, area, emitter, gradient, velocityHead }) => {
    const count = Math.min(outlets, lumpsToAReach);
    const size = outlets / count;
    const half = ((size - 1) / 2) * spacing;
    const before = tail;
    tail = half;
    rest = slope * half;
    const many = { ...emitter, flow: size * emitter.flow };
    return {
      area, gradient, velocityHead, slope,
      emitter: many,
      law: emitterLaw(many),
      outlets: count,
      spacing: size * spacing,
      firstSpacing: before + firstSpacing + half,
      equivalentLength: size * equivalentLength - (excessOfLumps / count ** 2) * (size - 1 / size) * spacing,
      connectionLoss: size * connectionLoss,
    };
  });
  return { lumps, rest };
}
