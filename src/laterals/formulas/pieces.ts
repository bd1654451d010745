/** A lateral cut into pieces, for what goes along its pipe in time. */
import { countOutlets, type Stretch } from './stretch.js';

/** Distance of each outlet from the inlet, m. */
export function outletDistances(reaches: readonly { readonly outlets: number; readonly spacing: number; readonly firstSpacing?: number | undefined }[]): Float64Array {
  const distances = new Float64Array(countOutlets(reaches));
  let at = 0;
  let outlet = 0;
  for (const { outlets, spacing, firstSpacing = spacing } of reaches) {
    const first = at + firstSpacing;
    for (let i = 0; i < outlets; i++) distances[outlet++] = first + i * spacing;
    at = first + (outlets - 1) * spacing;
  }
  return distances;
}

/** Where some `wanted` pieces end, m from the inlet: the pipe from one outlet to the next in equal parts, or several of them together; never across a change of pipe. */
export function pieceEnds(stretches: readonly Stretch[], wanted: number): readonly number[] {
  const all = countOutlets(stretches);
  const parts = Math.ceil(wanted / all);
  const together = Math.ceil(all / wanted);
  const ends: number[] = [];
  let at = 0;
  for (const { outlets, spacing, firstSpacing } of stretches) {
    for (let i = 0; i < outlets; i++) {
      const length = i === 0 ? firstSpacing : spacing;
      at += length;
      if ((i + 1) % together > 0 && i < outlets - 1) continue;
      for (let left = parts - 1; left >= 0; left--) {
        const end = at - (left / parts) * length;
        if (end > (ends.at(-1) ?? 0)) ends.push(end);
      }
    }
  }
  return ends;
}

/** How many of some rising numbers are at most this. */
export function countUpTo(rising: Float64Array, most: number): number {
  let low = 0;
  let high = rising.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rising[middle]! <= most) low = middle + 1;
    else high = middle;
  }
  return low;
}
