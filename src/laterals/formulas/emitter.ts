/**
 * Flow of an emitter: q = k h^x; none where the head is not above zero.
 *
 * @param head h, head or pressure, in one unit throughout
 * @param coefficient k, flow at one of that unit, m3/s
 * @param exponent x: 0 pressure-compensating, 0.5 orifice or tortuous path, 1 laminar long path
 * @returns m3/s
 */
export function emitterFlow(head: number, coefficient: number, exponent: number): number {
  if (!(head > 0)) return 0;
  return exponent === 0.5 ? coefficient * Math.sqrt(head) : coefficient * head ** exponent;
}

/** Coefficient of an emitter from one flow (m3/s) and its head or pressure, in one unit throughout: k = q/h^x, the flow at one of that unit, m3/s. */
export function emitterCoefficient(flow: number, head: number, exponent: number): number {
  return flow / head ** exponent;
}

/**
 * The two numbers of an emitter from two measured flows: x = ln(q1/q2)/ln(h1/h2), k = q1/h1^x.
 *
 * The further apart the heads, the less a reading error matters: an error of 1 % in one flow moves x by 0.01/ln(h1/h2).
 *
 * @param flow1 m3/s at head1 (head or pressure, in one unit throughout)
 * @param flow2 m3/s at head2
 */
export function emitterFromTwoFlows(flow1: number, head1: number, flow2: number, head2: number): { coefficient: number; exponent: number } {
  const exponent = Math.log(flow1 / flow2) / Math.log(head1 / head2);
  return { coefficient: emitterCoefficient(flow1, head1, exponent), exponent };
}

/** An emitter fitted to measured flows. */
export interface FittedEmitter {
  readonly coefficient: number;
  readonly exponent: number;
  /** Standard deviation of the measured flows about the fitted ones, as a share of them, and the standard error of the exponent; two points have none. */
  readonly scatter?: number;
  readonly exponentError?: number;
}

/**
 * The two numbers of an emitter from several measured flows: the straight line of least squares through ln q over ln h.
 *
 * So an error counts by its share of the flow, as a meter errs. Two points give what `emitterFromTwoFlows` gives.
 *
 * @param heads or pressures, in one unit throughout, above 0 and not all alike
 * @param flows m3/s, above 0
 */
export function emitterFromFlows(heads: ArrayLike<number>, flows: ArrayLike<number>): FittedEmitter {
  const x = Array.from(heads, Math.log);
  const y = Array.from(flows, Math.log);
  const count = x.length;
  const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / count;
  const [meanX, meanY] = [meanOf(x), meanOf(y)];
  const spread = x.reduce((sum, value) => sum + (value - meanX) ** 2, 0);
  const exponent = x.reduce((sum, value, i) => sum + (value - meanX) * (y[i]! - meanY), 0) / spread;
  const fitted = { coefficient: Math.exp(meanY - exponent * meanX), exponent };
  if (count < 3) return fitted;
  const left = x.reduce((sum, value, i) => sum + (y[i]! - meanY - exponent * (value - meanX)) ** 2, 0);
  const scatter = Math.sqrt(left / (count - 2));
  return { ...fitted, scatter, exponentError: scatter / Math.sqrt(spread) };
}

/** An emitter by its flow (m3/s) at one head (m): q = flow (h/head)^exponent, none at or below no head. */
export interface PlainEmitter {
  readonly flow: number;
  readonly head: number;
  readonly exponent: number;
}

/** A pressure-compensating emitter: a plain one, of exponent 0 to 0.1, between the two heads that it regulates from and to. */
export interface CompensatingEmitter extends PlainEmitter {
  readonly openingHead: number;
  readonly highestHead: number;
  /** Anti-drain: at and below this head it is shut; below the opening head. 0 where it has no seal. */
  readonly closingHead?: number;
  /** Outside its range it is a bare passage; 0.5, turbulent, where not given. */
  readonly unregulatedExponent?: number;
}

/** What an emitter gives at a head, m3/s, and how fast that grows with the head, m3/s per m. */
export interface EmitterLaw {
  readonly flow: (head: number) => number;
  readonly slope: (head: number) => number;
}

/** The law of an emitter said in data: a compensating one has an opening head. */
export function emitterLaw(emitter: PlainEmitter | CompensatingEmitter): EmitterLaw {
  return 'openingHead' in emitter ? compensatingEmitter(emitter) : plainEmitter(emitter);
}

/**
 * The law of a plain emitter: q = k h^x, dq/dh = x q/h; both 0 at or below no head.
 *
 * With x = 0 the flow steps from none to k at no head, which few solvers like: give a compensating emitter its opening head.
 */
export function plainEmitter({ flow, head, exponent }: PlainEmitter): EmitterLaw {
  const coefficient = emitterCoefficient(flow, head, exponent);
  return {
    flow: (at) => emitterFlow(at, coefficient, exponent),
    slope: (at) => (at > 0 ? (exponent * emitterFlow(at, coefficient, exponent)) / at : 0),
  };
}

/**
 * The law of a pressure-compensating emitter.
 *
 * - from the opening to the highest head: q = flow (h/head)^exponent
 * - below, its membrane lies open: q = q(opening) ((h - closing)/(opening - closing))^y, a turbulent emitter (y = 0.5) through the opening point, which
 *   an anti-drain seal robs of its closing head; none at or below that
 * - above, the membrane can close no further: q = q(highest) (h/highest)^y
 *
 * The flow has no step anywhere; its slope has one at each of the three heads. Common practice, no source: makers print the regulated range only.
 */
export function compensatingEmitter({ openingHead, highestHead, closingHead = 0, unregulatedExponent = 0.5, ...nominal }: CompensatingEmitter): EmitterLaw {
  const regulated = plainEmitter(nominal);
  const opening = plainEmitter({ flow: regulated.flow(openingHead), head: openingHead - closingHead, exponent: unregulatedExponent });
  const beyond = plainEmitter({ flow: regulated.flow(highestHead), head: highestHead, exponent: unregulatedExponent });
  const shift = (head: number): number => (head < openingHead ? head - closingHead : head);
  const lawAt = (head: number): EmitterLaw => (head < openingHead ? opening : head > highestHead ? beyond : regulated);
  return { flow: (head) => lawAt(head).flow(shift(head)), slope: (head) => lawAt(head).slope(shift(head)) };
}

/**
 * What the viscosity of the water does to the flow of an emitter: q/q_stated = (nu_stated/nu)^(2x - 1) for x above 0.5, 1 up to there.
 *
 * In a passage whose friction factor goes as Re^-m, flow goes as (h/nu^m)^(1/(2-m)): so x = 1/(2 - m), and viscosity enters with the power
 * -m x = 1 - 2x. A laminar passage (x = 1) gives as much more as the water is thinner, a turbulent one (x = 0.5) knows no viscosity; vortex and
 * compensating emitters (x below 0.5) are not described by this and are left alone. What warmth does to the material is not in it.
 *
 * @param exponent x
 * @param viscosity nu, of the water, m2/s
 * @param statedViscosity nu of the water that the flow was stated in, m2/s
 * @example emitterViscosityFactor(1, 8.00705e-7, 1.30629e-6) // => 1.63142
 */
export function emitterViscosityFactor(exponent: number, viscosity: number, statedViscosity: number): number {
  return exponent > 0.5 ? (statedViscosity / viscosity) ** (2 * exponent - 1) : 1;
}
