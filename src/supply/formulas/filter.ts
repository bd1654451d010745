/**
 * Pressure lost in a filter: Δp = Δp0 (Q/(Q0 (1 − b)))^n.
 *
 * From the loss that its data sheet gives, clean, at one flow. Where a share b of its area is blocked, the rest passes as much water the faster.
 *
 * @param flow Q, m³/s
 * @param referenceFlow Q0, m³/s
 * @param referenceLoss Δp0, Pa, clean, at Q0
 * @param exponent n: 2 for screens and discs, towards 1 for sand and fine media. Common practice, no source.
 * @param blockedShare b, 0 to below 1
 * @returns Pa
 * @example filterPressureLoss(0.002, 0.001, 10000, 2, 0.5) // => 160000
 */
export function filterPressureLoss(flow: number, referenceFlow: number, referenceLoss: number, exponent = 2, blockedShare = 0): number {
  return referenceLoss * (flow / (referenceFlow * (1 - blockedShare))) ** exponent;
}

/** Share of a filter's area that is blocked when its loss has risen from clean to loaded at the same flow: the formula above solved for b. */
export function blockedShareFromLoss(cleanLoss: number, loadedLoss: number, exponent = 2): number {
  return 1 - (cleanLoss / loadedLoss) ** (1 / exponent);
}
