/** Numbers in advice that is to be followed to the letter: of few digits, and on the safe side of what they stand for. */

/** What is this near to a number, as a share, is that number: the dust of doubles. */
export const dust = 1e-9;

/** A positive number by a way of rounding. */
function toDigits(value: number, digits: number, round: (units: number) => number): number {
  const unit = 10 ** (Math.floor(Math.log10(value)) + 1 - digits);
  return Number((round(value / unit) * unit).toPrecision(digits));
}

/**
 * A positive number to some significant digits, no less than it is.
 *
 * @example roundedUp(0.117647, 3) // => 0.118
 */
export const roundedUp = (value: number, digits = 4): number => toDigits(value, digits, (units) => Math.ceil(units * (1 - dust)));

/**
 * A positive number to some significant digits, no more than it is.
 *
 * @example roundedDown(5.8956, 3) // => 5.89
 */
export const roundedDown = (value: number, digits = 4): number => toDigits(value, digits, (units) => Math.floor(units * (1 + dust)));
