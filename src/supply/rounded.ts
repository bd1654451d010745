/** Numbers in advice that is to be followed to the letter: rounded as for people, but to the safe side. */

/** Rounding dust, as a share. */
export const dust = 1e-9;

/** A positive number to four digits, by a way of rounding. */
function toFourDigits(value: number, round: (units: number) => number): number {
  const unit = 10 ** (Math.floor(Math.log10(value)) - 3);
  return Number((round(value / unit) * unit).toPrecision(4));
}

/** A positive number to four digits, no less than it is. */
export const roundedUp = (value: number): number => toFourDigits(value, (units) => Math.ceil(units * (1 - dust)));

/** A positive number to four digits, no more than it is. */
export const roundedDown = (value: number): number => toFourDigits(value, (units) => Math.floor(units * (1 + dust)));
