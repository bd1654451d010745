import { Decimal } from 'decimal.js';

/** Decimals of 40 digits, whatever the program around has set for its own. */
export const ExactDecimal = /* @__PURE__ */ Decimal.clone({ defaults: true, precision: 40 });

/** A number as it was written down: the 15 digits that a double keeps, without what a change of unit left behind them. */
export function writtenDecimal(value: number): Decimal {
  return new ExactDecimal(value.toPrecision(15));
}

/** Sum without rounding: 0.1 and 0.2 make 0.3. */
export function decimalSum(terms: Iterable<Decimal>): Decimal {
  let sum = new ExactDecimal(0);
  for (const term of terms) sum = sum.plus(term);
  return sum;
}
