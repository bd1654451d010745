/** What is known of a quantity that goes in a straight line from one reading to the next, exactly. */

/** How long a quantity that goes from `from` to `to` is below zero, of a time. */
export function timeBelowZero(from: number, to: number, time: number): number {
  if (from < 0) return to < 0 ? time : time * from / (from - to);
  return to < 0 ? time * to / (to - from) : 0;
}

/** Integral over a time of what a quantity that goes from `from` to `to` is above zero. */
export function integralAboveZero(from: number, to: number, time: number): number {
  if (from > 0) return time / 2 * (to > 0 ? from + to : from * from / (from - to));
  return to > 0 ? time / 2 * to * to / (to - from) : 0;
}
