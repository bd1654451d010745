import { ConvergenceError } from '../../numerics/convergence-error.js';
import { bracketedRoot } from '../../numerics/roots.js';
import { isWorthLumping, lumped } from './lumps.js';
import { countOutlets, march, riseOf, stretchesOf, type InletState, type LateralLayout, type Stretch } from './stretch.js';

/** Heads and flows along a lateral, and how well they were found. */
export interface LateralFlow {
  /** Pressure head at each outlet from the inlet on, m. */
  readonly heads: Float64Array;
  /** Flow of each emitter, m3/s. */
  readonly flows: Float64Array;
  readonly inletHead: number;
  readonly inletFlow: number;
  /** By how much the wanted head was missed, m: at the inlet, or for a wanted mean flow that of an emitter with that flow. */
  readonly residual: number;
  /** Times the lateral was computed from its end. */
  readonly steps: number;
}

/** Where the wanted head is met to this share of itself, or of the head at the end of a downhill lateral at rest, the search ends. */
const precision = 1e-8;

/** Lumps are met to this share of the inlet head: their own error is larger. */
const lumpPrecision = 1e-5;

/** How near to 0 the head at the last outlet is told from none, m. Only emitters of small exponent that starve come that low. */
const leastEndHead = 1e-30;

/**
 * Heads and flows along a lateral for a head at its inlet.
 *
 * From a guessed head at the last outlet the lateral is computed upstream, outlet by outlet. The head so found at the inlet grows at least as fast as
 * the guess, so one computation already brackets the answer, and the wanted inlet head is met to a hundred-millionth of itself; the work grows in
 * proportion to the outlets. An outlet without positive head gives no flow. Throws ConvergenceError where no state is found: when the head cannot
 * feed pressure-compensating emitters to the end, when a long thin lateral falls so steeply that its middle hangs between flow and none, or
 * when moving the water would take more head than there is.
 */
export function lateralFromInletHead(layout: LateralLayout, inletHead: number): LateralFlow {
  const stretches = stretchesOf(layout);
  // Too high an end head is the level one: water loses head on its way. Too low a one: the inlet head grows at least as fast as that at the end, so a guess
  // less what it overshoots by falls short. With velocity head neither holds: from where nothing flows, up to where the inlet head is reached.
  return approach(stretches, inletHead) ?? search(stretches, inletHead, (state) => state.inletHead, (miss) => {
    const level = inletHead - riseOf(stretches);
    if (stretches[0]!.velocityHead > 0) return [dryEndHead(stretches), reaching(miss, Math.max(level, 0.1))];
    const guess = level > 0 ? roughGuess(stretches, inletHead, level) : level;
    return [Math.min(level, Math.max(dryEndHead(stretches), guess - miss(guess))), guess];
  });
}

/**
 * The same for a wanted mean flow of the emitters: the inlet head it takes is part of the answer.
 *
 * The mean flow is sought as the head at which an emitter of the first reach gives it, which follows the end head almost in proportion.
 * Pressure-compensating emitters (exponent 0) give one flow at every head, so no inlet head follows from it: ConvergenceError.
 */
export function lateralFromMeanFlow(layout: LateralLayout, meanFlow: number): LateralFlow {
  const { flow, head, exponent } = layout.emitter;
  if (exponent === 0) throw new ConvergenceError('emitters with exponent 0 give one flow at every head: no inlet head follows from a mean flow', NaN, 0);
  const stretches = stretchesOf(layout);
  const outlets = countOutlets(stretches);
  const headFor = (emitted: number): number => head * (emitted / flow) ** (1 / exponent);
  const wanted = headFor(meanFlow);
  return search(stretches, wanted, (state) => headFor(state.inletFlow / outlets), (miss) => {
    return [dryEndHead(stretches), reaching(miss, wanted + Math.max(0, -riseOf(stretches)))];
  });
}

/** The same for a head at the last outlet, which needs no search: how much a lateral takes at least to reach its end. */
export function lateralFromEndHead(layout: LateralLayout, endHead: number): LateralFlow {
  const stretches = stretchesOf(layout);
  const heads = new Float64Array(countOutlets(stretches));
  const flows = new Float64Array(heads.length);
  return { heads, flows, ...march(stretches, heads, flows, endHead), residual: 0, steps: 1 };
}

/** A head at the last outlet with which no emitter flows. */
const dryEndHead = (stretches: readonly Stretch[]): number => {
  // The lowest outlet need not be the last one.
  let [height, lowest] = [0, 0];
  for (const { outlets, spacing, firstSpacing, slope } of stretches) {
    height += slope * (firstSpacing + (outlets - 1) * spacing);
    lowest = Math.min(lowest, height);
  }
  return Math.min(0, lowest - height) - 1e-6;
};

/** An end head from `from` on that takes at least the wanted head. */
function reaching(miss: (endHead: number) => number, from: number): number {
  let head = from;
  for (let tries = 0; tries < 60 && miss(head) < 0; tries++) head = 2 * Math.max(head, 0.1);
  return head;
}

/** The head at the end less what would be lost on the way if every outlet had the mean head of a lateral at rest: a start for the search, no more. */
function roughGuess(stretches: readonly Stretch[], inletHead: number, level: number): number {
  const head = 0.5 * (level + inletHead);
  let flow = 0;
  let loss = 0;
  for (let reach = stretches.length - 1; reach >= 0; reach--) {
    const { outlets, spacing, law, gradient, equivalentLength, connectionLoss } = stretches[reach]!;
    const given = outlets * law.flow(head);
    // Of outlets in a row the loss is that of a good half of their flow through the whole pipe. The number moves the speed only.
    const passing = flow + 0.56 * given;
    flow += given;
    loss += outlets * (gradient(passing) * (spacing + equivalentLength) + connectionLoss * passing * passing);
  }
  return level ** 2 / (level + loss);
}

/** A head at the last outlet, and how much faster than it the head at the inlet grows there. */
interface Guess {
  readonly endHead: number;
  readonly growth: number;
}

/** Where to begin: what a few lumps say, or with few outlets a rough loss. */
function guessFor(stretches: readonly Stretch[], inletHead: number): Guess | undefined {
  if (!isWorthLumping(stretches)) {
    const level = inletHead - riseOf(stretches);
    if (!(level > 0)) return undefined;
    const endHead = roughGuess(stretches, inletHead, level);
    return { endHead, growth: level / endHead };
  }
  const { lumps, rest } = lumped(stretches);
  const outlets = countOutlets(lumps);
  const found = secant(lumps, new Float64Array(outlets), new Float64Array(outlets), inletHead, lumpPrecision * inletHead);
  return found && { endHead: found.endHead - rest, growth: found.growth };
}

/** Steps after which straight lines have not led there. */
const mostSteps = 6;

/** What straight lines led to. */
interface Found extends InletState, Guess {
  readonly miss: number;
  readonly steps: number;
}

/** Goes towards the wanted inlet head along straight lines; undefined where they do not lead there. */
function secant(stretches: readonly Stretch[], heads: Float64Array, flows: Float64Array, wanted: number, tolerance: number): Found | undefined {
  const guess = guessFor(stretches, wanted);
  if (!guess) return undefined;
  let { endHead, growth } = guess;
  let before = NaN;
  let missBefore = NaN;
  for (let steps = 1; steps <= mostSteps && endHead > 0; steps++) {
    const { inletHead, inletFlow } = march(stretches, heads, flows, endHead);
    const miss = inletHead - wanted;
    if (steps > 1) growth = (miss - missBefore) / (endHead - before);
    if (Math.abs(miss) <= tolerance) return { inletHead, inletFlow, endHead, growth, miss, steps };
    before = endHead;
    missBefore = miss;
    endHead -= miss / growth;
  }
  return undefined;
}

/** The quick way for a lateral that is not short of head; undefined where it does not lead there. */
function approach(stretches: readonly Stretch[], wanted: number): LateralFlow | undefined {
  const heads = new Float64Array(countOutlets(stretches));
  const flows = new Float64Array(heads.length);
  const found = secant(stretches, heads, flows, wanted, toleranceOf(stretches, wanted));
  if (!found) return undefined;
  const { inletHead, inletFlow, miss, steps } = found;
  return { heads, flows, inletHead, inletFlow, residual: Math.abs(miss), steps };
}

const toleranceOf = (stretches: readonly Stretch[], wanted: number): number => precision * Math.max(wanted, wanted - riseOf(stretches));

/** Seeks the head at the last outlet for which a reading of the whole lateral is the wanted one. */
function search(
  stretches: readonly Stretch[], wanted: number, reading: (state: InletState) => number,
  bracket: (miss: (endHead: number) => number) => [number, number],
): LateralFlow {
  const heads = new Float64Array(countOutlets(stretches));
  const flows = new Float64Array(heads.length);
  const tolerance = toleranceOf(stretches, wanted);
  let at = NaN;
  let state: InletState = { inletHead: NaN, inletFlow: NaN };
  let steps = 0;
  const difference = (endHead: number): number => {
    if (endHead !== at) {
      state = march(stretches, heads, flows, endHead);
      at = endHead;
      steps++;
    }
    return reading(state) - wanted;
  };
  const miss = (endHead: number): number => {
    const found = difference(endHead);
    return Math.abs(found) <= tolerance ? 0 : found;
  };
  const residual = Math.abs(difference(bracketedRoot(miss, ...bracket(miss), { tolerance: leastEndHead }).value));
  if (!(residual <= tolerance)) {
    throw new ConvergenceError(`no flow along the lateral meets a head of ${wanted} m: the nearest misses by ${residual} m`, residual, steps);
  }
  return { heads, flows, inletHead: state.inletHead, inletFlow: state.inletFlow, residual, steps };
}
