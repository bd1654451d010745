/** One step of the search for the heads and flows of a network. */
import { sparseSystem } from '../../numerics/sparse-system.js';
import { lossAt, shut, slopeAt, type LinkCurve } from './network-curves.js';
import { amiss, driveOf, excess } from './network-miss.js';
import type { NetworkState, Parts } from './network-parts.js';
import { pointForSum } from './network-point.js';

/** What a closed link lets by in the tangents, m3/s per m, so that what hangs behind it has the head that it would just open at. Nothing of it flows. */
const leak = 1e-18;

/** Furthest that a pressure head of nought moves in a step, m; others may double as well. What a node has too much of is let to leak in proportion. */
const firstStride = 100;

/** Least slope of a loss, m per m3/s. */
const leastSlope = 1e-6;

/**
 * A step is halved, down to about this share, where it leaves more amiss than was after any of the last few steps; the first steps only where it is this
 * many times more. Where no halving helps, the one that leaves least amiss is taken.
 */
const [leastStep, remembered, freeSteps, largestGrowth] = [0.016, 3, 8, 100];

/** Where no halving helps, emitters are held back in the next step by so much of their flow over head, and by so many times more or less in each after it. */
const [firstDamping, dampingStep] = [0.25, 4];

/** Where links are closed, heads behind them have settled when they move by no more than this in a step, m, and no node had more than this too much, m3/s. */
const [settledHead, settledFlow] = [1e-4, 1e-15];

/** In held steps the hold grows or shrinks with the root of what is amiss, by no more than this. */
const largestChange = 10;

/**
 * Makes the function that takes a step from a state, into it, and tells whether it was one that asks for another: a link opened or closed, or what hangs
 * behind one still moved.
 *
 * A held step is a full one in which every node has a store of water that fills as its head rises: small steps in time towards rest, which grow longer as
 * less is amiss (pseudo-transient continuation). It is slow, but comes near where other steps go in circles. `firstHold` is that store as a share of
 * what links usually carry at 10 m.
 *
 * Source of held steps: Kelley and Keyes 1998, Convergence analysis of pseudo-transient continuation, SIAM Journal on Numerical Analysis 35, 508-523; from memory.
 */
export function stepper(parts: Parts, state: NetworkState, firstHold: number): (isHeld: boolean) => boolean {
  const { from, to, curves, elevations, demands, emitters, isFree } = parts;
  const { heads, flows, losses, closed, emitterHeads, emitterFlows } = state;
  const [size, links] = [elevations.length, curves.length];
  // Links between two nodes of unknown head are pairs of the system; the others only leak.
  const pairOf = new Int32Array(links).fill(-1);
  let pairs = 0;
  for (let link = 0; link < links; link++) if (isFree[from[link]!] && isFree[to[link]!]) pairOf[link] = pairs++;
  const ofPairs = (ends: Int32Array): Int32Array => ends.filter((_, link) => pairOf[link]! >= 0);
  const system = sparseSystem(size, ofPairs(from), ofPairs(to));
  const conductance = new Float64Array(links);
  const pull = new Float64Array(links);
  const before = { heads: new Float64Array(size), flows: new Float64Array(links), closed: new Uint8Array(links), emitterHeads: new Float64Array(size), emitterFlows: new Float64Array(size) };
  const past: number[] = [];
  /** Of emitters: flow over head that is added to their tangents, as a share of what they usually have. */
  let damping = 0;
  let hold = firstHold;
  /** Flow into the store of every node for each metre that its head rises. */
  let store = 0;
  const usual = curves.reduce((flow, { start }) => Math.max(flow, start), 0) / 10;
  const surplus = new Float64Array(size);
  const drawn = new Float64Array(size);
  /** Most that a node had too much or too little of before the step. */
  let most = 0;

  /** Follows every curve by its tangent. */
  const tangents = (): Float64Array => {
    system.clear();
    most = 0;
    surplus.fill(0);
    drawn.fill(0);
    for (let link = 0; link < links; link++) {
      const [start, end, curve, flow] = [from[link]!, to[link]!, curves[link]!, flows[link]!];
      const y = closed[link] ? leak : 1 / Math.max(leastSlope, slopeAt(curve, Math.abs(flow), Math.abs(losses[link]!)));
      const toCurve = curve === shut ? 0 : -y * excess(parts, state, link);
      const isCapped = heads[start]! > curve.highestInlet;
      conductance[link] = y;
      pull[link] = toCurve;
      surplus[start]! -= flow;
      surplus[end]! += flow;
      drawn[start]! -= toCurve;
      drawn[end]! += toCurve;
      if (pairOf[link]! >= 0) system.join(pairOf[link]!, y, isCapped ? 0 : y);
      else if (isFree[end]) system.leak(end, y);
      else if (isFree[start] && !isCapped) system.leak(start, y);
    }
    for (let node = 0; node < size; node++) {
      if (!isFree[node]) {
        system.leak(node, 1);
        continue;
      }
      const above = heads[node]! - elevations[node]!;
      const emitter = emitters[node];
      let right = surplus[node]! - demands[node]! - emitterFlows[node]!;
      most = Math.max(most, Math.abs(right));
      let out = store + Math.abs(right) / (firstStride + Math.abs(above));
      right += drawn[node]!;
      if (emitter) {
        const slope = emitter.slope(emitterHeads[node]!);
        out += slope + damping / emitter.weight;
        right -= slope * (above - emitterHeads[node]!);
      }
      system.leak(node, out);
      system.right(node, right);
    }
    return system.solve();
  };

  /** Goes a share of the way, each part along its curve. */
  const go = (rises: Float64Array, share: number): void => {
    for (let node = 0; node < size; node++) {
      const emitter = emitters[node];
      if (isFree[node]) heads[node] = before.heads[node]! + share * rises[node]!;
      if (!emitter) continue;
      const [head, flow] = [before.emitterHeads[node]!, before.emitterFlows[node]!];
      const { weight, opening } = emitter;
      const rise = rises[node]! * isFree[node]! + before.heads[node]! - elevations[node]! - head;
      const sum = head + share * rise + weight * (flow + share * emitter.slope(head) * rise);
      const next = pointForSum(emitter.flow, emitter.slope, weight, sum, head + share * rise, opening);
      emitterHeads[node] = next;
      emitterFlows[node] = emitter.flow(next);
    }
    for (let link = 0; link < links; link++) {
      const [start, end, curve] = [from[link]!, to[link]!, curves[link]!];
      const rise = before.heads[start]! <= curve.highestInlet ? rises[start]! * isFree[start]! : 0;
      const flow = before.flows[link]! + share * (before.closed[link] ? 0 : pull[link]! + conductance[link]! * (rise - rises[end]! * isFree[end]!));
      const isOpen = !curve.isOneWay || (!before.closed[link] && flow > 0);
      closed[link] = 0;
      flows[link] = flow;
      if (!isOpen) reopen(link, curve, flow);
      losses[link] = lossAt(curve, flows[link]!);
    }
  };

  /** Sets a one-way link that is closed, or would run back, to the point of its curve with the same sum of flow and weighted head: open or closed. */
  const reopen = (link: number, curve: LinkCurve, flow: number): void => {
    const sum = flow + (driveOf(curve, heads[from[link]!]!, heads[to[link]!]!) - curve.loss(0)) / curve.weight;
    closed[link] = sum > 0 ? 0 : 1;
    flows[link] = sum > 0 ? pointForSum((q) => curve.loss(q) - curve.loss(0), curve.slope, 1 / curve.weight, sum, 0) : 0;
  };

  /** Goes as much of the way as leaves less amiss. */
  const goWell = (rises: Float64Array): number => {
    const allowed = past.length > freeSteps ? Math.max(...past.slice(-remembered)) : past.at(-1)! * largestGrowth;
    let best = { share: 1, amiss: Infinity };
    let share = 2;
    do {
      share /= 2;
      go(rises, share);
      const left = amiss(parts, state);
      if (left < 0.999 * best.amiss) best = { share, amiss: left };
    } while (!(best.amiss < allowed) && share > leastStep);
    if (best.share !== share) go(rises, best.share);
    damping = best.amiss < allowed ? damping / dampingStep : Math.max(firstDamping, damping * dampingStep);
    return best.amiss;
  };

  /** Goes all the way, and holds back less the better that was. */
  const goHeld = (rises: Float64Array): number => {
    go(rises, 1);
    const left = amiss(parts, state);
    hold *= Math.min(largestChange, Math.max(1 / largestChange, Math.sqrt(left / past.at(-1)!)));
    return left;
  };

  return (isHeld) => {
    before.heads.set(heads);
    before.flows.set(flows);
    before.closed.set(closed);
    before.emitterHeads.set(emitterHeads);
    before.emitterFlows.set(emitterFlows);
    if (past.length === 0) past.push(amiss(parts, state));
    store = isHeld ? hold * usual : 0;
    const rises = tangents();
    past.push(isHeld ? goHeld(rises) : goWell(rises));
    return closed.some((isClosed, link) => isClosed !== before.closed[link]) || (closed.includes(1) && (most > settledFlow || rises.some((rise) => Math.abs(rise) > settledHead)));
  };
}
