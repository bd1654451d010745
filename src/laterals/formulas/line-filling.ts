import { fittingHeadLoss } from './head-loss.js';
import { countUpTo, outletDistances, pieceEnds } from './pieces.js';
import { rootNear } from './root-near.js';
import { march, stretchesOf, type LateralLayout, type Stretch } from './stretch.js';

/** Pieces of pipe, each filled with the flow of when the front is in its middle. */
const pieces = 200;

/** What an empty lateral does until it is full. */
export interface FilledLine {
  /** When the water comes to each outlet, s. */
  readonly arrivals: Float64Array;
  /** What each emitter has given by the time asked for, or by when the line is full, m3. */
  readonly volumes: Float64Array;
  readonly fillTime: number;
  /** m3 */
  readonly lineVolume: number;
}

/**
 * How an empty lateral fills: when its water comes to each emitter, and what that has given by then.
 *
 * Behind the front the pipe is full and loses head as ever; at the front the pressure is that of the air, which leaves through the emitters ahead without
 * resistance. The front takes the velocity head that the water moves with, and the emitters behind it give as their head grows. The supply keeps its head,
 * or gives its greatest flow where that is less. Inertia is left out: it counts for the first second or so. Some two hundred pieces of pipe, so
 * the work grows in proportion to the outlets; against twenty times as many, times and volumes agree within 0.1 %.
 * Throws ConvergenceError where the front comes to a halt, above what the head lifts.
 *
 * @param inletHead kept at the inlet, m
 * @param greatestFlow of the supply, m3/s
 * @param until time at which the volumes are counted, s, where the line is not full before
 */
export function fillLine(layout: LateralLayout, inletHead: number, greatestFlow = Infinity, until = Infinity): FilledLine {
  const stretches = stretchesOf({ ...layout, velocityHead: false });
  const distances = outletDistances(stretches);
  const outlets = distances.length;
  const arrivals = new Float64Array(outlets);
  const volumes = new Float64Array(outlets);
  const flows = new Float64Array(outlets);
  const heads = new Float64Array(outlets);
  let [time, lineVolume, arrived, guess, start] = [0, 0, countUpTo(distances, 0), Infinity, 0];
  for (const stop of pieceEnds(stretches, pieces)) {
    const front = (start + stop) / 2;
    const fed = countUpTo(distances, front);
    const { stretch, behind } = upTo(stretches, fed);
    const tail = front - (fed === 0 ? 0 : distances[fed - 1]!);
    const [fedHeads, fedFlows] = [heads.subarray(0, fed), flows.subarray(0, fed)];
    const lifted = fittingHeadLoss(1, 1 / stretch.area, layout.gravity);
    const excess = (flow: number): number => {
      const head = stretch.gradient(flow) * tail + stretch.slope * tail;
      const state = fed === 0 ? { inletHead: head, inletFlow: flow } : march(behind, fedHeads, fedFlows, head, flow);
      return Math.max((state.inletHead + lifted * flow * flow) / inletHead, state.inletFlow / greatestFlow) - 1;
    };
    const fastest = Math.sqrt(inletHead / lifted);
    guess = rootNear(excess, Math.min(guess, fastest), 1e-9 * fastest);
    excess(guess);
    const pieceVolume = stretch.area * (stop - start);
    const duration = pieceVolume / guess;
    for (; arrived < outlets && distances[arrived]! <= stop * (1 + 1e-12); arrived++) arrivals[arrived] = time + (duration * (distances[arrived]! - start)) / (stop - start);
    time += duration;
    lineVolume += pieceVolume;
    start = stop;
    const end = Math.min(time, until);
    for (let outlet = 0; outlet < fed; outlet++) volumes[outlet]! += flows[outlet]! * Math.max(0, end - Math.max(time - duration, arrivals[outlet]!));
  }
  return { arrivals, volumes, fillTime: time, lineVolume };
}

/** The stretches as far as the first outlets, and the one whose pipe leads on from there. */
function upTo(stretches: readonly Stretch[], outlets: number): { readonly behind: readonly Stretch[]; readonly stretch: Stretch } {
  const behind: Stretch[] = [];
  let left = outlets;
  for (const stretch of stretches) {
    if (left < stretch.outlets) return { behind: left > 0 ? [...behind, { ...stretch, outlets: left }] : behind, stretch };
    behind.push(stretch);
    left -= stretch.outlets;
  }
  return { behind, stretch: stretches.at(-1)! };
}
