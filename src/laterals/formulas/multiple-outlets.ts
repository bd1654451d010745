/**
 * Friction in a pipe with equal outlets over friction in the same pipe with the whole flow to its end.
 *
 * F = N^-(m+1) sum(i^m, i = 1..N): exact for equal outflows when the first outlet is one whole spacing from the inlet.
 * Emitters do not flow equally, which costs up to about 3 % of the loss: an estimate beside the stepwise lateral, not in place of it.
 *
 * @param outlets N
 * @param exponent m, of flow in the friction law: 1 laminar, 1.75 Blasius, 1.852 Hazen-Williams, 2 fully rough
 * @example multipleOutletFactorExact(10, 2) // => 0.385
 */
export function multipleOutletFactorExact(outlets: number, exponent: number): number {
  return multipleOutletFactorAnwar1999(outlets, exponent, 0);
}

/**
 * The same by the series cut after three terms: F = 1/(m+1) + 1/(2N) + sqrt(m-1)/(6 N^2).
 *
 * Range: m >= 1. Above 1 for a single outlet with m < 2, where F is 1; within 0.2 % from two outlets on for m from 1.75.
 * Source: Christiansen (1942), from memory.
 *
 * @example multipleOutletFactorChristiansen1942(10, 1.75) // => 0.415080
 */
export function multipleOutletFactorChristiansen1942(outlets: number, exponent: number): number {
  return 1 / (exponent + 1) + 1 / (2 * outlets) + Math.sqrt(exponent - 1) / (6 * outlets ** 2);
}

/**
 * The factor when the first outlet is half a spacing from the inlet: F' = (2 N F - 1)/(2N - 1), with the exact F.
 *
 * Source: Jensen & Fratini (1957), from memory; the algebra is exact.
 *
 * @example multipleOutletFactorJensenFratini1957(2, 2) // => 0.5
 */
export function multipleOutletFactorJensenFratini1957(outlets: number, exponent: number): number {
  return multipleOutletFactorScaloppi1988(outlets, exponent, 0.5);
}

/**
 * The factor when the first outlet is a share r of a spacing from the inlet: F_r = (N F + r - 1)/(N + r - 1), with the exact F.
 *
 * Source: Scaloppi (1988), from memory; the algebra is exact.
 *
 * @param firstShare r, distance from the inlet to the first outlet over the spacing, above 0
 */
export function multipleOutletFactorScaloppi1988(outlets: number, exponent: number, firstShare: number): number {
  return (outlets * multipleOutletFactorExact(outlets, exponent) + firstShare - 1) / (outlets + firstShare - 1);
}

/**
 * The factor when flow goes on past the last outlet, as in a pipe that changes size:
 * G = N^-(m+1) (1+R)^-m sum((k + N R)^m, k = 1..N).
 *
 * Source: Anwar (1999), from memory; the algebra is exact for equal outlets.
 *
 * @param endFlowRatio R, flow past the last outlet over the flow of all outlets
 */
export function multipleOutletFactorAnwar1999(outlets: number, exponent: number, endFlowRatio: number): number {
  let sum = 0;
  for (let k = 1; k <= outlets; k++) sum += (k / outlets + endFlowRatio) ** exponent;
  return sum / (outlets * (1 + endFlowRatio) ** exponent);
}
