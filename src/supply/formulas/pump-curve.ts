/** Head that a pump adds (m) at a flow (m3/s, not negative), which falls with the flow, and how fast it changes (not above 0). */
export interface PumpCurve {
  head(flow: number): number;
  slope(flow: number): number;
}

/** A point of a pump's curve: m3/s, m. */
export interface PumpCurvePoint {
  readonly flow: number;
  readonly head: number;
}

/**
 * Curve through the shut-off head and two points: H = a - b Q^c.
 *
 * a is the head at no flow, c = ln((a - H2)/(a - H1))/ln(Q2/Q1), b = (a - H1)/Q1^c. Beyond the second point the curve goes on, below no head too.
 * Source: Rossman et al. (2020), chapter 3.
 *
 * @example pumpCurveThreePoints(35, { flow: 20, head: 28 }, { flow: 40, head: 12 }).head(20) // => 28
 */
export function pumpCurveThreePoints(shutOffHead: number, middle: PumpCurvePoint, last: PumpCurvePoint): PumpCurve {
  const exponent = Math.log((shutOffHead - last.head) / (shutOffHead - middle.head)) / Math.log(last.flow / middle.flow);
  const fall = shutOffHead - middle.head;
  return {
    head: (flow) => shutOffHead - fall * (flow / middle.flow) ** exponent,
    slope: (flow) => ((-fall * exponent) / middle.flow) * (flow / middle.flow) ** (exponent - 1),
  };
}

/**
 * Curve from the design point alone: a third more head at no flow, none at twice the flow, so H = 4/3 H0 - H0/3 (Q/Q0)^2.
 *
 * Source: Rossman et al. (2020), chapter 3.
 */
export function pumpCurveOnePoint({ flow, head }: PumpCurvePoint): PumpCurve {
  return pumpCurveThreePoints((4 / 3) * head, { flow, head }, { flow: 2 * flow, head: 0 });
}

/**
 * Smooth curve through points with flow rising and head falling, which falls all the way: cubic pieces whose slopes at the points are the
 * harmonic mean of those at either side, and at the ends those of a parabola, kept from turning. Before the first point and beyond the last it goes
 * on straight.
 *
 * Source: Fritsch and Butland 1984, A method for constructing local monotone piecewise cubic interpolants, SIAM Journal on Scientific and
 * Statistical Computing 5, 300-304.
 *
 * @param points at least two, with flow rising and head falling from each to the next
 */
export function pumpCurveThroughPoints(points: readonly PumpCurvePoint[]): PumpCurve {
  const pieces = points.slice(1).map((end, i) => {
    const start = points[i]!;
    const width = end.flow - start.flow;
    return { start, width, slope: (end.head - start.head) / width };
  });
  const first = pieces[0]!;
  const last = pieces.at(-1)!;
  const slopes = points.map((_, i) => {
    if (i === 0) return endSlope(first, pieces[1]);
    if (i === pieces.length) return endSlope(last, pieces.at(-2));
    return meanSlope(pieces[i - 1]!, pieces[i]!);
  });
  const straight = [Math.min(slopes[0]!, 0), Math.min(slopes.at(-1)!, last.slope)] as const;
  const highest = points[points.length - 1]!;
  const read = <T>(flow: number, outside: (from: PumpCurvePoint, slope: number) => T, inside: (piece: typeof first, share: number, from: number, to: number) => T): T => {
    if (flow <= first.start.flow) return outside(first.start, straight[0]);
    if (flow >= highest.flow) return outside(highest, straight[1]);
    let at = pieces.length - 1;
    while (pieces[at]!.start.flow > flow) at--;
    const piece = pieces[at]!;
    return inside(piece, (flow - piece.start.flow) / piece.width, slopes[at]!, slopes[at + 1]!);
  };
  return {
    head: (flow) => read(flow, (from, slope) => from.head + slope * (flow - from.flow), ({ start, width, slope }, t, from, to) =>
      start.head + width * t * (from + t * (3 * slope - 2 * from - to + t * (from + to - 2 * slope)))),
    slope: (flow) => read(flow, (_, slope) => slope, ({ slope }, t, from, to) =>
      from + t * (2 * (3 * slope - 2 * from - to) + 3 * t * (from + to - 2 * slope))),
  };
}

interface Piece { readonly width: number; readonly slope: number }

/** Slope where two pieces meet: their harmonic mean, the wider one counting less. */
function meanSlope(left: Piece, right: Piece): number {
  const weight = (left.width + 2 * right.width) / (3 * (left.width + right.width));
  return (left.slope * right.slope) / (weight * right.slope + (1 - weight) * left.slope);
}

/** Slope at the outer end of a piece beside its neighbour. */
function endSlope(end: Piece, next: Piece | undefined): number {
  if (next === undefined) return end.slope;
  const parabola = ((2 * end.width + next.width) * end.slope - end.width * next.slope) / (end.width + next.width);
  return Math.min(0, Math.max(parabola, 3 * end.slope));
}
