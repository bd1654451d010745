import { bracketedRoot } from '../../numerics/roots.js';
import { fittingHeadLoss, pipeVelocity } from './head-loss.js';
import { countOutlets, march, riseOf, stretchesOf, type LateralLayout } from './stretch.js';

/** A lateral whose end is open: m and m3/s. */
export interface FlushedLateral {
  readonly endFlow: number;
  readonly inletHead: number;
  readonly inletFlow: number;
}

/**
 * What a lateral takes at its inlet while it is flushed: the wanted flow leaves the open end, and the emitters give by the pressure left.
 *
 * At the end the pressure head is none and the velocity head is lost; emitters without head give nothing.
 *
 * @param endFlow m3/s, velocity times cross-section; 0.3 m/s (1 ft/s) at least is usual (University of California)
 */
export function lateralFlushedWith(layout: LateralLayout, endFlow: number): FlushedLateral {
  const stretches = stretchesOf({ ...layout, velocityHead: false });
  const outlets = countOutlets(stretches);
  const { inletHead, inletFlow } = march(stretches, new Float64Array(outlets), new Float64Array(outlets), 0, endFlow);
  return { endFlow, inletHead: inletHead + fittingHeadLoss(1, pipeVelocity(endFlow, lastDiameter(layout)), layout.gravity), inletFlow };
}

/**
 * The flow that leaves the end of a lateral once it is opened, to its last digits, at a head at its inlet, if the supply keeps that head at this flow; none where
 * the end lies too high.
 */
export function lateralFlushedAt(layout: LateralLayout, inletHead: number): FlushedLateral {
  const least = lateralFlushedWith(layout, 0);
  if (least.inletHead >= inletHead) return least;
  const rest = inletHead - Math.min(0, riseOf(stretchesOf(layout)));
  const bare = Math.sqrt(rest / fittingHeadLoss(1, pipeVelocity(1, lastDiameter(layout)), layout.gravity));
  return lateralFlushedWith(layout, bracketedRoot((flow) => lateralFlushedWith(layout, flow).inletHead - inletHead, 0, 2 * bare).value);
}

/** Inside diameter at the end of a lateral. */
export const lastDiameter = ({ diameter, furtherReaches = [] }: LateralLayout): number => furtherReaches.at(-1)?.diameter ?? diameter;
