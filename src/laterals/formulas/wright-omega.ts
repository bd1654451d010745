/**
 * Wright's omega function, w + ln w = x, for x from 6.6 to 12.6.
 *
 * A polynomial in t = (x - 9.6)/3, the cut Chebyshev series of the function; summed in pairs, so that no term waits long for another.
 * Within 2e-14 of itself in the range; outside it is worth nothing.
 *
 * @example wrightOmega(10) // => 7.929420095
 */
export function wrightOmega(x: number): number {
  const t = (x - 9.6) * (1 / 3);
  const t2 = t * t;
  const t4 = t2 * t2;
  const low = 7.575129546855667 + 2.650151057939569 * t + (0.05406055610306294 - 0.010403117925053955 * t) * t2;
  const middle = 0.0021348043303791365 - 0.0004448063939102787 * t + (9.176300674851984e-5 - 1.8379479549625715e-5 * t) * t2;
  const high = 3.492612757219606e-6 - 6.049299345474135e-7 * t + (8.704120859774229e-8 - 7.754149197958473e-9 * t) * t2;
  const highest = -1.396837525033979e-9 + 1.7519876880879829e-9 * t - 6.096536469418657e-10 * t2;
  return low + middle * t4 + (high + highest * t4) * (t4 * t4);
}
