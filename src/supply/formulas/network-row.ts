/** What a row of pipes with emitters draws. */
import type { Row } from './network-chains.js';
import { usualHead, type EmittersLaw } from './network-emitters.js';

/** Called with pressure head and emitted flow of a place, and flow and loss of the pipe that leads to it. */
export type EachPlace = (place: number, head: number, emitted: number, flow: number, loss: number) => void;

/** A row as one emitter at its inlet. */
export interface RowLaw extends EmittersLaw {
  /** Goes through the places of the row, from its dead end on, for a pressure head at its inlet; several times, the last of which counts. */
  readonly along: (inlet: number, each: EachPlace) => void;
}

/** A row that is not to be taken so: numbers run away on the way from its end to its inlet, or its law has too many corners. */
export class RowError extends Error {}

/** Points that a curve is drawn through, at most, and by how much, as a share of the usual flow, two such curves may differ. */
const [drawnThrough, precision] = [6, 1e-9];

/** A row gets by on so many points; points nearer than this, m, are one. */
const [mostPoints, nearest] = [120, 1e-9];

/** Along the row the wanted head is met to this, m, or as near as so many tries come; so many find points at both sides of it. */
const [inletPrecision, mostTries] = [1e-8, 6];

/**
 * The law of a row: q(h), the flow at its inlet by the pressure head there.
 *
 * From a pressure head at the dead end the row is computed place by place up to its inlet, which gives a point of the law. Points are added where the law is
 * read, until curves of fifth and of fourth order through the nearest agree, so that rows that are alike take few points together.
 */
export function rowLaw({ emitters, curves, rises }: Row): RowLaw {
  // Points in rising order: pressure heads at the dead end and at the inlet, and the flow.
  const [ends, inlets, flows]: [number[], number[], number[]] = [[], [], []];

  const march = (end: number, each?: EachPlace): { readonly inlet: number; readonly flow: number } => {
    let [head, flow] = [end, 0];
    for (let place = 0; place < curves.length; place++) {
      const emitted = emitters[place]?.flow(head) ?? 0;
      flow += emitted;
      const loss = curves[place]!.loss(flow);
      each?.(place, head, emitted, flow, loss);
      head += rises[place]! + loss;
    }
    if (!(Math.abs(head) < Infinity)) throw new RowError();
    return { inlet: head, flow };
  };

  /** Number of the first point above an inlet head. */
  const firstAbove = (inlet: number): number => {
    let [low, high] = [0, inlets.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (inlets[middle]! <= inlet) low = middle + 1;
      else high = middle;
    }
    return low;
  };
  let added = 0;
  const add = (end: number): void => {
    if (++added > mostPoints) throw new RowError();
    const { inlet, flow } = march(end);
    const at = firstAbove(inlet);
    if (inlets[at - 1] === inlet) return;
    ends.splice(at, 0, end);
    inlets.splice(at, 0, inlet);
    flows.splice(at, 0, flow);
  };

  /** Sees to it that there are points at both sides of an inlet head, and gives the number of the upper one: the head at the inlet grows at least as fast as that at the end. */
  const reach = (inlet: number): number => {
    if (inlets.length === 0) add(inlet / 2);
    for (let tries = 0; tries < mostTries; tries++) {
      const above = firstAbove(inlet);
      if (above === 0) add(ends[0]! - Math.max(inlets[0]! - inlet, 1e-6));
      else if (above === inlets.length) add(ends.at(-1)! + Math.max(inlet - inlets.at(-1)!, 1e-6));
      else return above;
    }
    throw new RowError();
  };

  const values = new Float64Array(drawnThrough);
  /** A curve through the nearest points, read at an inlet head, and by how much that of the order below differs (Neville's scheme). */
  const read = (inlet: number, above: number, of: readonly number[]): { readonly value: number; readonly doubt: number } => {
    const count = Math.min(drawnThrough, inlets.length);
    const start = Math.min(Math.max(0, above - (count >> 1)), inlets.length - count);
    for (let i = 0; i < count; i++) values[i] = of[start + i]!;
    let doubt = Infinity;
    for (let order = 1; order < count; order++) {
      const before = values[0]!;
      for (let i = 0; i + order < count; i++) {
        const [left, right] = [inlets[start + i]!, inlets[start + i + order]!];
        values[i] = ((inlet - right) * values[i]! + (left - inlet) * values[i + 1]!) / (left - right);
      }
      doubt = Math.abs(values[0]! - before);
    }
    return { value: values[0]!, doubt };
  };

  /** The end head for an inlet head as the points have it; halfway between its neighbours where they leave that in doubt. */
  const endFor = (inlet: number, above: number): number => {
    const [low, high] = [ends[above - 1]!, ends[above]!];
    const { value, doubt } = read(inlet, above, ends);
    return value > low && value < high && doubt < (high - low) / 10 ? value : (low + high) / 2;
  };

  let [usualFlow, rise, opening] = [0, 0, Infinity];
  for (let place = curves.length - 1; place >= 0; place--) {
    rise += rises[place]!;
    usualFlow += emitters[place]?.usualFlow ?? 0;
    opening = Math.min(opening, (emitters[place]?.opening ?? Infinity) + rise);
  }

  return {
    opening, usualFlow,
    weight: usualHead / usualFlow,
    flow: (inlet) => {
      if (inlet <= opening) return 0;
      for (;;) {
        const above = reach(inlet);
        const [low, high] = [flows[above - 1]!, flows[above]!];
        if (inlets[above]! - inlets[above - 1]! < nearest) return low;
        const { value, doubt } = read(inlet, above, flows);
        if (doubt <= precision * usualFlow) return Math.min(high, Math.max(low, value));
        add(endFor(inlet, above));
      }
    },
    // Near enough: between the points at both sides, which reading the flow has brought near.
    slope: (inlet) => {
      if (inlet <= opening) return 0;
      const above = reach(inlet);
      return (flows[above]! - flows[above - 1]!) / (inlets[above]! - inlets[above - 1]!);
    },
    along: (inlet, each) => {
      const above = reach(inlet);
      let end = endFor(inlet, above);
      for (let tries = 1; ; tries++) {
        const miss = march(end, each).inlet - inlet;
        if (Math.abs(miss) <= inletPrecision || tries === mostTries) return;
        end -= (miss * (ends[above]! - ends[above - 1]!)) / (inlets[above]! - inlets[above - 1]!);
      }
    },
  };
}
