/** The whole number from a quotient upward; one above a whole number by no more than its rounding counts as that number. */
export function wholeUpward(quotient: number): number {
  return Math.ceil(quotient * (1 - 1e-12));
}
