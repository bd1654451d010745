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
