/** What a row of pipes with emitters draws. */
import type { Row } from './network-chains.js';
import { usualHead, type EmittersLaw } from './network-emitters.js';

/** A row as one emitter at its inlet. */
export interface RowLaw extends EmittersLaw {
  /** Goes along the row for a pressure head at its inlet, and calls with the pressure head, the emitted flow, and the flow and loss of the pipe, of each place from the dead end on. */
  readonly along: (inletHead: number, each: (place: number, head: number, emitted: number, flow: number, loss: number) => void) => void;
}

/** A row whose inlet cannot be computed from its end: numbers run away. */
export class RowError extends Error {}

/** Points that a curve is drawn through, at most; by how much, as a share of the usual flow, two such curves may differ; and how often a point is added for one reading. */
const [drawnThrough, precision, mostAdded] = [6, 1e-9, 30];

/** Beyond so many points none is added any more. */
const mostPoints = 300;

/** Along the row itself the wanted head is met to this, m, or as near as so many tries come. */
const [inletPrecision, mostTries] = [1e-8, 6];

/**
 * The law of a row: q(h), the flow at its inlet by the pressure head there.
 *
 * From a pressure head at the dead end the row is computed place by place up to its inlet, which gives a point of the law. Points are added where the law is
 * read, until curves of fifth and of fourth order through the nearest agree, so that rows that are alike take few points together.
 */
export function rowLaw({ emitters, curves, rises }: Row): RowLaw {
  const points: { readonly end: number; readonly inlet: number; readonly flow: number }[] = [];

  const march = (end: number, each?: Parameters<RowLaw['along']>[1]): { readonly end: number; readonly inlet: number; readonly flow: number } => {
    let [head, flow] = [end, 0];
    for (let place = 0; place < curves.length; place++) {
      const emitted = emitters[place]?.flow(head) ?? 0;
      flow += emitted;
      const loss = curves[place]!.loss(flow);
      each?.(place, head, emitted, flow, loss);
      head += rises[place]! + loss;
    }
    if (!(Math.abs(head) < Infinity)) throw new RowError();
    return { end, inlet: head, flow };
  };

  /** Number of the first point above an inlet head. */
  const firstAbove = (inlet: number): number => {
    let [low, high] = [0, points.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if (points[middle]!.inlet <= inlet) low = middle + 1;
      else high = middle;
    }
    return low;
  };
  const add = (end: number): void => {
    const point = march(end);
    const at = firstAbove(point.inlet);
    if (points[at - 1]?.inlet !== point.inlet) points.splice(at, 0, point);
  };

  /** Points at both sides of an inlet head: the head at the inlet grows at least as fast as that at the end. */
  const reach = (inlet: number): number => {
    if (points.length === 0) add(inlet / 2);
    for (let below = firstAbove(inlet); ; below = firstAbove(inlet)) {
      if (below === 0) add(points[0]!.end - Math.max(points[0]!.inlet - inlet, 1e-6));
      else if (below === points.length) add(points.at(-1)!.end + Math.max(inlet - points.at(-1)!.inlet, 1e-6));
      else return below;
    }
  };

  /** A curve through the nearest points, read at an inlet head, and by how much that of the order below differs (Neville's scheme). */
  const read = (inlet: number, above: number, of: 'flow' | 'end'): { readonly value: number; readonly doubt: number } => {
    const count = Math.min(drawnThrough, points.length);
    const start = Math.min(Math.max(0, above - (count >> 1)), points.length - count);
    const values = points.slice(start, start + count).map((point) => point[of]);
    let doubt = Infinity;
    for (let order = 1; order < count; order++) {
      const before = values[0]!;
      for (let i = 0; i + order < count; i++) {
        const [left, right] = [points[start + i]!.inlet, points[start + i + order]!.inlet];
        values[i] = ((inlet - right) * values[i]! + (left - inlet) * values[i + 1]!) / (left - right);
      }
      doubt = Math.abs(values[0]! - before);
    }
    return { value: values[0]!, doubt };
  };

  /** The end head for an inlet head as the points have it, kept between its neighbours. */
  const endFor = (inlet: number, above: number): number => {
    const [low, high] = [points[above - 1]!, points[above]!];
    const { value, doubt } = read(inlet, above, 'end');
    return value > low.end && value < high.end && doubt < (high.end - low.end) / 10 ? value : (low.end + high.end) / 2;
  };

  let [usual, rise, opening] = [0, 0, Infinity];
  for (let place = curves.length - 1; place >= 0; place--) {
    rise += rises[place]!;
    usual += emitters[place]?.usualFlow ?? 0;
    opening = Math.min(opening, (emitters[place]?.opening ?? Infinity) + rise);
  }
  const flow = (inlet: number): number => {
    let above = reach(inlet);
    for (let added = 0; ; added++) {
      const [low, high] = [points[above - 1]!, points[above]!];
      if (high.inlet - low.inlet < 1e-9 || low.flow === high.flow) return low.flow;
      const { value, doubt } = read(inlet, above, 'flow');
      if (doubt <= precision * usual || added === mostAdded || points.length >= mostPoints) return Math.min(high.flow, Math.max(low.flow, value));
      add(endFor(inlet, above));
      above = reach(inlet);
    }
  };
  const slope = (inlet: number): number => {
    const nudge = 1e-4 * (1 + Math.abs(inlet));
    return (flow(inlet + nudge) - flow(inlet - nudge)) / (2 * nudge);
  };

  return {
    flow, slope, opening, usualFlow: usual, weight: usualHead / usual,
    along: (inlet, each) => {
      let above = reach(inlet);
      for (let tries = 0; tries < mostTries; tries++) {
        const near = points[above - 1]!;
        if (inlet - near.inlet <= inletPrecision) return void march(near.end, each);
        add(endFor(inlet, above));
        above = reach(inlet);
      }
      march(endFor(inlet, above), each);
    },
  };
}
