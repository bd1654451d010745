/**
 * Exact affine conversions. A unit is defined by ratios of integers; a conversion between two units is again such a ratio,
 * kept as an unevaluated sum of two doubles so that applying it rounds once.
 */

/** Numerator and denominator, both integers, the denominator positive. */
export type Ratio = readonly [numerator: bigint, denominator: bigint];

/** `y = x · scale + offset`, scale and offset each as a sum `high + low` of two doubles. */
export interface Conversion {
  readonly scale: readonly [high: number, low: number];
  readonly offset: readonly [high: number, low: number];
}

const bitLength = (x: bigint): number => x.toString(2).length;

/** The double nearest to a ratio (ties to even). */
export function nearestDouble([numerator, denominator]: Ratio): number {
  if (numerator === 0n) return 0;
  if (numerator < 0n) return -nearestDouble([-numerator, denominator]);
  const shift = Math.max(0, 66 - bitLength(numerator) + bitLength(denominator));
  const scaled = numerator << BigInt(shift);
  const quotient = scaled / denominator;
  // At least 65 bits; the last one is sticky, so that rounding to 53 bits sees whether anything was cut off.
  return Number(quotient * denominator === scaled ? quotient : quotient | 1n) * 2 ** -shift;
}

/** A finite double as the ratio it stands for exactly. */
export function ratioOf(x: number): Ratio {
  let denominator = 1n;
  let scaled = x;
  while (!Number.isInteger(scaled)) {
    scaled *= 2;
    denominator *= 2n;
  }
  return [BigInt(scaled), denominator];
}

/** A ratio as a sum of two doubles, good to about 106 bits. */
export function twoDoubles(ratio: Ratio): readonly [high: number, low: number] {
  const high = nearestDouble(ratio);
  const [n, d] = ratioOf(high);
  return [high, nearestDouble([ratio[0] * d - n * ratio[1], ratio[1] * d])];
}

/** What the rounding of the product `a · b = product` left out (Dekker 1971, Veltkamp splitting). */
function productError(a: number, b: number, product: number): number {
  const splitter = 134217729; // 2^27 + 1
  const aBig = splitter * a;
  const aHigh = aBig - (aBig - a);
  const aLow = a - aHigh;
  const bBig = splitter * b;
  const bHigh = bBig - (bBig - b);
  const bLow = b - bHigh;
  return aLow * bLow - (product - aHigh * bHigh - aLow * bHigh - aHigh * bLow);
}

/** Applies a conversion, rounding once at the end. Infinity stays infinite, NaN stays NaN. */
export function convert(x: number, { scale, offset }: Conversion): number {
  const product = x * scale[0];
  if (!Number.isFinite(product)) return product;
  const left = productError(x, scale[0], product) + x * scale[1];
  // Splitting overflows near the largest doubles: there the plain product must do.
  const tail = Number.isFinite(left) ? left : 0;
  if (offset[0] === 0) return product + tail;
  const sum = product + offset[0];
  const turned = sum - product;
  const lost = product - (sum - turned) + (offset[0] - turned);
  return sum + (lost + tail + offset[1]);
}
